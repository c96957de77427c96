import type { NewReading } from '../../db/readings.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import { degrees } from '../../lib/values/angle.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { dayField } from '../forms/date-field.ts';
import { angleField, choiceField, countField, lengthField, optional, textField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Problems, Typed, ValuesOf } from '../forms/form.ts';
import type { FieldGroup } from '../page.ts';

const { span: SPAN, pins: BOTTOM_PINS, flankPins: FLANK_PINS, centres: CENTRES, print: PRINT } = READING_NAMES;

/** What can be read on a wheel, and what it is called. The walls have a form of their own. */
const WHAT: readonly (readonly [string, string])[] = [
  [READING_NAMES.jaws, 'outside, between flat jaws'],
  [READING_NAMES.outside, 'outside, as a true diameter'],
  [SPAN, 'span over teeth'],
  [FLANK_PINS, 'over two pins that rest on the flanks'],
  [READING_NAMES.bore, 'bore'],
  [READING_NAMES.across, 'across opposite roots'],
  [READING_NAMES.root, 'root diameter'],
  [READING_NAMES.depth, 'depth of a space, tip to root'],
  [BOTTOM_PINS, 'over two pins that touch the bottoms'],
  [CENTRES, 'centre distance with a mate'],
  [PRINT, 'lean of a rolled print, from the axis'],
  [READING_NAMES.runOut, 'run-out of the roots, full reading'],
  [READING_NAMES.caseDepth, 'depth of the case'],
];

/** A reading's name as a row has it. */
export function readingWords(what: string, place: number | null, overK: number | null): string {
  if (what === READING_NAMES.wall) return place === null ? 'Least wall, bore to root' : `Wall, bore to root, place ${place}`;
  if (what === SPAN && overK !== null) return `Span over ${overK} teeth`;
  const said = WHAT.find(([name]) => name === what)?.[1] ?? what;
  return said.charAt(0).toUpperCase() + said.slice(1);
}

const sizeLimits = (unit: LengthUnit) => (unit === 'in' ? { least: 0, most: 200 } : { least: 0, most: 5000 });

const howFields = (unit: LengthUnit) => ({
  instrument: textField({ label: 'Read with', hint: 'Micrometer, vernier, plug gauge', most: 60 }),
  error: optional(
    lengthField({
      label: 'May be off by',
      hint: 'What the instrument can be out, either way',
      unit,
      limits: unit === 'in' ? { least: 0, most: 0.1 } : { least: 0, most: 2.5 },
    }),
  ),
  readOn: dayField('Read on'),
});

export const readingFields = (unit: LengthUnit) => ({
  what: choiceField({ label: 'What was read', choices: WHAT }),
  value: optional(lengthField({ label: 'Reading', hint: 'Empty only for the lean of a print', unit, limits: sizeLimits(unit) })),
  overK: optional(countField({ label: 'Over how many teeth', hint: 'Span only', limits: { least: 1, most: 60 }, unit: 'teeth' })),
  pin: optional(lengthField({ label: 'Pin diameter', hint: 'Pins only', unit, limits: sizeLimits(unit) })),
  mate: optional(countField({ label: 'Teeth of the mate', hint: 'Centre distance only', limits: { least: 4, most: 1000 }, unit: 'teeth' })),
  lean: optional(angleField({ label: 'Lean', hint: 'Of a rolled print only; straight teeth 0', limits: { least: 0, most: 60 } })),
  ...howFields(unit),
});

export type ReadingValues = ValuesOf<ReturnType<typeof readingFields>>;

const onPins = (what: string): boolean => what === BOTTOM_PINS || what === FLANK_PINS;

