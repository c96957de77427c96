import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { ask } from './ask.ts';
import { HEAD } from './story-bench.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());
const asked = (path: string, given: Readonly<Record<string, string>>) => ask(shop, path, given);

const BORE = { splines: '6', outside: '1.251', inside: '1.063', width: '0.313' };
const SHAFT = { ...BORE, locates: 'outside and sides', outsideRoom: '0.001', sides: '0.0005', cutter: '0.1875', circle: '33', ...HEAD };

// Expected numbers: derived by simulating the cuts on a round bar.
describe('the missing stub shaft', () => {
  it('is found from three readings: straight-sided, slides without load', async () => {
    const found = await asked('find-a-spline', { part: 'bore', ...BORE, sides: 'parallel' });
    expect(found.says).toBe('Straight-sided: inch, 6 splines, slides without load, 1.250.');
    expect([found.read('Inside, of the outside'), found.read('Width, of the outside')]).toEqual(['0.850', '0.250']);
    expect([found.read('Outside, of the standard'), found.read('Inside, of the standard'), found.read('Width, of the standard')]).toEqual([
      '1.2500',
      '1.0625',
      '0.3125',
    ]);
    expect([found.read('Outside misses it by'), found.read('Inside misses it by'), found.read('Width misses it by')]).toEqual([
      '0.0010',
      '0.0005',
      '0.0005',
    ]);
    expect(found.body).toContain('an involute gear or spline cutter would spoil it');
    const sizes = await asked('straight-spline', { standard: 'slides without load', splines: '6', outside: '1.250' });
    expect([sizes.read('Small diameter'), sizes.read('Width of a key'), sizes.read('Height of a key')]).toEqual([
      '1.0625',
      '0.3125',
      '0.0938',
    ]);
  });

  it('is milled with a cutter 0.1875 wide, and enters', async () => {
    const mill = await asked('mill-splined-shaft', { ...SHAFT, bottom: '0.005' });
    expect([mill.read('Shaft outside'), mill.read('Width of a key'), mill.read('Shaft small diameter')]).toEqual([
      '1.2500',
      '0.3125',
      '1.0580',
    ]);
    expect(mill.read('First sides: cutter’s middle off centre')).toBe('0.2500');
    expect(mill.read('First sides: near face off centre')).toBe('0.1563');
    expect([mill.read('Sides: depth from touching'), mill.read('Bottoms: depth from touching')]).toEqual(['0.1196', '0.1044']);
    expect(mill.read('Each of two cross moves, the same way')).toBe('0.2500');
    expect(mill.read('Crank from key to key')).toBe('6 turns + 22 spaces on 33');
    expect(mill.read('Bottoms: crank from the key, first cut')).toBe('3 turns + 2 spaces on 33');
    expect(mill.read('Bottoms: crank from the key, last cut')).toBe('3 turns + 20 spaces on 33');
    expect(mill.read('Highest metal left, across')).toBe('1.0590');
    expect(mill.says).toContain('the shaft enters');
    expect(mill.body).toContain('Trial piece first');
    expect(mill.body).toContain('Burr edges like razors');
    expect((await asked('mill-splined-shaft', { ...SHAFT, bottom: '0.005', circle: '18' })).read('Crank from key to key')).toBe(
      '6 turns + 12 spaces on 18',
    );
  });

  it('for 1.0625 exactly, says what one cut a space would do, and the cutter that it needs', async () => {
    const mill = await asked('mill-splined-shaft', { ...SHAFT, bottom: '0.0005' });
    expect([mill.read('Sides: depth from touching'), mill.read('Bottoms: depth from touching')]).toEqual(['0.1172', '0.1021']);
    expect(mill.read('Bottoms: crank from the key, first cut')).toBe('3 turns + 1 space on 33');
    expect(mill.read('Bottoms: crank from the key, last cut')).toBe('3 turns + 21 spaces on 33');
    expect(mill.read('One cut a space, (D − d)/2 deep: its edges stand out')).toBe('0.0082');
    expect(mill.read('One cut a space: ridges beside it stand out')).toBe('0.0091');
    expect(mill.read('Would a shaft with one narrow cut a space enter')).toMatch(/^no: 1\.0807 in across in a bore of 1\.0630 in/);
    expect([mill.read('Cutter for one cut a space, or a little less'), mill.read('Depth of that one cut from touching')]).toEqual([
      '0.2371',
      '0.1071',
    ]);
  });

  it('refuses in words: a cutter too wide, too narrow, a circle that turns no half space, keys that meet', async () => {
    const refused = async (more: Readonly<Record<string, string>>): Promise<string> => {
      const answer = await visit(shop, `/sums/mill-splined-shaft?${new URLSearchParams({ ...SHAFT, bottom: '0.005', ...more })}`);
      expect(answer.statusCode).toBe(422);
      return answer.body;
    };
    expect(await refused({ cutter: '0.25' })).toContain('would cut into a key');
    expect(await refused({ cutter: '0.02' })).toContain('too narrow');
    expect(await refused({ circle: '16' })).toContain('does not turn half a space');
    expect(await refused({ width: '0.6' })).toContain('they meet at');
    expect(await refused({ outside: '1.0' })).toContain('their diameter is the larger');
  });
});
