import { describe, expect, it } from 'vitest';
import { plainIndexing } from '../../../lib/dividing/plain.sums.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { evaluateFigure } from '../evaluate.ts';
import { head, ODD_PLATE, THREE_PLATES, TWO_SIDED } from './plates.ts';

const on = (divisions: number, turns = 40, plates = THREE_PLATES, circle?: number) =>
  plainIndexing({ divisions, head: head(turns), plates, ...(circle === undefined ? {} : { circle }) });
const printed = (answer: ReturnType<typeof on>) =>
  Object.fromEntries(Object.entries(answer.figures).map(([key, figure]) => [key, printFigure(figure).text]));
const circles = (answer: ReturnType<typeof on>) => answer.tables?.[0]?.rows.map((row) => printFigureOfMove(row[3]));
const printFigureOfMove = (cell: unknown) => {
  const { turns, spaces, circle } = (cell as { move: { turns: number; spaces: number; circle: number } }).move;
  return `${turns} ${spaces}/${circle}`;
};

describe('plainIndexing', () => {
  it('gives the crank, the sector in spaces and in holes, and the proof', () => {
    expect(printed(on(22))).toEqual({
      turns: '20/11',
      leastCircle: '11',
      crank: '1 turn + 27 spaces on 33',
      sector: '27',
      sectorHoles: '28',
      proof: '40',
    });
    expect(printed(on(28))['crank']).toBe('1 turn + 9 spaces on 21');
    expect(printed(on(35))['crank']).toBe('1 turn + 3 spaces on 21');
    expect(printed(on(71, 40, [...THREE_PLATES]))['crank']).toBe('none');
  });

  it('lists every circle that serves 60, 22 spaces on 33 among them', () => {
    expect(circles(on(60))).toEqual(['0 10/15', '0 12/18', '0 14/21', '0 18/27', '0 22/33', '0 26/39']);
    expect(printed(on(60, 40, THREE_PLATES, 33))['crank']).toBe('22 spaces on 33');
    expect(circles(on(35))).toEqual(['1 3/21', '1 7/49']);
  });

  it('says that whole turns need no sector', () => {
    const whole = printed(on(20));
    expect(whole).toMatchObject({ crank: '2 turns', sector: 'none: whole turns', sectorHoles: 'none: whole turns', proof: '40' });
    expect(on(20).says).toBe('20 divisions: whole turns, on any circle.');
    expect(on(20).cautions.map((one) => one.name)).not.toContain('Spaces, not holes');
  });

  it('warns that 27 spaces are 28 holes, and to free and clamp the spindle', () => {
    const says = on(22).cautions.map((one) => one.says);
    expect(says).toContain('Set the sector by 27 spaces: that is 28 holes, counting the one that the pin stands in.');
    expect(says.filter((one) => one === 'Spindle clamp off before you crank, on before you cut.').length === 1).toBe(true);
  });

  it('prefers a plate that is in the shop, and says when only one that is away serves', () => {
    const away = THREE_PLATES.map((plate) => ({ ...plate, here: plate.id !== 2 }));
    expect(printed(on(28, 40, away))['crank']).toBe('1 turn + 21 spaces on 49');
    expect(on(28, 40, away).cautions.map((one) => one.name)).not.toContain('Plate away');
    expect(on(22, 40, away).cautions.map((one) => one.says)).toContain('Plate 2 is not in the shop.');
  });

  it.each([
    ['head of 40', 40, THREE_PLATES],
    ['head of 60', 60, TWO_SIDED],
    ['head of 90', 90, ODD_PLATE],
  ] as const)('%s: every printed formula, worked on the printed givens, gives the printed answer', (_name, turns, plates) => {
    let worked = 0;
    for (let N = 2; N <= 60; N++)
      for (const figure of Object.values(on(N, turns, [...plates]).figures)) {
        const found = evaluateFigure(figure);
        if (!found) continue;
        worked += 1;
        expect(Math.abs(found.worked - found.printed), `${N}: ${figure.name}`).toBeLessThanOrEqual(found.allowed);
      }
    expect(worked).toBeGreaterThan(100);
  });
});

describe('what cannot be divided', () => {
  it('refuses 71 on either set, naming the prime, with no near value anywhere', () => {
    for (const plates of [THREE_PLATES, TWO_SIDED]) {
      const answer = on(71, 40, plates);
      expect(answer.says).toBe(
        'No circle on these plates divides 71. One move is 40/71 of a turn and needs a circle that is a multiple of 71: 71 is prime, and no circle here is a multiple of it.',
      );
      expect(printed(answer)).toEqual({
        turns: '40/71',
        leastCircle: '71',
        crank: 'none',
        sector: 'none',
        sectorHoles: 'none',
        proof: 'none',
      });
      expect(answer.tables?.[0]?.rows).toEqual([]);
    }
  });

  it.each([
    [142, '20/71', '71 is prime'],
    [57, '40/57', 'its factor'],
    [81, '40/81', 'its factor 81 (3 × 3 × 3 × 3) divides no circle here'],
    [51, '40/51', '3 and 17 each divide a circle here, but no one circle holds both'],
    [96, '5/12', '4 (2 × 2) and 3 each divide a circle here, but no one circle holds both'],
    [3 * 53 * 59, '40/9381', 'its factors 53 and 59 divide no circle here'],
  ])('says of %i what stands in the way', (N, move, why) => {
    const { says = '' } = on(N);
    expect(says).toContain(`One move is ${move} of a turn`);
    if (N !== 57) expect(says).toContain(why);
    else expect(says).toContain('3 and 19 each divide a circle here');
  });

  it('refuses in words what is no division, no head and no plate', () => {
    for (const N of [0, 1, -5, 2.5, Number.NaN, 1e6, Number.POSITIVE_INFINITY]) expect(() => on(N), `${N}`).toThrow(DomainError);
    for (const turns of [0, -40, 40.5, Number.NaN, 1e9]) expect(() => on(22, turns), `${turns}`).toThrow(DomainError);
    expect(() => on(20, 40, [])).toThrow(/no index plate/);
    expect(() => on(20, 40, [{ ...(ODD_PLATE[0] as (typeof ODD_PLATE)[0]), sides: [[]] }])).toThrow(/no index plate/);
    for (const holes of [0, 1, -20, 20.5, Number.NaN, 1e9])
      expect(() => on(20, 40, [{ ...(ODD_PLATE[0] as (typeof ODD_PLATE)[0]), sides: [[20, holes]] }]), `${holes}`).toThrow(DomainError);
  });

  it('refuses a chosen circle that does not serve, and names those that do', () => {
    expect(() => on(22, 40, THREE_PLATES, 20)).toThrow(/Of the circles here these serve: 33\./);
  });

  it('takes the greatest count allowed at once', () => {
    expect(on(99_991).says).toContain('99991 is prime');
    expect(on(100_000).figures.crank.value).toEqual({ words: 'none' });
  });
});
