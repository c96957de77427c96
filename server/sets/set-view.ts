import type { BlankChoice, Pair } from '../../lib/blanks/choice.ts';
import type { Caution } from '../../lib/figure/figure.ts';
import { to } from '../addresses.ts';
import { answerView } from '../figures.ts';
import { listField } from '../forms/list-field.ts';
import { machineName, missingState } from '../machines/list-view.ts';
import { formMark } from '../once.ts';
import type { FormView, LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { type Bench, isMissing } from './bench.ts';
import { blankView } from './blanks-view.ts';
import { chartOfSet } from './chart.ts';
import type { SetChoice } from './choice.ts';
import type { SetCost } from './cost.ts';
import type { BlanksView, CostView } from './view-model.ts';
import { toothWords, wheelsDrawings, wheelsTable, wheelsWords } from './wheels-view.ts';

export type SetShown = {
  readonly bench: Bench;
  readonly choice: SetChoice;
  readonly cost: SetCost | null;
  readonly force: Pair | null;
  readonly problem: string;
  readonly trusted: boolean;
};

/** The pairs as a form carries them: "12:34,13:35", part and spare. */
const pairsText = ({ chosen }: BlankChoice): string => chosen.map(({ wanted, spare }) => `${wanted.id}:${spare.id}`).join(',');

const whatOpens = ({ chosen }: BlankChoice): string =>
  chosen.map(({ wanted, spare }) => `${wanted.gear.teeth} from the ${spare.gear.teeth}`).join(', ');

function openForm({ bench, choice: { forced } }: SetShown, choice: BlankChoice): FormView {
  const anyway = forced ? ' all the same' : '';
  return {
    id: 'open',
    action: to.setOpen(bench.set.id),
    method: 'post',
    hidden: [{ name: 'choices', value: pairsText(choice) }, formMark()],
    problem: '',
    groups: [],
    act: `Open the routings${anyway}: ${whatOpens(choice)}`,
    kind: 'main',
    confirm: '',
    back: null,
  };
}

/** Asks for another pair. A GET: it only looks. */
function forceForm({ bench, choice, force }: SetShown): FormView {
  const wheels = choice.wanted.map(({ id, gear }) => ({
    value: String(id),
    says: `${gear.teeth} teeth`,
    hint: '',
    chosen: id === force?.missing,
  }));
  const spares = choice.candidates.map(({ id, name }) => ({ value: String(id), says: name, hint: '', chosen: id === force?.spare }));
  return {
    id: 'force',
    action: `${to.set(bench.set.id)}#blanks`,
    method: 'get',
    hidden: [],
    problem: '',
    groups: [
      {
        legend: 'Insist on another pair',
        hint: 'The rest is chosen again around it, and the first rule that it breaks is named. Nothing is written.',
        folded: false,
        fields: [listField('force-make', 'make', 'Make', wheels), listField('force-from', 'from', 'From', spares)],
      },
    ],
    act: 'Hold it against the choice',
    kind: 'main',
    confirm: '',
    back: force ? { says: 'Back to the choice', href: `${to.set(bench.set.id)}#blanks` } : null,
  };
}

const forcedWords = ({ choice: { forced, forcedRefusal } }: SetShown): string => {
  if (!forced) return forcedRefusal;
  return forced.breaks ? `${forced.says} It breaks the rule: ${forced.breaks}.` : forced.says;
};

const isElsewhere =
  ({ elsewhere }: Bench) =>
  (id: number): boolean =>
    elsewhere.some(({ item }) => item.id === id);

function blanksView(shown: SetShown): BlanksView | null {
  const { choice, bench, trusted } = shown;
  if (choice.wanted.length === 0) return null;
  const standing = choice.forced ?? choice.choice;
  return {
    // With a pair insisted on the choice is another: what was said of it stands no more.
    says: choice.refusal || (choice.forced ? '' : (choice.choice?.says ?? '')),
    forced: forcedWords(shown),
    wheels: choice.wanted.map((wanted, at) =>
      blankView(wanted, at, { choice: standing, spares: choice.candidates, cleanUp: bench.shop.cleanUp, elsewhere: isElsewhere(bench) }),
    ),
    open: trusted && standing && standing.chosen.length > 0 ? openForm(shown, standing) : null,
    force: choice.choice && choice.candidates.length > 0 ? forceForm(shown) : null,
  };
}

/** Wheels of unknown pitch may run with the set or not: what is counted is counted without them. */
function leftOut({ unknown: { places } }: Bench): Caution[] {
  if (places.length === 0) return [];
  const counts = places.map(({ unknown }) => unknown?.gear.teeth ?? 0).join(', ');
  return [{ name: 'Left out', says: `Of unknown pitch and not counted here: ${counts}. Identify first.`, weight: 'beware' }];
}

function costView(cost: SetCost | null, bench: Bench): CostView | null {
  if (!cost) return null;
  if (cost.answer === null) return { refusal: cost.refusal, drawing: null, answer: null };
  return {
    refusal: '',
    drawing: cost.scale,
    answer: answerView({ ...cost.answer, cautions: [...leftOut(bench), ...cost.answer.cautions] }),
  };
}

const waysOn = ({ bench: { set } }: SetShown): LinkView[] => [
  { says: 'Add wheels that belong, or that lie in the drawer', href: to.setWheels(set.id) },
  {
    says:
      set.chart === ''
        ? 'Type the machine’s chart of threads or feeds, and its quadrant'
        : 'Change the set: name, pattern, chart, quadrant, notes',
    href: to.setEdit(set.id),
  },
];

/** Once several wheels are being made: what they share. */
const sharing = ({ places }: Bench): LinkView[] =>
  places.some(({ routing_id }) => routing_id !== null) ? [{ says: 'What shares a set-up', href: to.setUps }] : [];

/** A change-gear set. */
export function setView(shown: SetShown): PageData<'sets/one'> {
  const { bench, choice, cost, problem, trusted } = shown;
  const { set, project, unknown } = bench;
  const places = [...bench.places, ...unknown.places];
  const any = places.length + bench.drawer.length + unknown.drawer.length > 0;
  const state = missingState(places.filter(isMissing).length, places.length);
  return {
    title: set.name,
    place: 'Machines',
    back: { says: machineName(project), href: to.machine(project.id) },
    titleBlock: [
      { label: 'Machine', says: machineName(project), href: to.machine(project.id), state: null },
      { label: 'Sets', says: set.sets, href: '', state: null },
      { label: 'Tooth', says: toothWords(bench), href: '', state: null },
      { label: 'State', says: state.says, href: '', state },
    ],
    says: any ? wheelsWords(bench) : '',
    problem,
    first: any
      ? null
      : {
          title: 'No wheel on record yet',
          says: 'Write what belongs in one line, as 19, 22, 25-37 step 3, and what lies in the drawer in another.',
          act: trusted ? { says: 'Add wheels', href: to.setWheels(set.id) } : null,
          drawing: '',
        },
    drawings: bench.places.length + bench.drawer.length > 0 ? wheelsDrawings(bench, choice) : null,
    wheels: any ? wheelsTable(bench, choice) : null,
    cost: costView(cost, bench),
    blanks: blanksView(shown),
    chart: chartOfSet(bench),
    notes: trusted ? set.notes : '',
    links: [...sharing(bench), ...(trusted ? waysOn(shown) : [])],
  };
}
