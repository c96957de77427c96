import { describe, expect, it } from 'vitest';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { ratiosAnswer } from '../../../lib/trains/trains.sums.ts';
import { evaluateFigure } from '../evaluate.ts';

const answer = ratiosAnswer({
  belongs: [19, 22, 25, 28, 31, 34, 37, 41, 46, 52],
  drawer: [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52],
  plannedRecuts: [
    { make: 22, from: 31 },
    { make: 28, from: 34 },
  ],
});

describe('ratiosAnswer', () => {
  it('prints both counts', () => {
    const printed = Object.fromEntries(Object.entries(answer.figures).map(([key, figure]) => [key, printFigure(figure).text]));
    expect(printed).toEqual({ complete: '1,350', today: '476', lost: '874', reallyToday: '707', reallyAllMade: '1,573' });
  });

  it('names in each figure which count it is', () => {
    for (const figure of Object.values(answer.figures)) expect(figure.name).toMatch(/one wheel of each number|really lie there/);
  });

  it.each(Object.entries(answer.figures))('works out %s from the printed givens', (_key, figure) => {
    const worked = evaluateFigure(figure);
    expect(worked).not.toBeNull();
    expect(Math.abs((worked?.worked ?? Number.NaN) - (worked?.printed ?? 0))).toBeLessThanOrEqual(worked?.allowed ?? 0);
  });

  it('has a row for each missing wheel, and none when nothing is missing', () => {
    expect(answer.tables?.[0]?.rows.map((row) => row.slice(0, 4))).toEqual([
      [{ count: 22 }, { count: 31 }, { count: 828 }, { count: 352 }],
      [{ count: 28 }, { count: 34 }, { count: 828 }, { count: 352 }],
    ]);
    expect(ratiosAnswer({ belongs: [20, 30], drawer: [20, 30] }).tables).toEqual([]);
  });

  it('says which spares are used up', () => {
    expect(answer.cautions[0]?.says).toMatch(/All made uses up the 31, 34\.$/);
  });
});
