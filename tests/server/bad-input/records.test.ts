import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { SET, storyOne } from '../machines/story-one.ts';
import { OUR_MISTAKE, wordsOf } from './refused.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
  await send(shop, '/machines', { make: 'Halvorsen', model: 'H-12', what: 'gear hobber' });
  await send(shop, '/drawer/new/wheel', { ...WHEEL });
  await send(shop, '/tools/new/cutter', { ...CUTTER });
});
afterAll(() => shop.close());

const COMMON = {
  ...{ sizes: 'in', pitch: '8 DP', system: 'full-14.5', face: '0.875', bore: 'plain', boreDiameter: '1.250', body: 'solid' },
  ...{ trust: 'original', material: 'steel' },
};
const WHEEL = {
  ...{ ...COMMON, teeth: '31', teethLook: 'worn', boreLook: 'good' },
  ...{ fileTip: 'bites', fileRoot: 'bites', fileWeb: 'bites', fileBore: 'bites' },
};
const CUTTER = {
  sizes: 'in',
  wear: 'sharp',
  steel: 'high-speed',
  pitch: '8 DP',
  angle: '14 1/2',
  teeth: '26 to 34',
  number: '4',
  hole: '1',
};

type Form = readonly [address: string, whole: Readonly<Record<string, string>>, boxes: readonly string[]];
const FORMS: readonly Form[] = [
  ['/machines', { model: 'H-12' }, ['model', 'notes']],
  ['/machines/1', { model: 'H-12', rev: '1' }, ['model', 'notes']],
  ['/machines/1/sets', SET, ['pitch', 'face', 'belongs', 'drawer', 'notes']],
  ['/machines/1/parts', { name: 'Gear', teeth: '22', pitch: '8 DP', system: 'full-14.5' }, ['teeth', 'pitch', 'face']],
  ['/drawer/quick', { ...COMMON, wheels: '19x2' }, ['wheels', 'pitch']],
  ['/drawer/new/wheel', WHEEL, ['teeth', 'pitch', 'face', 'boreDiameter', 'notes']],
  ['/drawer/1/readings', { what: 'bore', value: '1.25', readOn: '2026-03-14' }, ['value', 'readOn']],
  ['/drawer/1/walls', { wall1: '1.1', bore: '1.25', readOn: '2026-03-14' }, ['wall1', 'bore']],
  ['/tools/new/cutter', CUTTER, ['pitch', 'angle', 'teeth', 'hole', 'notes']],
  ['/tools/new/plate', { sizes: 'in', wear: 'sharp', side1: '15 16' }, ['side1']],
  ['/tools/new/head', { sizes: 'in', wear: 'sharp', turns: '40' }, ['turns', 'gears']],
  ['/tools/machines/new', { name: 'Lathe', kind: 'lathe' }, ['name', 'speeds', 'crossDivision', 'slots']],
];
const NONSENSE = ['<script>alert(1)</script>', '1e9', '-1', '🙂🙂', 'x'.repeat(20_001), '1/0', '٣٣'];

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;').replace(/'/g, '&#39;');

describe.each(FORMS)('%s', (address, whole, boxes) => {
  it('nonsense in a box: the page comes back as typed with what is wrong, or the text was one that may stand there', async () => {
    for (const box of boxes) {
      for (const text of NONSENSE) {
        const answer = await send(shop, address, { ...whole, [box]: text });
        const about = `${box}=${text.slice(0, 30)}`;
        expect([303, 409, 422], about).toContain(answer.statusCode);
        expect(answer.body.includes('<script>alert'), about).toBe(false);
        expect(wordsOf(answer.body), about).not.toMatch(OUR_MISTAKE);
        if (answer.statusCode !== 422) continue;
        expect(answer.body.includes('class="problem'), about).toBe(true);
        expect(answer.body.includes(escaped(text)), about).toBe(true);
        for (const [name, kept] of Object.entries(whole))
          if (name !== box && kept !== '') expect(answer.body.includes(escaped(kept)), `${about}: ${name}`).toBe(true);
      }
    }
  });

  it('an empty form and a note of a megabyte: never an error of ours, nothing lost', async () => {
    const empty = await send(shop, address, {});
    expect([409, 422]).toContain(empty.statusCode);
    if (!boxes.includes('notes')) return;
    const long = 'é'.repeat(512 * 1024);
    const answer = await send(shop, address, { ...whole, notes: long });
    expect([409, 422]).toContain(answer.statusCode);
    expect(answer.body.includes(long)).toBe(true);
  });
});

