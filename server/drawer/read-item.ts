import type { AnyGear } from '../../db/gears.ts';
import type { NewItem } from '../../db/items.ts';
import type { Hardness } from '../../lib/gears/gear.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { formsOf, type GearForms, type GearValues, gearOf, gearProblems, pitchProblems } from '../forms/gear-form.ts';
import {
  type ItemKind,
  itemFields,
  type PlainValues,
  type StockValues,
  stockColumns,
  thingColumns,
  type WheelValues,
  wheelColumns,
} from './forms.ts';

type Columns = Pick<NewItem, 'name' | 'trust' | 'condition' | 'hardness' | 'material' | 'kept_in' | 'notes'> & Partial<NewItem>;
export type ThingRead =
  | {
      readonly ok: true;
      readonly columns: Columns;
      readonly wheel: { readonly gear: AnyGear; readonly forms: GearForms } | null;
      readonly typed: Typed;
    }
  | { readonly ok: false; readonly problems: Problems; readonly typed: Typed };

/** Reads the form of a thing, with what does not agree between its fields. before: its hardness on record. */
export function readThing(sent: unknown, kind: ItemKind, unit: LengthUnit, before: Hardness): ThingRead {
  const read = readForm(sent, itemFields(kind, unit));
  const pitch = kind === 'wheel' ? pitchProblems(read.typed) : {};
  if (!read.ok) return { ...read, problems: { ...pitch, ...read.problems } };
  const { typed } = read;
  if (kind === 'stock') return { ok: true, columns: stockColumns(read.value as StockValues), wheel: null, typed };
  if (kind !== 'wheel') return { ok: true, columns: thingColumns(read.value as PlainValues), wheel: null, typed };
  const values = read.value as GearValues & WheelValues;
  const problems = { ...pitch, ...gearProblems(values) };
  if (Object.keys(problems).length > 0) return { ok: false, problems, typed };
  return { ok: true, columns: wheelColumns(values, before), wheel: { gear: gearOf(values), forms: formsOf(values) }, typed };
}
