import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { type FirstStory, firstStory } from './first-story.ts';
import { readQr } from './read-qr.ts';
import { differsOn, linesOn, plain, qrsOn, teethOn } from './read-sheet.ts';

let shop: TestShop;
let story: FirstStory;

beforeAll(async () => {
  shop = await shopForTests({ config: { printedAddress: 'http://shop.lan:4870' } });
  story = await firstStory(shop.shops.own);
});
afterAll(() => shop.close());

const indexSheet = async (teeth: 22 | 28): Promise<string> =>
  (await visit(shop, `/operations/${(await story.operation(teeth, 'nick')).id}/index-sheet`)).body;

/** Walks the pin round the circle, one hole at a time: where it stands and how often it came round, before each move. */
function walked(moves: number, turns: number, spaces: number, circle: number): { hole: number; turns: number }[] {
  const stands = [{ hole: 0, turns: 0 }];
  let [hole, rounds] = [0, 0];
  for (let move = 0; move < moves; move++) {
    for (let step = 0; step < turns * circle + spaces; step++) {
      hole += 1;
      if (hole === circle) [hole, rounds] = [0, rounds + 1];
    }
    stands.push({ hole, turns: rounds });
  }
  return stands;
}

// derived: 40/22 = 1 turn and 27 of 33; 40/28 = 1 turn and 9 of 21
describe.each([
  [22, 27, 33],
  [28, 9, 21],
] as const)('the index sheet of the %i', (teeth, spaces, circle) => {
  test('every line is where the pin comes to, walked hole by hole, and the last is back at the start after 40 turns', async () => {
    const lines = teethOn(await indexSheet(teeth));
    const pin = walked(teeth, 1, spaces, circle);
    expect(lines).toHaveLength(teeth + 1);
    expect(lines.map(({ hole, turns }) => ({ hole, turns }))).toEqual(pin);
    expect(pin[teeth]).toEqual({ hole: 0, turns: 40 });
    expect(lines.map(({ tooth }) => tooth)).toEqual([...Array.from({ length: teeth }, (_, at) => String(at + 1)), '1 again']);
  });

  test('a box for each nick and one more, for each round of roughing, and for the finish', async () => {
    const boxes = teethOn(await indexSheet(teeth)).flatMap((line) => line.boxes);
    const count = (pass: string): number => boxes.filter((box) => box === pass).length;
    expect([count('nick'), count('rough'), count('finish')]).toEqual([teeth + 1, 2 * teeth, teeth]);
  });

  test('spaces and holes both, the proof, the plate and the circle', async () => {
    const html = await indexSheet(teeth);
    const facts = linesOn(html, 'fact');
    expect(facts.get('sector')).toEqual({ label: 'Sector', text: `${spaces} spaces = ${spaces + 1} holes, counting the pin’s` });
    expect(facts.get('crank')?.text).toBe(`1 turn + ${spaces} spaces on ${circle}`);
    expect(plain(html)).toContain(`${teeth} moves of 1 turn + ${spaces} spaces on ${circle} make 40 turns; the head takes 40.`);
    expect(html).toContain(`<title>Circle of ${circle} holes</title>`);
    expect(plain(html)).toContain('Plate 2');
    expect(qrsOn(html).map(readQr)).toEqual([`http://shop.lan:4870/parts/${story.parts[teeth]}`]);
  });
});

