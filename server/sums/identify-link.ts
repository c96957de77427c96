import type { Reading } from '../../db/readings.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import { type Length, NM_PER_INCH, NM_PER_MM } from '../../lib/values/length.ts';
import { type LengthForm, printLength } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import type { LinkView } from '../page.ts';

/** As it would be typed, whole: a reading in 64ths or in more places than its form shows goes in decimals. */
function typed(length: Length, { unit }: LengthForm): string {
  const [inch, places] = unit === 'in' ? [true, 4] : [false, 3];
  const whole = length % ((inch ? NM_PER_INCH : NM_PER_MM) / 10 ** places) === 0;
  return `${printLength(length, { unit, places: whole ? places : places + 2 })}${inch ? '' : ' mm'}`;
}

type Size = { readonly length: Length; readonly text: string; readonly reading: Reading };

/** What was read under one name, the newest last. */
const sizesOf = (readings: readonly Reading[], what: string): readonly Size[] =>
  readings.flatMap((reading) =>
    reading.what === what && 'length' in reading.shown
      ? [{ reading, length: reading.shown.length, text: typed(reading.shown.length, reading.lengthForm) }]
      : [],
  );

/** Spans over k, k + 1 and k + 2, from the smallest count that was read; the newest of each. */
function spanBoxes(spans: readonly Size[]): Readonly<Record<string, string>> {
  const byCount = new Map(spans.map(({ reading, text }) => [reading.over_k ?? 0, text]));
  byCount.delete(0);
  if (byCount.size === 0) return {};
  const k = Math.min(...byCount.keys());
  const boxes = { spanRead: byCount.get(k), spanMore: byCount.get(k + 1), spanMost: byCount.get(k + 2) };
  return { k: `${k}`, ...given(boxes) };
}

const given = (boxes: Readonly<Record<string, string | undefined>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(boxes).flatMap(([name, text]) => (text ? [[name, text]] : [])));

/** The root as it was read: across opposite roots or over pins on the bottoms, which an odd count does not allow; by the least wall; by the depth. */
function rootBoxes(teeth: number, readings: readonly Reading[]): Readonly<Record<string, string>> {
  const newest = (what: string): Size | undefined => sizesOf(readings, what).at(-1);
  const [across, pins] = [newest(READING_NAMES.across), newest(READING_NAMES.pins)];
  const overPins =
    pins && pins.reading.pin_nm !== null ? typed((pins.length - 2 * pins.reading.pin_nm) as Length, pins.reading.lengthForm) : undefined;
  const wall = sizesOf(readings, READING_NAMES.wall).toSorted((one, other) => one.length - other.length)[0]?.text;
  const bore = newest(READING_NAMES.bore)?.text;
  return given({
    rootRead: teeth % 2 === 0 ? (across?.text ?? overPins) : undefined,
    depthRead: newest(READING_NAMES.depth)?.text,
    ...(wall && bore ? { wallRead: wall, wallBore: bore } : {}),
  });
}

/** From a wheel to the sum that says what it is, with its count and what was read on it filled in. */
export function whatGearIsIt(owner: `part-${number}` | `item-${number}`, teeth: number, readings: readonly Reading[]): LinkView {
  const outside = sizesOf(readings, READING_NAMES.jaws).at(-1)?.text;
  return {
    says: 'What is this gear?',
    href: to.sum('unknown-gear', {
      for: owner,
      teeth: `${teeth}`,
      ...(outside ? { outside, outsideBy: 'jaws' } : {}),
      ...spanBoxes(sizesOf(readings, 'span')),
      ...rootBoxes(teeth, readings),
    }),
  };
}
