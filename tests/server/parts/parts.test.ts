import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addItem } from '../../../db/items.ts';
import { openRouting } from '../../../db/open-routing.ts';
import { inches } from '../../../lib/values/length.ts';
import { send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureOn, problemAt, rowOf, rowsOf, sectionOf, textOf, typedIn } from '../machines/read-page.ts';
import { cutterNumberFour, machine, SET, storyOne } from '../machines/story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;
const partAt = async (teeth: number): Promise<string> => {
  const rows = await shop.shops.own
    .selectFrom('part')
    .innerJoin('gear', 'gear.id', 'part.gear_id')
    .select(['part.id', 'gear.teeth'])
    .execute();
  return `/parts/${rows.find((row) => row.teeth === teeth)?.id}`;
};
const spares = async (teeth: number): Promise<string[]> => {
  const rows = await shop.shops.own
    .selectFrom('item')
    .innerJoin('gear', 'gear.id', 'item.gear_id')
    .leftJoin('part', 'part.item_id', 'item.id')
    .select(['item.id', 'gear.teeth', 'part.id as held'])
    .execute();
  return rows.filter((row) => row.teeth === teeth && row.held === null).map((row) => String(row.id));
};

const WHEEL = {
  as: 'wheel',
  sizes: 'in',
  name: 'Feed gear',
  assembly: '',
  newAssembly: 'Feed box',
  set: '',
  teeth: '60',
  pitch: '12 DP',
  system: 'full-14.5',
  face: '0.750',
  bore: 'plain',
  boreDiameter: '1.000',
  body: 'solid',
  material: 'steel',
  notes: '',
};

describe('the page of a missing wheel', () => {
  it('has its sizes, span and chord by label (story 1, derived)', async () => {
    await storyOne(shop);
    const html = await bodyOf(await partAt(22));
    expect(figureOn(html, 'Outside diameter')).toBe('3.0000 in');
    expect(figureOn(html, 'Root diameter')).toBe('2.4608 in');
    expect(figureOn(html, 'Whole depth')).toBe('0.2696 in');
    expect(figureOn(html, 'Span over 2 teeth')).toBe('0.5850 in');
    expect(figureOn(html, 'Span over 3 teeth')).toBe('0.9652 in');
    expect(figureOn(html, 'Cutter')).toBe('No. 5, 8 DP, 14½°, 21 to 25 teeth');
    expect(figureOn(await bodyOf(await partAt(28)), 'Span over 3 teeth')).toBe('0.9693 in');
  });

  it('says first of all that the mandrel is lacking, then the cutter', async () => {
    await storyOne(shop);
    await cutterNumberFour(shop);
    const needs = rowsOf(sectionOf(await bodyOf(await partAt(22)), 'needs')).slice(1);
    expect(needs.map(([what]) => what)[0]).toBe('mandrel for a 6-spline bore of 1.2500 in');
    expect(needs[1]?.slice(0, 2)).toEqual(['cutter No. 5, 8 DP, 14½°, for 22 teeth', 'not in the shop']);
    const of28 = rowsOf(sectionOf(await bodyOf(await partAt(28)), 'needs'));
    expect(of28.find(([what]) => what?.startsWith('cutter'))?.slice(1)).toEqual(['here', 'No. 4']);
  });

  it('holds every spare against it, the nearest that serves offered first', async () => {
    await storyOne(shop);
    const html = await bodyOf(await partAt(22));
    const held = rowsOf(sectionOf(html, 'spares')).slice(1);
    expect(held.map(([name = '', state]) => `${name.slice(0, 3)} ${state}`)).toEqual([
      '19T will not do',
      '25T too small',
      '31T cleans up',
      '34T cleans up',
      '46T cleans up',
    ]);
    const offered = [...sectionOf(html, 'spares').matchAll(/<option value="(\d+)"/g)].map(([, id]) => id);
    expect(offered).toEqual([...(await spares(31)), ...(await spares(34)), ...(await spares(46))]);
    expect(rowOf(sectionOf(html, 'ways'), 're-cut, clean')[1]).toBe('can be taken');
  });

  it('keeps the way and the reason', async () => {
    await storyOne(shop);
    const where = await partAt(22);
    const rev = typedIn(sectionOf(await bodyOf(where), 'ways'), 'rev');
    expect(at(await send(shop, `${where}/way`, { way: 'buy', why: 'A dealer has one.', rev }))).toBe(`${where}#ways`);
    expect(textOf(sectionOf(await bodyOf(where), 'ways'))).toContain('Chosen: buy. A dealer has one.');
    const late = await send(shop, `${where}/way`, { way: 'cast', why: 'I know a foundry.', rev });
    expect(late.statusCode).toBe(409);
    expect(late.body).toContain('I know a foundry.');
    expect(textOf(late.body)).toMatch(/on another device meanwhile.*A dealer has one\./s);
    expect((await send(shop, `${where}/way`, { way: 'wish', why: '', rev: '2' })).statusCode).toBe(422);
  });
});

