import { items, spareWheels } from '../../db/items.ts';
import { madeRecord } from '../../db/made.ts';
import { type MadeSheet, sheetOf } from '../../db/made-sheet.ts';
import { makeAgain } from '../../db/make-again.ts';
import type { RoutingChoice } from '../../db/open-routing.ts';
import { ItemTaken, type PartLine, part, RoutingOpen } from '../../db/parts.ts';
import { readingsOfItems } from '../../db/readings-of-items.ts';
import { shopNow } from '../../db/shop-now.ts';
import { spareOf } from '../../db/spares/spare-of.ts';
import { stockFree } from '../../db/spares/stock-of.ts';
import { testStock } from '../../lib/blanks/from-stock.ts';
import { testSpare } from '../../lib/blanks/spare-test.sums.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { to } from '../addresses.ts';
import { choiceField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import { recordId } from '../record-id.ts';
import type { PageData } from '../views.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';

/** A thing that it could be made from, with what the test says of it. */
type Candidate = { readonly itemId: number; readonly way: RoutingChoice['way']; readonly says: string; readonly verdict: string };

const MOST = { before: null, size: 200 } as const;

async function wheelsFor(db: Db, gear: Gear): Promise<Candidate[]> {
  const [{ rows }, { cleanUp }] = [await spareWheels(db, MOST), await shopNow(db)];
  const readings = await readingsOfItems(
    db,
    rows.map(({ id }) => id),
  );
  return rows.flatMap((thing): Candidate[] => {
    const spare = spareOf(thing, readings.get(thing.id) ?? []);
    if (!spare) return [];
    const { verdict, says } = testSpare({ wanted: gear, spare, cleanUp });
    return verdict === 'clean' || verdict === 'only just'
      ? [{ itemId: thing.id, way: 're-cut a spare', says: spare.name, verdict: says }]
      : [];
  });
}

async function stockFor(db: Db, gear: Gear): Promise<Candidate[]> {
  const { rows } = await items(db, 'stock', 'spares', MOST);
  return rows.flatMap((thing): Candidate[] => {
    const { verdict, says } = testStock({ wanted: gear, stock: stockFree(thing) });
    return verdict === 'serves'
      ? [{ itemId: thing.id, way: 'make from stock', says: thing.name || `stock ${thing.id}`, verdict: says }]
      : [];
  });
}

const fieldsOf = (found: readonly Candidate[]) => ({
  item: choiceField({ label: 'Made from', choices: found.map(({ itemId, says }) => [String(itemId), says] as const) }),
});

const UNKNOWN = 'Nobody knows the pitch of this part yet: identify it first, on its own page.';
const EMPTY = 'Nothing in the shop serves as a blank for it today. Put a spare or a bar on record first.';

const sameWheel = (sheet: MadeSheet, { stored }: PartLine): boolean => JSON.stringify(sheet.gear) === JSON.stringify(stored?.gear ?? null);

function saysOf(sheet: MadeSheet, own: PartLine, found: readonly Candidate[]): string {
  const differs = sameWheel(sheet, own)
    ? ''
    : ' The part has been changed since the record was written: the new wheel is made as the part stands today.';
  const filled = own.item_id === null ? '' : ' The part is filled: what stands there now becomes a spare when the new one is finished.';
  const none = own.unknown ? UNKNOWN : EMPTY;
  return `${found.length === 0 ? none : 'A routing as the last time: with its notes, the times that it took, what was struck out and what you added.'}${differs}${filled}`;
}

async function asked(visit: Visit) {
  const made = await madeRecord(visit.db, recordId('made record', visit.params['id']));
  const [own, sheet] = [await part(visit.db, made.part_id), sheetOf(made.sheet)];
  const gear = own.stored?.gear ?? null;
  const found = gear ? [...(await wheelsFor(visit.db, gear)), ...(await stockFor(visit.db, gear))] : [];
  return { made, own, sheet, found };
}
type Asked = Awaited<ReturnType<typeof asked>>;

function page({ made, own, sheet, found }: Asked, typed: Typed, problems: Problems, problem = ''): PageData<'made/form'> {
  const group = fieldGroup('', fieldsOf(found), typed, problems);
  const choices = (field: (typeof group.fields)[number]) =>
    field.choices.map((choice) => ({ ...choice, hint: found.find(({ itemId }) => String(itemId) === choice.value)?.verdict ?? '' }));
  return {
    title: `Make ${own.name} again`,
    place: 'Machines',
    back: { says: 'The record', href: to.made(made.id) },
    titleBlock: [],
    says: sheet ? saysOf(sheet, own, found) : 'This record holds no sheet to go by.',
    still: [],
    form: {
      id: 'again',
      action: to.madeAgain(made.id),
      method: 'post',
      hidden: [formMark()],
      problem,
      groups:
        found.length === 0
          ? []
          : [{ ...group, fields: group.fields.map((field) => ({ ...field, kind: 'rows' as const, choices: choices(field) })) }],
      act: 'Open the routing',
      kind: 'main',
      confirm: '',
      back: { says: 'Back', href: to.made(made.id) },
    },
  };
}

export async function askAgain(visit: Visit): Promise<Result> {
  const all = await asked(visit);
  return show('made/form', page(all, { item: String(all.found[0]?.itemId ?? '') }, {}));
}

export async function again(visit: Visit): Promise<Result> {
  const all = await asked(visit);
  const read = readForm(visit.body, fieldsOf(all.found));
  if (!read.ok) return show('made/form', page(all, read.typed, read.problems, all.found.length === 0 ? EMPTY : ''), 422);
  const chosen = all.found.find(({ itemId }) => String(itemId) === read.value.item);
  if (!chosen || !all.sheet) return show('made/form', page(all, read.typed, {}, EMPTY), 422);
  try {
    const id = await makeAgain(visit.db, all.sheet, { partId: all.own.id, way: chosen.way, itemIds: [chosen.itemId] }, visit.now);
    return { go: to.routing(id), saved: 'A new routing is open.' };
  } catch (error) {
    if (error instanceof ItemTaken || error instanceof RoutingOpen || error instanceof DomainError)
      return show('made/form', page(all, read.typed, {}, error.message), 422);
    throw error;
  }
}
