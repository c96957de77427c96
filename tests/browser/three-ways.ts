import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { testSpare } from '../../lib/blanks/spare-test.sums.ts';
import type { SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import { plainIndexing } from '../../lib/dividing/plain.sums.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { printFigure } from '../../lib/figure/print-value.ts';
import { stillToFeed } from '../../lib/gears/feed.sums.ts';
import type { Bore, Gear } from '../../lib/gears/gear.ts';
import { spanAnswer } from '../../lib/gears/span.sums.ts';
import { gearBlank } from '../../lib/gears/spur.sums.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { readFigure } from './on-page.ts';

const BORE: Bore = { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) };
const wheel = (teeth: number): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: [8, 1] },
  system: { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) },
  helix: null,
  face: inches(0.875),
  bore: BORE,
  body: { known: true, recesses: [], openings: [] },
});
const spare = (teeth: number): SpareWheel => ({
  ...{ id: 1, name: `${teeth}T`, gear: wheel(teeth), reading: null, runOut: null, trust: 'original', caseDepth: null },
  ...{ condition: { teeth: 'not looked at', bore: 'not looked at' }, material: 'steel', hardness: 'file bites' },
});
const CIRCLES = [
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];
const plates = CIRCLES.map(
  (circles, at) => ({ kind: 'plate', id: at + 1, name: `Plate ${at + 1}`, here: true, sides: [circles] }) as const,
);

const EIGHT = { pitch: '8 DP', system: 'full-14.5' };
const SPLINED = '6 splines 1.250 x 1.0625 x 0.3125';
const SPARE = {
  ...{ ...EIGHT, bore: SPLINED, face: '0.875', spareBore: SPLINED, spareFace: '0.875' },
  ...{ by: 'none', body: 'solid', material: 'steel', hardness: 'file bites' },
};
const PLATES = CIRCLES.map((circles) => circles.join('-')).join('; ');

/** A sum as an address, and the same asked of lib. */
export type Asked = { readonly path: string; readonly query: Readonly<Record<string, string>>; readonly answer: Answer };

export const spareOf = (teeth: number, from: number): Asked => ({
  path: 'spare-test',
  query: { ...SPARE, teeth: String(teeth), spareTeeth: String(from) },
  answer: testSpare({ wanted: wheel(teeth), spare: spare(from) }).answer,
});
export const blankOf = (teeth: number): Asked => ({
  path: 'gear-blank',
  query: { ...EIGHT, teeth: String(teeth) },
  answer: gearBlank(wheel(teeth)),
});
export const spanOf = (teeth: number): Asked => ({
  path: 'span',
  query: { ...EIGHT, teeth: String(teeth) },
  answer: spanAnswer(wheel(teeth)),
});
export const indexOf = (teeth: number): Asked => ({
  path: 'plain-indexing',
  query: { divisions: String(teeth), turns: '40', plates: PLATES },
  answer: plainIndexing({ divisions: teeth, head: { turns: 40, name: '40 to 1' }, plates }),
});
/** What is still to feed when the span over k reads 0.005 in more than `wanted`. */
export const feedOf = (teeth: number, k: number, wanted: number): Asked => ({
  path: 'still-to-feed',
  query: {
    ...{ ...EIGHT, teeth: String(teeth), k: String(k), made: 'form cutter' },
    ...{ spanRead: (wanted + 0.005).toString(), spanWanted: wanted.toString() },
  },
  answer: stillToFeed({ gear: wheel(teeth), k, spanRead: inches(wanted + 0.005), spanWanted: inches(wanted), made: 'form cutter' }),
});

type Json = { readonly figures: Readonly<Record<string, { readonly name: string; readonly printed: string }>> };

/** What a sum says as .json, by label. */
async function jsonOf(base: string, { path, query }: Asked): Promise<ReadonlyMap<string, string>> {
  const answer = await fetch(`${base}/sums/${path}.json?${new URLSearchParams(query)}`);
  expect(answer.status, path).toBe(200);
  const { figures } = (await answer.json()) as Json;
  return new Map(Object.values(figures).map(({ name, printed }) => [name, printed.replace(/\s+/g, ' ')]));
}

const byLabel = ({ answer }: Asked): ReadonlyMap<string, string> =>
  new Map(Object.values(answer.figures).map((figure) => [figure.name, printFigure(figure).text.replace(/\s+/g, ' ')]));

/** A number by its label on the page; [label of the page, label of the sum] when the page has its own. */
export type Wanted = readonly [label: string | readonly [onPage: string, inSum: string], is: string];

/** Each number read by its label off the page that is open, out of the sum's .json, and from lib: all three say what the story says. */
export async function threeWays(page: Page, base: string, asked: Asked, wanted: readonly Wanted[]): Promise<void> {
  const [json, lib] = [await jsonOf(base, asked), byLabel(asked)];
  for (const [label, is] of wanted) {
    const [onPage, inSum] = typeof label === 'string' ? [label, label] : label;
    const said = [await readFigure(page, onPage), json.get(inSum), lib.get(inSum)];
    expect(said, `${onPage}: page, .json, lib`).toEqual([is, is, is]);
  }
}
