import { over, type Ratio, ratio, times } from '../values/ratio.ts';
import { exactNumber, quoted, type Read, read, unread } from '../values/read.ts';
import { type Target, targetOf } from './target.ts';

/** What is wanted of one turn of the work: size × π^pi inches, exact. says: as typed. */
export type Wanted = { readonly says: string; readonly size: Ratio; readonly pi: 0 | 1 };

const MM: Ratio = [5, 127];
const HOW = 'Type 8 TPI, 1.5 mm, module 1.5, 10 DP, a lead or feed as 0.25 in, or several starts as 8 TPI x 2.';

const FORMS: readonly (readonly [RegExp, (size: Ratio) => Omit<Wanted, 'says'>])[] = [
  [/^(.+?)\s*(?:tpi|t\.p\.i\.|threads? (?:per|an|to the) inch)$/i, (n) => ({ size: over([1, 1], n), pi: 0 })],
  [/^(?:module|mod|m)\s*(.+)$/i, (m) => ({ size: times(m, MM), pi: 1 })],
  [/^(.+?)\s*(?:module|mod)$/i, (m) => ({ size: times(m, MM), pi: 1 })],
  [/^(.+?)\s*d\.?p\.?$/i, (P) => ({ size: over([1, 1], P), pi: 1 })],
  [/^(.+?)\s*mm(?: (?:pitch|lead|feed))?$/i, (mm) => ({ size: times(mm, MM), pi: 0 })],
  [/^(.+?)\s*(?:in|inch|inches|"|″)\.?(?: (?:pitch|lead|feed))?$/i, (inch) => ({ size: inch, pi: 0 })],
];
/** Nobody cuts a thread or takes a feed outside these, in inches to a turn. */
const [LEAST, MOST] = [1e-5, 1000];

/** A thread, lead or feed as people write it, kept exact: 8 TPI, 1.25 mm, module 2, 12 DP, 0.0035 in; × and a count for several starts. */
export function readWanted(text: string): Read<Wanted> {
  const tidy = text.trim().replace(/\s+/g, ' ');
  if (tidy.length > 60) return unread(`${quoted(text)} is too long. ${HOW}`);
  const [, one = tidy, starts = '1'] =
    /^(.+?)\s*(?:x|×|,)?\s+?(\d{1,2})\s*starts?$/i.exec(tidy) ?? /^(.+?)\s*[x×]\s*(\d{1,2})$/i.exec(tidy) ?? [];
  for (const [form, sized] of FORMS) {
    const number = form.exec(one.trim())?.[1];
    const exact = number === undefined ? null : exactNumber(number);
    if (!exact || exact[0] <= 0 || Number(starts) < 1) continue;
    const found = sized(exact);
    const size = times(found.size, ratio(Number(starts)));
    const inches = (size[0] / size[1]) * (found.pi === 1 ? Math.PI : 1);
    if (inches < LEAST || inches > MOST) return unread(`${quoted(text)} is no thread, lead or feed that a machine cuts. ${HOW}`);
    return read({ ...found, size, says: tidy });
  }
  const zero =
    /^[-−]?0*[.,]?0*\s*\D*$/.test(tidy) && /\d/.test(tidy) ? 'A lead of nothing cannot be cut.' : `${quoted(text)} could not be read.`;
  return unread(`${zero} ${HOW}`);
}

/** Drivers ÷ driven for the wanted lead on a screw, by the lead of the screw with equal wheels. */
export const trainFor = (wanted: Wanted, screw: Ratio): Target => targetOf(over(wanted.size, screw), wanted.pi);

export const inchesOf = ({ size, pi }: Wanted): number => (size[0] / size[1]) * (pi === 1 ? Math.PI : 1);