it('what is larger still is refused with how much may be sent', async () => {
  const answer = await send(shop, '/machines', { model: 'H-12', notes: 'x'.repeat(5 * 1024 * 1024) });
  expect(answer.statusCode).toBe(413);
  expect(wordsOf(answer.body)).toContain('a note may have 20,000 letters');
});

it.each([
  '/machines/999',
  '/parts/999',
  '/sets/0',
  '/drawer/-1',
  '/tools/abc',
  '/routings/9e9',
  '/operations/1%00',
  '/made/99999999999999999999',
])('%s: an unknown record is said to be unknown', async (address) => {
  const answer = await visit(shop, address);
  expect(answer.statusCode).toBe(404);
  expect(wordsOf(answer.body)).not.toMatch(OUR_MISTAKE);
});

it('a thing that is gone meanwhile is said to have changed, even to a form with a mistake in it', async () => {
  await send(shop, '/drawer/new/wheel', { ...WHEEL, teeth: '33' });
  const [item] = await shop.shops.now().db.selectFrom('item').select(['id', 'rev']).orderBy('id', 'desc').limit(1).execute();
  const at = `/drawer/${item?.id}/gone`;
  expect((await send(shop, at, { why: 'sold', on: '2026-03-14', rev: `${item?.rev}` })).statusCode).toBe(303);
  const late = await send(shop, at, { why: 'sold', on: 'yesterday', rev: `${item?.rev}` });
  expect([late.statusCode, wordsOf(late.body).includes('changed on another device meanwhile')]).toEqual([409, true]);
});

it('a tool lent meanwhile: both versions, even of a form with a mistake in it', async () => {
  expect((await send(shop, '/tools/1/lend', { lentTo: 'a neighbour', dueOn: '2026-04-01', rev: '1' })).statusCode).toBe(303);
  const late = await send(shop, '/tools/1/lend', { lentTo: 'the club', dueOn: 'soon', rev: '1' });
  expect(late.statusCode).toBe(409);
  expect(wordsOf(late.body)).toMatch(/the club.*a neighbour|a neighbour.*the club/);
});

it('a part whose routing was opened meanwhile says so, even to a form with a mistake in it', async () => {
  const { set } = await storyOne(shop);
  const choices = /name="choices" value="([^"]*)"/.exec((await visit(shop, set)).body)?.[1] ?? '';
  expect((await send(shop, `${set}/open`, { choices })).statusCode).toBe(303);
  const late = await send(shop, `/parts/${choices.split(':')[0]}/promise`, {
    way: 'make from stock',
    item: '1',
    takes: 'a hand’s breadth',
  });
  expect([late.statusCode, wordsOf(late.body).includes('This part is being made')]).toEqual([409, true]);
});

it('what one device fills in, another that left the box empty does not wipe out unasked', async () => {
  await send(shop, '/machines', { model: 'S-16' });
  const row = await shop.shops
    .now()
    .db.selectFrom('project')
    .select(['id', 'rev'])
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirstOrThrow();
  const at = `/machines/${row.id}`;
  expect((await send(shop, at, { model: 'S-16', size: '16 in', rev: `${row.rev}` })).statusCode).toBe(303);
  const late = await send(shop, at, { model: 'S-16', year: '1926', rev: `${row.rev}` });
  expect(late.statusCode).toBe(409);
  const chosen = [...late.body.matchAll(/<input type="radio" name="(\w+)" value="([^"]*)" checked>/g)].map(([, name, value]) => [
    name,
    value,
  ]);
  expect(Object.fromEntries(chosen)).toEqual({ size: '16 in', year: '1926' });
});

it('a page that comes back starts at its first box that is amiss, without a script too', async () => {
  const answer = await send(shop, '/tools/new/cutter', { ...CUTTER, angle: 'steep', hole: 'wide' });
  expect(answer.body.match(/<input[^>]*autofocus/g)).toEqual([expect.stringContaining('name="angle"')]);
});

it('a condition that no tool has is refused, not taken for sharp', async () => {
  const before = await shop.shops.now().db.selectFrom('tool').select('wear').where('id', '=', 1).executeTakeFirst();
  const answer = await send(shop, '/tools/1/wear', { wear: 'shiny', rev: '2' });
  expect(answer.statusCode).toBe(422);
  expect(await shop.shops.now().db.selectFrom('tool').select('wear').where('id', '=', 1).executeTakeFirst()).toEqual(before);
});
