import type { Train } from './nearest.ts';
import type { Quadrant } from './quadrant.ts';
import { bridges, NO_BRIDGE, type Reach, reachOf, type WheelSizes } from './reach.ts';
import type { TrainShaft } from './train-shaft.ts';
import { lessWheels } from './wheel-lists.ts';

/** pairs: each driver with the wheel that it turns, from the source on. */
export type Arrangement = { readonly pairs: readonly (readonly [driver: number, driven: number])[] };
/** Which way the last shaft turns against the first. */
export type Turns = 'same' | 'opposite' | 'either';

/** Every order of a list, like ones not told apart. */
function orders(list: readonly number[]): number[][] {
  if (list.length === 0) return [[]];
  return [...new Set(list)].flatMap((first) => {
    const at = list.indexOf(first);
    return orders([...list.slice(0, at), ...list.slice(at + 1)]).map((rest) => [first, ...rest]);
  });
}

/** All ways of standing the same wheels on the shafts: the ratio stays, the reach does not. */
export function arrangementsOf({ drivers, driven }: Train): Arrangement[] {
  return orders(drivers).flatMap((top) =>
    orders(driven).map((bottom) => ({ pairs: top.map((driver, n) => [driver, bottom[n] as number] as const) })),
  );
}

type Ends = { readonly first: string; readonly last: string };
/** An idler behind the driver of the pair of this number. */
type Idler = { readonly pair: number; readonly teeth: number };

/** The shafts of an arrangement with idlers put in. */
export function shaftsOf({ pairs }: Arrangement, idlers: readonly Idler[], { first, last }: Ends): TrainShaft[] {
  const shafts: TrainShaft[] = [];
  let [studs, driven] = [0, null as number | null];
  const name = (): string => `stud ${++studs}`;
  for (const [n, [driver, next]] of pairs.entries()) {
    shafts.push({ name: n === 0 ? first : name(), driven, driver });
    for (const { teeth } of idlers.filter(({ pair }) => pair === n))
      shafts.push({ name: name(), driven: teeth, driver: teeth, idler: true });
    driven = next;
  }
  return [...shafts, { name: last, driven, driver: null }];
}

export type Placed = { readonly shafts: readonly TrainShaft[]; readonly reach: Extract<Reach, { fits: true }> };
export type NotPlaced = { readonly why: string };

export type PlaceAsked = {
  readonly quadrant: Quadrant;
  readonly sizes: WheelSizes;
  readonly ends: Ends;
  readonly turns: Turns;
  /** All wheels of the drawer; those not in the train may serve as idlers. */
  readonly drawer: readonly number[];
  /** How many set-ups may still be tried, over all that is asked at once, so that one request stays short. */
  readonly tries?: { left: number };
  /** Only as it is, without idlers. */
  readonly bare?: boolean;
};

const MOST_STUDS = 3;
/** What it costs to see that a set-up cannot even span the distance, beside trying it out. */
const GLANCE = 0.1;

/** Sets an arrangement up, with as few idlers as will do; without a way, the reason why it cannot stand as it is. */
export function place(arrangement: Arrangement, asked: PlaceAsked): Placed | NotPlaced {
  const { pairs } = arrangement;
  const { quadrant, sizes, tries } = asked;
  const spare = lessWheels(asked.drawer, pairs.flat());
  let why = '';
  for (const idlers of asked.bare ? [[]] : idlerChoices(pairs.length, spare)) {
    const meshes = pairs.length + idlers.length;
    if (!turnsRight(meshes, asked.turns) || meshes - 1 > MOST_STUDS) continue;
    if (tries && tries.left <= 0) return { why: why === '' ? NOT_TRIED : `${why} ${NOT_ALL_TRIED}` };
    const shafts = shaftsOf(arrangement, idlers, asked.ends);
    const spans = idlers.length === 0 || bridges(shafts, quadrant, sizes);
    if (tries) tries.left -= spans ? 1 : GLANCE;
    const reach: Reach = spans ? reachOf(shafts, quadrant, sizes) : { fits: false, why: NO_BRIDGE };
    if (reach.fits) return { shafts, reach };
    why ||= reach.why;
  }
  return { why: why || NO_IDLER };
}

const NOT_TRIED = 'Not tried: too many ways for one request.';
const NOT_ALL_TRIED = 'Not with every idler tried: too many for one request.';
const NO_IDLER = 'It turns the wrong way, and no wheel is left for an idler.';
const turnsRight = (meshes: number, turns: Turns): boolean => turns === 'either' || (meshes % 2 === 0) === (turns === 'same');

/** None, then one idler in any place, then two, as far as studs are to be had. spare: a number as often as wheels of it are left. */
function* idlerChoices(pairs: number, spare: readonly number[]): Generator<readonly Idler[]> {
  yield [];
  const numbers = [...new Set(spare)];
  for (let pair = 0; pair < pairs; pair++) for (const teeth of numbers) yield [{ pair, teeth }];
  if (pairs + 1 > MOST_STUDS) return;
  for (const one of numbers)
    for (const two of numbers) {
      if (one === two && spare.filter((teeth) => teeth === one).length < 2) continue;
      for (let pair = 0; pair < pairs; pair++)
        for (let next = pair; next < pairs; next++)
          yield [
            { pair, teeth: one },
            { pair: next, teeth: two },
          ];
    }
}
