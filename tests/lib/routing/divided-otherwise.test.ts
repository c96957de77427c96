import { expect, test } from 'vitest';
import { trainFrom, trainWords } from '../../../lib/dividing/idlers.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import type { Head } from '../../../lib/tooling/tooling.ts';
import { at, head, printed, shop, spare, wanted } from './halvorsen.ts';

// Story 4: 71 teeth, the three plates, gears 28 to 100. Typed from the story, derived there.
const geared: Head = { ...head, gears: [28, 32, 40, 44, 48, 56, 64, 72, 86, 100] };
const planOf = (teeth: number, heads: readonly Head[]) =>
  planRouting({ way: 're-cut a spare', wanted: wanted(teeth), blank: spare(teeth + 9), shop: shop({ heads }), readings: {} }).operations;
const prime = planOf(71, [geared]);

test.each([
  ['crank', '10 spaces on 18'],
  ['sector', '10'],
  ['sectorHoles', '11'],
  ['plateTurns', '5/9'],
  ['gears', '40 on the spindle, 72 on the plate’s shaft'],
  ['ifWrong', '73'],
  ['ifLocked', '72'],
  ['proof', '40'],
])('71 teeth, plate: %s %s', (figure, text) => expect(printed(prime, 'plate', figure)).toBe(text));

test('says which way the plate turns, what to watch, and what each false count of nicks means', () => {
  const { steps, cautions, title } = at(prime, 'plate');
  expect(title).toContain('gears');
  expect(steps.join(' ')).toMatch(/plate stop out.*must turn with the crank/);
  expect(steps.join(' ')).toContain('one idler or two idlers: not tried on this head');
  expect(cautions.map(({ says }) => says).join(' ')).toMatch(/Plate stop out.*Head level\. Not with a helix/);
  expect(at(prime, 'nick').steps.join(' ')).toMatch(/71 is right\. 73: .*wrong way.*72: the plate was left locked/);
});

test('a head that was tried gets its own count of idlers', () => {
  const idlers = (oneIdler: 'with' | 'against') => printed(planOf(71, [{ ...geared, oneIdler }]), 'plate', 'idlers');
  expect([idlers('with'), idlers('against')]).toEqual(['one idler', 'two idlers']);
});

test('cranks by the same move when roughing and finishing; the set-up names the gears', () => {
  for (const key of ['rough', 'finish']) expect(printed(prime, key, 'crank')).toBe('10 spaces on 18');
  expect(at(prime, 'rough').setUp.says).toContain('geared (40 on the spindle');
  expect(at(prime, 'rough').setUp.key).not.toBe(at(planOf(72, [geared]), 'rough').setUp.key);
});

test('57 with a back pin and no gears: two moves, both written', () => {
  const two = planOf(57, [{ ...head, backPin: true }]);
  expect([printed(two, 'plate', 'crank'), printed(two, 'plate', 'back'), printed(two, 'plate', 'proof')]).toEqual([
    '5 spaces on 15',
    '7 spaces on 19',
    '40',
  ]);
  expect(at(two, 'plate').needs).toEqual(
    expect.arrayContaining([
      { kind: 'circle', holes: 15 },
      { kind: 'circle', holes: 19 },
    ]),
  );
  expect(printed(two, 'finish', 'back')).toBe('7 spaces on 19');
});

test('a pin that reaches neither circle: nothing is offered', () => {
  expect(printed(planOf(57, [{ ...head, backPin: true, reached: [20, 33, 49] }]), 'plate', 'crank')).toBe('none');
});

test('a plain circle stays plain whatever gears are owned', () => {
  expect(printed(planOf(72, [geared]), 'plate', 'crank')).toBe('10 spaces on 18');
  expect(Object.keys(at(planOf(72, [geared]), 'plate').figures)).not.toContain('gears');
});

test('words of gears are read back', () => {
  for (const train of [
    { drivers: [40], driven: [72] },
    { drivers: [72, 64], driven: [24, 48] },
  ])
    expect(trainFrom(trainWords(train))).toEqual(train);
  expect(trainFrom('none')).toBeNull();
});
