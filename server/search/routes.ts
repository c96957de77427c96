import { partByMark } from '../../db/parts.ts';
import { find } from '../../db/search.ts';
import { to } from '../addresses.ts';
import { askedBefore } from '../asked.ts';
import { sumsHolding } from '../sums/contents.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { searchView } from './view-model.ts';

const PAGE = 30;
const MOST_LETTERS = 200;

const wordOf = (sent: unknown): string => (typeof sent === 'string' ? sent.slice(0, MOST_LETTERS) : '');

/** Everything that holds the words, newest first. A part's mark typed whole goes straight to the part. */
export async function search(visit: Visit): Promise<Result> {
  const typed = wordOf(visit.query['q']);
  const part = typed.trim() ? await partByMark(visit.db, typed.trim().toUpperCase()) : null;
  if (part) return { go: to.part(part.id) };
  const found = await find(visit.db, typed, { before: askedBefore(visit), size: PAGE }, visit.trusted);
  return show('search/results', searchView(typed, found, askedBefore(visit) === null ? sumsHolding(typed) : []));
}
