import type SqliteFile from 'better-sqlite3';
import type { Executor } from './executor.ts';

/** How many answers of one question are kept; the oldest goes first. */
const MOST_KEPT = 24;

type Kept = { state: string; readonly answers: Map<string, unknown> };

const states = new WeakMap<Executor, () => string>();

/** Says from now on how far this shop has been written: by this program, and by another that has the file open (a code printed by hand). */
export function watchChanges(db: Executor, file: SqliteFile.Database): void {
  const [own, others] = [file.prepare('select total_changes()').pluck(), file.prepare('pragma data_version').pluck()];
  states.set(db, () => `${own.get()} ${others.get()}`);
}

/** What is kept of this shop, emptied when anything was written since. */
function keptOf(shops: WeakMap<Executor, Kept>, db: Executor, state: string): Kept {
  const kept = shops.get(db) ?? { state, answers: new Map() };
  shops.set(db, kept);
  if (kept.state !== state) kept.answers.clear();
  kept.state = state;
  return kept;
}

function keep(answers: Map<string, unknown>, key: string, answer: unknown): void {
  const oldest = answers.size >= MOST_KEPT ? answers.keys().next().value : undefined;
  if (oldest !== undefined) answers.delete(oldest);
  answers.set(key, answer);
}

/**
 * The same reading, whose answers are kept until anything in the shop is written. Inside a change it always reads: what is half done
 * there may be taken back. An answer during which something was written is given and not kept. Answers are shared: nobody may alter one.
 * read: an answer that follows from the shop and from what is asked alone; a time of day would be one thing more.
 */
export function untilChanged<A extends readonly unknown[], T>(
  read: (db: Executor, ...asked: A) => Promise<T>,
): (db: Executor, ...asked: A) => Promise<T> {
  const shops = new WeakMap<Executor, Kept>();
  return async (db, ...asked) => {
    const stateNow = db.isTransaction ? undefined : states.get(db);
    if (!stateNow) return read(db, ...asked);
    const [state, key] = [stateNow(), JSON.stringify(asked)];
    const { answers } = keptOf(shops, db, state);
    if (answers.has(key)) return answers.get(key) as T;
    const answer = await read(db, ...asked);
    if (stateNow() === state) keep(keptOf(shops, db, state).answers, key, answer);
    return answer;
  };
}
