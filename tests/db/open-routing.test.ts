import { expect, test } from 'vitest';
import { acceptChanges } from '../../db/accept-changes.ts';
import { blanksOf } from '../../db/blanks.ts';
import type { Executor } from '../../db/executor.ts';
import { addItem, item, itemsOfSet } from '../../db/items.ts';
import { settleAndCount } from '../../db/needs-again.ts';
import { openRouting, openRoutings } from '../../db/open-routing.ts';
import { markDone, noteMeasured, operationsOf } from '../../db/operations.ts';
import { partsOfSet } from '../../db/parts.ts';
import { changesSince, figureWords, refreshStale, replan } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { setSetting } from '../../db/settings.ts';
import { backlashNow, shopNow } from '../../db/shop-now.ts';
import { addTool } from '../../db/tools.ts';
import { meets } from '../../lib/routing/needs.ts';
import { inches } from '../../lib/values/length.ts';
import { aShop, halvorsen, halvorsenWheel, NOW, onePart, stock } from './bench.ts';

const TOOL = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
const CIRCLES = [
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];

/** The tool drawer of the first story, as far as dividing goes. */
async function dividing(db: Executor): Promise<void> {
  await addTool(db, { ...TOOL, name: 'the head', details: { kind: 'head', turns: 40, backPin: false, oneIdler: null } });
  for (const [at, circles] of CIRCLES.entries())
    await addTool(db, { ...TOOL, name: `plate ${at + 1}`, details: { kind: 'plate', sides: [circles] } });
}

async function firstStory(db: Executor) {
  const { set } = await halvorsen(db);
  await dividing(db);
  const [parts, things] = [await partsOfSet(db, set.id), await itemsOfSet(db, set.id)];
  const missing = (teeth: number): number => parts.find((one) => one.stored?.gear.teeth === teeth)?.id ?? 0;
  const spare = (teeth: number): number => things.find((one) => one.stored?.gear.teeth === teeth && one.state === 'spare')?.id ?? 0;
  return { missing, spare };
}

const shownIn = async (db: Executor, routingId: number, operation: string, figure: string): Promise<string> => {
  const line = (await operationsOf(db, routingId)).find((one) => one.key === operation);
  const found = line?.figures.find((one) => one.key === figure);
  return found ? figureWords(found.figure) : `no ${operation}/${figure}`;
};

const lineOf = async (db: Executor, routingId: number, key: string) => {
  const found = (await operationsOf(db, routingId)).find((one) => one.key === key);
  if (!found) throw new Error(key);
  return found;
};

test('story 1: both wheels opened together stay on the second plate, and wait for mandrel and cutter', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const [first = 0, second = 0] = await openRoutings(
    db,
    [
      { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] },
      { partId: missing(28), way: 're-cut a spare', itemIds: [spare(34)] },
    ],
    NOW,
  );
  // derived: 40/22 = 1 27/33 and 40/28 = 1 9/21; 33 and 21 are both on the second of the three plates
  expect(await shownIn(db, first, 'plate', 'crank')).toBe('1 turn + 27 spaces on 33');
  expect(await shownIn(db, second, 'plate', 'crank')).toBe('1 turn + 9 spaces on 21');
  expect((await lineOf(db, first, 'plate')).setUp.key).toBe((await lineOf(db, second, 'plate')).setUp.key);
  const waits = (await operationsOf(db, first)).flatMap((line) => line.waits).filter((wait) => wait.for === 'tool');
  expect(waits[0]).toMatchObject({ need: { kind: 'mandrel' } });
  expect(waits.map((wait) => wait.for === 'tool' && wait.need.kind)).toContain('cutter');
  expect((await routing(db, first)).stale).toBe(0);
});

test('opened one after another, the joint choice still holds, and nothing is stale', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const first = await openRouting(db, { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] }, NOW);
  await openRouting(db, { partId: missing(28), way: 're-cut a spare', itemIds: [spare(34)] }, NOW);
  expect(changesSince(await replan(db, first))).toEqual([]);
  expect((await routing(db, first)).stale).toBe(0);
});

test('a taken spare or a second routing opens nothing at all', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const choice = { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] } as const;
  const taken = { partId: missing(28), way: 're-cut a spare', itemIds: [spare(31)] } as const;
  await expect(openRoutings(db, [choice, taken], NOW)).rejects.toMatchObject({ name: 'ItemTaken' });
  expect(await db.selectFrom('routing').selectAll().execute()).toEqual([]);
  await openRouting(db, choice, NOW);
  await expect(openRouting(db, { ...choice, itemIds: [spare(34)] }, NOW)).rejects.toMatchObject({ name: 'RoutingOpen' });
  await expect(openRouting(db, { ...taken, itemIds: [] }, NOW)).rejects.toMatchObject({ name: 'DomainError' });
});

test('a measured blank feeds the depth after it: was and now, until accepted', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const id = await openRouting(db, { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] }, NOW);
  const blank = await lineOf(db, id, 'blank');
  const reading = { what: 'outside', value: { length: inches(2.996) }, read_on: NOW, instrument: 'micrometer' } as const;
  await noteMeasured(db, blank.id, blank.rev, [{ figure: 'outside', reading }]);
  await refreshStale(db, id);
  expect((await routing(db, id)).stale).toBe(1);
  const changed = changesSince(await replan(db, id));
  const depth = changed.find((one) => one.key === 'touch/depth');
  // derived: whole depth 0.2696 - (3.000 - 2.996)/2 + paper 0.001; before, 0.2696 + 0.001
  expect(depth).toMatchObject({ was: '0.2706 in', now: '0.2686 in' });
  await acceptChanges(db, id, depth ? [depth] : [], NOW);
  expect(changesSince(await replan(db, id)).map((one) => one.key)).not.toContain(depth?.key);
  await acceptChanges(db, id, 'all', NOW);
  expect(changesSince(await replan(db, id))).toEqual([]);
  expect((await routing(db, id)).stale).toBe(0);
  expect((await lineOf(db, id, 'blank')).figures.find((one) => one.key === 'outside')).toMatchObject({ shownFrom: 'measured' });
});

