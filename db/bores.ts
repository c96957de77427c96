import type { Bore } from '../lib/gears/gear.ts';
import type { Length, LengthUnit } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';
import type { Executor, NewRow, Row } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';

/** How the lengths of a wheel were typed, by name: face, diameter, minor, keyWidth, keyDepth, "recess 0 inner", "opening 2 outer". */
export type Forms = Readonly<Record<string, LengthForm>>;

const NO_OTHERS = {
  minor_nm: null,
  minor_form: null,
  splines: null,
  key_width_nm: null,
  key_width_form: null,
  key_depth_nm: null,
  key_depth_form: null,
};

/** A bore as a row. unit: that of lengths that have no form. */
export function boreRow(bore: Bore, forms: Forms, unit: LengthUnit): NewRow<'bore'> {
  const form = (name: string): string => formText(forms[name] ?? usualForm(unit));
  const plain = { ...NO_OTHERS, form: bore.form, diameter_nm: bore.diameter, diameter_form: form('diameter') };
  if (bore.form === 'plain') return plain;
  const keyed = { ...plain, key_width_nm: bore.keyWidth, key_width_form: form('keyWidth') };
  if (bore.form === 'keyed') return { ...keyed, key_depth_nm: bore.keyDepth, key_depth_form: form('keyDepth') };
  return { ...keyed, minor_nm: bore.minor, minor_form: form('minor'), splines: bore.splines };
}

/** A bore row as lib has it. */
export function boreOf(row: Row<'bore'>): Bore {
  const [diameter, keyWidth] = [row.diameter_nm as Length, row.key_width_nm as Length];
  if (row.form === 'plain') return { form: 'plain', diameter };
  if (row.form === 'keyed') return { form: 'keyed', diameter, keyWidth, keyDepth: row.key_depth_nm as Length };
  return { form: 'splined', diameter, minor: row.minor_nm as Length, splines: row.splines as number, keyWidth };
}

export function formsOfBore(row: Row<'bore'>): Forms {
  const named = { diameter: row.diameter_form, minor: row.minor_form, keyWidth: row.key_width_form, keyDepth: row.key_depth_form };
  return Object.fromEntries(Object.entries(named).flatMap(([name, text]) => (text === null ? [] : [[name, formOfText(text)]])));
}

export async function addBore(db: Executor, bore: Bore, forms: Forms, unit: LengthUnit): Promise<number> {
  const { id } = await db
    .insertInto('bore')
    .values(boreRow(bore, forms, unit))
    .returning('id')
    .executeTakeFirstOrThrow();
  return id;
}

export async function boresById(db: Executor, ids: readonly number[]): Promise<ReadonlyMap<number, Row<'bore'>>> {
  if (ids.length === 0) return new Map();
  const rows = await db.selectFrom('bore').selectAll().where('id', 'in', ids).execute();
  return new Map(rows.map((row) => [row.id, row]));
}
