import type { Plain } from './readings.ts';

/** Modules in inches between which any wheel of a machine tool lies, as the natural logarithm of their ratio (200 : 1). */
const LOG_ROOM = Math.log(200);

/**
 * The module that one size alone hints at, in inches. Rough: any addendum, any angle. 0 for a reading that hints at none.
 * Example: outside 3.000 of 22 teeth gives 0.125.
 */
export function hintOfModule({ of, read, beside }: Plain, N: number): number {
  if (of === 'outside') return read / (N + 2);
  if (of === 'root') return read / Math.max(1, N - 2.4);
  if (of === 'span') return read / (0.96 * Math.PI * (beside - 0.5) + 0.01 * N);
  if (of === 'over pins') return read / (N + 2.4);
  if (of === 'centres') return (2 * read) / (N + beside);
  return 0;
}

/** Over how wide a range, in modules, a reading may lie on a wheel of any form at all, once its module is roughly known (judgement). */
function room({ of, beside }: Plain, spansBefore: number): number {
  if (of === 'span') return spansBefore === 0 ? 0.45 * beside + 0.5 : spansBefore === 1 ? 0.6 : 0.4;
  if (of === 'over pins') return 1.5;
  return of === 'centres' ? 1 : 1.2;
}

/**
 * How likely the readings are of a wheel that is none of the candidates: cycloidal, an odd pitch, an odd form. The first size says how large
 * the module is, equally likely over all sizes; each further one lies anywhere in its room. Derived: even densities over those ranges.
 */
export function noneLikely(readings: readonly Plain[], N: number): number {
  const first = readings.find((one) => hintOfModule(one, N) > 0);
  if (!first) return 0;
  const m = hintOfModule(first, N);
  let [product, spans] = [1, 0];
  for (const one of readings) {
    if (one.of === 'helix') product *= 0.375 / Math.max(one.error, 0.02);
    else if (one === first) product *= 1 / (LOG_ROOM * one.read);
    else product *= 1 / (room(one, spans) * m);
    if (one.of === 'span') spans++;
  }
  return product;
}
