import { expect, test } from 'vitest';
import { planRouting } from '../../../lib/routing/plan.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { at, cutter, printed, shop, spare, wanted } from './halvorsen.ts';

// Story 5, Ashdown & Lyle: 35 teeth of 8 DP without a No. 3. Every figure is given all the same; typed from the story, derived there.
const drawer = [
  cutter(1, '2', 55, 134),
  cutter(2, '4', 26, 34),
  cutter(3, '3', 35, 54, { name: '20° No. 3', angle: degrees(20) }),
  cutter(4, '3', 35, 54, { name: '10 DP No. 3', pitch: { kind: 'DP', size: ratio(10) } }),
];
const { operations } = planRouting({
  way: 're-cut a spare',
  wanted: wanted(35),
  blank: spare(41),
  shop: shop({ cutters: drawer }),
  readings: {},
});

test.each([
  ['blank', 'outside', '4.6250'],
  ['touch', 'depth', '0.2696'],
  ['plate', 'crank', '1 turn + 3 spaces on 21'],
  ['first-span', 'k', '3'],
  ['first-span', 'span', '0.9740'],
  ['first-span', 'spanAbove', '1.3542'],
])('%s, %s', (operation, figure, text) => expect(printed(operations, operation, figure)).toBe(text));

test('the need is a description, and neither the 20° nor the 10 DP one meets it', () => {
  expect(at(operations, 'rough').needs.at(-1)).toMatchObject({ kind: 'cutter', teeth: 35 });
  const says = at(operations, 'cutter-on-arbor').cautions.map((one) => one.says);
  expect(says.some((one) => one.startsWith('Waits for cutter No. 3, 8 DP, 14½°, for 35 teeth.'))).toBe(true);
  expect(says.some((one) => one.startsWith('Borrow a No. 3 '))).toBe(true);
});

test('with a substitute only the 3 is safe to span over', () => {
  const caution = at(operations, 'first-span').cautions.find(({ name }) => name === 'span');
  expect(caution?.says).toContain('measure over 3');
  expect(caution?.says).toContain('over 4 reads −0.0018 in off');
});

test('the other circle of the story, 7 on 49, when that is the plate chosen', () => {
  const of49 = planRouting({
    way: 're-cut a spare',
    wanted: wanted(35),
    blank: spare(41),
    shop: shop({ cutters: drawer }),
    readings: {},
    circle: { plateId: 3, side: 0, circle: 49 },
  });
  expect(printed(of49.operations, 'plate', 'crank')).toBe('1 turn + 7 spaces on 49');
  expect(at(of49.operations, 'rough').setUp.key).not.toBe(at(operations, 'rough').setUp.key);
});

test('no circle serves 71: said so, with no near value', () => {
  const of71 = planRouting({ way: 're-cut a spare', wanted: wanted(71), blank: spare(80), shop: shop(), readings: {} });
  expect(printed(of71.operations, 'plate', 'crank')).toBe('none');
  expect(at(of71.operations, 'plate').cautions[0]).toMatchObject({ weight: 'danger', name: 'No circle serves' });
  expect(at(of71.operations, 'plate').needs).toContainEqual({ kind: 'circle', holes: 71 });
});

// Story 1 must flag it: a loan No. 5 with a 7/8 in hole when the arbor is 1 in.
test('a lent No. 5 with a 7/8 hole asks for its own arbor, and says so', () => {
  const loan = shop({ cutters: [cutter(5, '5', 21, 25, { hole: inches(0.875) })] });
  const of22 = planRouting({ way: 're-cut a spare', wanted: wanted(22), blank: spare(31), shop: loan, readings: {} }).operations;
  expect(at(of22, 'rough').needs).toContainEqual({ kind: 'arbor', diameter: inches(0.875) });
  expect(at(of22, 'cutter-on-arbor').cautions.map(({ says }) => says)).toContain(
    '8 DP No. 5: Hole 7/8 in: needs a 7/8 in arbor; owned: 1 in.',
  );
});

test('nobody has said what bore is wanted: to be measured first, never taken for granted', () => {
  const bare = wanted(22, { gear: { ...wanted(22).gear, bore: null } });
  const plan = planRouting({ way: 're-cut a spare', wanted: bare, blank: spare(31), shop: shop(), readings: {} }).operations;
  expect(at(plan, 'sound').verdict).toContain('Measure the shaft first');
  expect(at(plan, 'prove-mandrel').needs).toHaveLength(1);
});
