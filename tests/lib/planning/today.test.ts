import { describe, expect, test } from 'vitest';
import { type ShopOperation, today } from '../../../lib/planning/today.ts';
import { idOf, twoGears } from './two-gears.ts';

describe('story 1, both routings just opened', () => {
  const now = today(twoGears());

  test('both spares can be counted, and each unblocks the whole of its routing', () => {
    expect(now.canDo.map(({ operation }) => `${operation.partName}: ${operation.title}`)).toEqual([
      'the 22: Count, measure and photograph the spare',
      'the 28: Count, measure and photograph the spare',
    ]);
    expect(now.canDo[0]?.unblocks).toBeGreaterThan(20);
  });

  test('the mandrel is the first blocker and holds up both gears; No. 5 only the 22', () =>
    expect(now.blockers).toEqual([
      { says: 'mandrel for a 6-spline bore of 1.2500 in', holdsUp: ['H12-22T', 'H12-28T'] },
      { says: 'cutter No. 5, 8 DP, 14½°, for 22 teeth', holdsUp: ['H12-22T'] },
    ]));

  test('what cannot be done yet says why', () => expect(now.cannotYet.every(({ state }) => state.says.startsWith('Waits'))).toBe(true));

  test('nothing was begun, so no work was left anywhere', () => expect(now.left).toEqual([]));
});

test('where work was left: the part touched last first, with its next operation', () => {
  const gears = twoGears();
  const done = new Map([
    [idOf(gears, 22, 'count'), '2026-03-01'],
    [idOf(gears, 22, 'file-test'), '2026-03-02'],
    [idOf(gears, 28, 'count'), '2026-03-04'],
  ]);
  const { left } = today(gears.map((one) => ({ ...one, done: done.has(one.id), doneAt: done.get(one.id) ?? null })));
  expect(left.map(({ partMark, last, next }) => [partMark, last.title, next?.title])).toEqual([
    ['H12-28T', 'Count, measure and photograph the spare', 'Try it with a file; settle the material'],
    ['H12-22T', 'Try it with a file; settle the material', 'See that it is sound: roots, metal, wall, bore'],
  ]);
});

// Story 10: the pattern (A) leads by foundry and block to three more; shaft and blanks block one part each. A comes first.
test('what blocks most comes first, however long the rest', () => {
  const work = (id: number, mark: string, after: number[], minutes: number): ShopOperation => ({
    id,
    partName: mark,
    partMark: mark,
    title: `${id}`,
    place: id,
    minutes,
    done: false,
    doneAt: null,
    struck: false,
    after,
    needs: [],
  });
  const [A, B, C, D1, D2, E, F, G1, G2, H] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;
  const plan = [
    work(G1, 'gears', [], 180),
    work(D1, 'shaft', [], 240),
    work(A, 'block', [], 600),
    work(B, 'block', [A], 0),
    work(C, 'block', [B], 480),
    work(D2, 'shaft', [C, D1], 120),
    work(E, 'stud', [C], 180),
    work(F, 'guard', [C], 120),
    work(G2, 'gears', [G1], 300),
    work(H, 'machine', [D2, E, F, G2], 240),
  ];
  const { canDo, cannotYet } = today(plan);
  expect(canDo[0]?.operation.id).toBe(A);
  expect(canDo.map(({ operation }) => operation.id).sort((a, b) => a - b)).toEqual([A, D1, G1]);
  expect(cannotYet.map(({ operation }) => operation.id).sort((a, b) => a - b)).toEqual([B, C, D2, E, F, G2, H]);
});
