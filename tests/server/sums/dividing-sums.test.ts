import readBack, { type DxfParser, type IEntity } from 'dxf-parser';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { holePlaces } from '../../../lib/dividing/hole-circle.formulas.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { ask } from './ask.ts';
import { HEAD } from './story-bench.ts';

/** The package is loaded whole as its default; its types name it otherwise. */
const Parser = readBack as unknown as new () => DxfParser;

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());
const asked = (path: string, given: Readonly<Record<string, string>>) => ask(shop, path, given);
const WAYS = { ...HEAD, gears: '28, 32, 40, 44, 48, 56, 64, 72, 86, 100', oneIdler: 'not tried', only: 'any' };
const TWO_SIDED = '24 25 28 30 34 37 38 39 41 42 43 | 46 47 49 51 53 54 57 58 59 62 66';

// Expected numbers: derived by hand (story of the prime count).
describe('the division is prime', () => {
  it('71: no circle on either set of plates, and no near value unless asked', async () => {
    for (const plates of [HEAD.plates, TWO_SIDED]) {
      const none = await asked('dividing-ways', { ...WAYS, plates, divisions: '71', gears: '' });
      expect(none.says).toMatch(/^Nothing exact with what is owned\. No circle on these plates divides 71\..*71 is prime/);
      expect(none.read('Nearest, where nothing is exact')).toMatch(/^not asked/);
      expect(none.tables[0]?.rows[0]?.[0]).toBe('a circle of 71 holes');
    }
    const near = await asked('dividing-ways', { ...WAYS, divisions: '71', gears: '', nearest: 'yes' });
    expect(near.read('Nearest, where nothing is exact')).toContain('49 circle of Plate 3');
    // 35/3479 of a turn of the crank × 32,400 seconds
    expect(near.read('Error at the worst tooth')).toBe('325.96');
  });

  it('71 with gears: set for 72, the proof, and what a wrong idler or a locked plate would make', async () => {
    const set = await asked('dividing-ways', { ...WAYS, divisions: '71' });
    expect(set.read('Crank for one division')).toBe('10 spaces on 18');
    expect([set.read('Sector, in spaces'), set.read('Holes the sector shows')]).toEqual(['10', '11']);
    expect(set.read('Plate, for one turn of the spindle')).toBe('5/9');
    expect(set.read('Gears')).toBe('40 on the spindle, 72 on the plate’s shaft');
    expect([set.read('Set for'), set.read('If the plate turns the wrong way'), set.read('If the plate is left locked')]).toEqual([
      '72',
      '73',
      '72',
    ]);
    expect(set.read('Proof: turns that all moves make')).toBe('40');
    expect(set.says).toContain('the plate turns with the crank');
    expect(set.body).toContain('39 4/9 turns against the plate');
    const ways = set.tables[0]?.rows ?? [];
    const heads = set.tables[0]?.heads ?? [];
    expect(ways).toHaveLength(6);
    const of70 = ways.find((row) => row[2] === '12 spaces on 21');
    expect(of70?.[3]).toBe('32 on the spindle, 56 on the plate’s shaft');
    expect(of70?.[4]).toMatch(/^4\/7 against/);
    // story 4, derived there: set for 70, the wrong way gives 69
    expect(of70?.[heads.indexOf('wrong way makes')]).toBe('69');
    expect(of70?.[heads.indexOf('locked makes')]).toBe('70');
    expect(set.body).toContain('<title>Gears from the spindle to the plate</title>');
    const untried = set.tables.find(({ title }) => title.startsWith('Teeth made'));
    expect(untried?.rows.map((row) => row.slice(1))).toEqual([
      ['71', '73'],
      ['73', '71'],
    ]);
    const tried = await asked('dividing-ways', { ...WAYS, divisions: '71', oneIdler: 'against' });
    expect(tried.read('Idlers')).toBe('two idlers');
    expect(tried.tables.some(({ title }) => title.startsWith('Teeth made'))).toBe(false);
  });

  it('57: 40 on the 57 circle; eight ways by two pins; gears of 2 for 22 on 33, else 60 or 63', async () => {
    expect((await asked('dividing-ways', { ...WAYS, plates: TWO_SIDED, divisions: '57', gears: '' })).read('Crank for one division')).toBe(
      '40 spaces on 57',
    );
    const pins = await asked('dividing-ways', { ...WAYS, divisions: '57', gears: '', backPin: 'all' });
    expect(pins.read('Crank for one division')).toBe('5 spaces on 15, then plate and crank 7 spaces on 19 the same way');
    expect(pins.tables[0]?.rows).toHaveLength(8);
    const geared = await asked('dividing-ways', { ...WAYS, divisions: '57', gears: '56, 28', onPlate: '2', onCircle: '33' });
    const row = geared.tables[0]?.rows.find((one) => one[2] === '22 spaces on 33');
    expect(row?.[3]).toBe('56 on the spindle, 28 on the plate’s shaft');
    // story 4: without the gears 60, with a wrong idler 63
    expect(row?.slice(5, 7)).toEqual(['63', '60']);
  });

  it('story of two wheels: 22 and 28 are plain, and come before any gear', async () => {
    expect((await asked('dividing-ways', { ...WAYS, divisions: '22' })).read('Crank for one division')).toBe('1 turn + 27 spaces on 33');
    expect((await asked('dividing-ways', { ...WAYS, divisions: '28' })).read('Crank for one division')).toBe('1 turn + 9 spaces on 21');
  });
});

