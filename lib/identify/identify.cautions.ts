import type { Caution } from '../figure/figure.ts';
import type { Found, Identified } from './identify.ts';
import type { MeasuredWheel } from './readings.ts';

/** From here on the outside is taken to have been turned down (m). */
const TURNED_M = 0.1;
const WORN_M = 0.04;
const DOUBTFUL = 0.2;

const note = (name: string, says: string, weight: Caution['weight'] = 'note', about?: string): Caution => ({
  name,
  says,
  weight,
  ...(about ? { about } : {}),
});

function ofWear({ candidate, fit }: Found): readonly Caution[] {
  const turned =
    fit.tip > TURNED_M * candidate.m
      ? [
          note(
            'Outside short',
            'If it is this, the outside was turned down or never came up to size: do not copy it.',
            'beware',
            'likeliest',
          ),
        ]
      : [];
  const worn =
    fit.wear > WORN_M * candidate.m
      ? [
          note(
            'Worn',
            'The teeth are thin. Read the spans again on the least worn places, burrs stoned off, at three places.',
            'beware',
            'wear',
          ),
        ]
      : [];
  return [...turned, ...worn];
}

function ofSet({ strangers }: Identified, wheels: readonly MeasuredWheel[]): readonly Caution[] {
  if (wheels.length < 2)
    return [note('One wheel', 'One odd replacement misleads a whole job: measure a second wheel of the set before money is spent.')];
  const odd = wheels.filter((_, i) => (strangers[i] ?? 0) > DOUBTFUL).map(({ teeth }) => `${teeth}`);
  if (odd.length === 0) return [];
  const which =
    wheels.length === 2
      ? 'The two wheels do not go together; which is the stranger a third would tell.'
      : `The wheel of ${odd.join(', ')} teeth does not go with the rest.`;
  return [note('Stranger', `${which} The answer is for the first.`, 'beware', 'likeliest')];
}

function ofReadings({ teeth, readings }: MeasuredWheel): readonly Caution[] {
  const jaws = teeth % 2 === 1 && readings.some((one) => one.of === 'outside' && one.by === 'jaws');
  const odd = jaws
    ? [note('Odd count', 'Jaws read small on an odd count: the outside was corrected, and what is left open is counted as reading error.')]
    : [];
  const print = readings.some(({ of }) => of === 'helix');
  const lean = print
    ? []
    : [
        note(
          'Straight?',
          'Taken as straight. A lean of two degrees is easily missed: roll the inked teeth along a straight edge on paper.',
        ),
      ];
  return [...odd, ...lean];
}

/** What to beware of in an answer. */
export function identifyCautions(found: Identified, wheels: readonly MeasuredWheel[]): readonly Caution[] {
  const best = found.list[0];
  const first = wheels[0];
  const none =
    found.none > DOUBTFUL
      ? [
          note(
            'None fits well',
            'Cycloidal teeth, an odd pitch, a slip in counting or a bruised wheel look so. Compare the flank with a sound wheel before anything is cut.',
            'beware',
            'likeliest',
          ),
        ]
      : [];
  const composite = best?.candidate.composite
    ? [
        note(
          'Composite form',
          'Spans cannot tell it from the full involute: the tips of a composite tooth are eased. Look at them beside a sound wheel.',
        ),
      ]
    : [];
  return [...none, ...ofSet(found, wheels), ...(best ? ofWear(best) : []), ...composite, ...(first ? ofReadings(first) : [])];
}
