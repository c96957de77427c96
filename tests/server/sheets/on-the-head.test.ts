import { expect, test } from 'vitest';
import { operationsOf } from '../../../db/operations.ts';
import { refreshAllStale } from '../../../db/replan.ts';
import { routing } from '../../../db/routings.ts';
import { NOW, send } from '../app-for-tests.ts';
import { plain } from './read-sheet.ts';
import { anotherWheel, GEARS, toBeCut } from './to-be-cut.ts';

const crankOf = (text: string) => /Crank for one division m ([^=]*?) Mind/.exec(text)?.[1] ?? '';

test('73 takes the plate and the gears as 71 left them on the head, and the page says so', async () => {
  const { shop, db, operation, body } = await toBeCut(71, { gears: GEARS });
  const plate = await operation('plate');
  const before = await anotherWheel(db, 73);
  const done = await send(shop, `/operations/${plate}/done`, { rev: '1', minutes: '15' });
  expect(done.statusCode).toBe(303);
  const page = plain(await body(`/operations/${await before.operation('plate')}`));
  // derived: 73 by 10 on 18 wants −5/9: the same gears, the plate the other way
  expect(page).toContain('40 on the spindle, 72 on the plate’s shaft');
  expect(page).toContain('10 spaces on 18');
  expect(page).toContain('was set last: if it still stands on the head');
  expect(page).toContain('look which way the plate turns');
});

test('a wheel stays on the plate that stands on the head after the one it was planned with is off', async () => {
  // derived: 60 is 10 on 15 or 12 on 18 of plate 1, 14 on 21 of plate 2; 22 is on 33 of plate 2 alone
  const { shop, db, operation, routing: own } = await toBeCut(22, {});
  const sixty = await anotherWheel(db, 60);
  const [planned] = (await operationsOf(db, sixty.routing)).filter(({ key }) => key === 'plate');
  expect(planned?.figures.find(({ key }) => key === 'crank')?.shown).toMatchObject({ move: { circle: 33 } });
  await send(shop, `/operations/${await operation('plate')}/done`, { rev: '1', minutes: '15' });
  await db.updateTable('operation').set({ done_on: NOW }).where('routing_id', '=', own).execute();
  await refreshAllStale(db);
  // without the plate that is on, 60 alone would go to the fewest holes: 10 on 15
  expect((await routing(db, sixty.routing)).stale).toBe(0);
});

test('a wheel divided by gears has no refusal among the circles for several parts', async () => {
  const { part, body } = await toBeCut(71, { gears: GEARS });
  const page = plain(await body(`/parts/${part.id}`));
  expect(page).not.toContain('No circle on these plates divides 71');
  expect(crankOf(page)).toBe('10 spaces on 18');
});
