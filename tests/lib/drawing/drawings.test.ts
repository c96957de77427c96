import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankDrawing } from '../../../lib/drawing/blank-drawing.ts';
import type { Drawing, Mark, Point } from '../../../lib/drawing/drawing.ts';
import { gearDrawing } from '../../../lib/drawing/gear-drawing.ts';
import { hatchLines } from '../../../lib/drawing/hatch.ts';
import { indexPlate } from '../../../lib/drawing/index-plate.ts';
import { besideFrom, besideTo, widthOfText } from '../../../lib/drawing/lettering.ts';
import { ratioScale } from '../../../lib/drawing/ratio-scale.ts';
import { type PegWheel, setDrawing } from '../../../lib/drawing/set-drawing.ts';
import { thinned } from '../../../lib/drawing/wheel-outline.ts';
import type { Gear } from '../../../lib/gears/gear.ts';
import { inches } from '../../../lib/values/length.ts';
import { wheel } from './shop-wheels.ts';

const FORM = { unit: 'in', places: 3 } as const;
type Of<K extends Mark['draw']> = Extract<Mark, { draw: K }>;
const of = <K extends Mark['draw']>(drawing: Drawing, draw: K): Of<K>[] =>
  drawing.marks.filter((mark): mark is Of<K> => mark.draw === draw);
const reach = (points: readonly Point[]): number => Math.max(...points.map(([x, y]) => Math.hypot(x, y)));

/** Letters are taken a tenth narrower than the widest face: names of a drawing may touch its edge, never cross it. */
function cornersOfText({ at: [x, y], says, size, anchor }: Of<'text'>): Point[] {
  const wide = widthOfText(says, size) * 0.9;
  const from = x - wide * { start: 0, middle: 0.5, end: 1 }[anchor];
  return [
    [from, y],
    [from + wide, y + size * 0.75],
  ];
}

function corners(mark: Mark): Point[] {
  if (mark.draw === 'line') return [mark.from, mark.to];
  if (mark.draw === 'dimension') {
    const { from, to, says, size, beside } = mark;
    return beside ? [from, [to[0] + besideTo(says, size), to[1] + size]] : [from, to];
  }
  if (mark.draw === 'outline') return [...mark.points];
  if (mark.draw === 'hatch') return mark.rings.flat();
  if (mark.draw === 'text') return cornersOfText(mark);
  const {
    middle: [x, y],
    radius: r,
  } = mark;
  return [
    [x - r, y - r],
    [x + r, y + r],
  ];
}

/** Every mark inside the frame, and every letter at least 14 px high when the whole is 328 px wide. */
function expectReadable(drawing: Drawing): void {
  const [low, high] = [drawing.low, drawing.high];
  const perPx = (high[0] - low[0]) / 328;
  for (const mark of drawing.marks) {
    for (const [x, y] of corners(mark)) {
      expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
      expect(x).toBeGreaterThanOrEqual(low[0] - 1e-9);
      expect(x).toBeLessThanOrEqual(high[0] + 1e-9);
      expect(y).toBeGreaterThanOrEqual(low[1] - 1e-9);
      expect(y).toBeLessThanOrEqual(high[1] + 1e-9);
    }
    if (mark.draw === 'text') expect(mark.size / perPx).toBeGreaterThan(14);
    if (mark.draw === 'dimension') expect((mark.size * 0.8) / perPx).toBeGreaterThan(14);
  }
  expect(drawing.describes).toMatch(/^[A-Z].*\.$/);
}

const keyed = wheel(60, {
  face: inches(1),
  bore: { form: 'keyed', diameter: inches(1.25), keyWidth: inches(0.25), keyDepth: inches(0.125) },
  body: {
    known: true,
    recesses: [{ side: 'both', inner: inches(2.25), outer: inches(6.25) }],
    openings: [{ what: 'holes', inner: inches(3.2), outer: inches(5.2) }],
  },
});
const unmeasured = wheel(28, { face: null, bore: null, body: { known: false } });

