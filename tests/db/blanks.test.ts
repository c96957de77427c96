import { expect, test } from 'vitest';
import type { NewBlank } from '../../db/blanks.ts';
import type { Executor } from '../../db/executor.ts';
import { addItem, item } from '../../db/items.ts';
import { cutFrom, recordMade } from '../../db/made.ts';
import { addPart, part } from '../../db/parts.ts';
import { closeRouting, openRouting } from '../../db/routings.ts';
import { inches } from '../../lib/values/length.ts';
import { aShop, halvorsenWheel, NOW, onePart, place, plan, stock, wheel } from './bench.ts';

const begin = (db: Executor, partId: number, blanks: readonly NewBlank[]): Promise<number> =>
  openRouting(db, { partId, way: 'make from stock', openedOn: NOW, blanks, operations: plan() });
const good = { outcome: 'good', rev: 1, finishedOn: NOW, minutes: 0, costCents: 0, notes: '', sheet: {} } as const;
const piece = (itemId: number, long: number): NewBlank => ({ itemId, role: 'whole', takes: { length: inches(long) } });

test('ring and hub: two blanks, one made thing, which knows both', async () => {
  const { db } = await aShop();
  const { part: guard } = await onePart(db);
  const hub = await addItem(db, wheel(halvorsenWheel(48), null));
  const ring = await addItem(db, stock(null, 'ring'));
  const routingId = await begin(db, guard.id, [
    { itemId: hub.id, role: 'hub', takes: null },
    { itemId: ring.id, role: 'ring', takes: null },
  ]);
  await recordMade(db, { ...good, routingId });
  const fresh = (await part(db, guard.id)).item_id ?? 0;
  expect((await cutFrom(db, fresh)).map((old) => old.id).sort()).toEqual([hub.id, ring.id].sort());
  expect((await item(db, hub.id)).gone_why).toBe('cut');
});

test('a bar gets shorter by what was taken, and what others were promised of it is not there', async () => {
  const { db } = await aShop();
  const { part: guard, project, assembly } = await onePart(db);
  const other = await addPart(db, place(project.id, assembly.id, null, null, 'stud'));
  const bar = await addItem(db, stock(inches(10)));
  const first = await begin(db, guard.id, [piece(bar.id, 6)]);
  await expect(begin(db, other.id, [piece(bar.id, 4.001)])).rejects.toMatchObject({ name: 'ItemTaken' });
  await expect(begin(db, other.id, [{ itemId: bar.id, role: 'whole', takes: null }])).rejects.toMatchObject({ name: 'ItemTaken' });
  const second = await begin(db, other.id, [piece(bar.id, 4)]);
  await recordMade(db, { ...good, routingId: first });
  expect(await item(db, bar.id)).toMatchObject({ length_nm: inches(4), gone_on: null, state: 'spare' });
  const fresh = (await part(db, guard.id)).item_id ?? 0;
  expect((await cutFrom(db, fresh)).map((old) => old.id)).toEqual([bar.id]);
  await recordMade(db, { ...good, routingId: second });
  expect(await item(db, bar.id)).toMatchObject({ length_nm: 0, gone_why: 'used up' });
});

test('a promise of a routing given up counts no more', async () => {
  const { db } = await aShop();
  const { part: guard, project, assembly } = await onePart(db);
  const other = await addPart(db, place(project.id, assembly.id, null, null, 'stud'));
  const bar = await addItem(db, stock(inches(10)));
  await closeRouting(db, await begin(db, guard.id, [piece(bar.id, 9)]), 1, NOW);
  await begin(db, other.id, [piece(bar.id, 9)]);
});
