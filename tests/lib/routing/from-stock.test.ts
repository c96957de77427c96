import { expect, test } from 'vitest';
import type { Stock } from '../../../lib/blanks/from-stock.ts';
import type { Bore } from '../../../lib/gears/gear.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches } from '../../../lib/values/length.ts';
import { at, gear, printed, SPLINE, shop, spare, wanted } from './halvorsen.ts';

const bar: Stock = { id: 1, name: '3 1/4 bar', material: 'steel', diameter: inches(3.25), length: inches(6), hole: inches(0) };
const plan = (bore: Bore) =>
  planRouting({ way: 'make from stock', wanted: wanted(22, { gear: gear(22, { bore }) }), blank: bar, shop: shop(), readings: {} })
    .operations;
const places = (bore: Bore, ...keys: string[]) => keys.map((key) => plan(bore).findIndex((one) => one.key === key));

const KEYED: Bore = { form: 'keyed', diameter: inches(1), keyWidth: inches(0.25), keyDepth: inches(0.125) };

test('bore first, spline before the blank is turned, the blank before the teeth', () => {
  const order = places(SPLINE, 'stock', 'bore', 'spline', 'prove-mandrel', 'mount', 'solid', 'last-cuts', 'faces', 'blank', 'rough');
  expect(order.every((place) => place >= 0)).toBe(true);
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test('a splined bore is bored to the tops of its splines, a keyed one to size, with its keyway before the teeth', () => {
  expect(printed(plan(SPLINE), 'bore', 'bore')).toBe('1.0625');
  expect(printed(plan(KEYED), 'bore', 'bore')).toBe('1.0000');
  const [keyway, mount, rough] = places(KEYED, 'keyway', 'mount', 'rough');
  expect(keyway).toBeLessThan(mount ?? 0);
  expect(mount).toBeLessThan(rough ?? 0);
  expect(at(plan(KEYED), 'keyway').needs).toEqual([{ kind: 'other', name: 'keyway tool, 0.2500 in wide (broach or slotting tool)' }]);
});

test('a plain bore asks for no keyway; there are no old teeth to turn through', () => {
  const keys = plan({ form: 'plain', diameter: inches(1) }).map(({ key }) => key);
  expect(keys).not.toContain('keyway');
  expect(keys).not.toContain('spline');
  expect(keys).not.toContain('through-teeth');
});

// (3.250 − 3.000) ÷ 2 = 0.125
test('from 3.250 to 3.000 is 0.1250 a side, all of it solid', () => {
  expect(printed(plan(SPLINE), 'solid', 'turnOff')).toBe('0.1250');
  expect(printed(plan(SPLINE), 'solid', 'solid')).toBe('0.1250');
});

test('stock too small is refused', () =>
  expect(() =>
    planRouting({ way: 'make from stock', wanted: wanted(22), blank: { ...bar, diameter: inches(2.9) }, shop: shop(), readings: {} }),
  ).toThrow(/larger than the old/));

test('a spare whose bore is small is bored out before it goes on a mandrel', () => {
  const plain = (diameter: number): Bore => ({ form: 'plain', diameter: inches(diameter) });
  const { operations } = planRouting({
    way: 're-cut a spare',
    wanted: wanted(22, { gear: gear(22, { bore: plain(1) }) }),
    blank: spare(31, { gear: gear(31, { bore: plain(0.75), face: inches(1) }) }),
    shop: shop(),
    readings: {},
  });
  expect(at(operations, 'bore-work').title).toMatch(/bore it out/i);
  expect(at(operations, 'mount').after).toContain('bore-work');
  // Face 1.000 to 0.875.
  expect(printed(operations, 'faces', 'faceOff')).toBe('0.1250');
});
