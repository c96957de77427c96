import { type IndexRow, indexRows } from '../dividing/index-table.ts';
import type { Figure, Value } from '../figure/figure.ts';
import type { IndexMove } from '../values/move.ts';
import type { PlannedOperation } from './operation.ts';

const moveOf = (value: Value | undefined): IndexMove | null => (value && 'move' in value ? value.move : null);

/** The crank's move of an operation; null where it has none, or no circle serves. */
const moveIn = ({ figures }: { readonly figures: Readonly<Record<string, Figure>> }): IndexMove | null => moveOf(figures['crank']?.value);

/** The lines of the tick sheet of a gear: every tooth and the first once more, with the hole to land in. None without a circle. */
export function indexSheet(teeth: number, operations: readonly PlannedOperation[]): readonly IndexRow[] {
  const plate = operations.find(({ key }) => key === 'plate');
  const move = plate ? moveIn(plate) : null;
  return move ? indexRows(teeth, move) : [];
}
