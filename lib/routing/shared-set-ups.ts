import type { Figure } from '../figure/figure.ts';
import { printFigure } from '../figure/print-value.ts';
import { needWords } from './needs.ts';
import type { Need, PlannedOperation, SetUp } from './operation.ts';

/** A part with the operations of its routing. */
export type PlannedPart = { readonly mark: string; readonly name: string; readonly operations: readonly PlannedOperation[] };

/** What one part asks for within a shared set-up, beside what all share. figures: those that differ, as printed. */
type Differs = {
  readonly mark: string;
  readonly name: string;
  readonly operations: readonly string[];
  readonly needs: readonly string[];
  readonly figures: readonly { readonly key: string; readonly name: string; readonly shown: string }[];
};

/** Operations of different parts that share a set-up. common: tools and figures that all of them share. */
export type SharedSetUp = {
  readonly setUp: SetUp;
  readonly common: { readonly needs: readonly string[]; readonly figures: readonly { readonly name: string; readonly shown: string }[] };
  readonly parts: readonly Differs[];
};

/** What is set at the machine, in the order of setting it: cutter's speed, circle, sector, depth, sizes. */
const SET_BY = ['crank', 'sector', 'sectorHoles', 'depth', 'dial', 'speed', 'outside', 'span'] as const;

type Row = { readonly key: string; readonly name: string; readonly shown: string };
type Own = {
  readonly part: PlannedPart;
  readonly operations: readonly PlannedOperation[];
  readonly needs: readonly string[];
  readonly rows: readonly Row[];
};

/** A span is over 2 teeth of one part and over 3 of another: the count goes with the number. A speed is named with its operation. */
function rowOf({ key: operation, title }: PlannedOperation, key: (typeof SET_BY)[number], figure: Figure): Row {
  const { text, unit } = printFigure(figure);
  const shown = unit === '' ? text : `${text} ${unit}`;
  const over = key === 'span' ? /^Span (over .*)$/.exec(figure.name)?.[1] : undefined;
  if (over !== undefined) return { key, name: 'Span', shown: `${over}: ${shown}` };
  if (key === 'speed') return { key: `${operation}/${key}`, name: `${figure.name}: ${title}`, shown };
  return { key: key === 'dial' ? `${operation}/${key}` : key, name: figure.name, shown };
}

function rowsOf(operations: readonly PlannedOperation[]): readonly Row[] {
  const found = operations.flatMap((operation) =>
    SET_BY.flatMap((key) => {
      const figure = operation.figures[key];
      return figure ? [rowOf(operation, key, figure)] : [];
    }),
  );
  return found.filter((row, at) => found.findIndex(({ key }) => key === row.key) === at);
}

const wordsOf = (needs: readonly Need[]): string[] => [...new Set(needs.map(needWords))];

function ownOf(part: PlannedPart, key: string): Own {
  const operations = part.operations.filter(({ setUp }) => setUp.key === key);
  return { part, operations, needs: wordsOf(operations.flatMap(({ needs }) => needs)), rows: rowsOf(operations) };
}

const inAll = <T>(own: readonly Own[], has: (one: Own) => readonly T[], same: (a: T, b: T) => boolean): readonly T[] =>
  (own[0] ? has(own[0]) : []).filter((thing) => own.every((one) => has(one).some((other) => same(thing, other))));

function group(parts: readonly PlannedPart[], key: string): SharedSetUp | null {
  const own = parts.map((part) => ownOf(part, key)).filter(({ operations }) => operations.length > 0);
  const setUp = own[0]?.operations[0]?.setUp;
  if (own.length < 2 || !setUp) return null;
  const needs = inAll(
    own,
    (one) => one.needs,
    (a, b) => a === b,
  );
  const rows = inAll(
    own,
    (one) => one.rows,
    (a, b) => a.key === b.key && a.shown === b.shown,
  );
  const common = (row: Row) => rows.some(({ key: other }) => other === row.key);
  return {
    setUp,
    common: { needs, figures: rows },
    parts: own.map(({ part, operations, needs: all, rows: figures }) => ({
      mark: part.mark,
      name: part.name,
      operations: operations.map(({ key: operation }) => operation),
      needs: all.filter((need) => !needs.includes(need)),
      figures: figures.filter((row) => !common(row)),
    })),
  };
}

/** The machine set-ups that operations of two parts or more share: what stays, and what is changed from part to part. Bench and oven are none. */
export function sharedSetUps(parts: readonly PlannedPart[]): readonly SharedSetUp[] {
  const atMachines = parts.flatMap(({ operations }) => operations).filter(({ setUp }) => setUp.place === 'lathe' || setUp.place === 'mill');
  const keys = [...new Set(atMachines.map(({ setUp }) => setUp.key))];
  return keys.map((key) => group(parts, key)).filter((found) => found !== null);
}
