import type { Head, HeadDial } from '../../../lib/tooling/tooling.ts';
import { MAS_PER_DEGREE } from '../../../lib/values/angle.ts';
import { printShort } from '../../../lib/values/print.ts';
import { over, type Ratio, ratio, times, toNumber } from '../../../lib/values/ratio.ts';
import { exactNumber, quoted, type Read, read, unread } from '../../../lib/values/read.ts';
import { optional, readField, tickField } from '../../forms/field.ts';
import type { Problems, ValuesOf } from '../../forms/form.ts';

/** A count, or an angle of the table in thousandths of a second: what one line stands for, what is read least. */
type CountOrArc = { readonly count: number } | { readonly arc: Ratio };
/** Lash as it is found: in turns of the handwheel, as an angle of the spindle, or in lines of the dial. */
type TypedLash = { readonly turns: Ratio } | { readonly arc: Ratio } | { readonly lines: Ratio };

const ROUND = 360 * MAS_PER_DEGREE;
const ARCS: readonly (readonly [RegExp, number])[] = [
  [/^(.+?)\s*(?:°|deg(?:rees?)?)$/i, MAS_PER_DEGREE],
  [/^(.+?)\s*(?:′|'|min(?:utes?)?)$/i, MAS_PER_DEGREE / 60],
  [/^(.+?)\s*(?:″|"|''|sec(?:onds?)?)$/i, MAS_PER_DEGREE / 3600],
];

/** "1′", "10″", "0.05°", "5 minutes" exactly; null for anything else. */
function arcIn(text: string): Ratio | null {
  for (const [form, mas] of ARCS) {
    const number = exactNumber(form.exec(text.trim())?.[1] ?? '');
    if (number && number[0] > 0) return times(number, ratio(mas));
  }
  return null;
}

const readCountOrArc =
  (least: number, most: number, says: string) =>
  (text: string): Read<CountOrArc> => {
    const arc = arcIn(text);
    if (arc) return read({ arc });
    const count = /^\d{1,5}$/.test(text.trim()) ? Number(text) : Number.NaN;
    return count >= least && count <= most ? read({ count }) : unread(`${quoted(text)} could not be read. ${says}`);
  };

const [MOST_LINES, MOST_PARTS] = [1000, 100];
const LINES_SAYS = `Type the lines once round, from 2 to ${MOST_LINES}, or what one stands for, as 1′ or 0.05°.`;
const VERNIER_SAYS = `Type into how many parts it divides a line, from 1 to ${MOST_PARTS}, or what it reads, as 10″.`;
const LASH_SAYS = 'Type it as 1/12 turn, 15′ or 3 lines.';

function readLash(text: string): Read<TypedLash> {
  const arc = arcIn(text);
  if (arc) return read({ arc });
  const [, number = '', of = ''] = /^(.+?)\s*(turns?|lines?)$/i.exec(text.trim()) ?? [];
  const exact = exactNumber(number);
  if (!exact || exact[0] < 0) return unread(`${quoted(text)} is no lash. ${LASH_SAYS}`);
  return read(/^turn/i.test(of) ? { turns: exact } : { lines: exact });
}

/** What is asked of a dial and of the lash; all of it may be left empty. */
export const DIAL_FIELDS = {
  dialLines: optional(
    readField({
      label: 'Lines on its dial',
      hint: 'Of a rotary table: once round, as 240, or what one stands for, as 1′. Empty: no dial',
      read: readCountOrArc(2, MOST_LINES, LINES_SAYS),
    }),
  ),
  dialVernier: optional(
    readField({
      label: 'Vernier',
      hint: 'Parts of a line, as 6, or what it reads, as 10″. Empty: none',
      read: readCountOrArc(1, MOST_PARTS, VERNIER_SAYS),
    }),
  ),
  dialNear: tickField({ label: 'Divide by it also what falls between the lines, and say the error at the worst tooth' }),
  dialOnly: tickField({ label: 'Takes no index plate' }),
  lash: optional(
    readField({ label: 'Lash', hint: 'Before the spindle moves: 1/12 turn, 15′ or 3 lines. Empty: not measured', read: readLash }),
  ),
};

type Typed = ValuesOf<typeof DIAL_FIELDS>;
type Kept = Pick<Head, 'dial' | 'dialOnly' | 'lash'>;
type Found = { readonly ok: true; readonly kept: Kept } | { readonly ok: false; readonly problems: Problems };

/** A whole number of so many in one, or null. */
const wholeIn = (one: Ratio, of: Ratio): number | null => {
  const [count, den] = over(one, of);
  return den === 1 ? count : null;
};
const between = (count: number | null, least: number, most: number): count is number => count !== null && count >= least && count <= most;

function linesOf(typed: CountOrArc, turns: number): number | null {
  return 'count' in typed ? typed.count : wholeIn(ratio(ROUND, turns), typed.arc);
}
function partsOf(typed: CountOrArc | null, turns: number, lines: number): number | null {
  if (typed === null) return 1;
  return 'count' in typed ? typed.count : wholeIn(ratio(ROUND, turns * lines), typed.arc);
}

/** Turns of the crank; a lash of a whole turn and more is a worm out of mesh. */
function lashOf(typed: TypedLash, turns: number, lines: number | null): Ratio | null {
  const found =
    'turns' in typed
      ? typed.turns
      : 'arc' in typed
        ? times(typed.arc, ratio(turns, ROUND))
        : lines === null
          ? null
          : over(typed.lines, ratio(lines));
  return found && toNumber(found) < 1 ? found : null;
}

/** Dial and lash as they are kept, by the turns of the head; or what does not agree. */
export function dialTyped({ dialLines, dialVernier, dialNear, dialOnly, lash }: Typed, turns: number): Found {
  const problems: Record<string, string> = {};
  const lines = dialLines ? linesOf(dialLines, turns) : null;
  const parts = lines === null ? null : partsOf(dialVernier, turns, lines);
  const kept = lash ? lashOf(lash, turns, lines) : null;
  if (dialLines && !between(lines, 2, MOST_LINES))
    problems['dialLines'] = `That is no whole number of lines in a turn of ${printShort(360 / turns, 4)}°. ${LINES_SAYS}`;
  else if (dialLines && !between(parts, 1, MOST_PARTS)) problems['dialVernier'] = `That is no whole part of a line. ${VERNIER_SAYS}`;
  if (!dialLines && dialVernier) problems['dialLines'] = 'A vernier stands beside a dial: type its lines too.';
  if (!dialLines && dialOnly) problems['dialLines'] = 'Without index plates it is divided by its dial: type its lines.';
  if (lash && !kept) problems['lash'] = `Less than a turn, and in lines only where there is a dial. ${LASH_SAYS}`;
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const dial: HeadDial | null = lines !== null && parts !== null ? { perTurn: lines, vernier: parts, near: dialNear } : null;
  return { ok: true, kept: { ...(dial ? { dial } : {}), ...(dialOnly ? { dialOnly } : {}), ...(kept ? { lash: kept } : {}) } };
}

const inTurns = ([num, den]: Ratio): string => (den === 1 ? `${num} turn` : `${num}/${den} turn`);

/** The same as it would be typed. */
export const typedOfDial = ({ dial, dialOnly, lash }: Kept): { readonly [name in keyof typeof DIAL_FIELDS]: string } => ({
  dialLines: dial ? String(dial.perTurn) : '',
  dialVernier: dial && dial.vernier > 1 ? String(dial.vernier) : '',
  dialNear: dial?.near ? 'yes' : '',
  dialOnly: dialOnly ? 'yes' : '',
  lash: lash ? inTurns(lash) : '',
});

/** Minutes or seconds of the table, whichever is shorter to read. */
const arcWords = (degrees: number): string => (degrees * 60 < 1 ? `${printShort(degrees * 3600, 2)}″` : `${printShort(degrees * 60, 2)}′`);

export const dialWords = ({ turns, dial }: Pick<Head, 'turns' | 'dial'>): string => {
  if (!dial) return 'none';
  const line = 360 / turns / dial.perTurn;
  const vernier = dial.vernier > 1 ? `, vernier of ${dial.vernier} to ${arcWords(line / dial.vernier)}` : ', no vernier';
  return `${dial.perTurn} lines of ${arcWords(line)}${vernier}${dial.near ? '; also for what falls between the lines' : ''}`;
};

export const lashWords = ({ turns, dial, lash }: Pick<Head, 'turns' | 'dial' | 'lash'>): string => {
  if (!lash) return 'not measured';
  const share = toNumber(lash);
  return `${inTurns(lash)}${dial ? ` = ${printShort(share * dial.perTurn, 1)} lines` : ''} = ${arcWords((360 / turns) * share)}`;
};
