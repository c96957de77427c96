import { expect, test } from 'vitest';
import type { Stock } from '../../../lib/blanks/from-stock.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import type { ShopNow } from '../../../lib/routing/shop-now.ts';
import type { Chuck } from '../../../lib/tooling/tooling.ts';
import { inches } from '../../../lib/values/length.ts';
import { at, gear, printed, shop, spare, wanted } from './halvorsen.ts';

const bar: Stock = { id: 1, name: 'bar', material: 'steel', diameter: inches(3.25), length: inches(6), hole: inches(0) };
const fromBar = (more: Partial<ShopNow> = {}, part = wanted(22)) =>
  planRouting({ way: 'make from stock', wanted: part, blank: bar, shop: shop(more), readings: {} }).operations;
const recut = (blank = spare(31), part = wanted(22)) =>
  planRouting({ way: 're-cut a spare', wanted: part, blank, shop: shop(), readings: {} }).operations;
const chuck = (jaws: number): Chuck => ({
  kind: 'chuck',
  id: 30,
  name: 'chuck',
  here: true,
  jaws,
  diameter: inches(8),
  runOut: null,
  topSpeedRpm: null,
});

// 12 × 90 ÷ (π × 1.0625) = 323.5: 290 is offered for the bore; 12 × 90 ÷ (π × 3.25) = 105.8: 70 for the face.
test('the face of a bar is not cut at the speed of its bore', () => {
  expect(printed(fromBar(), 'bore', 'speed')).toBe('290');
  expect(printed(fromBar(), 'bore', 'facingSpeed')).toBe('70');
});

test('a three-jaw nobody measured counts as 0.005 in; a four-jaw is trued and has no such figure', () => {
  expect(printed(fromBar({ chucks: [chuck(3)] }), 'bore', 'chuckRunOut')).toBe('0.0050');
  expect(at(fromBar({ chucks: [chuck(4)] }), 'bore').figures['chuckRunOut']).toBeUndefined();
});

// 12 × 50 ÷ (π × 3.5858) = 53.3: 45. As steel it would be 95.9: 70.
test('a spare of unknown metal is run slowly, whatever the wheel was wished to be of', () => {
  expect(printed(recut(spare(31), wanted(22, { material: 'steel' })), 'solid', 'speed')).toBe('70');
  expect(printed(recut(spare(31, { material: 'unknown' }), wanted(22, { material: 'steel' })), 'solid', 'speed')).toBe('45');
});

test('the blank has to swing as it is before turning: 33/8 in, not the 3.00 that it becomes', () => {
  const steps = at(recut(), 'lay-out').steps.join(' ');
  expect(steps).toContain('4.13 in swings over the saddle');
  expect(steps).toContain('3.00 in clear under the cutter arbor');
  expect(at(fromBar(), 'lay-out').steps.join(' ')).toContain('3.25 in swings over the saddle');
});

test('teeth are set to spline or keyway before the first nick; a plain bore has nothing to set to', () => {
  expect(at(recut(), 'nick').steps[0]).toContain('spline');
  const smooth = wanted(22, { gear: gear(22, { bore: { form: 'plain', diameter: inches(1) } }) });
  expect(at(fromBar({}, smooth), 'nick').steps[0]).toContain('Nick the blank');
});

test('no fingers with the paper at a turning cutter, and the depth is set clear of the work', () => {
  expect(at(recut(), 'touch').steps[0]).toMatch(/stuck on with oil: no fingers/);
  expect(at(recut(), 'rough').steps[0]).toMatch(/work clear of the cutter; clamp the knee/);
});
