import { printPitch } from '../gears/pitch.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import type { Advice, Candidate, GearToCut } from './choice.ts';
import { angleWords, errorWords, rangeWords } from './describe.ts';
import { formErrorsOf, tipInModules, virtualCount } from './form-errors.ts';
import { HALF_NUMBERS, type NumberedCutter, WHOLE_NUMBERS } from './ranges.data.ts';
import { type Convention, exactCountOf, inRange } from './ranges.ts';
import { isRefused, verdictOn } from './verdict.ts';

type Asked = {
  readonly gear: GearToCut;
  readonly convention: Convention;
  readonly right: Candidate | null;
  readonly second: readonly Candidate[];
};

type Borrowable = { readonly advice: Advice; readonly right: boolean };

const MOST_LINES = 5;

/** A numbered cutter that somebody may lend, with what its form would do; null when it would be refused. */
function borrowable(one: NumberedCutter, gear: GearToCut, convention: Convention): Borrowable | null {
  const form = { pitch: gear.pitch, angle: gear.system.angle, exact: exactCountOf(one, convention) };
  const right = inRange(one, virtualCount(gear));
  const error = formErrorsOf(gear, form);
  if (!error || (!right && isRefused(verdictOn(tipInModules(gear, error))))) return null;
  const { tip } = error;
  const size = `${printPitch(gear.pitch)}, ${angleWords(gear.system.angle)}, ${rangeWords(one.from, one.to)}`;
  const says = `Borrow a No. ${one.number} (${size}): tips ${errorWords(tip, unitOfPitch(gear.pitch))} if made for ${form.exact.count}.`;
  return { advice: { do: 'borrow', says, tip, cutter: null }, right };
}

const bySize = (a: Borrowable, b: Borrowable): number =>
  Number(b.right) - Number(a.right) || Math.abs(a.advice.tip) - Math.abs(b.advice.tip);

function useOf(one: Candidate): Advice {
  const { cutter, error, ready, troubles, says } = one;
  const right = one.verdict === 'right';
  const whatFirst = right ? 'put right' : 'in a pinch';
  const words = ready ? `${right ? 'Use' : 'In a pinch'} ${cutter.name}. ${says}` : `${cutter.name}: ${troubles.join(' ')}`;
  return { do: ready && right ? 'use' : whatFirst, says: words, tip: error.tip, cutter };
}

/** What could be borrowed that is nearer than anything owned: the right numbers first, then those with less error than the best owned. */
function worthBorrowing({ gear, convention, right, second }: Asked): readonly Advice[] {
  const owned = Math.abs((right ?? second.find((one) => one.ready))?.error.tip ?? Number.POSITIVE_INFINITY);
  return [...WHOLE_NUMBERS, ...HALF_NUMBERS]
    .map((one) => borrowable(one, gear, convention))
    .filter((one) => one !== null)
    .filter((one) => one.right || Math.abs(one.advice.tip) < owned)
    .sort(bySize)
    .map((one) => one.advice);
}

/**
 * What to do, best first. A right cutter that is ready ends the matter; else one to be put right, then what to borrow,
 * then what is owned and runs.
 */
export function adviceOn(asked: Asked): readonly Advice[] {
  const { right, second } = asked;
  if (right?.ready) return [useOf(right)];
  const first = right ? [useOf(right)] : [];
  const pinch = second.slice(0, 2).map(useOf);
  const borrow = worthBorrowing(asked).slice(0, MOST_LINES - first.length - pinch.length);
  return [...first, ...borrow, ...pinch];
}
