import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Answer } from '../../../lib/figure/figure.ts';
import { SUMS } from '../../../server/sums/contents.ts';
import { answerJson } from '../../../server/sums/json.ts';
import { everyRow } from '../../db/every-row.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { DIRECT } from './direct.ts';
import { boxesOn, figuresByLabel, tablesOn } from './read-page.ts';

type JsonValue = { readonly printed: string; readonly unit: string };
type JsonAnswer = {
  readonly figures: Readonly<Record<string, JsonValue & { readonly name: string; readonly symbol: string; readonly formula: string }>>;
  readonly tables: readonly {
    readonly title: string;
    readonly heads: readonly string[];
    readonly rows: readonly (readonly (string | JsonValue)[])[];
  }[];
};

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

const validator = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'doctype-style': 'off' } });
const cellText = (cell: string | JsonValue): string =>
  typeof cell === 'string' ? cell : cell.unit ? `${cell.printed} ${cell.unit}` : cell.printed;
const tidy = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Built by the server out of several plain values of lib: held against them in built-answers.test.ts. */
const BUILT = ['missing-and-spare', 'which-spare', 'joint-circles', 'index-table', 'form-error'];

describe('the page of all sums', () => {
  it('names each sum once, under its group, and is sound markup', async () => {
    const page = await visit(shop, '/sums');
    expect(page.statusCode).toBe(200);
    for (const sum of SUMS) {
      expect(page.body.split(`href="/sums/${sum.path}"`)).toHaveLength(2);
      expect(page.body).toContain(sum.tells.replaceAll("'", '&#39;'));
      expect(sum.path).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
    }
    expect((await validator.validateString(page.body)).results.flatMap(({ messages }) => messages)).toEqual([]);
  });

  it('has each path and title once', () => {
    expect(new Set(SUMS.map(({ path }) => path)).size).toBe(SUMS.length);
    expect(new Set(SUMS.map(({ title }) => title)).size).toBe(SUMS.length);
  });

  it('is covered: every sum is asked of lib directly here or in the test of built answers', () => {
    expect(SUMS.map(({ path }) => path).sort()).toEqual([...Object.keys(DIRECT), ...BUILT].sort());
  });
});

describe.each(SUMS.map((sum) => [sum.path, sum] as const))('%s', (path, sum) => {
  it('shows its worked example at the bare address, in sound markup', async () => {
    const page = await visit(shop, `/sums/${path}`);
    expect(page.statusCode).toBe(200);
    expect(page.body).toContain('Worked example');
    expect(page.body).not.toMatch(/undefined|NaN|\[object|href=""/);
    const boxes = boxesOn(page.body);
    for (const [name, text] of Object.entries(sum.example)) if (text !== '') expect(boxes.get(name), name).toBe(text);
    expect((await validator.validateString(page.body)).results.flatMap(({ messages }) => messages)).toEqual([]);
  });

  it('prints on the page, by label, what its .json prints', async () => {
    const [page, json] = [await visit(shop, `/sums/${path}`), await visit(shop, `/sums/${path}.json`)];
    expect(json.statusCode).toBe(200);
    const answer = json.json() as JsonAnswer;
    const figures = figuresByLabel(page.body);
    expect(figures.size).toBe(Object.keys(answer.figures).length);
    for (const [key, figure] of Object.entries(answer.figures)) {
      const formula = figure.formula ? tidy(`${figure.symbol} = ${figure.formula}`) : '';
      expect(figures.get(figure.name), figure.name).toEqual({ key, text: tidy(figure.printed), unit: figure.unit, formula });
    }
    const shown = tablesOn(page.body);
    const filled = answer.tables.filter(({ rows }) => rows.length > 0);
    expect(shown.map(({ title }) => title)).toEqual(filled.map(({ title }) => title));
    filled.forEach(({ heads, rows }, at) => {
      expect(shown[at]?.heads).toEqual([...heads]);
      expect(shown[at]?.rows).toEqual(rows.map((row) => row.map((cell) => tidy(cellText(cell)))));
    });
  });

  it('gives the same for its example typed into the address, and then no longer calls it an example', async () => {
    const query = new URLSearchParams(Object.entries(sum.example).filter(([, text]) => text !== '')).toString();
    const [bare, asked] = [await visit(shop, `/sums/${path}.json`), await visit(shop, `/sums/${path}.json?${query}`)];
    expect(asked.statusCode).toBe(200);
    expect(asked.json()).toEqual(bare.json());
    expect((await visit(shop, `/sums/${path}?${query}`)).body).not.toContain('Worked example');
  });
});

it.each(Object.keys(DIRECT))('%s gives as .json what lib says when asked directly', async (path) => {
  const json = (await visit(shop, `/sums/${path}.json`)).json();
  expect(json).toEqual(JSON.parse(JSON.stringify(answerJson((DIRECT[path] as () => Answer)()))));
});

it('writes nothing: all rows are the same before and after a walk over every sum', async () => {
  const rows = () => everyRow(join(shop.folder, 'shop.sqlite'));
  const before = rows();
  for (const { path } of SUMS)
    for (const address of [`/sums/${path}`, `/sums/${path}.json`, `/sums/${path}?teeth=x`]) await visit(shop, address);
  await visit(shop, '/sums');
  expect(rows()).toEqual(before);
});

it('a sum that is not there is 404, as page and as JSON', async () => {
  expect((await visit(shop, '/sums/no-such-sum')).statusCode).toBe(404);
  const json = await visit(shop, '/sums/no-such-sum.json');
  expect([json.statusCode, json.headers['content-type']]).toEqual([404, 'application/json; charset=utf-8']);
});
