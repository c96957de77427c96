import { to } from '../addresses.ts';
import { conflictView } from '../forms/conflict.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { FormView, HiddenView, LinkView, Page } from '../page.ts';
import type { PageData } from '../views.ts';
import { settingFields } from './forms.ts';

export interface SettingViews {
  'settings/defaults': Page & {
    says: string;
    form: FormView | null;
    standing: readonly { label: string; says: string; why: string }[];
    links: readonly LinkView[];
  };
}

/** What stood when the form was opened, so that a change made meanwhile is noticed. */
export const stoodWords = (typed: Typed): string => JSON.stringify(Object.keys(settingFields).map((name) => typed[name] ?? ''));
const stoodHidden = (typed: Typed): HiddenView => ({ name: 'stood', value: stoodWords(typed) });

const names = Object.keys(settingFields) as (keyof typeof settingFields)[];

/** A default as it stands, in words, and whose it is. */
function standingOf(name: keyof typeof settingFields, typed: Typed, own: Typed) {
  const field = settingFields[name];
  const text = typed[name] ?? '';
  const chosen = field.choices.find(([value]) => value === text)?.[1];
  const delivered = name in own ? 'Typed by the owner. ' : 'As delivered. ';
  return { label: field.label, says: chosen ?? `${text} ${field.unit}`.trim(), why: `${delivered}${field.hint}` };
}

/** own: what the owner typed of it. */
type Shown = {
  readonly stands: Typed;
  readonly own: Typed;
  readonly typed: Typed;
  readonly problems: Problems;
  readonly stood: string;
  readonly trusted: boolean;
};

const formOf = ({ typed, problems, stood }: Shown): FormView => ({
  id: 'settings',
  action: to.settings,
  method: 'post',
  hidden: [formMark(), { name: 'stood', value: stood }],
  problem: Object.keys(problems).length > 0 ? 'Not saved yet: mend what is marked below.' : '',
  groups: [
    fieldGroup('Cutting', settingFields, typed, problems, ['cleanUp', 'paper', 'backlash', 'convention']),
    fieldGroup('Showing', settingFields, typed, problems, ['unit']),
  ],
  act: 'Save',
  kind: 'main',
  confirm: '',
  back: null,
});

export const defaultsView = (shown: Shown): PageData<'settings/defaults'> => ({
  title: 'The shop’s own defaults',
  place: 'Tools',
  back: { says: 'Tools', href: to.tools },
  titleBlock: [],
  says: 'These are judgements, not laws. They stand wherever a wheel, a cutter or a routing does not say otherwise, and each page that uses one says so.',
  form: shown.trusted ? formOf(shown) : null,
  standing: shown.trusted ? [] : names.map((name) => standingOf(name, shown.stands, shown.own)),
  links: [
    { says: 'Shop machines: lathe, mill and their dials', href: to.shopMachines },
    { says: 'Devices that may make changes', href: to.devices },
  ],
});

export const settingsConflict = (stands: Typed, yours: Typed): PageData<'conflict'> =>
  conflictView({
    what: 'Two versions of the defaults',
    place: 'Tools',
    back: { says: 'The shop’s own defaults', href: to.settings },
    action: to.settings,
    fields: settingFields,
    yours,
    theirs: stands,
    hidden: [stoodHidden(stands)],
  });
