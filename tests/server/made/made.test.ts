import { describe, expect, it } from 'vitest';
import { addItem } from '../../../db/items.ts';
import { operationsOf } from '../../../db/operations.ts';
import { part } from '../../../db/parts.ts';
import { openRoutingOf, routing } from '../../../db/routings.ts';
import { halvorsenWheel, wheel } from '../../db/bench.ts';
import { type Bench, blemish, figureIn, firstStory, markIn } from '../routings/bench.ts';

/** The blank measured, and the record written. */
async function finished(bench: Bench, outcome: 'good' | 'scrap'): Promise<string> {
  const { first, line, post, db } = bench;
  const blank = await line(first, 'blank');
  await post(`/operations/${blank.id}/done`, { rev: String(blank.rev), 'm-outside': '2.999', 'm-runOut': '0.0005', minutes: '25' });
  const { rev } = await routing(db, first);
  const sent = await post(`/routings/${first}/finish`, {
    rev: String(rev),
    outcome,
    minutes: '400',
    cost: '12.5',
    notes: 'slow, but good',
  });
  expect(sent.statusCode, sent.body).toBe(303);
  return String(sent.headers.location);
}

describe('a made record', () => {
  it('good: what from, sizes against limits, hours; the part is filled and the blank gone as cut', async () => {
    const bench = await firstStory();
    const { db, part22, spare31, get } = bench;
    const where = await finished(bench, 'good');
    const { body } = await get(where);
    expect(body).not.toMatch(blemish);
    expect(body).toContain('31T');
    expect(body).toContain(`/drawer/${spare31}`);
    expect(body).toContain('2.9990');
    expect(body).toContain('2.9975 to 3.0000 in');
    expect(body).toContain('6 h 40 min');
    expect(body).toContain('12.50');
    expect(body).toContain('slow, but good');
    // derived: 40/22 = 1 27/33
    expect(figureIn(body, '17-crank')).toBe('1 turn + 27 spaces on 33');
    expect((await part(db, part22)).item_id).not.toBeNull();
    const blank = await db.selectFrom('item').selectAll().where('id', '=', spare31).executeTakeFirstOrThrow();
    expect(blank.gone_why).toBe('cut');
    expect((await get('/made')).body).toContain(where);
  });

  it('is a photograph: changing the part afterwards changes nothing in it', async () => {
    const bench = await firstStory();
    const { db, part22, get } = bench;
    const where = await finished(bench, 'good');
    const before = (await get(where)).body;
    const { gear_id } = await part(db, part22);
    await db
      .updateTable('gear')
      .set({ teeth: 23 })
      .where('id', '=', gear_id ?? 0)
      .execute();
    await db.updateTable('operation').set({ title: 'changed afterwards' }).execute();
    const after = (await get(where)).body;
    expect(after).toContain('22 teeth, 8 DP');
    expect(after).not.toContain('changed afterwards');
    expect(after.length).toBe(before.length);
  });

  it('spoilt: the blank is gone, the part still missing, and a new choice is one tap away', async () => {
    const bench = await firstStory();
    const { db, part22, spare31, get } = bench;
    const where = await finished(bench, 'scrap');
    expect((await get(where)).body).toContain('spoilt');
    expect((await part(db, part22)).item_id).toBeNull();
    expect(await openRoutingOf(db, part22)).toBeNull();
    const blank = await db.selectFrom('item').selectAll().where('id', '=', spare31).executeTakeFirstOrThrow();
    expect(blank.gone_why).toBe('scrap');
  });

  it('made again: a routing with the notes and times of the last time, from a blank that serves today', async () => {
    const bench = await firstStory();
    const { db, part22, get, post, line, first } = bench;
    const solid = await addItem(db, wheel(halvorsenWheel(46), null));
    const edges = await line(first, 'edges');
    await post(`/operations/${edges.id}/strike`, { rev: String(edges.rev) });
    const where = await finished(bench, 'scrap');
    const page = (await get(`${where}/again`)).body;
    expect(page).not.toMatch(blemish);
    // of the spares 19 and 25 are too small, the 34 is promised to the 28, the 46 that is left is recessed: only the solid 46 serves
    const choices = [...page.matchAll(/name="item" value="(\d+)"/g)].map(([, id]) => Number(id));
    expect(choices).toEqual([solid.id]);
    expect((await post(`${where}/again`, { item: '999999' })).statusCode).toBe(422);
    const opened = await post(`${where}/again`, { item: String(choices[0]) });
    expect(opened.statusCode).toBe(303);
    const row = await openRoutingOf(db, part22);
    const again = await operationsOf(db, row?.id ?? 0);
    expect(again.find(({ key }) => key === 'edges')?.state).toBe('struck out');
    expect(again.find(({ key }) => key === 'blank')?.minutes_planned).toBe(25);
    expect((await post(`${where}/again`, { item: String(choices[0]) })).statusCode).toBe(422);
  });

  it('nonsense comes back as typed; closed meanwhile says so and loses nothing; twice acts once', async () => {
    const bench = await firstStory();
    const { first, db, get, post } = bench;
    const wrong = await post(`/routings/${first}/finish`, { rev: '1', outcome: 'maybe', minutes: '-4', cost: 'much', notes: '🛠' });
    expect(wrong.statusCode).toBe(422);
    expect(wrong.body).toContain('value="much"');
    expect(wrong.body).toContain('🛠');
    const url = `/routings/${first}/finish`;
    const mark = markIn((await get(url)).body, url);
    const { rev } = await routing(db, first);
    const form = { rev: String(rev), outcome: 'good', minutes: '10', cost: '', notes: '', mark };
    const [one, two] = [await post(url, form), await post(url, form)];
    expect(two.headers.location).toBe(one.headers.location);
    expect(await db.selectFrom('made').selectAll().execute()).toHaveLength(1);
    const late = await post(url, { ...form, mark: 'another', notes: 'typed for long' });
    expect(late.statusCode).toBe(409);
    expect(late.body).toContain('typed for long');
  });

  it('money and notes are for the shop PC and paired devices', async () => {
    const bench = await firstStory();
    const where = await finished(bench, 'good');
    expect((await bench.get(where)).body).toContain('slow, but good');
    for (const url of [where, '/made', '/search?q=slow']) {
      const page = await bench.shop.app.inject({ method: 'GET', url, headers: { host: 'localhost' }, remoteAddress: '192.168.77.7' });
      expect(page.statusCode).toBe(200);
      expect(page.body).not.toContain('12.50');
      expect(page.body).not.toContain('Cost');
      expect(page.body).not.toContain('but good');
      if (url.startsWith('/search')) expect(page.body).not.toContain(where);
    }
    expect((await bench.get('/search?q=slow')).body).toContain(where);
  });

  it('an empty shop shows the first step; a record without a sheet still shows; unknown ones are 404', async () => {
    const { db, get, first, part22 } = await firstStory();
    expect((await get('/made')).body).toContain('Nothing has been made yet');
    const row = {
      part_id: part22,
      routing_id: first,
      outcome: 'good',
      finished_on: '2026-01-02',
      minutes: 5,
      cost_cents: 0,
      notes: '',
      sheet: '{}',
    } as const;
    const { id } = await db.insertInto('made').values(row).returning('id').executeTakeFirstOrThrow();
    const page = await get(`/made/${id}`);
    expect(page.statusCode).toBe(200);
    expect(page.body).not.toMatch(blemish);
    for (const url of ['/made/999', '/made/x', '/made/999/again']) expect((await get(url)).statusCode).toBe(404);
    expect((await get('/made?before=abc')).statusCode).toBe(200);
  });
});
