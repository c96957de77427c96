import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { holdingDelays } from '../../../lib/planning/holding.ts';
import { cutter, mandrel } from '../routing/halvorsen.ts';
import { idOf, twoGears } from './two-gears.ts';

// Story 1: cut the 28 now (ratios 476 to 828, one more setting-up) or hold it for the No. 5; the owner chooses.
const ratios = { today: 476, withIt: 828 };
const ask = (operations: ReturnType<typeof twoGears>, hold: 22 | 28, heldFor: 22 | 28) =>
  holdingDelays({ hold: idOf(operations, hold, 'rough'), heldFor: idOf(operations, heldFor, 'rough'), operations, ratios });

describe('holding the 28 for the 22', () => {
  test('delays the 28 while No. 5 is lacking, and says what both wait for first', () => {
    const { delays, why, choices } = ask(twoGears(), 28, 22);
    expect(delays).toBe(true);
    expect(why).toBe(
      'Yes: the 22 waits for cutter No. 5, 8 DP, 14½°, for 22 teeth as well, and the 28 does not. Both wait for mandrel for a 6-spline bore of 1.2500 in first.',
    );
    expect(choices.now).toBe('Do Rough all round, 2 times (the 28) now: ratios 476 to 828, one more setting-up.');
    expect(choices.hold).toBe('Or hold it for cutter No. 5, 8 DP, 14½°, for 22 teeth, and do both in one setting-up.');
  });

  test('delays nothing once No. 5 is here, mandrel or no mandrel', () => {
    const no5 = { cutters: [cutter(4, '4', 26, 34), cutter(5, '5', 21, 25)] };
    expect(ask(twoGears({}, no5), 28, 22)).toMatchObject({ delays: false });
    expect(ask(twoGears({}, no5), 28, 22).why).toBe('No: both wait for mandrel for a 6-spline bore of 1.2500 in, and for nothing else.');
    expect(ask(twoGears({}, { ...no5, mandrels: [mandrel] }), 28, 22).why).toBe('No: neither waits for a tool.');
  });

  test('the other way about delays nothing: the 22 waits for its cutter anyhow', () => expect(ask(twoGears(), 22, 28).delays).toBe(false));
});

test('holding for what itself waits for it is refused', () => {
  const gears = twoGears();
  const [first, second] = [idOf(gears, 22, 'rough'), idOf(gears, 22, 'finish')];
  expect(() => holdingDelays({ hold: first, heldFor: second, operations: gears })).toThrow(DomainError);
  expect(() => holdingDelays({ hold: first, heldFor: first, operations: gears })).toThrow(DomainError);
});
