import { RecordNotFound } from '../../db/changes.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { to } from '../addresses.ts';
import { recordId } from '../record-id.ts';
import { refuseClosed } from '../routings/work.ts';
import { paper, type Result, show, type Visit } from '../visit.ts';
import { markCut, passAt, takeBack, ticked, tickedOfAll } from './count.ts';
import { indexSheet as indexView } from './index-view.ts';
import { printedBy } from './paper.ts';
import { routeSheet } from './route-view.ts';
import { setUpSheet as setUpView } from './set-up-view.ts';
import { teethView } from './teeth-view.ts';
import { walkFor } from './walk.ts';
import { countingOf, sharedWork, teethOf, workOfOperation, workOfPart } from './work.ts';

/** The routing of one part on paper. */
export async function partSheet(visit: Visit): Promise<Result> {
  const work = await workOfPart(visit.db, recordId('part', visit.params['id']));
  return paper('sheets/route-sheet', routeSheet(work, printedBy(visit)));
}

/** Every tooth with its hole and its boxes, on paper. */
export async function indexSheet(visit: Visit): Promise<Result> {
  const { work, own } = await workOfOperation(visit.db, recordId('operation', visit.params['id']));
  const all = await ticked(visit.db, work.operations, teethOf(work));
  const setUp = (all[0]?.pass.operation ?? own).setUp.says;
  return paper('sheets/index-sheet', indexView(work, setUp, all, printedBy(visit)));
}

const MOST_ASKED = 500;

/** "1,2,7". Anything else is an operation that does not exist. Throws RecordNotFound. */
function askedIds(text: unknown): number[] {
  const parts = typeof text === 'string' ? text.split(',') : [];
  if (parts.length === 0 || parts.length > MOST_ASKED) throw new RecordNotFound('operation', '');
  return [...new Set(parts.map((part) => recordId('operation', part.trim())))];
}

/** Parts that share a set-up, on one sheet. */
export async function setUpSheet(visit: Visit): Promise<Result> {
  const works = await sharedWork(visit.db, askedIds(visit.query['operations']));
  const wheels = works.filter(({ part }) => part.stored);
  const counted = await tickedOfAll(
    visit.db,
    wheels.map((work) => ({ operations: work.operations, teeth: teethOf(work) })),
  );
  const parts = works.map((work) => ({ work, all: counted[wheels.indexOf(work)] ?? [] }));
  return paper('sheets/set-up-sheet', setUpView(parts, printedBy(visit)));
}

async function counting({ db, params }: Visit) {
  const { work, own } = await countingOf(db, recordId('operation', params['id']));
  const all = await ticked(db, work.operations, teethOf(work));
  return { work, own: passAt(all, own), all };
}

/** At the mill: which tooth now. */
export async function teeth(visit: Visit): Promise<Result> {
  const { work, own, all } = await counting(visit);
  const open = own.pass.operation.done_on === null && work.routing?.closed_on === null;
  return show('sheets/teeth', teethView(work, own, all, walkFor(work), visit.trusted && open));
}

/** The mark that a button names; 0, which no tooth has, when it names none. */
const pressed = ({ body }: Visit): number => {
  const text = body['tooth'];
  return typeof text === 'string' && /^\d{1,6}$/.test(text) ? Number(text) : 0;
};

const NOT_NEXT = 'Nothing was counted: another tooth was marked meanwhile. Look at the hole, then go on from what stands here.';

/** Counted is only what is still being cut: the count of an operation that is done, struck out or of a closed routing stays. Throws DomainError. */
async function countingOn(visit: Visit) {
  const found = await counting(visit);
  const { routing, part } = found.work;
  if (routing) refuseClosed({ routing, part });
  const { title, done_on } = found.own.pass.operation;
  if (done_on === null) return found;
  throw new DomainError({
    given: `“${title}” is done.`,
    limit: 'Its count of teeth stays as it is.',
    tryThis: 'Say on its own page that it is not done after all, then count on.',
    about: ['tooth'],
  });
}

/** “Tooth 7 is cut”: sent twice it is one tooth. */
export async function toothCut(visit: Visit): Promise<Result> {
  const { own } = await countingOn(visit);
  const came = await markCut(visit.db, own, pressed(visit), visit.now);
  const go = to.teeth(own.pass.operation.id);
  return came === 'not next' ? { go, saved: NOT_NEXT } : { go };
}

/** Back one: the last tooth marked is not cut after all. */
export async function toothBack(visit: Visit): Promise<Result> {
  const { own } = await countingOn(visit);
  const came = await takeBack(visit.db, own, pressed(visit));
  const go = to.teeth(own.pass.operation.id);
  return came === 'not next' ? { go, saved: NOT_NEXT } : { go };
}
