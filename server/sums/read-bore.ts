import type { Bore } from '../../lib/gears/gear.ts';
import { quoted, type Read, read, readCount, readLength, type TypedLength, unread } from '../../lib/values/read.ts';
import { type Field, optional, readField } from '../forms/field.ts';

const HOW = 'Type 1 in; 1 in key 1/4 x 1/8; or 6 splines 1.250 x 1.0625 x 0.3125.';
const LIMITS = { least: 0.05, most: 100 };
const SPLINED = /^(.+?)\s*splines?\s*,?\s*(.+)$/i;
const KEYED = /^(.+?)\s*,?\s*key(?:way)?\s*(.+)$/i;

/** Sizes with × between them; as many as wanted, or the reason why not. */
function sizes(text: string, wanted: number): Read<readonly TypedLength[]> {
  const pieces = text.split(/\s*[x×]\s*/i);
  if (pieces.length !== wanted) return unread(`${quoted(text)} is not ${wanted} sizes with × between. ${HOW}`);
  const each = pieces.map((piece) => readLength(piece, 'a size of the bore', 'in', LIMITS));
  const wrong = each.find((one) => !one.ok);
  if (wrong && !wrong.ok) return wrong;
  return read(each.flatMap((one) => (one.ok ? [one.value] : [])));
}

function splined(count: string, rest: string): Read<Bore> {
  const splines = readCount(count, 'the count of splines', { least: 2, most: 100 });
  if (!splines.ok) return splines;
  const found = sizes(rest, 3);
  if (!found.ok) return found;
  const [diameter, minor, keyWidth] = found.value.map((one) => one.length);
  if (diameter === undefined || minor === undefined || keyWidth === undefined || minor >= diameter)
    return unread(`${quoted(rest)}: the diameter across the grooves comes first and is the larger. ${HOW}`);
  return read({ form: 'splined', diameter, minor, splines: splines.value, keyWidth });
}

function keyed(bore: string, key: string): Read<Bore> {
  const [diameter, found] = [readLength(bore, 'the bore', 'in', LIMITS), sizes(key, 2)];
  if (!diameter.ok) return diameter;
  if (!found.ok) return found;
  const [keyWidth, keyDepth] = found.value.map((one) => one.length);
  if (keyWidth === undefined || keyDepth === undefined) return unread(HOW);
  return read({ form: 'keyed', diameter: diameter.value.length, keyWidth, keyDepth });
}

/** A bore in one line: its diameter; with a keyway, width × depth in the wheel; splined, grooves × tops × width of a spline. */
export function readBore(text: string): Read<Bore> {
  if (text.length > 120) return unread(`${quoted(text)} is too long for a bore. ${HOW}`);
  const bySplines = SPLINED.exec(text.trim());
  if (bySplines) return splined(bySplines[1] ?? '', bySplines[2] ?? '');
  const byKey = KEYED.exec(text.trim());
  if (byKey) return keyed(byKey[1] ?? '', byKey[2] ?? '');
  const diameter = readLength(text, 'the bore', 'in', LIMITS);
  return diameter.ok ? read({ form: 'plain', diameter: diameter.value.length }) : unread(`${diameter.problem} ${HOW}`);
}

export const boreField = (label: string): Field<Bore | null> => optional(readField({ label, hint: HOW, unit: 'in', read: readBore }));
