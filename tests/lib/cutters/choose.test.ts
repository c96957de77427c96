import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseCutter } from '../../../lib/cutters/choose.ts';
import { cutterMeets } from '../../../lib/cutters/meets.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { printLength } from '../../../lib/values/print.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { arborOf, ask, cutterOf, dp, drawer, full20, gearOf } from './shop.ts';

const inch = (length: Parameters<typeof printLength>[0] | undefined): string =>
  printLength(length ?? inches(99), { unit: 'in', places: 4 });

describe('35 teeth, 8 DP, 14½°, with the No. 3 not owned', () => {
  const choice = chooseCutter(ask(gearOf(35)));

  test('the wanted cutter is named', () => {
    expect(choice.right).toBeNull();
    expect(choice.wanted?.says).toBe('No. 3, 8 DP, 14½°, 35 to 54 teeth');
  });

  test('the only second choice is No. 4, tips thin by 0.0075', () => {
    expect(
      choice.second.map((one) => [
        one.cutter.number,
        one.verdict,
        one.error.exact.count,
        inch(one.error.tip),
        inch(one.error.square ?? undefined),
      ]),
    ).toEqual([['4', 'thin', 26, '0.0075', '0.0060']]);
    expect(choice.second[0]?.says).toContain('+0.0075 in');
  });

  test('No. 2 is refused for leaving the tips full, the others for angle and pitch, each with its error', () => {
    expect(choice.refused.map((one) => [one.cutter.name, one.reason, inch(one.error?.tip)])).toEqual([
      ['cutter No. 2', 'wrong form', '−0.0077'],
      ['20° No. 3', 'wrong angle', '0.0122'],
      ['10 DP No. 3', 'wrong pitch', inch(choice.refused[2]?.error?.tip)],
    ]);
    expect(choice.refused[2]?.says).toContain('10 DP for 8 DP');
    expect(choice.refused[2]?.error?.tip).toBeLessThan(inches(-0.01));
  });

  test('advice in order: borrow a No. 3, else a No. 3½, else the No. 4 in hand', () => {
    expect(choice.advice.map((line) => line.do)).toEqual(['borrow', 'borrow', 'in a pinch']);
    expect(choice.advice.map((line) => /No\. (\d½?)/.exec(line.says)?.[1])).toEqual(['3', '3½', '4']);
    expect(choice.advice.map((line) => inch(line.tip))).toEqual(['0.0000', '0.0036', '0.0075']);
  });

  test('it says that sources differ, that number sets differ, and to measure over 3 and not 4', () => {
    const says = choice.cautions.map((one) => one.says).join('\n');
    expect(says).toMatch(/26 \(low end\): tips \+0\.0075 in; 29 \(treatise\): tips \+0\.0044 in/);
    expect(says).toContain('go by the tooth range');
    expect(says).toMatch(/measure over 3: .* over 4 reads −0\.0018 in off/);
    expect(says).toContain('true involutes');
  });

  test('by the treatise No. 4 is right for 29, and No. 3 for 40', () => {
    const treatise = chooseCutter(ask(gearOf(35), [...drawer, cutterOf('3', 35, 54)], { convention: 'treatise' }));
    expect(treatise.right?.error.exact).toEqual({ count: 40, from: 'treatise' });
    expect(treatise.right?.error.tip).toBeLessThan(0);
    expect(treatise.second.map((one) => [one.cutter.number, inch(one.error.tip)])).toEqual([['4', '0.0044']]);
  });

  test('a count written down for the cutter stands over both', () => {
    const [four] = chooseCutter(ask(gearOf(35), [cutterOf('4', 26, 34, { exactFor: 30 })], { convention: 'treatise' })).second;
    expect([four?.error.exact.from, inch(four?.error.tip)]).toEqual(['typed', '0.0036']);
  });

  test('with no No. 4 either there is still something to borrow and nothing to use', () => {
    const bare = chooseCutter(ask(gearOf(35), []));
    expect(bare.second).toEqual([]);
    expect(bare.advice.map((line) => /No\. (\d½?)/.exec(line.says)?.[1])).toEqual(['3', '3½', '4']);
    expect(bare.advice.every((line) => line.do === 'borrow')).toBe(true);
  });
});

