import { describe, expect, test } from 'vitest';
import type { Readings } from '../../../lib/routing/asked.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches } from '../../../lib/values/length.ts';
import { at, cutter, printed, shop, spare, wanted } from './halvorsen.ts';

const no5 = shop({ cutters: [cutter(5, '5', 21, 25)] });
const length = (size: number, from: 'measured' | 'typed' = 'measured') => ({ value: { length: inches(size) }, from });
const plan = (readings: Readings, of = no5) =>
  planRouting({ way: 're-cut a spare', wanted: wanted(22), blank: spare(31), shop: of, readings }).operations;

describe('what was measured feeds every figure after it', () => {
  // Blank 0.004 under: the depth is 0.002 less (half of it), the addendum to set too. Derived: the root stays where it belongs.
  test('outside of the blank to depth, dial, chordal addendum and centring', () => {
    const [before, after] = [plan({}), plan({ 'blank/outside': length(2.996) })];
    expect(printed(before, 'touch', 'depth')).toBe('0.2696');
    expect(printed(after, 'touch', 'depth')).toBe('0.2676');
    expect(printed(after, 'touch', 'dial')).toBe('2 turns + 67.6 divisions');
    expect(printed(before, 'touch', 'chordalAddendum')).toBe('0.1285');
    expect(printed(after, 'touch', 'chordalAddendum')).toBe('0.1265');
    // (3.000 + 0.300) ÷ 2 = 1.650, and (2.996 + 0.300) ÷ 2 = 1.648
    expect(printed(before, 'central', 'travel')).toBe('1.6500');
    expect(printed(after, 'central', 'travel')).toBe('1.6480');
    // 0.9 × 0.267625 = 0.24086
    expect(printed(after, 'rough', 'rough2')).toBe('0.2409');
    expect(printed(after, 'blank', 'outside')).toBe('3.0000');
  });

  // Half the feed takes twice as long.
  test('a feed typed over stands in the time of the cut, and says so', () => {
    const time = (readings: Readings) => at(plan(readings), 'finish').figures['cutTime'];
    const minutes = (readings: Readings) => {
      const value = time(readings)?.value;
      return value && 'number' in value ? value.number : Number.NaN;
    };
    const fed = (readings: Readings) => time(readings)?.given.find(({ symbol }) => symbol === 'f');
    const offered = at(plan({}), 'finish').figures['feed']?.value;
    const feed = offered && 'length' in offered ? offered.length / 25_400_000 : Number.NaN;
    const slower = { 'finish/feed': length(feed / 2, 'typed') };
    expect(minutes(slower) / minutes({})).toBeCloseTo(2, 6);
    expect([fed({})?.from, fed(slower)?.from]).toEqual(['worked out', 'typed']);
  });

  test('given says measured or typed, as it was', () => {
    const from = (readings: Readings) => at(plan(readings), 'touch').figures['depth']?.given.find(({ symbol }) => symbol === 'Dm')?.from;
    expect(from({})).toBeUndefined();
    expect(from({ 'blank/outside': length(2.996) })).toBe('measured');
    expect(from({ 'blank/outside': length(2.996, 'typed') })).toBe('typed');
  });

  // 0.0317 over 3.000 in two equal cuts is 0.01585 off the diameter, 0.007925 of travel each; then 0.0151 left is 0.00755 of travel.
  test('diameter after roughing, and after the first last cut, to the next dial move', () => {
    expect(printed(plan({ 'solid/roughTo': length(3.0317) }), 'last-cuts', 'firstCut')).toBe('7.9 divisions');
    expect(printed(plan({ 'last-cuts/halfWay': length(3.0151) }), 'last-cuts', 'secondCut')).toBe('7.6 divisions');
  });

  // Wanted 0.58505, read 0.5925: 0.00745 ÷ (2 sin(360°/22)) = 0.00745 × 1.7747 = 0.0132.
  test('the span that was read to what is still to feed', () => {
    expect(at(plan({}), 'first-span').figures['stillToFeed']).toBeUndefined();
    const read = plan({ 'first-span/span': length(0.5925) });
    expect(printed(read, 'first-span', 'stillToFeed')).toBe('0.0132');
    expect(printed(read, 'first-span', 'feedDial')).toBe('13.2 divisions');
    // A typed span is a wish and no reading.
    expect(at(plan({ 'first-span/span': length(0.59, 'typed') }), 'first-span').figures['stillToFeed']).toBeUndefined();
  });

  // Old root 3.560 by the walls: (4.125 − 3.560) ÷ 2 = 0.2825 through the gaps, (3.560 − 3.000) ÷ 2 = 0.280 solid.
  test('old root to both turnings', () => {
    const read = plan({ 'sound/oldRoot': length(3.56) });
    expect(printed(read, 'through-teeth', 'throughTeeth')).toBe('0.2825');
    expect(printed(read, 'solid', 'solid')).toBe('0.2800');
    expect(at(read, 'through-teeth').figures['throughTeeth']?.given.find(({ symbol }) => symbol === 'R')?.from).toBe('measured');
  });

  // Half of a shift of 0.006 is 0.003, which over 1.375 leans the teeth 0.125°.
  test('shift of the gash to the error, the lean and the move', () => {
    const read = plan({ 'central/shift': length(0.006) });
    expect(printed(read, 'central', 'error')).toBe('0.0030');
    expect(printed(read, 'central', 'lean')).toBe('0.125');
    expect(printed(read, 'central', 'putRight')).toBe('3 divisions');
  });

  // 2 × 0.003 × tan 14.5° = 0.00155.
  test('run-out over pins to the lash that swings', () =>
    expect(printed(plan({ 'measure/pinRunOut': length(0.003) }), 'measure', 'lashSwing')).toBe('0.0016'));
});

