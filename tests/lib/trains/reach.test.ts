import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { arrangementsOf, place, shaftsOf } from '../../../lib/trains/arrangements.ts';
import { bestTrains } from '../../../lib/trains/best-trains.ts';
import type { Quadrant } from '../../../lib/trains/quadrant.ts';
import { reachOf } from '../../../lib/trains/reach.ts';
import { slotLines } from '../../../lib/trains/slot-lines.ts';
import { targetOf } from '../../../lib/trains/target.ts';
import { stands } from '../../../lib/trains/train-words.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';

const QUADRANT: Quadrant = {
  between: millimetres(150),
  pivot: 'driven',
  slots: [
    { nearest: millimetres(35), farthest: millimetres(140), angle: degrees(0) },
    { nearest: millimetres(45), farthest: millimetres(120), angle: degrees(50) },
  ],
  swing: [degrees(-80), degrees(60)],
  stud: millimetres(12),
  collar: millimetres(22),
  widest: millimetres(200),
  abreast: 2,
};
const SIZES = { moduleMm: 1.5, opening: inches(0.004) };
const ENDS = { first: 'spindle', last: 'screw' };
const ask = (drawer: readonly number[], turns: 'same' | 'opposite' | 'either' = 'either') => ({
  quadrant: QUADRANT,
  sizes: SIZES,
  ends: ENDS,
  turns,
  drawer,
});

/** Looks at the picture itself, sharing nothing with the search: every mesh as far apart as its wheels, and nothing touching. */
function expectClear(
  train: readonly { driver: number | null; driven: number | null; idler?: boolean }[],
  at: readonly { x: number; y: number }[],
  planes: readonly number[],
): void {
  const far = (i: number, j: number): number => Math.hypot((at[i]?.x ?? 0) - (at[j]?.x ?? 0), (at[i]?.y ?? 0) - (at[j]?.y ?? 0));
  expect(far(0, at.length - 1)).toBeCloseTo(150, 6);
  const inPlane = (shaft: number, plane: number): number | null => {
    if (planes[shaft - 1] === plane && shaft > 0) return train[shaft]?.driven ?? null;
    return planes[shaft] === plane && shaft < at.length - 1 ? (train[shaft]?.driver ?? null) : null;
  };
  for (let i = 0; i + 1 < at.length; i++)
    expect(far(i, i + 1)).toBeCloseTo((((train[i]?.driver ?? 0) + (train[i + 1]?.driven ?? 0)) * 1.5) / 2 + 0.1016, 6);
  for (let i = 0; i < at.length; i++)
    for (let j = 0; j < at.length; j++)
      for (const plane of [0, 1]) {
        const [one, other] = [inPlane(i, plane), inPlane(j, plane)];
        if (i === j || one === null) continue;
        if (Math.abs(i - j) === 1 && planes[Math.min(i, j)] === plane) continue;
        const need = (one / 2 + 1) * 1.5 + (other === null ? 11 : (other / 2 + 1) * 1.5) + 0.254;
        expect(far(i, j)).toBeGreaterThanOrEqual(need - 1e-9);
      }
}

