import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { operationsOf } from '../../../db/operations.ts';
import { part } from '../../../db/parts.ts';
import { routing } from '../../../db/routings.ts';
import { addTool } from '../../../db/tools.ts';
import { inches } from '../../../lib/values/length.ts';
import { NOW } from '../app-for-tests.ts';
import { textOf } from '../machines/read-page.ts';
import { type Bench, blemish, firstStory, markDoneOn, NO_4, TOOL } from './bench.ts';

const ANEW = 'another blank: choose the blank anew';
/** derived: new outside 24 ÷ 8 = 3.0000; (3.0000 − 2.9000) ÷ 2 = 0.0500 */
const WHY = 'New outside 3.0000 in; old roots measured 2.9000 in: the old gaps would stay 0.0500 in deep under the new outside.';

const markup = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'doctype-style': 'off' } });

/** The spline mandrel is there, so that only the blank can hold the lathe up. */
async function withMandrel(bench: Bench): Promise<Bench> {
  const bore = (await part(bench.db, bench.part22)).stored?.gear.bore;
  if (!bore) throw new Error('the 22 has a bore');
  const here = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
  const details = { kind: 'mandrel', bore, holding: 'between centres', runOut: inches(0.0005) } as const;
  await addTool(bench.db, { ...here, name: 'spline mandrel', details });
  return bench;
}

async function measureRoot({ first, line, post }: Bench, root: string): Promise<void> {
  const { id, rev } = await line(first, 'sound');
  expect((await post(`/operations/${id}/measured`, { rev: String(rev), 'm-oldRoot': root })).statusCode).toBe(303);
}

const blankWaits = async ({ db, first }: Bench): Promise<string[]> =>
  (await operationsOf(db, first)).flatMap(({ key, waits }) => (waits.some((wait) => wait.for === 'blank') ? [key ?? ''] : []));

describe('a spare whose old root was measured too small for the new wheel', () => {
  it('holds up whatever goes to lathe or mill with it, and says why in figures', async () => {
    const bench = await withMandrel(await firstStory());
    const { first, second, db, line } = bench;
    expect(await blankWaits(bench)).toEqual([]);
    await measureRoot(bench, '2.90');
    const all = await operationsOf(db, first);
    const measuring = all.findIndex(({ key }) => key === 'sound');
    const turned = all.filter(
      ({ key, setUp: { place } }, at) => at > measuring && key !== 'prove-mandrel' && (place === 'lathe' || place === 'mill'),
    );
    expect(turned.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['through-teeth', 'solid', 'last-cuts', 'nick', 'rough', 'finish']),
    );
    for (const one of turned) {
      expect(one.state, one.key ?? '').toBe('waiting');
      expect(one.waits[0], one.key ?? '').toEqual({ for: 'blank', why: WHY });
    }
    for (const key of ['count', 'file-test', 'sound'])
      expect((await line(first, key)).waits).not.toContainEqual({ for: 'blank', why: WHY });
    expect((await operationsOf(db, second)).flatMap(({ waits }) => waits).filter((wait) => wait.for === 'blank')).toEqual([]);
    for (const key of ['count', 'file-test', 'sound', 'lay-out', 'prove-mandrel']) {
      await markDoneOn(bench, (await line(first, key)).id);
    }
    expect(await line(first, 'mount')).toMatchObject({ state: 'waiting', waits: [{ for: 'blank', why: WHY }] });
    expect((await line(first, 'sound')).verdict).toContain('The old gaps stay');
    expect((await line(first, 'sound')).steps.join(' ')).not.toMatch(/cleans up/i);
  });

  it('stands on today, the part, the set, the operation, the set-ups and the route sheet, each page sound', async () => {
    const bench = await withMandrel(await firstStory());
    const { first, part22, db, line, get } = bench;
    await measureRoot(bench, '2.90');
    const solid = await line(first, 'solid');
    const set = (await part(db, part22)).set_id;
    for (const url of [
      '/',
      `/parts/${part22}`,
      `/sets/${set}`,
      `/routings/${first}`,
      `/operations/${solid.id}`,
      `/parts/${part22}/sheet`,
    ]) {
      const { body } = await get(url);
      expect(body, url).toContain('choose the blank anew');
      expect(body, url).toContain(WHY);
      expect(body, url).not.toMatch(blemish);
    }
    expect((await get('/set-ups')).statusCode).toBe(200);
    const page = (await get(`/parts/${part22}`)).body;
    expect(page).toContain(`href="/routings/${first}/give-up"`);
    expect(page).toContain(`waits for ${ANEW}`);
    expect(page).not.toContain('Cleans up');
    expect((await get(`/operations/${(await line(first, 'sound')).id}`)).body).toContain(`The old gaps stay. ${WHY}`);
    expect((await markup.validateString(page)).results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
  });

  it('measured right again, or taken back, all is ready as before', async () => {
    const bench = await withMandrel(await firstStory());
    const { first, db, line, post } = bench;
    await measureRoot(bench, '2.90');
    expect((await routing(db, first)).blank_fails).toBe(WHY);
    await measureRoot(bench, '3.584');
    expect((await routing(db, first)).blank_fails).toBe('');
    expect(await blankWaits(bench)).toEqual([]);
    expect((await line(first, 'sound')).verdict).toMatch(/^Cleans up\./);
    await measureRoot(bench, '2.90');
    const { id, rev } = await line(first, 'sound');
    await post(`/operations/${id}/figures/oldRoot/back`, { rev: String(rev), what: 'measured' });
    expect(await blankWaits(bench)).toEqual([]);
  });

  it('the set does not say that it may be made first: a wheel whose blank failed is not cut today', async () => {
    const bench = await withMandrel(await firstStory());
    const { db, part22, get } = bench;
    const set = `/sets/${(await part(db, part22)).set_id}`;
    const no5 = { ...TOOL, name: 'No. 5', details: { ...NO_4, number: 'No. 5', teethFrom: 21, teethTo: 25 } } as const;
    await addTool(db, no5);
    expect(textOf((await get(set)).body)).toContain('A tie at 828; any of 22, 28 may be made first.');
    await measureRoot(bench, '2.90');
    const after = textOf((await get(set)).body);
    expect(after).toContain('A tie at 828; the 28 first: the blank of the 22 will not do.');
    expect(after).not.toContain('any of 22');
    expect(after).toContain('31, which will not do');
  });

  it('given back, the part can have another blank', async () => {
    const bench = await firstStory();
    const { first, part22, db, get, post } = bench;
    await measureRoot(bench, '2.90');
    await post(`/routings/${first}/give-up`, { rev: String((await routing(db, first)).rev) });
    expect((await get(`/parts/${part22}`)).body).not.toContain('choose the blank anew');
    expect((await get(`/routings/${first}`)).body).not.toContain('Choose the blank anew');
  });
});

