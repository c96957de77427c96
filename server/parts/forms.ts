import type { Row } from '../../db/executor.ts';
import type { PartLine } from '../../db/parts.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { choiceField, noteField, optional, textField, wordsField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Problems, required, type Typed } from '../forms/form.ts';
import { gearFields } from '../forms/gear-form.ts';
import { gearGroups, typedOfGear } from '../forms/gear-typed.ts';
import { assemblyChoice } from '../machines/forms.ts';
import type { FieldGroup } from '../page.ts';

/** The assemblies and change-gear sets that a part can belong to. */
export type Belongs = {
  readonly assemblies: readonly Row<'assembly'>[];
  readonly sets: readonly { readonly id: number; readonly name: string; readonly assembly_id: number }[];
};

/** wheel: with teeth, of one of the known materials; other: anything else. */
export type Sort = 'wheel' | 'other';

const whereFields = ({ assemblies }: Belongs) => ({
  assembly: optional(assemblyChoice(assemblies)),
  newAssembly: textField({
    label: assemblies.length === 0 ? 'Assembly' : 'or a new assembly',
    hint: 'The part of the machine it belongs to',
  }),
});

const setField = ({ sets }: Belongs) =>
  optional(choiceField({ label: 'Of the change gears', choices: sets.map(({ id, name }) => [String(id), name] as const) }));

const baseFields = (belongs: Belongs) => ({
  name: required(textField({ label: 'Name', hint: 'As it is called at the machine' }), 'what the part is called'),
  ...whereFields(belongs),
});

/** A wheel without its teeth, which are read apart. */
export const wheelPartFields = (belongs: Belongs) => ({
  ...baseFields(belongs),
  set: setField(belongs),
  material: optional(wordsField({ label: 'To be of', words: MATERIALS })),
  notes: noteField({ label: 'Notes' }),
});

export const otherPartFields = (belongs: Belongs) => ({
  ...baseFields(belongs),
  material: textField({ label: 'Material', hint: 'For instance cast iron, or leather' }),
  notes: noteField({ label: 'Notes' }),
});

/** Every field of a wheel's form, for holding two versions side by side. */
export const allWheelFields = (belongs: Belongs, unit: LengthUnit) => ({ ...wheelPartFields(belongs), ...gearFields(unit) });

export const freshPart: Typed = { system: 'full-14.5', body: 'unknown' };

export function partGroups(sort: Sort, belongs: Belongs, unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const where = belongs.assemblies.length === 0 ? ['newAssembly'] : ['assembly', 'newAssembly'];
  if (sort === 'other') return [fieldGroup('', otherPartFields(belongs), typed, problems, ['name', ...where, 'material', 'notes'])];
  const fields = wheelPartFields(belongs);
  const set = belongs.sets.length === 0 ? [] : ['set'];
  return [
    fieldGroup('', fields, typed, problems, ['name', ...where, ...set]),
    ...gearGroups(typed, problems, unit),
    fieldGroup('', fields, typed, problems, ['material', 'notes']),
  ];
}

const wheelTyped = ({ stored, unknown }: PartLine, unit: LengthUnit): Typed => {
  const wheel = stored ?? unknown;
  return wheel ? typedOfGear(wheel, unit) : freshPart;
};

/** What a form would have had typed into it for this part. */
export const typedOfPart = (part: PartLine, unit: LengthUnit): Typed => ({
  name: part.name,
  assembly: String(part.assembly_id),
  newAssembly: '',
  set: part.set_id === null ? '' : String(part.set_id),
  material: part.material,
  notes: part.notes,
  ...wheelTyped(part, unit),
});
