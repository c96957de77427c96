import { expect, it } from 'vitest';
import { blemish, firstStory } from './bench.ts';

/** derived: new outside 24 ÷ 8 = 3.0000; (3.0000 − 2.9000) ÷ 2 = 0.0500 */
const ANEW =
  'choose the blank anew. New outside 3.0000 in; old roots measured 2.9000 in: the old gaps would stay 0.0500 in deep under the new outside.';

it('a blank found too small is said at once, and wherever it would be cut by: count of teeth, one number at a time, index and set-up sheet', async () => {
  const { first, second, line, get, post } = await firstStory();
  const [sound, rough, other] = [await line(first, 'sound'), await line(first, 'rough'), await line(second, 'rough')];
  const pages = [
    `/operations/${sound.id}`,
    `/operations/${rough.id}/teeth`,
    `/operations/${rough.id}/at-machine`,
    `/operations/${rough.id}/index-sheet`,
  ];
  const setUps = `/set-ups/sheet?operations=${rough.id},${other.id}`;
  for (const url of [...pages, setUps]) expect((await get(url)).body, url).not.toContain('choose the blank anew');
  const answer = await post(`/operations/${sound.id}/done`, { rev: String(sound.rev), 'm-oldRoot': '2.90' });
  expect(answer.statusCode).toBe(303);
  for (const url of pages) {
    const { body, statusCode } = await get(url);
    expect(statusCode, url).toBe(200);
    expect(body, url).toContain(`Cut nothing: ${ANEW}`);
    expect(body, url).not.toMatch(blemish);
  }
  const { body } = await get(setUps);
  expect(body).toContain('H12-22T: cut nothing, choose the blank anew.');
  expect(body).not.toContain('H12-28T: cut nothing');
});
