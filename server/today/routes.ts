import { leftOff } from '../../db/bookmarks.ts';
import { projects } from '../../db/projects.ts';
import { openWork, sharedSetUps } from '../../db/today.ts';
import { chooseView } from '../shop/view-model.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { todayView } from './view-model.ts';

const MOST_PARTS = 40;
const MOST_LEFT = 5;
const MOST_SET_UPS = 5;

/** What can be done, what waits and for what, and where work was left. An empty shop of one's own begins with its two choices. */
export async function today({ db, demo, query, trusted }: Visit): Promise<Result> {
  const before = Number(query['before']) || null;
  const work = await openWork(db, { before, size: MOST_PARTS });
  const any = work.rows.length > 0 || (await projects(db, { before: null, size: 1 })).rows.length > 0;
  if (!any && !demo) return show('shop/choose', chooseView({ demo, machines: any }));
  const [left, shared] = [await leftOff(db, MOST_LEFT), await sharedSetUps(db, MOST_SET_UPS)];
  return show('today/today', todayView({ work, left, shared, trusted }));
}
