import { PITCH_UNKNOWN } from '../../db/gears.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { to } from '../addresses.ts';
import { readingsTable } from '../drawer/item-readings.ts';
import { readingGroups } from '../drawer/reading-forms.ts';
import { type FoldedForm, foldedForm } from '../forms/folded-form.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import { formMark } from '../once.ts';
import type { LinkView, TableView } from '../page.ts';
import { whatGearIsIt } from '../sums/identify-link.ts';
import type { PartShown } from './part-view.ts';

/** What is noted on the wheel held for a part, what it is by that, and how more is noted. unknown: nobody knows its pitch yet. */
export type IdentifyView = {
  readonly unknown: boolean;
  readonly says: string;
  readonly links: readonly LinkView[];
  readonly readings: TableView | null;
  readonly add: FoldedForm | null;
};

const FIRST = 'Pitch not known: identify it first. Until then nothing is worked out, planned or cut by it.';
const KNOWN = 'Noted on the wheel that was held for this part.';

/** "31 teeth, pitch not known yet"; '' for what is no such wheel. */
export const countedWords = ({ unknown }: PartShown['data']['part']): string =>
  unknown ? `${unknown.gear.teeth} teeth, ${PITCH_UNKNOWN}` : '';

const wheelOf = ({ data: { part } }: PartShown): Pick<Gear, 'teeth'> | null => (part.stored ?? part.unknown)?.gear ?? null;

/** Readings of the wheel in its place and those noted on the part, together. */
const readingsOf = ({ data: { readings, noted } }: PartShown) => [...readings, ...noted];

/** To what gear it is, and to a sheet that the owner of its like can fill in; none for a part that is no wheel. */
export function identifyLinks(shown: PartShown): LinkView[] {
  const [wheel, { part }] = [wheelOf(shown), shown.data];
  if (!wheel) return [];
  return [
    whatGearIsIt(`part-${part.id}`, wheel.teeth, readingsOf(shown)),
    { says: 'Print a blank measuring sheet', href: to.partMeasuringSheet(part.id) },
  ];
}

function addForm({ data: { part }, reading: { typed, problems }, today, trusted }: PartShown): FoldedForm | null {
  if (!trusted) return null;
  const unit = part.stored ? unitOfPitch(part.stored.gear.pitch) : 'in';
  return foldedForm('Add a reading', {
    id: 'reading',
    action: to.partReading(part.id),
    method: 'post',
    hidden: [formMark(), sizesHidden(unit)],
    problem: '',
    groups: readingGroups(unit, { readOn: today, ...typed }, problems),
    act: 'Write it down',
    kind: 'main',
    confirm: '',
    back: null,
  });
}

/** While the pitch is not known, and afterwards for as long as something is noted; null otherwise. */
export function identifyView(shown: PartShown): IdentifyView | null {
  const { part, noted } = shown.data;
  const unknown = part.unknown !== null;
  if (!unknown && (noted.length === 0 || !part.stored)) return null;
  return {
    unknown,
    says: unknown ? FIRST : KNOWN,
    links: unknown ? identifyLinks(shown) : [],
    readings: readingsTable(noted, shown.trusted ? (id) => to.partReadingStrike(part.id, id) : null),
    add: addForm(shown),
  };
}
