import { inMinutes } from '../../lib/dividing/angular.sums.ts';
import { dialPlace, lineWords, tableAngle } from '../../lib/dividing/dial-places.ts';
import { backHoleAt, type WalkedMove } from '../../lib/dividing/index-table.ts';
import { landingHole } from '../../lib/dividing/plain.formulas.ts';
import type { TableDial } from '../../lib/dividing/table-dial.formulas.ts';
import { secondsOff } from '../../lib/dividing/table-dial.sums.ts';
import { printMove } from '../../lib/figure/print-value.ts';
import { MINUS, printShort } from '../../lib/values/print.ts';
import type { Mark } from './passes.ts';
import type { Walk } from './walk.ts';

type Dialled = Extract<Walk, { by: 'dial' }>;
const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

/** With two pins both moves, the crank alone and then the plate with it. */
const bothMoves = (move: WalkedMove, { spaces, circle }: NonNullable<WalkedMove['back']>): string =>
  `Crank ${printMove(move)}. Then lift the back pin: plate and crank together ${printMove({ turns: 0, spaces: Math.abs(spaces), circle })} ${spaces > 0 ? 'the same way' : 'back'}.`;

/** How the pin comes to the hole of this tooth. */
function pinComes({ mark }: Mark, move: WalkedMove): string {
  if (mark === 1) return move.back ? 'Both pins stand in hole 0. Do not crank yet.' : 'The pin stands in hole 0. Do not crank yet.';
  if (move.back) return bothMoves(move, move.back);
  if (move.spaces === 0) return `Crank ${printMove(move)}: the pin drops into the hole it came from.`;
  return `Crank ${printMove(move)} from hole ${landingHole(mark - 1, move)}.`;
}

function pinLands({ mark }: Mark, move: WalkedMove): string {
  const { turns } = move;
  const turned = mark === 1 || turns === 0 ? '' : `${counted(turns, 'turn')}, `;
  const { backHole } = backHoleAt(mark, move);
  const hole = landingHole(mark, move);
  return backHole === undefined ? `${turned}hole ${hole}` : `${turned}hole ${hole}, back pin ${backHole}`;
}

/** Each round is counted from its own zero: the table stands at 0 again for tooth 1. */
const placeOf = ({ tooth, again }: Mark, { teeth, dial }: Dialled) => dialPlace(again ? teeth + 1 : tooth, teeth, dial);

/** "0.9″ too far", "exact". */
function offWords(seconds: number): string {
  if (seconds === 0) return 'exact';
  return `${printShort(Math.abs(seconds), 1)}″ ${seconds > 0 ? 'too far' : 'short'}`;
}

/** "+0.9", "−1.2", "0". */
export const offShort = (seconds: number): string =>
  seconds === 0 ? '0' : `${seconds > 0 ? '+' : MINUS}${printShort(Math.abs(seconds), 1)}`;

function dialComes(mark: Mark, walk: Dialled): string {
  const place = placeOf(mark, walk);
  const table = `The table stands at ${inMinutes(tableAngle(place, walk.dial))}; ${offWords(secondsOff(place, walk.dial))}.`;
  if (mark.tooth === 1 && !mark.again)
    return mark.mark === 1 ? 'Lash taken up, dial at 0. Do not turn yet.' : 'Once round: the dial stands at 0 again.';
  const before = dialPlace(place.tooth - 1, walk.teeth, walk.dial);
  const passes = place.move.turns - before.move.turns;
  return `From ${lineWords(before, walk.dial)}: the 0 of the dial passes ${passes === 1 ? 'once' : `${passes} times`}. ${table}`;
}

/** How crank or handwheel comes to this tooth. */
export const comesTo = (mark: Mark, walk: Walk): string => (walk.by === 'pin' ? pinComes(mark, walk.move) : dialComes(mark, walk));

/** Where it stands then. */
export function landsIn(mark: Mark, walk: Walk): string {
  if (walk.by === 'pin') return pinLands(mark, walk.move);
  const place = placeOf(mark, walk);
  return `${counted(place.move.turns, 'turn')}, ${lineWords(place, walk.dial)}`;
}

/** A line of the dial as it is read, in one column of a sheet. */
export const lineShort = ({ line, part }: { readonly line: number; readonly part: number }, { vernier }: TableDial): string =>
  vernier === 1 ? String(line) : `${line} · ${part}`;
