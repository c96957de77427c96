import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Chuck } from '../tooling/tooling.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { jawMove, keyTurns, runOutOfPairs } from './truing.formulas.ts';

/** Readings of one indicator at the four jaws, in order round the chuck; plus is the plunger pushed in. */
export type TruingAsked = {
  readonly jaws: readonly [Length, Length, Length, Length];
  /** Half turns are counted from jaw 1; the pairs are 1 and 3, 2 and 4. */
  readonly limit?: Length | null;
  /** Lead of the screw that moves a jaw, if known. */
  readonly screwLead?: Length | null;
  readonly unit?: LengthUnit;
};

export type TruingKey = 'differenceOne' | 'moveOne' | 'differenceTwo' | 'moveTwo' | 'runOut' | 'keyTurns';

/** Trued to this, a four-jaw is true: common practice, no source. */
export const TRUE_ENOUGH_IN = 0.001;
/** A chuck that nobody has measured counts as this much full indicator reading: judgement. */
const UNMEASURED_CHUCK_IN = 0.005;

/** Said wherever work is trued in a four-jaw. */
export const BY_HAND = {
  name: 'Truing',
  says: 'Turn the chuck by hand with the key; key out before power.',
  weight: 'danger',
} as const satisfies Caution;
const source = 'Thomas Industrial Library, "Centering work in four-jaw chucks": each move half the difference read';

function pairFigures(names: readonly [string, string], a: Length, b: Length, unit: LengthUnit): readonly [Figure, Figure] {
  const [x, y] = [inUnit(a, unit), inUnit(b, unit)];
  const given = [
    givenLength('a', `read at jaw ${names[0]}`, a, unit, 'measured'),
    givenLength('b', `read at jaw ${names[1]}`, b, unit, 'measured'),
  ];
  const high = x >= y ? names : ([names[1], names[0]] as const);
  const note =
    x === y ? 'These two read alike.' : `Slacken jaw ${high[1]} a little, tighten jaw ${high[0]}: it stands nearer the indicator.`;
  const base = { unit, given };
  return [
    {
      ...base,
      name: `Difference, jaws ${names[0]} and ${names[1]}`,
      symbol: 'x',
      value: { length: ofUnit(Math.abs(x - y), unit) },
      formula: 'max(a, b) − min(a, b)',
      source,
    },
    {
      ...base,
      name: `Move, jaws ${names[0]} and ${names[1]}`,
      symbol: 'm',
      value: { length: ofUnit(jawMove(x, y), unit) },
      formula: '(max(a, b) − min(a, b)) ÷ 2',
      source,
      note,
    },
  ];
}

function keyFigure(move: Length, lead: Length | null, unit: LengthUnit): Figure {
  const base = {
    name: 'Turn of the key for the larger move',
    symbol: 's',
    unit,
    source: 'derived: the move over the lead of the jaw screw',
  };
  if (!lead) return { ...base, value: { words: 'jaw screw not known' }, formula: '', given: [] };
  return {
    ...base,
    value: { number: keyTurns(inUnit(move, unit), inUnit(lead, unit)), unit: 'turns', places: 2 },
    formula: 'm ÷ p',
    given: [givenLength('m', 'move', move, unit, 'worked out'), givenLength('p', 'lead of the jaw screw', lead, unit, 'typed')],
  };
}

/** Truing round work in a four-jaw: what each pair is to move, and what it runs out now. Repeat until under the limit. */
export function fourJawTruing(asked: TruingAsked): Answer<TruingKey> {
  const { unit = 'in', jaws, screwLead = null } = asked;
  if (screwLead !== null && !(screwLead > 0))
    throw new DomainError({
      given: 'The lead of the jaw screw is 0 or less.',
      limit: 'It has to be above 0.',
      tryThis: 'Leave it out if it is not known.',
      about: ['screwLead'],
    });
  const limit = asked.limit ?? inches(TRUE_ENOUGH_IN);
  const [differenceOne, moveOne] = pairFigures(['1', '3'], jaws[0], jaws[2], unit);
  const [differenceTwo, moveTwo] = pairFigures(['2', '4'], jaws[1], jaws[3], unit);
  const [x, y] = [Math.abs(jaws[0] - jaws[2]) as Length, Math.abs(jaws[1] - jaws[3]) as Length];
  const t = ofUnit(runOutOfPairs(inUnit(x, unit), inUnit(y, unit)), unit);
  const runOut: Figure = {
    name: 'Full indicator reading now',
    symbol: 't',
    value: { length: t },
    unit,
    formula: '√(x ^ 2 + y ^ 2)',
    source: 'derived: opposite readings differ by twice the offset along that pair',
    given: [
      givenLength('x', 'difference, jaws 1 and 3', x, unit, 'measured'),
      givenLength('y', 'difference, jaws 2 and 4', y, unit, 'measured'),
    ],
    limits: [{ length: 0 as Length }, { length: limit }],
  };
  const larger = ofUnit(Math.max(inUnit(x, unit), inUnit(y, unit)) / 2, unit);
  const first = x >= y ? 'jaws 1 and 3' : 'jaws 2 and 4';
  const within = `${printLength(limit, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  const says =
    t <= limit
      ? `True to ${within}: pinch all four alike and read once more.`
      : `Move ${first} first, half the difference; then a quarter turn on, the other pair; again until under ${within}.`;
  return {
    figures: { differenceOne, moveOne, differenceTwo, moveTwo, runOut, keyTurns: keyFigure(larger, screwLead, unit) },
    cautions: [BY_HAND],
    says,
  };
}

/** What a chuck runs out: as measured, else counted as 0.005 in. */
export function chuckRunOut(chuck: Pick<Chuck, 'jaws' | 'runOut'>, unit: LengthUnit = 'in'): Figure {
  const base = { name: 'run-out of the chuck, full reading', symbol: 't', unit, formula: '', given: [] };
  if (chuck.runOut !== null) return { ...base, value: { length: chuck.runOut }, source: 'measured in this shop' };
  return {
    ...base,
    value: { length: inches(UNMEASURED_CHUCK_IN) },
    source: 'judgement: a chuck not measured counts as 0.005 in',
    note: 'A guess. Read it on a true bar and write it down.',
  };
}
