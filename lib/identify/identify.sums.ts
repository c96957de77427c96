import type { Answer, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { printPitch } from '../gears/pitch.ts';
import { inches, inUnit, type LengthUnit, ofUnit, subtract } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { identifyCautions } from './identify.cautions.ts';
import { candidatesTable, misfitsTable, nearTable, nextTable, setTable, standsSo } from './identify.tables.ts';
import { type Found, type Identified, identify } from './identify.ts';
import type { MeasuredWheel, Reading } from './readings.ts';
import { chanceText, oftenRight } from './said.ts';

const WEIGHED =
  'derived: every pitch and tooth system weighed against all readings, wear and a turned outside left open (judgements in the tables)';

type Key = 'likeliest' | 'chance' | 'pitch' | 'pitchChance' | 'angle' | 'angleChance' | 'noneFits' | 'next';
export type IdentifyAnswer = Answer<Key> & { readonly figures: { readonly [K in 'wear' | 'pitchByOutside' | 'basePitch']?: Figure } };

const words = (name: string, symbol: string, text: string, unit: LengthUnit): Figure => ({
  name,
  symbol,
  value: { words: text },
  unit,
  formula: '',
  source: WEIGHED,
  given: [],
});

/** The module that the outside alone has, in the unit typed: what everybody works first, and what wear and stub teeth falsify. */
function byOutside({ teeth, readings }: MeasuredWheel, unit: LengthUnit): Figure | null {
  const outside = readings.find((one) => one.of === 'outside');
  if (outside?.of !== 'outside') return null;
  const Do = inUnit(outside.size, unit);
  const given: Given[] = [
    { symbol: 'N', name: 'teeth', value: { count: teeth }, from: 'measured' },
    givenLength('Do', 'outside as read', outside.size, unit, 'measured'),
  ];
  const said = { unit, given, source: 'US Navy, Machinery Repairman (14345), appendix III (teeth of full height)' };
  if (unit === 'in')
    return {
      ...said,
      name: 'Diametral pitch by the outside alone',
      symbol: 'P',
      formula: '(N + 2) ÷ Do',
      value: { number: (teeth + 2) / Do, unit: '', places: 3 },
    };
  return {
    ...said,
    name: 'Module by the outside alone',
    symbol: 'm',
    formula: 'Do ÷ (N + 2)',
    value: { number: Do / (teeth + 2), unit: 'mm', places: 4 },
  };
}

type Span = Extract<Reading, { of: 'span' }>;

/** One tooth more between the jaws: what wear does not touch. */
function basePitchRead({ readings }: MeasuredWheel, unit: LengthUnit): Figure | null {
  const spans = readings.filter((one): one is Span => one.of === 'span').toSorted((one, other) => one.over - other.over);
  const [short, long] = [spans[0], spans[spans.length - 1]];
  if (!short || !long || long.over === short.over) return null;
  const between = long.over - short.over;
  const given = [
    givenLength('W2', `over ${long.over} teeth`, long.size, unit, 'measured'),
    givenLength('W1', `over ${short.over} teeth`, short.size, unit, 'measured'),
  ];
  const counts: Given[] = between === 1 ? [] : [{ symbol: 'n', name: 'teeth more', value: { count: between }, from: 'typed' }];
  const size = inUnit(subtract(long.size, short.size), unit) / between;
  return {
    name: 'Base pitch by the spans',
    symbol: 'pb',
    value: { length: ofUnit(size, unit) },
    unit,
    formula: between === 1 ? 'W2 − W1' : '(W2 − W1) ÷ n',
    source: 'follows from the span formula: even wear cancels in the difference',
    given: [...given, ...counts],
  };
}

const wearFigure = ({ candidate, fit }: Found, unit: LengthUnit): Figure => ({
  ...words('Teeth thinned, if it is that', 'b', '', unit),
  value: { length: inches(fit.wear) },
  note: `Along the pitch circle of ${candidate.name}: wear, and the lash that was cut in.`,
});

function verdict({ list, none, pitches }: Identified): string {
  const [best, pitch] = [list[0], pitches[0]];
  if (!best || !pitch || none > best.chance)
    return `None of these fits (${chanceText(none)}). Cycloidal and odd old forms are met: look at the flank, count again, measure again.`;
  return `Likeliest ${best.candidate.name}${standsSo(best)}: ${chanceText(best.chance)}; such an answer is right about ${oftenRight(best.chance)}. The pitch is ${printPitch(pitch.known.pitch)}: ${chanceText(pitch.chance)}.`;
}

function figuresOf(found: Identified, wheel: MeasuredWheel, unit: LengthUnit): IdentifyAnswer['figures'] {
  const { list, none, pitches, angles, next } = found;
  const [best, pitch, angle] = [list[0], pitches[0], angles[0]];
  const noneBest = !best || none > best.chance;
  const [outside, base] = [byOutside(wheel, unit), basePitchRead(wheel, unit)];
  return {
    likeliest: words('Likeliest', 'is', noneBest ? 'none of these' : `${best.candidate.name}${standsSo(best)}`, unit),
    chance: words('Chance of it', 'c', chanceText(noneBest ? none : best.chance), unit),
    pitch: words('Pitch', 'P', pitch ? printPitch(pitch.known.pitch) : 'none of these', unit),
    pitchChance: words('Chance of the pitch', 'cP', chanceText(pitch?.chance ?? 0), unit),
    angle: words('Pressure angle', 'a', angle ? `${printShort(angle.deg, 1)}°` : 'none of these', unit),
    angleChance: words('Chance of the angle', 'ca', chanceText(angle?.chance ?? 0), unit),
    noneFits: words('Chance that none fits', 'c0', chanceText(none), unit),
    next: words('Measure next', 'M', next ? next.name : 'nothing here parts them: a second wheel, or the mate', unit),
    ...(best ? { wear: wearFigure(best, unit) } : {}),
    ...(outside ? { pitchByOutside: outside } : {}),
    ...(base ? { basePitch: base } : {}),
  };
}

/**
 * What a wheel is, from what a caliper and a tooth count give; further wheels of its set make it surer. found: what was identified of these wheels
 * already. Throws DomainError for readings that
 * make no sense. Example: 22 teeth, outside 2.998, over 2 0.5835, over 3 0.9638 is likeliest 8 DP, 14½° full involute.
 */
export function identifyAnswer(wheels: readonly MeasuredWheel[], unit: LengthUnit, found: Identified = identify(wheels)): IdentifyAnswer {
  const first = wheels[0] as MeasuredWheel;
  const { list, next, near } = found;
  return {
    says: verdict(found),
    figures: figuresOf(found, first, unit),
    cautions: identifyCautions(found, wheels),
    tables: [
      ...(list.length > 0 ? [candidatesTable(found, unit)] : []),
      ...(next ? [nextTable(next, unit)] : []),
      ...(list.length > 0 ? [misfitsTable(found, unit)] : []),
      ...(near.length > 0 ? [nearTable(found, first.teeth, unit)] : []),
      ...(wheels.length > 1
        ? [
            setTable(
              found,
              wheels.map(({ teeth }) => teeth),
              unit,
            ),
          ]
        : []),
    ],
  };
}
