import { chooseCircles, type JointChoice } from '../dividing/joint.ts';
import { turnsPerDivision } from '../dividing/plain.formulas.ts';
import type { ChosenCircle, WantedPart } from './asked.ts';
import { type ChosenDividing, chosenDividing } from './chosen-dividing.ts';
import type { ShopNow } from './shop-now.ts';

/** A part that is not divided plainly, and how it is. */
type Otherwise = { readonly mark: string; readonly teeth: number; readonly says: string };
type PartDivided = { readonly mark: string; readonly teeth: number; readonly by: ChosenDividing };

/** choice: null when no part is divided on a circle. otherwise: by two pins, with gears or by a dial, or not at all, with the reason. */
export type CirclesChosen = {
  readonly choice: JointChoice | null;
  readonly byMark: ReadonlyMap<string, ChosenCircle>;
  readonly otherwise: readonly Otherwise[];
};

const MOST_DIFFERENT = 12;

const isPlain = ({ by: { way, by, at } }: PartDivided): boolean => way === null && by === null && at.plate !== null;
const holesOf = ({ teeth, by }: PartDivided): number => turnsPerDivision(by.head.turns, teeth)[1];

/** As many as can be chosen for together, the last first: they are the ones that are asked for. */
function together(parts: readonly PartDivided[]): PartDivided[] {
  const different = [...new Set([...parts].reverse().map(holesOf))].slice(0, MOST_DIFFERENT);
  return parts.filter((part) => different.includes(holesOf(part)));
}

/** Circles for several parts at once, so that they stay on one plate: by the mark of each part. At most 60 parts. */
export function circlesFor(parts: readonly WantedPart[], shop: ShopNow): CirclesChosen {
  const divided = parts.map(
    ({ mark, gear }): PartDivided => ({ mark, teeth: gear.teeth, by: chosenDividing(gear.teeth, shop, undefined, gear.helix !== null) }),
  );
  const jobs = together(divided.filter(isPlain)).map(({ mark, teeth, by }) => ({ key: mark, divisions: teeth, head: by.head }));
  const choice = jobs.length > 0 ? chooseCircles(jobs, shop.plates, shop.mounted) : null;
  const byMark = new Map(choice?.jobs.map(({ key, plate, side, circle }) => [key, { plateId: plate.id, side, circle }]));
  const others = divided.filter((part) => !isPlain(part));
  return { choice, byMark, otherwise: others.map(({ mark, teeth, by }) => ({ mark, teeth, says: by.answer?.says ?? '' })) };
}
