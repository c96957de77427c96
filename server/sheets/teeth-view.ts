import { to } from '../addresses.ts';
import type { AtMachineView, ButtonView } from '../page.ts';
import { cutNothing } from '../routings/blank-words.ts';
import type { PageData } from '../views.ts';
import type { Ticked } from './index-columns.ts';
import { type Mark, markOf, nextMark, type Pass } from './passes.ts';
import { lashBack, type Walk } from './walk.ts';
import { comesTo, landsIn } from './walk-words.ts';
import type { Counting } from './work.ts';

const NAMES = { nick: 'Nick', rough: 'Rough', finish: 'Finish' } as const;
const DONE = { nick: 'nicked', rough: 'cut', finish: 'cut' } as const;

/** "Tooth 7"; the first once more is named so. */
const toothName = ({ tooth, again }: Mark): string => (again ? `Tooth ${tooth} once more` : `Tooth ${tooth}`);

const passName = (pass: Pass, { round }: Mark): string =>
  pass.rounds > 1 ? `${NAMES[pass.kind]}, round ${round} of ${pass.rounds}` : NAMES[pass.kind];

const button = (action: string, mark: number, says: string, kind: ButtonView['kind']): ButtonView => ({
  action,
  hidden: [{ name: 'tooth', value: String(mark) }],
  says,
  kind,
  confirm: '',
});

const AGAIN = {
  pin: 'It must fall in nick 1. If it falls beside, stop: circle, sector or count is wrong.',
  dial: 'It must fall in nick 1, the dial at 0. If it falls beside, stop: turns, line or count is wrong.',
} as const;

/** Where it has been measured, how far back the crank goes to come up again on the same side of the lash. */
function lashCaution(work: Counting): AtMachineView['caution'] {
  const back = lashBack(work);
  return back ? { name: 'Lash', weight: 'note', word: 'Lash', says: `Gone past: back ${back} or more, then up again.` } : null;
}

/** A pass before this one that is neither counted to its end nor marked done: it comes first. */
function before(pass: Pass, all: readonly Ticked[]): string {
  const at = all.findIndex((one) => one.pass.operation.id === pass.operation.id);
  const open = all.slice(0, at).find((one) => one.pass.operation.done_on === null && nextMark(one.pass, one.ticks) !== null);
  return open ? `${NAMES[open.pass.kind]} comes first: ${open.ticks.length} of ${open.pass.marks} done.` : '';
}

/** The pass that comes after this one. */
function after(pass: Pass, all: readonly Ticked[]): AtMachineView['later'] {
  const next = all[all.findIndex((one) => one.pass.operation.id === pass.operation.id) + 1];
  return next ? { says: NAMES[next.pass.kind], href: to.teeth(next.pass.operation.id) } : null;
}

function working(pass: Pass, mark: Mark, walk: Walk, all: readonly Ticked[], caution: AtMachineView['caution']): AtMachineView {
  const done = all.find((one) => one.pass.operation.id === pass.operation.id)?.ticks.length ?? 0;
  return {
    step: `${passName(pass, mark)} · ${done} of ${pass.marks} done`,
    name: toothName(mark),
    text: landsIn(mark, walk),
    unit: '',
    words: true,
    limits: comesTo(mark, walk),
    says: cutNothing(pass.operation) || (mark.again ? AGAIN[walk.by] : before(pass, all)),
    caution,
    earlier: null,
    later: null,
  };
}

const finished = (pass: Pass, all: readonly Ticked[]): AtMachineView => ({
  step: `${NAMES[pass.kind]} · all ${pass.marks} done`,
  name: 'This pass is done',
  text: `${pass.teeth} teeth ${DONE[pass.kind]}`,
  unit: '',
  words: true,
  limits: '',
  says:
    pass.kind === 'nick' ? `Nick ${pass.marks} must lie in nick 1 before anything deeper is cut.` : 'Measure before the wheel comes off.',
  caution: null,
  earlier: null,
  later: after(pass, all),
});

function passLines(all: readonly Ticked[], here: number): PageData<'sheets/teeth'>['passes'] {
  return all.map(({ pass, ticks }) => ({
    says: NAMES[pass.kind],
    href: to.teeth(pass.operation.id),
    here: pass.operation.id === here,
    counted: `${ticks.length} of ${pass.marks}`,
  }));
}

/** The page at the mill: which tooth now, the hole to land in, one button that names what it marks. mayChange: this device may tick. */
export function teethView(work: Counting, own: Ticked, all: readonly Ticked[], walk: Walk, mayChange: boolean): PageData<'sheets/teeth'> {
  const { pass, ticks } = own;
  const [next, last] = [nextMark(pass, ticks), Math.max(0, ...ticks)];
  const mark = next === null ? null : markOf(pass, next);
  const { id } = pass.operation;
  const cut = mark && mayChange ? button(to.toothCut(id), mark.mark, `${toothName(mark)} is ${DONE[pass.kind]}`, 'main') : null;
  const lastName = last > 0 ? toothName(markOf(pass, last)) : '';
  return {
    title: `${work.part.mark}: ${pass.operation.title}`,
    place: '',
    back: { says: work.part.mark, href: to.part(work.part.id) },
    titleBlock: [],
    at: mark ? working(pass, mark, walk, all, lashCaution(work)) : finished(pass, all),
    cut,
    backOne: last > 0 && mayChange ? button(to.toothBack(id), last, `Back one: ${lastName} is not ${DONE[pass.kind]}`, 'other') : null,
    passes: passLines(all, id),
    links: [{ says: 'The index sheet on paper', href: to.indexSheet(id) }],
  };
}