describe('a blank promised', () => {
  it('opens the routing, and shows the new wheel inside the old', async () => {
    await storyOne(shop);
    const where = await partAt(22);
    const [item = ''] = await spares(31);
    expect(at(await send(shop, `${where}/promise`, { way: 're-cut a spare', item }))).toBe(`${where}#routing`);
    const html = await bodyOf(where);
    expect(textOf(html)).toContain('Being made from 31T');
    expect(figureOn(sectionOf(html, 'blank'), 'Turn off a side')).toBe('0.5625 in');
    expect(figureOn(sectionOf(html, 'blank'), 'Of it through the old teeth')).toBe('0.2696 in');
    expect(html).toContain('id="routing"');
    expect(html).not.toContain('id="promise-spare"');
  });

  it('that is taken meanwhile is answered in words', async () => {
    await storyOne(shop);
    const [of22, of28, [item = '']] = [await partAt(22), await partAt(28), await spares(34)];
    await send(shop, `${of22}/promise`, { way: 're-cut a spare', item });
    const late = await send(shop, `${of28}/promise`, { way: 're-cut a spare', item });
    expect(late.statusCode).toBe(422);
    expect(textOf(late.body)).toContain('This one is taken');
    const twice = await send(shop, `${of22}/promise`, { way: 're-cut a spare', item: (await spares(46))[0] ?? '' });
    expect(twice.statusCode).toBe(422);
    expect(textOf(twice.body)).toContain('its routing is open');
  });

  it.each([
    [{}, 'Nothing was chosen'],
    [{ way: 're-cut a spare', item: 'x' }, 'Nothing was chosen'],
    [{ way: 'by magic', item: '1' }, 'Nothing was chosen'],
    [{ way: 're-cut a spare', item: '9999' }, 'There is no item 9999'],
    [{ way: 'ring and hub', item: '1' }, 'A ring on a hub is made from two'],
  ])('%j is refused in words', async (form, says) => {
    await storyOne(shop);
    const answer = await send(shop, `${await partAt(22)}/promise`, form as Record<string, string>);
    expect(answer.statusCode).toBe(422);
    expect(textOf(answer.body)).toContain(says);
  });
});

