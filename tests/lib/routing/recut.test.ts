import { describe, expect, test } from 'vitest';
import { circlesFor } from '../../../lib/routing/circles-for.ts';
import { indexSheet } from '../../../lib/routing/index-sheet.ts';
import { needWords } from '../../../lib/routing/needs.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { sharedSetUps } from '../../../lib/routing/shared-set-ups.ts';
import { at, lathe, printed, shop, spare, wanted } from './halvorsen.ts';

// Story 1, the Halvorsen H-12: every figure typed from the story, each derived there from the formulas it names.
const parts = [wanted(22), wanted(28)];
const { byMark } = circlesFor(parts, shop());

function plan(teeth: number, from: number, more: Parameters<typeof shop>[0] = {}) {
  const part = wanted(teeth);
  const circle = byMark.get(part.mark);
  if (!circle) throw new Error('no circle was chosen');
  return planRouting({ way: 're-cut a spare', wanted: part, blank: spare(from), shop: shop(more), readings: {}, circle }).operations;
}
const [of22, of28] = [plan(22, 31), plan(28, 34)];

/** operation, figure, 22 from 31, 28 from 34. */
const FIGURES = [
  ['sound', 'oldOutside', '4.1250', '4.5000'],
  ['sound', 'oldRoot', '3.5858', '3.9608'],
  ['sound', 'newOutside', '3.0000', '3.7500'],
  ['sound', 'turnOff', '0.5625', '0.3750'],
  ['sound', 'throughTeeth', '0.2696', '0.2696'],
  ['sound', 'wholeDepth', '0.2696', '0.2696'],
  ['sound', 'newRoot', '2.4608', '3.2108'],
  ['sound', 'wall', '0.6054', '0.9804'],
  ['through-teeth', 'turnOff', '0.5625', '0.3750'],
  ['through-teeth', 'throughTeeth', '0.2696', '0.2696'],
  ['solid', 'roughTo', '3.0300', '3.7800'],
  ['last-cuts', 'lastCuts', '0.0150', '0.0150'],
  ['blank', 'outside', '3.0000', '3.7500'],
  ['blank', 'rootDiameter', '2.4608', '3.2108'],
  ['plate', 'crank', '1 turn + 27 spaces on 33', '1 turn + 9 spaces on 21'],
  ['plate', 'sector', '27', '9'],
  ['plate', 'sectorHoles', '28', '10'],
  ['plate', 'proof', '40', '40'],
  ['touch', 'depth', '0.2696', '0.2696'],
  ['touch', 'wholeDepth', '0.2696', '0.2696'],
  ['nick', 'nicks', '23', '29'],
  ['first-span', 'k', '2', '3'],
  ['first-span', 'span', '0.5850', '0.9693'],
  ['first-span', 'feedWhenLarge', '0.0089', '0.0076'],
  ['measure', 'span', '0.5850', '0.9693'],
] as const;

