import { expect, it } from 'vitest';
import { addItem } from '../../../db/items.ts';
import { photograph } from '../../../db/made-sheet.ts';
import { makeAgain } from '../../../db/make-again.ts';
import { addOperation, operationsOf } from '../../../db/operations.ts';
import { part, partsOfSet } from '../../../db/parts.ts';
import { closeRouting, routing } from '../../../db/routings.ts';
import { tick, ticksOfAll } from '../../../db/ticks.ts';
import type { SetUp } from '../../../lib/routing/operation.ts';
import { ratiosWith, ratiosWithAll } from '../../../server/routings/ratios.ts';
import { tickedOfAll } from '../../../server/sheets/count.ts';
import { halvorsenWheel, wheel } from '../../db/bench.ts';
import { statementsOf } from '../../db/statements.ts';
import { NOW } from '../app-for-tests.ts';
import { firstStory } from './bench.ts';

it('the ratios of one part or of all of a set take the same statements, and are the same', async () => {
  const { shop, part22, part28 } = await firstStory();
  const { db } = shop.shops.now();
  const own = [await part(db, part22), await part(db, part28)];
  const all = await partsOfSet(db, own[0]?.set_id ?? 0);
  const few = await statementsOf(db, (counted) => ratiosWithAll(counted, own.slice(0, 1)));
  expect(await statementsOf(db, (counted) => ratiosWithAll(counted, all))).toBe(few);
  const together = await ratiosWithAll(db, all);
  // story: 476 today, 828 with one of the two back
  for (const one of own) {
    expect(together.get(one.id)).toEqual({ today: 476, withIt: 828 });
    expect(await ratiosWith(db, one)).toEqual({ today: 476, withIt: 828 });
  }
});

it('the ticks of several routings take the same statements as those of one, and each has its own', async () => {
  const { shop, first, second, line } = await firstStory();
  const { db } = shop.shops.now();
  const [rough, nick] = [await line(first, 'rough'), await line(second, 'nick')];
  for (const tooth of [2, 1]) await tick(db, rough.id, tooth, NOW);
  await tick(db, nick.id, 7, NOW);
  const routings = [
    { operations: await operationsOf(db, first), teeth: 22 },
    { operations: await operationsOf(db, second), teeth: 28 },
  ];
  const one = await statementsOf(db, (counted) => tickedOfAll(counted, routings.slice(0, 1)));
  expect(await statementsOf(db, (counted) => tickedOfAll(counted, routings))).toBe(one);
  const [of22, of28] = await tickedOfAll(db, routings);
  expect(of22?.map(({ pass, ticks }) => [pass.kind, ticks])).toEqual([
    ['nick', []],
    ['rough', [1, 2]],
    ['finish', []],
  ]);
  expect(of28?.map(({ ticks }) => ticks)).toEqual([[7], [], []]);
  expect((await ticksOfAll(db, []))(rough.id)).toEqual([]);
});

it('making again with operations of the owner’s own: each stands in its place, at a fixed cost, however long the routing is', async () => {
  const { shop, part22, first } = await firstStory();
  const { db } = shop.shops.now();
  const solid = await addItem(db, wheel(halvorsenWheel(46), null));
  const at = (await operationsOf(db, first)).findIndex(({ key }) => key === 'solid') + 1;
  const setUp = (await operationsOf(db, first))[at - 1]?.setUp as SetUp;
  for (const title of ['Look at it', 'Look again', 'And again', 'Once more'])
    await addOperation(db, first, { title, setUp, steps: [title], needs: [], minutes: 5, notes: title, at });
  const sheet = await photograph(db, await routing(db, first));
  const own = sheet.operations.filter(({ key }) => key === null);
  expect(own).toHaveLength(4);
  await closeRouting(db, first, (await routing(db, first)).rev, NOW);
  const choice = { partId: part22, way: 're-cut a spare', itemIds: [solid.id] } as const;
  const again = async (counted: typeof db, keep: number): Promise<number> => {
    const operations = sheet.operations.filter((one) => one.key !== null || own.indexOf(one) < keep);
    const id = await makeAgain(counted, { ...sheet, operations }, choice, NOW);
    return id;
  };
  const cost = async (keep: number): Promise<number> => {
    const taken = await statementsOf(db, async (counted) => {
      const id = await again(counted as typeof db, keep);
      last = id;
    });
    const lines = await operationsOf(db, last);
    expect(lines.filter(({ key }) => key === null)).toHaveLength(keep);
    if (keep === 4) {
      const places = lines.filter(({ key }) => key === null).map(({ title, setUp: { key } }) => [title, key]);
      expect(places).toEqual(own.map(({ title }) => [title, setUp.key]));
    }
    await closeRouting(db, last, (await routing(db, last)).rev, NOW);
    return taken;
  };
  let last = 0;
  await cost(0);
  const [one, four] = [await cost(1), await cost(4)];
  expect((four - one) / 3).toBeLessThanOrEqual(14);
});
