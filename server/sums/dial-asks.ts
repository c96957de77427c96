import type { Dial } from '../../lib/tooling/tooling.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { choiceField, countField, optional } from '../forms/field.ts';
import { size, sizeIfKnown, unitOf } from './asks.ts';

const readsField = choiceField({
  label: 'The dial reads',
  choices: [
    ['travel', 'the travel of the slide'],
    ['diameter', 'what comes off the diameter'],
  ],
});
const division = { label: 'One division', hint: 'As the dial reads it: 0.001, or 0.02 mm', least: 0.000_01, most: 1 };
const perTurn = { label: 'Divisions a turn', limits: { least: 1, most: 2000 } };

/** The dial of the machine. */
export const dialAsks = { reads: readsField, division: size(division), perTurn: countField(perTurn) };
/** The same where it is needed only for the dial's own figures. */
export const dialIfKnownAsks = {
  reads: readsField,
  division: sizeIfKnown({ ...division, hint: `${division.hint}; empty: dial not known` }),
  perTurn: optional(countField({ ...perTurn, hint: 'Empty: dial not known' })),
};
export const lashField = sizeIfKnown({ label: 'Lash of the screw', least: 0, most: 1 });

type Read = { readonly reads: Dial['reads'] };
export const dialOf = ({
  reads,
  division: one,
  perTurn: many,
}: Read & { readonly division: TypedLength; readonly perTurn: number }): Dial => ({
  reads,
  unit: unitOf(one),
  division: one.length,
  perTurn: many,
});

/** The dial, or null while a division or the divisions of a turn are not typed. */
export const dialIfKnown = ({
  reads,
  division: one,
  perTurn: many,
}: Read & { readonly division: TypedLength | null; readonly perTurn: number | null }): Dial | null =>
  one && many !== null ? dialOf({ reads, division: one, perTurn: many }) : null;

export const DIAL_ABOUT = { dial: ['division', 'perTurn'] } as const;
export const DIAL_EXAMPLE = { reads: 'travel', division: '0.001', perTurn: '100' } as const;
