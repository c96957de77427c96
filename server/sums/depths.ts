import { depthToDial } from '../../lib/gears/depth.sums.ts';
import { stillToFeed } from '../../lib/gears/feed.sums.ts';
import { checkedSpanCount, spanAnswer } from '../../lib/gears/span.sums.ts';
import { checkedTooth } from '../../lib/gears/wheel.ts';
import { madeField, size, sizeIfKnown, typedOf } from './asks.ts';
import { backlashField, outsideField, overField, WHEEL_ABOUT, wheelAsks, wheelOf } from './gears.ts';
import { sum } from './sum.ts';

const depthSum = sum({
  path: 'depth-to-dial',
  title: 'Depth to dial',
  group: 'Gears',
  tells: 'How deep to feed from touching the blank, whatever the blank measures, so that the roots end where they belong.',
  asks: {
    ...wheelAsks,
    measuredOutside: outsideField,
    stampedDepth: sizeIfKnown({ label: 'Depth stamped on the cutter', hint: 'Empty: the depth of the system', most: 10 }),
    paper: sizeIfKnown({ label: 'Paper under the cutter', hint: 'Cigarette paper is about 0.001 in', least: 0, most: 1 }),
    backlash: backlashField,
    made: madeField,
  },
  example: {
    teeth: '22',
    pitch: '8 DP',
    system: 'full-14.5',
    measuredOutside: '2.996',
    stampedDepth: '',
    paper: '0.002',
    backlash: '',
    made: 'form cutter',
  },
  about: WHEEL_ABOUT,
  work: ({ measuredOutside, stampedDepth, paper, backlash, made, ...wheel }) =>
    depthToDial({ gear: wheelOf(wheel), made, ...typedOf({ measuredOutside, stampedDepth, paper, backlash }) }),
});

const feedSum = sum({
  path: 'still-to-feed',
  title: 'Still to feed',
  group: 'Gears',
  tells: 'How much deeper to go when the span still reads large; or what it means that it reads small.',
  asks: {
    ...wheelAsks,
    k: overField,
    spanRead: size({ label: 'Span as read', least: 0.001, most: 100 }),
    spanWanted: sizeIfKnown({ label: 'Span wanted', hint: 'Empty: the span without backlash', least: 0.001, most: 100 }),
    made: madeField,
  },
  example: { teeth: '22', pitch: '8 DP', system: 'full-14.5', k: '2', spanRead: '0.5900', spanWanted: '0.5850', made: 'form cutter' },
  about: WHEEL_ABOUT,
  work: ({ k, spanRead, spanWanted, made, ...typed }) => {
    const gear = wheelOf(typed);
    const over = checkedSpanCount(checkedTooth(gear), k ?? undefined);
    const wanted = spanWanted?.length ?? wantedSpan(gear, over);
    return stillToFeed({ gear, k: over, spanRead: spanRead.length, spanWanted: wanted, made });
  },
});

function wantedSpan(gear: Parameters<typeof spanAnswer>[0], k: number) {
  const { value } = spanAnswer(gear, { k }).figures.span;
  if (!('length' in value)) throw new Error('a span is a length');
  return value.length;
}

export const DEPTH_SUMS = [depthSum, feedSum];