describe('angles, tables, racks, scales', () => {
  it('48°40′ is exact, 24′ is not and says by how much', async () => {
    const exact = await asked('angular-indexing', { ...HEAD, degrees: '48°40′' });
    expect(exact.read('Crank')).toBe('5 turns + 11 spaces on 27');
    expect(exact.read('Too far by')).toBe('0.000');
    const near = await asked('angular-indexing', { ...HEAD, degrees: '0°24′' });
    expect(near.says).toMatch(/nothing exact; the nearest is/);
    expect(near.read('Too far by')).not.toBe('0.000');
  });
  it('11°3′ is on no circle, yet exact with two pins: 14/18 + 9/20 of a turn is 221/180', async () => {
    const one = await asked('angular-indexing', { ...HEAD, degrees: '11°3′' });
    expect(one.says).toMatch(/nothing exact; the nearest is 11°1′56\.1″/);
    const two = await asked('angular-indexing', { ...HEAD, degrees: '11°3′', backPin: 'all' });
    expect(two.says).toMatch(/^11°3′: exact with two pins: 14 spaces on 18, then plate and crank 9 spaces on 20 the same way, Plate 1\./);
  });
  it('a dial with a vernier: tooth 9 of 17', async () => {
    const table = await asked('table-dial', { divisions: '17', tableTurns: '90', lines: '240', vernier: '12', dialLash: '3' });
    expect(table.tables[0]?.rows[8]?.slice(0, 3)).toEqual(['9', '42', '84.667 lines']);
    expect(table.tables[0]?.rows.at(-1)?.slice(0, 3)).toEqual(['1 again', '90', '0.000 lines']);
  });
  it('a rack of 8 DP on 0.2 in: errors add up by moves, not from zero', async () => {
    const rack = await asked('rack-indexing', { rackPitch: '8 DP', tableLead: '0.2', lines: '200', rackTeeth: '21' });
    expect(rack.read('Added up at the last tooth')).toBe('0.00602');
    expect(Number(rack.read('Worst tooth, every place counted from zero'))).toBeLessThanOrEqual(0.0005);
  });
  it('1/64 in on a screw of 1/4 in: 2 turns + 8 on 16', async () => {
    const scale = await asked('scale-graduating', {
      distance: '1/64',
      tableLead: '0.25',
      ...HEAD,
      onSpindle: '40',
      onScrew: '40',
      scaleLines: '9',
    });
    expect(scale.read('Crank for one line')).toBe('2 turns + 8 spaces on 16');
    expect(scale.read('One turn of the crank moves the table')).toBe('0.006250');
  });
});