describe('found, taken out, taken off the list', () => {
  it('a like wheel is put in its place and taken out again', async () => {
    const { set } = await storyOne(shop);
    await send(shop, `${set}/wheels`, { belongs: '', drawer: '22', material: 'steel', hardness: 'file bites', trust: 'unknown' });
    const where = await partAt(22);
    const html = await bodyOf(where);
    expect(textOf(html)).toContain('In its place: 22T');
    const rev = typedIn(html, 'rev');
    await send(shop, `${where}/take-out`, { rev });
    const out = await bodyOf(where);
    expect(textOf(out)).toContain('Missing.');
    const fit = sectionOf(out, 'found');
    await send(shop, `${where}/fit`, { item: /<option value="(\d+)"/.exec(fit)?.[1] ?? '', rev: typedIn(fit, 'rev') });
    expect(textOf(await bodyOf(where))).toContain('In its place: 22T');
    const late = await send(shop, `${where}/take-out`, { rev });
    expect(late.statusCode).toBe(422);
  });

  it('a part put on record by mistake goes, with its sizes; one that was begun stays', async () => {
    const { set } = await storyOne(shop);
    const [where, [item = '']] = [await partAt(28), await spares(34)];
    const ask = await visit(shop, `${where}/remove`);
    expect(ask.statusCode).toBe(200);
    await send(shop, `${where}/promise`, { way: 're-cut a spare', item });
    expect((await send(shop, `${where}/remove`, {})).statusCode).toBe(422);
    expect(at(await send(shop, `${await partAt(22)}/remove`, {}))).toBe(set);
    expect(await partAt(22)).toBe('/parts/undefined');
    expect(textOf(await bodyOf(set))).toContain('Of 9 that belong 8 are there. Missing: 28.');
    expect(textOf(await bodyOf('/search?q=H12-22T'))).toContain('Nothing holds these words');
  });
});

describe('a new part', () => {
  it('a wheel by itself: typed, marked, shown with its figures', async () => {
    const where = await machine(shop);
    const part = at(await send(shop, `${where}/parts`, WHEEL));
    const html = await bodyOf(part);
    expect(textOf(html)).toContain('H12-60T');
    // story 2, derived: 62 ÷ 12 = 5.1667, root 4.8072
    expect(figureOn(html, 'Outside diameter')).toBe('5.1667 in');
    expect(figureOn(html, 'Root diameter')).toBe('4.8072 in');
    expect(figureOn(html, 'Span over 5 teeth')).toBe('1.1674 in');
    expect(figureOn(html, 'Span over 6 teeth')).toBe('1.4209 in');
  });

  it('no spare is big enough: both are refused, and ring and hub is figured (story 2, derived)', async () => {
    const where = await machine(shop);
    const bore = { bore: 'splined', boreDiameter: '1.250', boreMinor: '1.0625', splines: '6', keyWidth: '0.3125' };
    const set = { ...SET, ...bore, pitch: '12 DP', face: '0.750', belongs: '60', drawer: '48, 41' };
    await send(shop, `${where}/sets`, set);
    const html = await bodyOf(await partAt(60));
    const held = rowsOf(sectionOf(html, 'spares'))
      .slice(1)
      .map(([name = '', state]) => `${name.slice(0, 3)} ${state}`);
    expect(held).toEqual(['41T will not do', '48T will not do']);
    expect(rowOf(sectionOf(html, 'ways'), 'ring and hub')[1]).toBe('can be taken');
    expect(rowOf(sectionOf(html, 'ways'), 'ring and hub')[2]).toContain('48T');
    // Turn the hub to 3.750; ring left under the teeth 2.94 whole depths; bored to 3.7463 for a steel ring.
    expect(figureOn(html, 'Turn the hub to')).toBe('3.7500 in');
    expect(figureOn(html, 'Ring under the teeth, in whole depths')).toBe('2.94 whole depths');
    expect(html).toContain('3.7463');
  });

  it('no wheel: a guard has a name, a mark, and no figures', async () => {
    const where = await machine(shop);
    const part = at(
      await send(shop, `${where}/parts`, {
        as: 'other',
        name: 'Guard',
        assembly: '',
        newAssembly: 'Headstock',
        material: 'tin',
        notes: '',
      }),
    );
    const html = await bodyOf(part);
    expect(textOf(html)).toContain('H12-GUARD');
    expect(html).not.toContain('class="figure"');
    expect(textOf(sectionOf(html, 'facts'))).toContain('tin');
    const wheel = await bodyOf(`${part}/edit?as=wheel`);
    expect(wheel).toContain('name="teeth"');
    const typed = { ...WHEEL, name: 'Guard', assembly: '1', newAssembly: '', rev: typedIn(wheel, 'rev') };
    expect((await send(shop, part, typed)).statusCode).toBe(303);
    expect(figureOn(await bodyOf(part), 'Outside diameter')).toBe('5.1667 in');
  });

  it.each([
    ['letters for teeth', { teeth: 'sixty' }, 'teeth'],
    ['0 teeth', { teeth: '0' }, 'teeth'],
    ['minus teeth', { teeth: '-60' }, 'teeth'],
    ['1e9 teeth', { teeth: '1e9' }, 'teeth'],
    ['no pitch', { pitch: '' }, 'pitch'],
    ['no name', { name: '' }, 'name'],
    ['nowhere', { newAssembly: '' }, 'newAssembly'],
    ['a bore of an armful', { boreDiameter: '1e9' }, 'boreDiameter'],
    ['a bore through the roots', { boreDiameter: '5' }, 'boreDiameter'],
    ['an emoji for a face', { face: '🙂' }, 'face'],
    ['a material not known', { material: 'cheese' }, 'material'],
  ])('%s comes back as typed with the problem beside it', async (_, over, field) => {
    const answer = await send(shop, `${await machine(shop)}/parts`, { ...WHEEL, ...over });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, field)).not.toBe('');
    expect(problemAt(answer.body, field)).not.toContain('“”');
    if (over && 'name' in over) expect(problemAt(answer.body, field)).toContain('Type what the part is called.');
    if (!('face' in over)) expect(typedIn(answer.body, 'face')).toBe('0.750');
    expect(await shop.shops.own.selectFrom('part').selectAll().execute()).toHaveLength(0);
  });

  it('an empty form is all problems and no error', async () => {
    const answer = await send(shop, `${await machine(shop)}/parts`, {});
    expect(answer.statusCode).toBe(422);
    expect(answer.body.match(/class="problem"/g)?.length).toBeGreaterThan(2);
  });

  it('two devices change a wheel: both versions, teeth and all', async () => {
    const where = at(await send(shop, `${await machine(shop)}/parts`, WHEEL));
    const rev = typedIn(await bodyOf(`${where}/edit`), 'rev');
    const form = { ...WHEEL, assembly: '1', newAssembly: '', rev };
    await send(shop, where, { ...form, teeth: '61' });
    const clash = await send(shop, where, { ...form, face: '0.800' });
    expect(clash.statusCode).toBe(409);
    for (const words of ['61', '60', '0.800', '0.750']) expect(textOf(clash.body)).toContain(words);
    const kept = { ...form, teeth: '61', face: '0.800', rev: typedIn(clash.body, 'rev') };
    expect((await send(shop, where, kept)).statusCode).toBe(303);
    const back = await bodyOf(`${where}/edit`);
    expect([typedIn(back, 'teeth'), typedIn(back, 'face')]).toEqual(['61', '0.800']);
  });

  it.each(['/parts/99', '/parts/x', '/parts/99/edit', '/parts/99/remove', '/machines/9/parts/new'])('%s is not found', async (url) => {
    expect((await visit(shop, url)).statusCode).toBe(404);
  });
});

