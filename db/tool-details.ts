import type { AnyTool, Arbor, Chuck, Cutter, Head, Mandrel, OtherTool, Plate } from '../lib/tooling/tooling.ts';
import type { Length } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';
import { addBore, type Forms, formsOfBore } from './bores.ts';
import type { Executor, NewRow, Row } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';

type Base = 'id' | 'name' | 'here';
/** What a tool has by its kind. one_idler of a head: which way its plate turns with one idler, once tried. */
export type ToolDetails =
  | Omit<Cutter, Base | 'sharp'>
  | Omit<Plate, Base>
  | (Omit<Head, Base> & { readonly oneIdler: 'with' | 'against' | null })
  | Omit<Mandrel, Base>
  | Omit<Arbor, Base>
  | Omit<Chuck, Base>
  | Omit<OtherTool, Base>;

/** How its lengths were typed: hole, diameter, width, stampedDepth, runOut; of a mandrel also the bore's names. */
export type ToolForms = Forms;

const formFor = (forms: ToolForms, name: string): LengthForm => forms[name] ?? usualForm('in');
const typed = (length: Length | null, forms: ToolForms, name: string) => ({
  nm: length,
  form: length === null ? null : formText(formFor(forms, name)),
});

type CutterDetails = Extract<ToolDetails, { kind: 'cutter' }>;
function cutterRow(tool_id: number, cutter: CutterDetails, forms: ToolForms): NewRow<'cutter'> {
  const hole = typed(cutter.hole, forms, 'hole');
  const diameter = typed(cutter.diameter, forms, 'diameter');
  const width = typed(cutter.width, forms, 'width');
  const depth = typed(cutter.stampedDepth, forms, 'stampedDepth');
  return {
    tool_id,
    pitch_num: cutter.pitch?.size[0] ?? null,
    pitch_den: cutter.pitch?.size[1] ?? null,
    pitch_kind: cutter.pitch?.kind ?? null,
    angle_mas: cutter.angle,
    number_text: cutter.number,
    teeth_from: cutter.teethFrom,
    teeth_to: cutter.teethTo,
    hole_nm: hole.nm,
    hole_form: hole.form,
    diameter_nm: diameter.nm,
    diameter_form: diameter.form,
    width_nm: width.nm,
    width_form: width.form,
    stamped_depth_nm: depth.nm,
    stamped_depth_form: depth.form,
    steel: cutter.steel,
    exact_for: cutter.exactFor,
  };
}

async function saveMandrel(
  db: Executor,
  tool_id: number,
  mandrel: Extract<ToolDetails, { kind: 'mandrel' }>,
  forms: ToolForms,
): Promise<void> {
  const [runOut, bore_id] = [typed(mandrel.runOut, forms, 'runOut'), await addBore(db, mandrel.bore, forms, 'in')];
  const row = { tool_id, bore_id, holding: mandrel.holding, run_out_nm: runOut.nm, run_out_form: runOut.form };
  await db.insertInto('mandrel').values(row).execute();
}

function chuckRow(tool_id: number, chuck: Extract<ToolDetails, { kind: 'chuck' }>, forms: ToolForms): NewRow<'chuck'> {
  const runOut = typed(chuck.runOut, forms, 'runOut');
  const diameter = { diameter_nm: chuck.diameter, diameter_form: formText(formFor(forms, 'diameter')) };
  return { tool_id, jaws: chuck.jaws, ...diameter, run_out_nm: runOut.nm, run_out_form: runOut.form, top_speed_rpm: chuck.topSpeedRpm };
}

const headRow = (tool_id: number, head: Extract<ToolDetails, { kind: 'head' }>): NewRow<'head'> => ({
  tool_id,
  turns: head.turns,
  back_pin: head.backPin ? 1 : 0,
  one_idler: head.oneIdler,
  gears: JSON.stringify(head.gears ?? []),
  reached: head.reached ? JSON.stringify(head.reached) : null,
  dial_lines: head.dial?.perTurn ?? null,
  dial_vernier: head.dial?.vernier ?? null,
  dial_near: head.dial?.near ? 1 : 0,
  dial_only: head.dialOnly ? 1 : 0,
  lash_num: head.lash?.[0] ?? null,
  lash_den: head.lash?.[1] ?? null,
});

/** Writes what a tool has by its kind. */
export async function saveDetails(db: Executor, tool_id: number, details: ToolDetails, forms: ToolForms): Promise<void> {
  if (details.kind === 'cutter')
    await db
      .insertInto('cutter')
      .values(cutterRow(tool_id, details, forms))
      .execute();
  if (details.kind === 'plate') {
    const circles = details.sides.flatMap((holes, at) => holes.map((count) => ({ tool_id, side: at + 1, holes: count })));
    if (circles.length > 0) await db.insertInto('plate_circle').values(circles).execute();
  }
  if (details.kind === 'head') {
    await db.insertInto('head').values(headRow(tool_id, details)).execute();
  }
  if (details.kind === 'mandrel') await saveMandrel(db, tool_id, details, forms);
  if (details.kind === 'arbor') {
    const row = { tool_id, diameter_nm: details.diameter, diameter_form: formText(formFor(forms, 'diameter')) };
    await db.insertInto('arbor').values(row).execute();
  }
  if (details.kind === 'chuck')
    await db
      .insertInto('chuck')
      .values(chuckRow(tool_id, details, forms))
      .execute();
}

const TABLES = {
  cutter: 'cutter',
  plate: 'plate_circle',
  head: 'head',
  mandrel: 'mandrel',
  arbor: 'arbor',
  chuck: 'chuck',
} as const satisfies Partial<Record<AnyTool['kind'], string>>;

/** Takes away what a tool has by its kind, so that it can be written anew. */
export async function forgetDetails(db: Executor, { id, kind }: Row<'tool'>): Promise<void> {
  if (kind === 'other') return;
  const mandrel = await db.selectFrom('mandrel').select('bore_id').where('tool_id', '=', id).executeTakeFirst();
  await db.deleteFrom(TABLES[kind]).where('tool_id', '=', id).execute();
  if (mandrel) await db.deleteFrom('bore').where('id', '=', mandrel.bore_id).execute();
}

type DetailRows = {
  readonly cutters: readonly Row<'cutter'>[];
  readonly mandrels: readonly Row<'mandrel'>[];
  readonly arbors: readonly Row<'arbor'>[];
  readonly chucks: readonly Row<'chuck'>[];
  readonly bores: ReadonlyMap<number, Row<'bore'>>;
};

/** How a tool's lengths were typed. */
export function formsOfTool(id: number, rows: DetailRows): ToolForms {
  const own = <T extends { tool_id: number }>(all: readonly T[]): T | undefined => all.find((row) => row.tool_id === id);
  const [cutter, mandrel, chuck] = [own(rows.cutters), own(rows.mandrels), own(rows.chucks)];
  const bore = mandrel && rows.bores.get(mandrel.bore_id);
  const named = {
    hole: cutter?.hole_form,
    diameter: (cutter ?? chuck ?? own(rows.arbors))?.diameter_form,
    width: cutter?.width_form,
    stampedDepth: cutter?.stamped_depth_form,
    runOut: (mandrel ?? chuck)?.run_out_form,
  };
  const typedForms = Object.entries(named).flatMap(([name, text]) => (text ? [[name, formOfText(text)] as const] : []));
  return { ...Object.fromEntries(typedForms), ...(bore ? formsOfBore(bore) : {}) };
}
