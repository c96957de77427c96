import { expect, test } from 'vitest';
import { planRouting } from '../../../lib/routing/plan.ts';
import { at, shop, spare, wanted } from './halvorsen.ts';

const { operations } = planRouting({
  way: 're-cut a spare',
  wanted: wanted(22, { slides: true }),
  blank: spare(31),
  shop: shop(),
  readings: {},
});

/** The 21 steps of a gear from a spare, as common practice orders them (no source): every one that must be there, and those offered. */
const MUST = [
  [1, 'count', /count.*measure.*photograph/i, /spline or keyway.*which face/i],
  [2, 'file-test', /file/i, /tip, root, web and bore/i],
  [3, 'sound', /roots, metal, wall, bore/i, /run-out|against the bore/i],
  [4, 'lay-out', /every tool/i, /range, angle and stamped depth/i],
  [5, 'prove-mandrel', /between centres/i, /indicator/i],
  [6, 'mount', /on the mandrel/i, /burr/i],
  [7, 'through-teeth', /through the old teeth/i, /slower speed/i],
  [7, 'solid', /solid/i, /measure/i],
  [7, 'last-cuts', /measured last cuts/i, /measure/i],
  [7, 'blank', /size and run-out/i, /full turn by hand/i],
  [8, 'edges', /0\.010/i, /rims/i],
  [9, 'line-up', /head and tailstock/i, /same.*keyway|without shake/i],
  [10, 'cutter-on-arbor', /arbor/i, /thrust toward the head/i],
  [11, 'central', /central.*prove/i, /end for end/i],
  [12, 'plate', /circle and sector/i, /by spaces/i],
  [12, 'nick', /22 and one more/i, /nick 23 falls in nick 1/i],
  [13, 'touch', /touch.*zero.*depth/i, /clamp saddle and knee/i],
  [14, 'rough', /rough all round, 2 times/i, /one way only/i],
  [15, 'first-span', /span.*feed on/i, /read the span over 2/i],
  [15, 'finish', /one setting/i, /leave the depth/i],
  [16, 'measure', /finished teeth/i, /three places.*last/i],
  [17, 'burrs', /burrs/i, /edge/i],
  [18, 'mark', /count, pitch and angle/i, /web/i],
  [19, 'on-its-shaft', /own shaft/i, /by hand/i],
  [19, 'with-its-mate', /real centres/i, /full round.*tight spot/i],
  [21, 'record', /record/i, /against limits/i],
] as const;

test.each(MUST)('step %i: %s', (_, key, title, step) => {
  const found = at(operations, key);
  expect(found.must).toBe(true);
  expect(found.title).toMatch(title);
  expect(found.steps.join(' ')).toMatch(step);
});

test('they stand in that order', () => {
  const order = MUST.map(([, key]) => operations.findIndex((one) => one.key === key));
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test.each([
  ['chamfer', 'edges'],
  ['tooth-ends', 'burrs'],
  ['hardening', 'with-its-mate'],
])('%s is offered, never demanded', (key, after) => {
  expect(at(operations, key)).toMatchObject({ must: false, after: [after] });
});

test('tooth ends are left alone on a wheel that does not slide', () => {
  const plain = planRouting({ way: 're-cut a spare', wanted: wanted(22), blank: spare(31), shop: shop(), readings: {} });
  expect(plain.operations.some(({ key }) => key === 'tooth-ends')).toBe(false);
});

test('every figure has a name that begins as a label does', () => {
  const names = operations.flatMap(({ key, figures }) => Object.values(figures).map(({ name }) => `${key}: ${name}`));
  expect(names.length).toBeGreaterThan(60);
  expect(names.filter((name) => !/: [\p{Lu}\d]/u.test(name))).toEqual([]);
});
