import { describe, expect, it } from 'vitest';
import { operation, operationsOf } from '../../../db/operations.ts';
import { routing } from '../../../db/routings.ts';
import { acceptListed, blemish, figureIn, firstStory, listsIn, markIn } from './bench.ts';

describe('an operation on its page', () => {
  it('shows its figures by their labels, where it is done and what it waits for', async () => {
    const { first, second, line, get } = await firstStory();
    const plate = await get(`/operations/${(await line(first, 'plate')).id}`);
    expect(plate.statusCode).toBe(200);
    // derived: 40/22 = 1 27/33; the sector shows one hole more than its spaces
    expect(figureIn(plate.body, 'crank')).toBe('1 turn + 27 spaces on 33');
    expect(figureIn(plate.body, 'sectorHoles')).toBe('28');
    expect(figureIn((await get(`/operations/${(await line(second, 'plate')).id}`)).body, 'crank')).toBe('1 turn + 9 spaces on 21');
    const cut = (await get(`/operations/${(await line(first, 'cutter-on-arbor')).id}`)).body;
    expect(cut).toContain('waits for cutter No. 5');
    expect(cut).not.toMatch(blemish);
  });

  it('every operation of a routing has a sound page, large at the machine too', async () => {
    const { first, db, get } = await firstStory();
    for (const { id, figures } of await operationsOf(db, first)) {
      const page = await get(`/operations/${id}`);
      expect(page.statusCode, page.body).toBe(200);
      expect(page.body).not.toMatch(blemish);
      const large = await get(`/operations/${id}/at-machine`);
      expect(large.statusCode).toBe(figures.length > 0 ? 200 : 303);
    }
  });

  it('what was measured feeds what comes after: was and now until accepted', async () => {
    const bench = await firstStory();
    const { first, db, line, get, post } = bench;
    const [blank, touch] = [await line(first, 'blank'), await line(first, 'touch')];
    const saved = await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.996' });
    expect(saved.statusCode).toBe(303);
    const page = (await get(`/operations/${blank.id}`)).body;
    expect(figureIn(page, 'outside')).toBe('2.9960');
    expect(page).toContain('is-measured');
    expect(page).toContain('Metal gone: the tips come out short.');
    expect((await routing(db, first)).stale).toBe(1);
    const after = (await get(`/operations/${touch.id}`)).body;
    // derived: whole depth 0.2696 - (3.000 - 2.996)/2 + paper 0.001; before, 0.2696 + 0.001
    expect(figureIn(after, 'depth')).toBe('0.2686');
    expect(after).toContain('<s class="was">0.2706 in</s>');
    expect(after).toContain('Out of date');
    expect(
      (
        await post(`/routings/${first}/accept`, {
          rev: String((await routing(db, first)).rev),
          listed: JSON.stringify([['touch/depth', 'Depth to dial from touching', '0.2686 in']]),
          back: `/operations/${touch.id}`,
        })
      ).headers.location,
    ).toBe(`/operations/${touch.id}`);
    expect((await get(`/operations/${touch.id}`)).body).not.toContain('<s class="was">0.2706 in</s>');
    await acceptListed(bench, first);
    expect((await routing(db, first)).stale).toBe(0);
  });

  it('all that is listed is accepted by one press; a second device with the old list gets 409, and a closed routing refuses', async () => {
    const { first, part22, db, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.996' });
    const page = (await get(`/parts/${part22}`)).body;
    const section = page.slice(page.indexOf('id="routing"'));
    const [all, list] = [section.search(/Accept all \d+ listed here/), section.indexOf('<caption class="unseen">Operations by set-up')];
    expect(all).toBeGreaterThan(0);
    expect(all).toBeLessThan(list);
    expect(section.slice(0, list)).toContain('<s class="was">0.2706 in</s> <b>0.2686 in</b>');
    const hidden = (name: string) =>
      new RegExp(`name="${name}" value="([^"]*)"`).exec(section.slice(section.indexOf('/accept"')))?.[1] ?? '';
    const [listed = ''] = listsIn(section);
    const form = { rev: hidden('rev'), listed, back: `/parts/${part22}` };
    expect(JSON.parse(listed).length).toBeGreaterThan(1);
    expect((await post(`/routings/${first}/accept`, form)).headers.location).toBe(`/parts/${part22}`);
    expect((await routing(db, first)).stale).toBe(0);
    expect((await get(`/parts/${part22}`)).body).not.toContain('Accept all');
    expect((await post(`/routings/${first}/accept`, form)).statusCode).toBe(409);
    await post(`/routings/${first}/give-up`, { rev: String((await routing(db, first)).rev) });
    const closed = { ...form, rev: String((await routing(db, first)).rev) };
    expect((await post(`/routings/${first}/accept`, closed)).statusCode).toBe(422);
  });

  it('done while its figures differ from those printed: it was cut by those of today, and the record says so', async () => {
    const { first, db, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.996' });
    const touch = await line(first, 'touch');
    const [listed = ''] = listsIn((await get(`/operations/${touch.id}`)).body);
    expect((await post(`/operations/${touch.id}/done`, { rev: String(touch.rev), minutes: '5', listed })).statusCode).toBe(303);
    const page = (await get(`/operations/${touch.id}`)).body;
    // derived, as above: 0.2686 from the blank as measured, 0.2706 as first printed
    expect(figureIn(page, 'depth')).toBe('0.2686');
    expect(page).not.toContain('0.2706');
    expect((await line(first, 'touch')).state).toBe('done');
    const kept = (await operationsOf(db, first)).find(({ id }) => id === touch.id)?.figures.find(({ key }) => key === 'depth');
    expect(kept && 'length' in kept.shown ? kept.shown.length : 0).toBe(6_823_075);
  });

  it('with metal left it asks before it is done; a yes saves it all the same, and says what it means', async () => {
    const { first, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    const form = { rev: String(blank.rev), 'm-outside': '3.004', minutes: '25' };
    const asked = await post(`/operations/${blank.id}/done`, form);
    expect(asked.statusCode).toBe(200);
    expect(asked.body).toContain('Outside diameter 3.0040 in (2.9975 to 3.0000 in): Metal left: another cut. It is not marked done yet.');
    expect(asked.body).toContain('name="m-outside" value="3.004"');
    expect(asked.body).not.toMatch(blemish);
    expect((await line(first, 'blank')).done_on).toBeNull();
    const left = /name="left" value="([^"]+)"/.exec(asked.body)?.[1] ?? '';
    expect((await post(`/operations/${blank.id}/done`, { ...form, 'm-outside': '3.005', left })).body).toContain('3.0050 in');
    const sent = await post(`/operations/${blank.id}/done`, { ...form, left });
    expect(sent.statusCode).toBe(303);
    expect(await line(first, 'blank')).toMatchObject({ state: 'done', minutes_taken: 25 });
    const page = (await get(`/operations/${blank.id}`)).body;
    expect(page).toContain('Metal left: another cut.');
    expect(page).toContain('Not done after all');
    const undone = await post(`/operations/${blank.id}/undone`, { rev: String((await line(first, 'blank')).rev) });
    expect(undone.statusCode).toBe(303);
    expect((await line(first, 'blank')).done_on).toBeNull();
  });

  it('a size noted before with metal left is asked for too; one with metal gone can be mended no more, and is not', async () => {
    const { first, second, line, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '3.004' });
    const again = await line(first, 'blank');
    expect((await post(`/operations/${blank.id}/done`, { rev: String(again.rev) })).body).toContain('Done with metal left?');
    expect((await post(`/operations/${blank.id}/done`, { rev: String(again.rev), 'm-outside': '2.999' })).statusCode).toBe(303);
    const other = await line(second, 'blank');
    expect((await post(`/operations/${other.id}/done`, { rev: String(other.rev), 'm-outside': '3.6' })).statusCode).toBe(303);
  });

  it('a root of nothing is no reading; a run-out of nothing is one; what was not measured is named', async () => {
    const { first, line, post } = await firstStory();
    const sound = await line(first, 'sound');
    const nothing = await post(`/operations/${sound.id}/measured`, { rev: String(sound.rev), 'm-oldRoot': '0' });
    expect(nothing.statusCode).toBe(422);
    expect(nothing.body).toContain('Nothing is saved yet');
    const done = await post(`/operations/${sound.id}/done`, { rev: String(sound.rev), 'm-runOut': '0' });
    expect(done.statusCode).toBe(303);
    expect(decodeURIComponent(decodeURIComponent(String(done.headers['set-cookie'])))).toContain('Not measured: Old root diameter');
  });

  it.each(['emoji 🛠', '0', '-1', '1e9', '<script>', '3.0.0', '99999'])(
    '%s in a box for a size: 422, as typed, nothing saved',
    async (text) => {
      const { first, line, post } = await firstStory();
      const blank = await line(first, 'blank');
      const sent = await post(`/operations/${blank.id}/done`, { rev: String(blank.rev), 'm-outside': text, minutes: 'soon' });
      expect(sent.statusCode).toBe(422);
      expect(sent.body).toContain(`value="${text.replaceAll('<', '&lt;').replaceAll('>', '&gt;')}"`);
      expect(sent.body).toContain('value="soon"');
      expect(await line(first, 'blank')).toMatchObject({ rev: blank.rev, done_on: null });
    },
  );

  it('two devices: the second gets both versions, and nothing of the first is lost', async () => {
    const { first, line, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.999' });
    const second = await post(`/operations/${blank.id}/done`, { rev: String(blank.rev), 'm-outside': '2.998', minutes: '10' });
    expect(second.statusCode).toBe(409);
    expect(second.body).toContain('2.998');
    expect(second.body).toContain('2.999');
    expect((await line(first, 'blank')).figures.find(({ key }) => key === 'outside')?.measured).toEqual({ length: 76_174_600 });
  });

  it('a form sent twice acts once', async () => {
    const { first, db, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    const mark = markIn((await get(`/operations/${blank.id}`)).body, `/operations/${blank.id}/done`);
    expect(mark).not.toBe('');
    const form = { rev: String(blank.rev), 'm-outside': '2.999', minutes: '', mark };
    const [one, two] = [await post(`/operations/${blank.id}/done`, form), await post(`/operations/${blank.id}/done`, form)];
    expect([one.statusCode, two.statusCode]).toEqual([303, 303]);
    expect(two.headers.location).toBe(one.headers.location);
    expect(await db.selectFrom('reading').selectAll().where('operation_id', '=', blank.id).execute()).toHaveLength(1);
  });

  it('a figure typed over stands underlined, and can be taken back', async () => {
    const { first, line, get, post } = await firstStory();
    const touch = await line(first, 'touch');
    const address = `/operations/${touch.id}/figures/depth`;
    expect((await get(address)).body).toContain('Type it over');
    expect((await post(address, { rev: String(touch.rev), value: 'deep' })).statusCode).toBe(422);
    expect((await post(address, { rev: String(touch.rev), value: '0.265' })).statusCode).toBe(303);
    const page = (await get(`/operations/${touch.id}`)).body;
    expect(figureIn(page, 'depth')).toBe('0.2650');
    expect(page).toContain('is-typed');
    expect((await post(address, { rev: String(touch.rev), value: '0.264' })).statusCode).toBe(409);
    const back = await post(`${address}/back`, { rev: String((await line(first, 'touch')).rev) });
    expect(back.statusCode).toBe(303);
    expect(figureIn((await get(`/operations/${touch.id}`)).body, 'depth')).toBe('0.2706');
  });

  it('what was measured wrongly is taken back, and what hung on it is as before', async () => {
    const { first, db, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.9' });
    expect((await routing(db, first)).stale).toBe(1);
    const address = `/operations/${blank.id}/figures/outside`;
    expect((await get(address)).body).toContain('Take back what was measured');
    expect((await post(`${address}/back`, { rev: String(blank.rev), what: 'measured' })).statusCode).toBe(409);
    await post(`${address}/back`, { rev: String(blank.rev + 1), what: 'measured' });
    expect((await routing(db, first)).stale).toBe(0);
    expect(figureIn((await get(`/operations/${blank.id}`)).body, 'outside')).toBe('3.0000');
  });

  it('edited, moved, struck out and brought back', async () => {
    const { first, line, get, post } = await firstStory();
    const edges = await line(first, 'edges');
    const form = { title: '', steps: 'one\ntwo', minutes: '12', notes: 'as the old one' };
    expect((await post(`/operations/${edges.id}/edit`, { ...form, rev: String(edges.rev) })).statusCode).toBe(422);
    expect((await post(`/operations/${edges.id}/edit`, { ...form, title: 'Edges', rev: String(edges.rev) })).statusCode).toBe(303);
    expect(await line(first, 'edges')).toMatchObject({
      title: 'Edges',
      steps: ['one', 'two'],
      notes: 'as the old one',
      minutes_planned: 12,
    });
    const stale = await post(`/operations/${edges.id}/edit`, { ...form, title: 'Rims', rev: String(edges.rev) });
    expect(stale.statusCode).toBe(409);
    expect(stale.body).toContain('Rims');
    expect(stale.body).toContain('Edges');
    await post(`/operations/${edges.id}/move`, { by: 'up', rev: String((await line(first, 'edges')).rev) });
    expect((await line(first, 'edges')).place_no).toBe(edges.place_no - 1);
    await post(`/operations/${edges.id}/strike`, { rev: String((await line(first, 'edges')).rev) });
    expect((await get(`/operations/${edges.id}`)).body).toContain('Bring it back');
    await post(`/operations/${edges.id}/restore`, { rev: String((await line(first, 'edges')).rev) });
    expect((await line(first, 'edges')).struck_on).toBeNull();
    expect((await post(`/operations/${edges.id}/strike`, { rev: '1' })).statusCode).toBe(409);
  });

  it('one of the owner’s own gets its place and waits for its tool', async () => {
    const { first, db, line, get, post } = await firstStory();
    const count = await line(first, 'count');
    const url = `/routings/${first}/operations`;
    const form = { title: 'Anneal it', after: String(count.id), setUp: 'bench', steps: '', need: 'kiln', minutes: '60', notes: '' };
    expect((await get(`${url}/new?after=${count.id}`)).statusCode).toBe(200);
    expect((await post(url, { ...form, title: '', minutes: 'x' })).statusCode).toBe(422);
    const added = await post(url, form);
    expect(added.statusCode).toBe(303);
    const page = (await get(String(added.headers.location))).body;
    expect(page).toContain('waits for kiln');
    const all = await operationsOf(db, first);
    expect(all[1]).toMatchObject({ title: 'Anneal it', key: null, state: 'waiting' });
  });

  it('kept back for another part’s operation, with what that costs', async () => {
    const { first, second, line, get, post } = await firstStory();
    const [mine, theirs] = [await line(second, 'cutter-on-arbor'), await line(first, 'cutter-on-arbor')];
    const page = (await get(`/operations/${mine.id}/hold`)).body;
    expect(page).toContain('cutter No. 5');
    // derived: 476 ratios today, 828 with one of the two back
    expect(page).toMatch(/476 to 828/);
    const held = await post(`/operations/${mine.id}/hold`, { rev: String(mine.rev), held_for: String(theirs.id) });
    expect(held.statusCode).toBe(303);
    expect((await get(`/operations/${mine.id}`)).body).toContain('is-held');
    await post(`/operations/${mine.id}/hold`, { rev: String((await line(second, 'cutter-on-arbor')).rev), held_for: 'none' });
    expect((await line(second, 'cutter-on-arbor')).held_for_id).toBeNull();
    expect((await post(`/operations/${mine.id}/hold`, { rev: '1', held_for: '999999' })).statusCode).toBe(422);
  });

  it.each(['/operations/999999', '/operations/x', '/operations/1/figures/nonsense', '/routings/999999', '/operations/0/at-machine'])(
    '%s is 404',
    async (url) => {
      const { get } = await firstStory();
      expect((await get(url)).statusCode).toBe(404);
    },
  );

  it('changes to what is not there are 404, and change nothing', async () => {
    const { post, get } = await firstStory();
    expect((await post('/operations/999999/done', { rev: '1' })).statusCode).toBe(404);
    expect((await post('/routings/999999/accept', { listed: '[]' })).statusCode).toBe(404);
    expect((await get('/operations/1/at-machine?step=abc')).statusCode).toBeLessThan(400);
  });

  it('a device that only looks sees no forms', async () => {
    const { shop, first, line } = await firstStory();
    const touch = await line(first, 'touch');
    const url = `/operations/${touch.id}`;
    const looking = { method: 'GET', url, headers: { host: 'localhost' }, remoteAddress: '192.168.77.7' } as const;
    const page = await shop.app.inject(looking);
    expect(page.statusCode).toBe(200);
    expect(page.body).not.toContain('method="post"');
    expect((await shop.app.inject({ ...looking, url: `${url}/edit` })).statusCode).toBe(403);
  });

  it('what stands on the page at the machine is one number', async () => {
    const { first, line, get } = await firstStory();
    const page = (await get(`/operations/${(await line(first, 'plate')).id}/at-machine`)).body;
    expect(page.match(/class="number/g)).toHaveLength(1);
    expect(await get(`/operations/${(await line(first, 'plate')).id}/at-machine?step=2`).then((one) => one.statusCode)).toBe(200);
  });
});

describe('the rev of an operation', () => {
  it('goes up by one with every change, so that nothing is overtaken unseen', async () => {
    const { first, db, line, post } = await firstStory();
    const blank = await line(first, 'blank');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-outside': '2.999' });
    expect((await operation(db, blank.id)).rev).toBe(blank.rev + 1);
  });
});
