import type { Bore } from '../gears/gear.ts';
import type { Length, LengthUnit } from '../values/length.ts';
import { inWords } from './blank-sizes.ts';
import { type Check, check } from './check.ts';
import { SAME_WITHIN } from './judgements.data.ts';

/** What has to be done to the bore of a spare. */
export type BoreWork = 'none' | 'bore out' | 'bush' | 'cut a keyway';
export type BoreChecked = { readonly check: Check; readonly work: BoreWork };

const same = (a: Length, b: Length): boolean => Math.abs(a - b) <= SAME_WITHIN;
const answer = (result: Check['result'], says: string, work: BoreWork = 'none'): BoreChecked => ({
  check: check('bore', result, says),
  work,
});

function splined(wanted: Bore & { form: 'splined' }, spare: Bore, unit: LengthUnit): BoreChecked {
  if (spare.form !== 'splined') return answer('no', `The wanted bore has ${wanted.splines} splines, this one is ${spare.form}.`);
  if (spare.splines !== wanted.splines) return answer('no', `${spare.splines} splines, and ${wanted.splines} are wanted.`);
  const pairs = [
    ['outside', spare.diameter, wanted.diameter],
    ['inside', spare.minor, wanted.minor],
    ['key way', spare.keyWidth, wanted.keyWidth],
  ] as const;
  const unlike = pairs.filter(([, is, want]) => !same(is, want));
  const says = unlike.map(([name, is, want]) => `${name} ${inWords(is, unit)}, wanted ${inWords(want, unit)}`);
  if (unlike.length > 0) return answer('no', `Splines differ by more than ${inWords(SAME_WITHIN, unit)}: ${says.join('; ')}.`);
  return answer('yes', `${wanted.splines} splines of ${inWords(wanted.diameter, unit)}, within ${inWords(SAME_WITHIN, unit)}.`);
}

type Keyed = Bore & { readonly form: 'keyed' };

const keysAlike = (wanted: Keyed, spare: Bore): boolean =>
  spare.form === 'keyed' && same(spare.keyWidth, wanted.keyWidth) && same(spare.keyDepth, wanted.keyDepth);

/** The largest circle that the old bore, its keyway or its splines reach. */
const reaches = (bore: Bore): number => (bore.form === 'keyed' ? bore.diameter + 2 * bore.keyDepth : bore.diameter);

function sameDiameter(wanted: Exclude<Bore, { form: 'splined' }>, spare: Bore, unit: LengthUnit): BoreChecked {
  const says = `Bore ${inWords(spare.diameter, unit)} serves for ${inWords(wanted.diameter, unit)}`;
  if (spare.form === 'splined') return answer('beware', `${says}, but it has splines: bush it.`, 'bush');
  if (wanted.form === 'plain')
    return spare.form === 'plain' ? answer('yes', `${says}.`) : answer('beware', `${says}; its keyway stays in the bore.`);
  if (keysAlike(wanted, spare)) return answer('yes', `${says}, with the same keyway.`);
  return answer('beware', `${says}; cut a new keyway${spare.form === 'keyed' ? ', clear of the old one' : ''}.`, 'cut a keyway');
}

/** Does the bore serve? Form, count and diameters; a plain or keyed bore may be bored out or bushed, a spline must be the same. */
export function boreCheck(wanted: Bore | null, spare: Bore | null, unit: LengthUnit): BoreChecked {
  if (!wanted) return answer('measure first', 'Measure the shaft first: nobody has said what bore is wanted.');
  if (!spare) return answer('measure first', 'Measure the bore of the spare first.');
  if (wanted.form === 'splined') return splined(wanted, spare, unit);
  if (same(spare.diameter, wanted.diameter)) return sameDiameter(wanted, spare, unit);
  const [is, want] = [inWords(spare.diameter, unit), inWords(wanted.diameter, unit)];
  const key = wanted.form === 'keyed' ? ' Then cut the keyway.' : '';
  if (reaches(spare) <= wanted.diameter + SAME_WITHIN) return answer('yes', `Bore it out from ${is} to ${want}.${key}`, 'bore out');
  if (spare.diameter > wanted.diameter) return answer('yes', `Bore ${is} is larger than ${want}: bush it.${key}`, 'bush');
  const old = spare.form === 'keyed' ? 'keyway' : 'splines';
  return answer('beware', `Boring out from ${is} to ${want} leaves some of the old ${old}: bush it.${key}`, 'bush');
}
