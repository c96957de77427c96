import type { OperationLine } from '../../db/operations.ts';
import { plateTurns } from '../../lib/dividing/differential.formulas.ts';
import { idlersFor, trainFrom } from '../../lib/dividing/idlers.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { headGearsDrawing } from '../../lib/drawing/gear-train-drawing.ts';
import type { Shown } from '../../lib/drawing/lettering.ts';
import type { IndexMove } from '../../lib/values/move.ts';
import { type Ratio, ratio } from '../../lib/values/ratio.ts';

/** Gears that turn the plate in a routing: what its operations keep of them. idlers: in words. plateTurns: for one turn of the spindle. */
export type Geared = {
  readonly says: string;
  readonly idlers: string;
  readonly plateTurns: Ratio;
  readonly plate: 'with' | 'against';
  readonly ifWrong: string;
  readonly ifLocked: string;
  readonly draw: (shown?: Shown) => Drawing;
};

const USUAL_IDLER = 24;

function wordsOf(operations: readonly OperationLine[], wanted: string): string {
  const live = operations.filter(({ struck_on }) => struck_on === null).flatMap(({ figures }) => figures);
  const shown = live.find(({ key }) => key === wanted)?.shown;
  if (!shown) return '';
  if ('words' in shown) return shown.words;
  return 'ratio' in shown ? (shown.ratio[1] === 1 ? `${shown.ratio[0]}` : shown.ratio.join('/')) : '';
}

export const headTurns = (operations: readonly OperationLine[]): number | null => {
  const need = operations.flatMap(({ needs }) => needs).find((one) => one.need.kind === 'head')?.need;
  return need?.kind === 'head' ? need.turns : null;
};

/** The gears of a routing that divides so; null for any other. While nobody has tried the head it is drawn with the fewest idlers. */
export function gearedBy(teeth: number, move: IndexMove, operations: readonly OperationLine[]): Geared | null {
  const says = wordsOf(operations, 'gears');
  const [train, turns] = [trainFrom(says), headTurns(operations)];
  if (!train || turns === null) return null;
  const g = plateTurns(turns, teeth, ratio(move.turns * move.circle + move.spaces, move.circle));
  const [plate, idlers] = [g[0] > 0 ? ('with' as const) : ('against' as const), wordsOf(operations, 'idlers')];
  const fewest = idlersFor({ plateTurns: g, train }, plate);
  const many = idlers === 'two idlers' ? 2 : idlers === 'one idler' ? 1 : idlers === 'no idler' ? 0 : fewest;
  return {
    ...{ says, idlers, plateTurns: g, plate, ifWrong: wordsOf(operations, 'ifWrong'), ifLocked: wordsOf(operations, 'ifLocked') },
    draw: (shown) => headGearsDrawing({ ...train, idlers: new Array<number>(many).fill(USUAL_IDLER), plate }, shown),
  };
}
