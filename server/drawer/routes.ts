import { RecordNotFound } from '../../db/changes.ts';
import { drawerIsEmpty, drawerPage } from '../../db/drawer.ts';
import { addItem, itemsById } from '../../db/items.ts';
import { wheelSet } from '../../db/sets.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { counted } from '../cells.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { formsOf, gearOf, patternProblems, pitchProblems, unitSent } from '../forms/gear-form.ts';
import { typedOfPattern } from '../forms/gear-typed.ts';
import { usualUnit } from '../settings/defaults.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { freshItem, ITEM_KINDS, type ItemKind } from './forms.ts';
import { itemName } from './item-words.ts';
import { askFields, listView } from './list-view.ts';
import { freshQuick, quickFields } from './quick-form.ts';
import { readThing } from './read-item.ts';
import { newView, quickView } from './view-model.ts';

const PAGE = 50;

/** Everything physical, by teeth unless newest first is asked for. */
export async function list(visit: Visit): Promise<Result> {
  const read = readForm({ by: 'teeth', ...visit.query }, askFields);
  const empty = await drawerIsEmpty(visit.db);
  if (!read.ok)
    return show('drawer/list', listView({ page: null, typed: read.typed, problems: read.problems, empty, trusted: visit.trusted }), 422);
  const { kind, pitch, spares, gone, by, after } = read.value;
  const page = await drawerPage(visit.db, { kind, pitch, sparesOnly: spares, gone, by, after, size: PAGE });
  return show('drawer/list', listView({ page, typed: read.typed, problems: {}, empty, trusted: visit.trusted }));
}

/** Throws RecordNotFound. */
function kindOf(text: string | undefined): ItemKind {
  const found = ITEM_KINDS.find((kind) => kind === text);
  if (!found) throw new RecordNotFound('kind of thing', (text ?? '').slice(0, 40));
  return found;
}

/** Pitch and system of the wheel put in last: the next one is mostly like it. */
async function likeTheLast(db: Db, unit: LengthUnit): Promise<Typed> {
  const { rows } = await drawerPage(db, { kind: 'wheel', pitch: null, sparesOnly: false, gone: false, by: 'newest', after: null, size: 1 });
  const stored = rows[0]?.stored;
  if (!stored) return {};
  const { pitch = '', system = '', angle = '', addendum = '', dedendum = '' } = typedOfPattern(stored, unit);
  return { pitch, system, angle, addendum, dedendum };
}

const setIn = (text: unknown): string => (typeof text === 'string' && /^[1-9]\d{0,14}$/.test(text) ? text : '');

export async function ask(visit: Visit): Promise<Result> {
  const kind = kindOf(visit.params['kind']);
  const unit = await usualUnit(visit.db);
  const like = kind === 'wheel' ? await likeTheLast(visit.db, unit) : {};
  return show('drawer/form', newView(kind, { unit, typed: { ...freshItem(kind), ...like }, problems: {} }, setIn(visit.query['set'])));
}

export async function add(visit: Visit): Promise<Result> {
  const kind = kindOf(visit.params['kind']);
  const unit = unitSent(visit.body);
  const set = setIn(visit.body['set']);
  const read = readThing(visit.body, kind, unit, 'not tried');
  if (!read.ok) return show('drawer/form', newView(kind, { unit, typed: read.typed, problems: read.problems }, set), 422);
  const set_id = set === '' ? null : (await wheelSet(visit.db, Number(set))).id;
  const { id } = await addItem(visit.db, {
    ...read.columns,
    kind,
    set_id,
    from_project_id: null,
    added_on: visit.now,
    ...(read.wheel ?? {}),
  });
  const [line] = await itemsById(visit.db, [id]);
  return { go: to.item(id), saved: `${line ? itemName(line) : 'It'} is in the drawer.` };
}

export async function askQuick(visit: Visit): Promise<Result> {
  const unit = await usualUnit(visit.db);
  const wheels = typeof visit.query['wheels'] === 'string' ? visit.query['wheels'].slice(0, 2000) : '';
  return show('drawer/form', quickView({ unit, typed: { ...freshQuick, ...(await likeTheLast(visit.db, unit)), wheels }, problems: {} }));
}

/** A wheel for each count of the line, all with the same pattern. */
export async function addQuick(visit: Visit): Promise<Result> {
  const unit = unitSent(visit.body);
  const read = readForm(visit.body, quickFields(unit));
  const problems: Problems = { ...pitchProblems(read.typed), ...(read.ok ? patternProblems(read.value) : read.problems) };
  if (!read.ok || Object.keys(problems).length > 0) return show('drawer/form', quickView({ unit, typed: read.typed, problems }), 422);
  const { wheels, trust, material, keptIn } = read.value;
  const common = { kind: 'wheel', name: '', trust, material, kept_in: keptIn, condition: '', hardness: 'not tried', notes: '' } as const;
  const forms = formsOf(read.value);
  for (const teeth of wheels) {
    const gear = gearOf({ ...read.value, teeth });
    await addItem(visit.db, { ...common, set_id: null, from_project_id: null, added_on: visit.now, gear, forms });
  }
  const verb = wheels.length === 1 ? 'is' : 'are';
  return { go: to.drawer, saved: `${counted(wheels.length, 'wheel')} ${verb} in the drawer.` };
}
