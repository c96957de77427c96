import type { ToolLine } from '../../db/tools.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { dayField } from '../forms/date-field.ts';
import { choiceField, noteField, optional, textField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Fields, type Problems, required, type Typed } from '../forms/form.ts';
import type { FieldGroup } from '../page.ts';
import type { KindForm } from './kinds/kind-form.ts';

const SHARPNESS = [
  ['sharp', 'sharp'],
  ['dull', 'blunt: to be sharpened'],
  ['worn out', 'worn out'],
] as const;
const FITNESS = [
  ['sharp', 'fit for work'],
  ['worn out', 'worn out'],
] as const;

const nameField = textField({ label: 'Name', hint: 'Empty: it is named after what it is', most: 80 });

/** What every tool's form asks beside what its kind asks. */
const commonFields = ({ kind, blunts }: KindForm) => ({
  name:
    kind === 'other'
      ? required(
          { ...nameField, hint: 'With the words and sizes that an operation asks for: 1/4 BSF tap, test bar, dog' },
          'the name of the tool',
        )
      : nameField,
  wear: choiceField({ label: 'Condition', choices: blunts ? SHARPNESS : FITNESS }),
  keptIn: textField({ label: 'Kept in', hint: 'Drawer, box, rack', most: 80 }),
  owner: textField({ label: 'Belongs to', hint: 'Empty: this shop. A name makes it borrowed', most: 80 }),
  dueOn: optional(dayField('Due back', 'Borrowed or lent: the day, as 2026-03-09')),
  notes: noteField({ label: 'Notes' }),
});

export type CommonValues = {
  readonly name: string;
  readonly wear: 'sharp' | 'dull' | 'worn out';
  readonly keptIn: string;
  readonly owner: string;
  readonly dueOn: string | null;
  readonly notes: string;
};

export const toolFields = (kind: KindForm, unit: LengthUnit): Fields => ({ ...kind.fields(unit), ...commonFields(kind) });

/** An empty form of this kind. */
export const freshTyped = (kind: KindForm): Typed => ({ ...kind.fresh, wear: 'sharp' });

/** What would have been typed for a tool on record. */
export const typedOfTool = (kind: KindForm, line: ToolLine, unit: LengthUnit): Typed => ({
  ...kind.typed(line, unit),
  name: line.row.name,
  wear: line.row.wear,
  keptIn: line.row.kept_in,
  owner: line.row.owner,
  dueOn: line.row.due_on ?? '',
  notes: line.row.notes,
});

export function toolGroups(kind: KindForm, unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const fields = toolFields(kind, unit);
  const group = (legend: string, names: readonly string[]) => fieldGroup(legend, fields, typed, problems, names);
  const own = kind.groups.map(({ legend, names }) => group(legend, names));
  const name = group(kind.groups.length > 0 ? 'Its name' : 'What it is', ['name', 'wear']);
  return [...(kind.kind === 'other' ? [name] : [...own, name]), group('Where and whose', ['keptIn', 'owner', 'dueOn', 'notes'])];
}

/** Lending a tool out. */
export const lendFields = {
  lentTo: required(textField({ label: 'Lent to', most: 80 }), 'who has it'),
  dueOn: optional(dayField('Due back')),
};

export const typedOfLoan = ({ row }: ToolLine): Typed => ({ lentTo: row.lent_to, dueOn: row.due_on ?? '' });
