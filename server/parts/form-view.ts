import type { Row } from '../../db/executor.ts';
import type { PartLine } from '../../db/parts.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import type { Tried } from '../machines/form-view.ts';
import { machineName } from '../machines/list-view.ts';
import { formMark } from '../once.ts';
import type { LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { type Belongs, partGroups, type Sort } from './forms.ts';

type Query = Readonly<Record<string, string>>;

/** The same form for the other sort of part, or with its sizes in the other unit. */
function linksTo(sort: Sort, unit: LengthUnit, address: (given: Query) => string): LinkView[] {
  const other: LinkView =
    sort === 'wheel'
      ? { says: 'It is no wheel', href: address({ as: 'other' }) }
      : { says: 'It is a wheel: type its teeth', href: address({ as: 'wheel' }) };
  if (sort === 'other') return [other];
  const says = unit === 'in' ? 'Sizes are in inches here. Type them in millimetres' : 'Sizes are in millimetres here. Type them in inches';
  return [other, { says, href: address({ sizes: unit === 'in' ? 'mm' : 'in' }) }];
}

type Asking = { readonly sort: Sort; readonly belongs: Belongs; readonly unit: LengthUnit; readonly tried: Tried };

const groupsOf = ({ sort, belongs, unit, tried: { typed, problems } }: Asking) => partGroups(sort, belongs, unit, typed, problems);

export function newPartPage(machine: Row<'project'>, asking: Asking): PageData<'parts/form'> {
  const back = { says: machineName(machine), href: to.machine(machine.id) };
  return {
    title: 'A part of the machine',
    place: 'Machines',
    back,
    titleBlock: [],
    says: 'A place to be filled. It starts as missing, and gets a short mark for its tag.',
    links: linksTo(asking.sort, asking.unit, (given) => to.partNew(machine.id, given)),
    form: {
      id: 'form',
      action: to.parts(machine.id),
      method: 'post',
      hidden: [{ name: 'as', value: asking.sort }, sizesHidden(asking.unit), formMark()],
      problem: asking.tried.problems[''] ?? '',
      groups: groupsOf(asking),
      act: 'Put it on record',
      kind: 'main',
      confirm: '',
      back,
    },
  };
}

/** rev: the one that the form started from. says: what is to be known before it is saved. */
export function editPartPage(part: PartLine, rev: number, asking: Asking, says = ''): PageData<'parts/form'> {
  const back = { says: part.name, href: to.part(part.id) };
  const links = linksTo(asking.sort, asking.unit, (given) => to.partEdit(part.id, given));
  return {
    title: `${part.mark}: what is said of it`,
    place: 'Machines',
    back,
    titleBlock: [],
    says,
    links: part.stored || part.unknown ? links.slice(1) : links,
    form: {
      id: 'form',
      action: to.part(part.id),
      method: 'post',
      hidden: [{ name: 'as', value: asking.sort }, { name: 'rev', value: String(rev) }, sizesHidden(asking.unit), formMark()],
      problem: asking.tried.problems[''] ?? '',
      groups: groupsOf(asking),
      act: 'Save',
      kind: 'main',
      confirm: '',
      back,
    },
  };
}
