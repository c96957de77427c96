import type { Answer, AnswerTable, Figure, Given } from '../figure/figure.ts';
import type { Pitch } from '../gears/gear.ts';
import { pitchTerm } from '../gears/givens.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import { ofUnit } from '../values/length.ts';
import type { Candidate, CutterChoice, CutterQuestion, GearToCut } from './choice.ts';
import { chooseCutter, needOf } from './choose.ts';
import { adviceTable, candidatesTable, conventionsTable, spansTable } from './cutter-tables.ts';
import { cutterForm, type FormPair, flankRadius, formError, formErrorSquare, tipCorner } from './form-error.formulas.ts';
import { addendumOf, pairOf } from './form-errors.ts';
import { LOW_END_SOURCE, TREATISE_SOURCE, WHOLE_NUMBERS } from './ranges.data.ts';
import { type ExactCount, exactCountOf, wholeNumberFor } from './ranges.ts';
import { wantedFor } from './wanted.ts';

export type CutterFigures = 'cutter' | 'formErrorTip' | 'formErrorHalf' | 'formErrorPitch' | 'formErrorSquare';

const SOURCE = 'derived: true involutes of both counts drawn to the same depth and compared at equal heights';
const EXACT_FROM: Readonly<Record<ExactCount['from'], string>> = {
  typed: 'written down for this cutter',
  'low end': LOW_END_SOURCE,
  treatise: TREATISE_SOURCE,
};

/** The form that the figures speak of: the cutter that would be used, else the one to look for. */
export type Subject = { readonly name: string; readonly exact: ExactCount };

function subjectOf({ right, second }: CutterChoice, { gear, convention }: CutterQuestion): Subject {
  const used: Candidate | undefined = right ?? second[0];
  if (used) return { name: used.cutter.name, exact: used.error.exact };
  const need = needOf(gear);
  const whole = wholeNumberFor(need.teeth);
  const range = whole ?? { from: Math.round(need.teeth), to: Math.round(need.teeth) };
  return { name: wantedFor(need).says, exact: exactCountOf(range, convention) };
}

/** Pitch radius of a gear of so many teeth, in the pitch's own symbol: N ÷ P ÷ 2. */
const pitchRadiusIn = (pitch: Pitch, N: string): string => `${pitchTerm(pitch).of(N)} ÷ 2`;

function sharedGivens(gear: GearToCut, { exact }: Subject, pair: FormPair): readonly Given[] {
  return [
    pitchTerm(gear.pitch).given,
    { symbol: 'a', name: 'pressure angle', value: { angle: gear.system.angle }, from: 'typed' },
    {
      symbol: 'N2',
      name: 'count that the cutter is exact for',
      value: { count: exact.count },
      from: exact.from === 'typed' ? 'typed' : 'table',
      where: EXACT_FROM[exact.from],
    },
    gear.helix
      ? { symbol: 'N', name: 'virtual teeth', value: { number: pair.N, unit: '', places: 6 }, from: 'worked out' }
      : { symbol: 'N', name: 'teeth to cut', value: { count: gear.teeth }, from: 'typed' },
  ];
}

const lengthGiven = (symbol: string, name: string, size: number, where: string): Given => ({
  symbol,
  name,
  value: { number: size, unit: '', places: 7 },
  from: 'worked out',
  where,
});

/** Half width of a space at a point r from the centre, as written: r sin(90°/N + inv A − inv a), cos A = base radius / r. */
const halfWidthAs = (pitch: Pitch, N: string, r: string): string =>
  `${r} × sin(90° ÷ ${N} + inv(acos(${pitchRadiusIn(pitch, N)} × cos(a) ÷ ${r})) − inv(a))`;

type Place = { readonly name: string; readonly symbol: string; readonly h: number };

/** Error sideways at one height, with its working: each half width from where the flank stands at that height. */
export function sidewaysFigure(gear: GearToCut, subject: Subject, pair: FormPair, { name, symbol, h }: Place): Figure {
  const unit = unitOfPitch(gear.pitch);
  const found = 'by trial: the point of the flank at that height above the pitch line, along the centre line';
  return {
    name,
    symbol,
    value: { length: ofUnit(formError(pair, h), unit) },
    unit,
    formula: `${halfWidthAs(gear.pitch, 'N2', 'r2')} − ${halfWidthAs(gear.pitch, 'N', 'r')}`,
    source: SOURCE,
    given: [
      ...sharedGivens(gear, subject, pair),
      lengthGiven('r2', `cutter's flank from its own gear's centre, ${unit}`, flankRadius(cutterForm(pair), h), found),
      lengthGiven('r', `true flank from the gear's centre, ${unit}`, flankRadius(pair, h), found),
    ],
    note: `${subject.name}, form for ${subject.exact.count}. Plus: metal off that should be there. Minus: metal left.`,
  };
}

