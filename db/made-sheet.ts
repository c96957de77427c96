import { printFigure, printValue } from '../lib/figure/print-value.ts';
import type { Gear } from '../lib/gears/gear.ts';
import { needWords } from '../lib/routing/needs.ts';
import type { Length, LengthUnit } from '../lib/values/length.ts';
import { blanksOf } from './blanks.ts';
import type { Executor, Row } from './executor.ts';
import type { StoredFigure } from './figures.ts';
import { item } from './items.ts';
import { type OperationLine, operationsOf, stepsShown } from './operations.ts';
import { part } from './parts.ts';
import { project } from './projects.ts';
import { wheelName } from './spares/spare-of.ts';

/** A figure as it was printed when the work was done. mark: what stood in its place, if anything did. */
export type FigureKept = {
  readonly key: string;
  readonly name: string;
  readonly symbol: string;
  readonly text: string;
  readonly unit: string;
  readonly other: string;
  readonly mark: '' | 'typed' | 'measured';
  readonly workedOut: string;
  readonly formula: string;
  readonly source: string;
};
/** A size as it was measured, against the limits of that day. nm: whole nanometres; null where there is no limit. */
export type MeasuredKept = {
  readonly name: string;
  readonly nm: number;
  readonly unit: LengthUnit;
  readonly low: number | null;
  readonly high: number | null;
  readonly below: string;
  readonly above: string;
};
export type OperationKept = {
  readonly key: string | null;
  readonly title: string;
  readonly setUp: string;
  readonly steps: readonly string[];
  readonly doneOn: string | null;
  readonly struck: boolean;
  readonly minutesPlanned: number;
  readonly minutesTaken: number | null;
  readonly notes: string;
  readonly tools: readonly { readonly need: string; readonly tool: string }[];
  readonly figures: readonly FigureKept[];
  readonly measured: readonly MeasuredKept[];
};
type BlankKept = {
  readonly itemId: number;
  readonly name: string;
  readonly role: Row<'blank'>['role'];
  readonly takesNm: number | null;
};

/** A photograph of a routing: all that was printed and measured. It joins to nothing, so that later edits never alter it. */
export type MadeSheet = {
  readonly kind: 'routing';
  readonly machine: string;
  readonly mark: string;
  readonly name: string;
  readonly way: string;
  readonly openedOn: string;
  readonly gear: Gear | null;
  readonly blanks: readonly BlankKept[];
  readonly operations: readonly OperationKept[];
};

function figureKept({ key, figure, shown, shownFrom }: StoredFigure): FigureKept {
  const [printed, worked] = [printValue(shown, figure.unit, 'length' in shown ? figure.places : undefined), printFigure(figure)];
  const asPrinted = shownFrom === 'worked out' ? worked : printed;
  return {
    key,
    name: figure.name,
    symbol: figure.symbol,
    ...asPrinted,
    mark: shownFrom === 'worked out' ? '' : shownFrom,
    workedOut: shownFrom === 'worked out' ? '' : `${worked.text} ${worked.unit}`.trim(),
    formula: figure.formula,
    source: figure.source,
  };
}

const measuredKept = (line: OperationLine): MeasuredKept[] =>
  line.measures.flatMap(({ name, figure, low, high, below, above }) => {
    const stored = line.figures.find(({ key }) => key === figure);
    if (!stored?.measured || !('length' in stored.measured)) return [];
    return [{ name, nm: stored.measured.length, unit: stored.figure.unit, low, high, below, above }];
  });

const operationKept = (line: OperationLine): OperationKept => ({
  key: line.key,
  title: line.title,
  setUp: line.setUp.says,
  steps: stepsShown(line),
  doneOn: line.done_on,
  struck: line.struck_on !== null,
  minutesPlanned: line.minutes_planned,
  minutesTaken: line.minutes_taken,
  notes: line.notes,
  tools: line.needs.map(({ need, tool_name }) => ({ need: needWords(need), tool: tool_name ?? '' })),
  figures: line.figures.map(figureKept),
  measured: measuredKept(line),
});

async function blanksKept(db: Executor, routingId: number): Promise<BlankKept[]> {
  const kept: BlankKept[] = [];
  for (const { item_id, role, takes_nm } of await blanksOf(db, routingId))
    kept.push({ itemId: item_id, name: wheelName(await item(db, item_id)), role, takesNm: takes_nm as Length | null });
  return kept;
}

/** Takes the photograph of a routing as it stands. Throws RecordNotFound. */
export async function photograph(db: Executor, row: Row<'routing'>): Promise<MadeSheet> {
  const own = await part(db, row.part_id);
  const { make, model, what } = await project(db, own.project_id);
  return {
    kind: 'routing',
    machine: [make, model].filter((word) => word !== '').join(' ') || what,
    mark: own.mark,
    name: own.name,
    way: row.way,
    openedOn: row.opened_on,
    gear: own.stored?.gear ?? null,
    blanks: await blanksKept(db, row.id),
    operations: (await operationsOf(db, row.id)).map(operationKept),
  };
}

/** A kept sheet, read again; null for one that is no photograph of a routing. */
export const sheetOf = (kept: unknown): MadeSheet | null =>
  typeof kept === 'object' && kept !== null && 'kind' in kept && kept.kind === 'routing' ? (kept as MadeSheet) : null;
