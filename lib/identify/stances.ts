import type { Flanks } from '../gears/flanks.formulas.ts';
import { normalAngle } from '../gears/helical.formulas.ts';
import type { Candidate } from './candidates.ts';
import type { Stance } from './expected.formulas.ts';
import { SHIFT_STEP, SHIFTED_OFTEN, SHIFTS, STRAIGHT_DEG, TRANSVERSE_OFTEN } from './judgements.data.ts';
import type { Plain } from './readings.ts';

const STRAIGHT = (STRAIGHT_DEG * Math.PI) / 180;
/** Helix angles are tried from 2.4 errors of the print below it to as many above: so many steps each way, so far apart. */
export type HelixSteps = { readonly each: number; readonly apart: number };
export const FINE: HelixSteps = { each: 12, apart: 0.2 };
/** Enough to see that a candidate is out of the question: what lies between two steps counts as error. */
export const COARSE: HelixSteps = { each: 3, apart: 0.8 };

const flanksOf = ({ m, a, A, B }: Candidate, N: number, x: number): Flanks => ({
  N,
  mn: m,
  an: a,
  psi: 0,
  v: x * m,
  A,
  B,
  ring: false,
  unit: 'in',
});

function straight(candidate: Candidate, N: number): Stance[] {
  const plain: Stance = { flanks: flanksOf(candidate, N, 0), often: 1 - SHIFTED_OFTEN, shiftWide: 0, helixWide: 0 };
  const shiftWide = (SHIFT_STEP * candidate.m) / Math.sqrt(12);
  const shifted = SHIFTS.map((x) => ({ flanks: flanksOf(candidate, N, x), often: SHIFTED_OFTEN / SHIFTS.length, shiftWide, helixWide: 0 }));
  return [plain, ...shifted];
}

function leaning(candidate: Candidate, N: number, print: Plain, { each, apart }: HelixSteps): Stance[] {
  const flanks = flanksOf(candidate, N, 0);
  const steps = Array.from({ length: 2 * each + 1 }, (_, i) => print.read * (N / (N + 2)) + (i - each) * apart * print.error);
  const angles = steps.filter((psi) => psi > 0.005 && psi < 1.2);
  const helixWide = (apart * print.error) / Math.sqrt(12);
  return angles.flatMap((psi) => [
    { flanks: { ...flanks, psi }, often: (1 - TRANSVERSE_OFTEN) / angles.length, shiftWide: 0, helixWide },
    {
      flanks: { ...flanks, psi, mn: candidate.m * Math.cos(psi), an: normalAngle(candidate.a, psi) },
      often: TRANSVERSE_OFTEN / angles.length,
      shiftWide: 0,
      helixWide,
    },
  ]);
}

/** The print of helical teeth; undefined where they are straight, or nobody rolled them. */
export const leaningPrint = (readings: readonly Plain[]): Plain | undefined =>
  readings.find(({ of, read }) => of === 'helix' && read > STRAIGHT);

/**
 * Every way in which a candidate may stand: standard, or with its rack shifted; where a rolled print leans, at each helix that the print
 * leaves open, its pitch standard square to the teeth or in the plane of the wheel.
 */
export function stances(candidate: Candidate, N: number, readings: readonly Plain[], steps: HelixSteps = FINE): Stance[] {
  const print = leaningPrint(readings);
  return print ? leaning(candidate, N, print, steps) : straight(candidate, N);
}
