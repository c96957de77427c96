import { describe, expect, test } from 'vitest';
import type { Value } from '../../../lib/figure/figure.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { isStale, type StoredOperation, samePrint, whatChanged } from '../../../lib/routing/stale.ts';
import { inches, nanometres } from '../../../lib/values/length.ts';
import { cutter, shop, spare, wanted } from './halvorsen.ts';

const owner = shop({ cutters: [cutter(5, '5', 21, 25)] });
const plan = (more: Partial<Parameters<typeof planRouting>[0]> = {}) =>
  planRouting({ way: 're-cut a spare', wanted: wanted(22), blank: spare(31), shop: owner, readings: {}, ...more } as Parameters<
    typeof planRouting
  >[0]);
const stored = (of: ReturnType<typeof plan>): StoredOperation[] =>
  of.operations.map(({ key, figures }) => ({
    key,
    figures: Object.entries(figures).map(([figure, { value }]) => ({ key: figure, shown: value, shownFrom: 'worked out' as const })),
  }));
const measured = { 'blank/outside': { value: { length: inches(2.996) } as Value, from: 'measured' as const } };

test('nothing is stale while nothing changed', () => {
  expect(whatChanged(stored(plan()), plan())).toEqual({ figures: [], added: [], removed: [] });
  expect(isStale(whatChanged(stored(plan()), plan()))).toBe(false);
});

test('a blank that measures less makes the depth stale, was and now', () => {
  const { figures } = whatChanged(stored(plan()), plan({ readings: measured }));
  const depth = figures.find(({ operation, figure }) => operation === 'touch' && figure === 'depth');
  expect(depth?.was).toEqual({ length: inches(0.269625) });
  expect(depth?.now).toEqual({ length: inches(0.267625) });
  expect(figures.some(({ operation, figure }) => operation === 'blank' && figure === 'outside')).toBe(false);
});

test('what is done and what was typed stays', () => {
  const now = plan({ readings: measured });
  const done = stored(plan()).map((one) => ({ ...one, done: one.key === 'touch' }));
  expect(whatChanged(done, now).figures.some(({ operation }) => operation === 'touch')).toBe(false);
  const typed = stored(plan()).map((one) => ({
    ...one,
    figures: one.figures.map((figure) => ({ ...figure, shownFrom: 'typed' as const })),
  }));
  expect(whatChanged(typed, now).figures).toEqual([]);
});

test('another spare: operations come and go', () => {
  const wide = spare(31);
  const now = plan({ blank: { ...wide, gear: { ...wide.gear, face: inches(1) } } });
  expect(whatChanged(stored(plan()), now).added).toEqual(['faces']);
  expect(whatChanged(stored(now), plan()).removed).toEqual(['faces']);
});

test('a speed worked out otherwise is told only where another speed is to be set', () => {
  const change = (worked: number, set?: number) =>
    stored(plan()).map((one) => ({
      ...one,
      figures: one.figures.map((figure) => {
        const to = figure.key === 'speedWorkedOut' ? worked : figure.key === 'speed' ? set : undefined;
        return to === undefined || !('number' in figure.shown) ? figure : { ...figure, shown: { ...figure.shown, number: to } };
      }),
    }));
  expect(whatChanged(change(3), plan()).figures).toEqual([]);
  const both = whatChanged(change(3, 4), plan()).figures.filter(({ operation }) => operation === 'finish');
  expect(both.map(({ figure }) => figure)).toEqual(['speed', 'speedWorkedOut']);
});

describe('the same in print is the same', () => {
  test('a nanometre less is no change, a tenth of a thousandth is', () => {
    expect(samePrint({ length: inches(3) }, { length: nanometres(inches(3) - 1) }, 'in')).toBe(true);
    expect(samePrint({ length: inches(3) }, { length: inches(2.9999) }, 'in')).toBe(false);
    expect(samePrint({ count: 3 }, { number: 3, unit: 'teeth', places: 0 }, 'in')).toBe(false);
  });
});

test('a blank that was measured is not stale for being other than worked out', () => {
  const read = stored(plan()).map((one) =>
    one.key === 'blank'
      ? {
          ...one,
          figures: one.figures.map((figure) =>
            figure.key === 'outside' ? { ...figure, shown: { length: inches(2.996) }, shownFrom: 'measured' as const } : figure,
          ),
        }
      : one,
  );
  expect(whatChanged(read, plan()).figures).toEqual([]);
});
