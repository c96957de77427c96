import { CANDIDATES, type Candidate } from './candidates.ts';
import { bodyEvidence, type Evidence, flankEvidence, type Gone, mostOfFlanks, type Wears, wears } from './evidence.formulas.ts';
import { expected, type Stance } from './expected.formulas.ts';
import { hintOfModule, noneLikely } from './none-fits.formulas.ts';
import type { Plain } from './readings.ts';
import { COARSE, FINE, type HelixSteps, leaningPrint, stances } from './stances.ts';

/** A wheel's readings as plain numbers. */
export type PlainWheel = { readonly teeth: number; readonly readings: readonly Plain[] };

/** How a candidate fits one wheel best: its stance, and what is gone. */
export type Fit = { readonly stance: Stance } & Gone;

/** How likely one wheel's readings are under each candidate that comes into question, and under none; logarithms. */
export type Weighed = { readonly logs: ReadonlyMap<Candidate, number>; readonly none: number };

/** A size may hint at a module this much finer or coarser than the true one: short and long teeth, helix, a turned outside. */
const [FINER, COARSER] = [0.72, 1.22];

/** The candidates that are met oftenest first: what cannot matter is then soon seen. */
const BY_OFTEN = CANDIDATES.toSorted((one, other) => other.often - one.often);

/** The candidates at whose module at least one of the sizes hints. */
export function inQuestion({ teeth, readings }: PlainWheel): readonly Candidate[] {
  const hints = readings.map((one) => hintOfModule(one, teeth)).filter((m) => m > 0);
  const print = readings.find(({ of }) => of === 'helix');
  const lean = print ? Math.cos(Math.min(1.2, print.read + 2 * print.error)) : 1;
  return BY_OFTEN.filter(({ m }) => hints.some((hint) => m > hint * FINER * lean && m < hint * COARSER));
}

/** Readings on the flanks, which wear reaches, and the rest. wearsOf: the wears to be tried at a module, fine enough for the finest reading on the flanks. */
type Parted = {
  readonly flanks: readonly Plain[];
  readonly body: readonly Plain[];
  readonly most: number;
  readonly wearsOf: (m: number) => Wears;
};

function parted({ readings }: PlainWheel): Parted {
  const flanks = readings.filter(({ of }) => of === 'span' || of === 'over pins');
  const body = readings.filter(({ of }) => of !== 'span' && of !== 'over pins');
  return { flanks, body, most: mostOfFlanks(flanks.map(({ error }) => error)), wearsOf: wearsFor(flanks) };
}

/** All candidates of one pitch wear alike: theirs are worked once. */
function wearsFor(flanks: readonly Plain[]): (m: number) => Wears {
  const least = flanks.reduce((finest, { error }) => Math.min(finest, error), Infinity);
  const known = new Map<number, Wears>();
  return (m) => {
    const tried = known.get(m) ?? wears(m, Math.min(least, m));
    known.set(m, tried);
    return tried;
  };
}

/** How likely a wheel's readings are in one stance of a candidate, and what is gone of it then; null when they cannot reach the floor. */
function standing(candidate: Candidate, parts: Parted, stance: Stance, tried: Wears, floor: number): Evidence | null {
  const body = bodyEvidence(
    parts.body.map((one) => expected(one, stance, candidate)),
    candidate.m,
  );
  if (body.likely * parts.most < floor) return null;
  const flanks = parts.flanks.map((one) => expected(one, stance, candidate));
  // A pin that falls to the bottom is no reading on the flank.
  const bottomed = bodyEvidence(flanks, candidate.m);
  const worn = flankEvidence(flanks, tried);
  return { likely: body.likely * bottomed.likely * worn.likely, wear: worn.wear, wearWide: worn.wearWide, tip: body.tip };
}

/** What is less likely than this part of the likeliest is left out: it could not be seen in any percent. */
const SEEN = 1e-9;

/** How likely the readings are under one candidate. best: the likeliest so far, often as it is met. */
function likelyOf(candidate: Candidate, wheel: PlainWheel, parts: Parted, best: number, steps: HelixSteps): number {
  let sum = 0;
  const tried = parts.wearsOf(candidate.m);
  for (const stance of stances(candidate, wheel.teeth, wheel.readings, steps)) {
    const one = standing(candidate, parts, stance, tried, (SEEN * best) / (candidate.often * stance.often));
    if (one) sum += stance.often * one.likely;
  }
  return sum;
}

/** Each candidate's likelihood, at so many helix angles. */
function likelies(wheel: PlainWheel, candidates: readonly Candidate[], steps: HelixSteps): Map<Candidate, number> {
  const [parts, each] = [parted(wheel), new Map<Candidate, number>()];
  let best = 0;
  for (const candidate of candidates) {
    const likely = likelyOf(candidate, wheel, parts, best, steps);
    best = Math.max(best, candidate.often * likely);
    each.set(candidate, likely);
  }
  return each;
}

/** What is less likely than this part of the likeliest at few helix angles is not looked at again at many. */
const WORTH_A_LOOK = 1e-4;

/** Helical teeth: all candidates at few helix angles, then at many those that came near. */
function coarseToFine(wheel: PlainWheel, candidates: readonly Candidate[]): Map<Candidate, number> {
  const coarse = likelies(wheel, candidates, COARSE);
  const weight = ([{ often }, likely]: [Candidate, number]): number => often * likely;
  const best = [...coarse].reduce((most, one) => Math.max(most, weight(one)), 0);
  const near = [...coarse].filter((one) => weight(one) >= WORTH_A_LOOK * best).sort((one, other) => weight(other) - weight(one));
  return new Map([
    ...coarse,
    ...likelies(
      wheel,
      near.map(([candidate]) => candidate),
      FINE,
    ),
  ]);
}

/** Weighs one wheel against the candidates that come into question for the first of a set. */
export function weigh(wheel: PlainWheel, candidates: readonly Candidate[]): Weighed {
  const each = leaningPrint(wheel.readings) ? coarseToFine(wheel, candidates) : likelies(wheel, candidates, FINE);
  return {
    logs: new Map([...each].map(([candidate, likely]) => [candidate, Math.log(likely)])),
    none: Math.log(noneLikely(wheel.readings, wheel.teeth)),
  };
}

/** The stance in which a candidate fits a wheel best. */
export function bestFit(candidate: Candidate, wheel: PlainWheel): Fit {
  const parts = parted(wheel);
  const tried = parts.wearsOf(candidate.m);
  let best: { fit: Fit; likely: number } | null = null;
  for (const stance of stances(candidate, wheel.teeth, wheel.readings)) {
    const one = standing(candidate, parts, stance, tried, best ? best.likely / stance.often : 0);
    if (!one || (best && stance.often * one.likely <= best.likely)) continue;
    best = { fit: { stance, wear: one.wear, wearWide: one.wearWide, tip: one.tip }, likely: stance.often * one.likely };
  }
  if (!best) throw new RangeError('a candidate without a stance');
  return best.fit;
}
