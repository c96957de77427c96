import { CANDIDATES, type Candidate } from './candidates.ts';
import { type Evidence, evidence, type Gone, type Wears, wears } from './evidence.formulas.ts';
import { expected, type Stance } from './expected.formulas.ts';
import { hintOfModule, noneLikely } from './none-fits.formulas.ts';
import type { Plain } from './readings.ts';
import { stances } from './stances.ts';

/** A wheel's readings as plain numbers. */
export type PlainWheel = { readonly teeth: number; readonly readings: readonly Plain[] };

/** How a candidate fits one wheel best: its stance, and what is gone. */
export type Fit = { readonly stance: Stance } & Gone;

/** How likely one wheel's readings are under each candidate that comes into question, and under none; logarithms. */
export type Weighed = { readonly logs: ReadonlyMap<Candidate, number>; readonly none: number };

/** A size may hint at a module this much finer or coarser than the true one: short and long teeth, helix, a turned outside. */
const [FINER, COARSER] = [0.72, 1.22];

/** The candidates at whose module at least one of the sizes hints. */
export function inQuestion({ teeth, readings }: PlainWheel): readonly Candidate[] {
  const hints = readings.map((one) => hintOfModule(one, teeth)).filter((m) => m > 0);
  const print = readings.find(({ of }) => of === 'helix');
  const lean = print ? Math.cos(Math.min(1.2, print.read + 2 * print.error)) : 1;
  return CANDIDATES.filter(({ m }) => hints.some((hint) => m > hint * FINER * lean && m < hint * COARSER));
}

/** How likely a wheel's readings are in one stance of a candidate, and what is gone of it then. */
const standing = (candidate: Candidate, { readings }: PlainWheel, stance: Stance, tried: Wears): Evidence =>
  evidence(
    readings.map((one) => expected(one, stance, candidate)),
    candidate.m,
    tried,
  );

const FLANK = new Set<Plain['of']>(['span', 'over pins']);

/** The wears to be tried on a candidate, fine enough for the finest reading on the flanks. */
const wearsOf = ({ m }: Candidate, { readings }: PlainWheel): Wears =>
  wears(
    m,
    readings.reduce((least, { of, error }) => (FLANK.has(of) ? Math.min(least, error) : least), m),
  );

function likelyOf(candidate: Candidate, wheel: PlainWheel): number {
  let sum = 0;
  const tried = wearsOf(candidate, wheel);
  for (const stance of stances(candidate, wheel.teeth, wheel.readings))
    sum += stance.often * standing(candidate, wheel, stance, tried).likely;
  return sum;
}

/** Weighs one wheel against every candidate that comes into question for the first of a set. */
export function weigh(wheel: PlainWheel, candidates: readonly Candidate[]): Weighed {
  const logs = new Map(candidates.map((candidate) => [candidate, Math.log(likelyOf(candidate, wheel))]));
  return { logs, none: Math.log(noneLikely(wheel.readings, wheel.teeth)) };
}

/** The stance in which a candidate fits a wheel best. */
export function bestFit(candidate: Candidate, wheel: PlainWheel): Fit {
  let best: { fit: Fit; likely: number } | null = null;
  const tried = wearsOf(candidate, wheel);
  for (const stance of stances(candidate, wheel.teeth, wheel.readings)) {
    const { likely, wear, wearWide, tip } = standing(candidate, wheel, stance, tried);
    if (!best || stance.often * likely > best.likely) best = { fit: { stance, wear, wearWide, tip }, likely: stance.often * likely };
  }
  if (!best) throw new RangeError('a candidate without a stance');
  return best.fit;
}
