import type { OperationLine } from '../../db/operations.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import type { DrawingView } from '../page.ts';
import { gearedBy } from '../sheets/geared.ts';

/** Gears that turn the plate of the dividing head, drawn; null where these operations name none. */
export function gearsView(lines: readonly OperationLine[]): DrawingView | null {
  const geared = gearedBy(lines);
  return geared && { ...drawingView(geared.draw()), says: `${geared.says}; ${geared.idlers}. The plate turns ${geared.plate} the crank.` };
}
