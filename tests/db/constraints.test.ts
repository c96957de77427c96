import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { addItem } from '../../db/items.ts';
import { addTool } from '../../db/tools.ts';
import { aShop, halvorsen, halvorsenWheel, NOW, onePart, wheel } from './bench.ts';

const refused = (code: string) => expect.objectContaining({ code: `SQLITE_CONSTRAINT_${code}` });

test('a reading belongs to one thing or one operation, never to both or none', async () => {
  const { db } = await aShop();
  const { id } = await addItem(db, wheel(halvorsenWheel(31), null));
  const write = (item: number | null, operation: number | null) =>
    sql`insert into reading (item_id, operation_id, what, value, unit, form, read_on, instrument)
      values (${item}, ${operation}, 'wall', 1, 'nm', 'in.3', ${NOW}, '')`.execute(db);
  await write(id, null);
  await expect(write(null, null)).rejects.toEqual(refused('CHECK'));
  await expect(write(id, 1)).rejects.toEqual(refused('CHECK'));
});

test('a gear has one owner of its kind, and every wheel has a gear', async () => {
  const { db } = await aShop();
  const { set } = await halvorsen(db);
  const { gear_id } = await addItem(db, wheel(halvorsenWheel(31), set.id));
  const other = await addItem(db, wheel(halvorsenWheel(25), set.id));
  await expect(db.updateTable('item').set({ gear_id }).where('id', '=', other.id).execute()).rejects.toEqual(refused('UNIQUE'));
  await expect(db.updateTable('item').set({ gear_id: null }).where('id', '=', other.id).execute()).rejects.toEqual(refused('CHECK'));
  await expect(db.updateTable('item').set({ kind: 'stock' }).where('id', '=', other.id).execute()).rejects.toEqual(refused('CHECK'));
});

test('one thing fills one place', async () => {
  const { db } = await aShop();
  await halvorsen(db);
  const [one, two] = await db.selectFrom('part').selectAll().where('item_id', 'is not', null).limit(2).execute();
  const doubled = db
    .updateTable('part')
    .set({ item_id: one?.item_id ?? 0 })
    .where('id', '=', two?.id ?? 0);
  await expect(doubled.execute()).rejects.toEqual(refused('UNIQUE'));
});

test('circles belong to a plate, not to a chuck', async () => {
  const { db } = await aShop();
  const base = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
  const tap = await addTool(db, { ...base, name: 'tap', details: { kind: 'other' } });
  const plate = await addTool(db, { ...base, name: 'plate 2', details: { kind: 'plate', sides: [[21, 33]] } });
  const circle = (tool_id: number) => db.insertInto('plate_circle').values({ tool_id, side: 1, holes: 27 }).execute();
  await circle(plate.id);
  await expect(circle(tap.id)).rejects.toEqual(refused('FOREIGNKEY'));
});

test('a word where a number belongs, and a kind that is none, are refused', async () => {
  const { db } = await aShop();
  const { part } = await onePart(db);
  await expect(sql`insert into machine_speed values (1, 'fast')`.execute(db)).rejects.toEqual(refused('DATATYPE'));
  await expect(sql`update part set rev = 'two' where id = ${part.id}`.execute(db)).rejects.toEqual(refused('DATATYPE'));
  await expect(sql`update item set kind = 'gizmo'`.execute(db)).resolves.toBeDefined();
  await addItem(db, wheel(halvorsenWheel(31), null));
  await expect(sql`update item set kind = 'gizmo'`.execute(db)).rejects.toEqual(refused('CHECK'));
});

test('what others rest on cannot be taken away', async () => {
  const { db } = await aShop();
  const { project } = await onePart(db);
  await expect(db.deleteFrom('project').where('id', '=', project.id).execute()).rejects.toEqual(refused('FOREIGNKEY'));
});

test('undefined never reaches the file as NULL', async () => {
  const { db } = await aShop();
  const nothing = undefined as unknown as string;
  await expect(sql`select ${nothing}`.execute(db)).rejects.toThrow('undefined bound');
  await expect(db.selectFrom('part').selectAll().where('mark', '=', nothing).execute()).rejects.toThrow('undefined bound');
});
