import { ticksOf } from '../../db/ticks.ts';
import { to } from '../addresses.ts';
import { confirmView } from '../forms/confirm-view.ts';
import type { Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { HiddenView, LinkView } from '../page.ts';
import { passesOf } from '../sheets/passes.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { listedAgain } from './listed.ts';
import { metalLeft } from './measured.ts';
import type { Ask } from './measured-routes.ts';
import { revOf } from './operation-view.ts';
import type { Work } from './work.ts';

export const typedAgain = (typed: Typed): HiddenView[] => Object.entries(typed).map(([name, value]) => ({ name, value }));

/** What was asked before an operation is done, by the name that its answer is sent under. */
const ASKED = ['ticked', 'left'] as const;
type Asked = (typeof ASKED)[number];

const answer = ({ body }: Visit, name: Asked): string => {
  const sent = body[name];
  return typeof sent === 'string' ? sent : '';
};

/** What was answered for already. */
export const answeredAgain = (visit: Visit): HiddenView[] => ASKED.map((name) => ({ name, value: answer(visit, name) }));

type OnceMore = {
  readonly title: string;
  readonly says: string;
  readonly act: string;
  readonly keep: LinkView;
  readonly name: Asked;
  readonly value: string;
};

/** Asked once more before it is done, with all that was typed. */
function onceMore(visit: Visit, { line }: Work, typed: Typed, { name, value, ...said }: OnceMore): Result {
  const back = { says: line.title, href: to.operation(line.id) };
  const view = confirmView({ id: 'once-more', place: 'Machines', back, action: to.operationDone(line.id), ...said });
  const others = answeredAgain(visit).filter((one) => one.name !== name);
  const hidden = [revOf(line), ...typedAgain(typed), listedAgain(visit), ...others, { name, value }, formMark()];
  return show('confirm', { ...view, form: { ...view.form, hidden } });
}

/** Counted tooth by tooth and not through. None ticked: the count was not used. */
export const askWhenHalfCounted: Ask = async (visit, work, typed) => {
  const { line, part: own } = work;
  const [pass] = own.stored ? passesOf([line], own.stored.gear.teeth) : [];
  if (!pass) return null;
  const ticked = (await ticksOf(visit.db, line.id)).length;
  if (ticked === 0 || ticked >= pass.marks || answer(visit, 'ticked') === String(ticked)) return null;
  return onceMore(visit, work, typed, {
    title: `Done with ${ticked} of ${pass.marks} ticked?`,
    says: `On the count of teeth ${ticked} of ${pass.marks} are ticked off. Look that every space is cut before the work leaves the head.`,
    act: 'All are cut: mark it done',
    keep: { says: 'Not yet: count on', href: to.teeth(line.id) },
    name: 'ticked',
    value: String(ticked),
  });
};

/** A size outside its limits on the side where metal is left can still be mended, but only before the set-up is broken. */
export const askWhenMetalIsLeft: Ask = async (visit, work, typed, value) => {
  const left = metalLeft(work.line, value);
  const seen = left.map(({ key, length }) => `${key} ${length}`).join(', ');
  if (left.length === 0 || answer(visit, 'left') === seen) return null;
  return onceMore(visit, work, typed, {
    title: 'Done with metal left?',
    says: `${left.map(({ says }) => says).join(' ')} It is not marked done yet.`,
    act: 'Leave it so: mark it done',
    keep: { says: 'Not yet: take it off', href: to.operation(work.line.id) },
    name: 'left',
    value: seen,
  });
};