describe('two gears from the hobber’s drawer, 22 and 28 teeth', () => {
  test('28 takes the No. 4 that is owned, and that ends the matter', () => {
    const choice = chooseCutter(ask(gearOf(28)));
    expect(choice.right?.cutter.number).toBe('4');
    expect(choice.wanted).toBeNull();
    expect(choice.advice.map((line) => line.do)).toEqual(['use']);
  });

  test('22 wants a No. 5', () => {
    expect(chooseCutter(ask(gearOf(22))).wanted?.says).toBe('No. 5, 8 DP, 14½°, 21 to 25 teeth');
  });

  test('a loan No. 5 with a 7/8 in hole on a 1 in arbor is flagged, with the arbor that would fit', () => {
    const choice = chooseCutter(ask(gearOf(22), [cutterOf('5', 21, 25, { hole: inches(0.875) })]));
    expect([choice.right?.ready, choice.right?.arbor.wants]).toEqual([false, inches(0.875)]);
    expect(choice.cautions.find((one) => one.name === 'arbor')).toMatchObject({
      weight: 'beware',
      says: 'cutter No. 5: Hole 7/8 in: needs a 7/8 in arbor; owned: 1 in.',
    });
    expect(choice.advice[0]?.do).toBe('put right');
  });

  test('the same hole with a 7/8 in arbor at hand is ready; with it lent out it is not', () => {
    const loan = [cutterOf('5', 21, 25, { hole: inches(0.875) })];
    expect(chooseCutter(ask(gearOf(22), loan, { arbors: [arborOf(1), arborOf(0.875)] })).right?.ready).toBe(true);
    expect(chooseCutter(ask(gearOf(22), loan, { arbors: [arborOf(1), arborOf(0.875, false)] })).right?.troubles).toEqual([
      'Hole 7/8 in: needs a 7/8 in arbor; that one is not here.',
    ]);
  });

  test.each([
    [{ here: false }, 'Not in the shop, or put aside.'],
    [{ sharp: false }, 'Blunt: grind it first.'],
  ])('the right cutter %o is still the right one, but another may be wanted', (more, trouble) => {
    const choice = chooseCutter(ask(gearOf(22), [cutterOf('5', 21, 25, more)]));
    expect(choice.right?.troubles).toEqual([trouble]);
    expect(choice.wanted?.number).toBe('5');
  });

  test('of two right cutters the one that is ready goes first, then the nearer form', () => {
    const [blunt, half, whole] = [cutterOf('2½', 42, 54, { sharp: false }), cutterOf('2½', 42, 54), cutterOf('3', 35, 54)];
    expect(chooseCutter(ask(gearOf(50), [whole, blunt])).right?.cutter).toBe(whole);
    const both = chooseCutter(ask(gearOf(50), [whole, half]));
    expect([both.right?.cutter, both.second[0]?.cutter]).toEqual([half, whole]);
  });
});

describe('offered for nothing', () => {
  test.each([
    [{ pitch: null }, 'No pitch written down'],
    [{ angle: null }, 'No pressure angle written down'],
    [{ teethFrom: null, teethTo: null }, 'No tooth range written down'],
    [{ pitch: null, angle: null, teethFrom: null }, 'No pitch, no pressure angle, no tooth range written down'],
  ])('a No. 3 with %o', (more, says) => {
    const choice = chooseCutter(ask(gearOf(35), [cutterOf('3', 35, 54, more)]));
    expect([choice.right, choice.second.length, choice.refused[0]?.reason]).toEqual([null, 0, 'not written down']);
    expect(choice.refused[0]?.says).toContain(says);
  });

  test('ranges rule and not numbers: a module set numbered the other way round', () => {
    const module2 = { kind: 'module', size: ratio(2) } as const;
    const gear = gearOf(22, { pitch: module2, system: full20 });
    const more = { pitch: module2, angle: degrees(20) };
    const choice = chooseCutter(ask(gear, [cutterOf('5', 26, 34, more), cutterOf('4', 21, 25, more)]));
    expect(choice.right?.cutter.number).toBe('4');
  });

  test('an impossible count or a far finer pitch is refused in words, never thrown', () => {
    const odd = [cutterOf('?', 1, 2), cutterOf('?', 35, 54, { exactFor: 1 }), cutterOf('?', 35, 54, { pitch: dp(100) })];
    const choice = chooseCutter(ask(gearOf(35), odd));
    expect(choice.refused.map((one) => [one.reason, one.error])).toEqual([
      ['wrong form', null],
      ['wrong form', null],
      ['wrong pitch', null],
    ]);
  });
});

