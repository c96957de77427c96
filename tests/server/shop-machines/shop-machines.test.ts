import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { machine } from '../../../db/machines.ts';
import { shopNow } from '../../../db/shop-now.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { readFeeds, readSpeeds } from '../../../server/shop-machines/number-line.ts';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureOn, problemAt, rowOf, textOf } from '../machines/read-page.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

type Form = Readonly<Record<string, string>>;
const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;
const idOf = (where: string): number => Number(where.split('/').at(-1));

const LATHE: Form = {
  sizes: 'in',
  name: 'Thornbury-Pell lathe',
  kind: 'lathe',
  speeds: '24 38, 60;95 152 240',
  feeds: '0.002 0.0035 0.005',
  feedsPer: 'turn',
  crossReads: 'travel',
  crossUnit: 'in',
  crossDivision: '0.001',
  crossPerTurn: '100',
  depthUnit: 'in',
  nose: '2 1/4 × 8',
  screwedNose: 'yes',
};
const MILL: Form = {
  ...LATHE,
  name: 'Dunmarrow mill',
  kind: 'mill',
  screwedNose: '',
  crossUnit: 'mm',
  crossDivision: '0.02',
  crossPerTurn: '250',
};

describe('a machine of the shop', () => {
  it('keeps speeds, feeds and dial exactly, and shows what one turn does', async () => {
    const where = at(await send(shop, '/tools/machines/new', LATHE));
    const kept = (await machine(shop.shops.own, idOf(where))).machine;
    expect(kept.speedsRpm).toEqual([24, 38, 60, 95, 152, 240]);
    expect(kept.feeds).toEqual([inches(0.002), inches(0.0035), inches(0.005)]);
    expect(kept.crossDial).toEqual({ reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 });
    expect(kept.depthDial).toBeNull();
    const html = await bodyOf(where);
    expect(figureOn(html, 'Cross-slide, one turn')).toBe('0.1 in'); // derived: 100 × 0.001
    expect(textOf(html)).toContain('24 38 60 95 152 240 rev/min');
    expect(textOf(html)).toContain('no braking and no reverse');
    const edit = await bodyOf(`${where}/edit`);
    expect(edit).toContain('value="24 38 60 95 152 240"');
    expect(edit).toContain('value="0.002 0.0035 0.005"');
  });

  it('the lash of a dial is kept as typed, shown, and given back', async () => {
    const where = at(await send(shop, '/tools/machines/new', { ...LATHE, crossLash: '0.012' }));
    expect((await machine(shop.shops.own, idOf(where))).machine.crossDial?.lash).toBe(inches(0.012));
    expect(figureOn(await bodyOf(where), 'Cross-slide, lash')).toBe('0.012 in');
    expect(await bodyOf(`${where}/edit`)).toContain('value="0.012"');
  });

  it('a dial in millimetres stays so beside sizes in inches', async () => {
    const where = at(await send(shop, '/tools/machines/new', MILL));
    expect((await machine(shop.shops.own, idOf(where))).machine.crossDial?.division).toBe(millimetres(0.02));
    expect(figureOn(await bodyOf(where), 'Cross-slide, one turn')).toBe('5 mm'); // derived: 250 × 0.02
  });

  it('the first lathe is the usual one until another is named, and one that has left is not', async () => {
    const first = at(await send(shop, '/tools/machines/new', LATHE));
    const second = at(await send(shop, '/tools/machines/new', { ...LATHE, name: 'Ashdown & Lyle lathe' }));
    expect((await shopNow(shop.shops.own)).lathe?.id).toBe(idOf(first));
    await send(shop, `${second}/usual`, { rev: '1' });
    expect((await shopNow(shop.shops.own)).lathe?.id).toBe(idOf(second));
    expect(rowOf(await bodyOf('/tools/machines'), 'Ashdown & Lyle lathe')[1]).toContain('the usual lathe');
    await send(shop, `${second}/retire`, { rev: '1' });
    expect((await shopNow(shop.shops.own)).lathe?.id).toBe(idOf(first));
    await send(shop, `${second}/put-back`, { rev: '2' });
    expect((await shopNow(shop.shops.own)).lathe?.id).toBe(idOf(second));
  });

  it.each([
    ['crossDivision', '', 'A dial wants'],
    ['crossPerTurn', '', 'A dial wants'],
    ['crossReads', '', 'A dial wants'],
    ['crossLash', '0.1', 'A whole turn of lash'],
    ['depthLash', '0.01', 'A dial wants'],
    ['crossDivision', '0.1', 'no feed screw has that'],
    ['speeds', '24 fast 60', 'fast'],
    ['speeds', '-5', '-5'],
    ['feeds', '0.002 thick', 'thick'],
    ['name', '', 'empty'],
  ])('%s typed as “%s”: %s', async (name, text, problem) => {
    const answer = await send(shop, '/tools/machines/new', { ...LATHE, [name]: text });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, name)).toContain(problem);
    expect(answer.body).toContain('value="2 1/4 × 8"');
    expect(textOf(await bodyOf('/tools/machines'))).toContain('No shop machine yet');
  });

  it('two devices: the second gets both versions', async () => {
    const where = at(await send(shop, '/tools/machines/new', LATHE));
    await send(shop, `${where}/edit`, { ...LATHE, speeds: '30 60', rev: '1' });
    const late = await send(shop, `${where}/edit`, { ...LATHE, speeds: '45 90', rev: '1' });
    expect(late.statusCode).toBe(409);
    expect(textOf(late.body)).toContain('As you typed it 45 90');
    expect(textOf(late.body)).toContain('As it stands now 30 60');
    expect((await machine(shop.shops.own, idOf(where))).machine.speedsRpm).toEqual([30, 60]);
  });

  it('unknown ones are not found; a device that may only look sees no form', async () => {
    const where = at(await send(shop, '/tools/machines/new', LATHE));
    for (const url of ['/tools/machines/99', '/tools/machines/abc', '/tools/machines/99/edit'])
      expect((await visit(shop, url)).statusCode).toBe(404);
    expect((await ask(shop, where, { peer: LAN_PEER })).body).not.toContain('method="post"');
  });
});

