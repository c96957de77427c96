import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figuresByLabel, tablesOn } from './read-page.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

type Json = {
  readonly says?: string;
  readonly figures: Readonly<Record<string, { readonly name: string; readonly printed: string }>>;
  readonly tables: readonly { readonly title: string; readonly rows: readonly (readonly (string | { readonly printed: string })[])[] }[];
};

/** What a sum prints, read twice: off the page by label, and from the .json; both must agree. */
async function asked(path: string, given: Readonly<Record<string, string>>) {
  const query = new URLSearchParams(given).toString();
  const [page, json] = [await visit(shop, `/sums/${path}?${query}`), await visit(shop, `/sums/${path}.json?${query}`)];
  expect([page.statusCode, json.statusCode], page.body.match(/class="problem[\s\S]*?<\/p>/)?.[0]).toEqual([200, 200]);
  const [figures, answer] = [figuresByLabel(page.body), json.json() as Json];
  const printed = new Map(Object.values(answer.figures).map((figure) => [figure.name, figure.printed]));
  const read = (label: string): string => {
    const shown = figures.get(label);
    expect(shown, `${label} among ${[...figures.keys()].join('; ')}`).toBeDefined();
    expect(printed.get(label)?.replace(/\s+/g, ' '), label).toBe(shown?.text);
    return shown?.text ?? '';
  };
  const says = answer.says ?? '';
  expect(page.body).toContain(says.replaceAll("'", '&#39;').replaceAll('"', '&quot;'));
  return { read, says, tables: tablesOn(page.body), body: page.body };
}

const EIGHT = { pitch: '8 DP', system: 'full-14.5' };
const PLATES = '15-16-17-18-19-20; 21-23-27-29-31-33; 37-39-41-43-47-49';
const BELONGS = '19, 22, 25, 28, 31, 34, 37, 41, 46, 52';
const DRAWER = '19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52';
const SPLINES = '6 splines 1.250 x 1.0625 x 0.3125';
const SPARE = {
  ...EIGHT,
  bore: SPLINES,
  face: '0.875',
  spareBore: SPLINES,
  spareFace: '0.875',
  by: 'none',
  body: 'solid',
  material: 'steel',
  hardness: 'file bites',
};
const HEAD = { turns: '40', plates: PLATES };

// Expected numbers: derived by hand from the formulas of the trade; ratios counted by brute force in the tests of trains.
describe('a drawer of wheels, two to make, one set-up', () => {
  it('says what is missing and what is spare', async () => {
    const drawer = await asked('missing-and-spare', { belongs: BELONGS, drawer: DRAWER });
    expect([drawer.read('Missing'), drawer.read('Spare')]).toEqual(['22, 28', '19, 25, 31, 34, 46']);
    expect([drawer.read('Wheels missing'), drawer.read('Wheels spare'), drawer.read('Places filled')]).toEqual(['2', '5', '8']);
  });

  it('says what the missing wheels cost, in both counts, and which comes first', async () => {
    const cost = await asked('missing-wheels', { belongs: BELONGS, drawer: DRAWER, recuts: '22 from 31, 28 from 34', ready: '28' });
    expect(cost.read('Ratios of the complete set, one wheel of each number')).toBe('1350');
    expect(cost.read('Ratios today, one wheel of each number')).toBe('476');
    expect(cost.read('Ratios lost today, one wheel of each number')).toBe('874');
    expect(cost.read('Ratios today, the wheels that really lie there')).toBe('707');
    expect(cost.read('Ratios with all made, the wheels that really lie there')).toBe('1573');
    expect(cost.says).toMatch(/tie at 828; the 28 first/);
    expect(cost.tables[0]?.rows.map((row) => [row[0], row[2]])).toEqual([
      ['22', '828'],
      ['28', '828'],
    ]);
    expect(cost.body).toContain('476 kept');
    expect(cost.body).toContain('874 lost');
  });

  it('chooses 31 for the 22 and 34 for the 28', async () => {
    const choice = await asked('which-spare', { belongs: BELONGS, drawer: DRAWER, ...EIGHT });
    expect(choice.says).toBe('31 becomes 22; 34 becomes 28.');
    expect(choice.read('Ratios then, one wheel of each number')).toBe('1350');
  });

  it.each([
    ['22', '31', '4.1250', '3.5858', '3.0000', '0.5625', '2.4608', '0.6054'],
    ['28', '34', '4.5000', '3.9608', '3.7500', '0.3750', '3.2108', '0.9804'],
  ])('%s teeth from a %s: what to turn off and what is left', async (teeth, spareTeeth, old, root, outside, off, newRoot, wall) => {
    const test = await asked('spare-test', { ...SPARE, teeth, spareTeeth });
    expect(test.says).toMatch(/^Cleans up\./);
    expect([test.read('Old outside'), test.read('Old root, worked out'), test.read('New outside')]).toEqual([old, root, outside]);
    expect([test.read('Turn off a side'), test.read('of it through the old teeth'), test.read('Whole depth')]).toEqual([
      off,
      '0.2696',
      '0.2696',
    ]);
    expect(test.read('New root')).toBe(newRoot);
    const [label] = [...figuresByLabel(test.body).keys()].filter((name) => name.startsWith('Wall from new root'));
    expect(test.read(label ?? '')).toBe(wall);
  });

  it('refuses the 25 and the recessed 46, each with its reason', async () => {
    const small = await asked('spare-test', { ...SPARE, teeth: '22', spareTeeth: '25' });
    expect(small.says).toMatch(/^The old gaps stay\..*0\.0821 in deep/);
    expect(small.read('Old gaps stay, deep')).toBe('0.0821');
    for (const teeth of ['22', '28']) {
      const hollow = await asked('spare-test', { ...SPARE, teeth, spareTeeth: '46', body: 'hollow', recesses: 'both 1.9 to 4.6' });
      expect(hollow.says).toMatch(/^Will not do\..*the recess between 1\.9000 in and 4\.6000 in on both sides/);
    }
    expect((await asked('spare-test', { ...SPARE, teeth: '28', spareTeeth: '31' })).says).toMatch(/^The old gaps stay/);
  });

  it('gives span, its neighbour, and what is still to feed', async () => {
    const [two, three] = [await asked('span', { teeth: '22', ...EIGHT }), await asked('span', { teeth: '28', ...EIGHT })];
    expect([two.read('Span over 2 teeth'), two.read('Span over 3 teeth')]).toEqual(['0.5850', '0.9652']);
    expect(three.read('Span over 3 teeth')).toBe('0.9693');
    const feeds = [
      ['22', '2', '0.5900', '0.5850', '0.0089'],
      ['22', '3', '0.9702', '0.9652', '0.0060'],
      ['28', '3', '0.9743', '0.9693', '0.0076'],
    ] as const;
    for (const [teeth, k, spanRead, spanWanted, feed] of feeds)
      expect((await asked('still-to-feed', { teeth, ...EIGHT, k, spanRead, spanWanted, made: 'form cutter' })).read('Still to feed')).toBe(
        feed,
      );
  });

  it('divides both on one plate and counts spaces, not holes', async () => {
    const by22 = await asked('plain-indexing', { divisions: '22', ...HEAD });
    expect([by22.read('Crank for one division'), by22.read('Holes the sector shows')]).toEqual(['1 turn + 27 spaces on 33', '28']);
    expect(by22.read('Proof: turns that all moves make')).toBe('40');
    const by28 = await asked('plain-indexing', { divisions: '28', ...HEAD });
    expect(by28.read('Crank for one division')).toBe('1 turn + 9 spaces on 21');
    const both = await asked('joint-circles', { counts: '22, 28', ...HEAD });
    expect(both.says).toBe('All stay on one plate. Plate 2: 22 on the 33 circle, 28 on the 21 circle.');
    expect(both.read('Plates to put on')).toBe('1');
  });

  it('names the cutter that is lacking and the one that is owned', async () => {
    const owned = { cutters: '8 DP 14.5 No.4 26-34', convention: 'low end', ...EIGHT };
    expect((await asked('cutter-choice', { teeth: '28', ...owned })).says).toMatch(/^Use 8 DP 14\.5 No\.4/);
    const lacking = await asked('cutter-choice', { teeth: '22', ...owned });
    expect(lacking.read('Cutter')).toBe('No. 5, 8 DP, 14½°, 21 to 25 teeth');
    expect(lacking.says).toMatch(/^Borrow a No\. 5/);
    const lent = await asked('cutter-choice', { teeth: '22', ...owned, cutters: '8 DP 14.5 No.5 21-25 hole 7/8', arbors: '1' });
    expect(lent.body).toContain('Hole 7/8 in: needs a 7/8 in arbor; owned: 1 in.');
  });

  it('turns the blank through the teeth, solid, and in two last cuts of 0.015', async () => {
    const plan = await asked('turning-plan', {
      oldOutside: '4.1250',
      oldRoot: '3.5858',
      newOutside: '3.0000',
      reads: 'travel',
      division: '0.001',
      perTurn: '100',
    });
    expect([plan.read('to turn off, a side'), plan.read('of it over the gaps of the old teeth')]).toEqual(['0.5625', '0.2696']);
    expect([plan.read('rough to, then measure'), plan.read('each of the two last cuts, off the diameter')]).toEqual(['3.0300', '0.0150']);
  });
});

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
    expect((await asked('four-jaw-truing', jaws)).read('move, jaws 1 and 3')).toBe('0.0200');
  });
});