const BAR = { sizes: 'in', material: 'steel', diameter: '1 1/4', length: '40', name: 'Steel bar' };
const SHAFT = { as: 'other', name: 'Feed shaft', assembly: '', newAssembly: 'Feed', material: 'steel', notes: '' };

it('a shaft takes a length of bar: the bar says what is left and for whom, and the work is written down by hand', async () => {
  const part = at(await send(shop, `${await machine(shop)}/parts`, SHAFT));
  const bar = at(await send(shop, '/drawer/new/stock', BAR));
  const item = bar.split('/').at(-1) ?? '';
  const late = await send(shop, `${part}/promise`, { way: 'make from stock', item, takes: 'a yard' });
  expect(late.statusCode).toBe(422);
  expect(problemAt(late.body, 'takes')).toContain('a yard');
  expect(typedIn(late.body, 'takes')).toBe('a yard');
  const long = await send(shop, `${part}/promise`, { way: 'make from stock', item, takes: '41' });
  expect(long.statusCode).toBe(422);
  expect(at(await send(shop, `${part}/promise`, { way: 'make from stock', item, takes: '26.5' }))).toBe(`${part}#routing`);
  const html = await bodyOf(part);
  expect(textOf(html)).toContain('Being made from Steel bar.');
  expect(textOf(html)).toContain('No operations yet');
  // derived: 40 - 26.5 = 13.5
  const [, state, known] = rowOf(await bodyOf('/drawer'), 'Steel bar');
  expect(state).toContain('promised to H12-FEED');
  expect(known).toContain('steel, 13.500 in left');
  expect(figureOn(await bodyOf(bar), 'Length left after what is promised')).toBe('13.500 in');
});

