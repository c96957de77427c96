import type { Row } from '../../db/executor.ts';
import { type Gear, HARDNESSES, MATERIALS, TRUSTS } from '../../lib/gears/gear.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { choiceField, noteField, optional, textField, wordsField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Problems, required, type Typed } from '../forms/form.ts';
import { patternFields, wheelFaults } from '../forms/gear-form.ts';
import { gearGroups } from '../forms/gear-typed.ts';
import { QUADRANT_FIELDS, quadrantProblems, typedOfQuadrant } from '../forms/quadrant-form.ts';
import { wheelsField } from '../forms/wheels-field.ts';
import { assemblyChoice } from '../machines/forms.ts';
import type { FieldGroup } from '../page.ts';
import { screwField, threadsField } from '../sums/read-trains.ts';

/** The two lines that fill a set, and what the wheels of the drawer have in common. */
export const lineFields = {
  belongs: wheelsField('What belongs', 'As the plate on the door lists it: 19, 22, 25-37 step 3, 41'),
  drawer: wheelsField(
    'What lies in the drawer',
    'Every loose gear: 19x2, 22, 25-31 odd, 34, 46x2. Single wheels can be changed afterwards',
  ),
  material: wordsField({ label: 'They are of', words: MATERIALS }),
  hardness: wordsField({ label: 'As tried with a file', words: HARDNESSES, hint: 'On tip, root, web and bore' }),
  trust: wordsField({ label: 'They are', words: TRUSTS, hint: 'Of two alike the original stays on the machine' }),
};
const LINES = Object.keys(lineFields);
const USUAL: Typed = { material: 'unknown', hardness: 'not tried', trust: 'unknown' };

const setsField = choiceField({
  label: 'Its wheels set',
  choices: [
    ['threads', 'threads'],
    ['feeds', 'feeds'],
    ['tooth counts', 'tooth counts'],
    ['speeds', 'speeds'],
    ['other', 'something else'],
  ],
});

const nameFields = {
  name: required(textField({ label: 'Name', hint: 'For instance index change gears' }), 'what the set is called'),
  sets: setsField,
};
const notesFields = { notes: noteField({ label: 'Notes' }) };

/** Where the set belongs: one of the assemblies, or a new one. */
const whereFields = (all: readonly Row<'assembly'>[]) => ({
  assembly: optional(assemblyChoice(all)),
  newAssembly: textField({
    label: all.length === 0 ? 'Assembly' : 'or a new assembly',
    hint: 'The part of the machine: bed, headstock, change gears',
  }),
});

export const newSetFields = (all: readonly Row<'assembly'>[], unit: LengthUnit) => ({
  ...nameFields,
  ...whereFields(all),
  ...patternFields(unit),
  ...lineFields,
  ...notesFields,
});

/** What the set is to cut, and on which screw. */
const chartFields = {
  chart: {
    ...optional(threadsField({ label: 'Chart of the machine', hint: 'What its plate lists: 8 TPI, 11 1/2 TPI, 1.5 mm, 0.004 in' })),
    kind: 'long text' as const,
  },
  screw: optional(screwField({ label: 'Lead screw', hint: 'What equal wheels cut: 4 TPI, 6 mm' })),
};

export const editSetFields = (unit: LengthUnit) => ({
  ...nameFields,
  ...patternFields(unit),
  ...chartFields,
  ...QUADRANT_FIELDS,
  ...notesFields,
});

/** A chart wants its screw, and a quadrant all that decides whether a train stands. */
export const chartProblems = (typed: Typed): Problems => ({
  ...((typed['chart'] ?? '').trim() !== '' && (typed['screw'] ?? '').trim() === ''
    ? { screw: 'A chart wants the screw: type what equal wheels cut, as 4 TPI or 6 mm.' }
    : {}),
  ...quadrantProblems(typed),
});

/** What stands in a fresh form. */
export const freshSet: Typed = { sets: 'threads', newAssembly: 'Change gears', system: 'full-14.5', body: 'unknown', ...USUAL };

export const linesGroup = (typed: Typed, problems: Problems): FieldGroup => ({
  ...fieldGroup('The wheels', lineFields, typed, problems, LINES),
  hint: 'Commas between; 19x2 is two alike, 25-31 is a run. What lies there fills what belongs; the rest is spare.',
});

export function newSetGroups(all: readonly Row<'assembly'>[], unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const where = all.length === 0 ? ['newAssembly'] : ['assembly', 'newAssembly'];
  return [
    fieldGroup('', { ...nameFields, ...whereFields(all) }, typed, problems, ['name', 'sets', ...where]),
    ...gearGroups(typed, problems, unit, 'pattern'),
    linesGroup(typed, problems),
    fieldGroup('', notesFields, typed, problems),
  ];
}

export const editSetGroups = (unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] => [
  fieldGroup('', nameFields, typed, problems),
  ...gearGroups(typed, problems, unit, 'pattern').map((group, at) =>
    at === 0 ? { ...group, hint: 'Wheels that still stand as the pattern had them follow it; those changed by themselves stay.' } : group,
  ),
  {
    ...fieldGroup('What it is to cut', chartFields, typed, problems),
    hint: 'Each line is then marked exact, near or lost with the wheels that lie there.',
  },
  {
    ...fieldGroup('Quadrant', QUADRANT_FIELDS, typed, problems),
    hint: 'Measured once: whether a train can stand is then known before anything is fetched.',
  },
  fieldGroup('', notesFields, typed, problems),
];

type Counts = { readonly belongs: readonly number[]; readonly drawer: readonly number[] };

/** Tooth counts that this pattern cannot have: a bore through the roots, a count too small. Beside the line that holds them. */
export function countProblems(pattern: Omit<Gear, 'teeth'>, { belongs, drawer }: Counts): Problems {
  const problemOf = (counts: readonly number[]): string | undefined =>
    [...new Set(counts)].flatMap((teeth) => Object.values(wheelFaults({ ...pattern, teeth })))[0];
  const [wrong, odd] = [problemOf(belongs), problemOf(drawer)];
  return { ...(wrong ? { belongs: wrong } : {}), ...(odd ? { drawer: odd } : {}) };
}

export const typedOfSet = (row: Row<'wheel_set'>): Typed => ({
  name: row.name,
  sets: row.sets,
  notes: row.notes,
  chart: row.chart,
  screw: row.screw,
  ...typedOfQuadrant(row.quadrant),
});
