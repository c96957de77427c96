import type { OperationLine } from '../../db/operations.ts';
import { plateTurns } from '../../lib/dividing/differential.formulas.ts';
import { idlersFor, plateWay, trainFrom } from '../../lib/dividing/idlers.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { headGearsDrawing } from '../../lib/drawing/gear-train-drawing.ts';
import type { Shown } from '../../lib/drawing/lettering.ts';
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

/** R, N and the move as they were put into the figure of the plate's turns. */
function plateTurnsOf(operations: readonly OperationLine[]): Ratio | null {
  const stored = operations.flatMap(({ figures }) => figures).find(({ key }) => key === 'plateTurns');
  const given = (symbol: string) => stored?.figure.given.find((one) => one.symbol === symbol)?.value;
  const counts = ['R', 'N', 'h', 'c'].map(given).flatMap((value) => (value && 'count' in value ? [value.count] : []));
  const [R, N, holes, circle] = counts;
  return R && N && holes && circle ? plateTurns(R, N, ratio(holes, circle)) : null;
}

const MANY: Readonly<Record<string, number>> = { 'no idler': 0, 'one idler': 1, 'two idlers': 2 };

/** The gears of a routing that divides so; null for any other. While nobody has tried the head it is drawn with the fewest idlers. */
export function gearedBy(operations: readonly OperationLine[]): Geared | null {
  const says = wordsOf(operations, 'gears');
  const [train, g] = [trainFrom(says), plateTurnsOf(operations)];
  if (!train || !g) return null;
  const [plate, idlers] = [plateWay({ plateTurns: g }), wordsOf(operations, 'idlers')];
  const many = MANY[idlers] ?? idlersFor({ plateTurns: g, train }, plate);
  return {
    ...{ says, idlers, plateTurns: g, plate, ifWrong: wordsOf(operations, 'ifWrong'), ifLocked: wordsOf(operations, 'ifLocked') },
    draw: (shown) => headGearsDrawing({ ...train, idlers: new Array<number>(many).fill(USUAL_IDLER), plate }, shown),
  };
}
