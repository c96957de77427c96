import type { Value } from '../figure/figure.ts';
import { printValue } from '../figure/print-value.ts';
import type { LengthUnit } from '../values/length.ts';
import type { Plan } from './plan.ts';

/** A figure as it stands in the book. One that was typed over or measured stays, whatever lib would work out by now. */
type StoredFigure = { readonly key: string; readonly shown: Value; readonly shownFrom: 'worked out' | 'typed' | 'measured' };
/** done: it was done by these figures, and keeps them. */
export type StoredOperation = { readonly key: string; readonly done?: boolean; readonly figures: readonly StoredFigure[] };

/** A figure that would be printed otherwise today. was or now is null where it stands in one of the two only. */
export type FigureChanged = { readonly operation: string; readonly figure: string; readonly was: Value | null; readonly now: Value | null };
export type Changed = {
  readonly figures: readonly FigureChanged[];
  readonly added: readonly string[];
  readonly removed: readonly string[];
};

const inPrint = (value: Value, unit: LengthUnit, places?: number): string => {
  const { text, unit: of } = printValue(value, unit, places);
  return `${text} ${of}`;
};

/** Two values are the same when they are printed alike in the figure's own unit: nobody can cut by more than is printed. */
export const samePrint = (one: Value, other: Value, unit: LengthUnit, places?: number): boolean =>
  inPrint(one, unit, places) === inPrint(other, unit, places);

type Planned = Plan['operations'][number];

/** A step on the way to a figure that is set as before: nobody sets anything by it. */
function isIdleStep({ figure, was, now }: FigureChanged, all: readonly FigureChanged[], { figures }: Planned): boolean {
  const to = figures[figure]?.towards;
  return was !== null && now !== null && to !== undefined && to in figures && !all.some((other) => other.figure === to);
}

function changedIn(stored: StoredOperation, planned: Planned): FigureChanged[] {
  const of = (figure: string, was: Value | null, now: Value | null): FigureChanged => ({ operation: stored.key, figure, was, now });
  const kept = stored.figures.flatMap(({ key, shown, shownFrom }) => {
    const now = planned.figures[key];
    if (shownFrom !== 'worked out') return [];
    if (!now) return [of(key, shown, null)];
    return samePrint(shown, now.value, now.unit, now.places) ? [] : [of(key, shown, now.value)];
  });
  const known = new Set(stored.figures.map(({ key }) => key));
  const come = Object.entries(planned.figures).filter(([key]) => !known.has(key));
  const all = [...kept, ...come.map(([key, figure]) => of(key, null, figure.value))];
  return all.filter((one) => !isIdleStep(one, all, planned));
}

/**
 * What would be printed otherwise today: figures that changed, came or went, and operations that came or went. Nothing is rewritten.
 * Operations that are done, figures typed over or measured, and steps to a figure that stays as it is set are left out. `stored` are only the operations that lib planned, the struck ones with them.
 */
export function whatChanged(stored: readonly StoredOperation[], plan: Plan): Changed {
  const byKey = new Map(plan.operations.map((operation) => [operation.key, operation]));
  const open = stored.filter(({ done }) => !done);
  const figures = open.flatMap((one) => {
    const planned = byKey.get(one.key);
    return planned ? changedIn(one, planned) : [];
  });
  const known = new Set(stored.map(({ key }) => key));
  return {
    figures,
    added: plan.operations.map(({ key }) => key).filter((key) => !known.has(key)),
    removed: open.map(({ key }) => key).filter((key) => !byKey.has(key)),
  };
}

export const isStale = ({ figures, added, removed }: Changed): boolean => figures.length + added.length + removed.length > 0;
