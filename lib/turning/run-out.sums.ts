import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, Given } from '../figure/figure.ts';
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

/** What a run-out left does to the finished gear. Throws DomainError for a reading below 0 or an angle outside 0 to 45 degrees. */
export function runOutEffects(asked: RunOutAsked): Answer<RunOutKey> {
  const { unit = 'in', runOut, angle } = asked;
  if (!(runOut >= 0 && angle > 0 && toDegrees(angle) < 45))
    throw new DomainError({
      given: `A reading of ${printLength(runOut, { unit, places: 4 })} ${unit} at ${toDegrees(angle)}°.`,
      limit: 'A full indicator reading is 0 or more, a pressure angle between 0 and 45 degrees.',
      tryThis: 'Take highest less lowest over one full turn.',
      about: ['runOut', 'angle'],
    });
  const [t, a] = [inUnit(runOut, unit), toRadians(angle)];
  const reading = givenLength('t', 'full indicator reading', runOut, unit, 'measured');
  const lean: Given = { symbol: 'a', name: 'pressure angle', value: { angle }, from: 'typed' };
  const figure = (name: string, symbol: string, size: number, formula: string, given: Given[], source: string, note: string): Figure => ({
    name,
    symbol,
    value: { length: ofUnit(size, unit) },
    unit,
    formula,
    given,
    source,
    note,
  });
  const figures: Record<RunOutKey, Figure> = {
    eccentricity: figure(
      'eccentricity',
      'e',
      eccentricity(t),
      't ÷ 2',
      [reading],
      'derived: the extremes lie e to either side',
      'Half the reading.',
    ),
    lashSwing: figure(
      'lash swings, tightest to loosest',
      'j',
      lashSwing(t, a),
      '2 × t × tan(a)',
      [reading, lean],
      'derived: 2 tan a of circular lash for each unit of centre distance, over a full swing of t',
      'Along the pitch circle, once a turn. Set the lash at the tightest spot of a full round.',
    ),
    divisionWander: figure(
      'division wanders',
      'w',
      divisionWander(t),
      't',
      [reading],
      'derived: e one way and e the other',
      'Middles of the teeth, peak to peak along the pitch circle: the ratio drifts to and fro once a turn.',
    ),
    flankWander: figure(
      'one flank wanders',
      'wf',
      flankWander(t, a),
      't ÷ cos(a)',
      [reading, lean],
      'derived: a leaning flank adds the radial shift × tan a',
      'What the mate feels, peak to peak along the pitch circle.',
    ),
  };
  const limit = asked.limit ?? inches(PIN_RUN_OUT_IN);
  const words = `${printLength(limit, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  const cautions =
    runOut > limit
      ? [
          {
            name: 'run-out over the limit',
            says: `Over ${words}: true the blank before cutting; after cutting it cannot be trued.`,
            weight: 'beware' as const,
            about: 'eccentricity',
          },
        ]
      : [];
  return { figures, cautions, says: SEEN };
}
