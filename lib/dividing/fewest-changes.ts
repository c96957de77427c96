import { DomainError } from '../figure/domain-error.ts';
import type { Plate } from '../tooling/tooling.ts';

export type CirclePicked = { readonly plate: Plate; readonly side: number; readonly circle: number };

/** The plate and side that stand on the head, and the circle the pin is in. */
export type Standing = { readonly plateId: number; readonly side: number; readonly circle?: number };

/** Circles picked so far, last first. */
type Picks = { readonly last: CirclePicked; readonly before: Picks } | null;

/** For every set of needs (bit k: need k is served): the least cost of serving it, and the circles that do. */
type Best = { readonly cost: Float64Array; readonly picks: Picks[] };

/** One more of the first outweighs any number of those after it: circles have at most 1,000 holes, and 12 needs want 12 circles at most. */
const [A_MOUNTING, A_PLATE, A_CIRCLE] = [1e9, 1e7, 1e5];
/** What stands on the head need not be put on; but two mountings are never taken for it where one would do. */
const LEFT_ON = A_MOUNTING / 2;
const MOST_NEEDS = 12;

/**
 * The circles that serve all needs with fewest mountings (a plate put on with one side in front), then fewest plates, then fewest
 * circles, then fewest holes; what stands on the head is left on where it serves as well. A need is the number that its circle must be a multiple of; 1 is served by any circle.
 * Every need must be served by some circle. Exact: the least cost of each set of needs is carried from plate to plate, side to side and
 * circle to circle, each taken or left. Throws DomainError for more than 12 different needs.
 */
export function fewestChanges(multiples: readonly number[], plates: readonly Plate[], mounted?: Standing): CirclePicked[] {
  const needs = needsOf(multiples);
  let best = atStart(1 << needs.length);
  for (const plate of plates) {
    let onPlate = dearer(best, A_PLATE);
    plate.sides.forEach((circles, side) => {
      const stands = plate.id === mounted?.plateId && side === mounted.side;
      const onSide = dearer(onPlate, stands ? LEFT_ON : A_MOUNTING);
      for (const circle of new Set(circles))
        take(onSide, { plate, side, circle }, needs, stands && circle === mounted?.circle ? 0 : circle);
      onPlate = cheaper(onPlate, onSide);
    });
    best = cheaper(best, onPlate);
  }
  return listed(best.picks[best.picks.length - 1] ?? null);
}

/** Different needs. Whole turns ask for a circle only when nothing else does. */
function needsOf(multiples: readonly number[]): number[] {
  const different = [...new Set(multiples)];
  const needs = different.length > 1 ? different.filter((multiple) => multiple > 1) : different;
  if (needs.length <= MOST_NEEDS) return needs;
  throw new DomainError({
    given: `The parts ask for ${needs.length} different circles.`,
    limit: `Circles are chosen for ${MOST_NEEDS} at once, at most.`,
    tryThis: 'Take fewer parts together.',
    about: ['jobs'],
  });
}

function atStart(size: number): Best {
  const cost = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  cost[0] = 0;
  return { cost, picks: new Array<Picks>(size).fill(null) };
}

const dearer = ({ cost, picks }: Best, by: number): Best => ({ cost: cost.map((one) => one + by), picks: [...picks] });

function cheaper(a: Best, b: Best): Best {
  const better = a.picks.map((_, set) => (b.cost[set] as number) < (a.cost[set] as number));
  return {
    cost: a.cost.map((one, set) => (better[set] ? (b.cost[set] as number) : one)),
    picks: a.picks.map((one, set) => (better[set] ? (b.picks[set] ?? null) : one)),
  };
}

/** Lets each set of needs be served further by this circle where that costs less. holes: what it costs beside; nothing where the pin stands. */
function take({ cost, picks }: Best, picked: CirclePicked, needs: readonly number[], holes: number): void {
  const serves = needs.reduce((set, multiple, k) => (picked.circle % multiple === 0 ? set | (1 << k) : set), 0);
  if (serves === 0) return;
  for (let set = 0; set < cost.length; set++) {
    const [served, price] = [set | serves, (cost[set] as number) + A_CIRCLE + holes];
    if (served === set || price >= (cost[served] as number)) continue;
    cost[served] = price;
    picks[served] = { last: picked, before: picks[set] ?? null };
  }
}

function listed(picks: Picks): CirclePicked[] {
  const list: CirclePicked[] = [];
  for (let at = picks; at !== null; at = at.before) list.unshift(at.last);
  return list;
}
