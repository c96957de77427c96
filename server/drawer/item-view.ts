import type { CutInto, Promised } from '../../db/item-life.ts';
import type { ItemLine } from '../../db/items.ts';
import type { Reading } from '../../db/readings.ts';
import { remembered } from '../../db/remembered.ts';
import { spareOf } from '../../db/spares/spare-of.ts';
import { measuredRoot } from '../../lib/blanks/measured-root.sums.ts';
import { gearDrawing } from '../../lib/drawing/gear-drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { mainSizes } from '../../lib/gears/wheel-sizes.sums.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import { answerView } from '../figures.ts';
import { dayField } from '../forms/date-field.ts';
import { choiceField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type FoldedForm, foldedForm } from '../forms/folded-form.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import { formMark } from '../once.ts';
import type { ButtonView, DrawingView, FormView, HiddenView, LinkView, TitleCell } from '../page.ts';
import { whatGearIsIt } from '../sums/identify-link.ts';
import type { PageData } from '../views.ts';
import { KIND_WORDS } from './forms.ts';
import { onRecord } from './item-facts.ts';
import { readingsTable } from './item-readings.ts';
import { barSize, itemKnownBy, itemName, itemState } from './item-words.ts';
import { named, readingGroups, wallGroups } from './reading-forms.ts';

export type Item = {
  readonly line: ItemLine;
  readonly readings: readonly Reading[];
  readonly promises: readonly Promised[];
  readonly from: readonly ItemLine[];
  readonly into: readonly CutInto[];
  readonly unit: LengthUnit;
  readonly today: string;
  readonly trusted: boolean;
};

/** Forms on the page as they came back with problems; an empty one otherwise. */
export type Amiss = { readonly form: 'reading' | 'walls' | 'gone' | ''; readonly typed: Typed; readonly problems: Problems };
export const NOTHING_AMISS: Amiss = { form: '', typed: {}, problems: {} };

export const goneFields = {
  why: choiceField({
    label: 'What became of it',
    choices: [
      ['sold', 'sold'],
      ['given away', 'given away'],
      ['lost', 'lost'],
      ['scrap', 'scrapped'],
      ['used up', 'used up'],
    ],
  }),
  on: dayField('On'),
};

/** What is drawn, or worked out, where the sizes allow it; else why not. */
function orWhyNot<T>(work: () => T): { readonly value: T | null; readonly why: string } {
  try {
    return { value: work(), why: '' };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { value: null, why: error.message };
  }
}

const keptDrawings = remembered<DrawingView>();

function drawn(line: ItemLine) {
  const gear = line.stored?.gear;
  if (!gear) return null;
  const unit = unitOfPitch(gear.pitch);
  const form = { unit, places: unit === 'in' ? 3 : 2 };
  const as = { form, kind: line.state === 'gone' ? ('old outline' as const) : ('here' as const), title: itemName(line) };
  return orWhyNot(() => keptDrawings(JSON.stringify([gear, as]), () => drawingView(gearDrawing(gear, as)))).value;
}

/** "What was the 22 cut from": what it was made of, what was made of it, and what it is promised to. */
function historyOf({ from, into, promises, line }: Item): LinkView[] {
  const made = line.made_id === null ? [] : [{ says: 'How it was made', href: to.made(line.made_id) }];
  return [
    ...from.map((blank) => ({ says: `Cut from: ${itemName(blank).toLowerCase()}`, href: to.item(blank.id) })),
    ...made,
    ...into.map((one) =>
      one.item_id === null
        ? { says: `Spoilt as ${one.part_mark} ${one.part_name}`, href: to.made(one.id) }
        : { says: `Became ${one.part_mark} ${one.part_name}`, href: to.item(one.item_id) },
    ),
    ...promises.map(({ part_id, part_mark, part_name, takes_nm, takes_form }) => {
      const takes = barSize(takes_nm, takes_form);
      return { says: `${takes === '' ? 'Promised' : `${takes} promised`} to ${part_mark} ${part_name}`, href: to.part(part_id) };
    }),
    ...(line.state === 'fitted' && line.part_id !== null
      ? [{ says: `Fitted as ${line.part_mark ?? ''}`, href: to.part(line.part_id) }]
      : []),
  ];
}

const bare = (more: Pick<FormView, 'id' | 'action' | 'hidden' | 'groups' | 'act' | 'kind'>): FormView => ({
  method: 'post',
  problem: '',
  confirm: '',
  back: null,
  ...more,
});

