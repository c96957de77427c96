import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { newTemplates } from '../../../server/templates.ts';
import { furniture, samples, titleBlock } from './sample.ts';

const VIEWS = join(import.meta.dirname, '../../../views');
const eta = newTemplates(VIEWS);
const markup = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'doctype-style': 'off' } });
const head = { title: '22 teeth', place: 'Sums', back: { says: 'Sums', href: '/sums' }, titleBlock };

/** Stands the partial in a whole page, as a reader meets it. */
const inPage = (name: string, data: object): string =>
  eta.renderString(`<% layout('/layout') %><%~ include('/${name}', it.sample) %>`, {
    ...furniture,
    ...head,
    ...(name === 'partials/back' ? { back: null } : {}),
    sample: data,
  });

const complaints = async (html: string): Promise<string[]> =>
  (await markup.validateString(html)).results.flatMap(({ messages }) => messages.map((one) => `${one.ruleId} ${one.line}: ${one.message}`));

describe('partials', () => {
  it.each(Object.entries(samples))('%s is sound markup in a page', async (name, data) => {
    const html = inPage(name, data);
    expect(await complaints(html)).toEqual([]);
    expect(html).not.toMatch(/undefined|NaN|\[object|href=""/);
  });

  it('the check of markup bites', async () => {
    expect(await complaints(`${inPage('partials/back', samples['partials/back'])}<p><div></p>`)).not.toEqual([]);
  });

  it('typed text comes back as text', () => {
    const html = inPage('partials/form', samples['partials/form']);
    expect(html).toContain('value="3 &quot;&lt;b&gt;&amp;"');
    expect(html).not.toContain('"><script>');
  });

  it.each([undefined, null, Number.NaN, {}])('a template that would print %s fails, escaped or raw', (value) => {
    expect(() => eta.renderString('<%= it.x %>', { x: value })).toThrow('about to print');
    expect(() => eta.renderString('<%~ it.x %>', { x: value })).toThrow('about to print');
  });

  it('shows a figure by its label, number and unit', () => {
    const html = eta.render('/partials/figures', samples['partials/figures']);
    const shown = [...html.matchAll(/data-figure="(\w+)"[\s\S]*?<b class="number[^"]*">([^<]*)<\/b>/g)].map(([, key, text]) => [key, text]);
    expect(shown).toEqual(samples['partials/figures'].figures.map(({ key, text }) => [key, text]));
  });

  it('opens three cautions and folds the rest; paper shows all', () => {
    const open = eta.render('/partials/cautions', samples['partials/cautions']).split('<details>')[0] ?? '';
    expect(open.match(/class="caution is-/g)).toHaveLength(3);
    expect(eta.render('/partials/cautions-on-paper', samples['partials/cautions']).match(/class="caution is-/g)).toHaveLength(4);
  });
});

it.each(['partials/state', 'partials/table'] as const)('%s: a sign and its word are never parted by the end of a line', (name) => {
  const html = inPage(name, samples[name]);
  expect(html).toMatch(/<use href="#kind-[a-z]+"\/><\/svg>&#160;\S/);
  expect(html).not.toMatch(/<use href="#kind-[a-z]+"\/><\/svg>\s/);
});

describe('weight, for old tablets', () => {
  const size = (name: string): number => statSync(join(VIEWS, 'assets', name)).size;
  it('styles of a page under 20 kB, script under 10 kB', () => {
    expect(size('style.css') + size('drawing.css')).toBeLessThan(20_000);
    expect(size('page.js')).toBeLessThan(10_000);
  });

  it('no nesting, :has, container queries, imports or addresses', () => {
    for (const name of ['style.css', 'paper.css', 'drawing.css']) {
      expect(readFileSync(join(VIEWS, 'assets', name), 'utf8'), name).not.toMatch(/:has\(|@container|@import|url\(|^\s*&/m);
    }
  });
});