/** What does not agree between the fields. */
export function readingProblems({ what, value, overK, pin, mate, lean, error }: ReadingValues): Problems {
  if (what === PRINT) return lean === null ? { lean: 'Type by how many degrees the print leans from the axis; straight teeth 0.' } : {};
  if (value === null) return { value: 'This box is empty. Type the reading.' };
  if (what === SPAN && overK === null) return { overK: 'Type over how many teeth the span was read.' };
  if (what === CENTRES && mate === null) return { mate: 'Type the teeth of the wheel that it runs with.' };
  if (onPins(what) && pin === null) return { pin: 'Type the diameter of the pins.' };
  if (onPins(what) && pin && pin.length >= value.length) return { pin: 'The pins are larger than what was read over them.' };
  if (value.length === 0 && what !== READING_NAMES.runOut) return { value: 'This cannot be 0. Look at the instrument again.' };
  return error && error.length > value.length && value.length > 0 ? { error: 'More than the reading itself. Type the error alone.' } : {};
}

/** The reading that was typed, which readingProblems finds whole. */
export function readingOf({ what, value, overK, pin, mate, lean, instrument, error, readOn }: ReadingValues): NewReading {
  const common = { what, read_on: readOn, instrument };
  if (what === PRINT || value === null) return { ...common, value: { angle: lean ?? degrees(0) } };
  return {
    ...common,
    value: { length: value.length },
    form: value.form,
    over_k: what === SPAN ? overK : null,
    pin: onPins(what) ? (pin?.length ?? null) : null,
    mateTeeth: what === CENTRES ? mate : null,
    error: error ? { length: error.length } : null,
  };
}

const PLACES = [1, 2, 3, 4, 5, 6] as const;

const wallField = (place: number, unit: LengthUnit) =>
  optional(lengthField({ label: `Wall ${place}`, unit, limits: unit === 'in' ? { least: 0.01, most: 60 } : { least: 0.2, most: 1500 } }));

export const wallFields = (unit: LengthUnit) => ({
  wall1: wallField(1, unit),
  wall2: wallField(2, unit),
  wall3: wallField(3, unit),
  wall4: wallField(4, unit),
  wall5: wallField(5, unit),
  wall6: wallField(6, unit),
  bore: optional(lengthField({ label: 'Bore, as measured', hint: 'Once is enough', unit, limits: sizeLimits(unit) })),
  ...howFields(unit),
});

export type WallValues = ValuesOf<ReturnType<typeof wallFields>>;

/** hasBore: a bore was read before. */
export function wallProblems(values: WallValues, hasBore: boolean): Problems {
  const any = PLACES.some((place) => values[`wall${place}`] !== null);
  if (!any) return { wall1: 'Type one wall at least; six places, a sixth of a turn apart, find the least.' };
  if (!values.bore && !hasBore) return { bore: 'The bore is wanted too: the root is worked out from wall and bore together.' };
  return values.bore?.length === 0 ? { bore: 'This cannot be 0.' } : {};
}

/** The walls typed, each with its place, and the bore. */
export function wallReadings(values: WallValues): NewReading[] {
  const { instrument, error, readOn, bore } = values;
  const how = { error: error ? { length: error.length } : null, read_on: readOn, instrument };
  const walls = PLACES.flatMap((place) => {
    const wall = values[`wall${place}`];
    return wall ? [{ ...how, what: READING_NAMES.wall, value: { length: wall.length }, form: wall.form, place_no: place }] : [];
  });
  const read = bore ? [{ ...how, what: READING_NAMES.bore, value: { length: bore.length }, form: bore.form }] : [];
  return [...walls, ...read];
}

/** Several forms stand on one page: each names its boxes its own way. */
export const named = (group: FieldGroup, prefix: string, hint = ''): FieldGroup => ({
  ...group,
  hint,
  fields: group.fields.map((field) => ({ ...field, id: `${prefix}-${field.name}` })),
});

export function readingGroups(unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const names = ['what', 'value', 'overK', 'pin', 'mate', 'lean', 'instrument', 'error', 'readOn'];
  return [named(fieldGroup('', readingFields(unit), typed, problems, names), 'reading')];
}

export function wallGroups(unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const names = [...PLACES.map((place) => `wall${place}`), 'bore', 'instrument', 'error', 'readOn'];
  const hint =
    'From the bore to the root, at six places a sixth of a turn apart. The least counts, so that the new outside is true to the bore.';
  return [named(fieldGroup('Six walls', wallFields(unit), typed, problems, names), 'walls', hint)];
}