test('what is done keeps what it was done by', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const id = await openRouting(db, { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] }, NOW);
  await setSetting(db, 'paper', '0.004');
  expect(changesSince(await replan(db, id)).map((one) => one.key)).toContain('touch/depth');
  const touch = await lineOf(db, id, 'touch');
  await markDone(db, touch.id, touch.rev, { on: NOW, minutes: 10, measured: [] });
  expect(changesSince(await replan(db, id)).filter((one) => one.operationId === touch.id)).toEqual([]);
});

test('a mandrel bought: making one is no longer wanted, and is struck out when that is accepted', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const id = await openRouting(db, { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] }, NOW);
  const bore = halvorsenWheel(22).bore;
  if (!bore) throw new Error('the wheel has a bore');
  await addTool(db, { ...TOOL, name: 'spline mandrel', details: { kind: 'mandrel', bore, holding: 'nut', runOut: null } });
  expect(changesSince(await replan(db, id))).toMatchObject([{ key: 'make-mandrel', now: '' }]);
  await acceptChanges(db, id, 'all', NOW);
  expect((await lineOf(db, id, 'make-mandrel')).state).toBe('struck out');
  expect(
    (await operationsOf(db, id)).flatMap((line) => line.waits).some((wait) => wait.for === 'tool' && wait.need.kind === 'mandrel'),
  ).toBe(false);
});

test('a mandrel bought: making one is offered no more, and nothing is said to wait for that', async () => {
  const { db } = await aShop();
  const { missing, spare } = await firstStory(db);
  const id = await openRouting(db, { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] }, NOW);
  const sound = await lineOf(db, id, 'sound');
  for (const key of ['count', 'file-test']) await markDone(db, (await lineOf(db, id, key)).id, 1, { on: NOW, minutes: 1, measured: [] });
  await markDone(db, sound.id, sound.rev, { on: NOW, minutes: 1, measured: [] });
  expect((await lineOf(db, id, 'make-mandrel')).state).toBe('ready');
  await settleAndCount(db, meets, NOW);
  expect((await lineOf(db, id, 'make-mandrel')).state).toBe('ready');
  const bore = halvorsenWheel(22).bore;
  if (!bore) throw new Error('the wheel has a bore');
  await addTool(db, { ...TOOL, name: 'spline mandrel', details: { kind: 'mandrel', bore, holding: 'nut', runOut: null } });
  expect((await settleAndCount(db, meets, NOW)).waiting).toBe(0);
  expect(await lineOf(db, id, 'make-mandrel')).toMatchObject({ state: 'struck out', struck_on: NOW });
  expect(changesSince(await replan(db, id))).toEqual([]);
});

test('a way that Backgear plans nothing for opens empty, to be filled by hand', async () => {
  const { db } = await aShop();
  const { missing } = await firstStory(db);
  const id = await openRouting(db, { partId: missing(22), way: 'buy', itemIds: [] }, NOW);
  expect(await operationsOf(db, id)).toEqual([]);
  expect(await replan(db, id)).toMatchObject({ plan: null, refusal: '' });
});

test('a part without a wheel is begun from bar: nothing planned, the length promised, and the rest is there for the next', async () => {
  const { db } = await aShop();
  const { part } = await onePart(db);
  const bar = await addItem(db, stock(inches(40)));
  const takes = { length: inches(26.5), form: { unit: 'in', places: 3 } } as const;
  const id = await openRouting(db, { partId: part.id, way: 'make from stock', itemIds: [bar.id], takes }, NOW);
  expect(await operationsOf(db, id)).toEqual([]);
  expect((await blanksOf(db, id)).map((one) => one.takes_nm)).toEqual([inches(26.5)]);
  expect(await replan(db, id)).toMatchObject({ plan: null, refusal: '' });
  expect(await item(db, bar.id)).toMatchObject({ state: 'spare', cut_nm: inches(26.5), cut_marks: part.mark });
});

test('a part without a wheel is not cut from a spare, nor from two things', async () => {
  const { db } = await aShop();
  const { part } = await onePart(db);
  const bar = await addItem(db, stock(inches(40)));
  await expect(openRouting(db, { partId: part.id, way: 're-cut a spare', itemIds: [bar.id] }, NOW)).rejects.toThrow('no wheel on record');
  await expect(openRouting(db, { partId: part.id, way: 'make from stock', itemIds: [] }, NOW)).rejects.toThrow('made from one');
});

test('the defaults as delivered, and as typed', async () => {
  const { db } = await aShop();
  expect(await shopNow(db)).toMatchObject({ cleanUp: undefined, paper: inches(0.001), convention: 'low end', unit: null, lathe: null });
  await setSetting(db, 'cleanUp', '0.5 mm');
  await setSetting(db, 'paper', 'nonsense');
  await setSetting(db, 'convention', 'treatise');
  expect(await shopNow(db)).toMatchObject({ cleanUp: 500_000, paper: inches(0.001), convention: 'treatise' });
  expect(await backlashNow(db)).toBe(0);
});
