import { expect, it } from 'vitest';
import { openRouting } from '../../../db/open-routing.ts';
import { addPart, part } from '../../../db/parts.ts';
import { halvorsenWheel, place } from '../../db/bench.ts';
import { NOW } from '../app-for-tests.ts';
import { figureIn, firstStory } from '../routings/bench.ts';

it('the page of a wheel in the making divides it as its routing does, not as it would be divided alone', async () => {
  const { db, part22, get, line } = await firstStory();
  const { project_id, assembly_id } = await part(db, part22);
  const own = await addPart(db, place(project_id, assembly_id as number, null, halvorsenWheel(24), 'loose wheel'));
  // derived: 40/24 = 1 2/3; alone 1 turn + 10 on 15, the fewest holes; with the 22 and the 28 it stays on the plate of 21 and 33, on the circle of the 22
  expect(figureIn((await get(`/parts/${own.id}`)).body, 'crank')).toBe('1 turn + 10 spaces on 15');
  const spare = await db.selectFrom('item').select('item.id').innerJoin('gear', 'gear.id', 'item.gear_id').where('gear.teeth', '=', 46);
  const forty6 = await spare.orderBy('item.id').execute();
  const held = await db.selectFrom('part').select('item_id').where('item_id', 'is not', null).execute();
  const free = forty6.find(({ id }) => !held.some(({ item_id }) => item_id === id))?.id ?? 0;
  const routing = await openRouting(db, { partId: own.id, way: 're-cut a spare', itemIds: [free] }, NOW);
  const planned = (await line(routing, 'plate')).figures.find(({ key }) => key === 'crank')?.figure.value;
  expect(planned).toEqual({ move: { turns: 1, spaces: 22, circle: 33 } });
  expect(figureIn((await get(`/parts/${own.id}`)).body, 'crank')).toBe('1 turn + 22 spaces on 33');
});
