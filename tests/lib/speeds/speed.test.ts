import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { MATERIALS } from '../../../lib/gears/gear.ts';
import { chuckLimit } from '../../../lib/speeds/chuck-limit.ts';
import { CUTTING_SPEEDS } from '../../../lib/speeds/cutting-speeds.data.ts';
import { offerFeed, roughingRounds } from '../../../lib/speeds/feed.ts';
import { speedFromFeet } from '../../../lib/speeds/speed.formulas.ts';
import { offerSpeed } from '../../../lib/speeds/speed.sums.ts';
import { CUTS, surfaceSpeed } from '../../../lib/speeds/surface-speed.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';

const machine = (...speedsRpm: number[]) => ({ name: 'Ashdown & Lyle lathe', speedsRpm });
const count = (value: unknown): number => (value as { number: number }).number;
const chuck = { name: 'three-jaw', diameter: inches(8), topSpeedRpm: null };

describe('the speed offered', () => {
  it('58 is never offered for 45 asked', () => {
    const at45 = { surfaceSpeedFtPerMin: (45 * Math.PI * 4) / 12, diameter: inches(4) };
    const none = offerSpeed({ ...at45, machine: machine(58, 95, 150) });
    expect(none.figures.offeredSpeed.value).toEqual({ words: 'none low enough: the lowest is 58 rev/min' });
    expect(count(none.figures.offeredSpeed.error)).toBeCloseTo(13, 6);
    expect(none.cautions[0]?.says).toContain('13 over');
    expect(none.says).toContain('Exact: none');
    expect(count(offerSpeed({ ...at45, machine: machine(58, 30, 40) }).figures.offeredSpeed.value)).toBe(40);
  });

  it('is never above the one worked out nor the chuck, whatever the machine has, and nothing faster would do', () => {
    const speeds = fc.array(fc.double({ min: 1, max: 4000, noNaN: true }), { maxLength: 16 });
    fc.assert(
      fc.property(
        speeds,
        fc.integer({ min: 10, max: 600 }),
        fc.integer({ min: 1, max: 400 }),
        fc.boolean(),
        fc.constantFrom(null, 300, 1200),
        (has, v, tenths, off, top) => {
          const diameter = inches(tenths / 20);
          const { figures } = offerSpeed({
            surfaceSpeedFtPerMin: v,
            diameter,
            machine: machine(...has),
            chuck: { ...chuck, topSpeedRpm: top },
            offCentre: off,
          });
          const bound = Math.min((12 * v) / (Math.PI * (tenths / 20)), (top ?? (12 * 2500) / (Math.PI * 8)) / (off ? 2 : 1));
          const fit = has.filter((n) => n <= bound);
          if (fit.length === 0) {
            expect('words' in figures.offeredSpeed.value).toBe(true);
            return;
          }
          expect(count(figures.offeredSpeed.value)).toBeLessThanOrEqual(count(figures.computedSpeed.value));
          expect(count(figures.offeredSpeed.value)).toBe(Math.max(...fit));
        },
      ),
    );
  });

  it('an order of speeds or a doubled one changes nothing', () => {
    const ask = { surfaceSpeedFtPerMin: 90, diameter: inches(2) };
    expect(offerSpeed({ ...ask, machine: machine(200, 70, 140, 140) }).figures.offeredSpeed.value).toEqual(
      offerSpeed({ ...ask, machine: machine(70, 140, 200) }).figures.offeredSpeed.value,
    );
  });

  it('no speeds known is said so', () => {
    const { cautions, figures } = offerSpeed({ surfaceSpeedFtPerMin: 90, diameter: inches(2), machine: machine() });
    expect(cautions[0]?.name).toBe('no speeds known');
    expect('words' in figures.surfaceSpeedAtOffered.value).toBe(true);
  });

  it('a machine too fast for the chuck is a danger, not a try', () => {
    const { cautions } = offerSpeed({
      surfaceSpeedFtPerMin: 300,
      diameter: inches(1),
      machine: machine(800),
      chuck: { ...chuck, topSpeedRpm: 600 },
    });
    expect(cautions[0]?.weight).toBe('danger');
  });

  it('the chuck: maker first, else 2,500 ft/min at the rim, half off-centre', () => {
    expect(chuckLimit({ ...chuck, topSpeedRpm: 1500 }, false)).toBe(1500);
    expect(chuckLimit({ ...chuck, topSpeedRpm: 1500 }, true)).toBe(750);
    // 8 in round is 25.13 in a turn, 2,500 ft is 30,000 in: 1193.7 turns.
    expect(chuckLimit(chuck, false)).toBeCloseTo(1193.66, 2);
    expect(chuckLimit(null, true)).toBe(Number.POSITIVE_INFINITY);
  });

  it('inch and metric give one speed for one job', () => {
    const ask = { material: 'steel', steel: 'high-speed', cut: 'turning', diameter: millimetres(50), machine: machine(100, 200) } as const;
    const [a, b] = (['in', 'mm'] as const).map((unit) => count(offerSpeed({ ...ask, unit }).figures.computedSpeed.value));
    // 90 ft/min is 27.432 m/min; over 157.08 mm a turn that is 174.64.
    expect(a).toBeCloseTo(174.64, 2);
    expect(b).toBeCloseTo(174.64, 2);
  });

  it('refuses a diameter or a speed of nothing', () => {
    expect(() => offerSpeed({ surfaceSpeedFtPerMin: 90, diameter: inches(0), machine: machine(1) })).toThrow(DomainError);
    expect(() => offerSpeed({ surfaceSpeedFtPerMin: 0, diameter: inches(1), machine: machine(1) })).toThrow(DomainError);
    expect(() => offerSpeed({ surfaceSpeedFtPerMin: Number.NaN, diameter: inches(1), machine: machine(1) })).toThrow(DomainError);
  });

  it('one printed table gives 45 for 30 ft/min on 5 in, out of its own line: 23 is right', () => {
    expect(speedFromFeet(30, 5)).toBeGreaterThan(22.5);
    expect(speedFromFeet(30, 5)).toBeLessThan(23.5);
    expect(speedFromFeet(30, 4)).toBeGreaterThan(speedFromFeet(30, 5));
    expect(speedFromFeet(30, 6)).toBeLessThan(speedFromFeet(30, 5));
  });
});

