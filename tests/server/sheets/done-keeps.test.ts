import { afterEach, beforeEach, expect, test } from 'vitest';
import { acceptChanges } from '../../../db/accept-changes.ts';
import { saveRow } from '../../../db/changes.ts';
import { markDone } from '../../../db/operations.ts';
import { replan } from '../../../db/replan.ts';
import { tick } from '../../../db/ticks.ts';
import { addTool, toolsOfKind } from '../../../db/tools.ts';
import { NOW, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureIn } from '../routings/bench.ts';
import { type FirstStory, firstStory } from './first-story.ts';
import { differsOn, linesOn, plain, teethOn } from './read-sheet.ts';

let shop: TestShop;
let story: FirstStory;
beforeEach(async () => {
  shop = await shopForTests();
  story = await firstStory(shop.shops.own);
});
afterEach(() => shop.close());

const idOf = async (key: string): Promise<number> => (await story.operation(22, key)).id;
const body = async (url: string): Promise<string> => (await visit(shop, url)).body;

/** Nicked and roughed on the 33 circle; then that plate is sold, and one with a circle of 44 comes instead. */
async function anotherPlate(): Promise<void> {
  const db = shop.shops.own;
  for (const key of ['plate', 'nick', 'rough']) {
    const { id, rev } = await story.operation(22, key);
    await markDone(db, id, rev, { on: NOW, minutes: null, measured: [] });
  }
  for (const { row } of (await toolsOfKind(db, 'plate', { before: null, size: 10 })).rows)
    await saveRow(db, 'tool', row.id, row.rev, { gone_on: NOW });
  const tool = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
  await addTool(db, { ...tool, name: 'Plate of 44', details: { kind: 'plate', sides: [[44]] } });
  await acceptChanges(db, story.routings[22], 'all', NOW);
}

test('a round that is done is counted and printed by the circle, turns and spaces that it was cut by, not by today’s plan', async () => {
  await anotherPlate();
  const { plan } = await replan(shop.shops.own, story.routings[22]);
  const today = plan?.operations.find(({ key }) => key === 'rough')?.figures['crank']?.value;
  // derived: 40/22 = 1 9/11 = 1 36/44, and 1 27/33
  expect(today).toEqual({ move: { turns: 1, spaces: 36, circle: 44 } });
  for (const key of ['nick', 'rough']) {
    const id = await idOf(key);
    const sheet = await body(`/operations/${id}/index-sheet`);
    expect(linesOn(sheet, 'fact').get('crank')?.text, key).toBe('1 turn + 27 spaces on 33');
    expect(linesOn(sheet, 'fact').get('sector')?.text, key).toContain('27 spaces = 28 holes');
    expect(teethOn(sheet)[1], key).toMatchObject({ hole: 27, turns: 1 });
    expect(sheet).toContain('<title>Circle of 33 holes</title>');
    await tick(shop.shops.own, id, 1, NOW);
    const count = plain(await body(`/operations/${id}/teeth`));
    expect(count, key).toContain('Crank 1 turn + 27 spaces on 33');
  }
  expect(figureIn(await body(`/operations/${await idOf('rough')}`), 'crank')).toBe('1 turn + 27 spaces on 33');
  const finish = await idOf('finish');
  expect(linesOn(await body(`/operations/${finish}/index-sheet`), 'fact').get('crank')?.text).toBe('1 turn + 36 spaces on 44');
  expect(figureIn(await body(`/operations/${finish}`), 'crank')).toBe('1 turn + 36 spaces on 44');
});

test('a set-up sheet takes the circle that the operation asked for keeps, of several the next one to be done', async () => {
  await anotherPlate();
  const [rough, finish] = [await story.operation(22, 'rough'), await story.operation(22, 'finish')];
  const { set_up_id } = await shop.shops.own
    .selectFrom('operation')
    .select('set_up_id')
    .where('id', '=', rough.id)
    .executeTakeFirstOrThrow();
  await shop.shops.own.updateTable('operation').set({ set_up_id }).where('id', '=', finish.id).execute();
  const says = async (...ids: number[]) => differsOn(await body(`/set-ups/sheet?operations=${ids.join(',')}`)).get('circle of');
  expect(await says(rough.id)).toEqual(['33 holes']);
  expect(await says(finish.id)).toEqual(['44 holes']);
  expect(await says(rough.id, finish.id)).toEqual(['44 holes']);
});
