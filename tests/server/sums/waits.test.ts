import { expect, it } from 'vitest';
import { operationsOf } from '../../../db/operations.ts';
import { NOW } from '../app-for-tests.ts';
import { textOf } from '../machines/read-page.ts';
import { firstStory } from '../routings/bench.ts';

const LEAD = { diameter: '2', face: '1', hand: 'right', turns: '40', tableScrew: '4 TPI', drive: 'worm', upTo: '4', mounted: '' };
const address = (path: string, boxes: Readonly<Record<string, string>>): string => `/sums/${path}?${new URLSearchParams(boxes)}`;
/** 10 in on equal wheels: 19 ÷ 22 of it, and no other way to 11 from this drawer. */
const lead = (missing: string): string =>
  address('wheels-for-a-lead', { ...LEAD, leadWanted: '220/19 in', drawer: '19x2, 25x2, 31x2, 34x2, 37, 41, 46x2, 52', missing });
const partLink = /href="(\/parts\/\d+)">The 22 that is missing/;

it('a lead that a missing wheel would make exact leads to the part of that wheel, and one that no missing wheel betters does not', async () => {
  const { get } = await firstStory();
  const waits = (await get(lead('22, 28'))).body;
  expect(textOf(waits)).toContain('Exact with the 22 that is missing: 19 ÷ 22; the job can wait for it.');
  const part = partLink.exec(waits)?.[1] ?? '';
  expect(textOf((await get(part)).body)).toContain('22');
  const exact = (await get(lead('22, 28').replace('220%2F19', '250%2F19'))).body;
  expect(textOf(exact)).toContain('Exact: 19 ÷ 25.');
  expect(exact).not.toMatch(/that is missing:/);
  expect((await get(lead(''))).body).not.toMatch(partLink);
});

it('a thread that a missing wheel would make exact does so too', async () => {
  const { get } = await firstStory();
  const boxes = { thread: '22/19 in', screw: '1 in', drawer: '19x2, 25x2, 31x2, 34x2, 37', upTo: '4', over: '1', missing: '22, 28' };
  const page = (await get(address('change-gears', boxes))).body;
  expect(textOf(page)).toContain('Exact with the 22 that is missing: 22 ÷ 19; the job can wait for it.');
  expect(page).toMatch(partLink);
});

it('work that is held for the last operation of the missing wheel is held until that wheel is done, and no longer', async () => {
  const { first, second, db, line, get, post } = await firstStory();
  const mine = await line(second, 'blank');
  const last = (await operationsOf(db, first)).at(-1);
  const held = await post(`/operations/${mine.id}/hold`, { rev: String(mine.rev), held_for: 'none', other: String(last?.id) });
  expect(held.statusCode, held.body).toBe(303);
  const state = async (): Promise<string> => (await line(second, 'blank')).state;
  expect(await state()).toBe('held');
  expect((await get(`/operations/${mine.id}`)).body).toContain('is-held');
  await db.updateTable('operation').set({ done_on: NOW }).where('routing_id', '=', first).execute();
  expect(await state()).not.toBe('held');
  expect((await get(`/operations/${mine.id}`)).body).not.toContain('is-held');
});
