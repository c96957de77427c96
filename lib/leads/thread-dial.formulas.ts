import { gcd, over, type Ratio, ratio, toNumber } from '../values/ratio.ts';

/**
 * After how many threads of the lead screw the half-nuts may close again and the tool falls in its own thread.
 *   s = lower number of S ÷ L in lowest terms: s S is then a whole number of leads L
 * S: lead of the screw; L: lead of the thread being cut (pitch × starts). 1: close anywhere.
 * Source: derived; F. D. Jones, Turning and Boring (1914), principle of the thread indicator, works one: 6 TPI screw, 10 TPI: 3.
 * Example: 8 TPI screw, 11 TPI: 8; 11 1/2 TPI: 16; 16 TPI: 1.
 */
export const threadsToMatch = (S: Ratio, L: Ratio): number => over(S, L)[1];

/** dial: teeth of the dial's wheel; lines: how many lines it has. */
export type Dial = { readonly teeth: number; readonly lines: number };
/**
 * step: every so many lines, counted as they pass, from the line started on. lines: which those are, the line started on as 0, where they
 * are the same in every turn of the dial; 'count turns': they are not, and the line started on serves again only after so many turns.
 */
export type DialUse = {
  readonly use: 'anywhere' | 'lines' | 'count turns';
  readonly lines: readonly number[];
  readonly turns: number;
  readonly step: number;
};

/**
 * Which lines of a thread dial serve.
 * A line k passes when W k ÷ g threads of the screw have gone by; it serves when that is a multiple of s: every so many lines,
 *   step = s g ÷ gcd(W, s g);  where step does not go into g, the same line comes round after step ÷ gcd(step, g) turns
 * W: teeth of the dial wheel, g: lines, s as above. Source: derived. Example: W 16, g 8, s 8 (9 TPI on 8): every fourth line.
 */
export function dialUse(s: number, { teeth, lines }: Dial): DialUse {
  if (s === 1) return { use: 'anywhere', lines: Array.from({ length: lines }, (_, k) => k), turns: 1, step: 1 };
  const step = (s * lines) / gcd(teeth, s * lines);
  if (lines % step === 0) return { use: 'lines', lines: Array.from({ length: lines / step }, (_, k) => k * step), turns: 1, step };
  return { use: 'count turns', lines: [0], turns: step / gcd(step, lines), step };
}

/**
 * Half-nut shifts that move from one start to the next in a multi-start thread.
 *   j threads of the screw, with j S ÷ L a whole number and 1/n more: with S ÷ L = a/b in lowest terms, j a leaves b/n over when divided by b
 * n: starts. Null where no shift of whole screw threads does it. Source: F. D. Jones, Turning and Boring (1914), multiple threads.
 * Example: 4 TPI screw, double thread of lead 1/2 in: 1 thread.
 */
export function startShift(S: Ratio, L: Ratio, n: number): number | null {
  const [top, bottom] = over(S, L);
  if (bottom % n !== 0) return null;
  const threads = (BigInt(bottom / n) * inverse(BigInt(top), BigInt(bottom))) % BigInt(bottom);
  return Number(threads) || 1;
}

/** The whole number that times `top` leaves 1 over when divided by `bottom`; the two share no factor (Euclid, Elements VII.1, worked back). */
function inverse(top: bigint, bottom: bigint): bigint {
  let [left, next] = [top % bottom, bottom];
  let [made, before] = [1n, 0n];
  while (left !== 0n) {
    const times = next / left;
    [next, left] = [left, next % left];
    [before, made] = [made, before - times * made];
  }
  return ((before % bottom) + bottom) % bottom;
}

/** Teeth to step the first driver on by from start to start, where its count allows: teeth ÷ starts. Source: the same. Example: 40 teeth, 2 starts: 20. */
export const driverStep = (teeth: number, n: number): number | null => (teeth % n === 0 ? teeth / n : null);

/** How far to shift the tool along from start to start: lead ÷ starts. Source: the same. Example: lead 0.8, 2 starts: 0.4. */
export const startPitch = (L: Ratio, n: number): Ratio => over(L, ratio(n));

export const inchesOfThreads = (j: number, S: Ratio): number => j * toNumber(S);
