import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, Given } from '../figure/figure.ts';
import { inUnit, type Length } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { circularBacklash, feedPerSpan, type Making } from './depth.formulas.ts';
import { angleGiven, lengthGiven, teethGiven } from './givens.ts';
import { checkedSpanCount } from './span.sums.ts';
import { basePitch } from './spur.formulas.ts';
import type { Tooth } from './tooth.ts';
import { compositeCaution } from './wheel.cautions.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { wheelFigure } from './wheel-figure.ts';

export type FeedAsked = {
  readonly gear: Wheel;
  readonly k: number;
  readonly spanRead: Length;
  readonly spanWanted: Length;
  readonly made: Making;
};

const inWords = (x: number, { unit }: Tooth): string => `${printNumber(Math.abs(x), unit === 'in' ? 4 : 3)} ${unit}`;

/** A reading off by half a base pitch or more was taken over another number of teeth. */
function checkedOver(tooth: Tooth, over: number, k: number): number {
  if (Math.abs(over) < basePitch(tooth.m, tooth.a) / 2) return over;
  throw new DomainError({
    given: `A span that reads ${inWords(over, tooth)} ${over > 0 ? 'more' : 'less'} than wanted over ${k} teeth.`,
    limit: `One tooth more or fewer between the jaws makes ${inWords(basePitch(tooth.m, tooth.a), tooth)}.`,
    tryThis: 'Count the teeth between the jaws, and read again.',
    about: ['spanRead', 'k'],
  });
}

const SINE: Readonly<Record<Making, string>> = { 'form cutter': 'sin(180° × k ÷ N)', generated: 'sin(a)' };

function sineGivens({ gear, k, made }: FeedAsked): readonly Given[] {
  if (made === 'generated') return [angleGiven(gear)];
  return [{ symbol: 'k', name: 'teeth between the jaws', value: { count: k }, from: 'typed' }, teethGiven(gear)];
}

function factorFigure(asked: FeedAsked, tooth: Tooth): Figure {
  return {
    name: 'Feed for each unit that the span is large',
    symbol: 'f',
    value: { number: feedPerSpan(asked.made, tooth, asked.k), unit: '', places: 3 },
    unit: tooth.unit,
    formula: `1 ÷ (2 × ${SINE[asked.made]})`,
    source: 'derived: each flank moves along the span by the feed times this sine',
    given: sineGivens(asked),
  };
}

function verdict(over: number, feed: number, tooth: Tooth): string {
  const thin = circularBacklash(Math.abs(over), tooth.a);
  if (Number(printNumber(over, tooth.unit === 'in' ? 5 : 4)) === 0) return 'The span is as wanted: stop here.';
  if (over > 0) return `Metal left: feed ${inWords(feed, tooth)} deeper, then measure again.`;
  return `Metal gone: the teeth are ${inWords(thin, tooth)} thin at the pitch circle, which is that much more backlash. Feed no more.`;
}

/**
 * How much deeper to feed when the span over k still reads large; nothing when it reads small, and then what that does.
 * Throws DomainError when the jaws miss the flank or the reading is of another count.
 * Example: 22 teeth over 2 that read 0.005 in large want 0.0089 in more with a form cutter.
 */
export function stillToFeed(asked: FeedAsked): Answer<'stillToFeed' | 'feedPerSpan' | 'over' | 'thickness'> {
  const { gear, spanRead, spanWanted } = asked;
  const tooth = checkedTooth(gear);
  const k = checkedSpanCount(tooth, asked.k);
  const over = checkedOver(tooth, inUnit(spanRead, tooth.unit) - inUnit(spanWanted, tooth.unit), k);
  const feed = Math.max(0, over * feedPerSpan(asked.made, tooth, k));
  const spans = [
    lengthGiven('Wr', 'span as read', spanRead, tooth.unit, 'measured'),
    lengthGiven('W', 'span wanted', spanWanted, tooth.unit, 'worked out'),
  ];
  const derived = 'derived: each flank moves along the span by the feed times this sine';
  return {
    figures: {
      stillToFeed: wheelFigure(
        tooth,
        { name: 'Still to feed', symbol: 'd', formula: `max(0, (Wr − W) ÷ (2 × ${SINE[asked.made]}))`, source: derived },
        feed,
        [...spans, ...sineGivens(asked)],
      ),
      feedPerSpan: factorFigure(asked, tooth),
      over: wheelFigure(
        tooth,
        { name: 'Span reads over by', symbol: 'x', formula: 'Wr − W', source: 'common practice, no source' },
        over,
        spans,
      ),
      thickness: wheelFigure(
        tooth,
        {
          name: 'Thick at the pitch circle by',
          symbol: 't',
          formula: '(Wr − W) ÷ cos(a)',
          source: 'derived: arc of the base circle ÷ cos a',
        },
        circularBacklash(over, tooth.a),
        [...spans, angleGiven(gear)],
      ),
    },
    cautions: compositeCaution(gear, 'stillToFeed'),
    says: verdict(over, feed, tooth),
  };
}
