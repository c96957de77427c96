import SqliteFile from 'better-sqlite3';
import { Kysely, sql } from 'kysely';
import { expect, onTestFinished, test } from 'vitest';
import type { UnknownGear } from '../../db/gears.ts';
import { addItem, item, saveItem } from '../../db/items.ts';
import { migrate } from '../../db/migrate.ts';
import { migrations } from '../../db/migrations/all.ts';
import { oneConnection } from '../../db/one-connection.ts';
import { openRouting } from '../../db/open-routing.ts';
import { removePart } from '../../db/part-removal.ts';
import { addPart, fitItem, part, savePart } from '../../db/parts.ts';
import { addReading, readingsOf } from '../../db/readings.ts';
import { find } from '../../db/search.ts';
import { spareOf } from '../../db/spares/spare-of.ts';
import { inches } from '../../lib/values/length.ts';
import { aShop, firstPage, halvorsenWheel, NOW, onePart, place, stock, wheel } from './bench.ts';

const counted = (teeth: number): UnknownGear => ({
  teeth,
  pitch: null,
  face: inches(0.75),
  bore: { form: 'plain', diameter: inches(0.875) },
  body: { known: true, recesses: [{ side: 'both', inner: inches(1), outer: inches(2) }], openings: [] },
});

async function unknownPart(teeth = 31) {
  const { db } = await aShop();
  const { project, assembly } = await onePart(db);
  const one = await addPart(db, { ...place(project.id, assembly.id, null, null, 'feed wheel'), gear: counted(teeth) });
  return { db, id: one.id };
}

function oldFile(): Kysely<unknown> {
  const db = new Kysely<unknown>({ dialect: oneConnection(new SqliteFile(':memory:')) });
  onTestFinished(() => db.destroy());
  return db;
}

