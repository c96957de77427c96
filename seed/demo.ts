import type { Kysely } from 'kysely';
import type { Schema } from '../db/schema.ts';

/** Fills an empty file with the invented shop. now: ISO text. */
export async function fillDemo(db: Kysely<Schema>, now: string): Promise<void> {
  await db
    .insertInto('project')
    .values({
      make: 'Halvorsen',
      model: 'H-12',
      what: 'gear hobber',
      size: '',
      year: '',
      serial: '',
      mark: 'H12',
      notes: '',
      opened_on: now.slice(0, 10),
      closed_on: null,
    })
    .execute();
}
