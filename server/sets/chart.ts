import { remembered } from '../../db/remembered.ts';
import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { chartAnswer } from '../../lib/trains/chart.sums.ts';
import { wheelsKey } from '../../lib/trains/ratio-count.ts';
import { lessWheels } from '../../lib/trains/wheel-lists.ts';
import { to } from '../addresses.ts';
import { answerView } from '../figures.ts';
import { typedOfQuadrant } from '../forms/quadrant-form.ts';
import type { AnswerView, LinkView } from '../page.ts';
import { screwField, threadsField } from '../sums/read-trains.ts';
import { type Bench, isMissing } from './bench.ts';
import { lyingThere } from './cost.ts';

/** The chart of a set with the wheels that lie there; refusal: why it was not worked. */
export type ChartView = { readonly refusal: string; readonly answer: AnswerView | null; readonly links: readonly LinkView[] };

const kept = remembered<Answer>();
/** As many missing wheels as all orders of making can be weighed for. */
const MOST_MISSING = 10;

const threads = threadsField({ label: '', hint: '' });
const screws = screwField({ label: '', hint: '' });

/** To the sum that finds the wheels for one thread, with drawer, screw and quadrant filled in. */
function trainLink({ set }: Bench, drawer: readonly number[]): LinkView {
  const first = set.chart.split(/[,;\n]/)[0]?.trim() ?? '';
  const given = { thread: first, screw: set.screw, drawer: printDrawer(drawer), upTo: '4', over: '1', ...typedOfQuadrant(set.quadrant) };
  return {
    says: 'Wheels for one of them, with these gears',
    href: to.sum('change-gears', Object.fromEntries(Object.entries(given).filter(([, text]) => text !== ''))),
  };
}

/** null where no chart has been typed. */
export function chartOfSet(bench: Bench): ChartView | null {
  const { chart, screw } = bench.set;
  const [list, lead] = [threads.read(chart), screws.read(screw)];
  if (chart === '' || !list.ok || !lead.ok) return null;
  const drawer = lyingThere(bench);
  const missing = lessWheels(
    bench.places.filter(isMissing).map(({ gear }) => gear.teeth),
    [],
  ).slice(0, MOST_MISSING);
  const key = [chart, screw, wheelsKey(drawer), wheelsKey(missing)].join(' | ');
  try {
    const answer = kept(key, () => chartAnswer({ list: list.value, screw: lead.value, drawer, missing }));
    return { refusal: '', answer: answerView(answer), links: [trainLink(bench, drawer)] };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { refusal: error.message, answer: null, links: [] };
  }
}
