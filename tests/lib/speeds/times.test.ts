import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { offerFeed } from '../../../lib/speeds/feed.ts';
import { approach } from '../../../lib/speeds/time.formulas.ts';
import { timeOfGear, timeOfPass } from '../../../lib/speeds/times.sums.ts';
import { inches, type Length, millimetres, toInches } from '../../../lib/values/length.ts';

const number = (value: unknown): number => (value as { number: number }).number;
const gear = { teeth: 22, face: inches(0.875), cutterDiameter: inches(3.5), depth: inches(0.2696), feedPerMinute: inches(0.75) };

describe('approach', () => {
  it('is where a circle lowered by h first meets the edge, found by walking the circle', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 8, noNaN: true }), fc.double({ min: 0.01, max: 0.5, noNaN: true }), (D, part) => {
        const h = D * part;
        // Middle of the cutter at height R − h above the face; find the half chord there by halving.
        let [low, high] = [0, D / 2];
        for (let i = 0; i < 60; i++) {
          const x = (low + high) / 2;
          if (Math.hypot(x, D / 2 - h) < D / 2) low = x;
          else high = x;
        }
        expect(approach(D, h)).toBeCloseTo(low, 9);
      }),
    );
  });
  it('is refused deeper than half the cutter', () => {
    expect(() => approach(3, 1.6)).toThrow(RangeError);
  });
});

describe('time of a gear', () => {
  it('is what a clock would add up tooth by tooth', () => {
    let clock = 0;
    const length = 0.875 + 2 * Math.sqrt(0.2696 * (3.5 - 0.2696));
    for (let round = 0; round < 3; round++) for (let tooth = 0; tooth < 22; tooth++) clock += length / 0.75 + 0.5;
    expect(number(timeOfGear({ ...gear, roughRounds: 2 }).figures.gearTime.value)).toBeCloseTo(clock, 3);
  });
  it('marks the indexing a guess until it is typed', () => {
    const from = (asked: object) => timeOfGear({ ...gear, ...asked }).figures.gearTime.given.find((g) => g.symbol === 'i')?.from;
    expect(from({})).toBe('guess');
    expect(from({ indexMinutes: 0.4 })).toBe('typed');
  });
  it('an overrun typed stands in place of the approach', () => {
    const { travel, approach: A } = timeOfGear({ ...gear, overrun: inches(0.1) }).figures;
    const [L, a] = [travel.value, A.value].map((v) => toInches((v as { length: Length }).length)) as [number, number];
    expect(L).toBeCloseTo(0.875 + a + 0.1, 7);
  });
  it('refuses no teeth, no face, no feed, and a cut that brings the arbor down', () => {
    for (const wrong of [
      { teeth: 0 },
      { teeth: 2.5 },
      { face: inches(0) },
      { feedPerMinute: inches(0) },
      { depth: inches(2) },
      { depth: inches(0) },
    ])
      expect(() => timeOfGear({ ...gear, ...wrong })).toThrow(DomainError);
  });
});

it('a printed answer of 1 min for 200 mm at 250 mm a minute is not reproduced: it was worked with another feed', () => {
  const { passTime } = timeOfPass({ length: millimetres(200), feedPerTurn: millimetres(250 / 400), speedRpm: 400, unit: 'mm' }).figures;
  expect(number(passTime.value)).toBeCloseTo(0.8, 9);
});

describe('time of turning', () => {
  const pass = { length: inches(1), feedPerTurn: inches(0.01), speedRpm: 100 };
  it('a hundred turns to the inch at a hundred a minute is a minute', () => {
    const { figures } = timeOfPass({ ...pass, passes: 4, returnMinutes: 0.25 });
    expect(number(figures.passTime.value)).toBeCloseTo(1, 9);
    expect(number(figures.allPasses.value)).toBeCloseTo(5, 9);
  });
  it('refuses nothing to cut, no feed, no speed', () => {
    for (const wrong of [{ length: inches(0) }, { feedPerTurn: inches(0) }, { speedRpm: 0 }])
      expect(() => timeOfPass({ ...pass, ...wrong })).toThrow(DomainError);
  });
});

it('an hour and more is said in hours, a feed a minute in its own unit, on the working too', () => {
  const { figures } = timeOfGear({ ...gear, roughRounds: 2 });
  expect(printFigure({ ...figures.gearTime, value: { number: 318.6, unit: 'min', places: 0 } })).toEqual({
    text: '5 h 19 min',
    unit: '',
    other: '',
  });
  expect(printFigure({ ...figures.gearTime, value: { number: 59.4, unit: 'min', places: 0 } })).toMatchObject({ text: '59', unit: 'min' });
  expect(figures.gearTime.given.find(({ symbol }) => symbol === 'f')?.value).toMatchObject({ unit: 'in/min' });
  const feed = (kind: 'gear cutter' | 'lathe rough') => printFigure(offerFeed({ material: 'steel', kind, feeds: [inches(0.004)] }));
  expect(feed('gear cutter')).toEqual({ text: '0.0040', unit: 'in/min', other: '0.102 mm/min' });
  expect(feed('lathe rough')).toMatchObject({ unit: 'in' });
});
