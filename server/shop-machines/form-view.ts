import type { MachineLine } from '../../db/machines.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import { conflictView } from '../forms/conflict.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import { formMark } from '../once.ts';
import type { FormView, HiddenView, LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { freshMachine, machineFields, machineGroups, typedOfShopMachine } from './forms.ts';

export const BACK_TO_LIST: LinkView = { says: 'Shop machines', href: to.shopMachines };

export const revHidden = (rev: number): HiddenView => ({ name: 'rev', value: String(rev) });

const formOf = (
  unit: LengthUnit,
  typed: Typed,
  problems: Problems,
  more: { readonly action: string; readonly hidden: readonly HiddenView[]; readonly act: string },
): FormView => ({
  id: 'shop-machine',
  action: more.action,
  method: 'post',
  hidden: [formMark(), sizesHidden(unit), ...more.hidden],
  problem: Object.keys(problems).length > 0 ? 'Not saved yet: mend what is marked below.' : '',
  groups: machineGroups(unit, typed, problems),
  act: more.act,
  kind: 'main',
  confirm: '',
  back: null,
});

export const newView = (unit: LengthUnit, typed: Typed = freshMachine(unit), problems: Problems = {}): PageData<'shop-machines/form'> => ({
  title: 'New shop machine',
  place: 'Tools',
  back: BACK_TO_LIST,
  titleBlock: [],
  says: 'What is unknown may stay empty and be typed later.',
  form: formOf(unit, typed, problems, { action: to.shopMachineNew, hidden: [], act: 'Put it on record' }),
});

const backTo = ({ row }: MachineLine): LinkView => ({ says: row.name, href: to.shopMachine(row.id) });

export const editView = (
  line: MachineLine,
  rev: number,
  unit: LengthUnit,
  typed: Typed,
  problems: Problems = {},
): PageData<'shop-machines/form'> => ({
  title: `Change ${line.row.name}`,
  place: 'Tools',
  back: backTo(line),
  titleBlock: [],
  says: '',
  form: formOf(unit, typed, problems, { action: to.shopMachineEdit(line.row.id), hidden: [revHidden(rev)], act: 'Save' }),
});

/** line and form: as they stand now. */
export const editConflict = (line: MachineLine, form: LengthForm | null, unit: LengthUnit, yours: Typed): PageData<'conflict'> =>
  conflictView({
    what: `Two versions of ${line.row.name}`,
    place: 'Tools',
    back: backTo(line),
    action: to.shopMachineEdit(line.row.id),
    fields: machineFields(unit),
    yours,
    theirs: typedOfShopMachine(line, form, unit),
    hidden: [revHidden(line.row.rev), sizesHidden(unit)],
  });
