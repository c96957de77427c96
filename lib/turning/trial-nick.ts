import { DomainError } from '../figure/domain-error.ts';
import type { Answer } from '../figure/figure.ts';
import { inches, type LengthUnit } from '../values/length.ts';

/** How deep the trial nicks are: common practice, no source. A later cut takes them away. */
const NICK_DEPTH_IN = 0.002;

/** The steps of the trial, as done at the machine. */
export const trialNickSteps = (teeth: number): readonly string[] => [
  `Nick the blank 0.002 in deep at every tooth place, ${teeth} of them, cranking one way only.`,
  `Index once more and nick again: nick ${teeth + 1} falls in nick 1.`,
  'If it falls beside, count the nicks and stop: circle, sector, gears or idlers are wrong.',
];

/** All N and one more: the last falls in the first. */
export function trialNick(teeth: number, unit: LengthUnit = 'in'): Answer<'nicks' | 'depth'> {
  if (!Number.isSafeInteger(teeth) || teeth < 1)
    throw new DomainError({
      given: `${teeth} teeth.`,
      limit: 'A count of teeth is a whole number above 0.',
      tryThis: 'Count the teeth.',
      about: ['teeth'],
    });
  const source = 'common practice, no source';
  return {
    figures: {
      nicks: {
        name: 'Nicks',
        symbol: 'n',
        value: { count: teeth + 1 },
        unit,
        formula: 'N + 1',
        source,
        given: [{ symbol: 'N', name: 'teeth', value: { count: teeth }, from: 'typed' }],
      },
      depth: { name: 'Depth of a nick', symbol: 'h', value: { length: inches(NICK_DEPTH_IN) }, unit, formula: '', source, given: [] },
    },
    cautions: [],
    says: trialNickSteps(teeth).join(' '),
  };
}
