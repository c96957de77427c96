import { formMark } from '../once.ts';
import type { ConflictRow, HiddenView, LinkView, Place } from '../page.ts';
import type { PageData } from '../views.ts';
import type { Field } from './field.ts';
import type { Fields, Typed } from './form.ts';

/** The same form twice: as it was sent, and as the record would fill it in now. rev: of the record now. */
export type TwoVersions = {
  readonly what: string;
  readonly place: Place;
  readonly back: LinkView;
  readonly action: string;
  readonly fields: Fields;
  readonly yours: Typed;
  readonly theirs: Typed;
  readonly hidden: readonly HiddenView[];
};

/** A bare number is in the unit of its box. */
const withUnit = ({ unit }: Field<unknown>, text: string): string =>
  unit !== '' && /^[\d.,]+$/.test(text.trim()) ? `${text} ${unit}` : text;

/** What was typed, in words. */
function inWords(field: Field<unknown>, text: string): string {
  if (field.kind === 'tick') return text === 'yes' ? 'yes' : 'no';
  if (text.trim() === '') return 'nothing';
  const chosen = field.choices.find(([value]) => value === text);
  return chosen ? chosen[1] : withUnit(field, text);
}

const tidy = (text: string): string => text.replace(/\r\n/g, '\n').trim();

function rowOf(name: string, field: Field<unknown>, yours: string, theirs: string): ConflictRow {
  const one = (value: string) => ({ name, value, says: inWords(field, value) });
  // An empty box is more often one that was never touched than one that was emptied: it wipes nothing out unasked.
  const stands = tidy(yours) === '' ? 'theirs' : 'yours';
  return { name, label: field.label, differs: tidy(yours) !== tidy(theirs), stands, yours: one(yours), theirs: one(theirs) };
}

/** Saved meanwhile on another device: both versions side by side, to be shown with status 409. Nothing has been written yet. */
export function conflictView(two: TwoVersions): PageData<'conflict'> {
  const rows = Object.entries(two.fields).map(([name, field]) => rowOf(name, field, two.yours[name] ?? '', two.theirs[name] ?? ''));
  const same = rows.every((row) => !row.differs);
  return {
    title: two.what,
    place: two.place,
    back: two.back,
    titleBlock: [],
    action: two.action,
    hidden: [...two.hidden, formMark()],
    says: same
      ? 'This was saved on another device meanwhile, and as it stands it says what you typed.'
      : 'This was saved on another device meanwhile. Choose line by line what is to stand; nothing of yours is lost.',
    rows,
    act: 'Keep what is chosen',
  };
}
