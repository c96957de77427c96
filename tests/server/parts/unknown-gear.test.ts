import { describe, expect, it } from 'vitest';
import { part } from '../../../db/parts.ts';
import { firstStory } from '../routings/bench.ts';

/** The address of the first link whose words begin so. */
function linked(html: string, says: string): string {
  for (const [, href = '', text = ''] of html.matchAll(/<a [^>]*?href="([^"]*)"[^>]*>([\s\S]*?)<\/a>/g))
    if (text.trim().startsWith(says)) return href.replaceAll('&amp;', '&');
  throw new Error(`no link says ${says}`);
}

describe('a wheel of unknown pitch', () => {
  it('leads to What is this gear, asks for sizes while only the count is known, and takes an answer into its own form', async () => {
    const { db, part22, get } = await firstStory();
    const asked = linked((await get(`/parts/${part22}`)).body, 'What is this gear?');
    const bare = await get(asked);
    expect(bare.statusCode).toBe(200);
    expect(bare.body).toContain('A tooth count alone fits every pitch.');
    expect(bare.body).not.toContain('Take this answer');

    // A wheel of 22 teeth, module 3, 20°, full depth: outside 24 × 3 = 72 mm, root 66 − 7.5 = 58.5 mm, over 3 teeth 23.07 less a little wear, one tooth more adds 3 π cos 20° = 8.856 mm.
    const measured = await get(`${asked}&outside=72+mm&k=3&spanRead=23.02+mm&spanMore=31.88+mm&rootRead=58.5+mm`);
    expect(measured.statusCode).toBe(200);
    expect(measured.body).toContain(`<input type="hidden" name="for" value="part-${part22}">`);
    const form = await get(linked(measured.body, 'Take this answer: module 3'));
    expect(form.statusCode).toBe(200);
    expect(form.body).toMatch(/name="pitch"[^>]*value="module 3"/);
    expect(form.body).toContain('By measurement module 3');
    expect((await part(db, part22)).stored?.gear.pitch.kind).toBe('DP');
  });

  it('says what was left out because another box is empty', async () => {
    const { get } = await firstStory();
    const page = await get('/sums/unknown-gear?teeth=22&outside=2.998&pinUsed=0.2&mate=30');
    expect(page.body).toContain('The pin was left out');
    expect(page.body).toContain('The teeth of the mate were left out');
  });

  it('offers nothing to be taken where no record was asked about, or one of a strange name', async () => {
    const { get } = await firstStory();
    expect((await get('/sums/unknown-gear?teeth=22&outside=2.998')).body).not.toContain('Take this answer');
    expect((await get('/sums/unknown-gear?teeth=22&outside=2.998&for=elsewhere-1')).body).not.toContain('Take this answer');
  });
});
