import { describe, expect, it } from 'vitest';
import type { Mark, Point } from '../../../lib/drawing/drawing.ts';
import { trainDrawing } from '../../../lib/drawing/train-drawing.ts';
import { wheelsOnShafts } from '../../../lib/drawing/train-layout.ts';
import type { TrainShaft } from '../../../lib/trains/train-shaft.ts';

const COMPOUND: readonly TrainShaft[] = [
  { name: 'Spindle', driven: null, driver: 40 },
  { name: 'Stud 1', driven: 60, driver: 30 },
  { name: 'Stud 2', driven: 24, driver: 24, idler: true },
  { name: 'Screw', driven: 75, driver: null },
];

const points = (mark: Mark): Point[] => {
  if (mark.draw === 'line' || mark.draw === 'dimension') return [mark.from, mark.to];
  if (mark.draw === 'outline') return [...mark.points];
  if (mark.draw === 'text') return [mark.at, [mark.at[0], mark.at[1] + mark.size * 0.75]];
  if (mark.draw === 'hatch') return mark.rings.flat();
  const [x, y] = mark.middle;
  return [
    [x - mark.radius, y - mark.radius],
    [x + mark.radius, y + mark.radius],
  ];
};

describe('wheelsOnShafts', () => {
  it('meshes each pair at the sum of the pitch radii, and turns each shaft the other way', () => {
    const wheels = wheelsOnShafts(COMPOUND, { moduleMm: 2 });
    expect(wheels.map(({ teeth }) => teeth)).toEqual([40, 60, 30, 24, 75]);
    expect(wheels.map(({ clockwise }) => clockwise)).toEqual([true, false, false, true, false]);
    expect(wheels.map(({ plane }) => plane)).toEqual([0, 0, 1, 1, 1]);
    for (const [one, other] of [
      [0, 1],
      [2, 3],
      [3, 4],
    ] as const) {
      const [a, b] = [wheels[one], wheels[other]] as const;
      expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeCloseTo((a?.teeth ?? 0) + (b?.teeth ?? 0), 9);
    }
  });
});

describe('trainDrawing', () => {
  it.each([
    ['a compound train with an idler', COMPOUND],
    [
      'two wheels',
      [
        { name: 'Spindle', driven: null, driver: 20 },
        { name: 'Screw', driven: 127, driver: null },
      ],
    ],
    [
      'small pinions',
      [
        { name: 'Head spindle', driven: null, driver: 6 },
        { name: 'Worm', driven: 8, driver: null },
      ],
    ],
  ] as const)('keeps %s inside its frame, with letters that can be read on a phone', (_name, shafts) => {
    const drawing = trainDrawing(wheelsOnShafts(shafts), { title: 'Train', moduleMm: 2 });
    const perPx = (drawing.high[0] - drawing.low[0]) / 328;
    for (const mark of drawing.marks) {
      for (const [x, y] of points(mark)) {
        expect(x).toBeGreaterThanOrEqual(drawing.low[0] - 1e-9);
        expect(x).toBeLessThanOrEqual(drawing.high[0] + 1e-9);
        expect(y).toBeGreaterThanOrEqual(drawing.low[1] - 1e-9);
        expect(y).toBeLessThanOrEqual(drawing.high[1] + 1e-9);
      }
      if (mark.draw === 'text') expect(mark.size / perPx).toBeGreaterThan(14);
    }
  });

  it('draws the slots with their numbers, inside the frame, whichever way they run', () => {
    const slots = [
      { from: [40, 0], to: [180, 0] },
      { from: [60, 0], to: [60, -150] },
      { from: [0, 20], to: [-120, 90] },
    ] as const;
    const drawing = trainDrawing(wheelsOnShafts(COMPOUND, { moduleMm: 2 }), { title: 'Train', moduleMm: 2, slots });
    const words = drawing.marks.flatMap((mark) => (mark.draw === 'text' ? [mark.says] : []));
    expect(words.filter((says) => says.startsWith('slot'))).toEqual(['slot 1', 'slot 2', 'slot 3']);
    for (const mark of drawing.marks)
      for (const [x, y] of points(mark)) {
        expect(x).toBeGreaterThanOrEqual(drawing.low[0] - 1e-9);
        expect(x).toBeLessThanOrEqual(drawing.high[0] + 1e-9);
        expect(y).toBeGreaterThanOrEqual(drawing.low[1] - 1e-9);
        expect(y).toBeLessThanOrEqual(drawing.high[1] + 1e-9);
      }
  });

  it('points each arrow the way its shaft turns, and says the train in words', () => {
    const drawing = trainDrawing(wheelsOnShafts(COMPOUND), { title: 'Train', moduleMm: 2 });
    const bends = drawing.marks.flatMap((mark) => (mark.draw === 'outline' && !mark.closed ? [mark.points] : []));
    const rightward = bends.map((bend) => (bend.at(-1)?.[0] ?? 0) > (bend[0]?.[0] ?? 0));
    expect(rightward).toEqual([true, false, true, false]);
    expect(drawing.describes).toContain('Stud 1: 60 behind and 30 front, turning anticlockwise; Stud 2: 24 idler, turning clockwise');
  });
});
