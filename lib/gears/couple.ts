import { DomainError } from '../figure/domain-error.ts';
import type { Given } from '../figure/figure.ts';
import { inUnit, type Length } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { atOf, baseOf, type Flanks, pitchOf, pointedShift, rootOf, tipOf } from './flanks.formulas.ts';
import { exact } from './givens.ts';
import { type Couple, centreAt, shiftsFor, standardCentre, sumOfShifts, workingAngle, workingAngleAt } from './pair.formulas.ts';
import { checkedFlanks, type ParallelGear } from './parallel.ts';
import { type Terms, termsOf, workedAngle, workedLength } from './parallel-terms.ts';
import { moduleOf } from './tooth.ts';

/** Two gears of one pitch, system and helix: a wheel, and its mate or the ring around it. A shift left out is to be found, or is none. */
export type CoupleAsked = {
  readonly gear: ParallelGear;
  readonly mate: number;
  readonly inRing: boolean;
  readonly shift?: number;
  readonly mateShift?: number;
  readonly centre?: Length;
};

/** A pair with its shifts settled, at its centre distance. */
export type Settled = {
  readonly couple: Couple;
  readonly C: number;
  readonly aw: number;
  /** Whether the shifts were worked out from the centre distance, or the centre distance from them, or both were typed. */
  readonly from: 'centre' | 'shifts' | 'both';
};

const MOST = 2;
const says = (x: number, { unit }: Flanks): string => `${printNumber(x, unit === 'in' ? 4 : 3)} ${unit}`;

function checkCounts({ gear, mate, inRing }: CoupleAsked): void {
  if (!inRing || mate > gear.teeth) return;
  throw new DomainError({
    given: `A ring of ${mate} teeth around a wheel of ${gear.teeth}.`,
    limit: 'The ring has more teeth than the wheel inside it.',
    tryThis: 'Type the greater count for the ring.',
    about: ['teeth', 'mate'],
  });
}

function unshifted(asked: CoupleAsked): Couple {
  checkCounts(asked);
  const one = checkedFlanks({ ...asked.gear, ring: false, shift: asked.shift ?? 0 });
  const mate = checkedFlanks({ ...asked.gear, teeth: asked.mate, ring: asked.inRing, shift: asked.mateShift ?? 0 });
  return { one, mate };
}

/** How far a wheel's shift may go, as lengths: not to a point, not beyond two modules, not to where no tooth is left. */
function reach(flanks: Flanks): readonly [number, number] {
  const most = MOST * flanks.mn;
  const least = Math.min(most, (0.98 * Math.PI * flanks.mn) / (4 * Math.tan(flanks.an)));
  return [-least, flanks.ring ? least : (pointedShift(flanks, most) ?? most)];
}

const noReach = (couple: Couple, C: number, low: number, high: number): DomainError =>
  new DomainError({
    given: `A centre distance of ${says(C, couple.one)}.`,
    limit: `No shift reaches it: these gears run at ${says(standardCentre(couple), couple.one)} unshifted, and from ${says(low, couple.one)} to ${says(high, couple.one)} with teeth that can be cut.`,
    tryThis: 'Measure the centres again, or look at other counts, another pitch or a small helix.',
    about: ['centre'],
  });

const tooNear = (couple: Couple, C: number, bare: number): DomainError =>
  new DomainError({
    given: `A centre distance of ${says(C, couple.one)}.`,
    limit: `Nearer than ${says(bare, couple.one)} no line touches both base circles, and no involute drives another, whatever the shifts.`,
    tryThis: 'Measure the centres again, or look at other counts or another pitch.',
    about: ['centre'],
  });

const at = (couple: Couple, sum: number): Couple => ({ one: { ...couple.one, v: 0 }, mate: { ...couple.mate, v: sum } });

/** Centre distance for a sum of shifts; where no angle belongs to it, the nearest at which the base circles just clear. */
function centreFor(couple: Couple, sum: number): number {
  const bare = Math.abs(standardCentre(couple) * Math.cos(atOf(couple.one)));
  try {
    return centreAt(couple, workingAngle(at(couple, sum)));
  } catch (error) {
    if (error instanceof RangeError) return bare;
    throw error;
  }
}

/** Least and greatest centre distance, and the same as sums of shifts. */
function reaches(couple: Couple, asked: CoupleAsked) {
  const own = (flanks: Flanks, typed: number | undefined): readonly [number, number] =>
    typed === undefined ? reach(flanks) : [flanks.v, flanks.v];
  const [one, mate] = [own(couple.one, asked.shift), own(couple.mate, asked.mateShift)];
  const sums = asked.inRing ? ([mate[0] - one[1], mate[1] - one[0]] as const) : ([mate[0] + one[0], mate[1] + one[1]] as const);
  return { one, mate, sums, low: centreFor(couple, sums[0]), high: centreFor(couple, sums[1]) };
}

const held = (x: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(x, low), high);

/**
 * The shifts of a pair whose sum is V. What was typed stands. Else the smaller wheel has the greater part (in the ratio of the counts turned
 * about), as far as its tips stay blunt (judgement); inside a ring the ring has it all.
 */