it.each([
  ['cast', 'Being cast.'],
  ['buy', 'Being bought.'],
  ['swap', 'Being swapped for.'],
  ['repair', 'Being repaired.'],
  ['do without', 'Done without.'],
] as const)('a part got by %s says so, and waits for no blank', async (way, says) => {
  const part = at(await send(shop, `${await machine(shop)}/parts`, SHAFT));
  await openRouting(shop.shops.own, { partId: Number(part.split('/').at(-1)), way, itemIds: [] }, '2026-03-01');
  const html = await bodyOf(part);
  expect(textOf(html)).toContain(says);
  expect(textOf(html)).not.toContain('promised to it yet');
});

it('stock of the shop is offered for a plain wheel, and promised so much of', async () => {
  const part = at(await send(shop, `${await machine(shop)}/parts`, WHEEL));
  const bar = {
    set_id: null,
    kept_in: '',
    from_project_id: null,
    trust: 'unknown',
    condition: '',
    hardness: 'file bites',
    material: 'steel',
  } as const;
  const sizes = {
    diameter_nm: inches(5.5),
    diameter_form: 'in.3',
    length_nm: inches(12),
    length_form: 'in.3',
    added_on: '2026-03-01',
    notes: '',
  };
  const { id } = await addItem(shop.shops.own, { ...bar, ...sizes, kind: 'stock', name: '5 1/2 in bar' });
  expect(await bodyOf(part)).toContain('id="promise-stock"');
  expect((await send(shop, `${part}/promise`, { way: 'make from stock', item: String(id) })).statusCode).toBe(303);
  const [blank] = await shop.shops.own.selectFrom('blank').selectAll().execute();
  // judgement: face 0.750, both faces cleaned 0.060, parting 0.125
  expect(blank?.takes_nm).toBe(inches(0.935));
});

it.each(['cast', 'buy', 'swap', 'repair'] as const)(
  'a part to be got by %s has a button that opens a routing to write down by hand',
  async (way) => {
    const part = at(await send(shop, `${await machine(shop)}/parts`, SHAFT));
    const without = textOf(sectionOf(await bodyOf(part), 'ways'));
    expect(without).toContain('No routing can be opened yet: no stock is in the drawer');
    await send(shop, `${part}/way`, { rev: '1', way, why: '' });
    const html = await bodyOf(part);
    expect(textOf(html)).not.toContain('No routing can be opened yet');
    expect(html).toContain(`Open a routing: ${way}`);
    const sent = { way, mark: /id="open-own"[\s\S]*?name="mark" value="([^"]+)"/.exec(html)?.[1] ?? '' };
    expect(at(await send(shop, `${part}/promise`, sent))).toBe(`${part}#routing`);
    expect(at(await send(shop, `${part}/promise`, sent))).toBe(`${part}#routing`);
    const open = await bodyOf(part);
    expect(textOf(open)).toContain(`Routing: ${way}`);
    expect(textOf(open)).toContain('Write down what has to be done, one operation after another.');
    expect(open).not.toContain('open-own');
    expect((await send(shop, `${part}/promise`, { way })).statusCode).toBe(422);
  },
);

it('done without: the page says that there is no routing, and why', async () => {
  const part = at(await send(shop, `${await machine(shop)}/parts`, SHAFT));
  await send(shop, `${part}/way`, { rev: '1', way: 'do without', why: '' });
  expect(textOf(sectionOf(await bodyOf(part), 'ways'))).toContain('there is nothing to make, and so no routing');
});
