import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { problemAt, rowOf, sectionOf, textOf, typedIn } from './read-page.ts';
import { MACHINE, machine, storyOne } from './story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');

describe('machines under restoration', () => {
  it('an empty list shows the first step', async () => {
    const page = await visit(shop, '/machines');
    expect(page.statusCode).toBe(200);
    expect(page.body).toContain('href="/machines/new"');
    expect(textOf(page.body)).toContain('No machine yet');
  });

  it('keeps what was typed and shows it', async () => {
    const where = await machine(shop);
    const page = await visit(shop, where);
    expect(textOf(page.body)).toContain('Halvorsen H-12');
    expect(textOf(sectionOf(page.body, 'facts'))).toContain('about 1926');
    expect(textOf(page.body)).toContain('H12');
    expect(textOf(page.body)).toContain('What belongs to it?');
  });

  it('lists by name and newest first, with parts and missing', async () => {
    await storyOne(shop);
    await send(shop, '/machines', { ...MACHINE, make: 'Ashdown & Lyle', model: '13 in', what: 'lathe' });
    const [newest, byName] = [(await visit(shop, '/machines')).body, (await visit(shop, '/machines?sort=name')).body];
    expect(rowOf(newest, 'Halvorsen H-12').slice(1)).toEqual(['2 missing', 'gear hobber', '10', '2', '0']);
    const order = (html: string) => [html.indexOf('/machines/1"'), html.indexOf('/machines/2"')];
    const [first = 0, second = 0] = order(newest);
    expect(first).toBeGreaterThan(second);
    const [named = 0, other = 0] = order(byName);
    expect(named).toBeGreaterThan(other);
    expect(byName).toContain('Ashdown &amp; Lyle');
  });

  it('pages by name and loses none', async () => {
    for (let n = 1; n <= 53; n++) await send(shop, '/machines', { ...MACHINE, model: `M${String((n * 7) % 53).padStart(2, '0')}` });
    const found: string[] = [];
    for (let url = '/machines?sort=name'; url; ) {
      const { body } = await visit(shop, url);
      found.push(...[...body.matchAll(/Halvorsen (M\d\d)<\/a>/g)].map(([, model]) => model ?? ''));
      url = (/href="([^"]+)" rel="next"/.exec(body)?.[1] ?? '').replaceAll('&amp;', '&');
    }
    expect(found).toHaveLength(53);
    expect(found).toEqual([...found].sort());
  });

  it.each([
    ['nothing at all', {}, 'model', 'This box is empty. Type the model, as the maker’s plate has it.'],
    ['a maker too long', { ...MACHINE, make: 'x'.repeat(500) }, 'make', '500 letters are too many: maker may have 120.'],
    ['a note too long', { ...MACHINE, notes: 'x'.repeat(20_001) }, 'notes', '20001 letters are too many'],
  ])('refuses %s, and keeps what was typed', async (_, form, field, says) => {
    const answer = await send(shop, '/machines', form);
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, field)).toContain(says);
    if ('serial' in form) expect(typedIn(answer.body, 'serial')).toBe('4071');
  });

  it('a note of a megabyte is refused in words', async () => {
    const answer = await send(shop, '/machines', { ...MACHINE, notes: 'x'.repeat(1_000_000) });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, 'notes')).toContain('1000000 letters are too many');
  });

  it('takes signs, emoji and markup as plain words', async () => {
    const where = at(await send(shop, '/machines', { ...MACHINE, make: '<script>alert(1)</script> 🔩', notes: '"quoted" & <b>' }));
    const page = await visit(shop, where);
    expect(page.statusCode).toBe(200);
    expect(page.body).not.toContain('<script>alert');
    expect(page.body).toContain('&lt;script&gt;alert(1)&lt;/script&gt; 🔩');
  });

  it.each([
    '/machines/99',
    '/machines/0',
    '/machines/-1',
    '/machines/x',
    '/machines/1e3',
    '/machines/99999999999999999999',
    '/machines/99/edit',
  ])('%s is not found', async (url) => {
    expect((await visit(shop, url)).statusCode).toBe(404);
  });

  it('sent twice, acts once', async () => {
    const mark = typedIn((await visit(shop, '/machines/new')).body, 'mark');
    expect(mark).not.toBe('');
    const [first, again] = [await send(shop, '/machines', { ...MACHINE, mark }), await send(shop, '/machines', { ...MACHINE, mark })];
    expect([at(first), at(again)]).toEqual(['/machines/1', '/machines/1']);
    expect(await shop.shops.own.selectFrom('project').selectAll().execute()).toHaveLength(1);
  });

  it('two devices: the second sees both versions, chooses line by line, and loses nothing', async () => {
    const where = await machine(shop);
    const rev = typedIn((await visit(shop, `${where}/edit`)).body, 'rev');
    await send(shop, where, { ...MACHINE, year: '1924', rev });
    const clash = await send(shop, where, { ...MACHINE, serial: '4072', notes: 'plate is worn', rev });
    expect(clash.statusCode).toBe(409);
    const seen = textOf(clash.body);
    for (const words of ['4071', '4072', '1924', 'about 1926', 'plate is worn']) expect(seen).toContain(words);
    const now = typedIn(clash.body, 'rev');
    const chosen = { ...MACHINE, year: '1924', serial: '4072', notes: 'plate is worn', rev: now };
    expect((await send(shop, where, chosen)).statusCode).toBe(303);
    const facts = textOf(sectionOf((await visit(shop, where)).body, 'facts'));
    for (const words of ['1924', '4072', 'plate is worn']) expect(facts).toContain(words);
  });

  it('is put away as done, and taken up again', async () => {
    const where = await machine(shop);
    await send(shop, `${where}/close`, { rev: '1' });
    expect(rowOf((await visit(shop, '/machines')).body, 'Halvorsen H-12')[1]).toBe('done 2026-03-14');
    await send(shop, `${where}/reopen`, { rev: '2' });
    expect(rowOf((await visit(shop, '/machines')).body, 'Halvorsen H-12')[1]).toBe('no parts yet');
  });

  it('assemblies stand within others, and none within itself', async () => {
    const where = await machine(shop);
    await send(shop, `${where}/assemblies`, { name: 'Bed', within: '', serial: '', notes: '' });
    await send(shop, `${where}/assemblies`, { name: 'Feed box', within: '1', serial: 'F-88', notes: '' });
    expect(rowOf((await visit(shop, where)).body, 'Bed › Feed box')[1]).toBe('F-88');
    const loop = await send(shop, '/assemblies/1', { name: 'Bed', within: '2', serial: '', notes: '', rev: '1' });
    expect(loop.statusCode).toBe(422);
    const foreign = await send(shop, `${where}/assemblies`, { name: 'X', within: '77', serial: '', notes: '' });
    expect(foreign.statusCode).toBe(422);
  });
});

