import type { ToolDetails, ToolForms } from '../../../db/tool-details.ts';
import type { ToolLine } from '../../../db/tools.ts';
import type { AnyTool } from '../../../lib/tooling/tooling.ts';
import type { Length, LengthUnit } from '../../../lib/values/length.ts';
import type { LengthForm } from '../../../lib/values/print.ts';
import type { TypedLength } from '../../../lib/values/read.ts';
import { type Field, lengthField, optional } from '../../forms/field.ts';
import type { Fields, Problems, Typed, ValuesOf } from '../../forms/form.ts';
import { lengthTyped } from '../../forms/ring-field.ts';
import type { FigureView } from '../../page.ts';

export type Kind = AnyTool['kind'];

/** What came of the kind's own fields: what is to be kept, or what does not agree between them. */
export type Detailed =
  | { readonly ok: true; readonly details: ToolDetails; readonly forms: ToolForms }
  | { readonly ok: false; readonly problems: Problems };

/**
 * One kind of tool: what its form asks beside name and owner, how that is kept and given back, and how a tool of it is shown.
 * name: what it is called when nobody named it. short: the figures by which it is told from others, for a list.
 * lacks: what is missing on it that keeps it from being offered; '' when nothing is.
 */
export type KindForm = {
  readonly kind: Kind;
  readonly one: string;
  readonly many: string;
  readonly blunts: boolean;
  readonly fields: (unit: LengthUnit) => Fields;
  readonly fresh: Typed;
  readonly groups: readonly { readonly legend: string; readonly names: readonly string[] }[];
  readonly details: (values: never) => Detailed;
  readonly name: (details: never) => string;
  readonly typed: (line: ToolLine, unit: LengthUnit) => Typed;
  readonly short: (tool: never) => string;
  readonly sizes: (line: ToolLine) => readonly FigureView[];
  readonly lacks: (tool: never) => string;
};

type Of<K extends Kind> = Extract<AnyTool, { kind: K }>;
type LineOf<K extends Kind> = { readonly row: ToolLine['row']; readonly tool: Of<K>; readonly forms: ToolForms };

type KindFormOf<K extends Kind, F extends Fields> = Omit<
  KindForm,
  'details' | 'name' | 'short' | 'lacks' | 'fields' | 'typed' | 'sizes'
> & {
  readonly kind: K;
  readonly fields: (unit: LengthUnit) => F;
  readonly details: (values: ValuesOf<F>) => Detailed;
  readonly name: (details: Extract<ToolDetails, { kind: K }>) => string;
  readonly typed: (line: LineOf<K>, unit: LengthUnit) => { readonly [N in keyof F]: string };
  readonly short: (tool: Of<K>) => string;
  readonly sizes: (line: LineOf<K>) => readonly FigureView[];
  readonly lacks: (tool: Of<K>) => string;
};

/** Ties what a kind's functions get to the fields and the tool that are its own. */
export const kindForm = <K extends Kind, F extends Fields>(wanted: KindFormOf<K, F>): KindForm => wanted as unknown as KindForm;

const inMm = (x: number, unit: LengthUnit): number => (unit === 'in' ? x : Math.round(x * 2540) / 100);

/** A size of a tool, its limits given in inches. */
export const sizeField = (label: string, unit: LengthUnit, least: number, most: number, hint = ''): Field<TypedLength> =>
  lengthField({ label, hint, unit, limits: { least: inMm(least, unit), most: inMm(most, unit) } });

export const maybeSize = (...asked: Parameters<typeof sizeField>): Field<TypedLength | null> => optional(sizeField(...asked));

export const lengthOf = (typed: TypedLength | null): Length | null => typed?.length ?? null;

/** How the lengths were typed, by name; those that were not typed are left out. */
export const formsOf = (typed: Readonly<Record<string, TypedLength | null>>): ToolForms =>
  Object.fromEntries(Object.entries(typed).flatMap(([name, one]) => (one ? [[name, one.form] as const] : [])));

/** A kept length as it would be typed; an empty box for none. */
export const sizeTyped = (length: Length | null, form: LengthForm | undefined, unit: LengthUnit): string =>
  length === null ? '' : lengthTyped(length, form ?? { unit: 'in', places: 4 }, unit);
