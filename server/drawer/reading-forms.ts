import type { NewReading } from '../../db/readings.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { dayField } from '../forms/date-field.ts';
import { choiceField, countField, lengthField, optional, textField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Problems, Typed, ValuesOf } from '../forms/form.ts';
import type { FieldGroup } from '../page.ts';

const SPAN = 'span';

/** What can be read on a wheel, and what it is called. The walls have a form of their own. */
const WHAT: readonly (readonly [string, string])[] = [
  [READING_NAMES.bore, 'bore'],
  [READING_NAMES.across, 'across opposite roots'],
  [READING_NAMES.depth, 'depth of a space, tip to root'],
  [READING_NAMES.pins, 'over two pins'],
  [READING_NAMES.jaws, 'outside, between flat jaws'],
  [SPAN, 'span over teeth'],
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
  value: lengthField({ label: 'Reading', unit, limits: sizeLimits(unit) }),
  overK: optional(countField({ label: 'Over how many teeth', hint: 'Span only', limits: { least: 1, most: 60 }, unit: 'teeth' })),
  pin: optional(lengthField({ label: 'Pin diameter', hint: 'Pins only: they must touch the bottoms', unit, limits: sizeLimits(unit) })),
  ...howFields(unit),
});

export type ReadingValues = ValuesOf<ReturnType<typeof readingFields>>;

/** What does not agree between the fields. */
export function readingProblems({ what, value, overK, pin, error }: ReadingValues): Problems {
  if (what === SPAN && overK === null) return { overK: 'Type over how many teeth the span was read.' };
  if (what === READING_NAMES.pins && pin === null) return { pin: 'Type the diameter of the pins.' };
  if (what === READING_NAMES.pins && pin && pin.length >= value.length) return { pin: 'The pins are larger than what was read over them.' };
  if (value.length === 0 && what !== READING_NAMES.runOut) return { value: 'This cannot be 0. Look at the instrument again.' };
  return error && error.length > value.length && value.length > 0 ? { error: 'More than the reading itself. Type the error alone.' } : {};
}

export const readingOf = ({ what, value, overK, pin, instrument, error, readOn }: ReadingValues): NewReading => ({
  what,
  value: { length: value.length },
  form: value.form,
  over_k: what === SPAN ? overK : null,
  pin: what === READING_NAMES.pins ? (pin?.length ?? null) : null,
  error: error ? { length: error.length } : null,
  read_on: readOn,
  instrument,
});

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
  const names = ['what', 'value', 'overK', 'pin', 'instrument', 'error', 'readOn'];
  return [named(fieldGroup('', readingFields(unit), typed, problems, names), 'reading')];
}

export function wallGroups(unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const names = [...PLACES.map((place) => `wall${place}`), 'bore', 'instrument', 'error', 'readOn'];
  const hint =
    'From the bore to the root, at six places a sixth of a turn apart. The least counts, so that the new outside is true to the bore.';
  return [named(fieldGroup('Six walls', wallFields(unit), typed, problems, names), 'walls', hint)];
}
