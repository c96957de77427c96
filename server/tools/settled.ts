import { type Settled, settleAndCount } from '../../db/needs-again.ts';
import { meets } from '../../lib/routing/needs.ts';
import type { Visit } from '../visit.ts';

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

const operations = (count: number, one: string, many: string): string =>
  count === 0 ? '' : ` ${NUMBERS[count] ?? count} operation${count === 1 ? ` ${one}` : `s ${many}`}.`;

/** " Two operations are ready now." and " One operation waits now."; '' when nothing changed. */
export const settledWords = ({ ready, waiting }: Settled): string =>
  operations(ready, 'is ready now', 'are ready now') + operations(waiting, 'waits now', 'wait now');

/** Decides anew what waits for tools and which printed figures are out of date; to be run where a tool was saved. Gives what to say of it. */
export const settle = async ({ db, now }: Pick<Visit, 'db' | 'now'>): Promise<string> => settledWords(await settleAndCount(db, meets, now));
