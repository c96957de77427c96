import { formOfText } from '../../db/forms.ts';
import type { ItemLine } from '../../db/items.ts';
import { conditionOf, conditionText } from '../../db/spares/condition.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { apart, type Fact, factView, sizeView, sizeWords, wholeForm } from '../sizes.ts';
import { FILE_PLACES, fileTestOf } from './file-test.ts';

function wheelFigures({ stored }: ItemLine) {
  if (!stored) return [];
  const { gear, forms } = stored;
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
function bodyWords({ body }: Gear, unit: LengthUnit): string {
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

function wheelFacts({ stored, condition, hardness, trust }: ItemLine) {
  if (!stored) return [];
  const { gear } = stored;
  const [looked, test] = [conditionOf(condition), fileTestOf(condition)];
  const tried = FILE_PLACES.filter((place) => test[place] !== 'not tried').map((place) => `${place} ${test[place]}`);
  return [
    { label: 'System', says: gear.system.name },
    { label: 'Metal', says: bodyWords(gear, unitOfPitch(gear.pitch)) },
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
