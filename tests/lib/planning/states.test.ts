import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { inOrder } from '../../../lib/planning/order.ts';
import { statesOf } from '../../../lib/planning/states.ts';
import type { WorkOperation } from '../../../lib/planning/work.ts';
import { cutter, mandrel } from '../routing/halvorsen.ts';
import { idOf, twoGears } from './two-gears.ts';

const work = (id: number, after: readonly number[] = [], more: Partial<WorkOperation> = {}): WorkOperation => ({
  id,
  partName: 'gear',
  title: `step ${id}`,
  done: false,
  struck: false,
  after,
  needs: [],
  ...more,
});
const stateOf = (operations: readonly WorkOperation[], id: number) => {
  const found = statesOf(operations).find((state) => state.id === id);
  if (!found) throw new Error(`no state of ${id}`);
  return found;
};
const MANDREL = 'mandrel for a 6-spline bore of 1.2500 in';
const NO_5 = 'cutter No. 5, 8 DP, 14½°, for 22 teeth';
const tools = (operations: readonly WorkOperation[], id: number) =>
  stateOf(operations, id)
    .waits.filter((wait) => wait.for === 'tool')
    .map(({ says }) => says);

describe('story 1', () => {
  const gears = twoGears();
  const cut22 = idOf(gears, 22, 'rough');

  test('both gears wait first of all for the spline mandrel, then the 22 for No. 5', () => {
    expect(tools(gears, cut22)).toEqual([MANDREL, NO_5]);
    expect(tools(gears, idOf(gears, 28, 'rough'))).toEqual([MANDREL]);
    expect(stateOf(gears, cut22).says).toMatch(new RegExp(`^Waits first of all for ${MANDREL}; then for ${NO_5}`));
  });

  test('turning waits for the mandrel and not for the cutter', () => expect(tools(gears, idOf(gears, 22, 'solid'))).toEqual([MANDREL]));

  test('counting is ready; the file test waits for it', () => {
    expect(stateOf(gears, idOf(gears, 22, 'count')).says).toBe('Ready.');
    expect(stateOf(gears, idOf(gears, 22, 'file-test')).says).toBe('Waits for Count, measure and photograph the spare.');
  });

  test('mandrel and No. 5 come: nothing waits for a tool any more', () => {
    const come = twoGears({}, { mandrels: [mandrel], cutters: [cutter(4, '4', 26, 34), cutter(5, '5', 21, 25)] });
    expect(tools(come, cut22)).toEqual([]);
    const upTo = come.map((one) => (one.id < cut22 ? { ...one, done: true } : one));
    expect(stateOf(upTo, cut22).state).toBe('ready');
  });

  test('held for the 22, and ready once that is done or struck out', () => {
    const cut28 = idOf(gears, 28, 'rough');
    const held = gears.map((one) => (one.id === cut28 ? { ...one, heldFor: cut22, after: [], needs: [] } : one));
    expect(stateOf(held, cut28)).toMatchObject({ state: 'held', heldFor: cut22, says: 'Held for Rough all round, 2 times (the 22).' });
    for (const end of [{ done: true }, { struck: true }])
      expect(
        stateOf(
          held.map((one) => (one.id === cut22 ? { ...one, ...end } : one)),
          cut28,
        ).state,
      ).toBe('ready');
  });
});

describe('rings are refused', () => {
  test.each([
    ['of two', [work(1, [2]), work(2, [1])]],
    ['of itself', [work(1, [1])]],
    ['by way of a hold', [work(1, [2]), work(2, [], { heldFor: 1 })]],
  ])('%s', (_, operations) => expect(() => statesOf(operations)).toThrow(DomainError));

  test('two ways to the same end are no ring', () =>
    expect(statesOf([work(1), work(2, [1]), work(3, [1]), work(4, [2, 3])])).toHaveLength(4));
});

test('a struck operation holds nothing up, and what is done waits for nothing', () => {
  const lacking = { needs: [{ says: 'a tap', metBy: null }] };
  expect(stateOf([work(1, [], { struck: true, ...lacking }), work(2, [1])], 2).state).toBe('ready');
  expect(stateOf([work(1, [], { done: true, ...lacking })], 1)).toMatchObject({ state: 'done', waits: [] });
});

test('a long line of work is no trouble', () => {
  const line = Array.from({ length: 20_000 }, (_, i) => work(i, i === 19_999 ? [] : [i + 1]));
  expect(inOrder(line)[0]?.id).toBe(19_999);
});

test('ready is exactly: not done, nothing lacking, nothing open before it, not held (against the definition)', () =>
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          done: fc.boolean(),
          struck: fc.boolean(),
          lacks: fc.boolean(),
          follows: fc.array(fc.nat(20)),
          held: fc.option(fc.nat(20)),
        }),
        { maxLength: 15 },
      ),
      (rows) => {
        const earlier = (i: number, id: number) => id < i;
        const all = rows.map(({ done, struck, lacks, follows, held }, i) =>
          work(i, [...new Set(follows.filter((id) => earlier(i, id)))], {
            done,
            struck,
            heldFor: held !== null && earlier(i, held) ? held : null,
            needs: [{ says: 'x', metBy: lacks ? null : 'tool' }],
          }),
        );
        const open = (id: number) => !all[id]?.done && !all[id]?.struck;
        for (const { id, state } of statesOf(all)) {
          const one = all[id] as WorkOperation;
          const free =
            (one.heldFor === null || one.heldFor === undefined || !open(one.heldFor)) && one.after.every((before) => !open(before));
          expect(state === 'ready').toBe(open(id) && free && one.needs[0]?.metBy !== null);
        }
      },
    ),
    { numRuns: 200 },
  ));
