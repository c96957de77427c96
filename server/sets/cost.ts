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
import type { Barred, ReadyToCut } from '../../lib/trains/which-first.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import type { DrawingView } from '../page.ts';
import { scaleOf } from '../sums/scale.ts';
import { type Bench, isMissing, ofTheSet, type Place } from './bench.ts';
import { promisedIn } from './choice.ts';

/** What the gaps of a set cost in ratios; or why that was not counted, in words. */
export type SetCost =
  | { readonly answer: Answer<RatiosKey>; readonly scale: DrawingView; readonly refusal: '' }
  | { readonly answer: null; readonly scale: null; readonly refusal: string };

/** One mark per pixel of the narrowest phone. */
const COLUMNS = 328;

const keptAnswers = remembered<Answer<RatiosKey>>();
const keptScales = remembered<DrawingView>();

/** Whether the right cutter of a wheel is here, sharp, and fits an arbor. */
function hasCutter({ gear }: Place, { shop: { cutters, arbors, convention } }: Bench): boolean {
  return chooseCutter({ gear, cutters, arbors, convention }).right?.ready ?? false;
}

/** Missing wheels that have a blank, as far as is known, and their cutter. One without either is not cut today. */
function readyToCut(bench: Bench, choice: BlankChoice | null): ReadyToCut[] {
  const none = new Set((choice?.notMade ?? []).map(({ id }) => id));
  const cuttable = bench.places.filter((place) => isMissing(place) && hasCutter(place, bench));
  const ready = cuttable.filter(({ id, blank_fails }) => !blank_fails && !none.has(id));
  const because = ready.length < cuttable.length ? 'its blank and its cutter are here' : 'its cutter is owned';
  return ready.map(({ gear }) => ({ teeth: gear.teeth, because }));
}

/** Missing wheels whose blank was found too small. */
const barred = ({ places }: Bench): Barred[] =>
  places.flatMap(({ gear: { teeth }, item_id, blank_fails }) =>
    item_id === null && blank_fails ? [{ teeth, because: `the blank of the ${teeth} will not do` }] : [],
  );

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
  return { belongs, drawer, plannedRecuts, canBeCutToday: readyToCut(bench, choice), barredToday: barred(bench) };
}

const keyOf = ({ belongs, drawer, plannedRecuts = [], canBeCutToday = [], barredToday = [] }: WheelsAsked): string =>
  [
    wheelsKey(belongs),
    wheelsKey(drawer),
    plannedRecuts.map(({ make, from }) => `${from}>${make}`).join(' '),
    canBeCutToday.map(({ teeth, because }) => `${teeth} ${because}`).join(),
    barredToday.map(({ because }) => because).join(' '),
  ].join('|');

/** What stands under "cut from", where a spare is not simply one of this drawer: by the teeth of the wheel that is made. */
function cutFrom(bench: Bench, choice: BlankChoice | null): ReadonlyMap<number, string> {
  const others = new Set(bench.elsewhere.map(({ item }) => item.id));
  const elsewhere = (choice?.chosen ?? []).filter(({ spare }) => others.has(spare.id));
  return new Map([
    ...elsewhere.map(({ wanted, spare }) => [wanted.gear.teeth, `${spare.gear.teeth}, another drawer`] as const),
    ...promisedIn(bench)
      .filter(({ place }) => place.blank_fails)
      .map(({ place, wheel }) => [place.gear.teeth, `${wheel.spare.gear.teeth}, which will not do`] as const),
  ]);
}

/** A wheel that is cut from a spare of another drawer is no stock, and one that will not do makes no wheel: the table says so. */
function sayFrom(answer: Answer<RatiosKey>, bench: Bench, choice: BlankChoice | null): Answer<RatiosKey> {
  const from = cutFrom(bench, choice);
  const tables = (answer.tables ?? []).map((table) => ({
    ...table,
    rows: table.rows.map(([made, by, ...rest]) => {
      const says = typeof made === 'object' && 'count' in made ? from.get(made.count) : undefined;
      return [made ?? '', says ?? by ?? '', ...rest];
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
      answer: sayFrom(
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
