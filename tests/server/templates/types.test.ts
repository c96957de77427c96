import { describe, expect, it } from 'vitest';
import { templates, typeProblems } from './type-check.ts';

const LIMIT = 60_000;

/** The real templates, one of them changed: a check that never bites is worth nothing. */
const planted = (name: string, change: (source: string) => string) =>
  templates().map((template) => (template.name === name ? { name, source: change(template.source) } : template));

describe('templates keep to the types of server/views.ts', () => {
  it('every template, and a template for every name', { timeout: LIMIT }, () => {
    const all = templates();
    expect(all.length).toBeGreaterThan(20);
    expect(typeProblems(all)).toEqual([]);
  });

  it('a template only places: it branches and repeats, and does nothing else', () => {
    const allowed = /^\s*(if \(|for \(|\}|layout\(|\/\*)/;
    const odd = templates().flatMap(({ name, source }) =>
      [...source.matchAll(/<%[-_]?(?![=~])([\s\S]*?)[-_]?%>/g)]
        .filter(([, code = '']) => !allowed.test(code))
        .map(([tag]) => `${name}: ${tag}`),
    );
    expect(odd).toEqual([]);
  });

  it('bites: a misspelt property, a wrong include, a null, text placed raw, a page without its head', { timeout: LIMIT }, () => {
    const all = [
      ...planted('partials/notice', (source) => `${source}\n<%= it.notise.says %>`).filter(({ name }) => name === 'partials/notice'),
      ...planted('partials/empty', (source) => `${source}\n<%~ include('/partials/state', { stat: it.empty }) %>`).filter(
        ({ name }) => name === 'partials/empty',
      ),
      ...planted('partials/form', (source) => `${source}\n<%= it.form.back %>`).filter(({ name }) => name === 'partials/form'),
      ...planted('partials/back', (source) => `${source}\n<%~ it.back.says %>`).filter(({ name }) => name === 'partials/back'),
      ...planted('partials/pager', (source) => `<% layout('/layout') %>\n${source}`).filter(({ name }) => name === 'partials/pager'),
    ];
    const found = typeProblems(all).filter((line) => !line.startsWith('server/views.ts'));
    const expected = [
      [/^partials\/notice:\d+: .*'notise'/, 'misspelt property'],
      [/^partials\/empty:\d+: .*'stat'/, 'misspelt include argument'],
      [/^partials\/form:\d+: .*'LinkView \| null'/, 'null about to be printed'],
      [/^partials\/back:\d+: .*'(Markup \| ""|"" \| Markup)'/, 'text placed without escaping'],
      [/^partials\/pager:1: /, 'layout without a page head'],
    ] as const;
    for (const [pattern, what] of expected)
      expect(
        found.filter((line) => pattern.test(line)),
        `${what}\n${found.join('\n')}`,
      ).not.toEqual([]);
  });

  it('bites: a name in server/views.ts that has no template', { timeout: LIMIT }, () => {
    const fewer = templates().filter(({ name }) => name !== 'error');
    expect(typeProblems(fewer).filter((line) => line.startsWith('server/views.ts') && line.includes('error'))).not.toEqual([]);
  });
});
