import { nearestSpanCount } from '../gears/spur.formulas.ts';
import type { Candidate } from './candidates.ts';
import { expected, spanTouches } from './expected.formulas.ts';
import { READING_ERROR_IN } from './judgements.data.ts';
import type { Plain } from './readings.ts';
import type { Fit, PlainWheel } from './weigh.ts';

/** A candidate still in the running, with how it fits the wheel. */
export type Rival = { readonly candidate: Candidate; readonly chance: number; readonly fit: Fit };

/** What one candidate would have the measurement read, and within what. Inches. */
type Would = { readonly candidate: Candidate; readonly read: number; readonly within: number };
export type NextMeasurement = { readonly name: string; readonly parts: number; readonly each: readonly Would[] };

/** Something that could be measured: one reading, or one less another (two spans). */
type Option = { readonly name: string; readonly read: Plain; readonly less?: Plain };

/** An outside that nobody measured may be gone by this much, and is known no better (m). */
const TIP_UNKNOWN = { gone: 0.04, wide: 0.08 } as const;
const TIP_KNOWN_WIDE = 0.015;
/** A measurement that parts the rivals by less than this says nothing worth the walk. */
const WORTH = 0.01;

const wanted = (of: Exclude<Plain['of'], 'helix'>, name: string, beside = 0): Plain => ({
  of,
  name,
  beside,
  read: 0,
  error: READING_ERROR_IN[of],
});
const over = (k: number): Plain => wanted('span', `Over ${k} teeth`, k);

/** The usual pin for a wheel over pins: 1.728/P. Source: Van Keuren's wire rule, in SDP/SI, technical section, p. T60. */
const usualPin = (m: number): number => Math.round(1728 * m) / 1000;

function options({ teeth, readings }: PlainWheel, rivals: readonly Rival[]): readonly Option[] {
  const counts = [
    ...new Set(
      rivals.flatMap(({ fit }) => {
        const k = nearestSpanCount(teeth, fit.stance.flanks.an);
        return [k, k + 1];
      }),
    ),
  ].filter((k) => k < teeth / 2);
  const taken = (of: Plain['of'], beside?: number) =>
    readings.some((one) => one.of === of && (beside === undefined || one.beside === beside));
  const spans = counts
    .filter((k) => !taken('span', k))
    .map((k) => ({ name: `Span over ${k} ${k === 1 ? 'tooth' : 'teeth'}`, read: over(k) }));
  const two = taken('span')
    ? []
    : counts
        .filter((k) => counts.includes(k + 1))
        .map((k) => ({ name: `Span over ${k + 1} less span over ${k}`, read: over(k + 1), less: over(k) }));
  const pin = usualPin(rivals[0]?.candidate.m ?? 0);
  const plain: Option[] = [
    ...(taken('outside') ? [] : [{ name: 'Outside diameter', read: wanted('outside', 'Outside') }]),
    ...(taken('root') ? [] : [{ name: 'Root diameter', read: wanted('root', 'Root') }]),
    ...(taken('over pins') ? [] : [{ name: `Over pins of ${pin.toString()} in`, read: wanted('over pins', 'Over pins', pin) }]),
  ];
  return [...two, ...spans, ...plain];
}

/** What a rival would read, and how surely: its own room, the wear and the outside as far as they are known. */
function would({ candidate, fit }: Rival, option: Option, tipKnown: boolean): Would {
  const one = expected(option.read, fit.stance, candidate);
  const tip = tipKnown
    ? { gone: fit.tip, wide: TIP_KNOWN_WIDE * candidate.m }
    : { gone: TIP_UNKNOWN.gone * candidate.m, wide: TIP_UNKNOWN.wide * candidate.m };
  if (option.less) {
    const other = expected(option.less, fit.stance, candidate);
    return { candidate, read: one.nominal - other.nominal, within: Math.sqrt(one.error ** 2 + other.error ** 2) };
  }
  const read = one.nominal + one.perWear * fit.wear + one.perTip * tip.gone;
  return { candidate, read, within: Math.sqrt(one.error ** 2 + (one.perWear * fit.wearWide) ** 2 + (one.perTip * tip.wide) ** 2) };
}

/** Whether a span's jaws would lie on the flanks of the likeliest rival. */
function touches(reading: Plain, rival?: Rival): boolean {
  return !rival || reading.of !== 'span' || spanTouches(rival.fit.stance.flanks, reading.beside);
}

/**
 * How far two bells overlap: 1 for the same, 0 for apart. √(2 s t/(s² + t²)) e^(−d²/(4(s² + t²))), d between their middles, s and t their widths.
 * Source: Bhattacharyya's coefficient (value from memory). Example: d 0.004, s t 0.001 gives 0.135.
 */
function overlap(d: number, s: number, t: number): number {
  const both = s * s + t * t;
  return Math.sqrt((2 * s * t) / both) * Math.exp(-(d * d) / (4 * both));
}

/** How well a measurement parts the rivals: over all pairs, chance by chance, what does not overlap. */
function parting(rivals: readonly Rival[], each: readonly Would[]): number {
  let parts = 0;
  for (let i = 0; i < rivals.length; i++)
    for (let j = i + 1; j < rivals.length; j++) {
      const [one, other] = [each[i], each[j]];
      if (one && other)
        parts += (rivals[i]?.chance ?? 0) * (rivals[j]?.chance ?? 0) * (1 - overlap(one.read - other.read, one.within, other.within));
    }
  return parts;
}

/** The one measurement that parts the rivals best, with what each would have it read; null when none is worth taking. */
export function nextMeasurement(wheel: PlainWheel, rivals: readonly Rival[]): NextMeasurement | null {
  if (rivals.length < 2) return null;
  const tipKnown = wheel.readings.some(({ of }) => of === 'outside');
  const sound = ({ read, less }: Option): boolean => [read, ...(less ? [less] : [])].every((one) => touches(one, rivals[0]));
  let best: NextMeasurement | null = null;
  for (const option of options(wheel, rivals).filter(sound)) {
    const each = rivals.map((rival) => would(rival, option, tipKnown));
    const parts = parting(rivals, each);
    if (parts > WORTH && (!best || parts > best.parts * 1.02)) best = { name: option.name, parts, each };
  }
  return best;
}
