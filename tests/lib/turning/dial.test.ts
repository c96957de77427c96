import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Dial } from '../../../lib/tooling/tooling.ts';
import { divisionsIn, fromDialCounts } from '../../../lib/turning/dial.formulas.ts';
import { dialMove } from '../../../lib/turning/dial.sums.ts';
import { nextDialMove } from '../../../lib/turning/next-move.sums.ts';
import { inches, type Length, millimetres, nanometres, toInches } from '../../../lib/values/length.ts';

const thou: Dial = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 };

const anyDial = fc.record({
  reads: fc.constantFrom<'travel' | 'diameter'>('travel', 'diameter'),
  unit: fc.constantFrom<'in' | 'mm'>('in', 'mm'),
  division: fc.constantFrom(inches(0.0005), inches(0.001), inches(0.002), millimetres(0.01), millimetres(0.02), millimetres(0.05)),
  perTurn: fc.constantFrom(50, 60, 100, 125, 200, 250),
});

describe('a movement in turns and divisions', () => {
  it('adds up again to what was wanted, within half a division', () => {
    fc.assert(
      fc.property(
        anyDial,
        fc.integer({ min: 0, max: 60_000_000 }),
        fc.constantFrom<'travel' | 'diameter'>('travel', 'diameter'),
        (dial, nm, counted) => {
          const { move } = dialMove({ move: nm as Length, counted, dial }).figures;
          if (!('dial' in move.value)) throw new Error('no dial move');
          expect(move.value.dial.divisions).toBeGreaterThanOrEqual(0);
          expect(move.value.dial.divisions).toBeLessThan(dial.perTurn);
          const back = fromDialCounts(divisionsIn(move.value.dial) * dial.division, dial.reads, counted);
          expect(Math.abs(back - nm)).toBeLessThanOrEqual(fromDialCounts(dial.division, dial.reads, counted) / 2 + 1);
        },
      ),
    );
  });

  it('the lower line never takes more than wanted, and says what it leaves', () => {
    fc.assert(
      fc.property(anyDial, fc.integer({ min: 0, max: 60_000_000 }), (dial, nm) => {
        const { line, left } = dialMove({ move: nm as Length, counted: 'diameter', dial }).figures;
        if (!('dial' in line.value && 'length' in left.value)) throw new Error('no line');
        const taken = divisionsIn(line.value.dial) * dial.division * (dial.reads === 'travel' ? 2 : 1);
        expect(taken + left.value.length).toBe(nm);
        expect(left.value.length).toBeGreaterThanOrEqual(-dial.division / 200);
        expect(left.value.length).toBeLessThan(dial.division * (dial.reads === 'travel' ? 2 : 1));
      }),
    );
  });

  it('counts two hundred and eighty-one lines and a quarter for 0.5625 off the diameter', () => {
    const { figures, says } = dialMove({ move: inches(0.5625), counted: 'diameter', dial: thou });
    expect(figures.move.value).toEqual({ dial: { turns: 2, divisions: 81.3, perTurn: 100 } });
    expect(figures.line.value).toEqual({ dial: { turns: 2, divisions: 81, perTurn: 100 } });
    expect(figures.line.error).toEqual({ length: inches(0.0005) });
    expect(says).toContain('Between two lines');
  });

  it('says that it lies on a line when it does', () => {
    const { figures, says } = dialMove({ move: inches(0.03), counted: 'diameter', dial: thou });
    expect(figures.line.error).toBeUndefined();
    expect(says).toBe('On a line.');
  });

  it('a metric movement on an inch dial is told between lines', () => {
    expect(dialMove({ move: millimetres(1), counted: 'travel', dial: thou }).says).toContain('Between');
  });

  it('refuses a move below zero and a dial without lines', () => {
    expect(() => dialMove({ move: nanometres(-1), counted: 'travel', dial: thou })).toThrow(DomainError);
    expect(() => dialMove({ move: inches(1), counted: 'travel', dial: { ...thou, perTurn: 0 } })).toThrow(DomainError);
    expect(() => dialMove({ move: inches(1), counted: 'travel', dial: { ...thou, division: inches(0) } })).toThrow(DomainError);
  });
});

describe('the next move from what was measured', () => {
  const size = (v: unknown) => toInches((v as { length: Length }).length);

  it('halves what is left while two cuts are to come', () => {
    const { figures } = nextDialMove({ measured: inches(3.03), wanted: inches(3), dial: { ...thou, reads: 'diameter' }, cuts: 2 });
    expect(figures.move.value).toEqual({ dial: { turns: 0, divisions: 15, perTurn: 100 } });
  });

  it('takes half on a dial that reads travel', () => {
    const { figures } = nextDialMove({ measured: inches(3.012), wanted: inches(3), dial: thou });
    expect(figures.move.value).toEqual({ dial: { turns: 0, divisions: 6, perTurn: 100 } });
  });

  it.each([
    [{ high: inches(2.999) }, 'high', 'The greatest size accepted is 2.9990 in, and 3.0000 in is wanted.'],
    [{ low: inches(3.001) }, 'low', 'The least size accepted is 3.0010 in, and 3.0000 in is wanted.'],
  ])('limits that leave the wanted size out are refused: %j', (limits, about, given) => {
    const ask = () => nextDialMove({ measured: inches(2.9995), wanted: inches(3), dial: thou, ...limits });
    expect(ask).toThrow(given);
    expect(ask).toThrow(expect.objectContaining({ about: [about] }));
  });

  it('below size: says by how much the metal is gone, and moves nothing', () => {
    const { figures, cautions, says } = nextDialMove({ measured: inches(2.997), wanted: inches(3), dial: thou });
    expect(size(figures.off.value)).toBeCloseTo(-0.003, 9);
    expect(figures.move.value).toEqual({ dial: { turns: 0, divisions: 0, perTurn: 100 } });
    expect(cautions[0]?.weight).toBe('danger');
    expect(says).toContain('metal gone by 0.0030 in');
  });

  it('within limits is left alone; metal gone is counted from the low limit', () => {
    const at = (m: number) =>
      nextDialMove({ measured: inches(m), wanted: inches(3), low: inches(2.9975), high: inches(3), dial: thou }).says;
    expect(at(2.998)).toBe('On size: leave it.');
    expect(at(3)).toBe('On size: leave it.');
    expect(at(2.997)).toContain('metal gone by 0.0005');
    expect(at(3.0001)).toContain('Metal left');
  });

  it('following the moves one by one ends on size', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.constantFrom<'travel' | 'diameter'>('travel', 'diameter'), (over, reads) => {
        const dial = { ...thou, reads };
        const measured = nanometres(inches(3) + over * 2 * dial.division);
        const { move } = nextDialMove({ measured, wanted: inches(3), dial }).figures;
        if (!('dial' in move.value)) throw new Error('no dial');
        const after = measured - divisionsIn(move.value.dial) * dial.division * (reads === 'travel' ? 2 : 1);
        expect(after).toBe(inches(3));
      }),
    );
  });
});
