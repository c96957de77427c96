import { acceptChanges, type Listed, ListOvertaken } from '../../db/accept-changes.ts';
import { leaveOff } from '../../db/bookmarks.ts';
import { saveRow } from '../../db/changes.ts';
import { SETS_THE_HEAD } from '../../db/mounted.ts';
import { markUndone, moveOperation, restoreOperation, strikeOut } from '../../db/operations.ts';
import { refreshAllStale, refreshStale } from '../../db/replan.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { readForm } from '../forms/form.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { closedMeanwhile } from './closed-meanwhile.ts';
import { formPage } from './form-page.ts';
import { leaveFields } from './leave-form.ts';
import { overtakenPage, sentListed } from './listed.ts';
import { openRoutingWork, openWritten, workHead, writtenWork } from './work.ts';

/** A path of this shop to come back to, as a form sent it; else the one given. */
function backTo({ body }: Visit, otherwise: string): string {
  const back = body['back'];
  return typeof back === 'string' && /^\/(parts|operations|routings)\/\d{1,15}$/.test(back) ? back : otherwise;
}

export async function undone(visit: Visit): Promise<Result> {
  const { line } = await openWritten(visit);
  await markUndone(visit.db, line.id, sentRev(visit));
  if (line.key === SETS_THE_HEAD) await refreshAllStale(visit.db);
  else await refreshStale(visit.db, line.routing_id);
  return { go: to.operation(line.id), saved: 'It is still to be done. What was measured stays.' };
}

export async function strike(visit: Visit): Promise<Result> {
  const { line } = await openWritten(visit);
  await strikeOut(visit.db, line.id, sentRev(visit), visit.now);
  await refreshStale(visit.db, line.routing_id);
  return { go: to.operation(line.id), saved: 'Struck out: it holds nothing up. It can be brought back.' };
}

export async function restore(visit: Visit): Promise<Result> {
  const { line } = await openWritten(visit);
  await restoreOperation(visit.db, line.id, sentRev(visit));
  await refreshStale(visit.db, line.routing_id);
  return { go: to.operation(line.id), saved: 'It is back.' };
}

export async function move(visit: Visit): Promise<Result> {
  const { line, at } = await openWritten(visit);
  const place = visit.body['by'] === 'up' ? at : at + 2;
  await moveOperation(visit.db, line.id, sentRev(visit), place);
  return { go: to.operation(line.id), saved: 'Moved.' };
}

/** The list was overtaken: both are shown, and nothing is accepted yet. */
async function overtaken(visit: Visit, id: number, listed: readonly Listed[], error: ListOvertaken): Promise<Result> {
  const work = await openRoutingWork(visit.db, id);
  const back = backTo(visit, to.routing(id));
  return overtakenPage(listed, error, {
    head: workHead(work, 'Worked out otherwise meanwhile', null),
    says: 'Nothing is accepted yet.',
    action: to.routingAccept(id),
    act: 'Accept it as it is now',
    hidden: [
      { name: 'rev', value: String(work.routing.rev) },
      { name: 'back', value: back },
    ],
    back: { says: 'Back, and accept nothing', href: back },
  });
}

/** Accepts what is worked out today in place of what was printed: what the page listed, as it was listed there. Throws RecordChanged. */
export async function accept(visit: Visit): Promise<Result> {
  const id = recordId('routing', visit.params['id']);
  const listed = sentListed(visit);
  await openRoutingWork(visit.db, id);
  try {
    await acceptChanges(visit.db, id, listed, visit.now);
  } catch (error) {
    if (error instanceof ListOvertaken) return overtaken(visit, id, listed, error);
    throw error;
  }
  await saveRow(visit.db, 'routing', id, sentRev(visit), {});
  return { go: backTo(visit, to.routing(id)), saved: acceptedWords(listed.length) };
}

const acceptedWords = (many: number): string => {
  if (many === 0) return 'Nothing was listed, and nothing is accepted.';
  return many === 1 ? 'Accepted.' : 'All of it accepted.';
};

/** Where work was left, and a word to oneself. */
export async function leave(visit: Visit): Promise<Result> {
  const work = await writtenWork(visit.db, recordId('routing', visit.params['id']));
  const { lines } = work;
  const closed = closedMeanwhile(work, visit, leaveFields(lines), workHead(work, 'Stopping for now', null));
  if (closed) return closed;
  const read = readForm(visit.body, leaveFields(lines));
  const back = backTo(visit, to.routing(work.routing.id));
  if (!read.ok) {
    const head = workHead(work, 'Stopping for now', null);
    const asked = { head, fields: leaveFields(lines), tried: read, action: to.routingLeave(work.routing.id), act: 'I stop here' };
    return show('routings/form', formPage({ ...asked, hidden: [{ name: 'back', value: back }], back: head.back }), 422);
  }
  const { operation, note } = read.value;
  await leaveOff(visit.db, {
    routing_id: work.routing.id,
    operation_id: operation === null ? null : Number(operation),
    note,
    at: visit.now,
  });
  return { go: back, saved: 'Your place is kept. It stands on the page of today.' };
}
