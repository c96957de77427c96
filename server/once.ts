import { randomBytes } from 'node:crypto';
import { answeredWith, rememberSent } from '../db/sent.ts';
import type { HiddenView } from './page.ts';
import type { Handler, Result, Visit } from './visit.ts';

const MARK = 'mark';
const LONGEST_MARK = 64;

/** A fresh one-time mark for a form, as its hidden field. */
export const formMark = (): HiddenView => ({ name: MARK, value: randomBytes(12).toString('hex') });

/** The mark of a form, bound to the address that it was sent to, so that it never answers for another form. */
function markOf({ body, address }: Visit): string | null {
  const sent = body[MARK];
  const good = typeof sent === 'string' && sent.length > 0 && sent.length <= LONGEST_MARK;
  return good ? `${sent} ${address.split('?', 1)[0]}` : null;
}

/** Carries a refusal out of the transaction, so that whatever was written before it is taken back. */
class NotDone extends Error {
  readonly result: Result;
  constructor(result: Result) {
    super('The change was refused.');
    this.result = result;
  }
}

const isRefusal = (result: Result): boolean => 'status' in result && (result.status ?? 200) >= 400;

/**
 * Runs a change in one transaction. When its form was acted on before (sent twice, or sent again by "back"), nothing is done
 * and the visitor is led to where the first sending led. What throws, or answers with a problem (422, 409), leaves nothing.
 */
export async function actOnce(visit: Visit, handle: Handler): Promise<Result> {
  const mark = markOf(visit);
  const acted = visit.db.transaction().execute(async (db): Promise<Result> => {
    const before = mark ? await answeredWith(db, mark) : null;
    if (before) return { go: before };
    const result = await handle({ ...visit, db });
    if (isRefusal(result)) throw new NotDone(result);
    if (mark && 'go' in result) await rememberSent(db, mark, result.go, visit.now);
    return result;
  });
  return acted.catch((error: unknown) => {
    if (error instanceof NotDone) return error.result;
    throw error;
  });
}
