import type { OperationLine } from '../../db/operations.ts';
import type { WalkedMove } from '../../lib/dividing/index-table.ts';
import type { TableDial } from '../../lib/dividing/table-dial.formulas.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { printFigure } from '../../lib/figure/print-value.ts';
import { keptMove, nearestKept } from './passes.ts';
import { teethOf, type Work } from './work.ts';

/** How a wheel goes from tooth to tooth: by the pin of an index crank, or by the dial of a rotary table. */
export type Walk =
  | { readonly by: 'pin'; readonly move: WalkedMove }
  | { readonly by: 'dial'; readonly teeth: number; readonly dial: TableDial };
type Walked = Pick<Work, 'operations' | 'own' | 'part'>;

/** The dial that one operation is turned by, as it was put into what a line of it reads; null where it keeps none. */
function keptDial({ figures }: OperationLine): TableDial | null {
  const least = figures.find(({ key }) => key === 'least');
  const given = (symbol: string) => least?.figure.given.find((one) => one.symbol === symbol)?.value;
  const [turns, perTurn, vernier] = ['R', 'D', 'v'].map(given).flatMap((value) => (value && 'count' in value ? [value.count] : []));
  return turns && perTurn && vernier ? { turns, perTurn, vernier } : null;
}

/** The walk of a wheel, by what the operation asked for keeps; null while nothing divides it. */
export function walkOf({ operations, own, part }: Walked): Walk | null {
  const teeth = part.stored?.gear.teeth;
  return nearestKept(operations, own, (operation): Walk | null => {
    const dial = keptDial(operation);
    if (dial && teeth !== undefined) return { by: 'dial', teeth, dial };
    const move = keptMove(operation);
    return move ? { by: 'pin', move } : null;
  });
}

/** The same. Throws DomainError while nothing divides it. */
export function walkFor(work: Walked): Walk {
  teethOf(work);
  const walk = walkOf(work);
  if (walk) return walk;
  throw new DomainError({
    given: `${work.part.mark} has no circle to divide on yet.`,
    limit: 'An index sheet lists the holes of one circle, or the lines of a dial.',
    tryThis: 'Put an index plate that serves on record, then accept the figures of today on the routing.',
  });
}

/** "3 holes": how far back past the lash, where it has been measured; else ''. */
export function lashBack({ operations, own }: Pick<Work, 'operations' | 'own'>): string {
  const kept = nearestKept(operations, own ?? null, ({ figures }) => figures.find(({ key }) => key === 'lash') ?? null);
  if (!kept || !('count' in kept.figure.value)) return '';
  const { text, unit } = printFigure(kept.figure);
  return `${text} ${unit}`;
}