describe('what was typed stands and says so', () => {
  // 0.130 on a knee of 0.100 a turn, in thousandths: 1 turn and 30 divisions.
  test('a typed depth of a roughing round goes to the dial of that round', () => {
    const typed = plan({ 'rough/rough1': length(0.13, 'typed') });
    expect(printed(typed, 'rough', 'dial1')).toBe('1 turn + 30 divisions');
    expect(printed(typed, 'rough', 'dial2')).toBe(printed(plan({}), 'rough', 'dial2'));
  });

  // Half the feed at the same speed: the cutting takes twice as long, running back and mounting stay.
  test('a speed or feed typed over stands in the minutes of turning', () => {
    const minutes = (readings: Readings) => at(plan(readings), 'solid').minutes;
    const value = at(plan({}), 'solid').figures['speed']?.value;
    const rpm = value && 'number' in value ? value.number : Number.NaN;
    const slow = { value: { number: rpm / 10, unit: 'rev/min' }, from: 'typed' } as const;
    expect(minutes({ 'solid/speed': slow })).toBeGreaterThan(minutes({}));
    expect(minutes({ 'solid/feed': length(0.0005, 'typed') })).toBeGreaterThan(minutes({}));
    expect(minutes({ 'through-teeth/speed': slow })).toBe(minutes({}));
  });

  // (4.125 − 3.1) ÷ 2 = 0.5125 of travel of the cross slide.
  test('a typed size to rough to goes to the dial', () => {
    const typed = plan({ 'solid/roughTo': length(3.1, 'typed') });
    expect(printed(typed, 'solid', 'dial')).not.toBe(printed(plan({}), 'solid', 'dial'));
    expect(printed(plan({ 'solid/roughTo': length(3.1) }), 'solid', 'dial')).toBe(printed(plan({}), 'solid', 'dial'));
  });

  test('a typed depth goes to the dial; the worked-out one stays beside it', () => {
    const typed = plan({ 'touch/depth': length(0.27, 'typed') });
    expect(printed(typed, 'touch', 'depth')).toBe('0.2696');
    expect(at(typed, 'touch').figures['depth']?.note).toContain('Typed over: 0.2700 in stands.');
    expect(printed(typed, 'touch', 'dial')).toBe('2 turns + 70 divisions');
  });

  test('a stamped depth stands over the system, and 0.002 apart is asked about', () => {
    const stamped = shop({ cutters: [cutter(5, '5', 21, 25, { stampedDepth: inches(0.275) })] });
    expect(printed(plan({}, stamped), 'touch', 'depth')).toBe('0.2750');
    expect(at(plan({}, stamped), 'touch').cautions.map(({ name }) => name)).toContain('Stamp and system differ');
  });

  // Backlash 0.004: the span 0.58505 loses 0.004 cos 14.5° = 0.00387, the depth gains 0.0059 (derived, the form sunk on the curve).
  test('backlash on fixed centres goes into span and depth; without it the page asks', () => {
    const part = wanted(22, { fixedCentres: true, backlash: inches(0.004) });
    const { operations } = planRouting({ way: 're-cut a spare', wanted: part, blank: spare(31), shop: no5, readings: {} });
    expect(printed(operations, 'first-span', 'span')).toBe('0.5812');
    expect(printed(operations, 'touch', 'deeperForBacklash')).toBe('0.0059');
    expect(printed(operations, 'touch', 'depth')).toBe('0.2755');
    const without = planRouting({
      way: 're-cut a spare',
      wanted: wanted(22, { fixedCentres: true }),
      blank: spare(31),
      shop: no5,
      readings: {},
    });
    expect(at(without.operations, 'touch').cautions.map(({ name }) => name)).toContain('Fixed centres');
  });
});
