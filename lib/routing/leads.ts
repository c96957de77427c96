import type { Figure, Value } from '../figure/figure.ts';
import { LEADS } from './leads.data.ts';

/** A figure as it stands: measured says that it was read. */
export type Standing = { readonly key: string; readonly value: Value; readonly limit: boolean; readonly measured: boolean };

/** Steps on the way to what is set: they come last of all. */
const ON_THE_WAY: ReadonlySet<string> = new Set(
  'turns leastCircle sectorHoles speedWorkedOut k feedPerSpan spanBelow spanAbove wholeDepth proof'.split(' '),
);

const lengthIn = (value: Value | undefined): number | null => (value && 'length' in value ? value.length : null);

/** A figure that is its own upper limit, from nothing upward: what a reading may be at most, not a size to set. */
export function isLimit({ value, limits }: Pick<Figure, 'value' | 'limits'>): boolean {
  const [low, high] = limits ?? [];
  return lengthIn(low) === 0 && lengthIn(value) !== null && lengthIn(value) === lengthIn(high);
}

const isKnown = ({ value }: Standing): boolean => !('words' in value);

/** The keys that are set by hand at an operation, as far as they are known: in the order of setting. An operation of the owner's has none. */
function setAt(operation: string | null, figures: readonly Standing[]): readonly string[] {
  const lead = LEADS[operation ?? ''];
  if (!lead) return [];
  const known = new Map(figures.map((one) => [one.key, one]));
  const read = Object.entries(lead.once ?? {}).find(([key]) => known.get(key)?.measured);
  const keys = [...(read?.[1] ?? []), ...lead.set];
  const there = [...new Set(keys)].flatMap((key) => known.get(key) ?? []);
  return [...there.filter(isKnown), ...there.filter((one) => !isKnown(one))].map(({ key }) => key);
}

/** Figures one at a time at the machine: what is set by hand first, then what else is known, then limits, then steps on the way. */
export function inOrderOfSetting(operation: string | null, figures: readonly Standing[]): string[] {
  const set = setAt(operation, figures);
  const rank = ({ key, limit }: Standing): number => {
    const at = set.indexOf(key);
    if (at >= 0) return at;
    if (ON_THE_WAY.has(key)) return set.length + 2;
    return set.length + (limit ? 1 : 0);
  };
  return figures
    .map((one, at) => ({ one, at }))
    .sort((a, b) => rank(a.one) - rank(b.one) || a.at - b.at)
    .map(({ one }) => one.key);
}
