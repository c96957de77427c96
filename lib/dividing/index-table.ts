import { DomainError } from '../figure/domain-error.ts';
import type { IndexMove } from '../values/move.ts';
import type { Ratio } from '../values/ratio.ts';
import { checkDivisions } from './check-dividing.ts';
import { landingHole, turnsMade } from './plain.formulas.ts';

/**
 * One line of the tick sheet. tooth: 1 to N, and N + 1 for the first again. turnsFromStart: of the crank, exact.
 * hole: where the pin lands, hole 0 being where it stands for tooth 1, counted the way of cranking.
 */
export type IndexRow = {
  /** Of a compound move: the hole that the back pin stands in. */
  readonly backHole?: number;
  readonly tooth: number;
  readonly turnsFromStart: Ratio;
  readonly hole: number;
  readonly backAtFirst: boolean;
};

/** A move as it is walked at the mill. back: of a compound move what plate and crank do together; minus is against the way of cranking. */
export type WalkedMove = IndexMove & { readonly back?: { readonly spaces: number; readonly circle: number } };

/** The hole of the back pin for tooth n, hole 0 being where it stands for tooth 1; none with one pin. */
export const backHoleAt = (n: number, { back }: WalkedMove): { readonly backHole?: number } =>
  back ? { backHole: ((((n - 1) * back.spaces) % back.circle) + back.circle) % back.circle } : {};

/** The longest tick sheet: more lines than this no one ticks. */
const MOST_ROWS = 2000;

/** The lines of the tick sheet: every tooth, and the first once more, in which the last trial nick must fall. */
export function indexRows(divisions: number, move: WalkedMove): IndexRow[] {
  checkDivisions(divisions);
  if (divisions > MOST_ROWS)
    throw new DomainError({
      given: `A tick sheet for ${divisions} divisions was asked for.`,
      limit: `It has ${MOST_ROWS} lines at most.`,
      tryThis: 'Work from the move and the sector.',
      about: ['divisions'],
    });
  return Array.from({ length: divisions + 1 }, (_, done) => ({
    tooth: done + 1,
    turnsFromStart: turnsMade(done, move),
    hole: landingHole(done + 1, move),
    backAtFirst: done === divisions,
    ...backHoleAt(done + 1, move),
  }));
}
