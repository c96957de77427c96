import { RecordNotFound } from '../../db/changes.ts';
import { ItemTaken, RoutingOpen } from '../../db/parts.ts';
import type { Pair } from '../../lib/blanks/choice.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { to } from '../addresses.ts';
import { recordId } from '../record-id.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { benchOf, isMissing } from './bench.ts';
import { choiceFor } from './choice.ts';
import { costFor } from './cost.ts';
import { openPairs, readPairs } from './open-pairs.ts';
import { setView } from './set-view.ts';

const numberIn = (text: unknown): number => (typeof text === 'string' && /^\d{1,15}$/.test(text) ? Number(text) : 0);

/** The pair that was asked for; null when none was. */
function pairAsked({ query }: Visit): Pair | null {
  const pair = { missing: numberIn(query['make']), spare: numberIn(query['from']) };
  return pair.missing > 0 && pair.spare > 0 ? pair : null;
}

async function setPage(visit: Visit, id: number, problem: string, db: Db = visit.db): Promise<Result> {
  const bench = await benchOf(db, id);
  const force = pairAsked(visit);
  const choice = choiceFor(bench, force);
  const anyMissing = bench.places.some(isMissing);
  const cost = anyMissing ? costFor(bench, choice.choice) : null;
  return show('sets/one', setView({ bench, choice, cost, force, problem, trusted: visit.trusted }), problem ? 422 : 200);
}

/** The set: its wheels as they stand, what the gaps cost, and what becomes what. */
export const one = (visit: Visit): Promise<Result> => setPage(visit, recordId('wheel set', visit.params['id']), '');

/** Opens the routings for the chosen blanks, all or none. */
export async function open(visit: Visit): Promise<Result> {
  const id = recordId('wheel set', visit.params['id']);
  const bench = await benchOf(visit.db, id);
  const pairs = readPairs(visit.body['choices']);
  if (!pairs) return setPage(visit, id, 'No blank was chosen. Choose again below.');
  try {
    await openPairs(visit.db, bench, pairs, visit.now);
  } catch (error) {
    if (error instanceof RecordNotFound) return setPage(visit, id, `${error.message} Choose again below.`);
    if (error instanceof DomainError || error instanceof ItemTaken || error instanceof RoutingOpen)
      return setPage(visit, id, error.message);
    throw error;
  }
  const [first] = pairs;
  const says = pairs.length === 1 ? 'Its routing is open.' : `${pairs.length} routings are open, chosen together.`;
  const act = first ? { says: 'To the first of them', href: to.part(first.partId) } : undefined;
  return { go: to.set(id), saved: says, ...(act ? { act } : {}) };
}
