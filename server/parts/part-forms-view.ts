import { wheelName } from '../../db/spares/spare-of.ts';
import type { WayOffered } from '../../lib/blanks/ways.ts';
import { WAYS, type Way } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { lengthField, noteField, optional, wordsField } from '../forms/field.ts';
import { fieldGroup, fieldView } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { listField } from '../forms/list-field.ts';
import { formMark } from '../once.ts';
import type { ButtonView, ChoiceView, FieldView, FormView, HiddenView } from '../page.ts';
import { isLike } from '../sets/bench.ts';
import type { PartData } from './part-data.ts';
import { hubSpares, recutSpares } from './ways-view.ts';

export const wayFields = {
  way: optional(wordsField({ label: 'It is got by', words: WAYS })),
  why: noteField({ label: 'Why this way', hint: 'It is kept with the part' }),
};

const rev = ({ part }: PartData): HiddenView => ({ name: 'rev', value: String(part.rev) });

/** The way that was chosen, and the reason, asked for. */
export const wayForm = (data: PartData, typed: Typed, problems: Problems): FormView => ({
  id: 'way-form',
  action: to.partWay(data.part.id),
  method: 'post',
  hidden: [rev(data), formMark()],
  problem: problems[''] ?? '',
  groups: [fieldGroup('', wayFields, typed, problems)],
  act: 'Keep this way',
  kind: 'main',
  confirm: '',
  back: null,
});

const choice = (id: number, says: string): ChoiceView => ({ value: String(id), says, hint: '', chosen: false });

type Asked = {
  readonly id: string;
  readonly way: string;
  readonly fields: readonly FieldView[];
  readonly act: string;
  readonly legend: string;
};

const promiseForm = (data: PartData, { id, way, fields, act, legend }: Asked): FormView => ({
  id,
  action: to.partPromise(data.part.id),
  method: 'post',
  hidden: [{ name: 'way', value: way }, formMark()],
  problem: '',
  groups: [{ legend, hint: '', folded: false, fields }],
  act,
  kind: 'main',
  confirm: '',
  back: null,
});

const OPENS = 'Promise it and open the routing';

/** The form, where there is anything to choose. */
const unlessNone = (choices: readonly ChoiceView[], form: () => FormView): FormView[] => (choices.length === 0 ? [] : [form()]);

const spareForm = (data: PartData, spares: readonly ChoiceView[]): FormView =>
  promiseForm(data, {
    id: 'promise-spare',
    way: 're-cut a spare',
    legend: 'Cut a spare again',
    fields: [listField('promise-item', 'item', 'Spare', spares)],
    act: OPENS,
  });

const stockForm = (data: PartData, stock: readonly ChoiceView[]): FormView =>
  promiseForm(data, {
    id: 'promise-stock',
    way: 'make from stock',
    legend: 'Make it from stock',
    fields: [listField('promise-bar', 'item', 'Stock', stock)],
    act: OPENS,
  });

const ringForm = (data: PartData, hubs: readonly ChoiceView[], rings: readonly ChoiceView[]): FormView =>
  promiseForm(data, {
    id: 'promise-ring',
    way: 'ring and hub',
    legend: 'A ring on a hub',
    fields: [listField('promise-hub', 'item', 'Hub, from', hubs), listField('promise-ring-from', 'ring', 'Ring, from', rings)],
    act: OPENS,
  });

const openStock = (offered: readonly WayOffered[]): ChoiceView[] =>
  offered.flatMap((one) => (one.way === 'from stock' && one.open === 'yes' && one.stock ? [choice(one.stock.id, one.stock.name)] : []));

/** How a blank can be promised as things stand: a spare cut again, stock, or, where no spare serves, a ring on a hub. */
export function promiseForms(offered: readonly WayOffered[], data: PartData): FormView[] {
  const spares = recutSpares(offered).map(({ id, name }) => choice(id, name));
  const stock = openStock(offered);
  const hubs = hubSpares(offered).map(({ id, name }) => choice(id, name));
  const rings = data.stock.map(({ id, name }) => choice(id, name));
  return [
    ...unlessNone(spares, () => spareForm(data, spares)),
    ...unlessNone(stock, () => stockForm(data, stock)),
    ...(spares.length > 0 || rings.length === 0 ? [] : unlessNone(hubs, () => ringForm(data, hubs, rings))),
  ];
}

/** Ways for which nothing is worked out: their operations are written down by hand. */
export const BY_HAND: readonly Way[] = ['repair', 'cast', 'buy', 'swap'];

const OWN_WORK = 'Nothing is worked out for this way: open a routing, and write down what has to be done, one operation after another.';

/** Opens an empty routing for a way that is followed by hand; null while another way is chosen, or none. */
export function ownWorkForm({ part }: PartData): FormView | null {
  if (part.way === null || !BY_HAND.includes(part.way)) return null;
  return {
    id: 'open-own',
    action: to.partPromise(part.id),
    method: 'post',
    hidden: [{ name: 'way', value: part.way }, formMark()],
    problem: '',
    groups: [{ legend: 'Followed by hand', hint: OWN_WORK, folded: false, fields: [] }],
    act: `Open a routing: ${part.way}`,
    kind: 'main',
    confirm: '',
    back: null,
  };
}

/** What is asked of a part without teeth before a bar is promised to it: nobody works out how much of it goes. */
export const barFields = {
  takes: optional(
    lengthField({ label: 'Length that it takes', hint: 'Parting included. Empty: the whole bar', limits: { least: 0.01, most: 400 } }),
  ),
};

/** How a part without teeth is begun from stock: its operations are written down by hand afterwards. */
export function barForms(data: PartData, typed: Typed, problems: Problems): FormView[] {
  const bars = data.stock.map(({ id, name }) => ({ ...choice(id, name), chosen: String(id) === typed['item'] }));
  if (bars.length === 0) return [];
  const fields = [listField('promise-bar', 'item', 'Stock', bars), fieldView('takes', barFields.takes, typed, problems)];
  const legend = 'Make it from stock';
  return [promiseForm(data, { id: 'promise-stock', way: 'make from stock', legend, fields, act: 'Promise it and open a routing' })];
}

/** What may be put into the part's place as it is: a like wheel, or another thing. */
function fitting(data: PartData): ChoiceView[] {
  const gear = data.part.stored?.gear;
  if (!gear) return data.others.map((one) => choice(one.id, one.name || (one.kind === 'wheel' ? wheelName(one) : `no. ${one.id}`)));
  return data.spares.filter(({ spare }) => isLike(spare.gear, gear)).map(({ item }) => choice(item.id, wheelName(item)));
}

export function fitForm(data: PartData): FormView | null {
  const choices = fitting(data);
  if (choices.length === 0) return null;
  return {
    id: 'fit',
    action: to.partFit(data.part.id),
    method: 'post',
    hidden: [rev(data), formMark()],
    problem: '',
    groups: [{ legend: '', hint: '', folded: false, fields: [listField('fit-item', 'item', 'It lies in the drawer as', choices)] }],
    act: 'Put it in its place',
    kind: 'main',
    confirm: '',
    back: null,
  };
}

export function buttonsOf(data: PartData): ButtonView[] {
  if (data.part.item_id === null) return [];
  return [
    {
      action: to.partTakeOut(data.part.id),
      hidden: [rev(data), formMark()],
      says: 'It is not there after all: take it out',
      kind: 'other',
      confirm: '',
    },
  ];
}
