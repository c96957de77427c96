import { expect } from 'vitest';
import { type TestShop, visit } from '../app-for-tests.ts';
import { figuresByLabel, tablesOn } from './read-page.ts';

type Json = {
  readonly says?: string;
  readonly figures: Readonly<Record<string, { readonly name: string; readonly printed: string }>>;
  readonly tables: readonly { readonly title: string; readonly rows: readonly (readonly (string | { readonly printed: string })[])[] }[];
};

/** What a sum prints, read twice: off the page by label, and from the .json; both must agree. */
export async function ask(shop: TestShop, path: string, given: Readonly<Record<string, string>>) {
  const query = new URLSearchParams(given).toString();
  const [page, json] = [await visit(shop, `/sums/${path}?${query}`), await visit(shop, `/sums/${path}.json?${query}`)];
  expect([page.statusCode, json.statusCode], page.body.match(/class="problem[\s\S]*?<\/p>/)?.[0]).toEqual([200, 200]);
  const [figures, answer] = [figuresByLabel(page.body), json.json() as Json];
  const printed = new Map(Object.values(answer.figures).map((figure) => [figure.name, figure.printed]));
  const read = (label: string): string => {
    const shown = figures.get(label);
    expect(shown, `${label} among ${[...figures.keys()].join('; ')}`).toBeDefined();
    expect(printed.get(label)?.replace(/\s+/g, ' '), label).toBe(shown?.text);
    return shown?.text ?? '';
  };
  const says = answer.says ?? '';
  expect(page.body).toContain(says.replaceAll("'", '&#39;').replaceAll('"', '&quot;'));
  return { read, says, tables: tablesOn(page.body), body: page.body };
}
