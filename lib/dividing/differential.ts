import type { Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import { type Ratio, ratio } from '../values/ratio.ts';
import { type GearTrain, gearsOwned } from './change-gears.ts';
import { plateTurns, setFor } from './differential.formulas.ts';
import { moveOn } from './plain.formulas.ts';

/** A differential set-up. plateTurns: of the plate for one turn of the spindle; plus = with the crank. setFor: the count with the plate locked. */
export type DifferentialSetting = {
  readonly plate: Plate;
  readonly side: number;
  readonly move: IndexMove;
  readonly plateTurns: Ratio;
  readonly setFor: Ratio;
  readonly train: GearTrain;
};

/** The plate is not driven faster than this for one turn of the spindle: gears and idlers of a quadrant bear no more (judgement). */
export const MOST_PLATE_TURNS = 6;

type Place = { readonly plate: Plate; readonly side: number; readonly circle: number };
export type MoveWanted = { readonly turns: Ratio; readonly at: readonly Place[] };

const placesOf = (plates: readonly Plate[]): Place[] =>
  plates.flatMap((plate) => plate.sides.flatMap((circles, side) => [...new Set(circles)].map((circle) => ({ plate, side, circle }))));

/**
 * Every move of the crank, in whole spaces of some circle, that leaves the plate to turn no more than MOST_PLATE_TURNS and less than the crank: by turns, with
 * the places where it can be made. The plain ones, for which the plate stands still, are left out.
 */
export function movesNear(R: number, N: number, plates: readonly Plate[]): MoveWanted[] {
  const moves = new Map<number, { turns: Ratio; at: Place[] }>();
  for (const place of placesOf(plates)) {
    const { circle } = place;
    const from = Math.max(1, Math.ceil(((R - MOST_PLATE_TURNS) * circle) / N));
    const to = Math.min(Math.floor(((R + MOST_PLATE_TURNS) * circle) / N), Math.ceil((2 * R * circle) / N) - 1);
    for (let spaces = from; spaces <= to; spaces++) {
      if (spaces * N === R * circle) continue;
      const there = moves.get(spaces / circle);
      if (there) there.at.push(place);
      else moves.set(spaces / circle, { turns: ratio(spaces, circle), at: [place] });
    }
  }
  return [...moves.values()];
}

const settingsOf = (R: number, N: number, { turns, at }: MoveWanted, trains: readonly GearTrain[]): DifferentialSetting[] => {
  const g = plateTurns(R, N, turns);
  return trains.flatMap((train) =>
    at.flatMap(({ plate, side, circle }) => {
      const move = moveOn(circle, turns);
      return move ? [{ plate, side, move, plateTurns: g, setFor: setFor(R, turns), train }] : [];
    }),
  );
};

/**
 * Every differential set-up with the plates and gears owned: those of simple trains; or, where there is none or `compound` asks for them,
 * those of compound trains too. None for a count that cannot be set. Source: derived: every move and every train gone through.
 * Example: 71 at 40 to 1 with gears 40 and 72: 10 on 18 or 15 on 27, the plate 5/9 with the crank.
 */
export function differentialSettings(
  { R, N, plates, gears }: { readonly R: number; readonly N: number; readonly plates: readonly Plate[]; readonly gears: readonly number[] },
  compound: 'if needed' | 'too' = 'if needed',
): DifferentialSetting[] {
  const [moves, owned] = [movesNear(R, N, plates), gearsOwned(gears)];
  const wanted = ([num, den]: Ratio): Ratio => [Math.abs(num), den];
  const simple = moves.flatMap((move) => settingsOf(R, N, move, owned.simple(wanted(plateTurns(R, N, move.turns)))));
  if (simple.length > 0 && compound === 'if needed') return simple;
  return [...simple, ...moves.flatMap((move) => settingsOf(R, N, move, owned.compound(wanted(plateTurns(R, N, move.turns)))))];
}