describe('the 22 from the 31 and the 28 from the 34', () => {
  test.each(FIGURES)('%s, %s', (operation, figure, for22, for28) => {
    expect(printed(of22, operation, figure)).toBe(for22);
    expect(printed(of28, operation, figure)).toBe(for28);
  });

  test('over 3 on request, the 22 reads 0.9652', () => expect(printed(of22, 'first-span', 'spanAbove')).toBe('0.9652'));

  // 0.5625 a side less the 0.015 a side left for the last cuts is 547.5 thousandths of travel: derived.
  test('the dial of a lathe that reads travel, and of one that reads diameter', () => {
    expect(printed(of22, 'solid', 'dial')).toBe('5 turns + 47.5 divisions');
    const diameter = {
      ...lathe,
      crossDial: { reads: 'diameter', unit: 'in', division: lathe.crossDial?.division, perTurn: 100 },
    } as typeof lathe;
    expect(printed(plan(22, 31, { lathe: diameter }), 'solid', 'dial')).toBe('10 turns + 95 divisions');
    expect(printed(of22, 'last-cuts', 'firstCut')).toBe('7.5 divisions');
    expect(printed(of22, 'touch', 'dial')).toBe('2 turns + 69.6 divisions');
  });

  test('speeds come from the list and never above what was worked out', () => {
    // 12 × 90 ÷ 2 ÷ (π × 4.125) = 41.7: of 28 and 45 it is the 28.
    expect(printed(of22, 'through-teeth', 'speedWorkedOut')).toBe('41.7');
    expect(printed(of22, 'through-teeth', 'speed')).toBe('28');
    expect(printed(of28, 'rough', 'speed')).toBe('63');
    const fast = { ...lathe, speedsRpm: [58, 95] };
    expect(printed(plan(22, 31, { lathe: fast }), 'through-teeth', 'speed')).toContain('none low enough: the lowest is 58');
    expect(at(plan(22, 31, { lathe: null }), 'through-teeth').cautions.map(({ name }) => name)).toContain('no speeds known');
  });

  test('cutting waits for the mandrel first and then for No. 5; the 28 has its cutter', () => {
    expect(at(of22, 'rough').needs.map(needWords)).toEqual([
      'mandrel for a 6-spline bore of 1.2500 in',
      'dividing head of 40 to 1',
      'index plate with a circle of 33',
      'cutter No. 5, 8 DP, 14½°, for 22 teeth',
    ]);
    expect(at(of28, 'rough').needs.map(needWords)).toContain('cutter No. 4, 8 DP, 14½°, for 28 teeth');
    expect(at(of22, 'solid').needs.map(({ kind }) => kind)).toEqual(['mandrel']);
    expect(at(of22, 'make-mandrel').must).toBe(false);
    expect(at(of22, 'cutter-on-arbor').cautions.some(({ says }) => says.includes('arbors here are 1 in'))).toBe(true);
  });

  test('both cuttings share one set-up; only circle, sector, cutter and sizes differ', () => {
    expect(at(of22, 'rough').setUp.key).toBe(at(of28, 'rough').setUp.key);
    expect(at(of22, 'solid').setUp.key).toBe(at(of28, 'solid').setUp.key);
    const shared = sharedSetUps([
      { mark: 'H12-22T', name: '22', operations: of22 },
      { mark: 'H12-28T', name: '28', operations: of28 },
    ]);
    expect(shared.map(({ setUp }) => setUp.place)).toEqual(['lathe', 'mill']);
    const mill = shared[1];
    expect(mill?.common.needs).toEqual(['mandrel for a 6-spline bore of 1.2500 in', 'dividing head of 40 to 1']);
    expect(mill?.common.figures.map(({ shown }) => shown)).toContain('0.2696 in');
    expect(mill?.parts[0]?.needs).toEqual(['cutter No. 5, 8 DP, 14½°, for 22 teeth', 'index plate with a circle of 33']);
    expect(mill?.parts[1]?.figures.find(({ key }) => key === 'crank')?.shown).toBe('1 turn + 9 spaces on 21');
  });

  test('the tick sheet has one line more than teeth and lands in hole 0 again', () => {
    const rows = indexSheet(22, of22);
    expect(rows).toHaveLength(23);
    // Two moves of 27 on 33 are 54, which is 21 past a whole turn.
    expect(rows.map(({ hole }) => hole).slice(0, 3)).toEqual([0, 27, 21]);
    expect(rows[22]).toMatchObject({ hole: 0, backAtFirst: true });
  });

  test('a mandrel in the shop takes the word on making one away', () => {
    const made = plan(22, 31, {
      mandrels: [{ id: 9, name: 'M', here: true, kind: 'mandrel', bore: spare(31).gear.bore as never, holding: 'nut', runOut: null }],
    });
    expect(made.some(({ key }) => key === 'make-mandrel')).toBe(false);
  });
});
