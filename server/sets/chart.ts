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

/** The chart of a set with the wheels that lie there; refusal: why it was not worked, or what was left out of it. */
export type ChartView = { readonly refusal: string; readonly answer: AnswerView | null; readonly links: readonly LinkView[] };

const kept = remembered<Answer>();
/** As many missing wheels as all orders of making can be weighed for. */
const MOST_MISSING = 10;

const threads = threadsField({ label: '', hint: '' });
const screws = screwField({ label: '', hint: '' });

const full = (given: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(given).filter(([, text]) => text !== ''));

/** To the sums that find wheels for a thread and for a lead, with drawer, screw, quadrant and missing wheels filled in. */
function trainLinks({ set }: Bench, drawer: readonly number[], missing: readonly number[]): LinkView[] {
  const first = set.chart.split(/[,;\n]/)[0]?.trim() ?? '';
  const wheels = { drawer: printDrawer(drawer), upTo: '4', missing: printDrawer(missing) };
  const thread = { ...wheels, thread: first, screw: set.screw, over: '1', ...typedOfQuadrant(set.quadrant) };
  const lead = {
    ...wheels,
    leadWanted: '12 in',
    diameter: '2',
    face: '1',
    hand: 'right',
    turns: '40',
    tableScrew: '4 TPI',
    drive: 'worm',
  };
  return [
    { says: 'Wheels for one of them, with these gears', href: to.sum('change-gears', full(thread)) },
    { says: 'Wheels for a lead, with these gears', href: to.sum('wheels-for-a-lead', full(lead)) },
  ];
}

/** To the part of each missing wheel: what would be exact with it waits for it there. */
const partLinks = ({ places }: Bench): LinkView[] =>
  places.filter(isMissing).map(({ id, gear }) => ({ says: `The ${gear.teeth} that is missing`, href: to.part(id) }));

/** The cost above has tables too: rows of these are named apart. */
const ownIds = (view: AnswerView): AnswerView => ({
  ...view,
  figures: view.figures.map((figure) => ({ ...figure, key: `chart-${figure.key}` })),
  tables: view.tables.map((table) => ({ ...table, rows: table.rows.map((row) => ({ ...row, id: `chart-${row.id}` })) })),
});

/** Which missing wheels the order of making leaves out, in a sentence; '' for none. */
const leftOut = (missing: readonly number[]): string =>
  missing.length <= MOST_MISSING
    ? ''
    : `Of ${missing.length} missing wheels the first ${MOST_MISSING} are weighed; not ${printDrawer(missing.slice(MOST_MISSING))}.`;

/** null where no chart has been typed. */
export function chartOfSet(bench: Bench): ChartView | null {
  const { chart, screw } = bench.set;
  const [list, lead] = [threads.read(chart), screws.read(screw)];
  if (chart === '' || !list.ok || !lead.ok) return null;
  const drawer = lyingThere(bench);
  const all = lessWheels(
    bench.places.filter(isMissing).map(({ gear }) => gear.teeth),
    [],
  );
  const missing = all.slice(0, MOST_MISSING);
  const key = [chart, screw, wheelsKey(drawer), wheelsKey(missing)].join(' | ');
  try {
    const answer = kept(key, () => chartAnswer({ list: list.value, screw: lead.value, drawer, missing }));
    return {
      refusal: leftOut(all),
      answer: ownIds(answerView(answer)),
      links: [...trainLinks(bench, drawer, missing), ...partLinks(bench)],
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { refusal: error.message, answer: null, links: [] };
  }
}
