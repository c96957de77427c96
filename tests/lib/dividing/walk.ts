import type { Way } from '../../../lib/dividing/ways.ts';

const all = (teeth: readonly number[]): number => teeth.reduce((product, one) => product * one, 1);

/**
 * Turns the crank hole by hole and lets the gears carry the plate, all in whole small parts of a turn of the spindle; goes on, a mark
 * at every stop, until the spindle is round. The marks made; 0 when the last move goes past. plate: 1 with the crank, -1 against, 0 still.
 */
export function marksGeared(
  R: number,
  holes: number,
  circle: number,
  gears: { drivers: readonly number[]; driven: readonly number[] },
  plate: number,
): number {
  const [fast, slow] = [all(gears.drivers) * plate, all(gears.driven)];
  const round = circle * (R * slow - fast);
  let [gone, marks] = [0, 0];
  while (gone < round) {
    for (let hole = 0; hole < holes; hole++) gone += slow;
    marks += 1;
  }
  return gone === round ? marks : 0;
}

/** Crank over its circle a hole at a time, then plate and crank together over the back circle; the marks made in one round, or 0. */
function marksOfTwoPins(R: number, front: number, a: number, back: number, b: number): number {
  const round = R * a * b;
  let [gone, marks] = [0, 0];
  while (gone < round) {
    for (let hole = 0; hole < front; hole++) gone += b;
    for (let hole = 0; hole < Math.abs(back); hole++) gone += back > 0 ? a : -a;
    marks += 1;
    if (marks > 100_000) return 0;
  }
  return gone === round ? marks : 0;
}

/** The marks that a way makes all round. */
export function marksOf(R: number, way: Way): number {
  if (way.method === 'compound') {
    const { front, frontCircle, back, backCircle } = way.move;
    return marksOfTwoPins(R, front, frontCircle, back, backCircle);
  }
  const holes = way.move.turns * way.move.circle + way.move.spaces;
  if (way.method !== 'differential')
    return marksGeared(way.method === 'direct' ? 1 : R, holes, way.move.circle, { drivers: [1], driven: [1] }, 0);
  return marksGeared(R, holes, way.move.circle, way.train, Math.sign(way.plateTurns[0]));
}
