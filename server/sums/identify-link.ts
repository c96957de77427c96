import type { Reading } from '../../db/readings.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import { type Length, NM_PER_INCH, NM_PER_MM } from '../../lib/values/length.ts';
import { type LengthForm, printLength, printShort } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import type { LinkView } from '../page.ts';

/** Whose wheel it is, as the sum's address says it. */
export type OwnerName = `part-${number}` | `item-${number}`;
type Boxes = Readonly<Record<string, string>>;

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

const given = (boxes: Readonly<Record<string, string | undefined>>): Boxes =>
  Object.fromEntries(Object.entries(boxes).flatMap(([name, text]) => (text ? [[name, text]] : [])));

/** How far off the newest of these may be, where its reader said so. */
function within(sizes: readonly Size[]): string | undefined {
  const reading = sizes.at(-1)?.reading;
  return reading?.error ? typed(reading.error as Length, reading.lengthForm) : undefined;
}

/** The outside as it was taken last: between jaws, or as a true diameter. */
function outsideBoxes(readings: readonly Reading[]): Boxes {
  const jaws = sizesOf(readings, READING_NAMES.jaws);
  const all = [...jaws, ...sizesOf(readings, READING_NAMES.outside)].toSorted((one, other) => one.reading.id - other.reading.id);
  const newest = all.at(-1);
  if (!newest) return {};
  return given({ outside: newest.text, outsideBy: jaws.includes(newest) ? 'jaws' : 'true', outsideError: within(all) });
}

/** Spans over k, k + 1 and k + 2, from the smallest count that was read; the newest of each. */
function spanBoxes(spans: readonly Size[]): Boxes {
  const byCount = new Map(spans.map(({ reading, text }) => [reading.over_k ?? 0, text]));
  byCount.delete(0);
  if (byCount.size === 0) return {};
  const k = Math.min(...byCount.keys());
  const boxes = { spanRead: byCount.get(k), spanMore: byCount.get(k + 1), spanMost: byCount.get(k + 2), spanError: within(spans) };
  return { k: `${k}`, ...given(boxes) };
}

/** The root as it was read: across opposite roots or over pins on the bottoms, which an odd count does not allow; by the least wall; by the depth. */
function rootBoxes(teeth: number, readings: readonly Reading[]): Boxes {
  const newest = (what: string): Size | undefined => sizesOf(readings, what).at(-1);
  const [across, pins] = [newest(READING_NAMES.across), newest(READING_NAMES.pins)];
  const overPins =
    pins && pins.reading.pin_nm !== null ? typed((pins.length - 2 * pins.reading.pin_nm) as Length, pins.reading.lengthForm) : undefined;
  const wall = sizesOf(readings, READING_NAMES.wall).toSorted((one, other) => one.length - other.length)[0]?.text;
  const bore = newest(READING_NAMES.bore)?.text;
  return given({
    rootRead: newest(READING_NAMES.root)?.text ?? (teeth % 2 === 0 ? (across?.text ?? overPins) : undefined),
    depthRead: newest(READING_NAMES.depth)?.text,
    ...(wall && bore ? { wallRead: wall, wallBore: bore } : {}),
  });
}

/** Over pins on the flanks, the centre distance with a mate, and how a rolled print leans. */
function otherBoxes(readings: readonly Reading[]): Boxes {
  const [pins, centres] = [sizesOf(readings, READING_NAMES.flankPins), sizesOf(readings, READING_NAMES.centres)];
  const [over, apart] = [pins.at(-1), centres.at(-1)];
  const print = readings.findLast(({ what, shown }) => what === READING_NAMES.print && 'angle' in shown)?.shown;
  const pin = over?.reading.pin_nm;
  return given({
    ...(over && pin ? { pinUsed: typed(pin as Length, over.reading.lengthForm), overPins: over.text, pinsError: within(pins) } : {}),
    ...(apart ? { mate: `${apart.reading.mate_teeth ?? ''}`, centres: apart.text, centresError: within(centres) } : {}),
    ...(print && 'angle' in print ? { print: printShort(toDegrees(print.angle), 4) } : {}),
  });
}

/** What was read on a wheel, as it would be typed into the boxes of the sum. */
const boxesOf = (teeth: number, readings: readonly Reading[]): Boxes => ({
  teeth: `${teeth}`,
  ...outsideBoxes(readings),
  ...spanBoxes(sizesOf(readings, READING_NAMES.span)),
  ...rootBoxes(teeth, readings),
  ...otherBoxes(readings),
});

/** From a wheel to the sum that says what it is, with its count and what was read on it filled in. */
export const whatGearIsIt = (owner: OwnerName, teeth: number, readings: readonly Reading[]): LinkView => ({
  says: 'What is this gear?',
  href: to.sum('unknown-gear', { for: owner, ...boxesOf(teeth, readings) }),
});
