import { expect, test } from 'vitest';
import { addItem } from '../../db/items.ts';
import { newPartMark, newProjectMark } from '../../db/marks.ts';
import { addPart, partByMark, savePart } from '../../db/parts.ts';
import { find } from '../../db/search.ts';
import { aProject, aShop, firstPage, halvorsen, halvorsenWheel, onePart, place, stock } from './bench.ts';

test('beginnings of words find it, newest first, umlauts or none', async () => {
  const { db } = await aShop();
  await addItem(db, { ...stock(null, 'Ölpumpe'), notes: 'cracked' });
  await addItem(db, { ...stock(null, 'oil pump'), notes: 'cracked too' });
  const titles = async (typed: string) => (await find(db, typed, firstPage, true)).rows.map((row) => row.title);
  expect(await titles('crack')).toEqual(['oil pump', 'Ölpumpe']);
  expect(await titles('olpu CRACK')).toEqual(['Ölpumpe']);
  expect(await titles('racked')).toEqual([]);
});

test('a part’s mark finds it, and so does its beginning', async () => {
  const { db } = await aShop();
  await halvorsen(db);
  const [found] = (await find(db, 'H12-22T', firstPage, true)).rows;
  expect(found).toMatchObject({ kind: 'part', title: 'H12-22T index wheel' });
  expect((await partByMark(db, ' h12-22t '))?.id).toBe(found?.ref);
  expect((await find(db, 'h12-2', firstPage, true)).rows).toHaveLength(3);
});

test.each(['"', '""', '*', 'NEAR(', 'a" OR "b', "'", '-', ':', '🔧', '<script>', 'AND', 'x'.repeat(5000), '\0', ''])(
  '%j is looked for without harm',
  async (typed) => {
    const { db } = await aShop();
    await onePart(db);
    expect((await find(db, typed, firstPage, true)).rows.length).toBeLessThan(2);
  },
);

test('changed text replaces the old', async () => {
  const { db } = await aShop();
  const { part } = await onePart(db);
  await savePart(db, part.id, part.rev, { notes: 'sheet brass' });
  await savePart(db, part.id, part.rev + 1, { notes: 'sheet zinc' });
  expect((await find(db, 'brass', firstPage, true)).rows).toEqual([]);
  expect((await find(db, 'zinc', firstPage, true)).rows).toMatchObject([{ ref: part.id }]);
  expect(await db.selectFrom('found').select('ref').execute()).toHaveLength(2);
});

test('page by page, each thing once', async () => {
  const { db } = await aShop();
  for (let n = 0; n < 7; n += 1) await addItem(db, stock(null, `bar ${n}`));
  const seen: string[] = [];
  for (let before: number | null = null, more = true; more; more = before !== null) {
    const page = await find(db, 'bar', { before, size: 3 }, true);
    seen.push(...page.rows.map((row) => row.title));
    before = page.next;
  }
  expect(seen).toEqual(['bar 6', 'bar 5', 'bar 4', 'bar 3', 'bar 2', 'bar 1', 'bar 0']);
});

test('marks are short, made of the trade’s words, and never given twice', async () => {
  const { db } = await aShop();
  const { project, assembly } = await onePart(db);
  const add = async (teeth: number | null, name: string) =>
    (await addPart(db, place(project.id, assembly.id, null, teeth === null ? null : halvorsenWheel(teeth), name))).mark;
  expect([await add(22, 'wheel'), await add(22, 'wheel'), await add(22, 'wheel'), await add(null, 'Guard, rear')]).toEqual([
    'H12-22T',
    'H12-22T-2',
    'H12-22T-3',
    'H12-GUARDR',
  ]);
  expect((await aProject(db)).mark).toBe('H12-2');
  expect(await newProjectMark(db, '🔧', '')).toBe('X');
  expect(await newPartMark(db, 'H12', 'Öl', null)).toBe('H12-OL');
});
