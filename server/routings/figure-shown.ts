import type { StoredFigure } from '../../db/figures.ts';
import type { OperationLine } from '../../db/operations.ts';
import { figureWords } from '../../db/replan.ts';
import type { Figure, Value } from '../../lib/figure/figure.ts';
import { printFigure, printValue } from '../../lib/figure/print-value.ts';
import { inOrderOfSetting, isLimit, type Standing } from '../../lib/routing/leads.ts';
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

/** Nothing is set by a limit: it stands in words, small, as on the sheet, until something is measured against it. */
function limitView(key: string, figure: Figure, more: Partial<FigureView> = {}): FigureView {
  const { text } = printValue(figure.value, figure.unit, figure.places);
  return figureView(key, figure, { text: `at most ${text}`, words: true, limits: '', ...more });
}

/** As it is worked out: a figure to set, or a limit. */
const workedOut = (key: string, figure: Figure, more: Partial<FigureView> = {}): FigureView =>
  isLimit(figure) ? limitView(key, figure, more) : figureView(key, figure, { limits: limitWords(figure), ...more });

/** A name that says where the figure is from says it of what stands there. */
export const bySource = (name: string, from: StoredFigure['shownFrom']): string =>
  from === 'worked out' ? name : name.replace(/, (worked out|measured)$/, `, ${from}`);

/** Such a name is that of something found by measuring, not of a size to work to. */
export const isFound = (name: string): boolean => /, (worked out|measured)$/.test(name);

/** What was measured or typed, in place of what was worked out; that stays in the working. */
function standing(stored: StoredFigure): Partial<FigureView> {
  const { figure, shown, shownFrom } = stored;
  if (shownFrom === 'worked out') return {};
  const { places, ...like } = figure;
  const keepsPlaces = places !== undefined && 'length' in shown && 'length' in figure.value;
  const { text, unit, other } = printFigure({ ...like, value: shown, ...(keepsPlaces ? { places } : {}) });
  const view = figureView(stored.key, figure);
  const note = [`Worked out: ${figureWords(figure)}.`, figure.note ?? ''].filter((part) => part !== '').join(' ');
  return {
    name: bySource(figure.name, shownFrom),
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
  const { key, figure, shown, shownFrom } = stored;
  if (shownFrom === 'typed' && isLimit(figure))
    return limitView(key, { ...figure, value: shown }, { mark: 'typed', working: standing(stored).working ?? null });
  if (shownFrom !== 'worked out') return figureView(key, figure, { limits: limitWords(figure), ...standing(stored) });
  // Printed before a feed said its time: it is the same feed.
  const printed = now?.per ? { ...figure, per: now.per } : figure;
  const was = figureWords(printed);
  if (!now || figureWords(now) === was) return workedOut(key, printed);
  counting.next += 1;
  return workedOut(key, now, { was, revision: String(counting.next) });
}

/** What lib says of an operation that is still to be done; one that is done or struck out keeps what it was done by. */
const todayOf = ({ state }: OperationLine, now: PlannedOperation | null): PlannedOperation | null =>
  state === 'done' || state === 'struck out' ? null : now;

/** Worked out once, and gone from today's plan: nothing is set by it any more. What was typed or measured stays. */
const isGone = ({ key, shownFrom }: StoredFigure, today: PlannedOperation | null): boolean =>
  today !== null && shownFrom === 'worked out' && !(key in today.figures);

/** The keys of an operation's figures by which nothing is cut any more. */
export const goneKeys = (line: OperationLine, now: PlannedOperation | null): ReadonlySet<string> =>
  new Set(line.figures.filter((stored) => isGone(stored, todayOf(line, now))).map(({ key }) => key));

/** Struck through, with the word. */
function goneView({ key, figure }: StoredFigure, counting: Counting): FigureView {
  counting.next += 1;
  const [was, revision] = [figureWords(figure), String(counting.next)];
  return figureView(key, figure, { text: 'no longer needed', unit: '', other: '', words: true, limits: '', was, revision, working: null });
}

/** A figure as it stands for the order of setting: measured, typed, as lib says it today, or as it is printed. */
function standingOf(key: string, stored: StoredFigure | undefined, planned: Figure | undefined): Standing {
  const own = stored && stored.shownFrom !== 'worked out' ? stored.figure : (planned ?? stored?.figure);
  const value = stored && stored.shownFrom !== 'worked out' ? stored.shown : (own?.value ?? { words: '' });
  const measured = stored?.shownFrom === 'measured';
  return { key, value, limit: own !== undefined && !measured && isLimit(own), measured };
}

/** In the order of setting: what is set by hand first, then what else is known, then limits, then steps on the way. */
export function inOrder(operation: string | null, figures: readonly StoredFigure[], today: PlannedOperation | null): string[] {
  const stored = new Map(figures.map((one) => [one.key, one]));
  const keys = [...new Set([...stored.keys(), ...Object.keys(today?.figures ?? {})])];
  return inOrderOfSetting(
    operation,
    keys.map((key) => standingOf(key, stored.get(key), today?.figures[key])),
  );
}

/**
 * The figures of an operation, what is set first: what was measured or typed stands; what lib works out otherwise today stands beside the
 * old one, struck through; what is no longer needed comes last, struck through. An operation that is done keeps what it was done by.
 */
export function figuresShown(line: OperationLine, now: PlannedOperation | null): FigureView[] {
  const counting = { next: 0 };
  const [today, gone] = [todayOf(line, now), goneKeys(line, now)];
  const good = line.figures.filter(({ key }) => !gone.has(key));
  const shown = inOrder(line.key, good, today).flatMap((key) => {
    const [stored, planned] = [good.find((one) => one.key === key), today?.figures[key]];
    if (stored) return shownOne(stored, planned, counting);
    return planned ? workedOut(key, planned) : [];
  });
  return [...shown, ...line.figures.filter(({ key }) => gone.has(key)).map((stored) => goneView(stored, counting))];
}
