/** How many answers are kept; the oldest goes first. */
const MOST_KEPT = 50;

/** Keeps what costs long to work out, under a key that says everything that it depends on. */
export function remembered<T>(): (key: string, work: () => T) => T {
  const kept = new Map<string, T>();
  return (key, work) => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const fresh = work();
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? '');
    kept.set(key, fresh);
    return fresh;
  };
}
