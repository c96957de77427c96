import type { Pitch } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import type { Cutter } from '../../lib/tooling/tooling.ts';
import type { Angle } from '../../lib/values/angle.ts';
import type { Length } from '../../lib/values/length.ts';
import { quoted, type Read, read, readAngle, readLength, unread } from '../../lib/values/read.ts';
import { type Field, readField } from '../forms/field.ts';
import { readList } from './asks.ts';

/** Four cutters of one drawer, as people write them. */
export const SOME_CUTTERS = '8 DP 14.5 No.2 55-134; 8 DP 14.5 No.4 26-34; 8 DP 20 No.3 35-54; 10 DP 14.5 No.3 35-54';
const HOW = 'Type each as 8 DP 14.5 No.4 26-34, a semicolon between cutters.';
const MOST_CUTTERS = 40;

/** The parts of a cutter in the order in which they are looked for; each is taken out of the text once it is found. */
const PARTS = {
  hole: /(?:^|\s)hole\s+(\d[\d./ ]*\s*(?:in|mm|")?)(?=\s|$)/i,
  depth: /(?:^|\s)depth\s+(\d*[.,]?\d+\s*(?:in|mm|")?)(?=\s|$)/i,
  exact: /(?:^|\s)(?:right|exact) for\s+(\d{1,4})(?=\s|$)/i,
  number: /(?:^|\s)No\.?\s*(\d{1,2}(?: 1\/2|½)?)(?=\s|$)/i,
  away: /(?:^|\s)(away)(?=\s|$)/i,
  blunt: /(?:^|\s)(blunt)(?=\s|$)/i,
  range: /(?:^|\s)(\d{1,4}\s*(?:(?:-|–|to)\s*(?:\d{1,4}|a rack|rack)|\+|up))(?=\s|$)/i,
  pitch: /^(\d[\d./ ]*\s*(?:in\s*|mm\s*)?(?:DP|CP)|(?:DP|CP)\s*\d[\d./]*|(?:module|mod|m)\s*\d[\d.]*)(?=\s|$)/i,
  angle: /^(\d{1,2}(?:[.,]\d{1,3}| 1\/2|½)?)\s*(?:°|deg(?:rees)?)?(?=\s|$)/i,
} as const;
type Part = keyof typeof PARTS;

/** The parts that were found, and what could not be told. */
function takenApart(text: string): { readonly found: Partial<Record<Part, string>>; readonly left: string } {
  const found: Partial<Record<Part, string>> = {};
  let left = text.replace(/\s+/g, ' ').trim();
  for (const [part, form] of Object.entries(PARTS) as [Part, RegExp][]) {
    const match = form.exec(left);
    if (!match) continue;
    found[part] = (match[1] ?? '').trim();
    left = `${left.slice(0, match.index)} ${left.slice(match.index + match[0].length)}`.replace(/\s+/g, ' ').trim();
  }
  return { found, left };
}

const none: Read<null> = read(null);
const readHole = (text?: string): Read<Length | null> => lengthOr(text, 'the hole', 0.05);
const readDepth = (text?: string): Read<Length | null> => lengthOr(text, 'the stamped depth', 0.001);

function lengthOr(text: string | undefined, name: string, least: number): Read<Length | null> {
  if (text === undefined) return none;
  const size = readLength(text, name, 'in', { least, most: 10 });
  return size.ok ? read(size.value.length) : size;
}

type Range = { readonly from: number | null; readonly to: number | null };

function readRange(text?: string): Read<Range> {
  if (text === undefined) return read({ from: null, to: null });
  const [from, to] = (text.match(/\d+/g) ?? []).map(Number);
  const wrong = from === undefined || from < 4 || (to !== undefined && to < from);
  return wrong ? unread(`${quoted(text)} is no tooth range. ${HOW}`) : read({ from, to: to ?? null });
}

const readForm = (text: string, pitch?: string, angle?: string): Read<{ readonly pitch: Pitch; readonly angle: Angle }> => {
  if (pitch === undefined || angle === undefined) return unread(`${quoted(text)} does not begin with a pitch and a pressure angle. ${HOW}`);
  const [p, a] = [readPitch(pitch), readAngle(angle.replace('½', '.5'), 'the pressure angle', { least: 5, most: 45 })];
  if (!p.ok) return p;
  return a.ok ? read({ pitch: p.value, angle: a.value }) : a;
};

function readCutter(text: string): Read<Omit<Cutter, 'id'>> {
  const { found, left } = takenApart(text);
  const form = readForm(text, found.pitch, found.angle);
  if (!form.ok) return form;
  if (left !== '') return unread(`${quoted(left)} in ${quoted(text)} could not be read. ${HOW}`);
  const [hole, depth, range] = [readHole(found.hole), readDepth(found.depth), readRange(found.range)];
  if (!hole.ok) return hole;
  if (!depth.ok) return depth;
  if (!range.ok) return range;
  const exactFor = found.exact === undefined ? null : Number(found.exact);
  if (exactFor !== null && exactFor < 4) return unread(`${quoted(text)}: a form is made for 4 teeth or more.`);
  return read({
    kind: 'cutter',
    name: text.replace(/\s+/g, ' ').trim(),
    here: found.away === undefined,
    sharp: found.blunt === undefined,
    ...form.value,
    number: found.number ?? '',
    teethFrom: range.value.from,
    teethTo: range.value.to,
    hole: hole.value,
    diameter: null,
    width: null,
    stampedDepth: depth.value,
    steel: 'unknown',
    exactFor,
  });
}

/**
 * A drawer of cutters in one line: pitch, angle, number and tooth range of each; then, where known, `hole 7/8`, `depth 0.2696`,
 * `right for 29`, `away`, `blunt`. A number without its range is read, and lib offers it for nothing.
 */
export function readCutters(text: string): Read<readonly Cutter[]> {
  if (text.trim() === '') return read([]);
  const found = readList(text, 'the cutters', readCutter, /[;\n]/);
  if (!found.ok) return found;
  if (found.value.length > MOST_CUTTERS) return unread(`${found.value.length} cutters are too many: at most ${MOST_CUTTERS}.`);
  return read(found.value.map((cutter, at) => ({ ...cutter, id: at + 1 })));
}

export const cuttersField: Field<readonly Cutter[]> = readField({
  label: 'Cutters in the drawer',
  hint: `${HOW} Further: hole 7/8, depth 0.2696, right for 29, away, blunt.`,
  read: readCutters,
});
