import { createHash, randomBytes, randomInt } from 'node:crypto';
import { RecordNotFound } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';

const MINUTES_GOOD = 10;
/** No letters or digits that look alike on a dirty screen. */
const LETTERS = 'ABCDEFGHJKMNPQRSTUVWXYZ23456789';

const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex');
const laterBy = (now: string, minutes: number): string => new Date(Date.parse(now) + minutes * 60_000).toISOString();

/** The code was never given out, is over ten minutes old, or has been used. Which of them is not told to whoever asks. */
export class CodeRefused extends Error {
  constructor() {
    super('This code is no longer good. Ask the shop PC for a new one: each is good once, for ten minutes.');
    this.name = 'CodeRefused';
  }
}

/** A new pairing code, good once for ten minutes. Only its hash is kept; older codes that have run out go. now: ISO text in UTC. */
export async function newPairingCode(db: Executor, now: string): Promise<string> {
  const code = Array.from({ length: 10 }, () => LETTERS[randomInt(LETTERS.length)]).join('');
  await db
    .deleteFrom('pairing_code')
    .where('good_until', '<', laterBy(now, -24 * 60))
    .execute();
  const row = { code_sha256: hashOf(code), made_at: now, good_until: laterBy(now, MINUTES_GOOD), used_at: null };
  await db.insertInto('pairing_code').values(row).execute();
  return code;
}

/** Whether a code would pair now; writes nothing. */
export async function codeIsGood(db: Executor, code: string, now: string): Promise<boolean> {
  const row = await db.selectFrom('pairing_code').selectAll().where('code_sha256', '=', hashOf(code)).executeTakeFirst();
  return row !== undefined && row.used_at === null && row.good_until > now;
}

/** Uses up a code; gives the token for the device to keep. Its hash is all that stays here. Throws CodeRefused. */
export const pair = (db: Executor, code: string, name: string, now: string): Promise<{ token: string; deviceId: number }> =>
  together(db, async (trx) => {
    if (!(await codeIsGood(trx, code, now))) throw new CodeRefused();
    await trx.updateTable('pairing_code').set({ used_at: now }).where('code_sha256', '=', hashOf(code)).execute();
    const token = randomBytes(32).toString('base64url');
    const row = { token_sha256: hashOf(token), name, paired_on: now, seen_on: now, revoked_on: null };
    const { id } = await trx.insertInto('device').values(row).returning('id').executeTakeFirstOrThrow();
    return { token, deviceId: id };
  });

/** The paired device that holds this token, or null. Writes nothing. */
export async function deviceOf(db: Executor, token: string): Promise<Row<'device'> | null> {
  const found = await db.selectFrom('device').selectAll().where('token_sha256', '=', hashOf(token)).executeTakeFirst();
  return found && found.revoked_on === null ? found : null;
}

/** Takes the right to change from a device; one that lost it before keeps its day. Throws RecordNotFound. */
export async function revokeDevice(db: Executor, id: number, now: string): Promise<void> {
  await db.updateTable('device').set({ revoked_on: now }).where('id', '=', id).where('revoked_on', 'is', null).execute();
  if (!(await db.selectFrom('device').select('id').where('id', '=', id).executeTakeFirst())) throw new RecordNotFound('device', id);
}

export const devices = (db: Executor): Promise<Row<'device'>[]> =>
  db.selectFrom('device').selectAll().orderBy('id', 'desc').limit(200).execute();
