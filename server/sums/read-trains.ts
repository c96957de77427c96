import { readDrawer } from '../../lib/blanks/read-drawer.ts';
import type { Train } from '../../lib/trains/nearest.ts';
import { readWanted, type Wanted } from '../../lib/trains/wanted.ts';
import type { Ratio } from '../../lib/values/ratio.ts';
import { quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { type Field, readField } from '../forms/field.ts';
import { readList } from './asks.ts';

type Asked = { readonly label: string; readonly hint: string };

/** A thread, lead or feed. */
export const threadField = (asked: Asked): Field<Wanted> => readField({ ...asked, read: readWanted });
/** A list of them, commas or lines between. */
export const threadsField = (asked: Asked): Field<readonly Wanted[]> =>
  readField({ ...asked, read: (text) => readList(text, 'the list', readWanted, /[,;\n]/) });

function readScrew(text: string): Read<Ratio> {
  const found = readWanted(text);
  if (!found.ok) return found;
  return found.value.pi === 1 ? unread(`${quoted(text)}: a lead screw is typed as 8 TPI, 5 mm or 0.25 in.`) : read(found.value.size);
}
/** The lead of a screw, or what equal wheels cut, in inches. */
export const screwField = (asked: Asked): Field<Ratio> => readField({ ...asked, read: readScrew });

/** So many that a drawer far too large is told so in wheels, not in letters. */
const MOST_LETTERS = 10_000;

function readWheels(text: string): Read<readonly number[]> {
  if (text.length > MOST_LETTERS) return unread(`${text.length} letters are too many for a drawer: at most ${MOST_LETTERS}.`);
  const { counts, problems } = readDrawer(text);
  return problems.length > 0 ? unread(problems.slice(0, 3).join(' ')) : read(counts);
}
/** All wheels that lie there, up to what lib takes; an empty drawer is a drawer too. */
export const trainDrawerField = (asked: Asked): Field<readonly number[]> => readField({ ...asked, read: readWheels });

function readMounted(text: string): Read<Train | null> {
  if (text.trim() === '') return read(null);
  const sides = text.split(/[/÷]/).map((side) => side.split(/[\s,×x*]+/).filter((piece) => piece !== ''));
  const [drivers, driven] = sides;
  const whole = sides.flat().every((piece) => /^\d{1,3}$/.test(piece) && Number(piece) >= 4);
  if (sides.length !== 2 || !drivers || !driven || !whole || drivers.length !== driven.length || drivers.length < 1 || drivers.length > 3)
    return unread(`${quoted(text)} could not be read. Type the train on the machine, drivers first, as 40 × 30 / 60 × 75.`);
  return read({ drivers: drivers.map(Number), driven: driven.map(Number) });
}
/** The train that is on the machine now. */
export const mountedField: Field<Train | null> = {
  ...readField({ label: 'On the machine now', hint: 'Drivers, then driven: 40 × 30 / 60 × 75', read: readMounted }),
  optional: true,
};
