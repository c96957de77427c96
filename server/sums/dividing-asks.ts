import type { OneIdler } from '../../lib/dividing/idlers.ts';
import type { DividingTools, Mounted } from '../../lib/dividing/ways.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { type Read, read, readCount } from '../../lib/values/read.ts';
import { choiceField, countField, type Field, optional, readField } from '../forms/field.ts';
import { readList } from './asks.ts';
import { wheelsField } from './read-wheels.ts';

export const divisionsUpTo = (most: number) =>
  countField({ label: 'Divisions', hint: 'Teeth or spaces all round', limits: { least: 2, most } });
export const headField = countField({
  label: 'Turns of the crank for one of the spindle',
  hint: '40 is usual; rotary tables have 60, 72 or 90',
  limits: { least: 1, most: 1000 },
  unit: 'turns',
});
export const ABOUT = { head: ['turns'], jobs: ['counts'] } as const;

const readCircles = (text: string): Read<readonly number[]> =>
  readList(text, 'the circles', (piece) => readCount(piece, 'a circle', { least: 2, most: 1000 }), /[,;\s]+/);

/** Circles that the back pin reaches; 'all' while it has not been tried. */
export type BackPin = 'all' | readonly number[];
export const backPinField: Field<BackPin | null> = optional(
  readField<BackPin>({
    label: 'Back pin reaches',
    hint: 'Empty: no back pin. Circles as 20 33 49; “all” if not tried',
    read: (text) => (text.trim().toLowerCase() === 'all' ? read('all') : readCircles(text)),
  }),
);
export const pinOf = (pin: BackPin | null) => ({ backPin: pin !== null, reached: pin === null || pin === 'all' ? null : pin });

export const directField = optional(
  readField({ label: 'Holes of the plate on the spindle', hint: 'For direct dividing, as 24. Empty: none', read: readCircles }),
);
export const gearsField = wheelsField({ label: 'Change gears of the head', hint: 'As 24x2, 28, 32, 40. Empty: none' });

const IDLER = ['not tried', 'with', 'against'] as const;
export const oneIdlerField = choiceField({
  label: 'Simple train, one idler: the plate turns',
  hint: 'A fact of this head, seen from the crank',
  choices: IDLER.map((word) => [word, word === 'not tried' ? word : `${word} the crank`] as const),
});
export const oneIdlerOf = (word: (typeof IDLER)[number]): OneIdler => (word === 'not tried' ? null : word);

export const onAsks = {
  onPlate: optional(
    countField({
      label: 'Plate on the head now',
      hint: 'First, second or third of those above. Empty: none',
      limits: { least: 1, most: 12 },
    }),
  ),
  onCircle: optional(countField({ label: 'Circle the pin is in now', limits: { least: 2, most: 1000 }, unit: 'holes' })),
  onGears: wheelsField({ label: 'Gears on the head now', hint: 'Empty: none' }),
};
type On = { readonly onPlate: number | null; readonly onCircle: number | null; readonly onGears: readonly number[] };

/** What stands on the head: the side is the one that has the circle. */
export function mountedOf({ onPlate, onCircle, onGears }: On, plates: readonly Plate[]): Pick<DividingTools, 'mounted'> {
  if (onPlate === null) return {};
  const plate = plates[onPlate - 1];
  if (!plate)
    throw new DomainError({
      given: `Plate ${onPlate} was said to be on the head.`,
      limit: `There are ${plates.length} plates.`,
      tryThis: 'Count them in the line above.',
      about: ['onPlate'],
    });
  const side = Math.max(
    0,
    plate.sides.findIndex((circles) => onCircle !== null && circles.includes(onCircle)),
  );
  const mounted: Mounted = { plateId: plate.id, side, gears: onGears, ...(onCircle === null ? {} : { circle: onCircle }) };
  return { mounted };
}