describe('hatching', () => {
  const square: Point[] = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ];
  const hole: Point[] = [
    [10.3, 7.1],
    [25.2, 7.7],
    [21.9, 20.3],
  ];
  const holeArea = Math.abs(((25.2 - 10.3) * (20.3 - 7.1) - (21.9 - 10.3) * (7.7 - 7.1)) / 2);
  it.each([1, -1] as const)('covers the area once, holes left out, at 45 degrees (lean %s)', (lean) => {
    const lines = hatchLines([square, hole], 0.1, lean);
    const total = lines.reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);
    expect(Math.abs(total * 0.1 - (1200 - holeArea))).toBeLessThan(1);
    for (const [[ax, ay], [bx, by]] of lines) expect(by - ay).toBeCloseTo(lean * (bx - ax), 9);
  });
});

describe('the drawing of a wheel', () => {
  it('is to scale: 22 teeth of 8 DP are 3.000 in = 76.2 mm across, 0.750 in = 19.05 mm wide', () => {
    const drawing = gearDrawing(wheel(22), { form: FORM });
    const outlines = of(drawing, 'outline').filter(({ kind, points }) => kind === 'here' && points.length > 100);
    expect(Math.max(...outlines.map(({ points }) => reach(points)))).toBeCloseTo(38.1, 6);
    const lengths = of(drawing, 'dimension').map(({ from, to, says }) => [says, Math.hypot(to[0] - from[0], to[1] - from[1])] as const);
    expect(lengths.map(([says]) => says)).toEqual(['3.000\u2009in', '0.750\u2009in', '1.125\u2009in']);
    for (const [i, mm] of [76.2, 19.05, 28.575].entries()) expect(lengths[i]?.[1]).toBeCloseTo(mm, 9);
    expect(drawing.describes).toContain('22 teeth, 8 DP, 14½°');
  });
  it('hatches no tooth: the section stops at the root, 2.461 in', () => {
    const cut = of(gearDrawing(wheel(22), { form: FORM }), 'hatch').filter(({ kind }) => kind === 'section');
    const highest = Math.max(...cut.flatMap(({ rings }) => rings.flat().map(([, y]) => y)));
    expect((2 * highest) / 25.4).toBeCloseTo(2.4608, 3);
  });
  it('leaves recess and holes open', () => {
    const rings = of(gearDrawing(keyed, { form: FORM }), 'hatch').flatMap((mark) => mark.rings);
    const radii = [...rings.flat().map(([, y]) => Math.abs(y) * (2 / 25.4))];
    expect(rings.length).toBe(4);
    expect(radii.some((d) => d > 3.21 && d < 5.19)).toBe(false);
  });
  it('names a wheel milled with another form within its frame', () => {
    expectReadable(gearDrawing(wheel(48), { form: FORM, cutterFor: 35 }));
  });
  it('puts question marks where nobody has measured, and hatches nothing there', () => {
    const drawing = gearDrawing(unmeasured, { form: FORM });
    expect(of(drawing, 'hatch')).toEqual([]);
    expect(of(drawing, 'text').filter(({ says }) => says.includes('?')).length).toBe(4);
    expect(drawing.describes).toContain('face not measured');
  });
  it.each([
    ['splined', wheel(22)],
    ['keyed and recessed', keyed],
    ['unmeasured', unmeasured],
    ['large', wheel(127)],
    ['of a long pitch', wheel(48, { pitch: { kind: 'CP', size: [15, 16] } })],
    ['narrow', wheel(14, { face: inches(0.2) })],
  ])('keeps inside its frame and can be read on a phone: %s', (_, gear) => expectReadable(gearDrawing(gear, { form: FORM })));

  it.each([0.1, 0.2, 0.5, 0.75, 5])('letters of a face of %s in never stand over its ends', (face) => {
    const [, wide] = of(gearDrawing(wheel(60, { face: inches(face) }), { form: FORM }), 'dimension');
    if (!wide) throw new Error('no face');
    const [left, right] = [wide.from[0], wide.to[0]];
    const letters = widthOfText(wide.says, wide.size);
    const starts = wide.beside ? right + besideFrom(wide.size) : (left + right - letters) / 2;
    if (wide.beside) expect(starts - right).toBeGreaterThan(wide.size);
    else expect([starts >= left, starts + letters <= right]).toEqual([true, true]);
    expect(wide.beside ?? false).toBe(face < 5);
  });
});