function readForms({ line, unit, today }: Item, amiss: Amiss): FoldedForm[] {
  const typed = (form: Amiss['form']) => (amiss.form === form ? amiss.typed : { readOn: today });
  const problems = (form: Amiss['form']) => (amiss.form === form ? amiss.problems : {});
  const hidden = () => [formMark(), sizesHidden(unit)];
  return [
    foldedForm(
      'Add the six walls',
      bare({
        id: 'walls',
        action: to.itemWalls(line.id),
        hidden: hidden(),
        groups: wallGroups(unit, typed('walls'), problems('walls')),
        act: 'Write the walls down',
        kind: 'main',
      }),
    ),
    foldedForm(
      'Add a reading',
      bare({
        id: 'reading',
        action: to.itemReading(line.id),
        hidden: hidden(),
        groups: readingGroups(unit, typed('reading'), problems('reading')),
        act: 'Write it down',
        kind: 'main',
      }),
    ),
  ];
}

const revHidden = ({ rev }: ItemLine): HiddenView => ({ name: 'rev', value: String(rev) });

function goneForm({ line, today }: Item, amiss: Amiss): FoldedForm {
  const mine = amiss.form === 'gone';
  const group = fieldGroup('', goneFields, mine ? amiss.typed : { on: today }, mine ? amiss.problems : {});
  return foldedForm(
    'It is gone',
    bare({
      id: 'gone',
      action: to.itemGone(line.id),
      hidden: [formMark(), revHidden(line)],
      groups: [named(group, 'gone')],
      act: 'Take it out of the drawer',
      kind: 'stop',
    }),
  );
}

/** What was cut is gone for good: its made record says into what. */
export const mayComeBack = ({ line, into }: Pick<Item, 'line' | 'into'>): boolean =>
  line.gone_on !== null && line.gone_why !== 'cut' && into.length === 0;

function buttonsOf(item: Item): ButtonView[] {
  if (!mayComeBack(item)) return [];
  const { line } = item;
  return [
    { action: to.itemBack(line.id), hidden: [formMark(), revHidden(line)], says: 'It is back in the drawer', kind: 'main', confirm: '' },
  ];
}

function cellsOf(line: ItemLine): TitleCell[] {
  const said = (label: string, says: string, href = ''): TitleCell[] => (says === '' ? [] : [{ label, says, href, state: null }]);
  return [
    ...(line.kind === 'casting' || line.kind === 'other' ? said('Kind', KIND_WORDS[line.kind].one) : []),
    ...said('Known by', itemKnownBy(line)),
    ...said('Number', `no. ${line.id}`),
    { label: 'State', says: '', href: '', state: itemState(line) },
    ...said('Kept in', line.kept_in),
  ];
}

/** Everything known of one wheel that is worked out: its sizes, its old root, and why one of them cannot be. */
function worked({ line, readings }: Item) {
  const spare = spareOf(line, readings);
  if (!spare) return { root: null, sizes: null, refusal: '' };
  const root = orWhyNot(() => answerView(measuredRoot(spare)));
  const sizes = orWhyNot(() => answerView(mainSizes(spare.gear)));
  return { root: root.value, sizes: sizes.value, refusal: root.why || sizes.why };
}

const PITCH_FIRST = 'Pitch not known: identify it first. Until then it serves for no blank, and nothing is worked out from it.';

/** To what it is, and to a sheet that somebody who holds its like can fill in. */
function whatIsIt({ line, readings }: Item): LinkView[] {
  const wheel = line.stored ?? line.unknown;
  if (!wheel) return [];
  return [
    whatGearIsIt(`item-${line.id}`, wheel.gear.teeth, readings),
    { says: 'Print a blank measuring sheet', href: to.itemMeasuringSheet(line.id) },
  ];
}

export function itemView(item: Item, amiss: Amiss = NOTHING_AMISS): PageData<'drawer/item'> {
  const { line, trusted } = item;
  const isWheel = line.kind === 'wheel';
  const here = line.gone_on === null;
  const mayGo = here && line.state === 'spare' && item.promises.length === 0;
  return {
    title: itemName(line),
    place: 'Drawer',
    back: { says: 'Drawer', href: to.drawer },
    titleBlock: cellsOf(line),
    drawing: drawn(line),
    ...onRecord(line, trusted),
    history: historyOf(item),
    ...worked(item),
    readings: readingsTable(item.readings, trusted ? (id) => to.itemReadingStrike(line.id, id) : null),
    whatIsIt: whatIsIt(item),
    unknown: line.unknown ? PITCH_FIRST : '',
    readForms: trusted && isWheel && here ? readForms(item, amiss) : [],
    edit: trusted && here ? { says: 'Change what is on record', href: to.itemEdit(line.id) } : null,
    buttons: trusted ? buttonsOf(item) : [],
    gone: trusted && mayGo ? goneForm(item, amiss) : null,
  };
}
