import { describe, expect, it } from 'vitest';
import { indexRows } from '../../../lib/dividing/index-table.ts';
import { circlesThatServe, landingHole, turnsMade } from '../../../lib/dividing/plain.formulas.ts';
import type { Plate } from '../../../lib/tooling/tooling.ts';
import type { IndexMove } from '../../../lib/values/move.ts';
import { LEAST_CIRCLES } from './least-circles.data.ts';
import { ODD_PLATE, THREE_PLATES, TWO_SIDED } from './plates.ts';

const HEADS = [40, 60, 90];
const SETS: readonly (readonly [string, readonly Plate[]])[] = [
  ['three plates', THREE_PLATES],
  ['two-sided plate', TWO_SIDED],
  ['odd plate', ODD_PLATE],
];

/** Carries the pin round hole by hole, marks where it stops, and goes on until the spindle has come once round: the marks made, or 0 if it misses. */
function marksAllRound(R: number, { turns, spaces, circle }: IndexMove): number {
  let [hole, crankTurns, marks] = [0, 0, 0];
  while (crankTurns < R) {
    for (let step = 0; step < turns * circle + spaces; step++) {
      hole += 1;
      if (hole === circle) [hole, crankTurns] = [0, crankTurns + 1];
    }
    marks += 1;
  }
  return crankTurns === R && hole === 0 ? marks : 0;
}

/** Tries every count of holes on a circle as one move: is there one that comes round after N moves? */
function someMoveServes(R: number, N: number, circle: number): boolean {
  for (let holes = 1; holes * N <= R * circle; holes++) if (holes * N === R * circle) return true;
  return false;
}

describe.each(SETS)('%s', (_name, plates) => {
  it.each(HEADS)('head of %i: every set-up offered, walked hole by hole, gives the count asked for', (R) => {
    for (let N = 2; N <= 400; N++)
      for (const { move, circle } of circlesThatServe(R, N, plates)) {
        expect(move.spaces, `${N} on ${circle}`).toBeLessThan(circle);
        expect(marksAllRound(R, move), `${N} on ${circle}`).toBe(N);
        expect(turnsMade(N, move), `${N} on ${circle}`).toEqual([R, 1]);
      }
  });

  it.each(HEADS)('head of %i: every circle that can serve is offered, and no other', (R) => {
    for (let N = 2; N <= 400; N++) {
      const offered = circlesThatServe(R, N, plates).map(({ plate, side, circle }) => `${plate.id} ${side} ${circle}`);
      const right = plates.flatMap(({ id, sides }) =>
        sides.flatMap((circles, side) =>
          circles.filter((circle) => someMoveServes(R, N, circle)).map((circle) => `${id} ${side} ${circle}`),
        ),
      );
      expect(offered, `${N}`).toEqual(right);
    }
  });
});

describe('40 to 1 on three plates', () => {
  const served = (N: number): boolean => circlesThatServe(40, N, THREE_PLATES).length > 0;

  it('cannot divide these counts up to 130, and can all others (derived: which divide 40 times some circle)', () => {
    const impossible = [
      51, 53, 57, 59, 61, 63, 67, 69, 71, 73, 77, 79, 81, 83, 87, 89, 91, 93, 96, 97, 99, 101, 102, 103, 106, 107, 109, 111, 112, 113, 114,
      117, 118, 119, 121, 122, 123, 125, 126, 127, 129,
    ];
    expect(Array.from({ length: 129 }, (_, n) => n + 2).filter((N) => !served(N))).toEqual(impossible);
  });

  it.each(LEAST_CIRCLES)('%i: %i turns + %i on %i, the least circle that serves', (N, turns, spaces, circle) => {
    const [first] = circlesThatServe(40, N, THREE_PLATES);
    expect(first?.move).toEqual({ turns, spaces, circle: circle === 0 ? 15 : circle });
  });

  it.each([
    [73, { turns: 0, spaces: 10, circle: 18 }, 72],
    [127, { turns: 0, spaces: 5, circle: 16 }, 128],
  ])('does not repeat a seller’s setting for %i, which makes another count', (N, printed, makes) => {
    expect(served(N)).toBe(false);
    expect(turnsMade(N, printed)).not.toEqual([40, 1]);
    expect(marksAllRound(40, printed)).toBe(makes);
  });

  it('does not repeat a list of counts for whole turns of 30 to 1 that holds 4, 12, 20 and 25', () => {
    const wholeTurns = (N: number) => circlesThatServe(30, N, [...THREE_PLATES]).some(({ move }) => move.spaces === 0);
    expect([2, 3, 4, 5, 6, 10, 12, 15, 20, 25, 30].filter(wholeTurns)).toEqual([2, 3, 5, 6, 10, 15, 30]);
  });
});

describe('the tick sheet', () => {
  it('has a line for each tooth and one more, which is the first again', () => {
    const rows = indexRows(22, { turns: 1, spaces: 27, circle: 33 });
    expect(rows).toHaveLength(23);
    expect(rows[0]).toEqual({ tooth: 1, turnsFromStart: [0, 1], hole: 0, backAtFirst: false });
    expect(rows[2]).toEqual({ tooth: 3, turnsFromStart: [40, 11], hole: 21, backAtFirst: false });
    expect(rows[22]).toEqual({ tooth: 23, turnsFromStart: [40, 1], hole: 0, backAtFirst: true });
  });

  it('agrees with the pin walked hole by hole', () => {
    for (const plates of [THREE_PLATES, TWO_SIDED, ODD_PLATE])
      for (let N = 2; N <= 130; N++)
        for (const { move, circle } of circlesThatServe(40, N, plates)) {
          let [hole, holesGone] = [0, 0];
          for (const row of indexRows(N, move)) {
            expect(row.hole).toBe(hole);
            expect(row.turnsFromStart[0] * circle).toBe(holesGone * row.turnsFromStart[1]);
            for (let step = 0; step < move.turns * circle + move.spaces; step++) {
              hole = hole + 1 === circle ? 0 : hole + 1;
              holesGone += 1;
            }
          }
        }
  });

  it('stays in hole 0 with whole turns', () => {
    expect(landingHole(7, { turns: 2, spaces: 0, circle: 15 })).toBe(0);
  });

  it('refuses more lines than anyone ticks', () => {
    expect(() => indexRows(2001, { turns: 0, spaces: 1, circle: 20 })).toThrow(/2000 lines at most/);
  });
});
