import { RecordChanged, RecordNotFound, saveRow } from '../../db/changes.ts';
import { cutInto, promisesOf } from '../../db/item-life.ts';
import { type ItemLine, item, saveItem } from '../../db/items.ts';
import { cutFrom } from '../../db/made.ts';
import { addReading, type NewReading, type Reading, readingsOf, strikeReading } from '../../db/readings.ts';
import { refreshStale } from '../../db/replan.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { confirmView } from '../forms/confirm-view.ts';
import { dayOf } from '../forms/date-field.ts';
import { readForm } from '../forms/form.ts';
import { unitSent } from '../forms/gear-form.ts';
import { takenWords, withTaken } from '../forms/taken.ts';
import { recordId } from '../record-id.ts';
import { usualUnit } from '../settings/defaults.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { typedOfItem } from './forms.ts';
import { readingSentence } from './item-readings.ts';
import { type Amiss, goneFields, type Item, itemView, mayComeBack, NOTHING_AMISS } from './item-view.ts';
import { itemName } from './item-words.ts';
import { readThing } from './read-item.ts';
import { readingFields, readingOf, readingProblems, wallFields, wallProblems, wallReadings } from './reading-forms.ts';
import { editConflict, editView, type Standing } from './view-model.ts';

export const askedItem = (visit: Visit): Promise<ItemLine> => item(visit.db, recordId('thing', visit.params['id']));

/** A wheel is measured in the unit of its pitch; the rest in the unit of the work. */
export const unitOf = async (db: Db, line: ItemLine): Promise<LengthUnit> =>
  line.stored ? unitOfPitch(line.stored.gear.pitch) : usualUnit(db);

async function wholeItem(visit: Visit, line: ItemLine): Promise<Item> {
  const { db, now, trusted } = visit;
  return {
    line,
    readings: await readingsOf(db, { itemId: line.id }),
    promises: await promisesOf(db, line.id),
    from: await cutFrom(db, line.id),
    into: await cutInto(db, line.id),
    unit: await unitOf(db, line),
    today: dayOf(now),
    trusted,
  };
}

async function page(visit: Visit, line: ItemLine, amiss: Amiss = NOTHING_AMISS): Promise<Result> {
  return show('drawer/item', itemView(await wholeItem(visit, line), amiss), amiss.form === '' ? 200 : 422);
}

export const one = async (visit: Visit): Promise<Result> => page(visit, await askedItem(visit));

export const standing = (line: ItemLine, rev = line.rev): Standing => ({ id: line.id, rev, name: itemName(line), kind: line.kind });

export async function edit(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const unit = await unitOf(visit.db, line);
  return show(
    'drawer/form',
    editView(standing(line), { unit, typed: withTaken(typedOfItem(line, unit), visit.query), problems: {} }, takenWords(visit.query)),
  );
}

/** What is being made of this thing hangs on its sizes and readings. */
export async function refreshWork(db: Db, itemId: number): Promise<void> {
  for (const { routing_id } of await promisesOf(db, itemId)) await refreshStale(db, routing_id);
}

export async function save(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const unit = unitSent(visit.body);
  const read = readThing(visit.body, line.kind, unit, line.hardness);
  if (!read.ok)
    return show('drawer/form', editView(standing(line, sentRev(visit)), { unit, typed: read.typed, problems: read.problems }), 422);
  try {
    await saveItem(visit.db, line.id, sentRev(visit), read.columns, read.wheel);
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return show('conflict', editConflict(standing(line), unit, read.typed, typedOfItem(line, unit)), 409);
  }
  await refreshWork(visit.db, line.id);
  return { go: to.item(line.id), saved: `${itemName(await item(visit.db, line.id))} is saved.` };
}

async function writeDown(visit: Visit, line: ItemLine, readings: readonly NewReading[], says: string): Promise<Result> {
  for (const reading of readings) await addReading(visit.db, { itemId: line.id }, reading);
  await refreshWork(visit.db, line.id);
  return { go: to.item(line.id), saved: says };
}

export async function addOne(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const read = readForm(visit.body, readingFields(unitSent(visit.body)));
  const problems = read.ok ? readingProblems(read.value) : read.problems;
  if (!read.ok || Object.keys(problems).length > 0) return page(visit, line, { form: 'reading', typed: read.typed, problems });
  return writeDown(visit, line, [readingOf(read.value)], 'The reading is written down.');
}

export async function addWalls(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const read = readForm(visit.body, wallFields(unitSent(visit.body)));
  const before = await readingsOf(visit.db, { itemId: line.id });
  const hasBore = before.some(({ what }) => what === READING_NAMES.bore);
  const problems = read.ok ? wallProblems(read.value, hasBore) : read.problems;
  if (!read.ok || Object.keys(problems).length > 0) return page(visit, line, { form: 'walls', typed: read.typed, problems });
  return writeDown(visit, line, wallReadings(read.value), 'The walls are written down.');
}

async function askedReading(visit: Visit, line: ItemLine): Promise<Reading> {
  const id = recordId('reading', visit.params['reading']);
  const found = (await readingsOf(visit.db, { itemId: line.id })).find((reading) => reading.id === id);
  if (!found) throw new RecordNotFound('reading', id);
  return found;
}

/** Asks before a reading is struck: what was worked out from it changes. */
export async function askStrike(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const reading = await askedReading(visit, line);
  const back = { says: itemName(line), href: to.item(line.id) };
  const view = confirmView({
    id: 'strike',
    title: 'Strike this reading?',
    place: 'Drawer',
    back,
    says: `${readingSentence(reading)} Struck, it is gone for good, and what was worked out from it is worked out anew.`,
    action: to.itemReadingStrike(line.id, reading.id),
    act: 'Strike it',
    keep: { says: 'Leave it', href: to.item(line.id) },
  });
  return show('confirm', view);
}

export async function strike(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  const reading = await askedReading(visit, line);
  await strikeReading(visit.db, reading.id);
  await refreshWork(visit.db, line.id);
  return { go: to.item(line.id), saved: `Struck: ${readingSentence(reading)}` };
}

/** Why it cannot be taken out; '' when it can. */
async function heldBy(db: Db, line: ItemLine): Promise<string> {
  if (line.state === 'fitted') return `It is fitted as ${line.part_mark}. Take it out there first.`;
  const [promised] = await promisesOf(db, line.id);
  return promised ? `It is promised to ${promised.part_mark}. Release it there first.` : '';
}

export async function gone(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  // Gone meanwhile: its page has no such form any more, and what was wrong would be said nowhere.
  if (line.state === 'gone') throw new RecordChanged('item', line.id, {}, visit.body);
  const read = readForm(visit.body, goneFields);
  const held = await heldBy(visit.db, line);
  const problems = read.ok ? (held === '' ? {} : { why: held }) : read.problems;
  if (!read.ok || held !== '') return page(visit, line, { form: 'gone', typed: read.typed, problems });
  const row = await saveRow(visit.db, 'item', line.id, sentRev(visit), { gone_on: read.value.on, gone_why: read.value.why });
  return { go: to.item(row.id), saved: `${itemName(line)} is out of the drawer: ${read.value.why}.` };
}

export async function comeBack(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  if (!mayComeBack({ line, into: await cutInto(visit.db, line.id) })) return { go: to.item(line.id), saved: 'It stays as it is.' };
  await saveRow(visit.db, 'item', line.id, sentRev(visit), { gone_on: null, gone_why: null });
  return { go: to.item(line.id), saved: `${itemName(line)} is back in the drawer.` };
}
