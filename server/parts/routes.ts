import { RecordChanged, RecordNotFound } from '../../db/changes.ts';
import { openRoutings } from '../../db/open-routing.ts';
import { PartStays, removePart } from '../../db/part-removal.ts';
import { fitItem, ItemTaken, part as partById, RoutingOpen, savePart, takeOut } from '../../db/parts.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { PLANNED_WAYS } from '../../lib/routing/asked.ts';
import type { Way } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { confirmView } from '../forms/confirm-view.ts';
import { conflictView } from '../forms/conflict.ts';
import { dayOf } from '../forms/date-field.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { recordId } from '../record-id.ts';
import { routingSection } from '../routings/section.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { partData } from './part-data.ts';
import { BY_HAND, barFields, wayFields } from './part-forms-view.ts';
import { partView } from './part-view.ts';

type Tried = { readonly typed: Typed; readonly problems: Problems };
type Said = {
  readonly problem?: string;
  readonly typed?: Typed;
  readonly problems?: Problems;
  readonly bar?: Tried;
  readonly reading?: Tried;
};

const UNTRIED: Tried = { typed: {}, problems: {} };

/** The page of a part, with what was amiss in a form of it. */
export async function page(
  visit: Visit,
  id: number,
  { problem = '', typed, problems = {}, bar = UNTRIED, reading = UNTRIED }: Said = {},
): Promise<Result> {
  const data = await partData(visit.db, id);
  const routing = await routingSection(visit, id);
  const way = { typed: typed ?? { way: data.part.way ?? '', why: data.part.why }, problems };
  const wrong = problem !== '' || Object.keys({ ...problems, ...bar.problems, ...reading.problems }).length > 0;
  return show(
    'parts/one',
    partView({ data, routing, problem, way, bar, reading, today: dayOf(visit.now), trusted: visit.trusted }),
    wrong ? 422 : 200,
  );
}

const idOf = (visit: Visit): number => recordId('part', visit.params['id']);

/** One part: where it stands, its drawing and figures, and how it is got. */
export const one = (visit: Visit): Promise<Result> => page(visit, idOf(visit));

/** What a person can do about it is said on the page of the part; anything else is our own mistake. */
async function orSay(visit: Visit, act: () => Promise<Result>, said: Said = {}): Promise<Result> {
  try {
    return await act();
  } catch (error) {
    const known = [ItemTaken, RoutingOpen, DomainError, RecordChanged, PartStays].some((kind) => error instanceof kind);
    const gone = error instanceof RecordNotFound && error.kind !== 'part';
    if (!known && !gone) throw error;
    const more = error instanceof RecordChanged ? ' Look at it as it stands now, and do it again.' : '';
    return page(visit, idOf(visit), { ...said, problem: `${(error as Error).message}${more}` });
  }
}

/** The part was fitted or changed meanwhile, so that its page may have no such form any more: what was typed, beside what stands. */
async function wayMeanwhile(visit: Visit, yours: Typed): Promise<Result> {
  const { id, name, mark, rev, way, why } = await partById(visit.db, idOf(visit));
  const back = { says: name, href: to.part(id) };
  const two = { what: `${mark} ${name}`, place: 'Machines' as const, back, action: to.partWay(id), fields: wayFields, yours };
  return show('conflict', conflictView({ ...two, theirs: { way: way ?? '', why }, hidden: [{ name: 'rev', value: String(rev) }] }), 409);
}

/** The way that was chosen, and why. */
export async function keepWay(visit: Visit): Promise<Result> {
  const id = idOf(visit);
  const read = readForm(visit.body, wayFields);
  if (!read.ok) return page(visit, id, { typed: read.typed, problems: read.problems });
  const keep = async (): Promise<Result> => {
    try {
      await savePart(visit.db, id, sentRev(visit), read.value);
    } catch (error) {
      if (error instanceof RecordChanged) return wayMeanwhile(visit, read.typed);
      throw error;
    }
    return { go: `${to.part(id)}#ways`, saved: 'The way is kept.' };
  };
  return orSay(visit, keep, { typed: read.typed });
}

const itemIn = (text: unknown): number[] => (typeof text === 'string' && /^\d{1,15}$/.test(text) ? [Number(text)] : []);

/** A routing without operations, for a way that is followed by hand. */
const openOwn = (visit: Visit, id: number, way: Way): Promise<Result> =>
  orSay(visit, async () => {
    await openRoutings(visit.db, [{ partId: id, way, itemIds: [] }], visit.now);
    return { go: `${to.part(id)}#routing`, saved: 'The routing is open. Write down what has to be done.' };
  });

/** Promises what it is to be made from, and opens its routing. */
export async function promiseBlank(visit: Visit): Promise<Result> {
  const id = idOf(visit);
  const byHand = BY_HAND.find((known) => known === visit.body['way']);
  if (byHand) return openOwn(visit, id, byHand);
  const way = PLANNED_WAYS.find((known) => known === visit.body['way']);
  const itemIds = [...itemIn(visit.body['item']), ...itemIn(visit.body['ring'])];
  if (!way || itemIds.length === 0) return page(visit, id, { problem: 'Nothing was chosen to make it from. Choose below.' });
  const read = readForm(visit.body, barFields);
  const typed = { ...read.typed, item: String(itemIds[0]) };
  // Opened meanwhile: the page has no such form any more, and what was wrong would be said nowhere.
  if (!read.ok && (await partById(visit.db, id)).routing_id !== null) throw new RoutingOpen(id);
  if (!read.ok) return page(visit, id, { bar: { typed, problems: read.problems } });
  const open = async (): Promise<Result> => {
    await openRoutings(visit.db, [{ partId: id, way, itemIds, takes: read.value.takes }], visit.now);
    return { go: `${to.part(id)}#routing`, saved: 'The blank is promised and the routing is open.' };
  };
  return orSay(visit, open, { bar: { typed, problems: {} } });
}

/** Puts a thing of the drawer in the part's place. */
export async function fit(visit: Visit): Promise<Result> {
  const id = idOf(visit);
  const [itemId] = itemIn(visit.body['item']);
  if (itemId === undefined) return page(visit, id, { problem: 'Nothing was chosen to put there. Choose below.' });
  return orSay(visit, async () => {
    await fitItem(visit.db, id, sentRev(visit), itemId);
    return { go: to.part(id), saved: 'It is in its place.' };
  });
}

export const takeItOut = (visit: Visit): Promise<Result> =>
  orSay(visit, async () => {
    const id = idOf(visit);
    await takeOut(visit.db, id, sentRev(visit));
    return { go: to.part(id), saved: 'Taken out: the part is missing again, and what filled it is a spare.' };
  });

/** Asks once more: a part taken off the list is gone. */
export async function askRemove(visit: Visit): Promise<Result> {
  const one = await partById(visit.db, idOf(visit));
  const back = { says: one.name, href: to.part(one.id) };
  const view = confirmView({
    id: 'remove',
    title: `${one.mark}: take it off the list`,
    place: 'Machines',
    back,
    says: `${one.name} was put on record by mistake? Its mark, its sizes and its notes go with it for good: it cannot be put back. Nothing of the drawer is touched.`,
    action: to.partRemove(one.id),
    act: 'Take it off the list',
    keep: back,
  });
  return show('confirm', view);
}

export const remove = (visit: Visit): Promise<Result> =>
  orSay(visit, async () => {
    const one = await partById(visit.db, idOf(visit));
    await removePart(visit.db, one.id);
    const go = one.set_id === null ? to.machine(one.project_id) : to.set(one.set_id);
    return { go, saved: `${one.mark} is off the list.` };
  });
