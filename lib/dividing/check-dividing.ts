import { DomainError } from '../figure/domain-error.ts';
import type { Head, Plate } from '../tooling/tooling.ts';

const LEAST_DIVISIONS = 2;
const MOST_DIVISIONS = 100_000;
const MOST_TURNS = 10_000;
const MOST_HOLES = 1000;
/** Circles of all plates together: keeps every search short. */
const MOST_CIRCLES = 500;

const isWhole = (x: number, least: number, most: number): boolean => Number.isInteger(x) && x >= least && x <= most;

/** Throws DomainError for a count of divisions that nobody cuts. */
export function checkDivisions(divisions: number): void {
  if (isWhole(divisions, LEAST_DIVISIONS, MOST_DIVISIONS)) return;
  throw new DomainError({
    given: `${divisions} divisions were asked for.`,
    limit: `Backgear divides into whole numbers from ${LEAST_DIVISIONS} to ${MOST_DIVISIONS}.`,
    tryThis: 'Type the number of teeth or spaces all round.',
    about: ['divisions'],
  });
}

/** Throws DomainError for a head whose crank does not turn a whole number of times for one turn of the spindle. */
export function checkHead(head: Pick<Head, 'turns'>): void {
  if (isWhole(head.turns, 1, MOST_TURNS)) return;
  throw new DomainError({
    given: `The head takes ${head.turns} turns of the crank for one turn of its spindle.`,
    limit: `It must be a whole number from 1 (direct) to ${MOST_TURNS}.`,
    tryThis: 'Count the turns that bring the spindle once round: 40 is usual, rotary tables have 60, 72 or 90.',
    about: ['head'],
  });
}

/** Throws DomainError when there is no circle to set a pin in, too many, or one with a count of holes that no plate has. */
export function checkPlates(plates: readonly Plate[]): void {
  const circles = plates.flatMap((plate) => plate.sides.flat());
  if (circles.length === 0) throw wrongPlates('There is no index plate.', 'The pin needs a circle of holes to drop into.');
  if (circles.length > MOST_CIRCLES)
    throw wrongPlates(`The plates have ${circles.length} circles.`, `At most ${MOST_CIRCLES} are gone through.`);
  const odd = circles.find((holes) => !isWhole(holes, 2, MOST_HOLES));
  if (odd !== undefined) throw wrongPlates(`A circle has ${odd} holes.`, `A circle may have from 2 to ${MOST_HOLES}, in whole numbers.`);
}

const wrongPlates = (given: string, limit: string): DomainError =>
  new DomainError({ given, limit, tryThis: 'Enter each plate with the hole counts of its circles, side by side.', about: ['plates'] });
