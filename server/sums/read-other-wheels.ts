import type { MeasuredWheel, Reading } from '../../lib/identify/readings.ts';
import { quoted, type Read, read, readCount, readLength, unread } from '../../lib/values/read.ts';
import { type Field, optional, readField } from '../forms/field.ts';
import { readList } from './asks.ts';

const HOW = 'Type 28: outside 3.748, over 3 0.971, over 4 1.351; the next wheel after a semicolon.';
const LIMITS = { least: 0.01, most: 200 };
const MOST_WHEELS = 6;

/** One reading of a further wheel: outside 3.748, root 3.21, depth 0.27, over 3 0.971. */
function readReading(piece: string): Read<Reading> {
  const found = /^(outside|root|depth|over (\d{1,3}))\s+(.+)$/i.exec(piece.trim());
  if (!found) return unread(`${quoted(piece)} could not be read. ${HOW}`);
  const [, what = '', over, text = ''] = found;
  const size = readLength(text, 'the reading', 'in', LIMITS);
  if (!size.ok) return size;
  const { length } = size.value;
  if (over !== undefined) return read({ of: 'span', over: Number(over), size: length });
  if (/^outside/i.test(what)) return read({ of: 'outside', by: 'jaws', size: length });
  return read({ of: /^root/i.test(what) ? 'root' : 'depth', size: length });
}

function readWheel(piece: string): Read<MeasuredWheel> {
  const [count = '', rest] = piece.split(':');
  if (rest === undefined) return unread(`${quoted(piece)} could not be read. ${HOW}`);
  const teeth = readCount(count.replace(/teeth|t$/i, ''), 'the teeth', { least: 4, most: 1000 });
  if (!teeth.ok) return teeth;
  const readings = readList(rest, 'the readings', readReading, /,\s(?=[a-z])/i);
  return readings.ok ? read({ teeth: teeth.value, readings: readings.value }) : readings;
}

/** Further wheels of the set, each with its count and readings. */
export const otherWheelsField = (asked: { readonly label: string }): Field<readonly MeasuredWheel[] | null> =>
  optional(
    readField({
      ...asked,
      hint: 'As 28: outside 3.748, over 3 0.971, over 4 1.351; 35: outside 4.620',
      read: (text) => {
        const wheels = readList(text, 'the wheels', readWheel, /[;\n]/);
        if (!wheels.ok || wheels.value.length <= MOST_WHEELS) return wheels;
        return unread(`${wheels.value.length} wheels: at most ${MOST_WHEELS} beside the first can be taken together.`);
      },
    }),
  );
