import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { conflictView } from '../forms/conflict.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { FoldedForm } from '../forms/folded-form.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { gearGroups, sizesHidden } from '../forms/gear-typed.ts';
import { formMark } from '../once.ts';
import type {
  AnswerView,
  ButtonView,
  DrawingView,
  EmptyView,
  FieldGroup,
  FigureView,
  FormView,
  HiddenView,
  LinkView,
  Page,
  PagerView,
  TableView,
} from '../page.ts';
import type { Fact } from '../sizes.ts';
import type { PageData } from '../views.ts';
import { type ItemKind, itemFields, itemGroups, KIND_WORDS } from './forms.ts';
import { quickFields } from './quick-form.ts';

export interface DrawerViews {
  'drawer/list': Page & {
    empty: EmptyView | null;
    filter: FoldedForm | null;
    table: TableView | null;
    pager: PagerView | null;
    adds: readonly LinkView[];
  };
  'drawer/form': Page & { says: string; form: FormView };
  'drawer/item': Page & {
    drawing: DrawingView | null;
    figures: readonly FigureView[];
    facts: readonly Fact[];
    history: readonly LinkView[];
    root: AnswerView | null;
    refusal: string;
    readings: TableView | null;
    /** To the sum that says what wheel it is, and a sheet to measure it by; none for what has no teeth. */
    whatIsIt: readonly LinkView[];
    /** What is said while its pitch is not known; '' where it is. */
    unknown: string;
    readForms: readonly FoldedForm[];
    sizes: AnswerView | null;
    edit: LinkView | null;
    buttons: readonly ButtonView[];
    gone: FoldedForm | null;
  };
}

const BACK: LinkView = { says: 'Drawer', href: to.drawer };
const AMISS = 'Not saved yet: mend what is marked below.';

type Asked = { readonly unit: LengthUnit; readonly typed: Typed; readonly problems: Problems };

const formOf = (
  { unit, problems }: Asked,
  groups: readonly FieldGroup[],
  more: { readonly action: string; readonly hidden: readonly HiddenView[]; readonly act: string },
): FormView => ({
  id: 'item',
  action: more.action,
  method: 'post',
  hidden: [formMark(), sizesHidden(unit), ...more.hidden],
  problem: Object.keys(problems).length > 0 ? AMISS : '',
  groups,
  act: more.act,
  kind: 'main',
  confirm: '',
  back: null,
});

/** set: the drawer of a set that it goes into; '' for none. */
export const newView = (kind: ItemKind, asked: Asked, set: string): PageData<'drawer/form'> => ({
  title: `New: ${KIND_WORDS[kind].one}`,
  place: 'Drawer',
  back: BACK,
  titleBlock: [],
  says:
    kind === 'wheel'
      ? 'Teeth, pitch and system are enough to begin with. What is not measured may stay empty, and is asked for when it matters.'
      : '',
  form: formOf(asked, itemGroups(kind, asked.unit, asked.typed, asked.problems), {
    action: to.itemNew(kind),
    hidden: set === '' ? [] : [{ name: 'set', value: set }],
    act: 'Put it in the drawer',
  }),
});

export type Standing = { readonly id: number; readonly rev: number; readonly name: string; readonly kind: ItemKind };

const backTo = ({ id, name }: Standing): LinkView => ({ says: name, href: to.item(id) });

export const editView = (item: Standing, asked: Asked, says = ''): PageData<'drawer/form'> => ({
  title: `Change ${item.name}`,
  place: 'Drawer',
  back: backTo(item),
  titleBlock: [],
  says,
  form: formOf(asked, itemGroups(item.kind, asked.unit, asked.typed, asked.problems), {
    action: to.itemEdit(item.id),
    hidden: [{ name: 'rev', value: String(item.rev) }],
    act: 'Save',
  }),
});

/** item: as it stands now. */
export const editConflict = (item: Standing, unit: LengthUnit, yours: Typed, theirs: Typed): PageData<'conflict'> =>
  conflictView({
    what: `Two versions of ${item.name}`,
    place: 'Drawer',
    back: backTo(item),
    action: to.itemEdit(item.id),
    fields: itemFields(item.kind, unit),
    yours,
    theirs,
    hidden: [{ name: 'rev', value: String(item.rev) }, sizesHidden(unit)],
  });

const QUICK =
  'One wheel of each count typed goes in, with what they have in common. What differs is put right on the wheel’s own page afterwards.';

function quickGroups({ unit, typed, problems }: Asked): FieldGroup[] {
  const fields = quickFields(unit);
  const group = (legend: string, names: readonly string[]) => fieldGroup(legend, fields, typed, problems, names);
  const [teeth, ...others] = gearGroups(typed, problems, unit, 'wheels');
  const common = others.map((each) => ({ ...each, folded: each.fields.every((field) => field.problem === '') }));
  return [
    group('The wheels', ['wheels']),
    ...(teeth ? [{ ...teeth, legend: 'What they have in common' }] : []),
    ...common,
    group('Metal and place', ['trust', 'material', 'keptIn']),
  ];
}

export const quickView = (asked: Asked): PageData<'drawer/form'> => ({
  title: 'Loose wheels by one line',
  place: 'Drawer',
  back: BACK,
  titleBlock: [],
  says: QUICK,
  form: formOf(asked, quickGroups(asked), { action: to.drawerQuick, hidden: [], act: 'Put them in the drawer' }),
});
