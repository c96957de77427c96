import { projects } from '../../db/projects.ts';
import { to } from '../addresses.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { anewView, chooseView } from './view-model.ts';

async function choices({ db, demo }: Visit) {
  const { rows } = await projects(db, { before: null, size: 1 });
  return chooseView({ demo, machines: rows.length > 0 });
}

/** Two choices: the invented shop, or one's own. */
export const choose = async (visit: Visit): Promise<Result> => show('shop/choose', await choices(visit));

/** Opens the invented shop or one's own; both files stay as they are. A word that is neither changes nothing. */
export async function open(visit: Visit): Promise<Result> {
  const which = visit.body['which'];
  if (which !== 'demo' && which !== 'own') return show('shop/choose', await choices(visit), 422);
  await visit.shops.pick(which);
  return { go: to.today, saved: which === 'demo' ? 'The demo shop is open.' : 'Your own shop is open.' };
}

/** Asks once more before the invented shop is begun anew. */
export const askAnew = (): Result => show('confirm', anewView());

/** Throws away what was tried in the invented shop and fills it as it was; one's own is not touched. */
export async function anew(visit: Visit): Promise<Result> {
  await visit.shops.demoAnew();
  await visit.shops.pick('demo');
  return { go: to.today, saved: 'The demo shop is as it was at first.' };
}