describe('the table of surface speeds', () => {
  it('has one row, and one only, for each metal, steel and cut, each with a source', () => {
    for (const material of MATERIALS)
      for (const steel of ['high-speed', 'carbon', 'carbide'])
        for (const cut of ['turning', 'milling'])
          expect(CUTTING_SPEEDS.filter((r) => r.material === material && r.steel === steel && r.cut === cut)).toHaveLength(1);
    expect(CUTTING_SPEEDS.every((r) => r.source.length > 10 && r.ftPerMin > 0)).toBe(true);
  });

  it('carbon steel is slower than high-speed steel, and that slower than carbide', () => {
    for (const material of MATERIALS)
      for (const cut of CUTS) {
        const v = (steel: 'carbon' | 'high-speed' | 'carbide') => surfaceSpeed(material, steel, cut).ftPerMin;
        expect(v('carbon')).toBeLessThan(v('high-speed'));
        expect(v('high-speed')).toBeLessThan(v('carbide'));
        expect(surfaceSpeed(material, 'unknown', cut)).toEqual(surfaceSpeed(material, 'carbon', cut));
      }
  });

  it('over gaps half of plain turning, a form cutter two thirds of plain milling', () => {
    const at = (cut: (typeof CUTS)[number]) =>
      count(
        offerSpeed({ material: 'steel', steel: 'high-speed', cut, diameter: inches(3), machine: machine(1) }).figures.computedSpeed.value,
      );
    expect(at('interrupted turning') / at('turning')).toBeCloseTo(0.5, 12);
    expect(at('form milling') / at('milling')).toBeCloseTo(0.6667, 4);
  });
});

describe('feed', () => {
  it('is the next not above the wanted one, the finest if all are coarser, and by hand without any', () => {
    const feeds = [0.004, 0.008, 0.012].map(inches);
    expect(offerFeed({ material: 'steel', kind: 'lathe rough', feeds }).value).toEqual({ length: inches(0.008) });
    expect(offerFeed({ material: 'steel', kind: 'lathe finish', feeds }).value).toEqual({ length: inches(0.004) });
    expect(offerFeed({ material: 'steel', kind: 'lathe rough', feeds: [] }).note).toContain('By hand');
  });
  it('two roughing rounds coarser than 10 DP in steel only', () => {
    expect([roughingRounds(8, 'steel'), roughingRounds(10, 'steel'), roughingRounds(8, 'cast iron'), roughingRounds(8, 'unknown')]).toEqual(
      [2, 1, 1, 2],
    );
  });
});
