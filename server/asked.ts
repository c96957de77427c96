import type { Visit } from './visit.ts';

/** The rev that a form started from; 0, which no record has, when it does not say. */
export function sentRev({ body }: Visit): number {
  const text = body['rev'];
  return typeof text === 'string' && /^\d{1,15}$/.test(text) ? Number(text) : 0;
}

/** The place in a list that a page starts after; null for the first page. */
export function askedBefore({ query }: Visit): number | null {
  const text = query['before'];
  return typeof text === 'string' && /^[1-9]\d{0,14}$/.test(text) ? Number(text) : null;
}
