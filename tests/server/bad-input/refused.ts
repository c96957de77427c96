import { expect } from 'vitest';
import { sumByPath } from '../../../server/sums/contents.ts';
import { type TestShop, visit } from '../app-for-tests.ts';
import { boxesOn } from '../sums/read-page.ts';

/** Words and figures that stand for our own mistakes. What was typed is quoted, or kept in a box, and is no word of ours. */
export const OUR_MISTAKE = /\b(NaN|undefined|null|Infinity)\b|\[object/;

/** The words of a page, without what was typed into it and without addresses. */
export const wordsOf = (html: string): string =>
  html
    .replace(/<script[\s\S]*?<\/script>|<textarea[\s\S]*?<\/textarea>/g, ' ')
    .replace(/ (?:value|href|action)="[^"]*"/g, '')
    .replace(/“[^”]*”/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

export type Answered = {
  readonly status: number;
  readonly words: string;
  readonly cpuMs: number;
  readonly html: string;
  readonly problems: string;
};

/** A sum, its worked example but for what is given; asked as a page and as JSON, both of which have to answer alike and at once. */
export async function askSum(shop: TestShop, path: string, given: Readonly<Record<string, string>>): Promise<Answered> {
  const typed = Object.entries({ ...sumByPath(path)?.example, ...given }).filter(([name, text]) => text !== '' || name in given);
  const query = new URLSearchParams(typed.map(([name, text]): [string, string] => [name, text])).toString();
  const before = process.cpuUsage();
  const page = await visit(shop, `/sums/${path}?${query}`);
  const used = process.cpuUsage(before);
  const json = await visit(shop, `/sums/${path}.json?${query}`);
  expect(json.statusCode, `${path}.json`).toBe(page.statusCode);
  const words = wordsOf(page.body);
  expect(words, path).not.toMatch(OUR_MISTAKE);
  for (const [name, text] of typed)
    if (boxesOn(page.body).has(name)) expect(boxesOn(page.body).get(name), `${path}: ${name} as typed`).toBe(text);
  const problems = page.statusCode === 422 ? Object.values((json.json() as { problems: Record<string, string> }).problems).join(' ') : '';
  return { status: page.statusCode, words, cpuMs: (used.user + used.system) / 1000, html: page.body, problems };
}
