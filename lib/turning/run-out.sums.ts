import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { type Angle, toDegrees, toRadians } from '../values/angle.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { PIN_RUN_OUT_IN } from './limits.data.ts';
import { divisionWander, eccentricity, flankWander, lashSwing } from './run-out.formulas.ts';

/** runOut: the full indicator reading of the teeth (or of the blank that they are cut on) against the bore. */
export type RunOutAsked = { readonly runOut: Length; readonly angle: Angle; readonly limit?: Length | null; readonly unit?: LengthUnit };

export type RunOutKey = 'eccentricity' | 'lashSwing' | 'divisionWander' | 'flankWander';

const SEEN = 'Span and pins compare flank with flank and never see the bore: read a pin in six spaces under an indicator, on the mandrel.';

function checked({ runOut, angle, unit = 'in' }: RunOutAsked): void {
  if (runOut >= 0 && angle > 0 && toDegrees(angle) < 45) return;
  throw new DomainError({
    given: `A reading of ${printLength(runOut, { unit, places: 4 })} ${unit} at ${toDegrees(angle)}°.`,
    limit: 'A full indicator reading is 0 or more, a pressure angle between 0 and 45 degrees.',
    tryThis: 'Take highest less lowest over one full turn.',
    about: ['runOut', 'angle'],
  });
}

type Effect = Pick<Figure, 'name' | 'symbol' | 'formula' | 'source' | 'note'>;

const EFFECTS: Readonly<Record<RunOutKey, Effect>> = {
  eccentricity: {
    name: 'Eccentricity',
    symbol: 'e',
    formula: 't ÷ 2',
    source: 'derived: the extremes lie e to either side',
    note: 'Half the reading.',
  },
  lashSwing: {
    name: 'Lash swings, tightest to loosest',
    symbol: 'j',
    formula: '2 × t × tan(a)',
    source: 'derived: 2 tan a of circular lash for each unit of centre distance, over a full swing of t',
    note: 'Along the pitch circle, once a turn. Set the lash at the tightest spot of a full round.',
  },
  divisionWander: {
    name: 'Division wanders',
    symbol: 'w',
    formula: 't',
    source: 'derived: e one way and e the other',
    note: 'Middles of the teeth, peak to peak along the pitch circle: the ratio drifts to and fro once a turn.',
  },
  flankWander: {
    name: 'One flank wanders',
    symbol: 'wf',
    formula: 't ÷ cos(a)',
    source: 'derived: a leaning flank adds the radial shift × tan a',
    note: 'What the mate feels, peak to peak along the pitch circle.',
  },
};

function overLimit(runOut: Length, limit: Length, unit: LengthUnit): Caution[] {
  if (runOut <= limit) return [];
  const words = `${printLength(limit, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  const says = `Over ${words}: true the blank before cutting; after cutting it cannot be trued.`;
  return [{ name: 'run-out over the limit', says, weight: 'beware', about: 'eccentricity' }];
}

/** What a run-out left does to the finished gear. Throws DomainError for a reading below 0 or an angle outside 0 to 45 degrees. */
export function runOutEffects(asked: RunOutAsked): Answer<RunOutKey> {
  checked(asked);
  const { unit = 'in', runOut, angle } = asked;
  const [t, a] = [inUnit(runOut, unit), toRadians(angle)];
  const reading = givenLength('t', 'full indicator reading', runOut, unit, 'measured');
  const lean: Given = { symbol: 'a', name: 'pressure angle', value: { angle }, from: 'typed' };
  const figure = (key: RunOutKey, size: number, given: Given[]): Figure => ({
    ...EFFECTS[key],
    value: { length: ofUnit(size, unit) },
    unit,
    given,
  });
  const figures: Record<RunOutKey, Figure> = {
    eccentricity: figure('eccentricity', eccentricity(t), [reading]),
    lashSwing: figure('lashSwing', lashSwing(t, a), [reading, lean]),
    divisionWander: figure('divisionWander', divisionWander(t), [reading]),
    flankWander: figure('flankWander', flankWander(t, a), [reading, lean]),
  };
  return { figures, cautions: overLimit(runOut, asked.limit ?? inches(PIN_RUN_OUT_IN), unit), says: SEEN };
}