describe('other gears', () => {
  test('a helical gear goes by its virtual count: 24 teeth at 30° are 37', () => {
    const helical = gearOf(24, { helix: { angle: degrees(30), hand: 'right' } });
    const choice = chooseCutter(ask(helical, [cutterOf('5', 21, 25), cutterOf('3', 35, 54)]));
    expect(choice.right?.cutter.number).toBe('3');
  });

  test('below 12 teeth no number is named', () => {
    expect(chooseCutter(ask(gearOf(10), [])).wanted).toMatchObject({ number: null, teethFrom: 10, teethTo: 10 });
  });

  test('a stamp more than 0.002 in from the system’s depth is asked about; a nearer one is not', () => {
    const stamped = (depth: number) => chooseCutter(ask(gearOf(28), [cutterOf('4', 26, 34, { stampedDepth: inches(depth) })]));
    expect(stamped(0.2725).cautions.find((one) => one.name === 'stamped depth')?.says).toContain('0.2725');
    expect(stamped(0.271).cautions.some((one) => one.name === 'stamped depth')).toBe(false);
  });

  test('a rack end takes any count', () => {
    expect(chooseCutter(ask(gearOf(400), [cutterOf('1', 135, null)])).right?.ready).toBe(true);
  });
});

describe('meets', () => {
  const need = { pitch: dp(8), angle: degrees(14.5), teeth: 35 };
  test.each([
    ['right', cutterOf('3', 35, 54), true],
    ['a range ending one short', cutterOf('4', 26, 34), false],
    ['a range beginning one late', cutterOf('x', 36, 54), false],
    ['20°', cutterOf('3', 35, 54, { angle: degrees(20) }), false],
    ['15°', cutterOf('3', 35, 54, { angle: degrees(15) }), false],
    ['10 DP', cutterOf('3', 35, 54, { pitch: dp(10) }), false],
    ['circular pitch 0.3927', cutterOf('3', 35, 54, { pitch: { kind: 'CP', size: ratio(3927, 10_000) } }), false],
    ['lent out', cutterOf('3', 35, 54, { here: false }), false],
    ['blunt', cutterOf('3', 35, 54, { sharp: false }), false],
    ['no range', cutterOf('3', null, null), false],
    ['no pitch', cutterOf('3', 35, 54, { pitch: null }), false],
  ])('%s', (_, cutter, expected) => {
    expect(cutterMeets(cutter, need)).toBe(expected);
  });
});

const anyCutter = fc
  .record({
    from: fc.option(fc.integer({ min: 8, max: 200 }), { nil: null }),
    wide: fc.option(fc.integer({ min: 0, max: 60 }), { nil: null }),
    pitch: fc.constantFrom(dp(8), dp(10), null),
    angle: fc.constantFrom(degrees(14.5), degrees(20), null),
    here: fc.boolean(),
    sharp: fc.boolean(),
    hole: fc.constantFrom(inches(1), inches(0.875), null),
  })
  .map(({ from, wide, ...more }) => cutterOf('n', from, from === null || wide === null ? null : from + wide, more));

test('whatever lies in the drawer: each cutter is judged once, only the right pitch and angle are offered, and meets agrees with right', () => {
  fc.assert(
    fc.property(fc.integer({ min: 12, max: 250 }), fc.array(anyCutter, { maxLength: 6 }), (teeth, cutters) => {
      const gear = gearOf(teeth);
      const choice = chooseCutter(ask(gear, cutters));
      const offered = [...(choice.right ? [choice.right] : []), ...choice.second];
      const all = [...offered, ...choice.refused].map((one) => one.cutter.id).sort((a, b) => a - b);
      expect(all).toEqual(cutters.map((one) => one.id).sort((a, b) => a - b));
      for (const { cutter, error } of offered) {
        expect([cutter.pitch, cutter.angle]).toEqual([dp(8), degrees(14.5)]);
        expect(error.tip === 0).toBe(error.exact.count === teeth);
      }
      const met = cutters.some((cutter) => cutterMeets(cutter, { pitch: dp(8), angle: degrees(14.5), teeth }));
      expect(choice.wanted === null || !met).toBe(true);
      expect(choice.right !== null || !met).toBe(true);
      if (choice.wanted !== null && choice.right?.ready) throw new Error('wanted although a right cutter is ready');
    }),
    { numRuns: 150 },
  );
});
