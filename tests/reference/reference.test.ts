import { readdirSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Case } from './case.ts';
import { groupBy } from './group-by.ts';

const MOST_FROM_ONE_TABLE = 5;
const here = import.meta.dirname;
const files = readdirSync(here).filter((name) => name.endsWith('.cases.ts'));
const all: Case[] = [];
for (const name of files) {
  const { cases } = (await import(path.join(here, name))) as { cases: readonly Case[] };
  all.push(...cases);
}

/** How many cases count when one printed table counts five at most. */
function counted(cases: readonly Case[]): number {
  const byTable = groupBy(cases, (one) => one.table ?? '');
  return [...byTable].reduce((sum, [table, of]) => sum + (table === '' ? of.length : Math.min(of.length, MOST_FROM_ONE_TABLE)), 0);
}

describe.each([...groupBy(all, (one) => one.topic)])('%s', (_topic, cases) => {
  it.each(cases.map((one) => [`${one.given} [${one.source}]`, one] as const))('%s', (_name, one) => {
    const actual = one.actual();
    expect(Number.isFinite(actual), `${one.given}: ${actual}`).toBe(true);
    expect(
      Math.abs(actual - one.expected),
      `${one.given}: ${actual} against ${one.expected} ${one.unit}; catches ${one.catches}`,
    ).toBeLessThanOrEqual(one.tolerance + Number.EPSILON * Math.abs(one.expected));
  });
});

it('every case names its source and the mistake that it would catch', () => {
  for (const one of all) {
    expect(one.source.length, one.given).toBeGreaterThan(10);
    expect(one.catches.length, one.given).toBeGreaterThan(3);
    if (one.kind === 'memory') expect(one.source).toContain('memory');
    if (one.kind === 'common practice') expect(one.source).toContain('common practice');
    if (one.kind === 'published') expect(one.source).not.toMatch(/memory|common practice, no source/);
  }
});

it('at least 150 cases stand, counted with five to a table', () => {
  expect(counted(all)).toBeGreaterThanOrEqual(150);
});

afterAll(() => {
  const rows = [...groupBy(all, (one) => one.topic)].map(([topic, cases]) => {
    const worst = cases.reduce((a, b) =>
      Math.abs(a.actual() - a.expected) / a.tolerance >= Math.abs(b.actual() - b.expected) / b.tolerance ? a : b,
    );
    const kinds = [...groupBy(cases, (one) => one.kind)].map(([kind, of]) => `${kind} ${of.length}`).join(', ');
    const error = Math.abs(worst.actual() - worst.expected).toExponential(1);
    return `${topic}: ${cases.length} cases, ${counted(cases)} counted (${kinds}); largest error ${error} ${worst.unit} (allowed ${worst.tolerance}): ${worst.given}`;
  });
  process.stdout.write(`\nReference cases\n${rows.join('\n')}\ntotal: ${all.length} cases, ${counted(all)} counted\n\n`);
});
