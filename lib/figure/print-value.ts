import { type Angle, MAS_PER_DEGREE } from '../values/angle.ts';
import type { LengthUnit } from '../values/length.ts';
import type { DialMove, IndexMove } from '../values/move.ts';
import { printCount, printDegrees, printLength, printNumber, printShort, printWhole } from '../values/print.ts';
import type { Figure, Value } from './figure.ts';
import { timeWords } from './time-words.ts';

/** A value as it stands on page and paper: number, unit, and the same in the other unit where there is one. */
export type Printed = { readonly text: string; readonly unit: string; readonly other: string };

const LENGTH_PLACES: Readonly<Record<LengthUnit, number>> = { in: 4, mm: 3 };

function printBothLengths(value: { length: Parameters<typeof printLength>[0] }, unit: LengthUnit, places?: number): Printed {
  const other = unit === 'in' ? 'mm' : 'in';
  const text = printLength(value.length, { unit, places: places ?? LENGTH_PLACES[unit] });
  return { text, unit, other: `${printLength(value.length, { unit: other, places: LENGTH_PLACES[other] })} ${other}` };
}

/** "1 turn + 27 spaces on 33". */
export function printMove({ turns, spaces, circle }: IndexMove): string {
  const turned = turns === 0 ? '' : `${turns} turn${turns === 1 ? '' : 's'}`;
  if (spaces === 0) return turned || '0 turns';
  const part = `${spaces} space${spaces === 1 ? '' : 's'} on ${circle}`;
  return turned ? `${turned} + ${part}` : part;
}

/** "5 turns + 62.5 divisions". */
function printDial({ turns, divisions }: DialMove): string {
  const turned = turns === 0 ? '' : `${turns} turn${turns === 1 ? '' : 's'}`;
  const part = `${printShort(divisions, 1)} division${divisions === 1 ? '' : 's'}`;
  return turned ? `${turned} + ${part}` : part;
}

const [FEWEST_ANGLE_PLACES, MOST_ANGLE_PLACES] = [2, 4];

/** The fewest decimals of a degree, from two up, that print an angle whole; at most four, which is a third of an arc second. */
function anglePlaces(angle: Angle): number {
  for (let places = FEWEST_ANGLE_PLACES; places < MOST_ANGLE_PLACES; places++)
    if ((angle * 10 ** places) % MAS_PER_DEGREE === 0) return places;
  return MOST_ANGLE_PLACES;
}

/** A value in words and figures. unit: the length unit wanted; places: decimals, where the usual ones will not do. */
export function printValue(value: Value, unit: LengthUnit, places?: number): Printed {
  if ('length' in value) return printBothLengths(value, unit, places);
  if ('angle' in value) return { text: printDegrees(value.angle, places ?? anglePlaces(value.angle)), unit: '°', other: '' };
  if ('count' in value) return { text: printCount(value.count), unit: value.unit ?? '', other: '' };
  if ('ratio' in value)
    return { text: value.ratio[1] === 1 ? `${value.ratio[0]}` : `${value.ratio[0]}/${value.ratio[1]}`, unit: '', other: '' };
  if ('number' in value) return { text: printNumber(value.number, value.places ?? places ?? 3), unit: value.unit, other: '' };
  if ('move' in value) return { text: printMove(value.move), unit: '', other: '' };
  if ('dial' in value) return { text: printDial(value.dial), unit: '', other: '' };
  if ('rise' in value)
    return { text: printWhole(value.rise, 1000, 0), unit: '°F of rise', other: `${printWhole(value.rise * 5, 9000, 0)} °C of rise` };
  if ('reading' in value)
    return { text: printWhole(value.reading, 1000, 0), unit: '°F', other: `${printWhole((value.reading - 32_000) * 5, 9000, 0)} °C` };
  return { text: value.words, unit: '', other: '' };
}

const HOUR = 60;

/** A figure's own value, as printed; an hour and more of minutes as "5 h 19 min". */
export function printFigure({ value, unit, places, per }: Figure): Printed {
  if ('number' in value && value.unit === 'min' && value.number >= HOUR) return { text: timeWords(value.number), unit: '', other: '' };
  const printed = printValue(value, unit, places);
  return per && 'length' in value ? { ...printed, unit: `${printed.unit}/${per}`, other: `${printed.other}/${per}` } : printed;
}
