import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Given } from '../figure/figure.ts';
import { inches, inUnit, type Length } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { checkedBacklash, formedDeeper } from './backlash.sums.ts';
import { deeperForBacklash, depthFromTouch, type Making } from './depth.formulas.ts';
import { addendumTerm, angleGiven, dedendumTerm, extraTerm, lengthGiven, pitchTerm, teethGiven } from './givens.ts';
import { checkedOutside } from './outside.ts';
import { outsideDiameter, type Tooth, wholeDepth } from './tooth.ts';
import { blankCautions } from './wheel.cautions.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { wheelFigure } from './wheel-figure.ts';

/** Beyond this the stamp and the system cannot both be right. */
const STAMP_APART = inches(0.002);
const THICKEST_PAPER = inches(0.02);

export type DepthAsked = {
  readonly gear: Wheel;
  readonly measuredOutside?: Length;
  readonly stampedDepth?: Length;
  readonly paper?: Length;
  readonly backlash?: Length;
  readonly made?: Making;
};

type Term = { readonly text: string; readonly given: readonly Given[] };
const NO_TERM: Term = { text: '', given: [] };

function checkedPaper(tooth: Tooth, paper: Length = inches(0)): Length {
  if (paper >= 0 && paper <= THICKEST_PAPER) return paper;
  throw new DomainError({
    given: `A paper of ${printLength(paper, { unit: tooth.unit, places: 3 })} ${tooth.unit}.`,
    limit: 'The slip between cutter and blank is from nothing to 0.020 in (0.5 mm) thick.',
    tryThis: 'Measure the slip; cigarette paper is about 0.001 in.',
    about: ['paper'],
  });
}

function checkedStamp(tooth: Tooth, stamp: Length): Length {
  const ratio = inUnit(stamp, tooth.unit) / wholeDepth(tooth);
  if (ratio > 0.5 && ratio < 2) return stamp;
  throw new DomainError({
    given: `A stamped depth of ${printLength(stamp, { unit: tooth.unit, places: 4 })} ${tooth.unit}.`,
    limit: 'It is less than half or more than twice the whole depth of this system.',
    tryThis: 'Look whether the cutter has this pitch, or type the pitch again.',
    about: ['stampedDepth'],
  });
}

/** The depth below the nominal outside: as stamped, else the system's. */
function depthTerm({ gear, stampedDepth }: DepthAsked, tooth: Tooth): Term {
  if (stampedDepth !== undefined)
    return { text: 'h', given: [lengthGiven('h', 'depth stamped on the cutter', stampedDepth, tooth.unit, 'measured')] };
  const [pitch, A, B] = [pitchTerm(gear.pitch), addendumTerm(gear.system), dedendumTerm(gear.system)];
  const e = extraTerm(gear.system, tooth.unit);
  return {
    text: pitch.of(`(${A.text} + ${B.text})`) + (e ? ` + ${e.text}` : ''),
    given: [pitch.given, ...A.given, ...B.given, ...(e?.given ?? [])],
  };
}

function outsideTerm({ gear, measuredOutside }: DepthAsked, tooth: Tooth): Term {
  if (measuredOutside === undefined) return NO_TERM;
  const [pitch, A] = [pitchTerm(gear.pitch), addendumTerm(gear.system)];
  const nominal = pitch.of(`(N + ${A.given.length === 0 ? '2' : `2 × ${A.text}`})`);
  return {
    text: ` − (${nominal} − Dm) ÷ 2`,
    given: [teethGiven(gear), pitch.given, ...A.given, lengthGiven('Dm', 'outside as measured', measuredOutside, tooth.unit, 'measured')],
  };
}

const paperTerm = (paper: Length, tooth: Tooth): Term =>
  paper === 0 ? NO_TERM : { text: ' + s', given: [lengthGiven('s', 'paper under the cutter', paper, tooth.unit, 'typed')] };

function lashTerm({ gear, made }: DepthAsked, b: Length, tooth: Tooth): Term {
  if (b === 0) return NO_TERM;
  const given = [lengthGiven('b', 'backlash of this wheel', b, tooth.unit, 'typed'), angleGiven(gear)];
  if (made === 'generated') return { text: ' + b ÷ (2 × tan(a))', given };
  return { text: ` + ${formedDeeper(gear)}`, given: [...given, teethGiven(gear), pitchTerm(gear.pitch).given] };
}

/** Each symbol once, in the order of its first use. */
const once = (given: readonly Given[]): readonly Given[] =>
  given.filter((one, i) => given.findIndex((other) => other.symbol === one.symbol) === i);

function stampCaution(tooth: Tooth, stamp?: Length): readonly Caution[] {
  if (stamp === undefined) return [];
  const [stamped, system] = [inUnit(stamp, tooth.unit), wholeDepth(tooth)];
  if (Math.abs(stamped - system) <= inUnit(STAMP_APART, tooth.unit) + 1e-9) return [];
  const says = 'Stamp and tooth system differ by more than 0.002 in. The stamp is used: is the system right? Measure an old gap.';
  return [{ name: 'Stamp and system differ', says, weight: 'beware', about: 'depthToDial' }];
}

/**
 * What to dial in from touching the blank, so that the roots end where they belong whatever the blank measures.
 * Throws DomainError for an outside, stamp, paper or backlash that cannot belong to this wheel.
 * Example: 22 teeth, 8 DP, 14½°, blank 2.996, paper 0.002 gives 0.2696.
 */
export function depthToDial(asked: DepthAsked): Answer<'depthToDial' | 'wholeDepth'> {
  const tooth = checkedTooth(asked.gear);
  const [paper, b] = [checkedPaper(tooth, asked.paper), checkedBacklash(tooth, asked.backlash)];
  const [Do, Dm] = [outsideDiameter(tooth), checkedOutside(tooth, asked.measuredOutside)];
  const h = asked.stampedDepth === undefined ? wholeDepth(tooth) : inUnit(checkedStamp(tooth, asked.stampedDepth), tooth.unit);
  const deeper = deeperForBacklash(asked.made ?? 'form cutter', inUnit(b, tooth.unit), tooth);
  const terms = [depthTerm(asked, tooth), outsideTerm(asked, tooth), paperTerm(paper, tooth), lashTerm(asked, b, tooth)];
  const system = depthTerm({ gear: asked.gear }, tooth);
  const [source, byBook] = [
    'derived: the root’s radius is half the nominal outside less the depth',
    'US Navy, Machinery Repairman (14345), appendix III',
  ];
  return {
    figures: {
      depthToDial: wheelFigure(
        tooth,
        { name: 'Depth to dial from touching', symbol: 'H', formula: terms.map((term) => term.text).join(''), source },
        depthFromTouch(h, Do, Dm, inUnit(paper, tooth.unit)) + deeper,
        once(terms.flatMap((term) => term.given)),
      ),
      wholeDepth: wheelFigure(
        tooth,
        { name: 'Whole depth of the system', symbol: 'h', formula: system.text, source: byBook },
        wholeDepth(tooth),
        system.given,
      ),
    },
    cautions: [...stampCaution(tooth, asked.stampedDepth), ...blankCautions(tooth, Do, Dm)],
  };
}
