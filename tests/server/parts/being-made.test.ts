import { describe, expect, it } from 'vitest';
import { addItem } from '../../../db/items.ts';
import { fitItem, part, savePart } from '../../../db/parts.ts';
import { closeRouting, routing } from '../../../db/routings.ts';
import { saveSet, wheelSet } from '../../../db/sets.ts';
import { NOW } from '../app-for-tests.ts';
import { type Bench, firstStory } from '../routings/bench.ts';

/** A sound 22 turns up while another is being made from the 31. */
async function anotherTurnsUp({ db, part22 }: Bench): Promise<number> {
  const gear = (await part(db, part22)).stored?.gear;
  if (!gear) throw new Error('the 22 is a wheel');
  const row = {
    kind: 'wheel',
    name: 'the 22 that turned up',
    set_id: null,
    kept_in: '',
    from_project_id: null,
    condition: '',
    notes: '',
  } as const;
  const sizes = { length_nm: null, length_form: null, diameter_nm: null, diameter_form: null } as const;
  const found = await addItem(db, { ...row, ...sizes, material: 'steel', hardness: 'file bites', trust: 'unknown', added_on: NOW, gear });
  return found.id;
}

describe('a part that is being made', () => {
  it('is not filled by hand: it says so, with what to try, and nothing is changed', async () => {
    const bench = await firstStory();
    const { db, part22, first, post } = bench;
    const itemId = await anotherTurnsUp(bench);
    const { rev } = await part(db, part22);
    const answer = await post(`/parts/${part22}/fit`, { rev: String(rev), item: String(itemId) });
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toContain('its routing is open. Finish it (made, or spoilt) or give the routing up first.');
    expect(await part(db, part22)).toMatchObject({ item_id: null, rev });
    await closeRouting(db, first, (await routing(db, first)).rev, NOW);
    await fitItem(db, part22, rev, itemId);
    expect((await part(db, part22)).item_id).toBe(itemId);
  });

  it('keeps its way; the reason for it may still be written', async () => {
    const { db, part22, post } = await firstStory();
    const { rev } = await part(db, part22);
    const answer = await post(`/parts/${part22}/way`, { rev: String(rev), way: 'buy', why: 'quicker' });
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toContain('its routing is open');
    expect(answer.body).toContain('quicker');
    await expect(savePart(db, part22, rev, { way: 'buy' })).rejects.toMatchObject({ name: 'RoutingOpen' });
    expect(await part(db, part22)).toMatchObject({ way: 're-cut a spare', rev });
    expect((await post(`/parts/${part22}/way`, { rev: String(rev), way: 're-cut a spare', why: 'the 31 is over' })).statusCode).toBe(303);
    expect((await part(db, part22)).why).toBe('the 31 is over');
  });

  it('is not filled from the drawer with its set, which is told; others are', async () => {
    const { db, part22, post } = await firstStory();
    const place = await part(db, part22);
    const set = await wheelSet(db, place.set_id ?? 0);
    if (!place.stored) throw new Error('the 22 is a wheel');
    const { teeth: _, ...pattern } = place.stored.gear;
    const { name, sets, notes, assembly_id, rev } = set;
    await saveSet(db, set.id, rev, { name, sets, notes, assembly_id, pattern });
    const answer = await post(`/sets/${set.id}/wheels`, {
      belongs: '43',
      drawer: '22, 43',
      material: 'steel',
      hardness: 'file bites',
      trust: 'unknown',
    });
    expect(answer.statusCode).toBe(303);
    expect((await part(db, part22)).item_id).toBeNull();
    const said = answer.cookies.map(({ value }) => decodeURIComponent(value)).join();
    expect(said).toContain('1 places and 2 wheels added; 1 places filled. Being made, and so not filled: H12-22T.');
  });
});
