import { type DialSetting, dialSetting, type TableDial, turnsAt } from './table-dial.formulas.ts';

/** One line of the tick sheet of a table that is divided by its dial. tooth: 1 to N, and N + 1 for the first again. */
export type DialPlace = DialSetting & { readonly tooth: number; readonly backAtFirst: boolean };

/** Where the handwheel stands for tooth n of N, counted from zero at tooth 1. */
export const dialPlace = (n: number, N: number, dial: TableDial): DialPlace => ({
  ...dialSetting(turnsAt(n, dial.turns, N), dial),
  tooth: n,
  backAtFirst: n === N + 1,
});

/** Every tooth, and the first once more, for which the handwheel has gone its whole turns and stands at 0. */
export const dialPlaces = (N: number, dial: TableDial): DialPlace[] => Array.from({ length: N + 1 }, (_, at) => dialPlace(at + 1, N, dial));

/** "line 70, vernier 7". */
export const lineWords = ({ line, part }: Pick<DialPlace, 'line' | 'part'>, { vernier }: Pick<TableDial, 'vernier'>): string =>
  vernier === 1 ? `line ${line}` : `line ${line}, vernier ${part}`;

/** "5 turns, line 70, vernier 7". */
export const dialPlaceWords = (place: DialPlace, dial: TableDial): string =>
  `${place.move.turns} ${place.move.turns === 1 ? 'turn' : 'turns'}, ${lineWords(place, dial)}`;

/** Where the table itself then stands, in degrees. */
export const tableAngle = ({ move }: Pick<DialPlace, 'move'>, { turns, perTurn }: TableDial): number =>
  (360 / turns) * (move.turns + move.divisions / perTurn);
