import fc from 'fast-check';
import { create, all as everything } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Answer } from '../../../lib/figure/figure.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { spanOver, thicknessFromSpan } from '../../../lib/gears/base-tangent.formulas.ts';
import { contactAnswer } from '../../../lib/gears/contact.sums.ts';
import { type Flanks, transverseThickness } from '../../../lib/gears/flanks.formulas.ts';
import { helicalAnswer } from '../../../lib/gears/helical.sums.ts';
import { internalAnswer } from '../../../lib/gears/internal.sums.ts';
import { inverseInv } from '../../../lib/gears/involute.formulas.ts';
import {
  centreAt,
  involuteOfWorkingAngle,
  shiftsFor,
  workingAngle,
  workingAngleAt,
  workingBacklash,
} from '../../../lib/gears/pair.formulas.ts';
import { pairAnswer } from '../../../lib/gears/pair.sums.ts';
import { type ParallelGear, parallelOf } from '../../../lib/gears/parallel.ts';
import { pinLies } from '../../../lib/gears/pin-check.ts';
import { overPins, thicknessFromPins } from '../../../lib/gears/pins.formulas.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { shiftAnswer, undercutAnswer } from '../../../lib/gears/shift.sums.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres, toMm } from '../../../lib/values/length.ts';
import { refusal } from '../refusal.ts';
import { wheelOf } from './wheel-of.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const flanks: fc.Arbitrary<Flanks> = fc
  .record({
    N: fc.integer({ min: 12, max: 150 }),
    mn: fc.constantFrom(0.125, 1, 2.5),
    deg: fc.constantFrom(14.5, 20, 25),
    helix: fc.constantFrom(0, 8, 22.5, 40),
    x: fc.constantFrom(-0.2, 0, 0.3),
    ring: fc.boolean(),
  })
  .map(({ N, mn, deg, helix, x, ring }) => ({ N, mn, an: rad(deg), psi: rad(helix), v: x * mn, A: mn, B: 1.25 * mn, ring, unit: 'mm' }));

const gear = (teeth: number, pitch: string, more: Partial<ParallelGear> = {}, system = 'full-20'): ParallelGear => ({
  ...parallelOf(wheelOf(teeth, pitch, system)),
  ...more,
});
const lengthOf = (answer: Answer, key: string): number => {
  const value = answer.figures[key]?.value;
  if (!value || !('length' in value)) throw new Error(`no length ${key}`);
  return toMm(value.length);
};

describe('there and back', () => {
  it('thickness over pins, and by a span, whatever the gear', () => {
    fc.assert(
      fc.property(flanks, fc.integer({ min: 0, max: 40 }), (of, hundredths) => {
        const st = transverseThickness(of) * (1 - hundredths / 1000);
        const w = (of.ring ? 1.65 : 1.75) * of.mn;
        fc.pre(pinLies(of, st, w) === 'on the flank');
        expect(thicknessFromPins(of, overPins(of, st, w), w)).toBeCloseTo(st, 9);
        const sn = st * Math.cos(of.psi);
        expect(thicknessFromSpan(of, spanOver(of, sn, 3), 3)).toBeCloseTo(sn, 9);
      }),
    );
  });

  it('shifts to centres to shifts, for wheels and rings; a pair turned about is the same pair', () => {
    fc.assert(
      fc.property(flanks, fc.integer({ min: 10, max: 80 }), fc.boolean(), (one, more, inRing) => {
        const mate = { ...one, N: one.N + more, ring: inRing, v: 0.1 * one.mn };
        const couple = { one: { ...one, ring: false }, mate };
        fc.pre(involuteOfWorkingAngle(couple) > 1e-4);
        const aw = workingAngle(couple);
        const C = centreAt(couple, aw);
        const sum = inRing ? mate.v - one.v : mate.v + one.v;
        expect(shiftsFor(couple, workingAngleAt(couple, C))).toBeCloseTo(sum, 7);
        expect(workingBacklash(couple, C, 0)).toBeCloseTo(0, 8);
        if (!inRing) expect(workingAngle({ one: mate, mate: couple.one })).toBeCloseTo(aw, 12);
      }),
    );
  });

  it('inverse involute in forty digits', () => {
    const math = create(everything ?? {}, { number: 'BigNumber', precision: 40 });
    for (const text of ['0.000001', '0.0149043838673', '0.5', '12']) {
      const a = math.bignumber(inverseInv(Number(text)));
      const back = math.subtract(math.tan(a), a);
      expect(Math.abs(Number(math.subtract(back as never, math.bignumber(text)))) / Number(text)).toBeLessThan(
        1e-12 * (1 + Number(text) * 20),
      );
    }
  });
});

it('the same gear in inches and in millimetres has the same sizes', () => {
  const [inch, mm] = [gear(23, '12.7 DP', { shift: 0.2 }), gear(23, 'module 2', { shift: 0.2 })];
  for (const key of ['outsideDiameter', 'rootDiameter', 'span', 'chordalThickness'])
    expect(lengthOf(shiftAnswer({ gear: inch }), key)).toBeCloseTo(lengthOf(shiftAnswer({ gear: mm }), key), 5);
  const pin = millimetres(3.5);
  expect(lengthOf(pinsAnswer({ gear: inch, pin }), 'overPins')).toBeCloseTo(lengthOf(pinsAnswer({ gear: mm, pin }), 'overPins'), 5);
});

it('straight unshifted teeth have the spans of the plain wheel', () => {
  for (const N of [18, 22, 35, 60, 101]) {
    const plain = spanAnswer(wheelOf(N, '8 DP', 'full-14.5')).figures.span;
    const span = shiftAnswer({ gear: gear(N, '8 DP', {}, 'full-14.5') }).figures['span'];
    expect(span && printFigure(span).text).toBe(printFigure(plain).text);
  }
});

