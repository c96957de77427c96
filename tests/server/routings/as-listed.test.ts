import { describe, expect, it } from 'vitest';
import { routing } from '../../../db/routings.ts';
import { inches } from '../../../lib/values/length.ts';
import { textOf } from '../machines/read-page.ts';
import { type Bench, blemish, firstStory, listsIn, markIn } from './bench.ts';

/** The blank as measured, in inches: the depth to dial follows. derived: 0.2696 − (3.000 − measured) ÷ 2 + paper of 0.001. */
async function measureBlank({ first, line, post }: Bench, outside: string): Promise<void> {
  const { id, rev } = await line(first, 'blank');
  expect((await post(`/operations/${id}/measured`, { rev: String(rev), 'm-outside': outside })).statusCode).toBe(303);
}

const depthOf = async ({ first, line }: Bench) => {
  const found = (await line(first, 'touch')).figures.find(({ key }) => key === 'depth');
  return found && 'length' in found.shown ? found.shown.length : 0;
};
const FIRST_PRINTED = '0.2706 in';

describe('what is accepted is what was listed', () => {
  it('a reading noted in between: 409 with both, nothing written; accepted once it is listed as it is now', async () => {
    const bench = await firstStory();
    const { first, db, line, get, post } = bench;
    await measureBlank(bench, '2.996');
    const { id } = await line(first, 'touch');
    const page = (await get(`/operations/${id}`)).body;
    const listed = listsIn(page.slice(page.indexOf('id="changes"'), page.indexOf('id="measure"'))).at(0) ?? '';
    expect(JSON.parse(listed)).toContainEqual(['touch/depth', 'Depth to dial from touching', '0.2686 in']);
    const before = await depthOf(bench);
    await measureBlank(bench, '2.990');
    const form = { rev: String((await routing(db, first)).rev), listed, back: `/operations/${id}` };
    const refused = await post(`/routings/${first}/accept`, form);
    expect(refused.statusCode).toBe(409);
    expect(refused.body).not.toMatch(blemish);
    // derived: 0.2696 − 0.005 + 0.001
    expect(textOf(refused.body)).toContain('Depth to dial from touching: your page said 0.2686 in, by now it is 0.2656 in.');
    expect(textOf(refused.body)).toContain('Nothing is accepted yet.');
    expect(await depthOf(bench)).toBe(before);
    const again = listsIn(refused.body).at(0) ?? '';
    expect((await post(`/routings/${first}/accept`, { ...form, listed: again })).headers.location).toBe(`/operations/${id}`);
    // to the nanometre: 2.157 ÷ 8 − 0.005 + 0.001
    expect(await depthOf(bench)).toBe(inches(0.265625));
  });

  it('a reading taken back in between: what was listed is worked out otherwise no more, and that is said', async () => {
    const bench = await firstStory();
    const { first, db, line, get, post } = bench;
    await measureBlank(bench, '2.996');
    const [listed = ''] = listsIn((await get(`/routings/${first}`)).body);
    const { id, rev } = await line(first, 'blank');
    await post(`/operations/${id}/figures/outside/back`, { rev: String(rev), what: 'measured' });
    const refused = await post(`/routings/${first}/accept`, { rev: String((await routing(db, first)).rev), listed });
    expect(refused.statusCode).toBe(409);
    expect(textOf(refused.body)).toContain('your page said 0.2686 in, by now it is as it is printed.');
  });

  it('a form that lists nothing accepts nothing', async () => {
    const bench = await firstStory();
    const { first, db, post } = bench;
    await measureBlank(bench, '2.996');
    for (const listed of ['', 'touch/depth', '{"key":1}', '[[1,2,3]]', '[["touch/depth"]]'])
      await post(`/routings/${first}/accept`, { rev: String((await routing(db, first)).rev), listed });
    expect((await routing(db, first)).stale).toBe(1);
    expect(await depthOf(bench)).toBe(inches(0.270625));
  });

  it('a set-up is taken over when it was accepted, not with a figure of its operation', async () => {
    const bench = await firstStory();
    const { first, db, line, post } = bench;
    await measureBlank(bench, '2.996');
    const touch = await line(first, 'touch');
    const elsewhere = await db
      .selectFrom('set_up')
      .select('id')
      .where('id', '!=', touch.set_up_id)
      .where('place', '=', 'bench')
      .executeTakeFirstOrThrow();
    await db.updateTable('operation').set({ set_up_id: elsewhere.id }).where('id', '=', touch.id).execute();
    const listed = JSON.stringify([['touch/depth', 'Depth to dial from touching', '0.2686 in']]);
    await post(`/routings/${first}/accept`, { rev: String((await routing(db, first)).rev), listed });
    expect((await line(first, 'touch')).set_up_id).toBe(elsewhere.id);
    expect((await routing(db, first)).stale).toBe(1);
  });

  it('marked done by what its page showed: a reading noted meanwhile is told with both, and what was typed is kept', async () => {
    const bench = await firstStory();
    const { first, line, get, post } = bench;
    const { id, rev } = await line(first, 'touch');
    const page = (await get(`/operations/${id}`)).body;
    expect(markIn(page, `/operations/${id}/done`)).not.toBe('');
    await measureBlank(bench, '2.996');
    const form = { rev: String(rev), minutes: '7', listed: listsIn(page).at(-1) ?? '' };
    const refused = await post(`/operations/${id}/done`, form);
    expect(refused.statusCode).toBe(409);
    expect(textOf(refused.body)).toContain(`Depth to dial from touching: your page said ${FIRST_PRINTED}, by now it is 0.2686 in.`);
    expect((await line(first, 'touch')).done_on).toBeNull();
    expect(refused.body).toContain('name="minutes" value="7"');
    const again = { ...form, listed: listsIn(refused.body).at(0) ?? '' };
    expect((await post(`/operations/${id}/done`, again)).statusCode).toBe(303);
    expect(await line(first, 'touch')).toMatchObject({ state: 'done', minutes_taken: 7 });
    expect(await depthOf(bench)).toBe(inches(0.268625));
  });
});