/** Error square to the flank at the tip corner; with no formula, and said so, where the corner misses the cutter's involute. */
function squareFigure(gear: GearToCut, subject: Subject, pair: FormPair): Figure {
  const [unit, A] = [unitOfPitch(gear.pitch), addendumOf(gear)];
  const { s, q } = tipCorner(pair, A);
  const rb2 = `${pitchRadiusIn(gear.pitch, 'N2')} × cos(a)`;
  return {
    name: 'Error of form square to the flank at the tip corner',
    symbol: 'eq',
    value: { length: ofUnit(formErrorSquare(pair, A), unit) },
    unit,
    formula: `${rb2} × (90° ÷ N2 − inv(a) + inv(acos(${rb2} ÷ q)) − (90° − acos(s ÷ q)))`,
    source: 'derived: two involutes of one base circle stand everywhere equally far apart',
    given: [
      ...sharedGivens(gear, subject, pair).filter(({ symbol }) => symbol !== 'N'),
      lengthGiven('q', `tip corner from the centre of the cutter's own gear, ${unit}`, q, 'from the true tooth'),
      lengthGiven('s', `tip corner from the centre line of the space, ${unit}`, s, 'from the true tooth'),
    ],
  };
}

function cutterFigure(choice: CutterChoice, { gear }: CutterQuestion): Figure {
  const need = needOf(gear);
  const wanted = wantedFor(need);
  const whole = WHOLE_NUMBERS.find(({ number }) => number === wanted.number);
  const owned = choice.right ? `${choice.right.cutter.name}: ${choice.right.says}` : 'Not owned.';
  const half = wanted.halfNumber === null ? '' : ` A No. ${wanted.halfNumber} serves too.`;
  return {
    name: 'Cutter',
    symbol: '',
    value: { words: wanted.says },
    unit: unitOfPitch(gear.pitch),
    formula: '',
    source: whole?.source ?? 'common practice, no source',
    given: [
      {
        symbol: 'N',
        name: gear.helix ? 'virtual teeth' : 'teeth',
        value: { number: need.teeth, unit: '', places: gear.helix ? 2 : 0 },
        from: gear.helix ? 'worked out' : 'typed',
      },
    ],
    note: `${owned}${half} Number sets differ by maker: the tooth range decides.`,
  };
}

const tablesOf = (choice: CutterChoice, question: CutterQuestion): readonly AnswerTable[] =>
  [adviceTable(choice, question), candidatesTable(choice, question), spansTable(choice, question), conventionsTable(question)].filter(
    (table) => table.rows.length > 0,
  );

/**
 * The cutter for a gear as a sum: what to use or look for, how far off the form of the cutter that would be used is, with working,
 * every cutter owned with its verdict, and what the two opinions on exact counts make of each number.
 */
export function cutterAnswer(question: CutterQuestion): Answer<CutterFigures> {
  const { gear } = question;
  const choice = chooseCutter(question);
  const subject = subjectOf(choice, question);
  const pair = pairOf(gear, { pitch: gear.pitch, angle: gear.system.angle, exact: subject.exact });
  const A = addendumOf(gear);
  const at = (name: string, symbol: string, h: number): Figure => sidewaysFigure(gear, subject, pair, { name, symbol, h });
  return {
    figures: {
      cutter: cutterFigure(choice, question),
      formErrorTip: at('Error of form at the tips, sideways', 'et', A),
      formErrorHalf: at('Error of form half way to the pitch line', 'eh', A / 2),
      formErrorPitch: at('Error of form at the pitch line', 'ep', 0),
      formErrorSquare: squareFigure(gear, subject, pair),
    },
    cautions: choice.cautions,
    says: choice.advice[0]?.says ?? `Look for ${wantedFor(needOf(gear)).says}.`,
    tables: tablesOf(choice, question),
  };
}
