import { remembered } from '../../db/remembered.ts';
import type { BlankChoice } from '../../lib/blanks/choice.ts';
import { chooseCutter } from '../../lib/cutters/choose.ts';
import { ratioScale } from '../../lib/drawing/ratio-scale.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import type { WheelsAsked } from '../../lib/trains/missing-cost.ts';
import { wheelsKey } from '../../lib/trains/ratio-count.ts';
import { ratioMarks } from '../../lib/trains/ratio-marks.ts';
import { type RatiosKey, ratiosAnswer } from '../../lib/trains/trains.sums.ts';
import { lessWheels } from '../../lib/trains/wheel-lists.ts';
import type { ReadyToCut } from '../../lib/trains/which-first.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import type { DrawingView } from '../page.ts';
import { scaleOf } from '../sums/scale.ts';
import { type Bench, isMissing, ofTheSet } from './bench.ts';
import { promisedIn } from './choice.ts';

/** What the gaps of a set cost in ratios; or why that was not counted, in words. */
export type SetCost =
  | { readonly answer: Answer<RatiosKey>; readonly scale: DrawingView; readonly refusal: '' }
  | { readonly answer: null; readonly scale: null; readonly refusal: string };

/** One mark per pixel of the narrowest phone. */
const COLUMNS = 328;

const keptAnswers = remembered<Answer<RatiosKey>>();
const keptScales = remembered<DrawingView>();

/** Missing wheels whose right cutter is here, sharp, and fits an arbor. */
function readyToCut({ places, shop: { cutters, arbors, convention } }: Bench): ReadyToCut[] {
  const missing = places.filter(isMissing);
  return missing.flatMap(({ gear }) => {
    const { right } = chooseCutter({ gear, cutters, arbors, convention });
    return right?.ready ? [{ teeth: gear.teeth, because: 'its cutter is owned' }] : [];
  });
}

/** What lies there and runs with the set; a wheel with broken teeth stands for nothing. */
export const lyingThere = (bench: Bench): number[] =>
  ofTheSet(bench)
    .filter(({ item, spare }) => item.state === 'fitted' || spare.condition.teeth !== 'broken')
    .map(({ spare }) => spare.gear.teeth);

function askedOf(bench: Bench, choice: BlankChoice | null): WheelsAsked {
  const belongs = bench.places.map(({ gear }) => gear.teeth);
  const drawer = lyingThere(bench);
  const missing = lessWheels(belongs, drawer);
  const here = new Set(ofTheSet(bench).map(({ item }) => item.id));
  const chosen = (choice?.chosen ?? [])
    .filter(({ spare }) => here.has(spare.id))
    .map(({ wanted, spare }) => ({ make: wanted.gear.teeth, from: spare.gear.teeth }));
  const promised = promisedIn(bench).map(({ place, wheel }) => ({ make: place.gear.teeth, from: wheel.spare.gear.teeth }));
  const plannedRecuts = [...promised, ...chosen].filter(({ make }) => missing.includes(make));
  return { belongs, drawer, plannedRecuts, canBeCutToday: readyToCut(bench) };
}

const keyOf = ({ belongs, drawer, plannedRecuts = [], canBeCutToday = [] }: WheelsAsked): string =>
  [
    wheelsKey(belongs),
    wheelsKey(drawer),
    plannedRecuts.map(({ make, from }) => `${from}>${make}`).join(' '),
    canBeCutToday.map(({ teeth }) => teeth).join(' '),
  ].join('|');

/** A wheel that is cut from a spare of another drawer is no stock: the table says where it comes from. */
function sayElsewhere(answer: Answer<RatiosKey>, bench: Bench, choice: BlankChoice | null): Answer<RatiosKey> {
  const others = new Set(bench.elsewhere.map(({ item }) => item.id));
  const from = new Map((choice?.chosen ?? []).filter(({ spare }) => others.has(spare.id)).map((one) => [one.wanted.gear.teeth, one.spare]));
  const tables = (answer.tables ?? []).map((table) => ({
    ...table,
    rows: table.rows.map(([made, by, ...rest]) => {
      const spare = typeof made === 'object' && 'count' in made ? from.get(made.count) : undefined;
      return [made ?? '', spare ? `${spare.gear.teeth}, another drawer` : (by ?? ''), ...rest];
    }),
  }));
  return { ...answer, tables };
}

/** Counted once for the same wheels, however often the page is looked at. */
export function costFor(bench: Bench, choice: BlankChoice | null): SetCost {
  const asked = askedOf(bench, choice);
  const { belongs, drawer } = asked;
  try {
    return {
      answer: sayElsewhere(
        keptAnswers(keyOf(asked), () => ratiosAnswer(asked)),
        bench,
        choice,
      ),
      scale: keptScales(`${wheelsKey(belongs)}|${wheelsKey(drawer)}`, () =>
        drawingView(ratioScale(scaleOf(ratioMarks({ belongs, drawer, pixels: COLUMNS })))),
      ),
      refusal: '',
    };
  } catch (error) {
    if (error instanceof DomainError) return { answer: null, scale: null, refusal: error.message };
    throw error;
  }
}
