/** before: the `next` of the page before, null for the first page. */
export type PageAsk = { readonly before: number | null; readonly size: number };
/** next: what to ask for as `before`; null on the last page. */
export type Page<T> = { readonly rows: readonly T[]; readonly next: number | null };

/** Larger than any id, so that the first page asks the same question as the others. */
const FIRST = Number.MAX_SAFE_INTEGER;
export const startOf = ({ before }: PageAsk): number => before ?? FIRST;

/** A page out of rows newest first, of which one more than the size was asked for. */
export function pageOf<T>(rows: readonly T[], { size }: PageAsk, idOf: (row: T) => number): Page<T> {
  const shown = rows.slice(0, size);
  const last = shown.at(-1);
  return { rows: shown, next: rows.length > size && last !== undefined ? idOf(last) : null };
}
