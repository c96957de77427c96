import { describe, expect, it } from 'vitest';
import { saveRow } from '../../../db/changes.ts';
import { addTool } from '../../../db/tools.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { NOW } from '../app-for-tests.ts';
import { textOf } from '../machines/read-page.ts';
import { acceptListed, type Bench, figureIn, firstStory } from './bench.ts';

const NO_5 = {
  kind: 'cutter',
  pitch: { kind: 'DP', size: ratio(8) },
  angle: degrees(14.5),
  number: 'No. 5',
  teethFrom: 21,
  teethTo: 25,
  hole: inches(1),
  diameter: inches(2.75),
  width: inches(0.25),
  stampedDepth: null,
  steel: 'high-speed',
  exactFor: null,
} as const;
const HERE = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;

/** The keys of the figures on a page, in their order. */
const keysOn = (html: string): string[] => [...html.matchAll(/data-figure="([^"]+)"/g)].map(([, key]) => key ?? '');

/** The right cutter came in, its figures were accepted, and it has left the shop again. */
async function cutterCameAndWent(bench: Bench): Promise<void> {
  const tool = await addTool(bench.db, { ...HERE, name: 'No. 5', details: NO_5 });
  await acceptListed(bench, bench.first);
  await saveRow(bench.db, 'tool', tool.id, tool.rev, { gone_on: NOW });
}

describe('figures that nobody needs any more', () => {
  it('stand struck through after the good ones, with the word, and never at the machine', async () => {
    const bench = await firstStory();
    await cutterCameAndWent(bench);
    const { id, figures } = await bench.line(bench.first, 'cutter-on-arbor');
    expect(figures.map(({ key }) => key)).toContain('feed');
    const page = (await bench.get(`/operations/${id}`)).body;
    expect(figureIn(page, 'feed')).toBe('no longer needed');
    expect(page).toMatch(/<li class="figure in-words" id="f-feed"[\s\S]*?<s class="was">[\d.]+ in\/min<\/s>/);
    const keys = keysOn(page);
    expect(keys.indexOf('feed')).toBeGreaterThan(keys.indexOf('rimRunOut'));
    expect(keys.slice(-2).sort()).toEqual(['feed', 'speedWorkedOut']);
    for (const step of [1, 2, 3]) {
      const large = textOf((await bench.get(`/operations/${id}/at-machine?step=${step}`)).body);
      expect(large).toContain('of 2');
      expect(large).not.toContain('no longer needed');
    }
    await acceptListed(bench, bench.first);
    expect(keysOn((await bench.get(`/operations/${id}`)).body)).not.toContain('feed');
  });
});

describe('a limit is no figure to set', () => {
  it('stands in words, small, until something is measured against it', async () => {
    const { first, line, get, post } = await firstStory();
    const blank = await line(first, 'blank');
    const page = (await get(`/operations/${blank.id}`)).body;
    expect(figureIn(page, 'runOut')).toBe('at most 0.0010');
    expect(page).toContain('<li class="figure in-words" id="f-runOut"');
    expect(figureIn(page, 'outside')).toBe('3.0000');
    await post(`/operations/${blank.id}/measured`, { rev: String(blank.rev), 'm-runOut': '0.0004' });
    const after = (await get(`/operations/${blank.id}`)).body;
    expect(figureIn(after, 'runOut')).toBe('0.0004');
    expect(after).toMatch(/id="f-runOut"[\s\S]*?at most 0\.0010 in/);
  });

  it('at the machine it is named as one, and comes after what is set', async () => {
    const { first, line, get } = await firstStory();
    const touch = (await get(`/operations/${(await line(first, 'touch')).id}/at-machine`)).body;
    expect(touch).toContain('Dial from touching, full depth');
    const { id } = await line(first, 'prove-mandrel');
    const large = (await get(`/operations/${id}/at-machine`)).body;
    expect(large).toContain('class="at-machine in-words"');
    expect(large).toContain('<b class="number">at most 0.0005</b>');
  });
});

describe('holding', () => {
  it('what was never held is not let go of; what an operation of the same part costs is said once', async () => {
    const { first, line, get, post } = await firstStory();
    const { id, rev } = await line(first, 'line-up');
    const page = (await get(`/operations/${id}/hold`)).body;
    const said = [...page.matchAll(/Does it delay anything\?[^<]*/g)].map(([text]) => text);
    expect(said.length).toBeGreaterThan(0);
    expect(new Set(said).size).toBe(said.length);
    const saved = async (form: Readonly<Record<string, string>>) =>
      decodeURIComponent(decodeURIComponent(String((await post(`/operations/${id}/hold`, form)).headers['set-cookie'])));
    expect(await saved({ rev: String(rev), held_for: 'none', other: '' })).toContain('It was not held');
    const other = /name="held_for" value="(\d+)"/.exec(page)?.[1] ?? '';
    expect(await saved({ rev: String((await line(first, 'line-up')).rev), held_for: other, other: '' })).toContain('Held.');
    expect(await saved({ rev: String((await line(first, 'line-up')).rev), held_for: 'none', other: '' })).toContain(
      'It is held no longer.',
    );
  });
});
