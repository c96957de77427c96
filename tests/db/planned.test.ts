import { expect, test } from 'vitest';
import type { Executor } from '../../db/executor.ts';
import { typeFigure } from '../../db/figures.ts';
import { itemsOfSet, saveItem } from '../../db/items.ts';
import { openRouting } from '../../db/open-routing.ts';
import { operationsOf } from '../../db/operations.ts';
import { part, partsOfSet, savePart } from '../../db/parts.ts';
import { changesSince, figureWords, replan } from '../../db/replan.ts';
import { addTool, saveTool, tool } from '../../db/tools.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches, type Length, subtract } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { aShop, halvorsen, NOW } from './bench.ts';

const CUTTER = {
  kind: 'cutter',
  pitch: { kind: 'DP', size: ratio(8) },
  angle: degrees(14.5),
  number: '5',
  teethFrom: 21,
  teethTo: 25,
  hole: inches(0.875),
  diameter: inches(2.5),
  width: null,
  stampedDepth: null,
  steel: 'high-speed',
  exactFor: null,
} as const;
const TOOL = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;

/** A spare of 31 teeth being cut again with 22. */
async function recut(db: Executor) {
  const { set } = await halvorsen(db);
  const [parts, things] = [await partsOfSet(db, set.id), await itemsOfSet(db, set.id)];
  const of = <T extends { stored: { gear: { teeth: number } } | null }>(all: readonly T[], teeth: number): T => {
    const found = all.find((one) => one.stored?.gear.teeth === teeth);
    if (!found) throw new Error(`no ${teeth}`);
    return found;
  };
  const spares = things.filter(({ state }) => state === 'spare');
  const [wanted, spare] = [of(parts, 22), of(spares, 31)];
  const routing = await openRouting(db, { partId: wanted.id, way: 're-cut a spare', itemIds: [spare.id] }, NOW);
  return { routing, wanted, spare };
}

/** The outside that the wheel is turned to, by the plan of today. */
async function outsideNow(db: Executor, routingId: number): Promise<string> {
  const found = (await replan(db, routingId)).plan?.operations.flatMap(({ figures }) => figures['newOutside'] ?? [])[0];
  return found ? figureWords(found) : 'nothing turned';
}

/** The arbors that the plan of today asks for: by the hole of the cutter. */
async function arborsNow(db: Executor, routingId: number): Promise<Length[]> {
  const needs = (await replan(db, routingId)).plan?.operations.flatMap((one) => one.needs) ?? [];
  return [...new Set(needs.flatMap((need) => (need.kind === 'arbor' ? need.diameter : [])))];
}

test('what nobody changed is not worked out again', async () => {
  const { db } = await aShop();
  const { routing } = await recut(db);
  const [first, second] = [await replan(db, routing), await replan(db, routing)];
  expect(first.plan).not.toBeNull();
  expect(second.plan).toBe(first.plan);
});

test('a cutter that is changed gives another plan, with the same id', async () => {
  const { db } = await aShop();
  const { routing } = await recut(db);
  const { id } = await addTool(db, { ...TOOL, name: 'the No. 5', details: CUTTER });
  expect(await arborsNow(db, routing)).toEqual([inches(0.875)]);
  const { row } = await tool(db, id);
  await saveTool(db, id, row.rev, {}, { details: { ...CUTTER, hole: inches(1) } });
  expect(await arborsNow(db, routing)).toEqual([inches(1)]);
});

test('a wheel that is changed gives another plan, with the same ids', async () => {
  const { db } = await aShop();
  const { routing, wanted } = await recut(db);
  // derived: (22 + 2) / 8 = 3 in, (23 + 2) / 8 = 3.125 in
  expect(await outsideNow(db, routing)).toBe('3.0000 in');
  const { rev, stored } = await part(db, wanted.id);
  if (!stored) throw new Error('no wheel');
  await savePart(db, wanted.id, rev, {}, { gear: { ...stored.gear, teeth: 23 } });
  expect(await outsideNow(db, routing)).toBe('3.1250 in');
});

test('a spare that is changed gives another plan, with the same ids', async () => {
  const { db } = await aShop();
  const { routing, spare } = await recut(db);
  const before = (await replan(db, routing)).plan;
  if (!spare.stored) throw new Error('no wheel');
  await saveItem(db, spare.id, spare.rev, {}, { gear: { ...spare.stored.gear, teeth: 32 } });
  const after = (await replan(db, routing)).plan;
  expect(JSON.stringify(after)).not.toBe(JSON.stringify(before));
});

test('a figure typed over feeds the figures after it, and taking it back gives the first plan again', async () => {
  const { db } = await aShop();
  const { routing } = await recut(db);
  const before = await replan(db, routing);
  const line = (await operationsOf(db, routing)).find(({ figures }) => figures.some(({ figure }) => 'length' in figure.value));
  const stored = line?.figures.find(({ figure }) => 'length' in figure.value);
  if (!line || !stored || !('length' in stored.shown)) throw new Error('no length');
  const other = { length: subtract(stored.shown.length, inches(0.001)) as Length };
  await typeFigure(db, line.id, line.rev, stored.key, other);
  const typed = await replan(db, routing);
  expect(typed.plan).not.toBe(before.plan);
  const now = (await operationsOf(db, routing)).find(({ id }) => id === line.id);
  await typeFigure(db, line.id, now?.rev ?? 0, stored.key, null);
  expect((await replan(db, routing)).plan).toBe(before.plan);
  expect(changesSince(await replan(db, routing))).toEqual([]);
});
