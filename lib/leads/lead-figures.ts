import type { AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import type { Hand } from '../gears/gear.ts';
import { helixOfLead } from '../gears/helical.formulas.ts';
import type { Ranked } from '../trains/best-trains.ts';
import { trainWords } from '../trains/train-words.ts';
import { radians, toDegrees } from '../values/angle.ts';
import { type Length, toInches } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { toNumber } from '../values/ratio.ts';
import { errorAcrossFace } from './lead.formulas.ts';
import { LEAST_POWER_LEAD_IN, type LeadMachine, leadLimits, leadOfTrain, machineLeadOf } from './lead-trains.ts';

const TREATISE = 'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, scan pages 67 to 70';
const UNROLLED = 'derived: the helix unrolled at the pitch circle';
/** A universal table swings about so far each way: common practice, no source. */
const MOST_SWING_DEGREES = 45;

/** A helix to cut: d diameter at which it is measured and L its lead, inches. */
export type LeadJob = {
  readonly d: number;
  readonly L: number;
  readonly hand: Hand;
  readonly face: Length;
  readonly machine: LeadMachine;
  readonly wheels: readonly number[];
};

export const one = (symbol: string, name: string, value: Value, from: Given['from'] = 'typed'): Given => ({ symbol, name, value, from });
export const inch = (number: number, places = 4): Value => ({ number, unit: 'in', places });

export function figure(
  name: string,
  symbol: string,
  value: Value,
  formula: string,
  source: string,
  given: readonly Given[],
  note = '',
): Figure {
  return { name, symbol, value, unit: 'in', formula, source, given, ...(note ? { note } : {}) };
}

export function machineFigure(machine: LeadMachine): Figure {
  const screw = one('S', 'lead of the table screw', { ratio: machine.screw });
  const value = inch(toNumber(machineLeadOf(machine)), 5);
  if (machine.drive === 'direct') return figure('Lead of the machine, wheels direct to the spindle', 'M', value, 'S', TREATISE, [screw]);
  return figure('Lead of the machine', 'M', value, 'A × S', TREATISE, [one('A', 'turns of the crank', { count: machine.turns }), screw]);
}

const trainFigure = ({ near, train }: Ranked): Figure =>
  figure(
    'Wheels: drivers ÷ driven',
    'T',
    { ratio: near.ratio },
    '',
    'derived: the nearest of all trains that the wheels give',
    [],
    trainWords(train),
  );

const cutsFigure = ({ near }: Ranked, cut: number, { machine }: LeadJob): Figure =>
  figure('Lead that it cuts', 'K', inch(cut, 5), 'M ÷ T', TREATISE, [
    one('M', 'lead of the machine', inch(toNumber(machineLeadOf(machine)), 6), 'worked out'),
    one('T', 'drivers ÷ driven', { ratio: near.ratio }, 'worked out'),
  ]);

/** What the lead that is cut drifts across the face, in thousandths of an inch. */
const drift = ({ d, L, face }: Pick<LeadJob, 'd' | 'L' | 'face'>, cut: number): Value => ({
  number: errorAcrossFace(d, toInches(face), L, cut) * 1000,
  unit: 'thou',
  places: 3,
});

function driftFigure(job: LeadJob, cut: number): Figure {
  const { d, L, face } = job;
  return figure('Drift across the face', 'e', drift(job, cut), '1000 × π × d × F × (1 ÷ K − 1 ÷ L)', UNROLLED, [
    one('d', 'pitch diameter', inch(d, 7), 'worked out'),
    one('F', 'face', inch(toInches(face), 6)),
    one('K', 'lead that it cuts', inch(cut, 8), 'worked out'),
    one('L', 'lead wanted', inch(L, 8), 'worked out'),
  ]);
}

function swingFigure({ d, hand }: LeadJob, cut: number): Figure {
  const given = [one('d', 'pitch diameter', inch(d, 6), 'worked out'), one('K', 'lead that it cuts', inch(cut, 6), 'worked out')];
  return figure('Table swung by', 'H', { angle: radians(helixOfLead(d, cut)) }, 'atan(π × d ÷ K)', TREATISE, given, swingWords(hand));
}

export function trainFigures(best: Ranked, job: LeadJob) {
  const cut = toNumber(leadOfTrain(best.near.ratio, job.machine));
  return {
    train: trainFigure(best),
    cuts: cutsFigure(best, cut, job),
    acrossFace: driftFigure(job, cut),
    swing: swingFigure(job, cut),
  };
}

const swingWords = (hand: Hand): string => `Stand before the machine and push the table with the ${hand} hand. A scratch line proves it.`;

/** With the worm in; direct from the spindle the plate stands idle, and driveCautions says how to divide. */
const PLATE_TURNS: Caution = {
  name: 'Dividing',
  says: 'The wheels turn the plate: plate stop out, index on the plate, spindle clamp off. No differential together with a helix.',
  weight: 'note',
};

export function handCautions({ hand, machine }: Pick<LeadJob, 'hand' | 'machine'>): Caution[] {
  const lean: Caution = {
    name: 'Hand',
    says: `${hand === 'right' ? 'Right' : 'Left'}-hand: teeth lean to the ${hand} with the axis upright. Whether an idler more is wanted is a fact of the head: scratch a line along the blank before cutting.`,
    weight: 'beware',
    about: 'swing',
  };
  return machine.drive === 'direct' ? [lean] : [lean, PLATE_TURNS];
}

export function driveCautions({ machine, wheels, d, L }: LeadJob): Caution[] {
  const limits = leadLimits(wheels, machine);
  const cautions: Caution[] = [];
  if (limits && (L < limits.shortest || L > limits.longest))
    cautions.push({
      name: 'Out of reach',
      says: `Four of these wheels give leads from ${printShort(limits.shortest, 3)} to ${printShort(limits.longest, 1)} in. ${wayOut(L < limits.shortest, machine)}`,
      weight: 'beware',
      about: 'lead',
    });
  if (machine.drive === 'direct')
    cautions.push({
      name: 'Worm out',
      says: 'Worm out: the plate no longer divides. Divide by the wheel on the spindle, whose teeth must be a multiple of the divisions; turn the table screw by hand.',
      weight: 'beware',
      about: 'machineLead',
    });
  else if (L < LEAST_POWER_LEAD_IN)
    cautions.push({
      name: 'Short lead',
      says: `For a lead under ${LEAST_POWER_LEAD_IN} in the worm turns ${printShort(toNumber(machineLeadOf(machine)) / L, 1)} times for one turn of the table screw: feed by the index crank, never by power.`,
      weight: 'danger',
      about: 'lead',
    });
  if (toDegrees(radians(helixOfLead(d, L))) > MOST_SWING_DEGREES)
    cautions.push({
      name: 'Table',
      says: `The table swings about ${MOST_SWING_DEGREES}°; beyond it leave the table straight and swing a spiral or vertical head by the angle.`,
      weight: 'beware',
      about: 'swing',
    });
  return cautions;
}

const wayOut = (short: boolean, { drive }: LeadMachine): string => {
  if (short)
    return drive === 'worm'
      ? 'For a shorter one drive the spindle direct, worm out.'
      : 'A shorter one wants a greater step between the wheels.';
  return drive === 'direct' ? 'For a longer one put the worm in.' : 'A longer one wants six wheels, or a greater step between them.';
};

export const rowsTable = (rows: readonly Ranked[], job: LeadJob): AnswerTable => ({
  title: 'Wheels, best first: drift across the face, then wheels to change',
  unit: 'in',
  heads: ['drivers, from the table screw', 'driven, to the head', 'lead', 'drift across the face', 'to put on'],
  rows: rows.map(({ train, near, changes }) => {
    const cut = toNumber(leadOfTrain(near.ratio, job.machine));
    return [train.drivers.join(' × '), train.driven.join(' × '), inch(cut, 5), drift(job, cut), { count: changes }];
  }),
});
