import type { Dial, Machine } from '../lib/tooling/tooling.ts';
import type { Length } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';
import { type Changes, RecordNotFound, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { formText, usualForm } from './forms.ts';
import { makeFindable } from './search.ts';
import { untilChanged } from './until-changed.ts';

/** The shop's own machine as lib has it, with what only people read; feedForm: how its feeds were typed; quadrant: the boxes of its form, JSON. */
export type NewMachine = Omit<Machine, 'id'> & {
  readonly nose: string;
  readonly notes: string;
  readonly feedForm?: LengthForm;
  readonly quadrant?: string;
};
export type MachineLine = { readonly row: Row<'machine'>; readonly machine: Machine };

type DialColumns<N extends 'cross' | 'depth'> = Pick<
  Row<'machine'>,
  `${N}_reads` | `${N}_unit` | `${N}_division_nm` | `${N}_per_turn` | `${N}_lash_nm`
>;
const crossColumns = (dial: Dial | null): DialColumns<'cross'> => ({
  cross_reads: dial?.reads ?? null,
  cross_unit: dial?.unit ?? null,
  cross_division_nm: dial?.division ?? null,
  cross_per_turn: dial?.perTurn ?? null,
  cross_lash_nm: dial?.lash ?? null,
});
const depthColumns = (dial: Dial | null): DialColumns<'depth'> => ({
  depth_reads: dial?.reads ?? null,
  depth_unit: dial?.unit ?? null,
  depth_division_nm: dial?.division ?? null,
  depth_per_turn: dial?.perTurn ?? null,
  depth_lash_nm: dial?.lash ?? null,
});

type Kept = { [K in 'reads' | 'unit']: Dial[K] | null } & { [K in 'division' | 'perTurn' | 'lash']: number | null };
function dialOf({ reads, unit, division, perTurn, lash }: Kept): Dial | null {
  if (reads === null || unit === null || division === null || perTurn === null) return null;
  return { reads, unit, division: division as Length, perTurn, ...(lash === null ? {} : { lash: lash as Length }) };
}
const crossDial = (row: Row<'machine'>): Dial | null =>
  dialOf({
    ...{ reads: row.cross_reads, unit: row.cross_unit, division: row.cross_division_nm },
    ...{ perTurn: row.cross_per_turn, lash: row.cross_lash_nm },
  });
const depthDial = (row: Row<'machine'>): Dial | null =>
  dialOf({
    ...{ reads: row.depth_reads, unit: row.depth_unit, division: row.depth_division_nm },
    ...{ perTurn: row.depth_per_turn, lash: row.depth_lash_nm },
  });

const rowFor = (machine: NewMachine): NewRow<'machine'> => ({
  name: machine.name,
  kind: machine.kind,
  feeds_per: machine.feedsPer,
  ...crossColumns(machine.crossDial),
  ...depthColumns(machine.depthDial),
  screwed_nose: machine.screwedNose ? 1 : 0,
  nose: machine.nose,
  notes: machine.notes,
  ...(machine.quadrant === undefined ? {} : { quadrant: machine.quadrant }),
});

async function saveSteps(db: Executor, machine_id: number, machine: NewMachine): Promise<void> {
  await db.deleteFrom('machine_speed').where('machine_id', '=', machine_id).execute();
  await db.deleteFrom('machine_feed').where('machine_id', '=', machine_id).execute();
  const speeds = [...new Set(machine.speedsRpm)].map((rpm) => ({ machine_id, rpm }));
  const feed_form = formText(machine.feedForm ?? usualForm(machine.crossDial?.unit ?? 'in'));
  const feeds = [...new Set(machine.feeds)].map((feed_nm) => ({ machine_id, feed_nm, feed_form }));
  if (speeds.length > 0) await db.insertInto('machine_speed').values(speeds).execute();
  if (feeds.length > 0) await db.insertInto('machine_feed').values(feeds).execute();
}

async function findable(db: Executor, row: Row<'machine'>): Promise<Row<'machine'>> {
  await makeFindable(db, { kind: 'machine', ref: row.id, title: row.name, text: [row.kind, row.nose], notes: [row.notes] });
  return row;
}

export const addMachine = (db: Executor, machine: NewMachine): Promise<Row<'machine'>> =>
  together(db, async (trx) => {
    const row = await trx.insertInto('machine').values(rowFor(machine)).returningAll().executeTakeFirstOrThrow();
    await saveSteps(trx, row.id, machine);
    return findable(trx, row);
  });

/** Throws RecordNotFound, RecordChanged. */
export const saveMachine = (db: Executor, id: number, rev: number, machine: NewMachine): Promise<Row<'machine'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'machine', id, rev, rowFor(machine) as Changes<'machine'>);
    await saveSteps(trx, id, machine);
    return findable(trx, row);
  });

/** Sold or scrapped: no longer offered for work. Throws RecordNotFound, RecordChanged. */
export const retireMachine = (db: Executor, id: number, rev: number, on: string): Promise<Row<'machine'>> =>
  saveRow(db, 'machine', id, rev, { gone_on: on });

async function linesOf(db: Executor, rows: readonly Row<'machine'>[]): Promise<MachineLine[]> {
  if (rows.length === 0) return [];
  const ids = rows.map((row) => row.id);
  const speeds = await db.selectFrom('machine_speed').selectAll().where('machine_id', 'in', ids).orderBy('rpm').execute();
  const feeds = await db.selectFrom('machine_feed').selectAll().where('machine_id', 'in', ids).orderBy('feed_nm').execute();
  const machineOf = (row: Row<'machine'>): Machine => ({
    id: row.id,
    name: row.name,
    kind: row.kind,
    speedsRpm: speeds.filter((speed) => speed.machine_id === row.id).map((speed) => speed.rpm),
    feeds: feeds.filter((feed) => feed.machine_id === row.id).map((feed) => feed.feed_nm as Length),
    feedsPer: row.feeds_per,
    crossDial: crossDial(row),
    depthDial: depthDial(row),
    screwedNose: row.screwed_nose === 1,
  });
  return rows.map((row) => ({ row, machine: machineOf(row) }));
}

/** The shop's machines, in the order in which they came; 200 at most. */
export const machines = untilChanged(async (db: Executor): Promise<MachineLine[]> => {
  return linesOf(db, await db.selectFrom('machine').selectAll().where('gone_on', 'is', null).orderBy('id').limit(200).execute());
});

/** Throws RecordNotFound. */
export const machine = untilChanged(async (db: Executor, id: number): Promise<MachineLine> => {
  const [found] = await linesOf(db, await db.selectFrom('machine').selectAll().where('id', '=', id).execute());
  if (!found) throw new RecordNotFound('machine', id);
  return found;
});
