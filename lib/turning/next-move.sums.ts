import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Dial } from '../tooling/tooling.ts';
import { type Length, nanometres } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { dialMove } from './dial.sums.ts';

/** Diameters. cuts: how many equal cuts are still to be taken (2 before the first of the last cuts). low, high: accepted sizes. */
export type NextMoveAsked = {
  readonly measured: Length;
  readonly wanted: Length;
  readonly dial: Dial;
  readonly cuts?: number;
  readonly low?: Length | null;
  readonly high?: Length | null;
  readonly lash?: Length | null;
};

export type NextMoveKey = 'off' | 'move' | 'line' | 'left';

/** Throws DomainError where the wanted size is not among the accepted ones: the verdict would say to cut what is to be left, or the reverse. */
function checkedLimits({ wanted, low, high, dial }: NextMoveAsked): void {
  const out = low != null && low > wanted ? (['low', low] as const) : high != null && high < wanted ? (['high', high] as const) : null;
  if (!out) return;
  const [which, size] = out;
  const say = (length: Length) => `${printLength(length, { unit: dial.unit, places: dial.unit === 'in' ? 4 : 3 })} ${dial.unit}`;
  throw new DomainError({
    given: `The ${which === 'low' ? 'least' : 'greatest'} size accepted is ${say(size)}, and ${say(wanted)} is wanted.`,
    limit: 'The wanted size has to lie within what is accepted.',
    tryThis: 'Type the limits again, as sizes and not as what may be over or under.',
    about: [which],
  });
}

function checked({ measured, wanted, cuts = 1 }: NextMoveAsked): void {
  if (measured > 0 && wanted > 0 && Number.isSafeInteger(cuts) && cuts > 0) return;
  throw new DomainError({
    given: 'A diameter, or the count of cuts, is 0 or less.',
    limit: 'Both diameters have to be above 0, and there is one cut at least.',
    tryThis: 'Measure the blank again.',
    about: ['measured', 'wanted', 'cuts'],
  });
}

type Verdict = { readonly says: string; readonly cautions: Caution[]; readonly done: boolean };

function verdictOf(asked: NextMoveAsked): Verdict {
  const { measured, wanted, dial } = asked;
  const [low, high] = [asked.low ?? wanted, asked.high ?? wanted];
  const say = (length: number) =>
    `${printLength(nanometres(length), { unit: dial.unit, places: dial.unit === 'in' ? 4 : 3 })} ${dial.unit}`;
  if (measured < low) {
    const says = `Already below size: metal gone by ${say(low - measured)} on the diameter. No further cut; feed the teeth from the size it has.`;
    return { says, cautions: [{ name: 'metal gone', says, weight: 'danger', about: 'off' }], done: true };
  }
  if (measured <= high) return { says: 'On size: leave it.', cautions: [], done: true };
  return { says: `Metal left: ${say(measured - wanted)} on the diameter. Another cut.`, cautions: [], done: false };
}

/**
 * The next dial move from what was measured: all that is over, or an equal part of it when more cuts are to come. Within limits, or below
 * them, the move is none. A negative `off` is metal already gone.
 */
export function nextDialMove(asked: NextMoveAsked): Answer<NextMoveKey> {
  checked(asked);
  checkedLimits(asked);
  const { measured, wanted, dial, cuts = 1 } = asked;
  const { says, cautions, done } = verdictOf(asked);
  const now = nanometres(done ? 0 : (measured - wanted) / cuts);
  const { move, line, left } = dialMove({ move: now, counted: 'diameter', dial, lash: asked.lash ?? null, from: 'measured' }).figures;
  const off: Figure = {
    name: 'Over size, on the diameter',
    symbol: 'x',
    value: { length: nanometres(measured - wanted) },
    unit: dial.unit,
    formula: 'M − d',
    source: 'derived: what is there less what is wanted',
    given: [givenLength('M', 'measured', measured, dial.unit, 'measured'), givenLength('d', 'wanted', wanted, dial.unit, 'worked out')],
  };
  return {
    figures: {
      off,
      move: { ...move, name: cuts > 1 && !done ? `Dial on for this cut, one of ${cuts} equal ones` : 'Dial on from here' },
      line,
      left,
    },
    cautions,
    says,
  };
}
