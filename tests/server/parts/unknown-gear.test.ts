import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import type { Executor } from '../../../db/executor.ts';
import type { UnknownGear } from '../../../db/gears.ts';
import { addItem, item } from '../../../db/items.ts';
import { addPart, part } from '../../../db/parts.ts';
import { readingsOf } from '../../../db/readings.ts';
import { inches } from '../../../lib/values/length.ts';
import { aProject, halvorsenWheel, place, wheel } from '../../db/bench.ts';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { firstStory } from '../routings/bench.ts';

const unescaped = (text: string): string => text.replaceAll('&amp;', '&').replaceAll('&quot;', '"').replaceAll('&#39;', "'");

/** The address of the first link whose words begin so. */
function linked(html: string, says: string): string {
  for (const [, href = '', text = ''] of html.matchAll(/<a [^>]*?href="([^"]*)"[^>]*>([\s\S]*?)<\/a>/g))
    if (text.trim().startsWith(says)) return unescaped(href);
  throw new Error(`no link says ${says}`);
}

type Form = { readonly action: string; readonly fields: Readonly<Record<string, string>> };

/** The first form that has a button whose words begin so: where it goes, and what it sends as it stands. */
function formOf(html: string, says: string): Form {
  for (const [, head = '', body = ''] of html.matchAll(/<form([^>]*)>([\s\S]*?)<\/form>/g)) {
    if (!new RegExp(`<button[^>]*>\\s*${says}`).test(body)) continue;
    const fields: Record<string, string> = {};
    for (const [, tag = ''] of body.matchAll(/<input([^>]*)>/g)) {
      const name = /name="([^"]*)"/.exec(tag)?.[1] ?? '';
      const off = /type="(radio|checkbox)"/.test(tag) && !/ checked/.test(tag);
      if (!off) fields[name] = unescaped(/value="([^"]*)"/.exec(tag)?.[1] ?? '');
    }
    for (const [, name = '', options = ''] of body.matchAll(/<select[^>]*name="([^"]*)"[^>]*>([\s\S]*?)<\/select>/g))
      fields[name] = unescaped(/<option value="([^"]*)" selected/.exec(options)?.[1] ?? /<option value="([^"]*)"/.exec(options)?.[1] ?? '');
    for (const [, name = '', text = ''] of body.matchAll(/<textarea[^>]*name="([^"]*)"[^>]*>([\s\S]*?)<\/textarea>/g))
      fields[name] = unescaped(text);
    return { action: unescaped(/action="([^"]*)"/.exec(head)?.[1] ?? ''), fields };
  }
  throw new Error(`no form has a button ${says}`);
}

const counted = (teeth: number): UnknownGear => ({
  teeth,
  pitch: null,
  face: inches(0.75),
  bore: { form: 'plain', diameter: inches(0.875) },
  body: { known: false },
});

// A wheel of 22 teeth, module 3, 20°, full depth: outside 24 × 3 = 72 mm, root 66 − 7.5 = 58.5 mm, over 3 teeth 23.07 less a little wear, one tooth more adds 3 π cos 20° = 8.856 mm.
const MODULE_3 = 'outside=72+mm&k=3&spanRead=23.02+mm&spanMore=31.88+mm&rootRead=58.5+mm';

