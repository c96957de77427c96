import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Dial } from '../tooling/tooling.ts';
import { radians } from '../values/angle.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { centralTravel, leanOfTeeth, offCentre } from './centering.formulas.ts';
import { dialFigure } from './dial.sums.ts';

const refuse = (given: string, limit: string, tryThis: string, about: string[]): never => {
  throw new DomainError({ given, limit, tryThis, about });
};

const noDial = (name: string, unit: LengthUnit): Figure => ({
  name,
  symbol: 'm',
  value: { words: 'dial not known' },
  unit,
  formula: '',
  source: 'the dial of the machine',
  given: [],
});

export type CentralAsked = {
  readonly blankDiameter: Length;
  readonly cutterWidth: Length;
  readonly paper?: Length | null;
  readonly dial?: Dial | null;
  readonly unit?: LengthUnit;
};

/** The cross movement, and the dial for it, that bring the cutter over the middle of the blank after touching its side. */
export function centralMove(asked: CentralAsked): Answer<'travel' | 'move'> {
  const unit = asked.unit ?? asked.dial?.unit ?? 'in';
  const paper = asked.paper ?? inches(0);
  if (!(asked.blankDiameter > 0 && asked.cutterWidth > 0 && paper >= 0))
    refuse(
      'The blank, the cutter or the paper is 0 or less.',
      'Blank and cutter have to be above 0, the paper 0 or more.',
      'Measure both with a micrometer.',
      ['blankDiameter', 'cutterWidth', 'paper'],
    );
  const size = centralTravel(inUnit(asked.blankDiameter, unit), inUnit(asked.cutterWidth, unit), inUnit(paper, unit));
  const length = ofUnit(size, unit);
  const travel: Figure = {
    name: 'From touching the side to the middle',
    symbol: 's',
    value: { length },
    unit,
    formula: '(D + w) ÷ 2 + c',
    source: 'US Army TC 9-524, Fundamentals of Machine Tools, ch. 8, "Alignment of milling cutters"',
    given: [
      givenLength('D', 'diameter of the blank', asked.blankDiameter, unit, 'measured'),
      givenLength('w', 'width of the cutter', asked.cutterWidth, unit, 'measured'),
      givenLength('c', 'paper between them', paper, unit, 'typed'),
    ],
    note: 'Lower the blank clear before moving across. Prove it with a gash, and again after every change of cutter.',
  };
  const move = asked.dial ? dialFigure({ move: length, counted: 'travel', dial: asked.dial }) : noDial('dial from touching', unit);
  return { figures: { travel, move }, cautions: [] };
}

/** shift: between the two gashes before and after the mandrel is turned end for end. pitchRadius: of the gear. */
export type CentralProofAsked = {
  readonly shift: Length;
  readonly pitchRadius: Length;
  readonly limit?: Length | null;
  readonly dial?: Dial | null;
  readonly unit?: LengthUnit;
};

/** A cutter this near the middle is central: judgement. */
export const CENTRAL_ENOUGH_IN = 0.001;

/** What a light gash with the mandrel turned end for end tells: the error, how the teeth would lean, and the move that puts it right. */
export function centralProof(asked: CentralProofAsked): Answer<'error' | 'lean' | 'move'> {
  const unit = asked.unit ?? asked.dial?.unit ?? 'in';
  const limit = asked.limit ?? inches(CENTRAL_ENOUGH_IN);
  if (!(asked.shift >= 0 && asked.pitchRadius > 0 && asked.shift < asked.pitchRadius))
    refuse(
      'The shift is below 0, or as large as the pitch radius.',
      'It is read between two gashes that nearly meet.',
      'Measure the shift again.',
      ['shift', 'pitchRadius'],
    );
  const [s, R] = [inUnit(asked.shift, unit), inUnit(asked.pitchRadius, unit)];
  const e = ofUnit(offCentre(s), unit);
  const shift = givenLength('s', 'shift of the gash', asked.shift, unit, 'measured');
  const radius = givenLength('R', 'pitch radius', asked.pitchRadius, unit, 'worked out');
  const error: Figure = {
    name: 'Cutter off centre',
    symbol: 'e',
    value: { length: e },
    unit,
    formula: 's ÷ 2',
    source: 'derived: turned end for end, the gash stands as far to the other side',
    given: [shift],
    limits: [{ length: inches(0) }, { length: limit }],
    note: 'Move the table by this, away from the side to which the first gash lies; then gash and turn about again.',
  };
  const lean: Figure = {
    name: 'Every tooth leans',
    symbol: 'q',
    value: { angle: radians(leanOfTeeth(offCentre(s), R)) },
    unit,
    places: 3,
    formula: 'asin(s ÷ (2 × R))',
    source: 'derived: the error over the pitch radius',
    given: [shift, radius],
  };
  const within = `${printLength(limit, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  const move = asked.dial
    ? dialFigure({ move: e, counted: 'travel', dial: asked.dial, from: 'measured' })
    : noDial('dial to put it right', unit);
  return {
    figures: { error, lean, move },
    cautions: [],
    says: e <= limit ? `Central within ${within}.` : `Not central within ${within}: move half the shift and prove again.`,
  };
}
