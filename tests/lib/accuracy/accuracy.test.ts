import { describe, expect, it } from 'vitest';
import { accuracyAnswer } from '../../../lib/accuracy/accuracy.sums.ts';
import { classOf } from '../../../lib/accuracy/iso1328.formulas.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { pitchOf, systemNamed } from '../../reference/gear-asks.ts';

const asked = {
  teeth: 40,
  pitch: pitchOf('module 3'),
  system: systemNamed('module-1.25'),
  face: millimetres(30),
  runOut: null,
  singlePitch: null,
  cumulativePitch: null,
  lead: null,
} as const;

describe('classes of tolerance', () => {
  it('the worst reading decides', () => {
    const of = (runOut: number, lead: number) =>
      accuracyAnswer({ ...asked, runOut: millimetres(runOut), lead: millimetres(lead) }).figures.class.value;
    expect(of(0.05, 0.001)).toEqual({ words: 'class 8' });
    expect(of(0.001, 0.2)).toEqual({ words: 'beyond class 11' });
    expect(accuracyAnswer(asked).figures.class.value).toEqual({ words: 'nothing was read' });
  });

  it('a tolerance holds its own reading, and the next class the hair above', () => {
    const ten = (grade: number): number => grade * 10;
    expect([classOf(70, ten), classOf(70.01, ten), classOf(110.1, ten)]).toEqual([7, 8, null]);
  });

  it('refuses what the standard does not speak of', () => {
    expect(() => accuracyAnswer({ ...asked, pitch: pitchOf('module 0.3') })).toThrow(/standard speaks/);
    expect(() => accuracyAnswer({ ...asked, face: inches(0.1) })).toThrow(/standard speaks/);
  });
});
