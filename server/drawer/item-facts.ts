import { formOfText } from '../../db/forms.ts';
import { PITCH_UNKNOWN } from '../../db/gears.ts';
import type { ItemLine } from '../../db/items.ts';
import { conditionOf, conditionText } from '../../db/spares/condition.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { printShort } from '../../lib/values/print.ts';
import { apart, type Fact, factView, sizeView, sizeWords, wholeForm } from '../sizes.ts';
import { FILE_PLACES, fileTestOf } from './file-test.ts';

function wheelFigures({ stored, unknown }: ItemLine) {
  const wheel = stored ?? unknown;
  if (!wheel) return [];
  const { gear, forms } = wheel;
  const { bore, face } = gear;
  const size = (key: string, name: string, length: Length | null, form: string) => sizeView(key, name, length, forms[form]);
  return [
    factView('teeth', 'Teeth', String(gear.teeth)),
    size('face', 'Face', face, 'face'),
    bore === null
      ? sizeView('bore', 'Bore', null, undefined)
      : size('bore', bore.form === 'splined' ? 'Bore, across the grooves' : 'Bore', bore.diameter, 'diameter'),
    ...(bore?.form === 'splined'
      ? [size('minor', 'Bore, small diameter', bore.minor, 'minor'), factView('splines', 'Splines', String(bore.splines))]
      : []),
    ...(bore && bore.form !== 'plain' ? [size('key-width', 'Key width', bore.keyWidth, 'keyWidth')] : []),
    ...(bore?.form === 'keyed' ? [size('key-depth', 'Keyway depth', bore.keyDepth, 'keyDepth')] : []),
  ];
}

function barFigures({ diameter_nm, diameter_form, length_nm, length_form, cut_nm }: ItemLine) {
  const size = (key: string, name: string, nm: number | null, text: string | null) =>
    nm === null || text === null ? [] : [sizeView(key, name, nm as Length, wholeForm(nm as Length, formOfText(text)))];
  const free = length_nm === null || cut_nm === 0 ? null : Math.max(0, length_nm - cut_nm);
  return [
    ...size('diameter', 'Diameter', diameter_nm, diameter_form),
    ...size('length', free === null ? 'Length left' : 'Length as it lies there', length_nm, length_form),
    ...size('free', 'Length left after what is promised', free, length_form),
  ];
}

/** Where the metal is, in words. */
function bodyWords({ body }: Pick<Gear, 'body'>, unit: LengthUnit): string {
  if (!body.known) return 'not looked at: measure web and recesses before it is judged';
  const size = (length: Length) => sizeWords(length, { unit, places: unit === 'in' ? 3 : 2 });
  const rings = [
    ...body.recesses.map(
      (ring) => `recess ${size(ring.inner)} to ${size(ring.outer)}, ${ring.side === 'both' ? 'both sides' : `${ring.side} side`}`,
    ),
    ...body.openings.map((ring) => `${ring.what} ${size(ring.inner)} to ${size(ring.outer)}`),
  ];
  return rings.length === 0 ? 'solid from bore to teeth' : rings.join('; ');
}

/** "23° right hand". */
const helixWords = ({ angle, hand }: NonNullable<Gear['helix']>): string => `${printShort(toDegrees(angle), 2)}° ${hand} hand`;

function wheelFacts({ stored, unknown, condition, hardness, trust }: ItemLine) {
  const wheel = stored ?? unknown;
  if (!wheel) return [];
  const [looked, test] = [conditionOf(condition), fileTestOf(condition)];
  const tried = FILE_PLACES.filter((place) => test[place] !== 'not tried').map((place) => `${place} ${test[place]}`);
  return [
    { label: 'System', says: stored ? stored.gear.system.name : PITCH_UNKNOWN },
    ...(stored?.gear.helix ? [{ label: 'Helix', says: helixWords(stored.gear.helix) }] : []),
    ...(stored?.foundBy ? [{ label: 'Its pitch is known', says: stored.foundBy }] : []),
    { label: 'Metal', says: bodyWords(wheel.gear, stored ? unitOfPitch(stored.gear.pitch) : 'in') },
    { label: 'Trust', says: trust === 'unknown' ? 'not known' : trust },
    { label: 'Condition', says: conditionText(looked) },
    { label: 'Hardness', says: tried.length === 0 ? hardness : `${hardness} (file: ${tried.join(', ')})` },
  ];
}

function factsOf(line: ItemLine, trusted: boolean): Fact[] {
  const said = (label: string, says: string) => (says === '' ? [] : [{ label, says }]);
  return [
    ...wheelFacts(line),
    ...said('Material', line.material),
    ...said('Since', line.added_on.slice(0, 10)),
    ...said('Gone', line.gone_on === null ? '' : `${line.gone_why ?? ''}, ${line.gone_on.slice(0, 10)}`),
    ...said('Notes', trusted ? line.notes : ''),
  ];
}

/** What is on record of a thing: its sizes as dimensions, the rest as lines. trusted: may see notes, which may hold names and prices. */
export function onRecord(line: ItemLine, trusted: boolean): ReturnType<typeof apart> {
  const { figures, facts } = apart(line.kind === 'wheel' ? wheelFigures(line) : barFigures(line));
  return { figures, facts: [...facts, ...factsOf(line, trusted)] };
}
