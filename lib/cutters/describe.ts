import { type Angle, toDegrees } from '../values/angle.ts';
import { type Length, type LengthUnit, NM_PER_INCH, toInches } from '../values/length.ts';
import { MINUS, printLength, printShort } from '../values/print.ts';

/** An angle in the trade's words: "14½°", "20°". */
export function angleWords(angle: Angle): string {
  const deg = toDegrees(angle);
  return Number.isInteger(deg - 0.5) && deg > 0 ? `${deg - 0.5}½°` : `${printShort(deg, 3)}°`;
}

/** A tooth range: "21 to 25 teeth", "135 teeth to a rack", "13 teeth". */
export function rangeWords(from: number, to: number | null): string {
  if (to === null) return `${from} teeth to a rack`;
  return from === to ? `${from} teeth` : `${from} to ${to} teeth`;
}

/** A hole or arbor as people say it: "1 in", "7/8 in", "22 mm". */
export function holeWords(hole: Length): string {
  if ((hole * 64) % NM_PER_INCH === 0) return `${printLength(hole, { unit: 'in', over: 64 })} in`;
  return hole % 100_000 === 0 ? `${printShort(hole / 1_000_000, 1)} mm` : `${printShort(toInches(hole), 4)} in`;
}

/** An error with its sign, in the unit of the work: "+0.0075 in". */
export function errorWords(error: Length, unit: LengthUnit): string {
  const text = printLength(error, { unit, places: unit === 'in' ? 4 : 3 });
  return `${text.startsWith(MINUS) || /^[0.]+$/.test(text) ? '' : '+'}${text} ${unit}`;
}
