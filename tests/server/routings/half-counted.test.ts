import { expect, it } from 'vitest';
import { tick } from '../../../db/ticks.ts';
import { NOW } from '../app-for-tests.ts';
import { blemish, firstStory } from './bench.ts';

it('roughing with some teeth ticked is not done silently: it says how many, and a yes keeps what was typed', async () => {
  const { db, first, line, post } = await firstStory();
  const { id, rev, figures } = await line(first, 'rough');
  const rounds = figures.filter(({ key }) => /^rough\d+$/.test(key)).length;
  for (let tooth = 1; tooth <= 7; tooth++) await tick(db, id, tooth, NOW);
  const asked = await post(`/operations/${id}/done`, { rev: String(rev), minutes: '90' });
  expect(asked.statusCode).toBe(200);
  expect(asked.body).toContain(`7 of ${rounds * 22} are ticked off`);
  expect(asked.body).toContain('name="minutes" value="90"');
  expect(asked.body).toContain(`href="/operations/${id}/teeth"`);
  expect(asked.body).not.toMatch(blemish);
  expect((await line(first, 'rough')).done_on).toBeNull();
  await tick(db, id, 8, NOW);
  expect((await post(`/operations/${id}/done`, { rev: String(rev), minutes: '90', ticked: '7' })).body).toContain('8 of ');
  expect((await post(`/operations/${id}/done`, { rev: String(rev), minutes: '90', ticked: '8' })).statusCode).toBe(303);
  expect(await line(first, 'rough')).toMatchObject({ state: 'done', minutes_taken: 90 });
});

it('with none ticked, or all, it is done at once', async () => {
  const { db, first, line, post } = await firstStory();
  const [rough, nick] = [await line(first, 'rough'), await line(first, 'nick')];
  expect((await post(`/operations/${rough.id}/done`, { rev: String(rough.rev) })).statusCode).toBe(303);
  for (let mark = 1; mark <= 23; mark++) await tick(db, nick.id, mark, NOW);
  expect((await post(`/operations/${nick.id}/done`, { rev: String(nick.rev) })).statusCode).toBe(303);
});
