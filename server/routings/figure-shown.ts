import type { StoredFigure } from '../../db/figures.ts';
import type { OperationLine } from '../../db/operations.ts';
import { figureWords } from '../../db/replan.ts';
import type { Figure, Value } from '../../lib/figure/figure.ts';
import { printValue } from '../../lib/figure/print-value.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import { figureView } from '../figures.ts';
import type { FigureView } from '../page.ts';

const isNothing = (value: Value): boolean => 'length' in value && value.length === 0;

/** A size from nothing upward has one limit, not two. */
function limitWords(figure: Figure): string {
  const [low, high] = figure.limits ?? [];
  if (!low || !high || !isNothing(low)) return figureView('', figure).limits;
  const { text, unit } = printValue(high, figure.unit, figure.places);
  return `at most ${text} ${unit}`;
}

/** What was measured or typed, in place of what was worked out; that stays in the working. */
function standing(stored: StoredFigure): Partial<FigureView> {
  const { figure, shown, shownFrom } = stored;
  if (shownFrom === 'worked out') return {};
  const { text, unit, other } = printValue(shown, figure.unit, 'length' in shown && 'length' in figure.value ? figure.places : undefined);
  const view = figureView(stored.key, figure);
  const note = [`Worked out: ${figureWords(figure)}.`, figure.note ?? ''].filter((part) => part !== '').join(' ');
  return {
    text,
    unit,
    other,
    mark: shownFrom,
    words: 'words' in shown || 'move' in shown || 'dial' in shown,
    working: view.working ? { ...view.working, note } : null,
  };
}

type Counting = { next: number };

/** One figure as it stands: typed, measured, or out of date with the new one beside it. */
function shownOne(stored: StoredFigure, now: Figure | undefined, counting: Counting): FigureView {
  const { key, figure, shownFrom } = stored;
  if (shownFrom !== 'worked out') return figureView(key, figure, { limits: limitWords(figure), ...standing(stored) });
  const was = figureWords(figure);
  if (!now || figureWords(now) === was) return figureView(key, figure, { limits: limitWords(figure) });
  counting.next += 1;
  return figureView(key, now, { limits: limitWords(now), was, revision: String(counting.next) });
}

const added = (line: OperationLine, now: PlannedOperation | null): FigureView[] =>
  Object.entries(now?.figures ?? {})
    .filter(([key]) => !line.figures.some((stored) => stored.key === key))
    .map(([key, figure]) => figureView(key, figure, { limits: limitWords(figure) }));

/**
 * The figures of an operation: what was measured or typed stands; what lib works out otherwise today stands beside the old one, struck
 * through. An operation that is done keeps what it was done by.
 */
export function figuresShown(line: OperationLine, now: PlannedOperation | null): FigureView[] {
  const counting = { next: 0 };
  const today = line.state === 'done' || line.state === 'struck out' ? null : now;
  return [...line.figures.map((stored) => shownOne(stored, today?.figures[stored.key], counting)), ...added(line, today)];
}
