import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../lib/figure/figure.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { backlashAnswer } from '../../../lib/gears/backlash.sums.ts';
import { chordalAnswer } from '../../../lib/gears/chordal.sums.ts';
import { depthToDial } from '../../../lib/gears/depth.sums.ts';
import { stillToFeed } from '../../../lib/gears/feed.sums.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { spanCount } from '../../../lib/gears/spur.formulas.ts';
import { gearBlank } from '../../../lib/gears/spur.sums.ts';
import { TOOTH_SYSTEMS } from '../../../lib/gears/systems.data.ts';
import { doublePitchStub } from '../../../lib/gears/systems.ts';
import { outsideDiameter, toothOf } from '../../../lib/gears/tooth.ts';
import type { Wheel } from '../../../lib/gears/wheel.ts';
import { add, inches, millimetres, nanometres, ofUnit } from '../../../lib/values/length.ts';
import { evaluateFigure } from '../evaluate.ts';
import { wheelOf } from './wheel-of.ts';

/** Works every printed formula on its printed givens; gives the number of figures worked. */
function workedOut(answer: Answer): number {
  const figures = Object.values(answer.figures);
  for (const figure of figures) {
    expect(figure.source.length).toBeGreaterThan(10);
    const by = evaluateFigure(figure);
    if (by) expect(Math.abs(by.worked - by.printed), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(by.allowed);
  }
  return figures.length;
}

const pitches = fc.constantFrom('8 DP', '12 DP', '14.5 DP', '20 DP', '48 DP', 'module 1.25', 'M2.5', 'M5', '5/16 CP', '3/8 CP', '10 mm CP');
const wheels: fc.Arbitrary<Wheel> = fc
  .tuple(fc.integer({ min: 12, max: 200 }), pitches, fc.constantFrom(...TOOTH_SYSTEMS.map((named) => named.key)))
  .map(([N, pitch, key]) => wheelOf(N, pitch, key));

describe('every printed formula, worked on its printed figures, gives the printed answer', () => {
  it('blank', () => {
    fc.assert(
      fc.property(wheels, (wheel) => {
        expect(workedOut(gearBlank(wheel))).toBe(10);
      }),
    );
    expect(workedOut(gearBlank({ teeth: 30, ...doublePitchStub(5, 7) }))).toBe(10);
  });

  it('span, with and without backlash', () => {
    fc.assert(
      fc.property(wheels, fc.integer({ min: 0, max: 60 }), (wheel, tenths) => {
        fc.pre(spanCount(toothOf(wheel)) !== null);
        expect(workedOut(spanAnswer(wheel, { backlash: inches(tenths / 10_000) }))).toBeGreaterThanOrEqual(4);
      }),
    );
  });

  it('chord, depth, feed and backlash', () => {
    fc.assert(
      fc.property(
        wheels,
        fc.integer({ min: -80, max: 20 }),
        fc.constantFrom('form cutter' as const, 'generated' as const),
        (gear, off, made) => {
          const tooth = toothOf(gear);
          fc.pre(spanCount(tooth) !== null);
          const measuredOutside = add(ofUnit(outsideDiameter(tooth), tooth.unit), inches(off / 10_000));
          const backlash = inches(0.0021);
          workedOut(chordalAnswer(gear));
          workedOut(chordalAnswer(gear, { measuredOutside, backlash }));
          workedOut(depthToDial({ gear }));
          workedOut(depthToDial({ gear, measuredOutside, paper: millimetres(0.03), backlash, made }));
          workedOut(depthToDial({ gear, stampedDepth: ofUnit(tooth.A + tooth.B, tooth.unit), measuredOutside }));
          workedOut(backlashAnswer(gear, backlash));
          const k = spanCount(tooth) ?? 0;
          const spanWanted = ofUnit(tooth.N * tooth.m * 0.3, tooth.unit);
          workedOut(stillToFeed({ gear, k, spanRead: add(spanWanted, inches(off / 10_000)), spanWanted, made }));
        },
      ),
    );
  });

  it('bites: a formula whose number is changed is caught', () => {
    const { rootDiameter } = gearBlank(wheelOf(22, '8 DP')).figures;
    const by = evaluateFigure({ ...rootDiameter, formula: rootDiameter.formula.replace('2 × B', '2.01 × B') });
    expect(by && Math.abs(by.worked - by.printed) > by.allowed).toBe(true);
  });
});

describe('what is printed', () => {
  it('exact ties go away from zero: 3.58575 prints 3.5858', () => {
    const roots = [31, 34, 22, 28].map((N) => printFigure(gearBlank(wheelOf(N, '8 DP')).figures.rootDiameter).text);
    expect(roots).toEqual(['3.5858', '3.9608', '2.4608', '3.2108']);
  });

  it('says the formula in the pitch’s own symbol', () => {
    const of = (pitch: string): string => gearBlank(wheelOf(30, pitch)).figures.outsideDiameter.formula;
    expect([of('8 DP'), of('M3'), of('5/16 CP')]).toEqual(['(N + 2) ÷ P', '(N + 2) × m', '(N + 2) × p ÷ π']);
  });

  it('limits: outside +0 −0.02/P, span +0 −0.001 in', () => {
    const outside = gearBlank(wheelOf(22, '8 DP')).figures.outsideDiameter;
    expect(outside.limits).toEqual([{ length: inches(2.9975) }, { length: inches(3) }]);
    const { value, limits } = spanAnswer(wheelOf(22, 'M3', 'module-1.25')).figures.span;
    if (!('length' in value)) throw new Error('no length');
    expect(limits).toEqual([{ length: nanometres(value.length - 25_400) }, value]);
  });
});
