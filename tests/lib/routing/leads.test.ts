import { describe, expect, test } from 'vitest';
import type { Stock } from '../../../lib/blanks/from-stock.ts';
import type { Figure } from '../../../lib/figure/figure.ts';
import type { Bore } from '../../../lib/gears/gear.ts';
import type { Readings } from '../../../lib/routing/asked.ts';
import { LEADS } from '../../../lib/routing/leads.data.ts';
import { inOrderOfSetting, isLimit } from '../../../lib/routing/leads.ts';
import type { PlannedOperation } from '../../../lib/routing/operation.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches } from '../../../lib/values/length.ts';
import { at, cutter, gear, lathe, mandrel, shop, spare, wanted } from './halvorsen.ts';

const owner = shop({ mandrels: [mandrel], cutters: [cutter(5, '5', 21, 25)] });
const bar: Stock = { id: 9, name: 'bar', material: 'steel', diameter: inches(5), length: inches(6), hole: inches(0) };
const read = (key: string, size: number): Readings => ({ [key]: { value: { length: inches(size) }, from: 'measured' } });
const KEYED: Bore = { form: 'keyed', diameter: inches(1), keyWidth: inches(0.25), keyDepth: inches(0.125) };
const NARROW: Bore = { form: 'plain', diameter: inches(1) };

const recut = (readings: Readings = {}, of = owner) =>
  planRouting({ way: 're-cut a spare', wanted: wanted(22, { slides: true }), blank: spare(31), shop: of, readings }).operations;
const wider = planRouting({
  way: 're-cut a spare',
  wanted: wanted(22, { gear: gear(22, { bore: { form: 'plain', diameter: inches(1.25) } }) }),
  blank: spare(31, { gear: gear(31, { face: inches(1), bore: NARROW }) }),
  shop: shop(),
  readings: {},
}).operations;
const fromBar = (bore: Bore) =>
  planRouting({ way: 'make from stock', wanted: wanted(22, { gear: gear(22, { bore }) }), blank: bar, shop: owner, readings: {} })
    .operations;
const ring = planRouting({
  way: 'ring and hub',
  wanted: wanted(31),
  blank: { hub: spare(25), ring: bar },
  shop: owner,
  readings: {},
}).operations;
const all = [...recut(), ...wider, ...fromBar(KEYED), ...fromBar(gear(22).bore ?? NARROW), ...ring];

const ordered = ({ key, figures }: PlannedOperation, measured: readonly string[] = []): string[] =>
  inOrderOfSetting(
    key,
    Object.entries(figures).map(([name, figure]) => ({
      key: name,
      value: figure.value,
      limit: isLimit(figure) && !measured.includes(name),
      measured: measured.includes(name),
    })),
  );

describe('the figure that is set comes first', () => {
  test('every operation of every way is in the table, and the table names no other', () => {
    expect([...new Set(all.map(({ key }) => key))].sort()).toEqual(Object.keys(LEADS).sort());
  });

  test('every figure that the table names is one of that operation, where it is known', () => {
    const readings = { ...read('first-span/span', 0.59), ...read('central/shift', 0.004) };
    const figures = [...all, ...recut(readings)].flatMap(({ key, figures: of }) => Object.keys(of).map((name) => `${key}/${name}`));
    const named = Object.entries(LEADS).flatMap(([key, { set, once }]) =>
      [...set, ...Object.values(once ?? {}).flat()].map((name) => `${key}/${name}`),
    );
    expect(named.filter((one) => !figures.includes(one))).toEqual([]);
  });

  // Common practice, no source: the hand is on the dial, the crank or the oven; a size is read afterwards.
  test.each([
    ['through-teeth', 'dial'],
    ['solid', 'dial'],
    ['last-cuts', 'firstCut'],
    ['blank', 'outside'],
    ['cutter-on-arbor', 'speed'],
    ['central', 'dial'],
    ['plate', 'crank'],
    ['nick', 'nickDepth'],
    ['touch', 'dial'],
    ['rough', 'dial1'],
    ['first-span', 'span'],
    ['finish', 'crank'],
    ['measure', 'span'],
  ])('%s: %s', (operation, figure) => expect(ordered(at(recut(), operation))[0]).toBe(figure));

  test.each([
    ['hub-through-teeth', 'dial'],
    ['hub-solid', 'dial'],
    ['hub-last-cuts', 'firstCut'],
    ['hub-size', 'hub'],
    ['bore-ring', 'ringBore'],
    ['heat-and-drop', 'oven'],
    ['faces', 'face'],
  ])('ring and hub, %s: %s', (operation, figure) => expect(ordered(at(ring, operation))[0]).toBe(figure));

  test('from bar, the bore; a wide spare, what is faced off', () => {
    expect(ordered(at(fromBar(KEYED), 'bore'))[0]).toBe('bore');
    expect(ordered(at(wider, 'faces'))[0]).toBe('faceOff');
  });

  test('once it was read, the move that follows from the reading', () => {
    expect(ordered(at(recut(), 'last-cuts'), ['halfWay'])[0]).toBe('secondCut');
    expect(ordered(at(recut(read('first-span/span', 0.59)), 'first-span'), ['span'])[0]).toBe('feedDial');
    expect(ordered(at(recut(read('central/shift', 0.004)), 'central'), ['shift'])[0]).toBe('putRight');
  });

  test('without a dial on record the size leads, not the words that it is not known', () => {
    const bare = recut({}, { ...owner, lathe: { ...lathe, crossDial: null } });
    expect(ordered(at(bare, 'solid'))[0]).toBe('roughTo');
  });

  test('a limit never stands before a figure to set, nor before any other that is known', () => {
    for (const operation of all) {
      const keys = ordered(operation);
      expect([...keys].sort()).toEqual(Object.keys(operation.figures).sort());
      const limits = keys.map((key) => isLimit(operation.figures[key] as Figure));
      const lead = LEADS[operation.key]?.set.some((key) => key in operation.figures);
      if (lead) expect(limits[0], operation.key).toBe(false);
    }
  });
});