describe('place', () => {
  it('sets up what it can, and the picture holds: meshes, foreign wheels, foreign collars, slots, swing', () => {
    const wheel = fc.constantFrom(20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90);
    let placed = 0;
    fc.assert(
      fc.property(fc.array(wheel, { minLength: 4, maxLength: 8 }), fc.constantFrom(1, 2, 3), (drawer, perSide) => {
        if (drawer.length < 2 * perSide) return;
        const [arrangement] = arrangementsOf({ drivers: drawer.slice(0, perSide), driven: drawer.slice(perSide, 2 * perSide) });
        if (!arrangement) return;
        const found = place(arrangement, ask(drawer));
        if ('why' in found) return;
        placed++;
        expectClear(found.shafts, found.reach.at, found.reach.planes);
        found.reach.radii.forEach((r, n) => {
          const slot = QUADRANT.slots[found.reach.slots[n] ?? -1];
          expect(r * 1e6).toBeGreaterThanOrEqual((slot?.nearest ?? Number.POSITIVE_INFINITY) - 1);
          expect(r * 1e6).toBeLessThanOrEqual((slot?.farthest ?? 0) + 1);
        });
        expect(found.reach.swingDegrees).toBeGreaterThanOrEqual(-80.001);
        expect(found.reach.swingDegrees).toBeLessThanOrEqual(60.001);
      }),
      { numRuns: 300 },
    );
    expect(placed).toBeGreaterThan(40);
  });

  it('finds a place whenever a fine sweep of one stud over the slots finds one', () => {
    const wheel = fc.integer({ min: 20, max: 90 });
    const [slot] = QUADRANT.slots;
    fc.assert(
      fc.property(wheel, wheel, wheel, (a, idler, b) => {
        const shafts = shaftsOf({ pairs: [[a, b]] }, [{ pair: 0, teeth: idler }], ENDS);
        const quadrant = { ...QUADRANT, slots: slot ? [slot] : [] };
        const [one, two] = [((a + idler) * 1.5) / 2 + 0.1016, ((idler + b) * 1.5) / 2 + 0.1016];
        let swept = false;
        for (let swing = -80; swing <= 60; swing += 0.05) {
          const t = (swing * Math.PI) / 180;
          if (two < 35 || two > 140) break;
          if (Math.abs(Math.hypot(150 - two * Math.cos(t), two * Math.sin(t)) - one) < 0.06) swept = true;
        }
        const clear = 150 >= ((a + b) / 2 + 2) * 1.5 + 0.254;
        const near = Math.abs(150 - (((a + b) / 2 + 2) * 1.5 + 0.254)) < 0.01;
        if (!near && swept && clear) expect(reachOf(shafts, quadrant, SIZES).fits).toBe(true);
        if (!swept || (!near && !clear)) expect(reachOf(shafts, quadrant, SIZES).fits && !swept).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  it('puts an idler in where the way of turning asks for it', () => {
    const [arrangement] = arrangementsOf({ drivers: [40], driven: [60] });
    const found = arrangement && place(arrangement, ask([40, 60, 70, 45, 80], 'same'));
    expect(found && 'shafts' in found && found.shafts.map(({ driver, driven }) => driver ?? driven)).toHaveLength(3);
    const two = arrangement && place(arrangement, ask([40, 60, 30, 35, 45, 50, 55], 'opposite'));
    expect(two && 'shafts' in two ? two.shafts.length : 0).toBe(4);
  });

  it('takes two like wheels for idlers where two of them are left, and never one of them twice', () => {
    const [arrangement] = arrangementsOf({ drivers: [45], driven: [50] });
    const shafts = (drawer: readonly number[]): number => {
      const found = arrangement && place(arrangement, ask(drawer, 'opposite'));
      return found && 'shafts' in found ? found.shafts.length : 0;
    };
    expect(shafts([45, 50, 40, 40])).toBe(4);
    expect(shafts([45, 50, 40])).toBe(0);
  });

  it('puts two idlers into a compound train where the shafts are far apart', () => {
    const quadrant = {
      ...QUADRANT,
      between: millimetres(230),
      slots: [{ nearest: millimetres(25), farthest: millimetres(240), angle: degrees(0) }],
    };
    const [arrangement] = arrangementsOf({ drivers: [30, 35], driven: [40, 45] });
    const found = arrangement && place(arrangement, { ...ask([30, 35, 40, 45, 50, 55], 'same'), quadrant });
    expect(found && 'shafts' in found ? found.shafts.filter(({ idler }) => idler).map(({ driver }) => driver) : []).toHaveLength(2);
  });

  it('says so where not every idler could be tried', () => {
    const [arrangement] = arrangementsOf({ drivers: [20], driven: [25] });
    const far = {
      ...QUADRANT,
      between: millimetres(180),
      slots: [{ nearest: millimetres(1), farthest: millimetres(2), angle: degrees(0) }],
    };
    const found = arrangement && place(arrangement, { ...ask([20, 25, 60, 70, 80, 90, 100]), quadrant: far, tries: { left: 3 } });
    expect(found).toMatchObject({ why: expect.stringMatching(/Not with every idler tried/) });
  });

  it.each([
    ['the distance', { drivers: [20], driven: [25] }, {}, /bridge the distance/],
    ['the cover', { drivers: [40, 30], driven: [60, 135] }, {}, /135 is wider than what goes under the cover/],
    ['one wheel abreast', { drivers: [40, 30], driven: [60, 50] }, { abreast: 1 }, /side by side/],
    ['a collar', { drivers: [20, 90], driven: [40, 75] }, { collar: millimetres(60) }, /meets the (collar|\d+) on the/],
    [
      'a short slot',
      { drivers: [40, 30], driven: [80, 60] },
      { slots: [{ nearest: millimetres(20), farthest: millimetres(30), angle: degrees(0) }] },
      /end of its slot/,
    ],
    ['a stiff quadrant', { drivers: [50, 50], driven: [70, 70] }, { swing: [degrees(40), degrees(41)] as const }, /swing farther/],
  ] as const)('says why: %s', (_name, train, change, why) => {
    const arrangements = arrangementsOf(train);
    const asked = { ...ask([...train.drivers, ...train.driven]), quadrant: { ...QUADRANT, ...change } };
    const whys = arrangements.map((one) => place(one, asked)).map((found) => ('why' in found ? found.why : 'fits'));
    expect(
      whys.some((one) => why.test(one)),
      whys.join(' '),
    ).toBe(true);
  });

  it('refuses a quadrant that cannot be', () => {
    const [arrangement] = arrangementsOf({ drivers: [40], driven: [60] });
    for (const change of [
      { between: millimetres(0) },
      { slots: [] },
      { abreast: 0 },
      { collar: millimetres(5) },
      { swing: [degrees(5), degrees(-5)] as const },
    ])
      expect(() => arrangement && place(arrangement, { ...ask([40, 60]), quadrant: { ...QUADRANT, ...change } })).toThrow(DomainError);
  });
});

describe('slotLines', () => {
  it('runs through every stud of the train, whichever shaft the quadrant swings about, and keeps anticlockwise as it is', () => {
    for (const pivot of ['driver', 'driven'] as const)
      for (const train of [
        { drivers: [30, 63], driven: [50, 80] },
        { drivers: [45], driven: [50] },
      ])
        for (const arrangement of arrangementsOf(train)) {
          const quadrant = { ...QUADRANT, pivot };
          const found = place(arrangement, { ...ask([30, 63, 50, 80, 45, 60, 70]), quadrant });
          if ('why' in found) continue;
          const lines = slotLines(quadrant, found.reach);
          for (const [n, slot] of found.reach.slots.entries()) {
            const [line, stud] = [lines[slot], found.reach.at[n + 1]];
            if (!line || !stud) throw new Error('no such slot');
            const along = (p: readonly [number, number]): number => Math.hypot(p[0] - stud.x, p[1] - stud.y);
            expect(along(line.from) + along(line.to)).toBeCloseTo(lengthOf(line), 6);
          }
          // The second slot lies 50° anticlockwise of the first, as seen from the pivot.
          const at = ({ from, to }: { from: readonly [number, number]; to: readonly [number, number] }): number =>
            Math.atan2(to[1] - from[1], to[0] - from[0]);
          const [first, second] = lines.map(at) as [number, number];
          expect(Math.cos(second - first - (50 * Math.PI) / 180)).toBeCloseTo(1, 9);
        }
  });
});

/** Length of a line. */
const lengthOf = ({ from, to }: { from: readonly [number, number]; to: readonly [number, number] }): number =>
  Math.hypot(to[0] - from[0], to[1] - from[1]);

describe('arrangementsOf', () => {
  it('gives each order once: 36 for six wheels, fewer with like ones', () => {
    expect(arrangementsOf({ drivers: [20, 30, 40], driven: [50, 60, 70] })).toHaveLength(36);
    expect(arrangementsOf({ drivers: [20, 20], driven: [50, 60] })).toHaveLength(2);
  });
});

describe('bestTrains on a quadrant', () => {
  const wheels = [...Array.from({ length: 17 }, (_, n) => 20 + 5 * n), 63, 127];
  const on = (widest: number) =>
    bestTrains({
      ...{ wheels, target: targetOf([50, 127]), upTo: 4 },
      quadrant: { quadrant: { ...QUADRANT, widest: millimetres(widest) }, sizes: SIZES, ends: ENDS, turns: 'either' },
    });

  it('gives the nearest that stands, where a wheel too wide for the cover is in all of the best', () => {
    expect(on(200).find(stands)?.near.exact).toBe(true);
    const narrow = on(150);
    expect(narrow.slice(0, -1).every((row) => row.train.driven.includes(127) && !stands(row))).toBe(true);
    const instead = narrow.at(-1);
    expect(instead && stands(instead)).toBe(true);
    // 63/80 in place of 100/127 (1 ÷ 1.27) is off by 125 in a million.
    expect((instead?.near.error ?? 1) * 1e6).toBeCloseTo(125, 0);
  });
});
