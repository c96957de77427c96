import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { depthFromTouch } from '../gears/depth.formulas.ts';
import type { Dial } from '../tooling/tooling.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { dialFigure } from './dial.sums.ts';

/** stampedDepth: on the cutter, null if none. systemDepth: whole depth of the gear's own tooth system. Diameters of the blank. */
export type DepthAsked = {
  readonly stampedDepth: Length | null;
  readonly systemDepth: Length;
  readonly nominalOutside: Length;
  readonly measuredOutside: Length;
  readonly paper?: Length | null;
  readonly dial?: Dial | null;
  readonly unit?: LengthUnit;
};

/** Stamp and system farther apart than this is asked about: judgement. */
export const STAMP_DIFFERS_IN = 0.002;

function cautionsOf({ stampedDepth, systemDepth }: DepthAsked, unit: LengthUnit): Caution[] {
  if (stampedDepth === null || Math.abs(stampedDepth - systemDepth) <= inches(STAMP_DIFFERS_IN)) return [];
  const say = (length: Length) => `${printLength(length, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  const says = `The cutter is stamped ${say(stampedDepth)}, the tooth system asks for ${say(systemDepth)}. Which tooth is it? The stamp is used here.`;
  return [{ name: 'stamp and system differ', says, weight: 'beware', about: 'depth' }];
}

/**
 * Depth to dial from touching the blank, corrected for what the blank measures, and the dial for it.
 * Throws DomainError when nothing is left to cut or the blank is nowhere near its size.
 */
export function depthToDial(asked: DepthAsked): Answer<'depth' | 'move'> {
  const unit = asked.unit ?? asked.dial?.unit ?? 'in';
  const paper = asked.paper ?? inches(0);
  const full = asked.stampedDepth ?? asked.systemDepth;
  const size = (length: Length) => inUnit(length, unit);
  const length = ofUnit(depthFromTouch(size(full), size(asked.nominalOutside), size(asked.measuredOutside), size(paper)), unit);
  if (!(full > 0 && length > 0 && asked.measuredOutside > 0 && Math.abs(asked.nominalOutside - asked.measuredOutside) < full))
    throw new DomainError({
      given: `The blank measures ${printLength(asked.measuredOutside, { unit, places: 4 })} ${unit} for ${printLength(asked.nominalOutside, { unit, places: 4 })} ${unit}.`,
      limit: 'It may differ by less than one depth of tooth, and something has to be left to cut.',
      tryThis: 'Measure the outside again, or check the teeth and pitch.',
      about: ['measuredOutside', 'nominalOutside'],
    });
  const stamped = asked.stampedDepth !== null;
  const depth: Figure = {
    name: 'depth from touching the blank',
    symbol: 'H',
    value: { length },
    unit,
    formula: 'h − (Do − Dm) ÷ 2 + c',
    source: 'derived: the root stands as far from the centre whatever the blank measures',
    given: [
      givenLength('h', stamped ? 'depth stamped on the cutter' : 'whole depth of the system', full, unit, stamped ? 'typed' : 'worked out'),
      givenLength('Do', 'outside of the gear', asked.nominalOutside, unit, 'worked out'),
      givenLength('Dm', 'outside as measured', asked.measuredOutside, unit, 'measured'),
      givenLength('c', 'paper between', paper, unit, 'typed'),
    ],
  };
  const none: Figure = {
    name: 'dial from touching',
    symbol: 'm',
    value: { words: 'dial not known' },
    unit,
    formula: '',
    source: 'the dial of the machine',
    given: [],
  };
  const move = asked.dial ? dialFigure({ move: length, counted: 'travel', dial: asked.dial }) : none;
  return { figures: { depth, move }, cautions: cautionsOf(asked, unit) };
}
