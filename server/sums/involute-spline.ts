import { involuteDrawing } from '../../lib/drawing/spline-drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { OLD_DEPTHS } from '../../lib/splines/involute.data.ts';
import { involuteSpline } from '../../lib/splines/involute-spline.sums.ts';
import { checkedSpline, type NamedSpline, unitOfSpline } from '../../lib/splines/involute-spline.ts';
import { toInches, toMm } from '../../lib/values/length.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import { choiceField, countField, optional, readField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { dimensions, sizeIfKnown, typedOf } from './asks.ts';
import { sum } from './sum.ts';

const [LEAST_IN, MOST_IN] = [0.05, 20];

const involuteAsks = {
  standard: choiceField({
    label: 'Standard',
    choices: [
      ['ANSI flat', 'ANSI B92.1, flat root'],
      ['ANSI fillet', 'ANSI B92.1, fillet root'],
      ['ISO flat', 'ISO 4156, flat root'],
      ['ISO fillet', 'ISO 4156, fillet root'],
      ['DIN', 'DIN 5480, by reference diameter'],
      ['deep', 'Old American, deep'],
      ['intermediate', 'Old American, intermediate'],
      ['shallow', 'Old American, shallow'],
    ],
  }),
  teeth: countField({ label: 'Teeth', limits: { least: 4, most: 200 }, unit: 'teeth' }),
  pitch: optional(
    readField({ label: 'Pitch', hint: 'As 16 DP (of 16/32) or module 2; old American: leave empty', read: (text) => readPitch(text) }),
  ),
  reference: sizeIfKnown({
    label: 'Reference diameter, or outside',
    hint: 'DIN 5480 and old American only',
    least: LEAST_IN,
    most: MOST_IN,
  }),
  thinner: sizeIfKnown({ label: 'Shaft’s teeth thinner by', hint: 'Along the pitch circle; empty is none', least: 0, most: 1 }),
  pinShaft: sizeIfKnown({ label: 'Pins over the shaft', hint: 'Empty: usual', least: 0.005, most: 4 }),
  pinHub: sizeIfKnown({ label: 'Pins in the hub', hint: 'Empty: usual', least: 0.005, most: 4 }),
};

const lacks = (given: string, tryThis: string, about: string): DomainError =>
  new DomainError({ given, limit: 'This standard is named by it.', tryThis, about: [about] });

type InvoluteGiven = ValuesOf<typeof involuteAsks>;

function pitchOf({ pitch }: InvoluteGiven, kind: 'DP' | 'module'): number {
  if (pitch?.kind === kind) return toNumber(pitch.size);
  const [given, example] = kind === 'DP' ? ['No diametral pitch.', 'Type it as 16 DP for 16/32.'] : ['No module.', 'Type it as module 2.'];
  throw lacks(given, example, 'pitch');
}

function diameterOf({ reference }: InvoluteGiven) {
  if (reference) return reference.length;
  throw lacks('No diameter.', 'Type the reference diameter of DIN 5480, or the outside of an old American spline.', 'reference');
}

function namedOf(given: InvoluteGiven): NamedSpline {
  const { standard, teeth } = given;
  const root = standard.endsWith('fillet') ? 'fillet' : 'flat';
  if (standard.startsWith('ANSI')) return { standard: 'ANSI', root, teeth, P: pitchOf(given, 'DP') };
  if (standard.startsWith('ISO')) return { standard: 'ISO', root, teeth, m: pitchOf(given, 'module') };
  if (standard === 'DIN') return { standard: 'DIN', teeth, m: pitchOf(given, 'module'), reference: toMm(diameterOf(given)) };
  const depth = OLD_DEPTHS.find(({ name }) => name === standard)?.name ?? 'deep';
  return { standard: 'old', depth, teeth, outside: toInches(diameterOf(given)) };
}

export const INVOLUTE_SPLINE_SUM = sum({
  path: 'involute-spline',
  title: 'Involute spline',
  group: 'Splines',
  tells: 'Diameters of shaft and hub by the standard, tooth and space, and what pins read over the shaft and between the teeth of the hub.',
  asks: involuteAsks,
  example: { standard: 'ANSI flat', teeth: '20', pitch: '16 DP', reference: '', thinner: '', pinShaft: '', pinHub: '' },
  work: (given) => {
    const { thinner, pinShaft, pinHub } = given;
    return involuteSpline({ named: namedOf(given), ...typedOf({ thinner, pinShaft, pinHub }) });
  },
  draw: (given) => {
    const named = namedOf(given);
    return involuteDrawing(checkedSpline(named), unitOfSpline(named), { form: dimensions(unitOfSpline(named)) });
  },
});
