import { radians } from '../values/angle.ts';
import { type LengthUnit, ofUnit } from '../values/length.ts';
import type { Figure, From, Given, Value } from './figure.ts';

/** What a figure is called and how it is reached: all of it but the number. */
export type Told = Pick<Figure, 'name' | 'symbol' | 'formula' | 'source' | 'note'>;

export const told = (unit: LengthUnit, about: Told, value: Value, given: readonly Given[] = []): Figure => ({
  ...about,
  value,
  unit,
  given,
});

export const lengthOf = (size: number, unit: LengthUnit): Value => ({ length: ofUnit(size, unit) });
export const angleOf = (rad: number): Value => ({ angle: radians(rad) });

export const countGiven = (symbol: string, name: string, count: number): Given => ({ symbol, name, value: { count }, from: 'typed' });
export const angleGivenOf = (symbol: string, name: string, rad: number, from: From = 'worked out'): Given => ({
  symbol,
  name,
  value: angleOf(rad),
  from,
});

/** A length that another figure of the same answer holds, with decimals enough to work on with. */
export const sizedGiven = (symbol: string, name: string, size: number, unit: LengthUnit): Given => ({
  symbol,
  name,
  value: { number: size, unit, places: 6 },
  from: 'worked out',
});

export const numberGiven = (symbol: string, name: string, number: number, places: number, from: From = 'typed'): Given => ({
  symbol,
  name,
  value: { number, unit: '', places },
  from,
});
