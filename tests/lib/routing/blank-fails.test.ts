import { expect, it } from 'vitest';
import type { Stock } from '../../../lib/blanks/from-stock.ts';
import type { PlanBlank, Readings } from '../../../lib/routing/asked.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { at, gear, shop, spare, wanted } from './halvorsen.ts';

const pitch = { kind: 'DP' as const, size: ratio(12) };
const bar = (across: number): Stock => ({
  id: 9,
  name: 'bar',
  material: 'steel',
  diameter: inches(across),
  length: inches(6),
  hole: inches(0),
});
const root = (size: number): Readings => ({ 'sound/oldRoot': { value: { length: inches(size) }, from: 'measured' } });

const plan = (teeth: number, blank: PlanBlank, readings: Readings = {}) =>
  planRouting({
    ...blank,
    wanted: blank.way === 'ring and hub' ? wanted(teeth, { gear: gear(teeth, { pitch }) }) : wanted(teeth),
    shop: shop(),
    readings,
  });

it('a spare fails by its measured root, and no sooner; what is said of it follows the reading', () => {
  const recut = (readings: Readings) => plan(22, { way: 're-cut a spare', blank: spare(31) }, readings);
  expect(recut({}).blankFails).toBe('');
  expect(recut(root(3.02)).blankFails).toBe('');
  // derived: 24 ÷ 8 = 3.0000 outside; (3.0000 − 2.9000) ÷ 2 = 0.0500
  expect(recut(root(2.9)).blankFails).toContain('the old gaps would stay 0.0500 in deep');
  expect(at(recut(root(2.9)).operations, 'sound').verdict).toMatch(/^The old gaps stay/);
  expect(at(recut({}).operations, 'sound').verdict).toMatch(/^Cleans up/);
});

it('a narrower face is the owner’s own choice', () => {
  const blank = { ...spare(31), gear: gear(31, { face: inches(0.5) }) };
  expect(plan(22, { way: 're-cut a spare', blank }).blankFails).toBe('');
});

it('a hub fails whose old root leaves too little of it to carry the ring', () => {
  const blank = { hub: spare(48, { gear: gear(48, { pitch }) }), ring: bar(5.5) };
  expect(plan(60, { way: 'ring and hub', blank }).blankFails).toBe('');
  // derived: under a root of 1.40 a hub of 1 3/8 stands 1/16 round a bore of 1 1/4
  expect(plan(60, { way: 'ring and hub', blank }, root(1.4)).blankFails).toContain('too thin to carry a ring');
});

it('stock fails that is smaller than the new outside and what trueing takes', () => {
  expect(plan(22, { way: 'make from stock', blank: bar(3.25) }).blankFails).toBe('');
  expect(plan(22, { way: 'make from stock', blank: bar(3.02) }).blankFails).toMatch(/^Diameter 3\.0200 in, and /);
});
