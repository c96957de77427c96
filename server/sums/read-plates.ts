import type { Plate } from '../../lib/tooling/tooling.ts';
import { quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { readField } from '../forms/field.ts';
import { readList } from './asks.ts';

/** Three plates that came with many a head, as printed with the examples of this trade. */
export const COMMON_PLATES = '15 16 17 18 19 20; 21 23 27 29 31 33; 37 39 41 43 47 49';
const HOW = 'Type the circles of a plate as 15 16 17 18 19 20, a semicolon between plates and a bar | between two sides of one.';
const MOST_PLATES = 12;

function readSide(text: string): Read<readonly number[]> {
  const circles = text.split(/[\s,–-]+/).filter((piece) => piece !== '');
  const wrong = circles.find((piece) => !/^\d{1,4}$/.test(piece) || Number(piece) < 2 || Number(piece) > 1000);
  if (wrong !== undefined) return unread(`${quoted(wrong)} is no circle of 2 to 1000 holes. ${HOW}`);
  return circles.length === 0 ? unread(`${quoted(text)} names no circle. ${HOW}`) : read(circles.map(Number));
}

/** A plate, side by side; it gets its name from its place in the line. */
function readPlate(text: string): Read<readonly (readonly number[])[]> {
  const sides = text.split('|').map(readSide);
  const wrong = sides.find((side) => !side.ok);
  if (wrong && !wrong.ok) return wrong;
  return sides.length > 2
    ? unread(`${quoted(text)}: a plate has two sides. ${HOW}`)
    : read(sides.flatMap((side) => (side.ok ? [side.value] : [])));
}

/** Index plates in one line. */
export function readPlates(text: string): Read<readonly Plate[]> {
  const found = readList(text, 'the plates', readPlate, /[;\n]/);
  if (!found.ok) return found;
  if (found.value.length > MOST_PLATES) return unread(`${found.value.length} plates are too many: at most ${MOST_PLATES}.`);
  return read(found.value.map((sides, at): Plate => ({ kind: 'plate', id: at + 1, name: `Plate ${at + 1}`, here: true, sides })));
}

export const platesField = readField({ label: 'Index plates', hint: HOW, read: readPlates });
