import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { fitPressure, hoopStress, ringFactor } from '../../../lib/fits/shrink.formulas.ts';
import { type ShrinkAsked, shrinkFit } from '../../../lib/fits/shrink.sums.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { readingFahrenheit } from '../../../lib/values/temperature.ts';
import { evaluateFigure } from '../evaluate.ts';

const asked: ShrinkAsked = {
  hub: inches(3.75),
  hubMeasured: true,
  ringOutside: inches(4.8072),
  hubBore: inches(1.25),
  ring: 'steel',
  hubMaterial: 'steel',
  unit: 'in',
};

describe('the ring of the 60', () => {
  it('prints bore, rise and oven, each with its own unit', () => {
    const { figures } = shrinkFit(asked).answer;
    expect(printFigure(figures.ringBore).text).toBe('3.7463');
    expect(printFigure(figures.rise)).toEqual({ text: '317', unit: '°F of rise', other: '176 °C of rise' });
    expect(printFigure(figures.oven)).toEqual({ text: '387', unit: '°F', other: '197 °C' });
    expect(printFigure(figures.hoopStress).text).toBe('23.0');
  });
  it('is accepted in steel, in iron only at half the allowance, and never in zinc or phenolic', () => {
    expect(shrinkFit(asked).accepted).toBe(true);
    expect(shrinkFit({ ...asked, ring: 'cast iron' }).accepted).toBe(true);
    const iron = shrinkFit({ ...asked, ring: 'cast iron', allowancePerInch: 0.001 });
    expect(iron.accepted).toBe(false);
    expect(iron.reasons[0]).toContain('a quarter of its strength');
    for (const material of ['zinc', 'phenolic', 'unknown'] as const) {
      expect(() => shrinkFit({ ...asked, ring: material })).toThrow(DomainError);
      expect(() => shrinkFit({ ...asked, hubMaterial: material })).toThrow(DomainError);
    }
  });
  it('refuses a soft steel ring by two thirds of its yield', () => {
    expect(shrinkFit({ ...asked, strength: 32_000 }).reasons[0]).toContain('two thirds of yield');
  });
  // Stress of the iron ring at 0.0005 in per inch: 6,000 lb/in², half of the story's 12,000; a quarter of 23,500 is 5,875.
  it('holds iron to a quarter of its strength and steel to two thirds, on both sides of the line', () => {
    const accepted = (ring: 'steel' | 'cast iron', strength: number) => shrinkFit({ ...asked, ring, strength }).accepted;
    expect([accepted('cast iron', 23_500), accepted('cast iron', 24_500)]).toEqual([false, true]);
    expect([accepted('steel', 34_000), accepted('steel', 35_000)]).toEqual([false, true]);
  });
  it('refuses an oven above the ceiling unless the owner types why', () => {
    const small = { ...asked, hub: inches(1), ringOutside: inches(2), hubBore: inches(0.25) };
    expect(shrinkFit(small).reasons.join()).toContain('above the ceiling of 450 °F (232 °C)');
    const ceiling = { reading: readingFahrenheit(600), why: 'plain carbon steel, soft' };
    expect(shrinkFit({ ...small, ceiling }).accepted).toBe(true);
    expect(shrinkFit({ ...small, ceiling: { ...ceiling, why: '  ' } }).accepted).toBe(false);
  });
  it('says to measure the hub first until it was measured', () => {
    const names = (of: ShrinkAsked) => shrinkFit(of).answer.cautions.map(({ name }) => name);
    expect(names({ ...asked, hubMeasured: false })).toContain('Hub first');
    expect(names(asked)).not.toContain('Hub first');
  });
  it('refuses sizes that contradict each other', () => {
    expect(() => shrinkFit({ ...asked, hub: inches(5) })).toThrow(DomainError);
    expect(() => shrinkFit({ ...asked, hubBore: inches(4) })).toThrow(DomainError);
    expect(() => shrinkFit({ ...asked, ring: 'bronze' })).toThrow(/No allowance/);
    expect(() => shrinkFit({ ...asked, allowancePerInch: 0.01 })).toThrow(DomainError);
  });
});

describe('Lamé’s rings', () => {
  it('ring and hub, loaded by the pressure, together give way by the allowance', () => {
    const [i, D, Do, d] = [0.00375, 3.75, 4.8072, 1.25];
    const [ring, hub] = [
      { E: 14e6, v: 0.26 },
      { E: 30e6, v: 0.3 },
    ];
    const p = fitPressure(i, D, Do, d, ring, hub);
    // Radial give by Hooke's law: u = r (hoop − v × radial) ÷ E, radial stress −p at both faces.
    const out = ((D / 2) * (hoopStress(p, Do, D) + ring.v * p)) / ring.E;
    const inward = ((D / 2) * (-p * ringFactor(D, d) + hub.v * p)) / hub.E;
    expect(2 * (out - inward)).toBeCloseTo(i, 12);
  });
});

describe('every printed formula, worked on its printed givens, gives the printed answer', () => {
  const odd = { ...asked, hub: inches(3.74937), hubBore: inches(0), ringOutside: inches(4.81), ring: 'cast iron' } as const;
  const metric = { ...asked, unit: 'mm', hub: millimetres(95.213), hubBore: millimetres(30), ringOutside: millimetres(120.5) } as const;
  it.each([
    ['story', asked],
    ['iron on a solid hub', odd],
    ['metric', metric],
  ])('%s', (_name, of) => {
    for (const figure of Object.values(shrinkFit(of).answer.figures)) {
      const worked = evaluateFigure(figure);
      expect(worked, figure.name).not.toBeNull();
      if (worked) expect(Math.abs(worked.printed - worked.worked), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(worked.allowed);
    }
  });
});
