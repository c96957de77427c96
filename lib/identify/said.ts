import { printNumber, printShort } from '../values/print.ts';
import { MOST_SAID } from './temper.data.ts';

/** A chance as a page says it: whole percents, never more than the bench bears out, and never a nothing that is not one. */
export function chanceText(chance: number): string {
  if (chance < 0.01) return 'under 1 %';
  return chance >= MOST_SAID ? `${printNumber(MOST_SAID * 100, 0)} % or better` : `${printNumber(chance * 100, 0)} %`;
}

const TENTHS = [
  'hardly ever',
  'one time in ten',
  'two times in ten',
  'three times in ten',
  'four times in ten',
  'one time in two',
  'six times in ten',
  'seven times in ten',
  'eight times in ten',
  'nine times in ten',
] as const;

/** The same in words, rounded down to tenths. Example: 0.58 is right one time in two. */
export const oftenRight = (chance: number): string => TENTHS[Math.min(9, Math.floor(chance * 10))] ?? TENTHS[0];

/** Inches as thousandths with their sign, or as hundredths of a millimetre. */
export function small(inch: number, unit: 'in' | 'mm'): string {
  const text = printNumber(inch * (unit === 'in' ? 1000 : 2540), 1);
  return inch > 0 && !/^[0.]+$/.test(text) ? `+${text}` : text;
}

export const smallHead = (unit: 'in' | 'mm'): string => (unit === 'in' ? '0.001 in' : '0.01 mm');
export const percent = (part: number): string => `${printShort(part * 100, 2)} %`;
