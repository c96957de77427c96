import type { Value } from '../lib/figure/figure.ts';
import type { Angle } from '../lib/values/angle.ts';
import type { Length } from '../lib/values/length.ts';
import type { Reading, Rise } from '../lib/values/temperature.ts';

/**
 * A Value in two columns: one whole number and the unit that it is counted in.
 *
 *   { length }  nanometres                        unit "nm"
 *   { angle }   thousandths of an arc second      unit "mas"
 *   { count }   the count                         unit "count", or "count tooth" with its own unit after a space
 *   { ratio }   the upper number                  unit "ratio/55" for a lower number of 55
 *   { number }  millionths                        unit "µ" then places, if any, then its unit: "µ rpm", "µ3 lb/in²", "µ3 "
 *   { move }    spaces, whole turns counted in    unit "spaces/33": 1 turn + 27 spaces on 33 is 60
 *   { dial }    thousandths of a division         unit "dial/250": turns counted in
 *   { rise }    thousandths of a °F of rise       unit "rise"
 *   { reading } thousandths of a °F               unit "reading"
 *   { words }   no number                         unit "words"; the words stand in the figure's JSON, or in typed_words
 *
 * A number is kept to the millionth; all the others are exact. The figure as it was printed, with its working, stays beside it as JSON.
 */
export type Amount = { readonly unit: string; readonly whole: number | null };

const MILLION = 1_000_000;

function safe(whole: number, unit: string): Amount {
  if (!Number.isSafeInteger(whole)) throw new RangeError(`${whole} ${unit} cannot be kept as a whole number`);
  return { unit, whole: whole === 0 ? 0 : whole };
}

const rounded = (x: number): number => Math.sign(x) * Math.round(Math.abs(x));

export function amountOf(value: Value): Amount {
  if ('length' in value) return safe(value.length, 'nm');
  if ('angle' in value) return safe(value.angle, 'mas');
  if ('count' in value) return safe(value.count, value.unit === undefined ? 'count' : `count ${value.unit}`);
  if ('ratio' in value) return safe(value.ratio[0], `ratio/${value.ratio[1]}`);
  if ('number' in value) return safe(rounded(value.number * MILLION), `µ${value.places ?? ''} ${value.unit}`);
  if ('move' in value) return safe(value.move.turns * value.move.circle + value.move.spaces, `spaces/${value.move.circle}`);
  if ('dial' in value)
    return safe(rounded((value.dial.turns * value.dial.perTurn + value.dial.divisions) * 1000), `dial/${value.dial.perTurn}`);
  if ('rise' in value) return safe(value.rise, 'rise');
  if ('reading' in value) return safe(value.reading, 'reading');
  return { unit: 'words', whole: null };
}

type Reader = (whole: number, rest: string) => Value;

const numberOf: Reader = (whole, rest) => {
  const found = /^(\d*) (.*)$/s.exec(rest);
  const [number, unit, places] = [whole / MILLION, found?.[2] ?? '', found?.[1] ?? ''];
  return places === '' ? { number, unit } : { number, unit, places: Number(places) };
};

const moveOf: Reader = (whole, rest) => {
  const circle = Number(rest);
  return { move: { turns: Math.floor(whole / circle), spaces: whole % circle, circle } };
};

const dialOf: Reader = (whole, rest) => {
  const perTurn = Number(rest);
  const turns = Math.floor(whole / (perTurn * 1000));
  return { dial: { turns, divisions: (whole - turns * perTurn * 1000) / 1000, perTurn } };
};

const READERS: readonly (readonly [start: string, read: Reader])[] = [
  ['nm', (whole) => ({ length: whole as Length })],
  ['mas', (whole) => ({ angle: whole as Angle })],
  ['count ', (count, unit) => ({ count, unit })],
  ['count', (count) => ({ count })],
  ['ratio/', (whole, den) => ({ ratio: [whole, Number(den)] })],
  ['µ', numberOf],
  ['spaces/', moveOf],
  ['dial/', dialOf],
  ['rise', (whole) => ({ rise: whole as Rise })],
  ['reading', (whole) => ({ reading: whole as Reading })],
];

/** The reverse of amountOf, for every unit but "words". Throws RangeError for a unit that is none of ours. */
export function valueFrom(whole: number, unit: string): Value {
  const found = READERS.find(([start]) => unit.startsWith(start));
  if (!found) throw new RangeError(`“${unit}” is no unit of a kept figure`);
  return found[1](whole, unit.slice(found[0].length));
}