describe('the drawing of a proposed blank', () => {
  const proposal = { old: wheel(31), oldRoot: inches(3.5858), next: wheel(22) };
  it('draws the new inside the old and can be read', () => {
    const drawing = blankDrawing(proposal, { form: FORM });
    expectReadable(drawing);
    const [oldMark, newMark] = ['old outline', 'here'].map((kind) => of(drawing, 'outline').find((mark) => mark.kind === kind));
    expect(reach(oldMark?.points ?? [])).toBeCloseTo((4.125 * 25.4) / 2, 6);
    expect(reach(newMark?.points ?? [])).toBeCloseTo((3 * 25.4) / 2, 6);
    expect(of(drawing, 'dimension').map(({ says }) => says)).toEqual([
      'new outside 3.000\u2009in',
      'old root 3.586\u2009in',
      'old outside 4.125\u2009in',
    ]);
  });
  it('hatches what comes off: more than the ring from old root to new outside, less than old outside to new root', () => {
    const [hatch] = of(blankDrawing(proposal, { form: FORM }), 'hatch');
    const area = hatchLines(hatch?.rings ?? [], 0.2, 1).reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay) * 0.2, 0);
    const ring = (outer: number, inner: number): number => (Math.PI / 4) * (outer ** 2 - inner ** 2) * 25.4 ** 2;
    expect(area).toBeGreaterThan(ring(3.5858, 3));
    expect(area).toBeLessThan(ring(4.125, 2.4608));
  });
});