function shared(couple: Couple, asked: CoupleAsked, V: number, room: ReturnType<typeof reaches>): Couple {
  const { one, mate } = couple;
  if (asked.inRing) {
    const v1 = asked.shift !== undefined ? one.v : asked.mateShift !== undefined ? mate.v - V : 0;
    return { one: { ...one, v: v1 }, mate: { ...mate, v: V + v1 } };
  }
  const free = held((V * mate.N) / (one.N + mate.N), [Math.max(room.one[0], V - room.mate[1]), Math.min(room.one[1], V - room.mate[0])]);
  const v1 = asked.shift !== undefined ? one.v : asked.mateShift !== undefined ? V - mate.v : free;
  return { one: { ...one, v: v1 }, mate: { ...mate, v: V - v1 } };
}

/** With both shifts typed the teeth must at least reach into one another, and not through the other's roots. */
function checkTouching(couple: Couple, C: number): void {
  const [one, mate] = [tipOf(couple.one) / 2, tipOf(couple.mate) / 2];
  const [near, far] = couple.mate.ring ? [mate - one, rootOf(couple.mate) / 2 - rootOf(couple.one) / 2] : [0, one + mate];
  if (C > near && C < far) return;
  throw new DomainError({
    given: `A centre distance of ${says(C, couple.one)}.`,
    limit: `With these shifts the teeth do not reach into one another: between ${says(near, couple.one)} and ${says(far, couple.one)} they would.`,
    tryThis: 'Measure the centres again, or leave a shift out to have it found.',
    about: ['centre'],
  });
}

function atCentre(couple: Couple, asked: CoupleAsked, C: number): Settled {
  const bothTyped = asked.shift !== undefined && asked.mateShift !== undefined;
  const bare = standardCentre(couple) * Math.cos(atOf(couple.one));
  const room = reaches(couple, asked);
  if (!(C > bare * (1 + 1e-9))) throw bothTyped ? tooNear(couple, C, bare) : noReach(couple, C, room.low, room.high);
  const aw = workingAngleAt(couple, C);
  if (bothTyped) {
    checkTouching(couple, C);
    return { couple, C, aw, from: 'both' };
  }
  const V = shiftsFor(couple, aw);
  const hair = 1e-6 * couple.one.mn;
  if (V < room.sums[0] - hair || V > room.sums[1] + hair) throw noReach(couple, C, room.low, room.high);
  return { couple: shared(couple, asked, V, room), C, aw, from: 'centre' };
}

/** Settles shifts and centre distance of a pair. Throws DomainError when no shift reaches the centres, or no centres the shifts. */
export function settled(asked: CoupleAsked): Settled {
  const couple = unshifted(asked);
  if (asked.centre !== undefined) return atCentre(couple, asked, inUnit(asked.centre, couple.one.unit));
  try {
    const aw = workingAngle(couple);
    return { couple, C: centreAt(couple, aw), aw, from: 'shifts' };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new DomainError({
      given: `Shifts that come to ${says(sumOfShifts(couple), couple.one)}.`,
      limit: 'Below the shift at which the base circles touch, no centre distance lets these gears run.',
      tryThis: 'Take greater shifts.',
      about: ['shift'],
    });
  }
}

/** Terms of a pair's formulas, and its numbers under N1 N2 X1 X2 C aw a0. */
export type PairTerms = Terms & { readonly teeth: string; readonly shifts: string; readonly numbers: readonly Given[] };

export function pairTerms(asked: CoupleAsked, { couple, C, aw, from }: Settled): PairTerms {
  const { one, mate } = couple;
  const m = moduleOf(asked.gear.pitch);
  const terms = termsOf({ ...asked.gear, shift: 0, ring: false }, one);
  const shift = (symbol: string, name: string, v: number, typed: boolean): Given =>
    typed
      ? { symbol, name, value: exact(v / m), from: 'typed' }
      : { symbol, name, value: { number: v / m, unit: '', places: 7 }, from: 'worked out' };
  const found = from === 'centre';
  const numbers: readonly Given[] = [
    ...terms.given,
    { symbol: 'N1', name: 'teeth of the wheel', value: { count: one.N }, from: 'typed' },
    { symbol: 'N2', name: mate.ring ? 'teeth of the ring' : 'teeth of the mate', value: { count: mate.N }, from: 'typed' },
    shift('X1', 'shift of the wheel', one.v, !found || asked.shift !== undefined),
    shift('X2', mate.ring ? 'shift of the ring' : 'shift of the mate', mate.v, !found || asked.mateShift !== undefined),
    { ...workedLength('C', 'centre distance', C, one.unit), from: from === 'shifts' ? 'worked out' : 'measured' },
    workedLength('a0', 'centre distance unshifted', standardCentre(couple), one.unit),
    workedAngle('aw', 'working pressure angle', aw),
    workedLength('D1', 'pitch diameter of the wheel', pitchOf(one), one.unit),
    workedLength('Db1', 'base diameter of the wheel', baseOf(one), one.unit),
    workedLength('Db2', mate.ring ? 'base diameter of the ring' : 'base diameter of the mate', baseOf(mate), one.unit),
    workedLength('Di', 'inside diameter of the ring', tipOf(mate), one.unit),
  ];
  return { ...terms, teeth: mate.ring ? '(N2 − N1)' : '(N1 + N2)', shifts: mate.ring ? '(X2 − X1)' : '(X1 + X2)', numbers };
}