it('a routing closed meanwhile takes nothing more, and says back what was typed', async () => {
  const { first, db, line, post } = await firstStory();
  const { id, rev } = await line(first, 'blank');
  await post(`/routings/${first}/give-up`, { rev: String((await routing(db, first)).rev) });
  const late = await post(`/operations/${id}/done`, { rev: String(rev), 'm-outside': '2.9985', minutes: '12', listed: '[]' });
  expect(late.statusCode).toBe(409);
  expect(textOf(late.body)).toContain('Nothing of yours was saved');
  expect(late.body).toContain('name="m-outside" value="2.9985"');
  expect(late.body).toContain('name="minutes" value="12"');
});

describe('a caution lasts as long as its reason', () => {
  const NOT_MEASURED = 'Not measured: worked out as';

  it('an old root that was measured is not said to be worked out: while open, when done, and once the routing is closed', async () => {
    const { first, part22, db, line, get, post } = await firstStory();
    const { id, rev } = await line(first, 'sound');
    expect((await get(`/operations/${id}`)).body).toContain(NOT_MEASURED);
    expect((await get(`/parts/${part22}/sheet`)).body).toContain(NOT_MEASURED);
    const kept = await line(first, 'sound');
    await post(`/operations/${id}/done`, { rev: String(rev), 'm-oldRoot': '3.584', 'm-runOut': '0.002' });
    expect((await line(first, 'sound')).state).toBe('done');
    const stored = (await line(first, 'sound')).cautions.map(({ says }) => says).join(' ');
    expect(kept.cautions.map(({ says }) => says).join(' ')).toContain(NOT_MEASURED);
    expect(stored).not.toContain(NOT_MEASURED);
    for (const url of [`/operations/${id}`, `/parts/${part22}/sheet`, `/operations/${id}/at-machine`])
      expect((await get(url)).body, url).not.toContain(NOT_MEASURED);
    await post(`/routings/${first}/give-up`, { rev: String((await routing(db, first)).rev) });
    expect((await get(`/operations/${id}`)).body).not.toContain(NOT_MEASURED);
  });

  it('taken back, it is said again', async () => {
    const { first, line, get, post } = await firstStory();
    const sound = await line(first, 'sound');
    await post(`/operations/${sound.id}/done`, { rev: String(sound.rev), 'm-oldRoot': '3.584' });
    await post(`/operations/${sound.id}/undone`, { rev: String((await line(first, 'sound')).rev) });
    await post(`/operations/${sound.id}/figures/oldRoot/back`, { rev: String((await line(first, 'sound')).rev), what: 'measured' });
    expect((await get(`/operations/${sound.id}`)).body).toContain(NOT_MEASURED);
    expect((await line(first, 'sound')).cautions.map(({ says }) => says).join(' ')).toContain(NOT_MEASURED);
  });
});
