import { quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { type Field, readField } from './field.ts';

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

function readDay(text: string): Read<string> {
  const found = DAY.exec(text.trim());
  const day = found ? new Date(`${text.trim()}T00:00:00Z`) : null;
  const real = day && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text.trim());
  return real ? read(text.trim()) : unread(`${quoted(text)} is no day. Type year, month and day, as 2026-03-09.`);
}

/** A day, as 2026-03-09: the one way to write it that nobody reads the wrong way round. */
export const dayField = (label: string, hint = 'As 2026-03-09'): Field<string> => readField({ label, hint, read: readDay });

/** The day of a moment. */
export const dayOf = (iso: string): string => iso.slice(0, 10);
