import { describe, expect, it } from 'vitest';
import { formErrorsOf } from '../../../lib/cutters/form-errors.ts';
import { indexRows } from '../../../lib/dividing/index-table.ts';
import { chooseCircles } from '../../../lib/dividing/joint.ts';
import { countRatios } from '../../../lib/trains/ratio-count.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { drawerAnswer } from '../../../server/sums/drawer-answer.ts';
import { formAnswer } from '../../../server/sums/form-answer.ts';
import { bareGear } from '../../../server/sums/gears.ts';
import { headOf, indexTable, jointAnswer } from '../../../server/sums/index-answers.ts';
import { whichSpareAnswer } from '../../../server/sums/which-spare-answer.ts';
import { PLATES } from './direct.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const gear = (teeth: number) => bareGear({ teeth, pitch: { kind: 'DP', size: [8, 1] }, system: SYSTEM });
const MODEL = {
  ...gear(20),
  bore: { form: 'plain', diameter: inches(0.1) },
  face: inches(1),
  body: { known: true, recesses: [], openings: [] },
} as const;

describe('answers that are put together out of plain values of lib', () => {
  it('missing and spare, number by number', () => {
    const { figures, tables } = drawerAnswer([20, 20, 30, 40], [20, 30, 30, 50], gear(20));
    expect([figures.missing.value, figures.spare.value]).toEqual([{ words: '20, 40' }, { words: '30, 50' }]);
    expect(tables?.[0]?.rows.map((row) => row.map((cell) => (typeof cell === 'object' && 'count' in cell ? cell.count : cell)))).toEqual([
      [20, 2, 1, 1, 0],
      [30, 1, 2, 0, 1],
      [40, 1, 0, 1, 0],
      [50, 0, 1, 0, 1],
    ]);
  });

  it('missing less spare is what belongs less what lies there', () => {
    const [belongs, there] = [
      [19, 19, 22, 30],
      [19, 22, 22, 22, 41],
    ];
    const { figures } = drawerAnswer(belongs, there, gear(20));
    const many = (value: object): number => ('count' in value ? Number(value.count) : Number.NaN);
    expect(many(figures.missingMany.value) - many(figures.spareMany.value)).toBe(belongs.length - there.length);
  });

  it('which spare: the ratios are those of the wheels that are then there', () => {
    const { figures, says } = whichSpareAnswer([22, 30, 40], [40, 40, 30], MODEL);
    expect(says).toBe('40 becomes 22.');
    expect(figures.ratios.value).toEqual({ count: countRatios([22, 30, 40]).distinct, unit: 'ratios' });
    expect(figures.notMade.value).toEqual({ words: 'none: all are made' });
  });

  it('which spare: more than six missing are refused in words', () => {
    expect(() => whichSpareAnswer([20, 21, 22, 23, 24, 25, 26], [60], MODEL)).toThrow(/up to 6 missing wheels/);
  });

  it('circles for several wheels: each line is what lib chose', () => {
    const answer = jointAnswer([28, 22, 22, 60], 40, PLATES);
    const choice = chooseCircles(
      [22, 28, 60].map((divisions) => ({ key: `${divisions}`, divisions, head: { turns: 40 } })),
      PLATES,
    );
    expect(answer.says).toBe(choice.says);
    expect(answer.tables?.[0]?.rows.map((row) => [row[0], row[3]])).toEqual(
      choice.jobs.map(({ divisions, move }) => [{ count: divisions }, { move }]),
    );
    expect(answer.figures.plates.value).toEqual({ count: choice.mountings.length, unit: 'plates' });
  });

  it('the index table, walked by turning a crank hole by hole', () => {
    const answer = indexTable({ divisions: 28, head: headOf(40), plates: PLATES });
    const rows = answer.tables?.[0]?.rows ?? [];
    expect(rows).toHaveLength(29);
    let walked = 0;
    rows.forEach(([, turns, hole], at) => {
      expect(hole).toEqual({ count: walked % 21 });
      const [whole, left] = [Math.floor(walked / 21), walked % 21];
      expect(turns).toBe(left === 0 ? `${whole}` : `${whole} + ${left}/21`);
      expect(indexRows(28, { turns: 1, spaces: 9, circle: 21 })[at]?.hole).toBe(walked % 21);
      walked += 21 + 9;
    });
    expect(rows.at(-1)?.slice(0, 2)).toEqual(['1 again', '40']);
  });

  it('the error of a form is that of lib, of its own angle or another', () => {
    const toCut = { teeth: 35, pitch: gear(35).pitch, system: SYSTEM, helix: null };
    for (const [count, angle] of [
      [26, degrees(14.5)],
      [55, degrees(14.5)],
      [35, degrees(20)],
    ] as const) {
      const lib = formErrorsOf(toCut, { pitch: toCut.pitch, angle, exact: { count, from: 'typed' } });
      const { figures } = formAnswer(toCut, count, angle);
      expect([
        figures.formErrorTip.value,
        figures.formErrorHalf.value,
        figures.formErrorPitch.value,
        figures.formErrorSquare.value,
      ]).toEqual([{ length: lib?.tip }, { length: lib?.half }, { length: lib?.pitchLine }, { length: lib?.square }]);
    }
  });
});
