import { join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { type CompiledQuery, Kysely } from 'kysely';
import { expect, onTestFinished, test } from 'vitest';
import { assembliesOf } from '../../db/assemblies.ts';
import { leftOff } from '../../db/bookmarks.ts';
import type { Executor } from '../../db/executor.ts';
import { items, itemsOfSet, spareWheels } from '../../db/items.ts';
import { madeOfPart, madeRecords } from '../../db/made.ts';
import { newPartMark } from '../../db/marks.ts';
import { settleNeeds } from '../../db/needs.ts';
import { oneConnection } from '../../db/one-connection.ts';
import { operationsOf } from '../../db/operations.ts';
import { partByMark, partsOfAssembly, partsOfProject, partsOfSet } from '../../db/parts.ts';
import { projects } from '../../db/projects.ts';
import { readingsOf } from '../../db/readings.ts';
import { openRouting, routingsOfPart } from '../../db/routings.ts';
import type { Schema } from '../../db/schema.ts';
import { find } from '../../db/search.ts';
import { setsOfProject } from '../../db/sets.ts';
import { openWork, readyWork, sharedSetUps } from '../../db/today.ts';
import { toolsOfKind } from '../../db/tools.ts';
import { aShop, emptyFolder, halvorsen, NOW, plan } from './bench.ts';

const page = { before: null, size: 20 };

/** Every list that a page shows. */
const LISTS: Readonly<Record<string, (db: Executor) => Promise<unknown>>> = {
  projects: (db) => projects(db, page),
  assembliesOf: (db) => assembliesOf(db, 1),
  setsOfProject: (db) => setsOfProject(db, 1),
  partsOfProject: (db) => partsOfProject(db, 1, 'all', page),
  missingParts: (db) => partsOfProject(db, 1, 'missing', page),
  partsOfAssembly: (db) => partsOfAssembly(db, 1, page),
  partsOfSet: (db) => partsOfSet(db, 1),
  partByMark: (db) => partByMark(db, 'H12-22T'),
  newPartMark: (db) => newPartMark(db, 'H12', 'wheel', 22),
  itemsOfSet: (db) => itemsOfSet(db, 1),
  items: (db) => items(db, 'stock', 'all', page),
  spareWheels: (db) => spareWheels(db, page),
  readingsOf: (db) => readingsOf(db, { itemId: 1 }),
  toolsOfKind: (db) => toolsOfKind(db, 'cutter', page),
  routingsOfPart: (db) => routingsOfPart(db, 1, page),
  operationsOf: (db) => operationsOf(db, 1),
  madeRecords: (db) => madeRecords(db, page),
  madeOfPart: (db) => madeOfPart(db, 1, page),
  find: (db) => find(db, 'wheel 22', page, false),
  readyWork: (db) => readyWork(db, 20),
  openWork: (db) => openWork(db, page),
  sharedSetUps: (db) => sharedSetUps(db, 20),
  settleNeeds: (db) => settleNeeds(db, () => false),
  leftOff: (db) => leftOff(db, 5),
};

/** Steps of a plan that may walk a whole index: of open routings, of tools still here, or of a list read in its order up to a limit. */
const BOUNDED =
  /^SCAN (routing USING (COVERING )?INDEX routing_open|bookmark USING (COVERING )?INDEX bookmark_newest|found VIRTUAL TABLE INDEX)/;
/** Small by nature: all tools of a shop. */
const SMALL = /^SCAN tool\b/;

async function recorded() {
  const shop = await aShop(join(emptyFolder(), 'plans.sqlite'));
  await halvorsen(shop.db);
  const part = await shop.db.selectFrom('part').select('id').where('item_id', 'is', null).executeTakeFirstOrThrow();
  await openRouting(shop.db, { partId: part.id, way: 'make from stock', openedOn: NOW, blanks: [], operations: plan() });
  const queries: CompiledQuery[] = [];
  const file = new SqliteFile(shop.path);
  const db = new Kysely<Schema>({ dialect: oneConnection(file), log: (event) => void queries.push(event.query) });
  onTestFinished(() => db.destroy());
  const planOf = ({ sql, parameters }: CompiledQuery): string[] =>
    (file.prepare(`explain query plan ${sql}`).all(...parameters) as { detail: string }[]).map((row) => row.detail);
  return { db, queries, planOf };
}

const isQuestion = ({ sql }: CompiledQuery): boolean => /^(select|update|delete)/i.test(sql.trim());

test.each(Object.keys(LISTS))('%s walks no whole table and sorts no whole answer', async (name) => {
  const { db, queries, planOf } = await recorded();
  await LISTS[name]?.(db);
  const asked = queries.filter(isQuestion);
  expect(asked.length).toBeGreaterThan(0);
  for (const query of asked) {
    const steps = planOf(query);
    const scans = steps.filter((step) => step.startsWith('SCAN') && !BOUNDED.test(step) && !SMALL.test(step));
    expect({ sql: query.sql, scans }).toEqual({ sql: query.sql, scans: [] });
    const sorts = steps.filter((step) => step.includes('TEMP B-TREE FOR ORDER BY'));
    if (/limit \?/.test(query.sql) && name !== 'sharedSetUps') expect({ sql: query.sql, steps, sorts }).toMatchObject({ sorts: [] });
  }
});

test('missing parts are found machine by machine, not by all that is missing in the shop', async () => {
  const { db, queries, planOf } = await recorded();
  await projects(db, page);
  await partsOfProject(db, 1, 'missing', page);
  const steps = queries.flatMap(planOf);
  expect(steps.filter((step) => step.includes('INDEX part_missing (project_id=?'))).toHaveLength(2);
  expect(steps.filter((step) => step.includes('(item_id=?)'))).toEqual([]);
});

test('the check bites: a list without an index is found out', async () => {
  const { db, queries, planOf } = await recorded();
  await db.selectFrom('part').selectAll().where('notes', '=', '').orderBy('name').limit(5).execute();
  const steps = queries.flatMap(planOf);
  expect(steps.some((step) => step.startsWith('SCAN') && !BOUNDED.test(step))).toBe(true);
  expect(steps.some((step) => step.includes('TEMP B-TREE FOR ORDER BY'))).toBe(true);
});
