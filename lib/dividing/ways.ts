import type { Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import { plus, type Ratio, ratio, sameRatio, times } from '../values/ratio.ts';
import { type CompoundSetting, compoundSettings, compoundTurns } from './compound.formulas.ts';
import { type DifferentialSetting, differentialSettings } from './differential.ts';
import { circlesThatServe, moveOn, turnsMade, turnsPerDivision } from './plain.formulas.ts';

/** What can be used to divide with. Null for reached: the back pin has not been tried, any circle may be. */
export type DividingTools = {
  readonly turns: number;
  readonly plates: readonly Plate[];
  /** Holes or notches of the plate on the spindle's nose, for direct dividing; none: []. */
  readonly direct: readonly number[];
  readonly backPin: boolean;
  readonly reached: readonly number[] | null;
  /** Change gears that go on the head, each physical gear once. */
  readonly gears: readonly number[];
  /** What stands on the head now. */
  readonly mounted?: Mounted;
};

export type Mounted = { readonly plateId: number; readonly side: number; readonly circle?: number; readonly gears?: readonly number[] };

/** One way of dividing. Every way walks the head's spindle exactly once round in N moves. */
export type Way =
  | { readonly method: 'direct'; readonly circle: number; readonly move: IndexMove }
  | { readonly method: 'plain'; readonly plate: Plate; readonly side: number; readonly move: IndexMove }
  | ({ readonly method: 'compound' } & CompoundSetting)
  | ({ readonly method: 'differential' } & DifferentialSetting);

/** Easiest to set up first: nothing to change, a circle, two pins, gears of two, gears of four (judgement). */
const effort = (way: Way): number =>
  way.method === 'differential' ? (way.train.drivers.length === 1 ? 3 : 4) : { direct: 0, plain: 1, compound: 2 }[way.method];

const sameGears = (way: Way, gears: readonly number[]): boolean => {
  const wanted = way.method === 'differential' ? [...way.train.drivers, ...way.train.driven] : [];
  return wanted.length === gears.length && [...wanted].sort().join() === [...gears].sort().join();
};

/** The circle of the crank's pin. */
export const circleOfWay = (way: Way): number => ('front' in way.move ? way.move.frontCircle : way.move.circle);

/** Hands laid on the head before cutting: a plate or its side changed counts most, then gears, then pin and sector. */
export function changesFrom(mounted: Mounted | undefined, way: Way): number {
  if (!mounted || way.method === 'direct') return 0;
  const plate = way.plate.id === mounted.plateId && way.side === mounted.side ? 0 : 4;
  const gears = sameGears(way, mounted.gears ?? []) ? 0 : 2;
  return plate + gears + (plate === 0 && circleOfWay(way) === mounted.circle ? 0 : 1);
}

/** 0 where plate, side and gears stay as they are, and only pin and sector are set anew. */
const leftStanding = (mounted: Mounted | undefined, way: Way): number => (mounted && changesFrom(mounted, way) <= 1 ? 0 : 1);

const away = (way: Way): number => (way.method === 'direct' || way.plate.here ? 0 : 1);

/** Set for a whole count, a plate that stands still or turns the wrong way shows at the trial nick as a count; otherwise only as an odd last space. */
const closes = (way: Way): number => (way.method === 'differential' && way.setFor[1] !== 1 ? 1 : 0);

/** Slower turning of the plate is kinder to gears and hand. */
const plateSpeed = (way: Way): number => (way.method === 'differential' ? Math.abs(way.plateTurns[0] / way.plateTurns[1]) : 0);
const travel = (way: Way): number =>
  'front' in way.move ? way.move.front / way.move.frontCircle + Math.abs(way.move.back) / way.move.backCircle : 0;

const directWays = (N: number, { direct }: DividingTools): Way[] =>
  [...new Set(direct)].flatMap((circle) => {
    const move = moveOn(circle, turnsPerDivision(1, N));
    return move ? [{ method: 'direct' as const, circle, move }] : [];
  });

/**
 * Every way of dividing into N with what is owned. Plates in the shop come first; then what serves with plate, side and gears as they stand
 * on the head; then the easiest to set up, then the fewest changes from what is on the head, then a whole count that the crank is set for,
 * then the least plate turning or travel, then the fewest holes. Differential ways are looked for only when nothing
 * plainer serves, or when `all` is asked.
 * Source: derived: each method's own search; the order is a judgement. Empty when nothing serves.
 * Example: 71 on three plates with gears 40 and 72: 10 on 18, the plate turning 5/9 with the crank.
 */
export function waysToDivide(N: number, tools: DividingTools, all = false): Way[] {
  const { turns: R, plates, reached, gears } = tools;
  const plain = circlesThatServe(R, N, plates).map(({ plate, side, move }): Way => ({ method: 'plain', plate, side, move }));
  const easy = [...directWays(N, tools), ...plain];
  const compound = tools.backPin && (all || easy.length === 0) ? compoundSettings(turnsPerDivision(R, N), plates, reached) : [];
  const geared = gears.length > 1 && (all || easy.length === 0) ? differentialSettings({ R, N, plates, gears }) : [];
  const ways: Way[] = [
    ...easy,
    ...compound.map((one): Way => ({ method: 'compound', ...one })),
    ...geared.map((one): Way => ({ method: 'differential', ...one })),
  ];
  const order = (way: Way): number[] => [
    away(way),
    leftStanding(tools.mounted, way),
    effort(way),
    changesFrom(tools.mounted, way),
    closes(way),
    plateSpeed(way),
    travel(way),
    circleOfWay(way),
  ];
  return ways
    .map((way) => ({ way, by: order(way) }))
    .sort((a, b) => firstDifference(a.by, b.by))
    .map(({ way }) => way);
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((x, i) => x !== b[i]);
  return at < 0 ? 0 : (a[at] as number) - (b[at] as number);
}

/**
 * Turns of the crank that n moves make against the plate and, of them, how much comes from the plate: added up in exact fractions.
 * The proof: for n = N they make R together. plate: what the gears turn it by while the spindle goes n divisions.
 * Source: derived. Example: 71 moves of 10 on 18: 39 4/9, and 5/9 of the plate.
 */
export function proofOf(N: number, way: Way): { readonly crank: Ratio; readonly plate: Ratio; readonly together: Ratio } {
  if (way.method === 'compound') {
    const crank = times(ratio(N), compoundTurns(way.move));
    return { crank, plate: [0, 1], together: crank };
  }
  const crank = turnsMade(N, way.move);
  const plate: Ratio = way.method === 'differential' ? way.plateTurns : [0, 1];
  return { crank, plate, together: plus(crank, plate) };
}

/** Whether N moves really bring the spindle once round: R turns of the crank; of a direct plate one turn. */
export const isProved = (N: number, R: number, way: Way): boolean =>
  sameRatio(proofOf(N, way).together, [way.method === 'direct' ? 1 : R, 1]);
