import type { OperationLine } from '../../db/operations.ts';
import type { Wait } from '../../db/readiness.ts';
import { needWords } from '../../lib/routing/needs.ts';
import { dayOf } from '../forms/date-field.ts';
import type { StateView } from '../page.ts';

/** One thing that is waited for. */
export function waitWords(wait: Wait): string {
  if (wait.for === 'tool') return needWords(wait.need);
  if (wait.for === 'blank') return wait.why ? 'another blank: choose the blank anew' : 'a blank to cut it from';
  return wait.for === 'held' ? `“${wait.title}” of ${wait.partMark}` : `“${wait.title}”`;
}

type Standing = Pick<OperationLine, 'state' | 'waits' | 'done_on'>;

/** The state of an operation by its line kind and in words: what it waits for first. */
export function stateView({ state, waits, done_on }: Standing): StateView {
  if (state === 'done') return { kind: 'done', says: `done ${dayOf(done_on ?? '')}` };
  if (state === 'struck out') return { kind: 'off', says: 'struck out' };
  if (state === 'ready') return { kind: 'ready', says: 'ready' };
  const first = waits[0];
  if (state === 'held') return { kind: 'held', says: first ? `held for ${waitWords(first)}` : 'held' };
  return { kind: 'waits', says: first ? `waits for ${waitWords(first)}` : 'waits' };
}

/** "Waits first of all for A; then for B; C." Empty when nothing is waited for. */
export function firstOfAll(waits: readonly string[]): string {
  const [first, ...others] = [...new Set(waits)];
  if (first === undefined) return '';
  return others.length === 0 ? `Waits for ${first}.` : `Waits first of all for ${first}; then for ${others.join('; ')}.`;
}

/** What the open operations of a routing lack from outside, in the order in which it is needed; a blank that will not do comes first. */
export function lackedBy(lines: readonly OperationLine[]): string[] {
  const waiting = lines.filter(({ state }) => state === 'waiting' || state === 'held');
  const waits = waiting.flatMap((line) => line.waits.filter((wait) => wait.for === 'tool' || wait.for === 'blank'));
  const failing = waits.filter((wait) => wait.for === 'blank' && wait.why !== undefined);
  return [...new Set([...failing, ...waits].map(waitWords))];
}
