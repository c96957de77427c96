import type { TrainShaft } from '../trains/train-shaft.ts';
import type { Drawing } from './drawing.ts';
import type { Shown } from './lettering.ts';
import { trainDrawing } from './train-drawing.ts';
import { wheelsOnShafts } from './train-layout.ts';

/**
 * Gears from a dividing head's spindle to its plate. idlers: teeth of each, in their order, after the spindle; any size that reaches does.
 * plate: which way it has to turn, seen from the crank.
 */
export type HeadGears = {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  readonly idlers: readonly number[];
  readonly plate: 'with' | 'against';
};

const MODULE_MM = 2;

function shaftsOf({ drivers, driven, idlers }: HeadGears): TrainShaft[] {
  const [spindle = 0, onStud] = drivers;
  const [first = 0, second] = driven;
  const between = idlers.map((teeth, at): TrainShaft => ({ name: `idler ${at + 1}`, driven: teeth, driver: teeth, idler: true }));
  const start: TrainShaft = { name: 'spindle', driven: null, driver: spindle };
  if (onStud === undefined || second === undefined) return [start, ...between, { name: 'plate', driven: first, driver: null }];
  return [start, ...between, { name: 'stud', driven: first, driver: onStud }, { name: 'plate', driven: second, driver: null }];
}

/** Which gear is on which stud, with the way each turns. */
export function headGearsDrawing(gears: HeadGears, shown?: Shown): Drawing {
  const drawing = trainDrawing(wheelsOnShafts(shaftsOf(gears), { moduleMm: MODULE_MM }), {
    title: 'Gears from the spindle to the plate',
    moduleMm: MODULE_MM,
    ...(shown ? { shown } : {}),
  });
  return { ...drawing, describes: `${drawing.describes} The plate turns ${gears.plate} the crank.` };
}
