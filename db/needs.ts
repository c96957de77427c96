import type { Bore } from '../lib/gears/gear.ts';
import type { Need } from '../lib/routing/operation.ts';
import type { AnyTool } from '../lib/tooling/tooling.ts';
import type { Angle } from '../lib/values/angle.ts';
import type { Length } from '../lib/values/length.ts';
import { addBore, boreOf, boresById } from './bores.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { pitchOf } from './gears.ts';
import { allTools } from './tools.ts';

/** tool_id null: waited for. tool_name: of the tool that meets it. */
export type StoredNeed = {
  readonly id: number;
  readonly operation_id: number;
  readonly need: Need;
  readonly tool_id: number | null;
  readonly tool_name: string | null;
};
/** Decides whether a tool meets a need. Only tools that are here are asked about. */
export type Meets = (tool: AnyTool, need: Need) => boolean;

const EMPTY = {
  pitch_num: null,
  pitch_den: null,
  pitch_kind: null,
  angle_mas: null,
  teeth: null,
  bore_id: null,
  turns: null,
  holes: null,
  diameter_nm: null,
  jaws: null,
  name: null,
  tool_id: null,
};

async function needRow(db: Executor, operation_id: number, need: Need): Promise<NewRow<'need'>> {
  const row = { ...EMPTY, operation_id, kind: need.kind };
  if (need.kind === 'mandrel') return { ...row, bore_id: await addBore(db, need.bore, {}, 'in') };
  if (need.kind === 'head') return { ...row, turns: need.turns };
  if (need.kind === 'circle') return { ...row, holes: need.holes };
  if (need.kind === 'arbor') return { ...row, diameter_nm: need.diameter };
  if (need.kind === 'chuck') return { ...row, jaws: need.jaws };
  if (need.kind === 'other') return { ...row, name: need.name };
  const [pitch_num, pitch_den] = need.pitch.size;
  return { ...row, pitch_num, pitch_den, pitch_kind: need.pitch.kind, angle_mas: need.angle, teeth: need.teeth };
}

export async function addNeeds(db: Executor, operationId: number, needs: readonly Need[]): Promise<void> {
  for (const need of needs)
    await db
      .insertInto('need')
      .values(await needRow(db, operationId, need))
      .execute();
}

/** A column that the need's kind demands; the table's own checks see to it. */
const sure = <T>(value: T | null | undefined): T => {
  if (value === null || value === undefined) throw new TypeError('a need without its columns');
  return value;
};

function needOf(row: Row<'need'>, bore: Bore | null): Need {
  if (row.kind === 'mandrel') return { kind: 'mandrel', bore: sure(bore) };
  if (row.kind === 'head') return { kind: 'head', turns: sure(row.turns) };
  if (row.kind === 'circle') return { kind: 'circle', holes: sure(row.holes) };
  if (row.kind === 'arbor') return { kind: 'arbor', diameter: sure(row.diameter_nm) as Length };
  if (row.kind === 'chuck') return { kind: 'chuck', jaws: sure(row.jaws) };
  if (row.kind === 'other') return { kind: 'other', name: sure(row.name) };
  const pitch = pitchOf({ pitch_num: sure(row.pitch_num), pitch_den: sure(row.pitch_den), pitch_kind: sure(row.pitch_kind) });
  return { kind: 'cutter', pitch, angle: sure(row.angle_mas) as Angle, teeth: sure(row.teeth) };
}

const withTool = (db: Executor) =>
  db.selectFrom('need').leftJoin('tool', 'tool.id', 'need.tool_id').selectAll('need').select('tool.name as tool_name');

async function stored(db: Executor, rows: readonly (Row<'need'> & { tool_name: string | null })[]): Promise<StoredNeed[]> {
  const bores = await boresById(
    db,
    rows.flatMap((row) => row.bore_id ?? []),
  );
  return rows.map((row) => {
    const bore = bores.get(row.bore_id ?? 0);
    const { id, operation_id, tool_id, tool_name } = row;
    return { id, operation_id, need: needOf(row, bore ? boreOf(bore) : null), tool_id, tool_name };
  });
}

export async function needsOf(db: Executor, operationIds: readonly number[]): Promise<StoredNeed[]> {
  if (operationIds.length === 0) return [];
  return stored(db, await withTool(db).where('need.operation_id', 'in', operationIds).orderBy('need.id').execute());
}

/** Needs of operations still to be done on open routings. The cross joins keep their order: from the few open routings outward. */
async function liveNeeds(db: Executor): Promise<StoredNeed[]> {
  const rows = await db
    .selectFrom('routing')
    .crossJoin('operation')
    .crossJoin('need')
    .leftJoin('tool', 'tool.id', 'need.tool_id')
    .selectAll('need')
    .select('tool.name as tool_name')
    .whereRef('operation.routing_id', '=', 'routing.id')
    .whereRef('need.operation_id', '=', 'operation.id')
    .where('routing.closed_on', 'is', null)
    .where('operation.done_on', 'is', null)
    .where('operation.struck_on', 'is', null)
    .execute();
  return stored(db, rows);
}

/** The tool that meets a need: the one it has, if that still does, else the first that does. */
function toolFor({ need, tool_id }: StoredNeed, here: readonly AnyTool[], meets: Meets): number | null {
  const fitting = here.filter((tool) => meets(tool, need));
  return (fitting.find((tool) => tool.id === tool_id) ?? fitting[0])?.id ?? null;
}

/**
 * Asks anew which tool meets each need of the work still to be done. To be run in the transaction in which a tool is bought, lent,
 * returned, worn out or changed, or a routing is opened. Gives the operations for which something changed.
 */
export const settleNeeds = (db: Executor, meets: Meets): Promise<readonly number[]> =>
  together(db, async (trx) => {
    const here = (await allTools(trx)).filter((tool) => tool.here);
    const byTool = new Map<number | null, StoredNeed[]>();
    for (const need of await liveNeeds(trx)) {
      const tool_id = toolFor(need, here, meets);
      if (tool_id !== need.tool_id) byTool.set(tool_id, [...(byTool.get(tool_id) ?? []), need]);
    }
    for (const [tool_id, needs] of byTool) {
      const ids = needs.map(({ id }) => id);
      await trx.updateTable('need').set({ tool_id }).where('id', 'in', ids).execute();
    }
    return [...new Set([...byTool.values()].flat().map((need) => need.operation_id))];
  });
