import { randomBytes } from 'node:crypto';
import { answeredWith, rememberSent } from '../db/sent.ts';
import type { HiddenView } from './page.ts';
import type { Handler, Result, Visit } from './visit.ts';

const MARK = 'mark';

/** A fresh one-time mark for a form, as its hidden field. */
export const formMark = (): HiddenView => ({ name: MARK, value: randomBytes(12).toString('base64url') });

/**
 * Runs a change in one transaction. When its form was acted on before (sent twice, or sent again by "back"), nothing is done
 * and the visitor is led to where the first sending led.
 */
export function actOnce(visit: Visit, handle: Handler): Promise<Result> {
  const sent = visit.body[MARK];
  const mark = typeof sent === 'string' && sent.length > 0 && sent.length <= 64 ? sent : null;
  return visit.db.transaction().execute(async (db) => {
    const before = mark ? await answeredWith(db, mark) : null;
    if (before) return { go: before };
    const result = await handle({ ...visit, db });
    if (mark && 'go' in result) await rememberSent(db, mark, result.go, visit.now);
    return result;
  });
}
