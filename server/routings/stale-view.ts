import type { Changed } from '../../db/replan.ts';
import { to } from '../addresses.ts';
import { formMark } from '../once.ts';
import type { ButtonView } from '../page.ts';
import { listedField } from './listed.ts';
import type { ChangedView, StaleView } from './view-model.ts';

/** rev: of the routing, so that a second device finds its list out of date. back: the path to come back to. */
type Accepting = { readonly routing: { readonly id: number; readonly rev: number }; readonly trusted: boolean; readonly back: string };

const button = ({ routing, back }: Accepting, listed: readonly Changed[], says: string, kind: ButtonView['kind']): ButtonView => ({
  action: to.routingAccept(routing.id),
  hidden: [{ name: 'rev', value: String(routing.rev) }, listedField(listed), { name: 'back', value: back }, formMark()],
  says,
  kind,
  confirm: '',
});

/** What changes alike at many operations, as a set-up does, is one thing to read and to accept; a figure stands by itself. */
function alike(changes: readonly Changed[]): readonly (readonly [Changed, ...Changed[]])[] {
  const groups = new Map<string, [Changed, ...Changed[]]>();
  changes.forEach((one, at) => {
    const key = one.figure === null ? JSON.stringify([one.name, one.was, one.now]) : String(at);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  });
  return [...groups.values()];
}

function changed(group: readonly [Changed, ...Changed[]], asking: Accepting): ChangedView {
  const [one] = group;
  const more = group.length === 1 ? '' : `, and ${group.length - 1} more`;
  return {
    says: one.name,
    where: one.figure === null && one.operationId === null ? '' : `${one.operation}${more}`,
    was: one.was,
    now: one.now,
    accept: asking.trusted ? button(asking, group, 'Accept', 'other') : null,
  };
}

const ONE = 'One thing is worked out otherwise by now than it was printed. Cut by the new one; accept it to strike the old one.';
const many = (count: number): string =>
  `${count} things are worked out otherwise by now than they were printed. Cut by the new ones; accept them to strike the old ones.`;

const FIRST = 'Known now, and not printed yet. Accept it to keep it with the operation.';

/** Heading and sentence: what was never printed is new, not out of date. */
function headWords(changes: readonly Changed[]): Pick<StaleView, 'title' | 'says'> {
  if (changes.every(({ was, figure }) => was === '' && figure !== null)) return { title: 'New figures', says: FIRST };
  return { title: 'Out of date', says: changes.length === 1 ? ONE : many(changes.length) };
}

/** What is out of date, with the buttons to accept it one by one or all; null when nothing is. */
export function staleView(changes: readonly Changed[], asking: Accepting): StaleView | null {
  if (changes.length === 0) return null;
  return {
    ...headWords(changes),
    canAccept: asking.trusted,
    changes: alike(changes).map((group) => changed(group, asking)),
    acceptAll: asking.trusted && changes.length > 1 ? button(asking, changes, `Accept all ${changes.length} listed here`, 'main') : null,
  };
}
