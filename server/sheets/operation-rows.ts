import type { StoredNeed } from '../../db/needs.ts';
import type { OperationLine } from '../../db/operations.ts';
import { needWords } from '../../lib/routing/needs.ts';
import type { Machine } from '../../lib/tooling/tooling.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { cautionView } from '../figures.ts';
import type { CautionView } from '../page.ts';
import { inOrder } from '../routings/figure-shown.ts';
import { type FiguresNow, isLarge, isSmall, type SheetFigure, sheetFigure, smallWords } from './sheet-figure.ts';

type NeedView = { readonly says: string; readonly lacking: boolean };

/** One operation on paper. setUp: '' while it is the one before; doneOn '' while it is to be done; goesOn: begun on the side before. */
export type SheetOperation = {
  readonly id: number;
  readonly number: string;
  readonly setUp: string;
  readonly setUpNow: string;
  readonly title: string;
  readonly offered: boolean;
  readonly goesOn: boolean;
  readonly doneOn: string;
  readonly needs: readonly NeedView[];
  readonly says: readonly string[];
  readonly cautions: readonly CautionView[];
  readonly figures: readonly SheetFigure[];
  readonly small: string;
};

/** The unit that the dial of an operation's machine reads; null where there is no dial. */
export function dialUnit({ setUp }: OperationLine, machines: readonly Machine[]): LengthUnit | null {
  const machine = machines.find(({ id }) => id === setUp.machineId);
  if (!machine) return null;
  const dial = setUp.place === 'mill' ? (machine.depthDial ?? machine.crossDial) : (machine.crossDial ?? machine.depthDial);
  return dial?.unit ?? null;
}

const needView = ({ need, tool_name }: StoredNeed): NeedView => ({
  says: tool_name ?? needWords(need),
  lacking: tool_name === null,
});

/** The owner's own words: the steps of an operation that was added by hand, and, for those who may see them, its notes. */
const ownWords = ({ key, steps, notes }: OperationLine, withNotes: boolean): string[] => [
  ...(key === null ? steps : []),
  ...(withNotes && notes ? [notes] : []),
];

type Seen = { setUp: string; needs: Set<string>; cautions: Set<string> };

/** Within one set-up, a tool and a caution are named where they first count. */
function fresh(operation: OperationLine, seen: Seen) {
  const newSetUp = operation.setUp.key !== seen.setUp;
  if (newSetUp) Object.assign(seen, { setUp: operation.setUp.key, needs: new Set<string>(), cautions: new Set<string>() });
  const needs = operation.needs.map(needView).filter(({ says }) => !seen.needs.has(says));
  const cautions = operation.cautions.filter(({ says, weight }) => weight !== 'note' && !seen.cautions.has(says));
  for (const { says } of needs) seen.needs.add(says);
  for (const { says } of cautions) seen.cautions.add(says);
  return { newSetUp, needs, cautions };
}

export type PaperOptions = { readonly machines: readonly Machine[]; readonly now: FiguresNow; readonly withNotes: boolean };

/** The operations that are not struck out, in order, as they stand on paper. */
export function operationRows(operations: readonly OperationLine[], { machines, now, withNotes }: PaperOptions): SheetOperation[] {
  const seen: Seen = { setUp: '', needs: new Set(), cautions: new Set() };
  return operations
    .filter(({ struck_on }) => struck_on === null)
    .map((operation, at): SheetOperation => {
      const { newSetUp, needs, cautions } = fresh(operation, seen);
      const unit = dialUnit(operation, machines);
      const figures = inOrder(operation.key, operation.figures, null)
        .flatMap((key) => operation.figures.find((one) => one.key === key) ?? [])
        .map((stored) => ({ stored, view: sheetFigure(operation, stored, unit, now) }));
      return {
        id: operation.id,
        number: String(at + 1),
        setUp: newSetUp ? operation.setUp.says : '',
        setUpNow: operation.setUp.says,
        title: operation.title,
        offered: operation.must === 0,
        goesOn: false,
        doneOn: operation.done_on?.slice(0, 10) ?? '',
        needs,
        says: ownWords(operation, withNotes),
        cautions: cautions.map(cautionView),
        figures: figures.filter(({ stored }) => isLarge(operation, stored)).map(({ view }) => view),
        small: figures
          .filter(({ stored }) => isSmall(operation, stored))
          .map(({ view }) => smallWords(view))
          .join(' · '),
      };
    });
}
