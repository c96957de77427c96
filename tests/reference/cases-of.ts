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
