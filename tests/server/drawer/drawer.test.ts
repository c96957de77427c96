import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureOn, problemAt, rowsOf, textOf, typedIn } from '../machines/read-page.ts';
import { storyOne } from '../machines/story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

type Form = Readonly<Record<string, string>>;
const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;

const PATTERN: Form = {
  sizes: 'in',
  pitch: '8 DP',
  system: 'full-14.5',
  face: '0.875',
  bore: 'splined',
  boreDiameter: '1.250',
  boreMinor: '1.0625',
  splines: '6',
  keyWidth: '0.3125',
  body: 'unknown',
  trust: 'original',
  material: 'steel',
};
const WHEEL: Form = {
  ...PATTERN,
  teeth: '31',
  teethLook: 'worn',
  boreLook: 'good',
  fileTip: 'not tried',
  fileRoot: 'not tried',
  fileWeb: 'not tried',
  fileBore: 'not tried',
};
const BAR: Form = { sizes: 'in', material: 'steel', diameter: '3 1/4', length: '6.5', name: '' };

/** The things on a page of the list, top first. */
const things = (html: string): string[] =>
  rowsOf(html)
    .slice(1)
    .map(([name = '']) => name);

describe('the drawer as a list', () => {
  it('empty: the first step, and no list', async () => {
    const html = await bodyOf('/drawer');
    expect(textOf(html)).toContain('The drawer is empty');
    expect(html).toContain('href="/drawer/quick"');
    expect(html).not.toContain('<table');
  });

  it('one line puts them all in, in order of teeth, like ones side by side (story)', async () => {
    const answer = await send(shop, '/drawer/quick', { ...PATTERN, wheels: '46x2, 19x2, 22, 25-31 odd, 34' });
    expect(at(answer)).toBe('/drawer');
    const teeth = ['19', '19', '22', '25', '27', '29', '31', '34', '46', '46'];
    expect(things(await bodyOf('/drawer'))).toEqual(teeth.map((count) => `Wheel of ${count} teeth`));
    expect(things(await bodyOf('/drawer?by=newest'))[0]).toBe('Wheel of 46 teeth');
  });

  it('a line that cannot be read comes back as typed, and nothing goes in', async () => {
    const answer = await send(shop, '/drawer/quick', { ...PATTERN, wheels: '19x2, twenty, 25' });
    expect(answer.statusCode).toBe(422);
    expect(typedIn(answer.body, 'wheels')).toBe('19x2, twenty, 25');
    expect(problemAt(answer.body, 'wheels')).toContain('twenty');
    expect(textOf(await bodyOf('/drawer'))).toContain('The drawer is empty');
  });

  it('sent twice, it goes in once', async () => {
    const form = { ...PATTERN, wheels: '19, 22', mark: 'line-once' };
    await send(shop, '/drawer/quick', form);
    await send(shop, '/drawer/quick', form);
    expect(things(await bodyOf('/drawer'))).toHaveLength(2);
  });

  it('shows one kind, one pitch, the spares, and what is gone', async () => {
    await send(shop, '/drawer/quick', { ...PATTERN, wheels: '19, 25' });
    await send(shop, '/drawer/quick', { ...PATTERN, pitch: 'module 2', wheels: '40' });
    const bar = at(await send(shop, '/drawer/new/stock', BAR));
    expect(things(await bodyOf('/drawer?by=teeth&kind=stock'))).toEqual(['Bar 3 1/4 in']);
    expect(things(await bodyOf('/drawer?by=teeth&pitch=module+2'))).toEqual(['Wheel of 40 teeth']);
    await send(shop, `${bar}/gone`, { rev: '1', why: 'sold', on: '2026-03-01' });
    expect(things(await bodyOf('/drawer'))).toEqual(['Wheel of 19 teeth', 'Wheel of 25 teeth', 'Wheel of 40 teeth']);
    expect(things(await bodyOf('/drawer?by=teeth&gone=yes'))).toEqual(['Bar 3 1/4 in']);
  });

  it('spares only leaves out what stands for a part (story)', async () => {
    await storyOne(shop);
    expect(things(await bodyOf('/drawer?by=teeth'))).toHaveLength(13);
    const spares = things(await bodyOf('/drawer?by=teeth&spares=yes'));
    expect(spares.map((name) => /\d+/.exec(name)?.[0])).toEqual(['19', '25', '31', '34', '46']);
  });

  it.each(['teeth', 'newest'])('pages through 120 wheels by %s, each once', async (by) => {
    await send(shop, '/drawer/quick', { ...PATTERN, wheels: '19x20, 22x20, 25x20, 31x20, 34x20, 46x20' });
    const ids: string[] = [];
    let url = `/drawer?by=${by}`;
    for (let page = 0; url !== '' && page < 9; page++) {
      const html = await bodyOf(url);
      ids.push(...[...html.matchAll(/id="(item-\d+)"/g)].map(([, id = '']) => id));
      url = /href="([^"]*)" rel="next"/.exec(html)?.[1]?.replaceAll('&amp;', '&') ?? '';
    }
    expect(ids).toHaveLength(120);
    expect(new Set(ids).size).toBe(120);
  });

  it.each(['/drawer?by=teeth&pitch=8', '/drawer?by=sideways', '/drawer?by=teeth&after=x', '/drawer?by=teeth&kind=hammer'])(
    '%s: a problem beside its field, no 500',
    async (url) => {
      await send(shop, '/drawer/new/stock', BAR);
      const answer = await visit(shop, url);
      expect(answer.statusCode).toBe(422);
      expect(answer.body).not.toMatch(/undefined|NaN|\[object/);
    },
  );
});

