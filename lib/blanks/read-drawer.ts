import { quoted } from '../values/read.ts';

const LEAST_TEETH = 6;
const MOST_TEETH = 500;
const MOST_ALIKE = 20;
const MOST_WHEELS = 300;

/** counts: the teeth of each wheel, sorted, like ones repeated. problems: one sentence for each piece that could not be read. */
export type ReadDrawer = { readonly counts: readonly number[]; readonly problems: readonly string[] };
type Piece = { readonly counts: readonly number[] } | { readonly problem: string };

const PIECE = /^(\d{1,6})(?:\s*(?:-|–|to)\s*(\d{1,6}))?\s*(odd|even|step\s*(\d{1,3}))?\s*(?:[x×*]\s*(\d{1,6}))?$/i;
const FORMS = 'Type it as 22, 19x2, 25-31, 25-31 odd, 25-31 even or 25-31 step 3.';

const teethOutside = (teeth: number): boolean => teeth < LEAST_TEETH || teeth > MOST_TEETH;

/** 2x19 is two wheels of 19: no wheel has two teeth. */
function turnedRound(from: number, times: number, alone: boolean): readonly [teeth: number, times: number] {
  return alone && from < LEAST_TEETH && times >= LEAST_TEETH ? [times, from] : [from, times];
}

function rangeOf(from: number, to: number, step: string, every: string): readonly number[] {
  const by = /^step/i.test(step) ? Number(every) : step ? 2 : 1;
  const start = step.toLowerCase() === 'odd' ? from + ((from + 1) % 2) : step.toLowerCase() === 'even' ? from + (from % 2) : from;
  const counts: number[] = [];
  for (let teeth = start; teeth <= to; teeth += by) counts.push(teeth);
  return counts;
}

function wrongSize(said: string, from: number, to: number, times: number): string | null {
  if (teethOutside(from) || teethOutside(to)) return `${said}: a wheel has from ${LEAST_TEETH} to ${MOST_TEETH} teeth.`;
  if (times < 1 || times > MOST_ALIKE) return `${said}: from 1 to ${MOST_ALIKE} like wheels. ${FORMS}`;
  return to < from ? `${said}: the range runs backwards. ${FORMS}` : null;
}

function readPiece(text: string): Piece {
  const said = quoted(text);
  const found = PIECE.exec(text);
  if (!found) return { problem: `${said} could not be read. ${FORMS}` };
  const [, first = '', last, step = '', every = '1', alike = '1'] = found;
  if (step && last === undefined) return { problem: `${said}: “${step}” wants a range before it, such as 25-31 ${step}.` };
  const [from, times] = turnedRound(Number(first), Number(alike), last === undefined);
  const to = last === undefined ? from : Number(last);
  const wrong = wrongSize(said, from, to, times);
  if (wrong) return { problem: wrong };
  if (Number(every) < 1) return { problem: `${said}: a step is at least 1.` };
  const counts = rangeOf(from, to, step, every);
  return counts.length === 0
    ? { problem: `${said} holds no wheel at all.` }
    : { counts: counts.flatMap((teeth) => Array.from({ length: times }, () => teeth)) };
}

const ONLY_COUNTS = /^\d+(?:[x×*]\d+)?(?: \d+(?:[x×*]\d+)?)+$/i;

/** Plain counts are told apart by blanks too: 19 22 31x2. */
const apart = (piece: string): readonly string[] => (ONLY_COUNTS.test(piece) ? piece.split(' ') : [piece]);

/** Reads a drawer as people write it: 19x2, 22, 25-31 odd, 34, 46×2. Commas, semicolons or lines between; between plain counts blanks will do. */
export function readDrawer(text: string): ReadDrawer {
  const pieces = text
    .slice(0, 20_000)
    .split(/[,;\n]/)
    .map((piece) => piece.trim().replace(/\s+/g, ' '))
    .filter((piece) => piece !== '')
    .flatMap(apart)
    .map(readPiece);
  const counts = pieces.flatMap((piece) => ('counts' in piece ? piece.counts : [])).sort((a, b) => a - b);
  const problems = pieces.flatMap((piece) => ('problem' in piece ? [piece.problem] : []));
  if (counts.length <= MOST_WHEELS) return { counts, problems };
  return { counts: [], problems: [...problems, `${counts.length} wheels in one drawer: at most ${MOST_WHEELS}. Write fewer at a time.`] };
}

/** A drawer written so that readDrawer gives it back: 19x2, 22, 25. */
export function printDrawer(counts: readonly number[]): string {
  const times = new Map<number, number>();
  for (const teeth of counts) times.set(teeth, (times.get(teeth) ?? 0) + 1);
  const sorted = [...times].sort(([a], [b]) => a - b);
  return sorted.map(([teeth, n]) => (n === 1 ? `${teeth}` : `${teeth}x${n}`)).join(', ');
}
