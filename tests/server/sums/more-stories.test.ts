import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { ask } from './ask.ts';
import { EIGHT, HEAD, SPARE } from './story-bench.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());
const asked = (path: string, given: Readonly<Record<string, string>>) => ask(shop, path, given);

// Expected numbers: derived by hand from the formulas of the trade.
describe('no spare is big enough', () => {
  const TWELVE = { ...SPARE, pitch: '12 DP', teeth: '60' };

  it('refuses both spares as plain re-cuts', async () => {
    for (const spareTeeth of ['48', '41'])
      expect((await asked('spare-test', { ...TWELVE, spareTeeth })).says).toMatch(/^Will not do\. The spare is smaller/);
    expect((await asked('spare-test', { ...TWELVE, spareTeeth: '64' })).says).toMatch(/^The old gaps stay/);
    expect((await asked('spare-test', { ...TWELVE, spareTeeth: '65' })).says).toMatch(/^Only just cleans up\./);
  });

  it('puts a ring on the middle of the 48', async () => {
    const ring = await asked('ring-and-hub', { ...TWELVE, spareTeeth: '48', ring: 'steel' });
    expect([ring.read('Old root, worked out'), ring.read('Turn the hub to'), ring.read('New outside')]).toEqual([
      '3.8072',
      '3.7500',
      '5.1667',
    ]);
    expect([ring.read('New root'), ring.read('Ring under the teeth, in whole depths')]).toEqual(['4.8072', '2.94']);
    expect([ring.read('Allowance'), ring.read('Ring bore'), ring.read('Room for dropping')]).toEqual(['0.00375', '3.7463', '0.00375']);
    expect([ring.read('Ring warmer than the hub by'), ring.read('Oven')]).toEqual(['317', '387']);
    expect(ring.body).toContain('176 °C of rise');
    expect(ring.body).toContain('197 °C');
    expect(ring.read('Hoop stress in the ring')).toBe('23.0');
    expect(ring.says).toMatch(/^Ring and hub\./);
  });

  it('asks half the allowance of iron, and none of zinc', async () => {
    const iron = await asked('shrink-fit', {
      hub: '3.7500',
      ringOutside: '4.8072',
      hubBore: '1.25',
      ring: 'cast iron',
      hubMaterial: 'steel',
    });
    expect(iron.read('Allowance')).toBe('0.00188');
    const zinc = await visit(shop, `/sums/shrink-fit?hub=3.75&ringOutside=4.8072&ring=zinc&hubMaterial=steel`);
    expect(zinc.statusCode).toBe(422);
    expect(zinc.body).toContain('Zinc and phenolic take no heat');
  });

  it('cuts the teeth: depth, span and indexing', async () => {
    const blank = await asked('gear-blank', { teeth: '60', pitch: '12 DP', system: 'full-14.5' });
    expect([blank.read('Whole depth'), blank.read('Root diameter')]).toEqual(['0.1798', '4.8072']);
    const span = await asked('span', { teeth: '60', pitch: '12 DP', system: 'full-14.5' });
    expect([span.read('Span over 5 teeth'), span.read('Span over 6 teeth')]).toEqual(['1.1674', '1.4209']);
    const index = await asked('plain-indexing', { divisions: '60', ...HEAD });
    const serves = index.tables.find(({ title }) => title === 'Circles that serve');
    expect(serves?.rows.map((row) => row[3])).toEqual([
      '10 spaces on 15',
      '12 spaces on 18',
      '14 spaces on 21',
      '18 spaces on 27',
      '22 spaces on 33',
      '26 spaces on 39',
    ]);
  });
});

describe('the division is prime: the plain part', () => {
  const BLANK = { teeth: '71', pitch: '16 DP', system: 'full-14.5' };
  it('says that no circle serves, and gives no near value', async () => {
    const index = await asked('plain-indexing', { divisions: '71', ...HEAD });
    expect(index.read('Crank for one division')).toBe('none');
    expect(index.says).toMatch(/No circle on these plates divides 71\..*71 is prime/);
    expect((await asked('plain-indexing', { divisions: '72', ...HEAD })).tables[0]?.rows.map((row) => row[3])).toEqual([
      '10 spaces on 18',
      '15 spaces on 27',
    ]);
  });
  it('gives blank, depth and span', async () => {
    const blank = await asked('gear-blank', BLANK);
    expect([blank.read('Outside diameter'), blank.read('Whole depth')]).toEqual(['4.5625', '0.1348']);
    expect((await asked('span', BLANK)).read('Span over 6 teeth')).toBe('1.0693');
    expect((await asked('cutter-choice', { ...BLANK, cutters: '', convention: 'low end' })).read('Cutter')).toMatch(/^No\. 2, 16 DP/);
  });
});

