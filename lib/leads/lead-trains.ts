import { DomainError } from '../figure/domain-error.ts';
import { type BestAsked, bestTrains, type Ranked } from '../trains/best-trains.ts';
import { nearerWith, type WithMissing } from '../trains/nearer-with.ts';
import { targetOf } from '../trains/target.ts';
import type { Wanted } from '../trains/wanted.ts';
import { printShort } from '../values/print.ts';
import { over, type Ratio, times, toNumber } from '../values/ratio.ts';

/** drive: through the worm, or wheels direct to the spindle with the worm out (short leads). */
export type Drive = 'worm' | 'direct';
export type LeadMachine = { readonly turns: number; readonly screw: Ratio; readonly drive: Drive };

/**
 * Lead of the machine, what equal wheels cut, exact, inches:  A × S with the worm in; S with the wheels direct to the spindle
 * A: turns of the crank for one of the spindle; S: lead of the table screw.
 * Source: Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, scan pages 67 to 70. Example: 40 and 1/4: 10; direct 1/4.
 */
export const machineLeadOf = ({ turns, screw, drive }: LeadMachine): Ratio => (drive === 'direct' ? screw : times(screw, [turns, 1]));

/** Below this lead of the machine feed by the index crank, not by power: Brown & Sharpe, scan page 188. */
export const LEAST_POWER_LEAD_IN = 2;

/** Drivers (nearer the table screw) ÷ driven for a lead: Lm ÷ L, in which the drift across a face is linear. A lead that holds π is below the line. */
export const targetForLead = (wanted: Wanted, machine: LeadMachine) =>
  targetOf(over(machineLeadOf(machine), wanted.size), wanted.pi === 1 ? -1 : 0);

/** The trains for a lead, best first by drift across the face; drivers nearer the table screw. */
export function trainsForLead(wanted: Wanted, machine: LeadMachine, asked: Omit<BestAsked, 'target'>): Ranked[] {
  checkMachine(machine);
  return bestTrains({ ...asked, target: targetForLead(wanted, machine) });
}

/** Lead that a train cuts, exact: lead of the machine × driven ÷ drivers. Source: the same, pages 68, 69. Example: 100 × 32 ÷ 24 × 48 on 10 in: 3.6. */
export const leadOfTrain = (ratio: Ratio, machine: LeadMachine): Ratio => over(machineLeadOf(machine), ratio);

/** Lead of a table screw, inches: from an optical slide to a planer's feed. */
const SCREW_LEAD_IN = { least: 0.01, most: 2 };

function checkMachine({ turns, screw }: LeadMachine): void {
  const { least, most } = SCREW_LEAD_IN;
  if (toNumber(screw) < least || toNumber(screw) > most)
    throw new DomainError({
      given: `A table screw that moves ${printShort(toNumber(screw), 6)} in a turn.`,
      limit: `From ${least} to ${most} in a turn.`,
      tryThis: 'Most have 4 or 5 threads per inch, or 5 mm.',
      about: ['screw'],
    });
  if (Number.isInteger(turns) && turns >= 1 && turns <= 1000 && toNumber(screw) > 0) return;
  throw new DomainError({
    given: `The head makes one turn for ${turns} of the crank.`,
    limit: 'From 1 to 1,000 whole turns.',
    tryThis: 'Most heads have 40.',
    about: ['turns'],
  });
}

/** The shortest and longest leads that four wheels of the drawer give, inches; null with fewer than four. */
export function leadLimits(
  wheels: readonly number[],
  machine: LeadMachine,
): { readonly shortest: number; readonly longest: number } | null {
  const sorted = [...wheels].sort((a, b) => a - b);
  if (sorted.length < 4) return null;
  const [a, b, y, z] = [sorted[0], sorted[1], sorted.at(-2), sorted.at(-1)] as [number, number, number, number];
  const lead = toNumber(machineLeadOf(machine));
  return { shortest: (lead * a * b) / (y * z), longest: (lead * y * z) / (a * b) };
}

/** Which single missing wheels would bring a lead nearer than today's best. */
export const nearerLead = (
  wanted: Wanted,
  machine: LeadMachine,
  { wheels, missing = [] }: { readonly wheels: readonly number[]; readonly missing?: readonly number[] },
  today: Ranked | undefined,
): WithMissing[] => nearerWith(targetForLead(wanted, machine), wheels, missing, today?.near.ratio ?? null);
