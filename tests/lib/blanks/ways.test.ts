import { describe, expect, it } from 'vitest';
import { type Stock, testStock } from '../../../lib/blanks/from-stock.ts';
import { ringAndHub } from '../../../lib/blanks/ring-and-hub.sums.ts';
import { waysFor } from '../../../lib/blanks/ways.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { inches } from '../../../lib/values/length.ts';
import { evaluateFigure } from '../evaluate.ts';
import { gear, spare } from './wheels.ts';

const bar = (diameter: number | null, length: number | null, hole = 0): Stock => ({
  id: 1,
  name: 'Bar',
  material: 'steel',
  diameter: diameter === null ? null : inches(diameter),
  length: length === null ? null : inches(length),
  hole: inches(hole),
});

describe('the 60 of the shaper', () => {
  const spares = [spare(41, 12), spare(48, 12)];
  const asked = { wanted: gear(60, 12), spares, stock: [], ring: 'steel', splines: false } as const;
  it('offers the ring on the 48 first, then the 41, then stock, sending out, doing without; refused re-cuts stay in sight', () => {
    const ways = waysFor(asked);
    expect(ways.filter(({ open }) => open === 'yes').map(({ way, spare: on }) => [way, on?.gear.teeth ?? null])).toEqual([
      ['ring and hub', 48],
      ['ring and hub', 41],
      ['send out', null],
      ['do without', null],
    ]);
    expect(ways.filter(({ way, open }) => way === 're-cut, clean' && open === 'no')).toHaveLength(2);
    expect(ways[0]?.says).toContain('The spare is smaller');
  });
  it('of what does not serve, the spare with least against it and nearest in size is named first', () => {
    const worse = spare(
      52,
      12,
      {},
      { bore: null, body: { known: true, recesses: [{ side: 'both', inner: inches(2), outer: inches(4.9) }], openings: [] } },
    );
    const ways = waysFor({ ...asked, spares: [spare(19, 12), worse, ...spares] });
    const refused = ways.filter(({ way, open }) => way.startsWith('re-cut') && open === 'no').map(({ spare: on }) => on?.gear.teeth);
    expect(refused).toEqual([48, 41, 19, 52]);
  });
  it('prints every figure of the ring', () => {
    const { figures } = ringAndHub({ wanted: gear(60, 12), spare: spare(48, 12), ring: 'steel' }).answer;
    const keys = ['oldRoot', 'hub', 'newOutside', 'newRoot', 'underTeeth', 'underTeethDepths', 'ringBore', 'rise', 'oven'] as const;
    const printed = keys.map((key) => (figures[key] ? printFigure(figures[key]).text : ''));
    expect(printed).toEqual(['3.8072', '3.7500', '5.1667', '4.8072', '0.5286', '2.94', '3.7463', '317', '387']);
  });
  it('works its printed formulas', () => {
    for (const hub of [undefined, inches(3.7491)]) {
      const { figures } = ringAndHub({ wanted: gear(60, 12), spare: spare(48, 12), ring: 'steel', ...(hub ? { hub } : {}) }).answer;
      for (const figure of Object.values(figures)) {
        const worked = evaluateFigure(figure);
        if (worked)
          expect(Math.abs(worked.printed - worked.worked), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(worked.allowed);
        else expect(figure.name).toBe('Hub, measured');
      }
    }
  });
  it('refuses zinc, a hub above the old roots, and asks when the body is unknown', () => {
    const on = (more: Parameters<typeof spare>[2], of = {}) =>
      ringAndHub({ wanted: gear(60, 12), spare: spare(48, 12, more, of), ring: 'steel' });
    expect(on({ material: 'zinc' }).verdict).toBe('refused');
    expect(on({ material: 'unknown' }).verdict).toBe('measure first');
    expect(on({}, { body: { known: false } }).verdict).toBe('measure first');
    const large = ringAndHub({ wanted: gear(60, 12), spare: spare(48, 12), ring: 'steel', hub: inches(3.9) });
    expect(large.says).toContain('traces of the old gaps');
  });
});

describe('ways in their order', () => {
  it('a clean re-cut first, the least metal first, only just after it', () => {
    const spares = [spare(40), spare(29), spare(31), spare(27)];
    const ways = waysFor({ wanted: gear(22), spares, stock: [bar(4, 3)], ring: 'steel', splines: true }).filter(
      ({ open }) => open === 'yes',
    );
    expect(ways.slice(0, 5).map(({ way, spare: of }) => `${way} ${of?.gear.teeth ?? ''}`)).toEqual([
      're-cut, clean 29',
      're-cut, clean 31',
      're-cut, clean 40',
      're-cut, only just 27',
      'from stock ',
    ]);
  });
});

describe('stock', () => {
  it.each([
    [bar(3.06, 1.06), 'serves'],
    [bar(3.0599, 1.06), 'refused'],
    [bar(3.06, 1.0599), 'refused'],
    [bar(null, 3), 'measure first'],
    [bar(2, null), 'refused'],
    [bar(4, 3, 1.1), 'refused'],
  ])('for 22 teeth of 8 DP, 0.875 face: %#', (stock, verdict) => {
    expect(testStock({ wanted: gear(22), stock }).verdict).toBe(verdict);
  });
});