describe('the cutter number is not owned', () => {
  const GEAR = { teeth: '35', ...EIGHT };
  const CUTTERS = '8 DP 14.5 No.2 55-134; 8 DP 14.5 No.4 26-34; 8 DP 20 No.3 35-54; 10 DP 14.5 No.3 35-54';

  it('borrows first, runs a No. 4 in a pinch, refuses the rest', async () => {
    const choice = await asked('cutter-choice', { ...GEAR, cutters: CUTTERS, convention: 'low end' });
    expect(choice.read('Cutter')).toBe('No. 3, 8 DP, 14½°, 35 to 54 teeth');
    const todo = choice.tables.find(({ title }) => title === 'What to do, best first')?.rows ?? [];
    expect(todo.map((row) => row[0])).toEqual(['borrow', 'borrow', 'in a pinch']);
    expect(todo[0]?.[2]).toMatch(/Borrow a No\. 3 /);
    expect(todo[1]?.[2]).toMatch(/Borrow a No\. 3½/);
    const drawer = choice.tables.find(({ title }) => title === 'Cutters in the drawer')?.rows ?? [];
    const verdict = (name: string): string => drawer.find((row) => row[0]?.startsWith(name))?.at(-1) ?? '';
    expect(verdict('8 DP 14.5 No.4')).toMatch(/Tips a little thin: noisy, runs/);
    expect(verdict('8 DP 14.5 No.2')).toMatch(/^Refused\./);
    expect(verdict('8 DP 20 No.3')).toMatch(/^Refused\..*pressure angle/);
    expect(verdict('10 DP')).toMatch(/^Refused\..*pitch/);
    expect(choice.body).toContain('Sources differ on the count that a number is right for');
    expect(choice.body).toMatch(/With 8 DP 14\.5 No\.4 26-34 measure over 3: at the right depth the span over 4 reads −0\.0018 in off/);
  });

  it.each([
    ['26', '', '0.0075', '0.0028', '0.0003'],
    ['29', '', '0.0044', '0.0017', '0.0002'],
    ['30', '', '0.0036', '0.0013', '0.0001'],
    ['35', '', '0.0000', '0.0000', '0.0000'],
    ['55', '', '−0.0077', '−0.0028', '−0.0003'],
    ['68', '', '−0.0102', '−0.0038', '−0.0003'],
    ['35', '20', '0.0122', '0.0065', '0.0002'],
  ])('a form for %s (angle %s) is off by so much', async (count, cutterAngle, tip, half, pitchLine) => {
    const form = await asked('form-error', { ...GEAR, count, cutterAngle });
    const read = ['Error of form at the tips, sideways', 'Error of form half way to the pitch line', 'Error of form at the pitch line'].map(
      form.read,
    );
    expect(read).toEqual([tip, half, pitchLine]);
    if (count === '26') expect(form.read('Error of form square to the flank at the tip corner')).toBe('0.0060');
  });

  it('gives blank, depth, crank and span', async () => {
    const blank = await asked('gear-blank', GEAR);
    expect([blank.read('Outside diameter'), blank.read('Whole depth')]).toEqual(['4.6250', '0.2696']);
    const index = await asked('plain-indexing', { divisions: '35', ...HEAD });
    expect(index.tables[0]?.rows.map((row) => row[3])).toEqual(['1 turn + 3 spaces on 21', '1 turn + 7 spaces on 49']);
    const span = await asked('span', GEAR);
    expect([span.read('Span over 3 teeth'), span.read('Span over 4 teeth')]).toEqual(['0.9740', '1.3542']);
  });
});

describe('facts of the trade: common practice, no source', () => {
  it.each([
    ['20', '2.2000', 'No. 6'],
    ['24', '2.6000', 'No. 5'],
    ['26', '2.8000', 'No. 4'],
    ['29', '3.1000', 'No. 4'],
  ])('10 DP, %s teeth: outside %s', async (teeth, outside, cutter) => {
    const given = { teeth, pitch: '10 DP', system: 'full-14.5' };
    expect((await asked('gear-blank', given)).read('Outside diameter')).toBe(outside);
    expect((await asked('cutter-choice', { ...given, cutters: '', convention: 'low end' })).read('Cutter').startsWith(cutter)).toBe(true);
  });

  it('a 26 is enough for 20, a 29 only just for 24', async () => {
    const test = async (teeth: string, spareTeeth: string) =>
      (await asked('spare-test', { ...SPARE, pitch: '10 DP', teeth, spareTeeth })).says;
    expect(await test('20', '26')).toMatch(/^Cleans up/);
    expect(await test('24', '29')).toMatch(/^Only just cleans up/);
  });

  it('a difference of 0.040 asks for a move of 0.020', async () => {
    const jaws = { jaw1: '0.040', jaw2: '0', jaw3: '0.000', jaw4: '0' };
    expect((await asked('four-jaw-truing', jaws)).read('Move, jaws 1 and 3')).toBe('0.0200');
  });
});
