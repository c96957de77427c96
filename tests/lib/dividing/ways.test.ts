import { describe, expect, it } from 'vitest';
import { ratioOfTrain } from '../../../lib/dividing/change-gears.ts';
import { MOST_PLATE_TURNS } from '../../../lib/dividing/differential.ts';
import { changesFrom, type DividingTools, isProved, proofOf, type Way, waysToDivide } from '../../../lib/dividing/ways.ts';
import { whatWouldServe } from '../../../lib/dividing/what-would-serve.ts';
import type { Plate } from '../../../lib/tooling/tooling.ts';
import { ODD_PLATE, plate, THREE_PLATES, TWO_SIDED } from './plates.ts';
import { marksGeared, marksOf } from './walk.ts';

const USUAL_GEARS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const STORY_GEARS = [28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const HEADS = [40, 60, 90];
const SETS: readonly (readonly [string, readonly Plate[]])[] = [
  ['three plates', THREE_PLATES],
  ['two-sided plate', TWO_SIDED],
  ['odd plate', ODD_PLATE],
];

const tools = (turns: number, plates: readonly Plate[], more: Partial<DividingTools> = {}): DividingTools => ({
  turns,
  plates,
  direct: [],
  backPin: false,
  reached: null,
  gears: [],
  ...more,
});

const mostOnce = (used: readonly number[], owned: readonly number[]): boolean =>
  used.every((teeth) => used.filter((one) => one === teeth).length <= owned.filter((one) => one === teeth).length);

function checkWay(N: number, { turns, plates, gears, reached }: DividingTools, way: Way): void {
  const name = `${N} at ${turns}: ${JSON.stringify(way)}`;
  expect(marksOf(turns, way), name).toBe(N);
  expect(isProved(N, turns, way), name).toBe(true);
  if (way.method === 'direct') return;
  const side = plates.find(({ id }) => id === way.plate.id)?.sides[way.side] ?? [];
  const circles = way.method === 'compound' ? [way.move.frontCircle, way.move.backCircle] : [way.move.circle];
  expect(
    circles.every((circle) => side.includes(circle)),
    name,
  ).toBe(true);
  if (way.method === 'compound') {
    expect(circles[0], name).not.toBe(circles[1]);
    expect(reached === null || reached.includes(way.move.backCircle), name).toBe(true);
  }
  if (way.method === 'differential') expect(mostOnce([...way.train.drivers, ...way.train.driven], gears), name).toBe(true);
}

/** Every gear ratio that the drawer can give, by trying every choice of two and of four gears. */
function everyRatio(gears: readonly number[]): readonly (readonly [number, number])[] {
  const found = new Map<string, readonly [number, number]>();
  const put = (num: number, den: number) => {
    let [x, y] = [num, den];
    while (y !== 0) [x, y] = [y, x % y];
    found.set(`${num / x}/${den / x}`, [num / x, den / x]);
  };
  gears.forEach((a, i) => {
    gears.forEach((b, j) => {
      if (i === j) return;
      put(a, b);
      gears.forEach((c, k) => {
        if (k === i || k === j) return;
        gears.forEach((d, l) => {
          if (l !== i && l !== j && l !== k) put(a * c, b * d);
        });
      });
    });
  });
  return [...found.values()];
}

const circlesOf = (plates: readonly Plate[]): readonly number[] => plates.flatMap(({ sides }) => sides.flat());

const someCircle = (R: number, N: number, plates: readonly Plate[]): boolean =>
  circlesOf(plates).some((circle) => Array.from({ length: circle * R }, (_, h) => h + 1).some((h) => h * N === R * circle));

function somePair(R: number, N: number, plates: readonly Plate[]): boolean {
  for (const { sides } of plates)
    for (const circles of sides)
      for (const a of circles)
        for (const b of circles)
          if (a !== b)
            for (let back = 1 - b; back < b; back++) {
              const front = (R / N - back / b) * a;
              for (const x of [Math.floor(front), Math.ceil(front)]) if (x > 0 && N * (x * b + back * a) === R * a * b) return true;
            }
  return false;
}

/** Goes from each gear ratio, either way, to the move it would need, and looks whether any circle has it. */
const someTrain = (R: number, N: number, plates: readonly Plate[], ratios: readonly (readonly [number, number])[]): boolean =>
  ratios.some(
    ([num, den]) =>
      num <= MOST_PLATE_TURNS * den &&
      [1, -1].some((way) => circlesOf(plates).some((circle) => R * den > way * num && (circle * (R * den - way * num)) % (den * N) === 0)),
  );

describe.each(SETS)('%s', (_name, plates) => {
  it.each(HEADS)('head of %i, back pin and gears: every way for 2 to 400, walked hole by hole, makes the count', (R) => {
    const own = tools(R, plates, { backPin: true, gears: STORY_GEARS, direct: [24] });
    for (let N = 2; N <= 400; N++) for (const way of waysToDivide(N, own)) checkWay(N, own, way);
  });

  it.each(HEADS)('head of %i: every differential way beside the plain ones, walked', (R) => {
    const own = tools(R, plates, { gears: USUAL_GEARS });
    for (let N = 40; N <= 400; N += 7) for (const way of waysToDivide(N, own, true)) checkWay(N, own, way);
  });

  it.each(HEADS)('head of %i: what is refused, exhaustive search refuses too, and the other way about', (R) => {
    const few = [24, 32, 40, 100];
    const ratios = everyRatio(few);
    const refusals = { plain: 0, compound: 0, geared: 0 };
    for (let N = 2; N <= 400; N++) {
      const name = `${N} at ${R}`;
      const circle = someCircle(R, N, plates);
      expect(waysToDivide(N, tools(R, plates)).length > 0, name).toBe(circle);
      if (circle) continue;
      refusals.plain++;
      const pinned = waysToDivide(N, tools(R, plates, { backPin: true })).length > 0;
      expect(pinned, name).toBe(somePair(R, N, plates));
      if (!pinned) refusals.compound++;
      const geared = waysToDivide(N, tools(R, plates, { gears: few })).length > 0;
      expect(geared, name).toBe(someTrain(R, N, plates, ratios));
      if (!geared) refusals.geared++;
    }
    expect(Object.values(refusals).every((many) => many > 10)).toBe(true);
  });

  it('all trains of two and four gears from a drawer with duplicates are found, the whole set', () => {
    const gears = [24, 24, 30, 40, 60];
    const ratios = everyRatio(gears);
    for (const N of [51, 71, 127, 209, 263]) {
      const ways = waysToDivide(N, tools(40, plates, { gears }), true).filter((way) => way.method === 'differential');
      const found = new Set(ways.map((way) => ratioOfTrain(way.train).join('/')));
      const simple = gears.flatMap((a, i) => gears.flatMap((b, j) => (i === j ? [] : [[a, b] as const])));
      const serves = ([num, den]: readonly [number, number]) => someTrain(40, N, plates, [[num, den]]);
      const some = simple.filter(serves);
      const wanted = some.length > 0 ? some : ratios.filter(serves);
      const reduced = (pair: readonly [number, number]) => ratioOfTrain({ drivers: [pair[0]], driven: [pair[1]] }).join('/');
      expect([...found].sort(), `${N}`).toEqual([...new Set(wanted.map(reduced))].sort());
    }
  });
});

describe('the prime count of 71', () => {
  const own = tools(40, THREE_PLATES, { gears: STORY_GEARS });
  const ways = waysToDivide(71, own);

  it('has six simple settings, the first set for 72 with 40 and 72', () => {
    expect(ways).toHaveLength(6);
    expect(ways[0]).toMatchObject({
      method: 'differential',
      move: { spaces: 10, circle: 18 },
      plateTurns: [5, 9],
      setFor: [72, 1],
      train: { drivers: [40], driven: [72] },
    });
    expect(
      ways.some((way) => way.method === 'differential' && way.move.circle === 21 && way.setFor[0] === 70 && way.train.drivers[0] === 32),
    ).toBe(true);
  });

  it('its proof: 39 4/9 turns against the plate, 5/9 of the plate, together 40', () => {
    expect(proofOf(71, ways[0] as Way)).toEqual({ crank: [355, 9], plate: [5, 9], together: [40, 1] });
  });

  it('the plate turning the wrong way makes 73, locked 72; set for 70 the wrong way 69 (walked)', () => {
    const gears = { drivers: [40], driven: [72] };
    expect([1, -1, 0].map((plateGoes) => marksGeared(40, 10, 18, gears, plateGoes))).toEqual([71, 73, 72]);
    expect(marksGeared(40, 12, 21, { drivers: [32], driven: [56] }, 1)).toBe(69);
  });

  it('needs a circle of 71 or 142, and without gears is refused', () => {
    expect(waysToDivide(71, tools(40, THREE_PLATES))).toEqual([]);
    expect(whatWouldServe(40, 71, THREE_PLATES, []).circles).toEqual([71, 142]);
  });

  it('one gear more is enough where it says so (walked)', () => {
    for (const N of [71, 113, 127, 251]) {
      const { gears } = whatWouldServe(40, N, THREE_PLATES, [40]);
      expect(gears.length, `${N}`).toBeGreaterThan(0);
      for (const { teeth, with: other } of gears) {
        const made = waysToDivide(N, tools(40, THREE_PLATES, { gears: [teeth, other] }));
        expect(made.length, `${N} with ${teeth} and ${other}`).toBeGreaterThan(0);
        for (const way of made) expect(marksOf(40, way)).toBe(N);
      }
    }
  });
});

describe('57 without gears', () => {
  it('has eight compound ways, none when the back pin reaches no circle of the pair', () => {
    const ways = waysToDivide(57, tools(40, THREE_PLATES, { backPin: true }));
    expect(ways).toHaveLength(8);
    expect(ways[0]).toMatchObject({ method: 'compound', move: { front: 5, frontCircle: 15, back: 7, backCircle: 19 } });
    expect(waysToDivide(57, tools(40, THREE_PLATES, { backPin: true, reached: [20, 33, 49] }))).toEqual([]);
    expect(waysToDivide(57, tools(40, THREE_PLATES))).toEqual([]);
  });
  it('both circles are on one side: the pair split over two sides is none', () => {
    expect(waysToDivide(57, tools(40, [plate(1, 'split', [15, 16], [19, 20])], { backPin: true }))).toEqual([]);
  });
});

describe('fewest changes from what is on the head', () => {
  it('stays on the mounted plate, and on its circle', () => {
    const mounted = { plateId: 2, side: 0, circle: 33 };
    const [first] = waysToDivide(60, tools(40, THREE_PLATES, { mounted }));
    expect(first).toMatchObject({ move: { circle: 33, spaces: 22 } });
    expect(changesFrom(mounted, first as Way)).toBe(0);
    expect(waysToDivide(60, tools(40, THREE_PLATES))[0]).toMatchObject({ move: { circle: 15 } });
  });
  it('leaves gears on that serve again', () => {
    const mounted = { plateId: 2, side: 0, circle: 21, gears: [56, 32] };
    expect(waysToDivide(71, tools(40, THREE_PLATES, { gears: STORY_GEARS, mounted }))[0]).toMatchObject({
      train: { drivers: [32], driven: [56] },
    });
  });
  it('an easier way on another plate stands before a harder one on this', () => {
    expect(
      waysToDivide(22, tools(40, THREE_PLATES, { gears: STORY_GEARS, direct: [24, 22], mounted: { plateId: 1, side: 0 } }), true)[0],
    ).toMatchObject({ method: 'direct' });
  });
});

it('all methods for one count in under 20 ms', () => {
  const own = tools(40, THREE_PLATES, { backPin: true, gears: USUAL_GEARS, direct: [24] });
  for (let warm = 0; warm < 20; warm++) waysToDivide(71 + warm, own);
  const times = [51, 71, 127, 263, 397].map((N) => {
    const before = performance.now();
    waysToDivide(N, own);
    return performance.now() - before;
  });
  expect(times.sort((a, b) => a - b)[2]).toBeLessThan(20);
});