describe('who may do what', () => {
  const asPhone = (method: 'GET' | 'POST', url: string) =>
    shop.app.inject({
      method,
      url,
      remoteAddress: '192.0.2.77',
      headers: { host: 'localhost', origin: 'http://localhost', 'content-type': 'application/x-www-form-urlencoded' },
      ...(method === 'POST' ? { payload: '' } : {}),
    });

  it('a device that was not paired looks, and is offered no change', async () => {
    const { machine: where, set } = await storyOne(shop);
    for (const url of ['/machines', where, set, '/parts/2']) {
      const page = await asPhone('GET', url);
      expect(page.statusCode).toBe(200);
      expect(page.body).not.toMatch(/method="post"/);
      expect(page.body).not.toMatch(/\/(new|edit|wheels|remove)"/);
    }
  });

  it.each(['/machines/new', '/machines/1/edit', '/machines/1/sets/new', '/sets/1/edit', '/parts/2/edit', '/parts/2/remove'])(
    'nor may it ask for %s',
    async (url) => {
      await storyOne(shop);
      expect((await asPhone('GET', url)).statusCode).toBe(403);
    },
  );

  it.each(['/machines', '/machines/1', '/machines/1/close', '/machines/1/sets', '/sets/1', '/sets/1/open', '/parts/2', '/parts/2/promise'])(
    'nor send to %s',
    async (url) => {
      expect((await asPhone('POST', url)).statusCode).toBe(403);
    },
  );
});
