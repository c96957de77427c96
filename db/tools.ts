import type { AnyTool, Arbor, Chuck, Cutter, Head, Mandrel, OtherTool, Plate } from '../lib/tooling/tooling.ts';
import type { Angle } from '../lib/values/angle.ts';
import type { Length } from '../lib/values/length.ts';
import { ratio } from '../lib/values/ratio.ts';
import { boreOf, boresById } from './bores.ts';
import { type Changes, RecordNotFound, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { pitchOf } from './gears.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { makeFindable } from './search.ts';
import { forgetDetails, formsOfTool, saveDetails, type ToolDetails, type ToolForms } from './tool-details.ts';
import { untilChanged } from './until-changed.ts';

type Tail = 'id' | 'rev' | 'kind' | 'gone_on';
export type NewTool = Omit<NewRow<'tool'>, Tail> & { readonly details: ToolDetails; readonly forms?: ToolForms };
/** row: owner, loan, wear. tool: as lib has it. forms: how its lengths were typed. */
export type ToolLine = { readonly row: Row<'tool'>; readonly tool: AnyTool; readonly forms: ToolForms };

/** In the shop and fit for work. */
const isHere = (row: Row<'tool'>): boolean => row.here === 1 && row.gone_on === null && row.wear !== 'worn out';
const nm = (length: number | null): Length | null => length as Length | null;

type Base = Pick<AnyTool, 'id' | 'name' | 'here'>;

function cutterOf(base: Base, row: Row<'cutter'>, sharp: boolean): Cutter {
  const { pitch_num, pitch_den, pitch_kind } = row;
  return {
    ...base,
    kind: 'cutter',
    pitch: pitch_num === null || pitch_den === null || pitch_kind === null ? null : pitchOf({ pitch_num, pitch_den, pitch_kind }),
    angle: row.angle_mas as Angle | null,
    number: row.number_text,
    teethFrom: row.teeth_from,
    teethTo: row.teeth_to,
    hole: nm(row.hole_nm),
    diameter: nm(row.diameter_nm),
    width: nm(row.width_nm),
    stampedDepth: nm(row.stamped_depth_nm),
    steel: row.steel,
    exactFor: row.exact_for,
    sharp,
  };
}

function plateOf(base: Base, rows: readonly Row<'plate_circle'>[]): Plate {
  const sides = [...new Set(rows.map((row) => row.side))].sort((a, b) => a - b);
  return { ...base, kind: 'plate', sides: sides.map((side) => rows.filter((row) => row.side === side).map((row) => row.holes)) };
}

function headOf(base: Base, row: Row<'head'>): Head {
  const gears = JSON.parse(row.gears) as number[];
  return {
    ...base,
    kind: 'head',
    turns: row.turns,
    backPin: row.back_pin === 1,
    ...(gears.length > 0 ? { gears } : {}),
    ...(row.reached === null ? {} : { reached: JSON.parse(row.reached) as number[] }),
    ...(row.one_idler === null ? {} : { oneIdler: row.one_idler }),
    ...(row.dial_lines === null ? {} : { dial: { perTurn: row.dial_lines, vernier: row.dial_vernier ?? 1, near: row.dial_near === 1 } }),
    ...(row.dial_only === 1 ? { dialOnly: true } : {}),
    ...(row.lash_num === null || row.lash_den === null ? {} : { lash: ratio(row.lash_num, row.lash_den) }),
  };
}
const arborOf = (base: Base, row: Row<'arbor'>): Arbor => ({ ...base, kind: 'arbor', diameter: row.diameter_nm as Length });
const mandrelOf = (base: Base, row: Row<'mandrel'>, bore: Row<'bore'>): Mandrel => ({
  ...base,
  kind: 'mandrel',
  bore: boreOf(bore),
  holding: row.holding,
  runOut: nm(row.run_out_nm),
});
const chuckOf = (base: Base, row: Row<'chuck'>): Chuck => ({
  ...base,
  kind: 'chuck',
  jaws: row.jaws,
  diameter: row.diameter_nm as Length,
  runOut: nm(row.run_out_nm),
  topSpeedRpm: row.top_speed_rpm,
});

async function rowsOfKind<T extends 'cutter' | 'head' | 'mandrel' | 'arbor' | 'chuck'>(
  db: Executor,
  table: T,
  ids: readonly number[],
): Promise<Row<T>[]> {
  if (ids.length === 0) return [];
  const rows = await db
    .selectFrom(table as 'head')
    .selectAll()
    .where('tool_id', 'in', ids)
    .execute();
  return rows as unknown as Row<T>[];
}

async function circlesOn(db: Executor, ids: readonly number[]): Promise<Row<'plate_circle'>[]> {
  if (ids.length === 0) return [];
  return db.selectFrom('plate_circle').selectAll().where('tool_id', 'in', ids).orderBy('side').orderBy('holes').execute();
}

/** All rows that widen these tools, by table; of kinds that are not among them nothing is asked. */
async function detailsOf(db: Executor, tools: readonly Row<'tool'>[]) {
  const idsOf = (kind: AnyTool['kind']): number[] => tools.filter((row) => row.kind === kind).map((row) => row.id);
  const cutters = await rowsOfKind(db, 'cutter', idsOf('cutter'));
  const circles = await circlesOn(db, idsOf('plate'));
  const heads = await rowsOfKind(db, 'head', idsOf('head'));
  const mandrels = await rowsOfKind(db, 'mandrel', idsOf('mandrel'));
  const arbors = await rowsOfKind(db, 'arbor', idsOf('arbor'));
  const chucks = await rowsOfKind(db, 'chuck', idsOf('chuck'));
  const bores = await boresById(
    db,
    mandrels.map((row) => row.bore_id),
  );
  return { cutters, circles, heads, mandrels, arbors, chucks, bores };
}
type Details = Awaited<ReturnType<typeof detailsOf>>;

function toolOf(row: Row<'tool'>, all: Details): AnyTool {
  const base = { id: row.id, name: row.name, here: isHere(row) };
  const own = <T extends { tool_id: number }>(rows: readonly T[]): T => {
    const found = rows.find((one) => one.tool_id === row.id);
    if (!found) throw new RecordNotFound(row.kind, row.id);
    return found;
  };
  if (row.kind === 'cutter') return cutterOf(base, own(all.cutters), row.wear === 'sharp');
  if (row.kind === 'plate')
    return plateOf(
      base,
      all.circles.filter((circle) => circle.tool_id === row.id),
    );
  if (row.kind === 'head') return headOf(base, own(all.heads));
  if (row.kind === 'arbor') return arborOf(base, own(all.arbors));
  if (row.kind === 'chuck') return chuckOf(base, own(all.chucks));
  if (row.kind === 'other') return { ...base, kind: 'other' } satisfies OtherTool;
  const mandrel = own(all.mandrels);
  const bore = all.bores.get(mandrel.bore_id);
  if (!bore) throw new RecordNotFound('bore', mandrel.bore_id);
  return mandrelOf(base, mandrel, bore);
}

async function linesOf(db: Executor, rows: readonly Row<'tool'>[]): Promise<ToolLine[]> {
  if (rows.length === 0) return [];
  const all = await detailsOf(db, rows);
  return rows.map((row) => ({ row, tool: toolOf(row, all), forms: formsOfTool(row.id, all) }));
}

async function findable(db: Executor, row: Row<'tool'>): Promise<Row<'tool'>> {
  await makeFindable(db, {
    kind: 'tool',
    ref: row.id,
    title: row.name,
    text: [row.kind, row.kept_in],
    notes: [row.owner, row.lent_to, row.notes],
  });
  return row;
}

/** details: what its kind has beside name and owner. */
export const addTool = (db: Executor, { details, forms = {}, ...tool }: NewTool): Promise<Row<'tool'>> =>
  together(db, async (trx) => {
    const row = await trx
      .insertInto('tool')
      .values({ ...tool, kind: details.kind })
      .returningAll()
      .executeTakeFirstOrThrow();
    await saveDetails(trx, row.id, details, forms);
    return findable(trx, row);
  });

/** details null: only the tool itself changes (lent, worn, gone). Throws RecordNotFound, RecordChanged. */
export const saveTool = (
  db: Executor,
  id: number,
  rev: number,
  changes: Omit<Changes<'tool'>, 'kind'>,
  details: { readonly details: ToolDetails; readonly forms?: ToolForms } | null = null,
): Promise<Row<'tool'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'tool', id, rev, changes);
    if (details && details.details.kind !== row.kind) throw new RangeError(`a ${row.kind} does not become a ${details.details.kind}`);
    if (details) await forgetDetails(trx, row);
    if (details) await saveDetails(trx, id, details.details, details.forms ?? {});
    return findable(trx, row);
  });

/** Throws RecordNotFound. */
export const tool = untilChanged(async (db: Executor, id: number): Promise<ToolLine> => {
  const [found] = await linesOf(db, await db.selectFrom('tool').selectAll().where('id', '=', id).execute());
  if (!found) throw new RecordNotFound('tool', id);
  return found;
});

/** Tools still to be had of one kind, lent ones too; newest first. */
export const toolsOfKind = untilChanged(async (db: Executor, kind: AnyTool['kind'], ask: PageAsk): Promise<Page<ToolLine>> => {
  const query = db.selectFrom('tool').selectAll().where('kind', '=', kind).where('gone_on', 'is', null).where('id', '<', startOf(ask));
  const rows = await query
    .orderBy('id', 'desc')
    .limit(ask.size + 1)
    .execute();
  return pageOf(await linesOf(db, rows), ask, (line) => line.row.id);
});

/** Everything that lib may choose from: all tools not gone, oldest first; 2,000 at most. */
export const allTools = untilChanged(async (db: Executor): Promise<AnyTool[]> => {
  const rows = await db.selectFrom('tool').selectAll().where('gone_on', 'is', null).orderBy('id').limit(2000).execute();
  return (await linesOf(db, rows)).map((line) => line.tool);
});
