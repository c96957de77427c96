import { to } from '../addresses.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { chooseView } from './view-model.ts';

/** Two choices: the invented shop, or one's own. */
export const choose = (visit: Visit): Result => show('shop/choose', chooseView(visit.demo));

/** Opens the invented shop or one's own; both files stay as they are. */
export async function open(visit: Visit): Promise<Result> {
  const demo = visit.body['which'] === 'demo';
  await visit.shops.pick(demo ? 'demo' : 'own');
  return demo ? { go: to.today, saved: 'The demo shop is open.' } : { go: to.today, saved: 'Your own shop is open.' };
}
