import { expect, it } from 'vitest';
import { rowOf, saveRow } from '../../../db/changes.ts';
import { refreshStale } from '../../../db/replan.ts';
import { addTool } from '../../../db/tools.ts';
import { textOf } from '../machines/read-page.ts';
import { firstStory, NO_4, TOOL } from './bench.ts';

it('an operation says what is on record today of file test, cutter and arbor, not what was when it was opened', async () => {
  const { db, first, spare31, line, get } = await firstStory();
  const page = async (key: string) => textOf((await get(`/operations/${(await line(first, key)).id}`)).body);
  expect(await page('file-test')).toContain('Written down: file bites; steel.');
  await saveRow(db, 'item', spare31, (await rowOf(db, 'item', spare31)).rev, { hardness: 'case hard', material: 'unknown' });
  await refreshStale(db, first);
  expect(await page('file-test')).toContain('Written down: case hard; material not known.');
  expect(await page('file-test')).not.toContain('file bites;');
  expect(await page('lay-out')).not.toContain('It goes on one-inch arbor.');
  await addTool(db, { ...TOOL, name: 'No. 5', details: { ...NO_4, number: 'No. 5', teethFrom: 21, teethTo: 25 } });
  expect(await page('lay-out')).toContain('It goes on one-inch arbor.');
});