describe('the old root is named by where it is from', () => {
  it('worked out until it is measured; no sum is asked for, and the walls of the wheel are one press away', async () => {
    const bench = await firstStory();
    const { spare31, line, get } = bench;
    const sound = await line(bench.first, 'sound');
    const before = (await get(`/operations/${sound.id}`)).body;
    expect(before).toContain('Old root, worked out');
    expect(before).toContain(`href="/drawer/${spare31}#walls"`);
    expect((await get(`/drawer/${spare31}`)).body).toContain('id="walls"');
    expect(before).not.toContain('twice the least wall');
    await measureRoot(bench, '3.58');
    const after = (await get(`/operations/${sound.id}`)).body;
    expect(after).toContain('Old root, measured');
    expect(after).not.toContain('Old root, worked out');
    expect((await get(`/parts/${bench.part22}/sheet`)).body).not.toContain('Old root, worked out');
  });

  it('walls written down with the wheel are taken by the operation, and hold the work up as a root typed here does', async () => {
    const bench = await withMandrel(await firstStory());
    const { spare31, first, line, post, db } = bench;
    const today = NOW.slice(0, 10);
    await post(`/drawer/${spare31}/readings`, { what: 'bore', value: '1.25', readOn: today, instrument: '' });
    // derived: 1.2500 + 2 × 0.8250 = 2.9000
    const walls = Object.fromEntries([1, 2, 3, 4, 5, 6].map((place) => [`wall${place}`, place === 3 ? '0.825' : '0.83']));
    expect((await post(`/drawer/${spare31}/walls`, { ...walls, readOn: today, instrument: '' })).statusCode).toBe(303);
    expect((await routing(db, first)).blank_fails).toBe(WHY);
    const done = await markDoneOn(bench, (await line(first, 'sound')).id);
    expect(done.cookies.map(({ value }) => decodeURIComponent(decodeURIComponent(value))).join()).not.toContain('Not measured: Old root');
    expect((await line(first, 'sound')).figures.find(({ key }) => key === 'oldRoot')?.figure.name).toBe('Old root, measured');
  });
});
