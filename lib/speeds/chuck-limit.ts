import type { Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Chuck } from '../tooling/tooling.ts';
import { type LengthUnit, toInches } from '../values/length.ts';
import { IRON_RIM_FT_PER_MIN, METRES_PER_FOOT, OUT_OF_BALANCE, speedFromFeet } from './speed.formulas.ts';

type Body = Pick<Chuck, 'name' | 'diameter' | 'topSpeedRpm'>;

/** Rev/min that a chuck allows; Infinity without a chuck. Halved with the work off-centre or the jaws out past the body. */
export function chuckLimit(chuck: Body | null, offCentre: boolean): number {
  if (!chuck) return Number.POSITIVE_INFINITY;
  const whole = chuck.topSpeedRpm ?? speedFromFeet(IRON_RIM_FT_PER_MIN, toInches(chuck.diameter));
  return offCentre ? whole / OUT_OF_BALANCE : whole;
}

const half: Given = { symbol: 'k', name: 'work off-centre or jaws out', value: { count: OUT_OF_BALANCE }, from: 'guess' };

/** The limit with its working: the maker's speed, or the rim speed of an iron body of unknown make. */
export function chuckLimitFigure(chuck: Body | null, offCentre: boolean, unit: LengthUnit): Figure {
  const base = { name: 'Highest speed of the chuck', symbol: 'nc', unit };
  if (!chuck) return { ...base, value: { words: 'no chuck' }, formula: '', source: 'no chuck in this set-up', given: [] };
  const value = { number: chuckLimit(chuck, offCentre), unit: 'rev/min', places: 0 };
  if (chuck.topSpeedRpm !== null) {
    const maker: Given = {
      symbol: 'nm',
      name: "maker's limit",
      value: { number: chuck.topSpeedRpm, unit: 'rev/min', places: 1 },
      from: 'typed',
    };
    return {
      ...base,
      value,
      formula: offCentre ? 'nm ÷ k' : 'nm',
      source: "the chuck's maker",
      given: offCentre ? [maker, half] : [maker],
    };
  }
  const rim = unit === 'in' ? IRON_RIM_FT_PER_MIN : IRON_RIM_FT_PER_MIN * METRES_PER_FOOT;
  return {
    ...base,
    value,
    formula: `${unit === 'in' ? 12 : 1000} × v ÷ (${offCentre ? 'k × ' : ''}π × C)`,
    source: 'judgement, no source: an iron body of unknown make is held to 2,500 ft/min at the rim; the maker’s limit stands above it',
    given: [
      {
        symbol: 'v',
        name: 'rim speed of an iron body',
        value: { number: rim, unit: unit === 'in' ? 'ft/min' : 'm/min', places: 0 },
        from: 'guess',
      },
      givenLength('C', 'diameter of the chuck', chuck.diameter, unit, 'typed'),
      ...(offCentre ? [half] : []),
    ],
  };
}
