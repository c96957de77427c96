import { RecordNotFound } from '../db/changes.ts';

/** The number of a record out of an address. Anything else is a record that does not exist. Throws RecordNotFound. */
export function recordId(kind: string, text: string | undefined): number {
  const id = Number(text);
  if (!/^\d{1,15}$/.test(text ?? '') || id < 1) throw new RecordNotFound(kind, (text ?? '').slice(0, 40));
  return id;
}