test('a filled file of the version before keeps every wheel, what points to it, and every reading', async () => {
  const db = oldFile();
  await migrate(db, Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0009')));
  await sql`pragma foreign_keys = on`.execute(db);
  await sql`insert into gear values (5, 22, 8, 1, 'DP', '14½°', 52200000, 1.0, 1.157, 50800, 82800000, 'left', 22225000, 'in.3', null, 1)`.execute(
    db,
  );
  await sql`insert into recess values (5, 0, 'both', 10, 'in.3', 20, 'in.3')`.execute(db);
  await sql`insert into item values (9, 'wheel', '', 5, null, '', null, 'unknown', '', 'not tried', 'steel', null, null, null, null, null, '2026', null, null, '', 1)`.execute(
    db,
  );
  await sql`insert into reading values (3, 9, null, 'span', 3, null, null, 24600000, 'nm', 'in.4', 25400, '2026', 'vernier')`.execute(db);
  await migrate(db, migrations);
  const rows = async (table: string) => (await sql.raw<Record<string, unknown>>(`select * from ${table}`).execute(db)).rows;
  const tooth = { teeth: 22, pitch_num: 8, pitch_den: 1, pitch_kind: 'DP', system_name: '14½°', system_angle_mas: 52200000 };
  const rest = { addendum: 1, dedendum: 1.157, extra_nm: 50800, helix_angle_mas: 82800000, helix_hand: 'left', face_nm: 22225000 };
  expect(await rows('gear')).toEqual([{ id: 5, ...tooth, ...rest, face_form: 'in.3', bore_id: null, body_known: 1, found_by: '' }]);
  expect(await rows('recess')).toHaveLength(1);
  expect(await rows('item')).toMatchObject([{ id: 9, gear_id: 5 }]);
  expect(await rows('reading')).toMatchObject([
    { id: 3, item_id: 9, part_id: null, what: 'span', over_k: 3, value: 24600000, error: 25400 },
  ]);
  expect((await sql`pragma foreign_key_check`.execute(db)).rows).toEqual([]);
});

test('the file refuses half a tooth, a helix without a pitch, and a reading of two owners or of none', async () => {
  const { db } = await unknownPart();
  const half = (set: string) => sql.raw(`update gear set ${set}`).execute(db);
  await expect(half('pitch_num = 8')).rejects.toThrow('CHECK');
  await expect(half(`pitch_num = 8, pitch_den = 1, pitch_kind = 'DP'`)).rejects.toThrow('CHECK');
  await expect(half(`helix_angle_mas = 5, helix_hand = 'left'`)).rejects.toThrow('CHECK');
  const reading = (owners: string) =>
    sql
      .raw(`insert into reading (${owners}, what, value, unit, form, read_on, instrument)
      values (${owners.replace(/\w+_id/g, '1')}, 'span', 1, 'nm', 'in.3', '', '')`)
      .execute(db);
  await expect(reading('item_id, part_id')).rejects.toThrow('CHECK');
  await expect(
    sql`insert into reading (what, value, unit, form, read_on, instrument) values ('span', 1, 'nm', 'in.3', '', '')`.execute(db),
  ).rejects.toThrow('CHECK');
});

test('a wheel that is only counted comes back so, and is no wheel to work from until its pitch is known', async () => {
  const { db, id } = await unknownPart();
  const before = await part(db, id);
  expect(before.stored).toBeNull();
  expect(before.unknown?.gear).toEqual(counted(31));
  expect(before.mark).toMatch(/31T$/);

  await savePart(db, id, before.rev, {}, { gear: halvorsenWheel(31), foundBy: 'by measurement' });
  const known = await part(db, id);
  expect(known.unknown).toBeNull();
  expect(known.stored?.gear).toEqual(halvorsenWheel(31));
  expect(known.stored?.foundBy).toBe('by measurement');

  await savePart(db, id, known.rev, {}, { gear: { ...halvorsenWheel(31), face: inches(0.5) } });
  expect((await part(db, id)).stored?.foundBy).toBe('by measurement');
  await savePart(db, id, known.rev + 1, {}, { gear: { ...halvorsenWheel(31), teeth: 32 } });
  expect((await part(db, id)).stored?.foundBy).toBe('');

  await savePart(db, id, known.rev + 2, {}, { gear: counted(31) });
  expect(await part(db, id)).toMatchObject({ stored: null, unknown: { gear: counted(31) } });
});

test('nothing is planned by a pitch that nobody knows, neither of the part nor of the spare; by hand it may be repaired', async () => {
  const { db, id } = await unknownPart();
  const bar = await addItem(db, stock(inches(6)));
  await expect(openRouting(db, { partId: id, way: 'make from stock', itemIds: [bar.id] }, NOW)).rejects.toThrow('Identify it first');
  const spare = await addItem(db, { ...wheel(halvorsenWheel(34), null), gear: counted(34) });
  expect(spareOf(await item(db, spare.id), [])).toBeNull();
  const { rev } = await part(db, id);
  await savePart(db, id, rev, {}, { gear: halvorsenWheel(31) });
  await expect(openRouting(db, { partId: id, way: 're-cut a spare', itemIds: [spare.id] }, NOW)).rejects.toThrow('Identify it first');
  await savePart(db, id, rev + 1, {}, { gear: counted(31) });
  const repair = await openRouting(db, { partId: id, way: 'repair', itemIds: [] }, NOW);
  expect(repair).toBeGreaterThan(0);
  // Known while it is being repaired it may become; unknown again it may not, while it is being made.
  const now = async (): Promise<number> => (await part(db, id)).rev;
  await savePart(db, id, await now(), {}, { gear: halvorsenWheel(31) });
  await expect(savePart(db, id, await now(), {}, { gear: counted(31) })).rejects.toThrow('being made');
});

test('an unknown wheel of the drawer is kept, found by its words, and fitted like any thing', async () => {
  const { db, id } = await unknownPart();
  const { id: thing } = await addItem(db, { ...wheel(halvorsenWheel(31), null), gear: counted(31) });
  expect(await item(db, thing)).toMatchObject({ kind: 'wheel', stored: null, unknown: { gear: { teeth: 31 } } });
  const found = async () => (await find(db, 'pitch not known', firstPage, false)).rows.map(({ kind, ref }) => `${kind} ${ref}`);
  expect((await found()).sort()).toEqual([`item ${thing}`, `part ${id}`]);
  await saveItem(db, thing, 1, {}, { gear: halvorsenWheel(31) });
  expect(await found()).toEqual([`part ${id}`]);
  await fitItem(db, id, 1, thing);
  expect(await part(db, id)).toMatchObject({ item_id: thing, unknown: { gear: { teeth: 31 } } });
});

test('readings noted on a part are its own, and go with it when it is taken off the list', async () => {
  const { db, id } = await unknownPart();
  const common = { read_on: '2026-05-01', instrument: 'vernier' };
  await addReading(db, { partId: id }, { ...common, what: 'span', over_k: 3, value: { length: inches(0.969) } });
  await addReading(db, { partId: id }, { ...common, what: 'centre distance', mateTeeth: 40, value: { length: inches(4.4375) } });
  const read = await readingsOf(db, { partId: id });
  expect(read).toMatchObject([
    { part_id: id, item_id: null, what: 'span', over_k: 3, shown: { length: inches(0.969) } },
    { what: 'centre distance', mate_teeth: 40, shown: { length: inches(4.4375) } },
  ]);
  await removePart(db, id);
  expect(await readingsOf(db, { partId: id })).toEqual([]);
});
