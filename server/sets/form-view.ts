import type { Row } from '../../db/executor.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import type { Tried } from '../machines/form-view.ts';
import { machineName } from '../machines/list-view.ts';
import { formMark } from '../once.ts';
import type { FieldGroup, FormView, HiddenView, LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { editSetGroups, linesGroup, newSetGroups } from './forms.ts';

type Asking = {
  readonly title: string;
  readonly says: string;
  readonly links: readonly LinkView[];
  readonly back: LinkView;
  readonly action: string;
  readonly act: string;
  readonly groups: readonly FieldGroup[];
  readonly hidden: readonly HiddenView[];
  readonly problem?: string | undefined;
};

function formPage({ title, says, links, back, action, act, groups, hidden, problem = '' }: Asking): PageData<'sets/form'> {
  const form: FormView = {
    id: 'form',
    action,
    method: 'post',
    hidden: [...hidden, formMark()],
    problem,
    groups,
    act,
    kind: 'main',
    confirm: '',
    back,
  };
  return { title, place: 'Machines', back, titleBlock: [], says, links, form };
}

/** The way to the same form with its boxes in the other unit. */
const otherUnit = (unit: LengthUnit, address: (given: Readonly<Record<string, string>>) => string): LinkView => ({
  says: unit === 'in' ? 'Sizes are in inches here. Type them in millimetres' : 'Sizes are in millimetres here. Type them in inches',
  href: address({ sizes: unit === 'in' ? 'mm' : 'in' }),
});

type Where = { readonly machine: Row<'project'>; readonly all: readonly Row<'assembly'>[]; readonly unit: LengthUnit };

export const newSetPage = ({ machine, all, unit }: Where, { typed, problems }: Tried): PageData<'sets/form'> =>
  formPage({
    title: 'A change-gear set',
    says: 'What its wheels have in common, then two lines: what belongs, and what lies in the drawer. What is not measured may stay empty.',
    links: [otherUnit(unit, (given) => to.setNew(machine.id, given))],
    back: { says: machineName(machine), href: to.machine(machine.id) },
    action: to.sets(machine.id),
    act: 'Put the set on record',
    groups: newSetGroups(all, unit, typed, problems),
    hidden: [sizesHidden(unit)],
    problem: problems[''],
  });

export const editSetPage = (set: Row<'wheel_set'>, unit: LengthUnit, { typed, problems }: Tried): PageData<'sets/form'> =>
  formPage({
    title: `${set.name}: what is said of it`,
    says: '',
    links: [otherUnit(unit, (given) => to.setEdit(set.id, given))],
    back: { says: set.name, href: to.set(set.id) },
    action: to.set(set.id),
    act: 'Save',
    groups: editSetGroups(unit, typed, problems),
    hidden: [{ name: 'rev', value: String(set.rev) }, sizesHidden(unit)],
    problem: problems[''],
  });

export const addLinesPage = (
  set: Row<'wheel_set'>,
  pattern: Omit<Gear, 'teeth'> | null,
  { typed, problems }: Tried,
): PageData<'sets/form'> =>
  formPage({
    title: `${set.name}: more wheels`,
    says: pattern
      ? `Cut as the pattern of the set says: ${printPitch(pattern.pitch)}, ${pattern.system.name}.`
      : 'The set has no pattern yet.',
    links: pattern ? [] : [{ says: 'Change the set: name, pattern, notes', href: to.setEdit(set.id) }],
    back: { says: set.name, href: to.set(set.id) },
    action: to.setWheels(set.id),
    act: 'Add them',
    groups: [linesGroup(typed, problems)],
    hidden: [],
    problem: problems[''],
  });