describe('a wheel of unknown pitch', () => {
  let shop: TestShop;
  let db: Executor;
  let partId: number;
  let itemId: number;
  const get = async (url: string): Promise<string> => (await visit(shop, url)).body;
  const post = (form: Form, more: Readonly<Record<string, string>> = {}) => send(shop, form.action, { ...form.fields, ...more });

  beforeEach(async () => {
    shop = await shopForTests();
    onTestFinished(shop.close);
    db = shop.shops.now().db;
    const project = await aProject(db);
    const assembly = await addAssembly(db, { project_id: project.id, within_id: null, name: 'head', serial: '', notes: '' });
    partId = (await addPart(db, { ...place(project.id, assembly.id, null, null, 'change gear'), gear: counted(22) })).id;
    itemId = (await addItem(db, { ...wheel(halvorsenWheel(22), null), trust: 'original', gear: counted(22) })).id;
  });

  it('says so on the pages of the part, of its machine, of the thing and of the drawer, and works nothing from it', async () => {
    const page = await get(`/parts/${partId}`);
    expect(page).toContain('Pitch not known: identify it first.');
    expect(page).toContain('22 teeth, pitch not known yet');
    expect(page).not.toMatch(/\d DP|module \d|Outside diameter<|id="sizes"|id="needs"/);
    expect(await get('/machines/1')).toContain('22 teeth, pitch not known yet');
    const thing = await get(`/drawer/${itemId}`);
    expect(thing).toContain('Pitch not known: identify it first.');
    expect(thing).not.toContain('id="sizes"');
    expect(await get('/drawer')).toContain('pitch not known yet');
    expect(await get('/search?q=pitch+not+known')).toContain(`/parts/${partId}`);
  });

  it('is typed in the form as not known yet, and no default is taken for its pitch', async () => {
    const form = formOf(await get('/machines/1/parts/new?as=wheel'), 'Put it on record');
    const typed = { name: 'feed wheel', assembly: '1', teeth: '31', notKnown: 'yes' };
    expect((await post(form, { ...typed, notKnown: '' })).body).toContain('Type the pitch, or tick that it is not known yet.');
    const kept = await post(form, typed);
    expect(kept.statusCode).toBe(303);
    const id = Number(String(kept.headers.location).split('/').at(-1));
    expect(await part(db, id)).toMatchObject({ stored: null, unknown: { gear: { teeth: 31, pitch: null } } });
    const quick = formOf(await get('/drawer/quick'), 'Put them in the drawer');
    expect((await post(quick, { wheels: '19, 25x2', pitch: '', notKnown: 'yes' })).statusCode).toBe(303);
    expect((await get('/drawer')).match(/pitch not known yet/g)).toHaveLength(4);
  });

  it('keeps what was read on it, and types none of it twice', async () => {
    const add = async (more: Readonly<Record<string, string>>) => {
      const answer = await post(formOf(await get(`/parts/${partId}`), 'Write it down'), more);
      expect(answer.statusCode, answer.body).toBe(303);
    };
    await add({ what: 'outside between jaws', value: '2.998', error: '0.002' });
    await add({ what: 'span', value: '0.5835', overK: '2' });
    await add({ what: 'span', value: '0.9638', overK: '3' });
    await add({ what: 'over two pins, on the flanks', value: '3.002', pin: '0.216' });
    await add({ what: 'centre distance with a mate', value: '4.5', mate: '50' });
    await add({ what: 'lean of a rolled print', lean: '0' });
    const amiss = await post(formOf(await get(`/parts/${partId}`), 'Write it down'), { what: 'lean of a rolled print' });
    expect(amiss.statusCode).toBe(422);
    expect(amiss.body).toContain('by how many degrees');
    const asked = linked(await get(`/parts/${partId}`), 'What is this gear?');
    expect(Object.fromEntries(new URL(asked, 'http://x').searchParams)).toEqual({
      ...{ for: `part-${partId}`, teeth: '22', outside: '2.9980', outsideBy: 'jaws', outsideError: '0.0020' },
      ...{
        k: '2',
        spanRead: '0.5835',
        spanMore: '0.9638',
        pinUsed: '0.2160',
        overPins: '3.0020',
        mate: '50',
        centres: '4.5000',
        print: '0',
      },
    });
    const answer = await get(asked);
    expect(answer).toContain('Take this answer: 8 DP, 14½° full involute');
    const strike = linked(await get(`/parts/${partId}`), 'Span over 3 teeth');
    expect((await post(formOf(await get(strike), 'Strike it'))).statusCode).toBe(303);
    expect(await readingsOf(db, { partId })).toHaveLength(5);
  });

  const asked = async (owner: string, teeth = 22, more = MODULE_3): Promise<string> =>
    get(`/sums/unknown-gear?for=${owner}&teeth=${teeth}&${more}`);

  it('ends with one button as a part with data, with how they were found and with its readings; sent twice it acts once', async () => {
    const form = formOf(await asked(`part-${partId}`), 'Take this answer: module 3');
    const first = await post(form);
    expect([first.statusCode, first.headers.location]).toEqual([303, `/parts/${partId}`]);
    const known = await part(db, partId);
    expect(known.rev).toBe(2);
    expect(known.stored?.gear).toMatchObject({ teeth: 22, pitch: { kind: 'module', size: [3, 1] }, face: inches(0.75), helix: null });
    expect(known.stored?.gear.bore).toEqual(counted(22).bore);
    expect(known.stored?.foundBy).toMatch(/^by measurement, 2026-03-14: module 3, .*%/);
    const noted = await readingsOf(db, { partId });
    expect(noted.map(({ what, over_k }) => `${what} ${over_k ?? ''}`.trim())).toEqual([
      'outside between jaws',
      'span 3',
      'span 4',
      'root diameter',
    ]);
    const again = await post(form);
    expect([again.statusCode, again.headers.location]).toEqual([303, `/parts/${partId}`]);
    expect((await part(db, partId)).rev).toBe(2);
    expect(await readingsOf(db, { partId })).toHaveLength(4);
    const page = await get(`/parts/${partId}`);
    expect(page).toContain('by measurement, 2026-03-14: module 3');
    expect(page).not.toContain('Pitch not known');
    // Asked once more with the same readings nothing is noted twice.
    await post(formOf(await get(linked(page, 'What is this gear?')), 'Take this answer'));
    expect(await readingsOf(db, { partId })).toHaveLength(4);
  });

  it('the way back leads to the form with what stood there before, and saved it is as it was', async () => {
    const before = await part(db, partId);
    const taken = await post(formOf(await asked(`part-${partId}`), 'Take this answer: module 3'));
    const notice = String(taken.cookies.find(({ name }) => name === 'backgear-notice')?.value ?? '');
    const shown = await visitWith(shop, String(taken.headers.location), `backgear-notice=${encodeURIComponent(notice)}`);
    const undo = await get(linked(shown, 'Not so: what stood there before'));
    expect(undo).toContain('Nothing is saved yet: save it to put it back.');
    const form = formOf(undo, 'Save');
    expect(form.fields).toMatchObject({ notKnown: 'yes', pitch: '' });
    expect((await post(form)).statusCode).toBe(303);
    const after = await part(db, partId);
    expect({ ...after, rev: 0 }).toEqual({ ...before, rev: 0 });
    expect(await readingsOf(db, { partId })).toHaveLength(4);
  });

  it('saved meanwhile by somebody else: both versions side by side, and nothing is written until one is chosen', async () => {
    const form = formOf(await asked(`part-${partId}`), 'Take this answer: module 3');
    const edit = formOf(await get(`/parts/${partId}/edit`), 'Save');
    expect((await post(edit, { notKnown: '', pitch: '10 DP', teeth: '23' })).statusCode).toBe(303);
    const clash = await post(form);
    expect(clash.statusCode).toBe(409);
    expect(clash.body).toContain('module 3');
    expect(clash.body).toContain('10 DP');
    expect((await part(db, partId)).stored?.gear).toMatchObject({ teeth: 23, pitch: { kind: 'DP' } });
    expect(await readingsOf(db, { partId })).toEqual([]);
    const mine = formOf(clash.body, 'Keep what is chosen');
    const kept = await send(shop, mine.action, {
      ...mine.fields,
      ...form.fields,
      rev: mine.fields['rev'] ?? '',
      mark: mine.fields['mark'] ?? '',
      teeth: '22',
      pitch: 'module 3',
    });
    expect(kept.statusCode, kept.body).toBe(303);
    expect((await part(db, partId)).stored?.gear).toMatchObject({ teeth: 22, pitch: { kind: 'module' } });
  });

  it('a thing of the drawer takes it likewise; its trust stays', async () => {
    const form = formOf(await asked(`item-${itemId}`), 'Take this answer: module 3');
    expect((await post(form)).headers.location).toBe(`/drawer/${itemId}`);
    expect((await post(form)).headers.location).toBe(`/drawer/${itemId}`);
    const line = await item(db, itemId);
    expect(line).toMatchObject({ trust: 'original', rev: 2, stored: { gear: { pitch: { kind: 'module', size: [3, 1] } } } });
    expect(line.stored?.foundBy).toContain('by measurement');
    expect(await readingsOf(db, { itemId })).toHaveLength(4);
    expect(await get(`/drawer/${itemId}`)).toContain('by measurement, 2026-03-14');
    const clash = await post(form, { mark: 'another' });
    expect(clash.statusCode).toBe(409);
    expect(await readingsOf(db, { itemId })).toHaveLength(4);
  });

  // 30 teeth, 12 DP square to the teeth, 20°, helix 23°: pitch diameter 2.7159, outside 2.8826; over 5 and over 6 by the normal plane.
  const HELICAL = 'outside=2.8826&outsideBy=true&k=5&spanRead=1.1612&spanMore=1.4072&print=24.3&printError=0.5';

  it('of helical teeth the hand is asked, and page and form keep the helix', async () => {
    const form = formOf(await asked(`part-${partId}`, 30, HELICAL), 'Take this answer');
    expect(form.fields).toHaveProperty('hand');
    const without = await post(form, { hand: '' });
    expect(without.statusCode).toBe(422);
    expect(without.body).toContain('Choose the hand of the helix.');
    expect((await part(db, partId)).stored).toBeNull();
    expect((await post(form, { hand: 'left' })).statusCode).toBe(303);
    const { stored, rev } = await part(db, partId);
    expect(stored?.gear.helix).toMatchObject({ hand: 'left' });
    const page = await visit(shop, `/parts/${partId}`);
    expect(page.statusCode).toBe(200);
    const sizes = await visit(shop, linked(page.body, 'Its sizes and its lead'));
    expect([sizes.statusCode, sizes.body.includes('Lead')]).toEqual([200, true]);
    expect((await post(formOf(await get(`/parts/${partId}/edit`), 'Save'), { name: 'other name' })).statusCode).toBe(303);
    const after = await part(db, partId);
    expect([after.rev, after.stored]).toEqual([rev + 1, stored]);
  });

  it('refuses in words an answer that these readings do not give, and a device that is not paired', async () => {
    const form = formOf(await asked(`part-${partId}`), 'Take this answer: module 3');
    const wrong = await post(form, { answer: '8 DP full-14.5' });
    expect(wrong.statusCode).toBe(422);
    expect(wrong.body).toContain('The answer that was chosen is none that these readings give.');
    const stranger = await ask(shop, form.action, { method: 'POST', peer: LAN_PEER, form: form.fields });
    expect(stranger.statusCode).toBe(403);
    const looking = await ask(shop, `/sums/unknown-gear?for=part-${partId}&teeth=22&${MODULE_3}`, { peer: LAN_PEER });
    expect(looking.body).not.toContain('Take this answer');
    expect((await part(db, partId)).stored).toBeNull();
  });

  it('can still be looked over in the form first', async () => {
    const form = formOf(await get(linked(await asked(`part-${partId}`), 'Look it over in the form first')), 'Save');
    expect(form.fields).toMatchObject({ pitch: 'module 3', teeth: '22' });
    expect(form.fields['notKnown']).toBeUndefined();
    expect(form.fields['notes']).toContain('By measurement module 3');
    expect((await part(db, partId)).stored).toBeNull();
  });
});