describe('a line of numbers', () => {
  it.each([
    ['45 73 112', [45, 73, 112]],
    ['112, 45; 73', [45, 73, 112]],
    ['45 45', [45]],
    ['62.5 31,25', [31.25, 62.5]],
    ['', []],
  ])('speeds “%s”', (text, speeds) => {
    expect(readSpeeds(text)).toEqual({ ok: true, value: speeds });
  });

  it('feeds take the unit at the end of the line', () => {
    const read = readFeeds('0.05 0.1 mm', 'in');
    expect(read.ok && read.value.feeds.map(({ length }) => length)).toEqual([millimetres(0.05), millimetres(0.1)]);
    expect(read.ok && read.value.form).toEqual({ unit: 'mm', places: 2 });
  });
});

describe('its quadrant', () => {
  const QUADRANT = {
    between: '6',
    slots: '1.4 to 5.5; 1.8 to 4.7 at 50',
    swing: '-80 to 60',
    wheelPitch: 'module 1.5',
    lastTurns: 'either',
  };

  it('is kept as typed, shown, filled into the sum of its wheels, and stays when something else is changed', async () => {
    const where = at(await send(shop, '/tools/machines/new', { ...LATHE, ...QUADRANT }));
    const html = await bodyOf(where);
    expect(textOf(html)).toContain('6 between the shafts; slots 1.4 to 5.5; 1.8 to 4.7 at 50; module 1.5');
    const link = /href="(\/sums\/change-gears[^"]*)"/.exec(html)?.[1]?.replaceAll('&amp;', '&') ?? '';
    const sum = await visit(shop, link);
    expect(sum.statusCode).toBe(200);
    expect(textOf(sum.body)).toContain('All arrangements of the train above');
    expect((await bodyOf(`${where}/edit`)).match(/value="1.4 to 5.5; 1.8 to 4.7 at 50"/)).not.toBeNull();
  });

  it('is refused where it is half typed or cannot be, and may stay empty', async () => {
    const half = await send(shop, '/tools/machines/new', { ...LATHE, between: '6' });
    expect(half.statusCode).toBe(422);
    expect(problemAt(half.body, 'wheelPitch')).toMatch(/needs the distance between the shafts/);
    const backwards = await send(shop, '/tools/machines/new', { ...LATHE, ...QUADRANT, swing: '60 to -80' });
    expect(problemAt(backwards.body, 'swing')).toMatch(/The greater angle comes second/);
    expect(textOf(await bodyOf(at(await send(shop, '/tools/machines/new', LATHE))))).not.toContain('Change wheels on its quadrant');
  });
});
