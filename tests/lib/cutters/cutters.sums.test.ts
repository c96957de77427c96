import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutterAnswer } from '../../../lib/cutters/cutters.sums.ts';
import { printFigure, printValue } from '../../../lib/figure/print-value.ts';
import type { Pitch } from '../../../lib/gears/gear.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { evaluateFigure } from '../evaluate.ts';
import { ask, cutterOf, dp, drawer, full20, gearOf, old14 } from './shop.ts';

const KEYS = ['formErrorTip', 'formErrorHalf', 'formErrorPitch', 'formErrorSquare'] as const;

describe('35 teeth, 8 DP, 14½°', () => {
  const answer = cutterAnswer(ask(gearOf(35)));
  const table = (title: string) => answer.tables?.find((one) => one.title.startsWith(title));
  const printed = (title: string) =>
    (table(title)?.rows ?? []).map((row) => row.map((cell) => (typeof cell === 'string' ? cell : printValue(cell, 'in').text)));

  test('figures: the cutter in words, the errors of the cutter that would be used', () => {
    expect(printFigure(answer.figures.cutter).text).toBe('No. 3, 8 DP, 14½°, 35 to 54 teeth');
    expect(KEYS.map((key) => printFigure(answer.figures[key]).text)).toEqual(['0.0075', '0.0028', '0.0003', '0.0060']);
    expect(answer.figures.formErrorTip.note).toContain('cutter No. 4');
  });

  test('the drawer, row by row, with verdicts', () => {
    expect(printed('Cutters in the drawer').map((row) => row.slice(0, 5))).toEqual([
      ['cutter No. 4', '26', '0.0075', '0.0028', '0.0003'],
      ['cutter No. 2', '55', '−0.0077', '−0.0028', '−0.0003'],
      ['20° No. 3', '35', '0.0122', '0.0065', '0.0002'],
      ['10 DP No. 3', '35', expect.stringMatching(/^−0\.0\d+$/), expect.stringMatching(/^−0\.0\d+$/), expect.stringMatching(/^−0\.019\d$/)],
    ]);
    expect(printed('Cutters in the drawer').map((row) => row[6]?.startsWith('Refused'))).toEqual([false, true, true, true]);
  });

  test('sources differ, both counts shown with what each would do', () => {
    expect(printed('Sources differ').map((row) => [row[0], row[2], row[3], row[4], row[5]])).toEqual([
      ['2', '55', '−0.0077', '68', '−0.0102'],
      ['3', '35', '0.0000', '40', expect.stringMatching(/^−0\.00/)],
      ['4', '26', '0.0075', '29', '0.0044'],
    ]);
  });

  test('advice and spans', () => {
    expect(printed('What to do').map((row) => row.slice(0, 2))).toEqual([
      ['borrow', '0.0000'],
      ['borrow', '0.0036'],
      ['in a pinch', '0.0075'],
    ]);
    expect(answer.says).toContain('Borrow a No. 3 ');
    expect(printed('Spans with')).toContainEqual(['3', '0.0000']);
    expect(printed('Spans with')).toContainEqual(['4', '−0.0018']);
  });
});

test('with the right cutter owned there is no error and no span table', () => {
  const answer = cutterAnswer(ask(gearOf(26)));
  expect(KEYS.map((key) => printFigure(answer.figures[key]).text)).toEqual(['0.0000', '0.0000', '0.0000', '0.0000']);
  expect(answer.tables?.some((one) => one.title.startsWith('Spans'))).toBe(false);
  expect(answer.says).toContain('Use cutter No. 4');
});

test('with nothing owned the figures are those of the cutter to look for', () => {
  const answer = cutterAnswer(ask(gearOf(22), []));
  expect(answer.figures.formErrorTip.note).toContain('No. 5, 8 DP, 14½°, 21 to 25 teeth');
  expect(answer.figures.cutter.note).toContain('Not owned');
});

describe('every printed formula gives its printed answer', () => {
  const worksOut = (question: Parameters<typeof cutterAnswer>[0]): void => {
    for (const figure of Object.values(cutterAnswer(question).figures)) {
      const worked = evaluateFigure(figure);
      if (worked) expect(Math.abs(worked.worked - worked.printed), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(worked.allowed);
    }
  };

  const module25: Pitch = { kind: 'module', size: ratio(5, 2) };
  const circular: Pitch = { kind: 'CP', size: ratio(5, 16) };
  test.each([
    ['DP', ask(gearOf(35))],
    ['module, 20°', ask(gearOf(30, { pitch: module25, system: full20 }), [cutterOf('5', 21, 25, { pitch: module25, angle: degrees(20) })])],
    ['circular pitch', ask(gearOf(41, { pitch: circular, system: old14 }), [])],
    ['fraction of a DP', ask(gearOf(41, { pitch: { kind: 'DP', size: ratio(22, 7) } }), [])],
    ['helical', ask(gearOf(24, { helix: { angle: degrees(23.5), hand: 'left' } }), drawer)],
  ])('%s', (_, question) => worksOut(question));

  test('the formula says the same as the figure to the nanometre’s own size, not only within what rounding allows', () => {
    const { formErrorTip } = cutterAnswer(ask(gearOf(35))).figures;
    const worked = evaluateFigure(formErrorTip)?.worked ?? 0;
    expect(Math.abs(worked * 25_400_000 - ('length' in formErrorTip.value ? formErrorTip.value.length : 0))).toBeLessThan(5);
  });

  test('any count and pitch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 300 }), fc.integer({ min: 2, max: 60 }), (teeth, size) => {
        worksOut(ask(gearOf(teeth, { pitch: dp(size) }), []));
      }),
      { numRuns: 40 },
    );
  });
});