const visitWith = async (shop: TestShop, url: string, cookie: string): Promise<string> =>
  (await ask(shop, url, { headers: { host: 'localhost', cookie } })).body;

describe('a wheel that is on record', () => {
  it('leads to What is this gear, which asks for sizes while only the count is known', async () => {
    const { part22, get } = await firstStory();
    const bare = await get(linked((await get(`/parts/${part22}`)).body, 'What is this gear?'));
    expect(bare.statusCode).toBe(200);
    expect(bare.body).toContain('A tooth count alone fits every pitch.');
    expect(bare.body).not.toContain('Take this answer');
  });

  it('says what was left out because another box is empty', async () => {
    const { get } = await firstStory();
    const page = await get('/sums/unknown-gear?teeth=22&outside=2.998&pinUsed=0.2&mate=30');
    expect(page.body).toContain('The pin was left out');
    expect(page.body).toContain('The teeth of the mate were left out');
  });

  it('offers nothing to be taken where no record was asked about, or one of a strange name', async () => {
    const { get } = await firstStory();
    expect((await get('/sums/unknown-gear?teeth=22&outside=2.998')).body).not.toContain('Take this answer');
    for (const owner of ['elsewhere-1', 'part-9999', 'item-9999'])
      expect((await get(`/sums/unknown-gear?teeth=22&outside=2.998&for=${owner}`)).body).not.toContain('Take this answer');
  });
});
