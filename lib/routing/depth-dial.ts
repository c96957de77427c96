import { LASH_UNKNOWN } from '../dividing/lash.ts';
import type { Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Dial } from '../tooling/tooling.ts';
import { dialFigure } from '../turning/dial.sums.ts';
import type { Job } from './job.ts';
import type { Standing } from './readings.ts';
import { notKnown } from './written.ts';

/** Divisions that a dial goes back before it comes on again: one more than its lash takes. None while nobody has measured it. */
const divisionsBack = ({ lash, division }: Dial): number | null => (lash === undefined ? null : Math.floor(lash / division) + 1);

/**
 * How far back past the lash of a feed screw, in divisions of its dial.
 *   n = floor(b ÷ d) + 1
 * b: lash, as the dial reads; d: one division. Source: derived. Example: 0.012 in by 0.001 in: 13.
 */
export function dialLash(dial: Dial | null): Record<string, Figure> {
  const back = dial ? divisionsBack(dial) : null;
  if (!dial || dial.lash === undefined || back === null) return {};
  const figure: Figure = {
    name: 'Lash of the dial: overshot, go back by',
    symbol: 'n',
    value: { count: back, unit: 'divisions' },
    unit: dial.unit,
    formula: 'floor(b ÷ d) + 1',
    source: 'derived: one division more than the lash of the screw takes',
    given: [
      givenLength('b', 'lash of the screw', dial.lash, dial.unit, 'measured'),
      givenLength('d', 'one division', dial.division, dial.unit, 'table'),
    ],
    note: 'Then in again to the line.',
  };
  return { dialLash: figure };
}

/** From where the dial is counted, and how far back past the lash; what it is by, where it has been measured. */
function fromTouching(dial: Dial): string {
  const back = divisionsBack(dial);
  return `Counted going in, from 0 where it just took the paper; overshot: back ${back === null ? LASH_UNKNOWN : `${back} divisions or more`} and in again.`;
}

/** A movement of the knee, or whatever feeds the depth, in that dial's own unit. */
export function depthDial(job: Job, { length, from }: Standing, name: string): Figure {
  const dial = job.shop.mill?.depthDial;
  if (!dial) return notKnown(name, 'm', 'dial not known', job.unit);
  return { ...dialFigure({ move: length, counted: 'travel', dial, from }), name, note: fromTouching(dial) };
}
