import { beforeEach, describe, expect, it } from 'vitest';
import { operationsOf } from '../../../db/operations.ts';
import { part as partById, savePart } from '../../../db/parts.ts';
import { routing } from '../../../db/routings.ts';
import { textOf } from '../machines/read-page.ts';
import { type Bench, blemish, firstStory } from './bench.ts';

type Sent = Readonly<Record<string, string>>;

describe('a form sent to a routing that was closed meanwhile gives back what was typed', () => {
  let bench: Bench;
  let blank: { readonly id: number; readonly rev: number };
  let before: string;

  const stands = async () => JSON.stringify(await operationsOf(bench.db, bench.first));

  beforeEach(async () => {
    bench = await firstStory();
    blank = await bench.line(bench.first, 'blank');
    await bench.post(`/routings/${bench.first}/give-up`, { rev: String((await routing(bench.db, bench.first)).rev) });
    before = await stands();
  });

  const sent = async (url: string, form: Sent): Promise<string> => {
    const answer = await bench.post(url, form);
    expect(answer.statusCode).toBe(409);
    expect(textOf(answer.body)).toContain('Nothing of yours was saved');
    expect(answer.body).not.toMatch(blemish);
    expect(answer.body.slice(answer.body.indexOf('id="form"'))).not.toMatch(/<button type="submit"[^>]*><\/button>/);
    expect(await stands()).toBe(before);
    return answer.body;
  };

  it('an operation that was edited', async () => {
    const steps = 'Face it\nTurn it round';
    const page = await sent(`/operations/${blank.id}/edit`, {
      rev: String(blank.rev),
      title: 'Turn it',
      steps,
      minutes: '45',
      notes: 'Soft jaws',
    });
    expect(page).toContain('value="Turn it"');
    expect(page).toContain('>Face it\nTurn it round</textarea>');
    expect(page).toContain('>Soft jaws</textarea>');
  });

  it('an operation of one’s own', async () => {
    const page = await sent(`/routings/${bench.first}/operations`, {
      after: '0',
      setUp: 'bench',
      minutes: '15',
      title: 'Stamp it',
      steps: '',
      notes: '',
      need: 'letter punches',
    });
    expect(page).toContain('value="Stamp it"');
    expect(page).toContain('value="letter punches"');
  });

  it('a figure typed over, and nonsense just as well', async () => {
    expect(await sent(`/operations/${blank.id}/figures/outside`, { rev: String(blank.rev), value: '2.9985' })).toContain('value="2.9985"');
    expect(await sent(`/operations/${blank.id}/figures/outside`, { rev: String(blank.rev), value: 'a bit less' })).toContain(
      'value="a bit less"',
    );
  });

  it('the place where one stops', async () => {
    const page = await sent(`/routings/${bench.first}/leave`, { operation: String(blank.id), note: 'Jaws are set, not dialled in' });
    expect(page).toContain('>Jaws are set, not dialled in</textarea>');
  });
});

it('the way of a part that was changed meanwhile: both are shown, nothing is written, and what is chosen is kept', async () => {
  const { db, part22, first, post } = await firstStory();
  await post(`/routings/${first}/give-up`, { rev: String((await routing(db, first)).rev) });
  const { rev } = await partById(db, part22);
  await savePart(db, part22, rev, { way: 'buy', why: 'Asked for a price' });
  const late = await post(`/parts/${part22}/way`, { rev: String(rev), way: 'swap', why: 'A neighbour has one over' });
  expect(late.statusCode).toBe(409);
  expect(late.body).toContain('value="A neighbour has one over"');
  expect(late.body).toContain('Asked for a price');
  expect(late.body).not.toMatch(blemish);
  const stood = await partById(db, part22);
  expect(stood).toMatchObject({ way: 'buy', why: 'Asked for a price' });
  await post(`/parts/${part22}/way`, { rev: String(stood.rev), way: 'swap', why: 'A neighbour has one over' });
  expect(await partById(db, part22)).toMatchObject({ way: 'swap', why: 'A neighbour has one over' });
});

it('and of one that was fitted meanwhile, whose page has no such form any more', async () => {
  const { db, part22, first, post } = await firstStory();
  const { rev } = await partById(db, part22);
  await post(`/routings/${first}/finish`, {
    rev: String((await routing(db, first)).rev),
    outcome: 'good',
    minutes: '60',
    cost: '',
    notes: '',
  });
  expect((await partById(db, part22)).item_id).not.toBeNull();
  const late = await post(`/parts/${part22}/way`, { rev: String(rev), way: 'buy', why: 'Quicker after all' });
  expect(late.statusCode).toBe(409);
  expect(late.body).toContain('value="Quicker after all"');
});
