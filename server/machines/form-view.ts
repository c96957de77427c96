import type { Row } from '../../db/executor.ts';
import { to } from '../addresses.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Fields, Problems, Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { FormView, HiddenView, LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { machineFields } from './forms.ts';
import { machineName } from './list-view.ts';

/** What was typed and what was wrong with it; nothing of either on a fresh form. */
export type Tried = { readonly typed: Typed; readonly problems: Problems };
export const FRESH: Tried = { typed: {}, problems: {} };

type Asking = {
  readonly title: string;
  readonly says?: string;
  readonly back: LinkView;
  readonly action: string;
  readonly act: string;
  readonly fields: Fields;
  readonly tried: Tried;
  readonly rev?: number;
};

const hiddenOf = (rev: number | undefined): HiddenView[] => [
  ...(rev === undefined ? [] : [{ name: 'rev', value: String(rev) }]),
  formMark(),
];

/** A page that is one form in one group. */
export function formPage({ title, says = '', back, action, act, fields, tried, rev }: Asking): PageData<'machines/form'> {
  const form: FormView = {
    id: 'form',
    action,
    method: 'post',
    hidden: hiddenOf(rev),
    problem: tried.problems[''] ?? '',
    groups: [fieldGroup('', fields, tried.typed, tried.problems)],
    act,
    kind: 'main',
    confirm: '',
    back,
  };
  return { title, place: 'Machines', back, titleBlock: [], says, form };
}

export const newMachinePage = (tried: Tried): PageData<'machines/form'> =>
  formPage({
    title: 'A machine to restore',
    says: 'What you do not know yet may stay empty.',
    back: { says: 'Machines', href: to.machines },
    action: to.machines,
    act: 'Put it on record',
    fields: machineFields,
    tried,
  });

export const editMachinePage = (row: Row<'project'>, tried: Tried): PageData<'machines/form'> =>
  formPage({
    title: `${machineName(row)}: what is said of it`,
    back: { says: machineName(row), href: to.machine(row.id) },
    action: to.machine(row.id),
    act: 'Save',
    fields: machineFields,
    tried,
    rev: row.rev,
  });