test('many teeth go on overleaf with their heads repeated, none left out', async () => {
  const own = await shopForTests();
  const one = await firstStory(own.shops.own);
  const { gear_id } = await own.shops.own.selectFrom('part').select('gear_id').where('id', '=', one.parts[28]).executeTakeFirstOrThrow();
  await own.shops.own
    .updateTable('gear')
    .set({ teeth: 180 })
    .where('id', '=', gear_id ?? 0)
    .execute();
  const html = (await visit(own, `/operations/${(await one.operation(28, 'nick')).id}/index-sheet`)).body;
  const sides = html.match(/<section class="paper/g)?.length ?? 0;
  expect(sides).toBeGreaterThan(1);
  expect(teethOn(html)).toHaveLength(181);
  expect(html.match(/>Tooth<\/th>/g)?.length).toBe(
    html
      .match(/<div class="index[\s\S]*?<\/div>/g)
      ?.join('')
      .match(/<table>/g)?.length,
  );
  await own.close();
});

describe('the set-up sheet of both', () => {
  const sheet = async (): Promise<string> => {
    const [one, two] = [await story.operation(22, 'rough'), await story.operation(28, 'rough')];
    return (await visit(shop, `/set-ups/sheet?operations=${one.id},${two.id}`)).body;
  };

  test('what is common stands once', async () => {
    const common = linesOn(await sheet(), 'common');
    // derived: the same pitch, so the same depth; one plate for both circles
    expect(common.get('mandrel')?.text).toBe('6-spline bore of 1.2500 in: lacking');
    expect(common.get('head')?.text).toBe('Dividing head');
    expect(common.get('circle')?.text).toBe('Plate 2');
    expect(common.get('touch/depth')).toEqual({ label: 'Depth to dial from touching', text: '0.2706 in' });
    expect(common.has('sector')).toBe(false);
  });

  test('what differs stands side by side', async () => {
    const html = await sheet();
    const differs = differsOn(html);
    expect(differs.get('teeth')).toEqual(['22', '28']);
    expect(differs.get('cutter')).toEqual(['No. 5, 8 DP, 14½°, for 22 teeth: lacking', 'No. 4, 8 DP, 14½°, for 28 teeth']);
    expect(differs.get('circle of')).toEqual(['33 holes', '21 holes']);
    expect(differs.get('sector')).toEqual(['27 spaces = 28 holes, counting the pin’s', '9 spaces = 10 holes, counting the pin’s']);
    expect(differs.get('first-span/span')).toEqual(['over 2 teeth: 0.5850 in', 'over 3 teeth: 0.9693 in']);
    expect(plain(html)).toContain('Cutter changed: set it central again');
  });

  test('then the index table of each', async () => {
    const lines = teethOn(await sheet());
    expect(lines).toHaveLength(23 + 29);
    expect(lines[2]).toMatchObject({ tooth: '3', hole: 21, turns: 3 });
    expect(lines[23 + 2]).toMatchObject({ tooth: '3', hole: 18, turns: 2 });
  });

  test('a set-up at the lathe is compared too, without index tables', async () => {
    const [one, two] = [await story.operation(22, 'solid'), await story.operation(28, 'solid')];
    const html = (await visit(shop, `/set-ups/sheet?operations=${one.id},${two.id}`)).body;
    expect(differsOn(html).get('solid/roughTo')).toEqual(['3.0300 in', '3.7800 in']);
    expect(teethOn(html)).toEqual([]);
  });

  test('operations of different set-ups, none, nonsense and too many are refused in words', async () => {
    const [one, two] = [await story.operation(22, 'rough'), await story.operation(28, 'solid')];
    const asked = async (text: string): Promise<number> => (await visit(shop, `/set-ups/sheet?operations=${text}`)).statusCode;
    expect(await asked(`${one.id},${two.id}`)).toBe(422);
    expect(await asked('')).toBe(404);
    expect(await asked('a,b')).toBe(404);
    expect(await asked('999999')).toBe(404);
    expect(await asked(Array.from({ length: 600 }, (_, at) => at + 1).join(','))).toBe(404);
    expect((await visit(shop, '/set-ups/sheet')).statusCode).toBe(404);
  });
});

test('an index sheet for a part without a circle says what is missing', async () => {
  const own = await shopForTests();
  const one = await firstStory(own.shops.own);
  const nick = await one.operation(22, 'nick');
  await own.shops.own.deleteFrom('figure').where('key', '=', 'crank').execute();
  await own.shops.own.updateTable('tool').set({ gone_on: '2026-03-01' }).where('kind', '=', 'plate').execute();
  const { statusCode, body } = await visit(own, `/operations/${nick.id}/index-sheet`);
  expect(statusCode).toBe(422);
  expect(plain(body)).toContain('has no circle to divide on yet');
  await own.close();
});
