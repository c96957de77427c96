import { describe, expect, test } from 'vitest';
import type { Stock } from '../../../lib/blanks/from-stock.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import type { Readings } from '../../../lib/routing/asked.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { at, cutter, gear, mandrel, printed, shop, spare, wanted } from './halvorsen.ts';

// Story 2, the Thornbury-Pell: 60 teeth of 12 DP put as a ring on the middle of the 48. Figures typed from the story (published rule and derived).
const pitch = { kind: 'DP' as const, size: ratio(12) };
const bar: Stock = { id: 9, name: 'Steel ring', material: 'steel', diameter: inches(5.5), length: inches(1), hole: inches(3) };
const owner = shop({ mandrels: [mandrel], cutters: [cutter(2, '2', 55, 134, { pitch })] });

const plan = (readings: Readings = {}, ring = bar) =>
  planRouting({
    way: 'ring and hub',
    wanted: wanted(60, { gear: gear(60, { pitch }) }),
    blank: { hub: spare(48, { gear: gear(48, { pitch }) }), ring },
    shop: owner,
    readings,
    circle: { plateId: 2, side: 0, circle: 33 },
  }).operations;

test.each([
  ['sound', 'oldRoot', '3.8072'],
  ['sound', 'hub', '3.7500'],
  ['sound', 'newOutside', '5.1667'],
  ['sound', 'newRoot', '4.8072'],
  ['sound', 'underTeethDepths', '2.94'],
  ['hub-size', 'hub', '3.7500'],
  ['bore-ring', 'ringBore', '3.7463'],
  ['heat-and-drop', 'rise', '317'],
  ['heat-and-drop', 'oven', '387'],
  ['heat-and-drop', 'allowance', '0.00375'],
  ['blank', 'outside', '5.1667'],
  ['plate', 'crank', '22 spaces on 33'],
  ['touch', 'depth', '0.1798'],
  ['first-span', 'k', '5'],
  ['first-span', 'span', '1.1674'],
  ['first-span', 'spanAbove', '1.4209'],
])('%s, %s', (operation, figure, text) => expect(printed(plan(), operation, figure)).toBe(text));

// The story gives "about 23,000 lb/in²".
test('hoop stress about 23,000', () => expect(Number(printed(plan(), 'heat-and-drop', 'hoopStress'))).toBeCloseTo(23, 0));

test('176 °C of rise, never 158 with the 32 taken off, and 197 °C in the oven', () => {
  const { figures } = at(plan(), 'heat-and-drop');
  const [rise, oven] = [figures['rise'], figures['oven']].map((figure) => (figure ? printFigure(figure).other : ''));
  expect(rise).toBe('176 °C of rise');
  expect(oven).toBe('197 °C');
});

test('a hub whose root nobody measured says so, as a spare does, until it is', () => {
  const says = (readings?: Readings) => at(plan(readings), 'sound').cautions.map((one) => one.says);
  expect(says().join(' ')).toContain('Not measured: worked out as');
  const read = says({ 'sound/oldRoot': { value: { length: inches(3.806) }, from: 'measured' } });
  expect(read.join(' ')).not.toContain('Not measured');
});

describe('the order', () => {
  const ORDER = [
    'hub-last-cuts',
    'hub-size',
    'bore-ring',
    'dry-run',
    'heat-and-drop',
    'cool',
    'mount-ring',
    'last-cuts',
    'faces',
    'blank',
    'rough',
    'finish',
  ];
  test('hub turned and measured, ring bored, heat, drop, cold; then outside, faces, teeth', () => {
    const places = ORDER.map((key) => plan().findIndex((one) => one.key === key));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
  test.each([
    ['bore-ring', 'hub-size'],
    ['dry-run', 'bore-ring'],
    ['heat-and-drop', 'dry-run'],
    ['cool', 'heat-and-drop'],
    ['mount-ring', 'cool'],
    ['solid', 'mount-ring'],
  ])('%s follows %s', (key, after) => expect(at(plan(), key).after).toEqual([after]));
});

// Hub 3.7480: the ring is bored 3.7480 × 0.999 = 3.74425.
test('the ring is bored to the hub that was measured', () => {
  const read = plan({ 'hub-size/hub': { value: { length: inches(3.748) }, from: 'measured' } });
  expect(printed(read, 'bore-ring', 'ringBore')).toBe('3.7443');
  expect(at(read, 'bore-ring').figures['ringBore']?.given.find(({ symbol }) => symbol === 'D')?.from).toBe('measured');
  expect(printed(read, 'hub-size', 'hub')).toBe('3.7500');
});

// Bored 3.7455 on a hub of 3.7500: 0.0045 of hold. Rise (0.0045 + 0.00375) ÷ (6.3e-6 × 3.75) = 349 °F.
test('a ring bored tighter asks for more heat', () => {
  const read = plan({
    'hub-size/hub': { value: { length: inches(3.75) }, from: 'measured' },
    'bore-ring/ringBore': { value: { length: inches(3.7455) }, from: 'measured' },
  });
  expect(printed(read, 'heat-and-drop', 'allowance')).toBe('0.00450');
  expect(printed(read, 'heat-and-drop', 'rise')).toBe('349');
});

test('a zinc ring is refused in words, and no figure is left empty', () => {
  const zinc = plan({}, { ...bar, material: 'zinc' });
  expect(at(zinc, 'sound').cautions.some(({ weight, says }) => weight === 'danger' && /no heat/i.test(says))).toBe(true);
  expect(at(zinc, 'heat-and-drop').figures['oven']).toBeUndefined();
});
