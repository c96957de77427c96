import { spanOver } from '../../../lib/gears/base-tangent.formulas.ts';
import type { Flanks } from '../../../lib/gears/flanks.formulas.ts';
import type { MeasuredWheel, Reading } from '../../../lib/identify/readings.ts';
import { inches } from '../../../lib/values/length.ts';

/** A wheel by its own plain numbers, in inches, typed from the standards and not taken from the candidates. */
export type Teeth = { readonly N: number; readonly m: number; readonly deg: number; readonly A: number; readonly B: number };

export const DP = (P: number, N: number, deg = 14.5, A = 1, B = 1.157): Teeth => ({ N, m: 1 / P, deg, A, B });
export const MODULE = (m: number, N: number, deg = 20, A = 1, B = 1.25): Teeth => ({ N, m: m / 25.4, deg, A, B });
export const CP = (p: number, N: number, deg = 14.5, A = 1, B = 1.157): Teeth => ({ N, m: p / Math.PI, deg, A, B });

const flanks = ({ N, m, deg, A, B }: Teeth): Flanks => ({
  ...{ N, mn: m, an: (deg * Math.PI) / 180, psi: 0, v: 0, A: A * m, B: B * m, ring: false, unit: 'in' },
});

export type Took = { readonly outside?: boolean; readonly root?: boolean; readonly depth?: boolean; readonly spans?: readonly number[] };

/** What is read on such a wheel: thinned by wear along the pitch circle, its outside short by tip. */
export function readOf(teeth: Teeth, took: Took, wear = 0, tip = 0): MeasuredWheel {
  const { N, m, A, B } = teeth;
  const one = flanks(teeth);
  const readings: Reading[] = [
    ...(took.outside === false ? [] : [{ of: 'outside', by: 'true', size: inches((N + 2 * A) * m - tip) } as const]),
    ...(took.root ? [{ of: 'root', size: inches((N - 2 * B) * m) } as const] : []),
    ...(took.depth ? [{ of: 'depth', size: inches((A + B) * m - tip / 2) } as const] : []),
    ...(took.spans ?? []).map((k) => ({ of: 'span', over: k, size: inches(spanOver(one, (Math.PI * m) / 2 - wear, k)) }) as const),
  ];
  return { teeth: N, readings };
}
