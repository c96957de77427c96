import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop } from '../app-for-tests.ts';
import { ask } from './ask.ts';
import { figuresByLabel } from './read-page.ts';
import { BELONGS, DRAWER, EIGHT, HEAD, SPARE } from './story-bench.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());
const asked = (path: string, given: Readonly<Record<string, string>>) => ask(shop, path, given);

// Expected numbers: derived by hand from the formulas of the trade; ratios counted by brute force in the tests of trains.
describe('a drawer of wheels, two to make, one set-up', () => {
  it('says what is missing and what is spare', async () => {
    const drawer = await asked('missing-and-spare', { belongs: BELONGS, drawer: DRAWER });
    expect([drawer.read('Missing'), drawer.read('Spare')]).toEqual(['22, 28', '19, 25, 31, 34, 46']);
    expect([drawer.read('Wheels missing'), drawer.read('Wheels spare'), drawer.read('Places filled')]).toEqual(['2', '5', '8']);
  });

  it('says what the missing wheels cost, in both counts, and which comes first', async () => {
    const cost = await asked('missing-wheels', { belongs: BELONGS, drawer: DRAWER, recuts: '22 from 31, 28 from 34', ready: '28' });
    expect(cost.read('Ratios of the complete set, one wheel of each number')).toBe('1,350');
    expect(cost.read('Ratios today, one wheel of each number')).toBe('476');
    expect(cost.read('Ratios lost today, one wheel of each number')).toBe('874');
    expect(cost.read('Ratios today, the wheels that really lie there')).toBe('707');
    expect(cost.read('Ratios with all made, the wheels that really lie there')).toBe('1,573');
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
    expect(choice.read('Ratios then, one wheel of each number')).toBe('1,350');
  });

  it.each([
    ['22', '31', '4.1250', '3.5858', '3.0000', '0.5625', '2.4608', '0.6054'],
    ['28', '34', '4.5000', '3.9608', '3.7500', '0.3750', '3.2108', '0.9804'],
  ])('%s teeth from a %s: what to turn off and what is left', async (teeth, spareTeeth, old, root, outside, off, newRoot, wall) => {
    const test = await asked('spare-test', { ...SPARE, teeth, spareTeeth });
    expect(test.says).toMatch(/^Cleans up\./);
    expect([test.read('Old outside'), test.read('Old root, worked out'), test.read('New outside')]).toEqual([old, root, outside]);
    expect([test.read('Turn off a side'), test.read('Of it through the old teeth'), test.read('Whole depth')]).toEqual([
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
    expect([plan.read('To turn off, a side'), plan.read('Of it over the gaps of the old teeth')]).toEqual(['0.5625', '0.2696']);
    expect([plan.read('Rough to, then measure'), plan.read('Each of the two last cuts, off the diameter')]).toEqual(['3.0300', '0.0150']);
  });
});
