import type { Case, CaseKind } from './case.ts';

/** One check as a row: what was given, the printed answer, its tolerance and unit, how lib is asked, and the mistake it would catch. */
export type Row = readonly [given: string, expected: number, tolerance: number, unit: string, actual: () => number, catches: string];

/** Rows of one source as cases of a topic. table: where they come from one printed table. */
export const casesOf = (topic: string, kind: CaseKind, source: string, rows: readonly Row[], table?: string): Case[] =>
  rows.map(([given, expected, tolerance, unit, actual, catches]) => ({
    topic,
    kind,
    source,
    ...(table === undefined ? {} : { table }),
    given,
    expected,
    tolerance,
    unit,
    actual,
    catches,
  }));

/** Where a case comes from. */
export type From = Pick<Case, 'kind' | 'source' | 'table'>;

/** One case of a topic, as the table files write it: where from, what was given, the answer, its unit, how lib is asked, what it catches. */
export const caseOf =
  (topic: string) =>
  (from: From, given: string, expected: number, unit: string, actual: () => number, catches: string, tolerance = 1e-9): Case => ({
    topic,
    ...from,
    given,
    expected,
    tolerance,
    unit,
    actual,
    catches,
  });