describe('the drawing as DXF', () => {
  const given = { holeCircles: '6 on 4; 23 on 2.5', holeDiameter: '0.125', startAngle: '90', middleX: '1', middleY: '-0.5' };
  it('reads back with every hole where the table has it', async () => {
    const answer = await visit(shop, `/sums/hole-circles.dxf?${new URLSearchParams(given)}`);
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['content-type']).toContain('image/vnd.dxf');
    expect(answer.headers['content-disposition']).toContain('hole-circles.dxf');
    const dxf = new Parser().parseSync(answer.body);
    const holes = (dxf?.entities ?? []).flatMap((one: IEntity) =>
      one.type === 'CIRCLE' && one.layer === 'HERE' ? [one as unknown as { center: { x: number; y: number }; radius: number }] : [],
    );
    expect(holes).toHaveLength(29);
    const right = [...holePlaces(6, 101.6, 90, [25.4, -12.7]), ...holePlaces(23, 63.5, 90, [25.4, -12.7])];
    right.forEach(({ x, y }, at) => {
      expect(holes[at]?.center.x).toBeCloseTo(x, 4);
      expect(holes[at]?.center.y).toBeCloseTo(y, 4);
      expect(holes[at]?.radius).toBeCloseTo(1.5875, 6);
    });
    expect(dxf?.header?.['$INSUNITS']).toBe(4);
  });
  it('is linked from its page; a sum without one has none; nonsense stays on the page', async () => {
    expect((await visit(shop, '/sums/hole-circles')).body).toContain('href="/sums/hole-circles.dxf');
    expect((await visit(shop, '/sums/gear-blank.dxf')).statusCode).toBe(404);
    expect((await visit(shop, '/sums/hole-circles.dxf?holeCircles=x')).statusCode).toBe(422);
  });
});

describe('bad input, within a second and with a clear word', () => {
  it.each([
    ['dividing-ways', { ...WAYS, divisions: '0' }, 422],
    ['dividing-ways', { ...WAYS, divisions: '1' }, 422],
    ['dividing-ways', { ...WAYS, divisions: '1000000' }, 422],
    ['dividing-ways', { ...WAYS, divisions: '71', turns: '0' }, 422],
    ['dividing-ways', { ...WAYS, divisions: '71', gears: 'some' }, 422],
    ['dividing-ways', { ...WAYS, divisions: '71', gears: '' }, 200],
    ['dividing-ways', { ...WAYS, divisions: '71', gears: '40x2, 72x2, 40' }, 200],
    ['dividing-ways', { ...WAYS, divisions: '99991' }, 200],
    ['dividing-ways', { ...WAYS, divisions: '2', only: 'differential' }, 200],
    ['dividing-ways', { ...WAYS, divisions: '71', onPlate: '9' }, 422],
    ['angular-indexing', { ...HEAD, degrees: '0' }, 422],
    ['block-indexing', { ...HEAD, divisions: '24', passed: '4' }, 422],
    ['table-dial', { divisions: '501', tableTurns: '90', lines: '240', vernier: '1' }, 422],
    ['rack-indexing', { rackPitch: '0', tableLead: '0.2', lines: '200', rackTeeth: '21' }, 422],
    ['hole-circles', { holeCircles: '0 on 4', holeDiameter: '0.1', startAngle: '0' }, 422],
  ] as const)('%s %j: %i', async (path, given, status) => {
    const before = performance.now();
    const answer = await visit(shop, `/sums/${path}?${new URLSearchParams(given)}`);
    expect(performance.now() - before).toBeLessThan(1000);
    expect(answer.statusCode).toBe(status);
    expect(answer.body).not.toMatch(/undefined|NaN<|Infinity|\[object/);
  });
});
