import type { Figure, Given, Value } from '../figure/figure.ts';
import { angleGiven, pitchTerm } from '../gears/givens.ts';
import type { Tooth } from '../gears/tooth.ts';
import { checkedTooth } from '../gears/wheel.ts';
import { ofUnit } from '../values/length.ts';
import type { GearToCut } from './choice.ts';
import { virtualCount } from './form-errors.ts';

/** The tooth that a tool square to the teeth is shaped for: a helical wheel's at its virtual count. Throws DomainError as checkedTooth. */
export const toolTooth = (gear: GearToCut): Tooth => ({ ...checkedTooth({ ...gear, helix: null }), N: virtualCount(gear) });

/** The count that a tool goes by. */
export const countGiven = (gear: GearToCut): Given =>
  gear.helix
    ? { symbol: 'N', name: 'virtual teeth', value: { number: virtualCount(gear), unit: '', places: 6 }, from: 'worked out' }
    : { symbol: 'N', name: 'teeth', value: { count: gear.teeth }, from: 'typed' };

/** A size that was worked out before, with decimals enough to go on from the print. */
export const sizeGiven = (symbol: string, name: string, size: number, from: Given['from'] = 'worked out'): Given => ({
  symbol,
  name,
  value: { number: size, unit: '', places: 7 },
  from,
});

export const toothGivens = (gear: GearToCut): readonly Given[] => [pitchTerm(gear.pitch).given, countGiven(gear), angleGiven(gear)];

type Said = Pick<Figure, 'name' | 'symbol' | 'formula' | 'source' | 'given'> & { readonly note?: string };

/** A length of a tool with its working. size: in the tooth's own unit. */
export const toolFigure = ({ unit }: Tooth, size: number, said: Said): Figure => ({
  ...said,
  unit,
  value: { length: ofUnit(size, unit) } satisfies Value,
});
