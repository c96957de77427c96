import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { inches, inUnit, type Length } from '../values/length.ts';
import { checkedBacklash } from './backlash.sums.ts';
import { normalBacklash } from './depth.formulas.ts';
import { angleGiven, lengthGiven, pitchTerm, teethGiven } from './givens.ts';
import { basePitch, contactRadius, nearestSpanCount, span, spanClearOfUndercut, spanCount, spanOnFlank } from './spur.formulas.ts';
import type { Tooth } from './tooth.ts';
import { compositeCaution, UNDERCUT_THERE } from './wheel.cautions.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { between, wheelFigure } from './wheel-figure.ts';

const MOT = 'metric span formula of an MOT spur gear catalogue, with m = 1/P';
/** Span limits, one-sided: metal left may still come off (judgement). */
const SPAN_LIMIT = inches(0.001);

type SpanKey = 'span' | 'k' | 'basePitch' | 'contactDiameter';
/** The spans over one tooth fewer and one more stand only where the jaws would still touch the flank. */
export type SpanAnswer = Answer<SpanKey> & { readonly figures: { readonly spanBelow?: Figure; readonly spanAbove?: Figure } };
export type SpanChoice = { readonly k?: number; readonly backlash?: Length };

/** The counts over which this wheel can be spanned, in words. */
function spannable(tooth: Tooth): string {
  const middle = nearestSpanCount(tooth.N, tooth.a);
  const around = Array.from({ length: 2 * middle + 10 }, (_, i) => i + 1).filter((k) => spanOnFlank(tooth, k));
  const [first, last] = [around[0], around[around.length - 1]];
  if (first === undefined || last === undefined) return 'No span of this wheel touches its flanks.';
  return `The jaws touch the flanks over ${first === last ? first : `${first} to ${last}`} teeth.`;
}

/** The count asked for, or the best one. Throws DomainError when the jaws would miss the flank. */
export function checkedSpanCount(tooth: Tooth, asked?: number): number {
  const k = asked ?? spanCount(tooth);
  if (k !== null && Number.isInteger(k) && k >= 1 && k < tooth.N && spanOnFlank(tooth, k)) return k;
  throw new DomainError({
    given: asked === undefined ? `A wheel of ${tooth.N} teeth.` : `A span over ${asked} of ${tooth.N} teeth.`,
    limit: spannable(tooth),
    tryThis:
      asked === undefined || spanCount(tooth) === null ? 'Measure the chordal thickness instead.' : `Measure over ${spanCount(tooth)}.`,
    about: ['k'],
  });
}

function spanFigure(wheel: Wheel, tooth: Tooth, k: number, b: Length): Figure {
  const pitch = pitchTerm(wheel.pitch);
  const lash: readonly Given[] = b === 0 ? [] : [lengthGiven('b', 'backlash of this wheel', b, tooth.unit, 'typed')];
  const size = span(tooth, k) - normalBacklash(inUnit(b, tooth.unit), tooth.a);
  const formula = `${pitch.of('cos(a) × ((k − 0.5) × π + N × inv(a))')}${b === 0 ? '' : ' − b × cos(a)'}`;
  const kGiven: Given = { symbol: 'k', name: 'teeth between the jaws', value: { count: k }, from: 'worked out' };
  const given = [teethGiven(wheel), pitch.given, angleGiven(wheel), kGiven, ...lash];
  return {
    ...wheelFigure(tooth, { name: `Span over ${k} ${k === 1 ? 'tooth' : 'teeth'}`, symbol: 'W', formula, source: MOT }, size, given),
    limits: between(tooth, size - inUnit(SPAN_LIMIT, tooth.unit), size),
  };
}

const countFigure = (wheel: Wheel, tooth: Tooth, k: number): Figure => ({
  name: 'Teeth between the jaws',
  symbol: 'k',
  value: { count: k },
  unit: tooth.unit,
  formula: k === nearestSpanCount(tooth.N, tooth.a) ? 'max(1, ceil(N × a ÷ 180° − 0.0001))' : '',
  source: 'derived: the count whose contact lies nearest the pitch circle, or another asked for',
  given: k === nearestSpanCount(tooth.N, tooth.a) ? [teethGiven(wheel), angleGiven(wheel)] : [],
});

function contactFigure(wheel: Wheel, tooth: Tooth, k: number): Figure {
  const pitch = pitchTerm(wheel.pitch);
  const formula = pitch.of('cos(a) × √(N^2 + ((k − 0.5) × π + N × inv(a))^2)');
  const kGiven: Given = { symbol: 'k', name: 'teeth between the jaws', value: { count: k }, from: 'worked out' };
  const source = 'derived: the jaws are square to a line of length W that touches the base circle at its middle';
  return wheelFigure(tooth, { name: 'Jaws touch at diameter', symbol: 'Dc', formula, source }, 2 * contactRadius(tooth, k), [
    teethGiven(wheel),
    pitch.given,
    angleGiven(wheel),
    kGiven,
  ]);
}

function basePitchFigure(wheel: Wheel, tooth: Tooth): Figure {
  const pitch = pitchTerm(wheel.pitch);
  const formula = wheel.pitch.kind === 'CP' ? 'p × cos(a)' : pitch.of('π × cos(a)');
  const source = 'follows from the span formula: W over k + 1 less W over k';
  return wheelFigure(tooth, { name: 'Base pitch', symbol: 'pb', formula, source }, basePitch(tooth.m, tooth.a), [
    pitch.given,
    angleGiven(wheel),
  ]);
}

function movedCaution(tooth: Tooth, k: number, asked?: number): readonly Caution[] {
  const nearest = nearestSpanCount(tooth.N, tooth.a);
  if (asked !== undefined || k === nearest) return [];
  const missed = spanOnFlank(tooth, nearest) ? 'touch where a hob undercuts' : 'miss the flank';
  return [{ name: 'Span count moved', says: `Over ${nearest} the jaws would ${missed}; ${k} is taken.`, weight: 'note', about: 'span' }];
}

const undercutCaution = (tooth: Tooth, k: number): readonly Caution[] =>
  spanClearOfUndercut(tooth, k) ? [] : [{ name: 'Undercut', says: UNDERCUT_THERE, weight: 'beware', about: 'span' }];

/**
 * What a vernier should read over k teeth, with the neighbouring spans for identifying a wheel.
 * Throws DomainError when the jaws would miss the flank. Example: 22 teeth, 8 DP, 14½° reads 0.5850 over 2, 0.9652 over 3.
 */
export function spanAnswer(wheel: Wheel, { k: asked, backlash }: SpanChoice = {}): SpanAnswer {
  const tooth = checkedTooth(wheel);
  const b = checkedBacklash(tooth, backlash);
  const k = checkedSpanCount(tooth, asked);
  const other = (count: number): Figure | null =>
    count >= 1 && count < tooth.N && spanClearOfUndercut(tooth, count) ? spanFigure(wheel, tooth, count, b) : null;
  const [below, above] = [other(k - 1), other(k + 1)];
  return {
    figures: {
      span: spanFigure(wheel, tooth, k, b),
      ...(below ? { spanBelow: below } : {}),
      ...(above ? { spanAbove: above } : {}),
      k: countFigure(wheel, tooth, k),
      basePitch: basePitchFigure(wheel, tooth),
      contactDiameter: contactFigure(wheel, tooth, k),
    },
    cautions: [...compositeCaution(wheel, 'span'), ...movedCaution(tooth, k, asked), ...undercutCaution(tooth, k)],
  };
}