describe('one thing', () => {
  const wheel = async (more: Form = {}): Promise<string> => at(await send(shop, '/drawer/new/wheel', { ...WHEEL, ...more }));

  it('a wheel drawn to scale with its sizes, condition and trust', async () => {
    const html = await bodyOf(await wheel());
    expect(html).toContain('<svg');
    expect(figureOn(html, 'Bore, across the grooves')).toBe('1.250 in');
    expect(figureOn(html, 'Outside diameter')).toBe('4.1250 in'); // story: 31 teeth, 8 DP
    expect(textOf(html)).toContain('Condition teeth worn, bore good');
    expect(textOf(html)).toContain('not looked at: measure web and recesses before it is judged');
  });

  it('its root is worked out until the walls are measured, then it is twice the least wall and the bore', async () => {
    const where = await wheel();
    expect(figureOn(await bodyOf(where), 'Old root, worked out')).toBe('3.5858 in'); // story
    const walls = { wall1: '1.168', wall2: '1.1675', wall3: '1.167', wall4: '1.166', wall5: '1.167', wall6: '1.168' };
    const how = { sizes: 'in', instrument: 'ball micrometer', error: '0.0005', readOn: '2026-03-10' };
    expect((await send(shop, `${where}/walls`, { ...how, ...walls, bore: '1.250' })).statusCode).toBe(303);
    const html = await bodyOf(where);
    expect(figureOn(html, 'Old root, measured')).toBe('3.5820 in'); // derived: 2 × (1.166 + 1.250 ÷ 2)
    expect(textOf(html)).toContain('Wall, bore to root, place 4 1.166 in ± 0.0005 in ball micrometer 2026-03-10');
    // place 4 read again, larger: the least is now place 3 or 5. derived: 2 × (1.167 + 0.625)
    await send(shop, `${where}/walls`, { ...how, wall4: '1.169' });
    expect(figureOn(await bodyOf(where), 'Old root, measured')).toBe('3.5840 in');
  });

  it('walls without any bore are refused: one alone gives no root', async () => {
    const where = await wheel();
    const answer = await send(shop, `${where}/walls`, { sizes: 'in', wall1: '1.168', readOn: '2026-03-10' });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, 'bore')).toContain('wall and bore together');
    expect(typedIn(answer.body, 'wall1')).toBe('1.168');
  });

  it('a reading across the roots of an odd count is corrected, and struck it is gone', async () => {
    const where = await wheel();
    const across = {
      sizes: 'in',
      what: 'across roots',
      value: '3.580',
      overK: '',
      pin: '',
      instrument: 'knife edges',
      error: '',
      readOn: '2026-03-10',
    };
    await send(shop, `${where}/readings`, across);
    const html = await bodyOf(where);
    // derived: 3.580 ÷ cos(90° ÷ 31) = 3.580 ÷ 0.998716 = 3.5846
    expect(figureOn(html, 'Old root, measured')).toBe('3.5846 in');
    const strike = /href="(\/drawer\/\d+\/readings\/\d+\/strike)"/.exec(html)?.[1] ?? '';
    expect(textOf(await bodyOf(strike))).toContain('3.580 in');
    await send(shop, strike, {});
    expect(figureOn(await bodyOf(where), 'Old root, worked out')).toBe('3.5858 in');
    expect((await visit(shop, strike)).statusCode).toBe(404);
  });

  it.each([
    [{ what: 'span', value: '0.9' }, 'overK'],
    [{ what: 'over two pins', value: '3.9' }, 'pin'],
    [{ what: 'bore', value: '0' }, 'value'],
    [{ what: 'bore', value: 'wide' }, 'value'],
    [{ what: 'bore', value: '1.25', readOn: '10.3.2026' }, 'readOn'],
  ])('a reading that lacks something comes back as typed: %o', async (given, at) => {
    const where = await wheel();
    const form = { sizes: 'in', overK: '', pin: '', instrument: 'vernier', error: '', readOn: '2026-03-10', ...given };
    const answer = await send(shop, `${where}/readings`, form);
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body.slice(answer.body.indexOf('<form class="form" id="reading"')), at)).not.toBe('');
    expect(answer.body).toContain('value="vernier"');
  });

  it('readings that disagree with the count say so, and the page stands', async () => {
    const where = await wheel();
    await send(shop, `${where}/walls`, { sizes: 'in', wall1: '9', bore: '1.250', readOn: '2026-03-10', instrument: '' });
    const answer = await visit(shop, where);
    expect(answer.statusCode).toBe(200);
    expect(textOf(answer.body)).toContain('The root lies between nothing and the outside');
  });

  it('what the file says of it', async () => {
    const hard = await wheel({ fileTip: 'skates', fileRoot: 'skates', fileWeb: 'bites' });
    expect(textOf(await bodyOf(hard))).toContain('Hardness case hard (file: tip skates, root skates, web bites)');
    expect((await bodyOf(`${hard}/edit`)).match(/value="skates" checked/g)).toHaveLength(2);
  });

  it('a bar with what is left of it, and a casting by its name', async () => {
    const bar = await bodyOf(at(await send(shop, '/drawer/new/stock', BAR)));
    expect(bar).toContain('<h1>Bar 3 1/4 in</h1>');
    expect(figureOn(bar, 'Length left')).toBe('6.5 in');
    const nameless = await send(shop, '/drawer/new/casting', { sizes: 'in', material: 'cast iron', name: '' });
    expect(problemAt(nameless.body, 'name')).toContain('empty');
  });

  it('gone, and back again; the record stays', async () => {
    const where = await wheel();
    await send(shop, `${where}/gone`, { rev: '1', why: 'lost', on: '2026-03-01' });
    expect(textOf(await bodyOf(where))).toContain('gone: lost');
    expect((await send(shop, `${where}/back`, { rev: '2' })).statusCode).toBe(303);
    expect(things(await bodyOf('/drawer'))).toEqual(['Wheel of 31 teeth']);
  });

  it('what stands for a part cannot be sold by mistake', async () => {
    await storyOne(shop);
    const fitted = /href="(\/drawer\/\d+)">Wheel of 37 teeth</.exec(await bodyOf('/drawer'))?.[1] ?? '';
    expect(await bodyOf(fitted)).not.toContain('id="gone"');
    const answer = await send(shop, `${fitted}/gone`, { rev: '1', why: 'sold', on: '2026-03-01' });
    expect(things(await bodyOf('/drawer'))).toHaveLength(13);
    expect(answer.statusCode).toBe(422);
  });

  it('two devices: the second gets both versions, and neither is lost', async () => {
    const where = await wheel();
    await send(shop, `${where}/edit`, { ...WHEEL, keptIn: 'left tin', rev: '1' });
    const late = await send(shop, `${where}/edit`, { ...WHEEL, face: '0.870', keptIn: 'right tin', rev: '1' });
    expect(late.statusCode).toBe(409);
    expect(textOf(late.body)).toContain('As you typed it right tin');
    expect(textOf(late.body)).toContain('As it stands now left tin');
    expect(figureOn(await bodyOf(where), 'Face')).toBe('0.875 in');
    expect((await send(shop, `${where}/edit`, { ...WHEEL, face: '0.870', keptIn: 'left tin', rev: '2' })).statusCode).toBe(303);
    expect(figureOn(await bodyOf(where), 'Face')).toBe('0.870 in');
  });

  it.each(['/drawer/999', '/drawer/abc', '/drawer/0', '/drawer/999/edit', '/drawer/new/hammer'])('%s is not found', async (url) => {
    expect((await visit(shop, url)).statusCode).toBe(404);
  });

  it('nonsense in any box of a wheel: as typed, never a 500', async () => {
    for (const box of Object.keys(WHEEL).filter((name) => name !== 'sizes'))
      for (const text of ['abc', '-3', '0', '1e9', '🦊', '<script>alert(1)</script>', 'x'.repeat(5000)]) {
        const answer = await send(shop, '/drawer/new/wheel', { ...WHEEL, [box]: text });
        expect([303, 422], `${box} ${text.slice(0, 20)}`).toContain(answer.statusCode);
        expect(answer.body).not.toMatch(/<script>alert|undefined|NaN|\[object/);
      }
  });

  it('a note of a megabyte comes back as typed, with how much may stand', async () => {
    const answer = await send(shop, '/drawer/new/wheel', { ...WHEEL, notes: 'x'.repeat(1_000_000) });
    expect(answer.statusCode).toBe(422);
    expect(textOf(answer.body)).toContain('a note may have 20000');
    expect(answer.body).toContain('x'.repeat(1_000_000));
  });

  it('a device that may only look sees the wheel, and no form', async () => {
    const where = await wheel();
    const looked = await ask(shop, where, { peer: LAN_PEER });
    expect(looked.statusCode).toBe(200);
    expect(looked.body).not.toContain('method="post"');
    expect((await ask(shop, `${where}/edit`, { peer: LAN_PEER })).statusCode).toBe(403);
  });
});
