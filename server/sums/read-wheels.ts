import { readDrawer } from '../../lib/blanks/read-drawer.ts';
import { quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { type Field, readField } from '../forms/field.ts';

const MOST_WHEELS = 60;
/** So many that a drawer far too large is told so in wheels, not in letters. */
const MOST_LETTERS = 10_000;

/** A drawer as people write it, held to what a sum can count. */
function readWheels(text: string): Read<readonly number[]> {
  if (text.length > MOST_LETTERS) return unread(`${text.length} letters are too many for a drawer: at most ${MOST_LETTERS}.`);
  const { counts, problems } = readDrawer(text);
  if (problems.length > 0) return unread(problems.slice(0, 3).join(' '));
  if (counts.length > MOST_WHEELS)
    return unread(`${counts.length} wheels: at most ${MOST_WHEELS} can be counted at once. Leave out those that are of no use here.`);
  return read(counts);
}

type Asked = { readonly label: string; readonly hint?: string };

/** Wheels in one line: 19x2, 22, 25-31 odd. An empty drawer is a drawer too. */
export const wheelsField = ({ label, hint = 'As 19x2, 22, 25-31 odd, 34' }: Asked): Field<readonly number[]> =>
  readField({ label, hint, read: readWheels });

/** The same where at least one has to be there. */
export const someWheelsField = (asked: Asked): Field<readonly number[]> => {
  const field = wheelsField(asked);
  return {
    ...field,
    read: (text) => (text.trim() === '' ? unread('This box is empty. Type the wheels as 19x2, 22, 25-31 odd.') : field.read(text)),
  };
};

/** "22 from 31": a wheel to make, and the spare that is cut up for it. */
export type Recut = { readonly make: number; readonly from: number };

function readRecut(piece: string): Read<Recut> {
  const found = /^(\d{1,3}) from (\d{1,3})$/i.exec(piece.trim().replace(/\s+/g, ' '));
  return found ? read({ make: Number(found[1]), from: Number(found[2]) }) : unread(`${quoted(piece)} could not be read. Type 22 from 31.`);
}

const MOST_RECUTS = 20;

/** Recuts that are planned, commas between; an empty box is none. */
export const recutsField = (asked: { readonly label: string; readonly hint: string }): Field<readonly Recut[]> => ({
  ...readField({
    ...asked,
    read: (text) => {
      if (text.length > MOST_LETTERS) return unread(`${text.length} letters are too many: at most ${MOST_LETTERS}.`);
      const pieces = text.split(/[,;\n]/).filter((piece) => piece.trim() !== '');
      if (pieces.length > MOST_RECUTS) return unread(`${pieces.length} are too many: at most ${MOST_RECUTS}.`);
      const each = pieces.map(readRecut);
      const wrong = each.find((one) => !one.ok);
      if (wrong && !wrong.ok) return wrong;
      return read(each.flatMap((one) => (one.ok ? [one.value] : [])));
    },
  }),
  optional: true,
});
