import { nearestSpanCount, span } from '../../lib/gears/spur.formulas.ts';
import { CANDIDATES, type Candidate } from '../../lib/identify/candidates.ts';
import type { MeasuredWheel, Reading } from '../../lib/identify/readings.ts';
import { inches } from '../../lib/values/length.ts';
import { bell, type Draw, from, pick } from './identify-draw.ts';

/** A wheel that was made up, as it truly is, and what somebody read on it. truth is null where it is none of the candidates. */
export type MadeUp = { readonly truth: Candidate | null; readonly wheel: MeasuredWheel };

/** What a simulator decides: how often each candidate comes, what is worn, how readings err, and which are taken. Inches. */
export type Law = {
  readonly often: (one: Candidate) => number;
  readonly noneOften: number;
  readonly wear: (draw: Draw, m: number) => number;
  readonly uneven: (draw: Draw, wear: number) => number;
  readonly tipGone: (draw: Draw, m: number) => number;
  readonly rootOff: (draw: Draw, m: number) => number;
  readonly shift: (draw: Draw) => number;
  readonly misread: (draw: Draw, error: number) => number;
  readonly bias: (draw: Draw) => number;
  /** By what the instrument's scale is stretched. */
  readonly stretch: (draw: Draw) => number;
  /** The last figure that is written down, inches; 0 where it is not rounded. */
  readonly readTo: (draw: Draw) => number;
  /** The same of an outside, where that is read with another instrument. */
  readonly outsideReadTo?: (draw: Draw) => number;
};

/** The first law: errors of the bell, wear of half a bell, as the tuning takes them to be. */
export const FIRST: Law = {
  often: ({ often }) => often,
  noneOften: 0.04,
  wear: (draw, m) => Math.abs(bell(draw)) * (0.003 + 0.02 * m),
  uneven: (draw, wear) => bell(draw) * 0.1 * wear,
  tipGone: (draw, m) => (draw() < 0.5 ? from(draw, 0, 0.03) : draw() < 0.8 ? from(draw, 0, 0.15) : from(draw, 0, 0.6)) * m,
  rootOff: (draw, m) => bell(draw) * 0.02 * m,
  shift: (draw) => (draw() < 0.06 ? from(draw, -0.28, 0.56) : 0),
  misread: (draw, error) => bell(draw) * error,
  bias: () => 0,
  stretch: () => 1,
  readTo: () => 0,
};

/** How often wheels come by the second law: a count of its own, which owes nothing to the weights of lib. */
function otherwise({ known, key }: Candidate): number {
  const kind = { DP: 5, module: 2, CP: 1 }[known.pitch.kind];
  const system = key.endsWith('14.5') ? 4 : key.startsWith('full-20') || key.startsWith('module') ? 3 : 1;
  return kind * system;
}

/**
 * The second law, which the tuning never saw: other counts of each kind of wheel; errors even or three-cornered, read to the thousandth, on a
 * caliper that is off, with slips among them; wear that falls off slowly and is uneven; more wheels turned down.
 */
export const SECOND: Law = {
  often: otherwise,
  noneOften: 0.07,
  wear: (draw, m) => -Math.log(1 - draw()) * (0.002 + 0.018 * m),
  uneven: (draw, wear) => from(draw, -0.25, 0.25) * wear,
  tipGone: (draw, m) => (draw() < 0.75 ? -Math.log(1 - draw()) * 0.03 : from(draw, 0.02, 0.5)) * m,
  rootOff: (draw, m) => from(draw, -0.04, 0.04) * m,
  shift: (draw) => (draw() < 0.05 ? from(draw, -0.2, 0.5) : 0),
  misread: (draw, error) => {
    if (draw() < 0.03) return from(draw, -12, 12) * error;
    return (draw() < 0.5 ? from(draw, -1.8, 1.8) : from(draw, -2.4, 2.4) + from(draw, -0.5, 0.5)) * error * 0.9;
  },
  bias: (draw) => from(draw, -0.001, 0.001),
  stretch: () => 1,
  readTo: () => 0.001,
};

/** What an instrument shows and its owner writes down, the same for all readings of one wheel. */
type Instrument = { readonly bias: number; readonly stretch: number; readonly readTo: number };

/** One reading as it is written down. */
function written(draw: Draw, law: Law, size: number, error: number, { bias, stretch, readTo }: Instrument): number {
  const read = size * stretch + law.misread(draw, error) + bias;
  return readTo === 0 ? read : Math.round(read / readTo) * readTo;
}

type Sizes = { readonly N: number; readonly m: number; readonly a: number; readonly A: number; readonly B: number };

/** The readings that somebody takes of a wheel: the outside nearly always, two spans mostly, three or a root now and then. */
function readOn(draw: Draw, law: Law, { N, m, a, A, B }: Sizes, spanFactor: (k: number) => number): Reading[] {
  const [wear, tip, root, x] = [law.wear(draw, m), law.tipGone(draw, m), law.rootOff(draw, m), law.shift(draw)];
  const instrument = { bias: law.bias(draw), stretch: law.stretch(draw), readTo: law.readTo(draw) };
  const outside = law.outsideReadTo ? { ...instrument, readTo: law.outsideReadTo(draw) } : instrument;
  const read = (size: number, error: number, by = instrument) => inches(Math.max(0.01, written(draw, law, size, error, by)));
  const readings: Reading[] = [];
  if (draw() < 0.95) readings.push({ of: 'outside', by: 'true', size: read(N * m + 2 * (A + x * m) - tip, 0.002, outside) });
  if (draw() < 0.5) readings.push({ of: 'root', size: read(N * m - 2 * (B - x * m) + root, 0.005) });
  const k = nearestSpanCount(N, a);
  const spans = pick(draw, [0, 1, 2, 3], (n) => [0.08, 0.12, 0.6, 0.2][n] ?? 0);
  for (let i = 0; i < spans; i++) {
    const W = span({ N, m, a }, k + i) * spanFactor(k + i) + 2 * x * m * Math.sin(a) - wear * Math.cos(a) + law.uneven(draw, wear);
    readings.push({ of: 'span', over: k + i, size: read(W, 0.001) });
  }
  return readings.length === 0 ? [{ of: 'outside', by: 'true', size: read(N * m + 2 * A - tip, 0.002, outside) }] : readings;
}

/** A wheel that is no candidate: any module, teeth of any height, spans that are no involute's. */
function oddWheel(draw: Draw, law: Law, N: number): MadeUp {
  const [m, a] = [Math.exp(from(draw, Math.log(0.02), Math.log(0.4))), from(draw, 0.24, 0.4)];
  const bent = Array.from({ length: 400 }, () => 1 + from(draw, -0.04, 0.04));
  const sizes = { N, m, a, A: from(draw, 0.8, 1.15) * m, B: from(draw, 1, 1.35) * m };
  return { truth: null, wheel: { teeth: N, readings: readOn(draw, law, sizes, (k) => bent[k] ?? 1) } };
}

/** One made-up wheel by a law. */
export function makeUp(draw: Draw, law: Law): MadeUp {
  const N = Math.round(from(draw, 16, 90));
  if (draw() < law.noneOften) return oddWheel(draw, law, N);
  const truth = pick(draw, CANDIDATES, law.often);
  const eased = truth.composite ? from(draw, -0.004, 0.001) : 0;
  const sizes = { N, m: truth.m, a: truth.a, A: truth.A, B: truth.B };
  return { truth, wheel: { teeth: N, readings: readOn(draw, law, sizes, () => 1 + eased) } };
}
