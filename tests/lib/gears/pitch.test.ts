import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pitch, PitchKind } from '../../../lib/gears/gear.ts';
import { PITCH_LIMITS, printPitch, readPitch, samePitch } from '../../../lib/gears/pitch.ts';
import { ratio, toNumber } from '../../../lib/values/ratio.ts';

const AS_TYPED: readonly (readonly [string, PitchKind, number, number, string])[] = [
  ['8 DP', 'DP', 8, 1, '8 DP'],
  ['DP 8', 'DP', 8, 1, '8 DP'],
  ['dp8', 'DP', 8, 1, '8 DP'],
  ['10 pitch', 'DP', 10, 1, '10 DP'],
  ['14 1/2 DP', 'DP', 29, 2, '14.5 DP'],
  ['12,5 D.P.', 'DP', 25, 2, '12.5 DP'],
  ['25 2/3 DP', 'DP', 77, 3, '25 2/3 DP'],
  ['M2.5', 'module', 5, 2, 'module 2.5'],
  ['module 2.5', 'module', 5, 2, 'module 2.5'],
  ['2.5 mod', 'module', 5, 2, 'module 2.5'],
  ['2,5 mm module', 'module', 5, 2, 'module 2.5'],
  ['0.125 module', 'module', 1, 8, 'module 0.125'],
  ['5/16 CP', 'CP', 5, 16, '5/16 in CP'],
  ['0.3125 CP', 'CP', 5, 16, '5/16 in CP'],
  ['1 1/4" CP', 'CP', 5, 4, '1 1/4 in CP'],
  ['circular pitch 0.3 in', 'CP', 3, 10, '0.3 in CP'],
  ['CP 10 mm', 'CP', 50, 127, '10 mm CP'],
];

describe('a pitch as people write it', () => {
  it.each(AS_TYPED)('%s', (text, kind, num, den, printed) => {
    const typed = readPitch(text);
    expect(typed).toEqual({ ok: true, value: { kind, size: [num, den] } });
    if (typed.ok) expect(printPitch(typed.value)).toBe(printed);
  });

  it.each([
    '',
    '8',
    '2.5',
    'eight DP',
    '8 DP 8',
    'DP',
    '8 in DP',
    '8 teeth',
    '5/7',
    '1/0 CP',
    '<b>8 DP</b>',
    '⚙',
    `${'8'.repeat(1_000_000)} DP`,
  ])('refuses %.20s and says what to type', (text) => {
    const typed = readPitch(text);
    expect(typed.ok).toBe(false);
    if (!typed.ok) {
      expect(typed.problem).toMatch(/8 DP, module 2.5, or 5\/16 CP/);
      expect(typed.problem.length).toBeLessThan(250);
    }
  });

  it.each(['0 DP', '-8 DP', '−8 DP', '201 DP', '1e9 DP', '999999999 DP', '51 module', '0 M', '7 CP', '999999999.999999 mm CP', '1/128 CP'])(
    'refuses %s as outside the limits or as no pitch',
    (text) => expect(readPitch(text).ok).toBe(false),
  );

  it('tells a double-pitch stub from a pitch', () => {
    const typed = readPitch('5/7 DP');
    expect(typed.ok ? '' : typed.problem).toContain('double-pitch stub');
  });

  it('takes a bare number only where the form asks for one kind', () => {
    expect(readPitch('2.5', 'module')).toEqual({ ok: true, value: { kind: 'module', size: [5, 2] } });
    expect(readPitch('8', 'DP')).toEqual({ ok: true, value: { kind: 'DP', size: [8, 1] } });
    expect(readPitch('300', 'DP').ok).toBe(false);
  });

  it('gives back what it printed', () => {
    const pitches = fc
      .tuple(fc.constantFrom<PitchKind>('DP', 'module', 'CP'), fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 1, max: 9_999 }))
      .map(([kind, num, den]): Pitch => ({ kind, size: ratio(num, den) }))
      .filter(({ kind, size }) => toNumber(size) >= PITCH_LIMITS[kind].least && toNumber(size) <= PITCH_LIMITS[kind].most);
    fc.assert(
      fc.property(pitches, (pitch) => {
        const back = readPitch(printPitch(pitch));
        return back.ok && samePitch(back.value, pitch);
      }),
    );
  });

  it('never takes one kind for another', () => {
    const eight: Pitch = { kind: 'DP', size: [8, 1] };
    expect(samePitch(eight, { kind: 'DP', size: ratio(16, 2) })).toBe(true);
    expect(samePitch(eight, { kind: 'DP', size: ratio(8001, 1000) })).toBe(false);
    expect(samePitch(eight, { kind: 'module', size: ratio(3175, 1000) })).toBe(false);
    expect(samePitch(eight, { kind: 'CP', size: [8, 1] })).toBe(false);
  });
});
