import { DomainError } from '../figure/domain-error.ts';
import type { Answer } from '../figure/figure.ts';
import type { Hand } from '../gears/gear.ts';
import type { Ranked } from '../trains/best-trains.ts';
import { wheelsFigure } from '../trains/change-gears.sums.ts';
import { waitsFor } from '../trains/nearer-with.ts';
import type { Train } from '../trains/nearest.ts';
import { millionths, trainWords, waitsWords } from '../trains/train-words.ts';
import { inchesOf, type Wanted } from '../trains/wanted.ts';
import { type Length, toInches } from '../values/length.ts';
import { printNumber, printShort } from '../values/print.ts';
import { driveCautions, handCautions, machineFigure, rowsTable, trainFigures } from './lead-figures.ts';
import { type LeadMachine, nearerLead, trainsForLead } from './lead-trains.ts';

export type LeadKey = 'machineLead' | 'wheels' | 'train' | 'cuts' | 'acrossFace' | 'swing';

export type LeadAsked = {
  readonly lead: Wanted;
  readonly diameter: Length;
  readonly face: Length;
  readonly hand: Hand;
  readonly machine: LeadMachine;
  readonly wheels: readonly number[];
  readonly upTo: 2 | 4 | 6;
  readonly missing?: readonly number[];
  readonly mounted?: Train;
};

/** A lead this small a part of the diameter lies within half a degree of straight round. */
const LEAST_OF_DIAMETER = 1 / 40;

function checkLead({ lead, diameter }: LeadAsked): void {
  const least = toInches(diameter) * LEAST_OF_DIAMETER;
  if (inchesOf(lead) >= least) return;
  throw new DomainError({
    given: `A lead of ${printShort(inchesOf(lead), 6)} in on a diameter of ${printShort(toInches(diameter), 4)} in.`,
    limit: `No less than a fortieth of the diameter, ${printShort(least, 4)} in.`,
    tryThis: 'Cut so short a lead as a thread, in the lathe.',
    about: ['lead'],
  });
}

/** The trains to choose from for a lead, best first. */
export const leadTrains = ({ lead, machine, wheels, upTo, mounted }: LeadAsked): Ranked[] =>
  trainsForLead(lead, machine, { wheels, upTo, ...(mounted ? { mounted } : {}) });

/** The missing wheels that the job waits for, its trains of today given. */
export const leadWaits = (asked: LeadAsked, [best]: readonly Ranked[]): readonly number[] =>
  waitsFor(nearerLead(asked.lead, asked.machine, asked, best));

/**
 * Wheels between table screw and head for a lead, with the drift across the face, the table's angle, and which missing wheel would
 * make it exact. Throws DomainError for a lead under a fortieth of the diameter, and as trainsForLead does. Example: 12 in on a 10 in machine: 40 ÷ 48 and others, exact.
 */
export function leadAnswer(asked: LeadAsked, rows: readonly Ranked[] = leadTrains(asked)): Answer<LeadKey> {
  checkLead(asked);
  const [best] = rows;
  const job = {
    d: toInches(asked.diameter),
    L: inchesOf(asked.lead),
    hand: asked.hand,
    face: asked.face,
    machine: asked.machine,
    wheels: asked.wheels,
  };
  const figures = {
    ...(best ? { wheels: wheelsFigure(best) } : {}),
    machineLead: machineFigure(asked.machine),
    ...(best ? trainFigures(best, job) : {}),
  } as Answer<LeadKey>['figures'];
  return { figures, cautions: [...handCautions(asked), ...driveCautions(job)], says: saysOf(asked, best), tables: [rowsTable(rows, job)] };
}

function saysOf({ lead, machine, wheels, missing = [] }: LeadAsked, best: Ranked | undefined): string {
  if (!best) return 'The drawer gives no train at all: it holds fewer than two wheels.';
  if (best.near.exact) return `Exact: ${trainWords(best.train)}.`;
  const waits = waitsWords(nearerLead(lead, machine, { wheels, missing }, best));
  return `Nothing exact in the drawer for ${printNumber(inchesOf(lead), 4)} in. Nearest: ${trainWords(best.train)}, drivers ÷ driven ${millionths(best.near.error)}.${waits}`;
}