describe('the drawing of a set', () => {
  const peg = (teeth: number, state: PegWheel['state'], becomes?: Gear): PegWheel => ({
    gear: wheel(teeth),
    state,
    doubtful: teeth === 27,
    ...(becomes ? { becomes } : {}),
  });
  const wheels = [
    ...[18, 20, 22, 24, 27, 28, 48, 72].map((n) => peg(n, n === 22 || n === 28 ? 'missing' : 'here')),
    peg(31, 'spare', wheel(22)),
    peg(46, 'spare'),
  ];
  it.each([4, 12])('shows every count, all inside the frame, none over another (%s in a row)', (perRow) => {
    const drawing = setDrawing(wheels, { name: 'the lathe', perRow });
    expectReadable(drawing);
    const says = of(drawing, 'text').map((mark) => mark.says);
    for (const count of ['18', '20', '22', '24', '27', '28', '48', '72', '46', '31\u2009→\u200922']) expect(says).toContain(count);
    expect(says).toContain('2 missing');
    expect(says.filter((word) => word === '?').length).toBe(1);
    const rounds = of(drawing, 'outline')
      .filter(({ points }) => points.length > 60)
      .map(({ points }) => {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        return {
          x: (Math.min(...xs) + Math.max(...xs)) / 2,
          y: (Math.min(...ys) + Math.max(...ys)) / 2,
          r: (Math.max(...xs) - Math.min(...xs)) / 2,
        };
      });
    const outer = [
      ...rounds,
      ...of(drawing, 'circle')
        .filter(({ kind }) => kind !== 'edge')
        .map(({ middle, radius }) => ({ x: middle[0], y: middle[1], r: radius })),
    ];
    for (const a of outer)
      for (const b of outer) {
        const apart = Math.hypot(a.x - b.x, a.y - b.y);
        if (apart > 1) expect(apart).toBeGreaterThan(a.r + b.r - 0.5);
      }
  });
  it('says the missing and the proposed in its sentence', () => {
    expect(setDrawing(wheels, { name: 'the lathe' }).describes).toContain('missing: 22, 28.');
    expect(setDrawing(wheels, { name: 'the lathe' }).describes).toContain('22 from 31');
  });
  it('draws an empty peg without breaking', () => expectReadable(setDrawing([], { name: 'the lathe' })));
  it('never breaks, whatever hangs there', () => {
    const any = fc.array(
      fc.record({
        teeth: fc.integer({ min: 12, max: 150 }),
        state: fc.constantFrom('here' as const, 'missing' as const, 'spare' as const, 'waits' as const),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(any, fc.integer({ min: 1, max: 14 }), (list, perRow) =>
        expectReadable(
          setDrawing(
            list.map(({ teeth, state }) => peg(teeth, state)),
            { name: 'a set', perRow },
          ),
        ),
      ),
      { numRuns: 15 },
    );
  });
});

describe('the scale of ratios', () => {
  const scale = ratioScale({
    marks: [
      { at: 0.25, kept: true, lost: false },
      { at: 0.5, kept: true, lost: true },
      { at: 0.75, kept: false, lost: true },
      { at: 0.9, kept: false, lost: false },
    ],
    decades: [
      { at: 0.2, says: '0.1' },
      { at: 0.6, says: '1' },
      { at: 1, says: '10' },
    ],
    kept: 476,
    lost: 874,
  });
  it('puts kept above, lost below, nothing where there is neither', () => {
    const ticks = of(scale, 'line').filter(({ kind }) => kind === 'kept' || kind === 'lost');
    expect(ticks.map(({ from, to, kind }) => [from[0], Math.sign(to[1]), kind])).toEqual([
      [25, 1, 'kept'],
      [50, 1, 'kept'],
      [50, -1, 'lost'],
      [75, -1, 'lost'],
    ]);
  });
  it('rules 2 three tenths into the decade (log 2 = 0.3010) and figures the decades', () => {
    const xs = of(scale, 'line')
      .filter(({ kind }) => kind === 'edge')
      .map(({ from }) => from[0]);
    expect(xs.some((x) => Math.abs(x - (20 + 40 * 0.301)) < 0.01)).toBe(true);
    expect(of(scale, 'text').map(({ says }) => says)).toEqual(['476 kept', '874 lost, below', '0.1', '1', '10']);
    expectReadable(scale);
  });
});

describe('the index plate', () => {
  it('shows 28 holes for 27 spaces', () => {
    const plate = indexPlate({ holes: 33, turns: 1, spaces: 27 });
    const holes = of(plate, 'circle').filter(({ radius }) => radius < 2.5);
    expect([holes.length, holes.filter(({ kind }) => kind === 'here').length]).toEqual([33, 28]);
    expect(of(plate, 'text').map(({ says }) => says)).toEqual(['0', '27', '27 spaces', '= 28 holes']);
    expectReadable(plate);
  });
  it.each([
    [15, 10],
    [18, 9],
    [20, 5],
    [33, 27],
    [49, 21],
    [49, 41],
    [66, 44],
    [100, 3],
  ] as const)('on %i holes the number of hole %i stands clear of the arm beyond it, and so do the words', (holes, spaces) => {
    const t = (2 * Math.PI * (spaces + 0.5)) / holes;
    const arm = Array.from({ length: 140 }, (_, i) => 9 + i / 4).map((r): Point => [r * Math.sin(t), r * Math.cos(t)]);
    for (const { says, at, size, anchor } of of(indexPlate({ holes, turns: 0, spaces }), 'text').filter((one) => one.says !== '0')) {
      expect(anchor).toBe('middle');
      const half = widthOfText(says, size) / 2;
      expect(
        arm.filter(([x, y]) => Math.abs(x - at[0]) < half && y > at[1] && y < at[1] + size * 0.72),
        says,
      ).toEqual([]);
    }
  });
  it('says so when only whole turns are needed', () => {
    expect(indexPlate({ holes: 20, turns: 2, spaces: 0 }).describes).toContain('2 whole turns, back to hole 0');
    expectReadable(indexPlate({ holes: 20, turns: 2, spaces: 0 }));
  });
});

it('thins a run of points by no more than what can be seen', () => {
  expect(
    thinned(
      [
        [0, 0],
        [1, 0.001],
        [2, 0],
        [2, 2],
      ],
      0.01,
    ),
  ).toEqual([
    [0, 0],
    [2, 0],
    [2, 2],
  ]);
  expect(
    thinned(
      [
        [0, 0],
        [1, 0.1],
        [2, 0],
      ],
      0.01,
    ).length,
  ).toBe(3);
});