describe('what makes no sense is refused in words', () => {
  const helix = (deg: number) => ({ helix: { angle: degrees(deg), hand: 'right' as const } });
  const REFUSED: readonly (readonly [string, () => unknown, RegExp, string])[] = [
    ['3 teeth at 14½°', () => undercutAnswer(gear(3, '8 DP', {}, 'full-14.5')), /from 4 to 2000/, 'teeth'],
    ['a span off the flank', () => spanAnswer(wheelOf(22, '8 DP', 'full-14.5'), { k: 7 }), /touch the flanks over/, 'k'],
    ['a pin that falls through', () => pinsAnswer({ gear: gear(22, '8 DP'), pin: inches(0.05) }), /falls through|bottoms/, 'pin'],
    ['a pin that sits on the tips', () => pinsAnswer({ gear: gear(22, '8 DP'), pin: inches(0.45) }), /on the tips/, 'pin'],
    [
      'a ring smaller than its pinion',
      () => internalAnswer({ gear: gear(20, '8 DP', { ring: true }), pinion: 30 }),
      /more teeth than the wheel/,
      'mate',
    ],
    [
      'centres that no shift reaches',
      () => pairAnswer({ gear: gear(12, 'M3'), mate: 24, inRing: false, centre: millimetres(70) }),
      /No shift reaches it/,
      'centre',
    ],
    [
      'centres nearer than the base circles',
      () => pairAnswer({ gear: gear(12, 'M3'), mate: 24, inRing: false, centre: millimetres(40) }),
      /No shift reaches it/,
      'centre',
    ],
    ['a helix of 90°', () => helicalAnswer({ gear: gear(18, '6 DP', helix(90)) }), /from 0° to 60°/, 'helix'],
    ['a helical gear without helix', () => helicalAnswer({ gear: gear(18, '6 DP') }), /no lead/, 'helix'],
    ['a reading of another gear', () => pinsAnswer({ gear: gear(22, '8 DP'), reading: inches(9) }), /no tooth of it/, 'reading'],
    [
      'a rack with a centre',
      () => contactAnswer({ gear: gear(22, '8 DP'), mate: 22, inRing: false, rack: true, centre: inches(1) }),
      /no centre/,
      'centre',
    ],
  ];
  it.each(REFUSED)('%s', (_, work, limit, about) => {
    const error = refusal(work);
    expect(error.limit).toMatch(limit);
    expect(error.about).toContain(about);
    expect(Math.min(error.given.length, error.tryThis.length)).toBeGreaterThan(10);
  });
});

it('never a NaN, and nothing thrown but a refusal, whatever is asked', () => {
  const any = fc.record({
    N: fc.integer({ min: 4, max: 300 }),
    mate: fc.integer({ min: 4, max: 300 }),
    x: fc.double({ min: -2, max: 2, noNaN: true }),
    helix: fc.constantFrom(0, 1, 30, 60, 75),
    system: fc.constantFrom('full-14.5', 'full-20', 'stub-20', 'full-25'),
    C: fc.double({ min: 0.1, max: 2000, noNaN: true }),
    ring: fc.boolean(),
    both: fc.boolean(),
  });
  fc.assert(
    fc.property(any, ({ N, mate, x, helix, system, C, ring, both }) => {
      const of = gear(N, 'M2', { shift: x, ring, ...(helix ? { helix: { angle: degrees(helix), hand: 'left' as const } } : {}) }, system);
      const pair = { gear: of, mate, inRing: ring, centre: millimetres(C), ...(both ? { shift: x, mateShift: -x } : {}) };
      const tight = { gear: of, mate, inRing: ring, shift: x, mateShift: x / 2 };
      const works: readonly (() => Answer)[] = [
        ...[
          () => pairAnswer(pair),
          () => pairAnswer(tight),
          () => contactAnswer(pair),
          () => contactAnswer(tight),
          () => contactAnswer({ ...tight, rack: true }),
        ],
        ...[
          () => pinsAnswer({ gear: of }),
          () => pinsAnswer({ gear: of, pin: millimetres(C / 100) }),
          () => undercutAnswer(of),
          () => shiftAnswer({ gear: of }),
        ],
        ...[() => internalAnswer({ gear: of, pinion: mate }), () => helicalAnswer({ gear: of })],
      ];
      for (const work of works) {
        try {
          const { figures } = work();
          for (const figure of Object.values(figures)) expect(printFigure(figure).text).not.toMatch(/NaN|Infinity|undefined/);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
        }
      }
    }),
    { numRuns: 150 },
  );
});

describe('interference and contact say what they must', () => {
  const names = (answer: Answer): readonly string[] => answer.cautions.map(({ name }) => name);
  it('12 with 60 at 14½°: tips foul, and the contact on involute alone is less', () => {
    const answer = contactAnswer({ gear: gear(12, 'M1', {}, 'full-14.5'), mate: 60, inRing: false });
    expect(names(answer)).toContain('Tips foul');
    const [all, held] = [answer.figures['contactRatio'], answer.figures['involuteContact']];
    expect(held && printFigure(held).text).toBe('1.2842');
    expect(Number(all && printFigure(all).text)).toBeGreaterThan(1.2842);
  });
  it('32 with 32 at 14½° is clear; 40 in 44 fouls', () => {
    expect(names(contactAnswer({ gear: gear(32, '8 DP', {}, 'full-14.5'), mate: 32, inRing: false }))).not.toContain('Tips foul');
    expect(names(internalAnswer({ gear: gear(44, '8 DP', { ring: true }), pinion: 40 }))).toContain('Trochoid interference');
  });
});
