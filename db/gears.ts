import type { Body, Bore, Gear } from '../lib/gears/gear.ts';
import { unitOfPitch } from '../lib/gears/tooth.ts';
import type { Angle } from '../lib/values/angle.ts';
import type { Length, LengthUnit } from '../lib/values/length.ts';
import { type Ratio, ratio } from '../lib/values/ratio.ts';
import { addBore, boreOf, boreRow, boresById, type Forms, formsOfBore } from './bores.ts';
import { RecordNotFound } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';

/** A wheel whose teeth are counted and whose pitch nobody knows yet. Nothing is worked from it: it is no Gear. */
export type UnknownGear = Pick<Gear, 'teeth' | 'face' | 'bore' | 'body'> & { readonly pitch: null };
export type AnyGear = Gear | UnknownGear;

/** A wheel as lib has it, and how its lengths were typed. foundBy: how its pitch was found out; '' where it was simply known. */
type StoredGear = { readonly gear: Gear; readonly forms: Forms; readonly foundBy: string };
type StoredUnknown = { readonly gear: UnknownGear; readonly forms: Forms };
/** What a row that may have a wheel has: one with its pitch, one still to be identified, or none. */
export type WheelOfRow = { readonly stored: StoredGear | null; readonly unknown: StoredUnknown | null };

/** What a wheel that is still to be identified is found by. */
export const PITCH_UNKNOWN = 'pitch not known yet';

const unitOf = ({ pitch }: AnyGear): LengthUnit => (pitch ? unitOfPitch(pitch) : 'in');
const formIn = (gear: AnyGear, forms: Forms, name: string): string => formText(forms[name] ?? usualForm(unitOf(gear)));

const NO_TOOTH = {
  ...{ pitch_num: null, pitch_den: null, pitch_kind: null, system_name: null, system_angle_mas: null },
  ...{ addendum: null, dedendum: null, extra_nm: null, helix_angle_mas: null, helix_hand: null },
};

function toothRow(gear: AnyGear) {
  if (gear.pitch === null) return NO_TOOTH;
  const [pitch_num, pitch_den] = ratio(...gear.pitch.size);
  return {
    pitch_num,
    pitch_den,
    pitch_kind: gear.pitch.kind,
    system_name: gear.system.name,
    system_angle_mas: gear.system.angle,
    addendum: gear.system.addendum,
    dedendum: gear.system.dedendum,
    extra_nm: gear.system.extra,
    helix_angle_mas: gear.helix?.angle ?? null,
    helix_hand: gear.helix?.hand ?? null,
  };
}

function gearRow(gear: AnyGear, forms: Forms, bore_id: number | null): NewRow<'gear'> {
  return {
    teeth: gear.teeth,
    ...toothRow(gear),
    face_nm: gear.face,
    face_form: gear.face === null ? null : formIn(gear, forms, 'face'),
    bore_id,
    body_known: gear.body.known ? 1 : 0,
  };
}

/** Writes recesses and openings anew. */
async function saveBody(db: Executor, gear_id: number, gear: AnyGear, forms: Forms): Promise<void> {
  await db.deleteFrom('recess').where('gear_id', '=', gear_id).execute();
  await db.deleteFrom('opening').where('gear_id', '=', gear_id).execute();
  if (!gear.body.known) return;
  const between = (name: string, at: number, { inner, outer }: { readonly inner: Length; readonly outer: Length }) => ({
    gear_id,
    place_no: at,
    inner_nm: inner,
    inner_form: formIn(gear, forms, `${name} ${at} inner`),
    outer_nm: outer,
    outer_form: formIn(gear, forms, `${name} ${at} outer`),
  });
  const recesses = gear.body.recesses.map((recess, at) => ({ ...between('recess', at, recess), side: recess.side }));
  const openings = gear.body.openings.map((opening, at) => ({ ...between('opening', at, opening), what: opening.what }));
  if (recesses.length > 0) await db.insertInto('recess').values(recesses).execute();
  if (openings.length > 0) await db.insertInto('opening').values(openings).execute();
}

/** Writes a new wheel, for one owner; gives its id. */
export const addGear = (db: Executor, gear: AnyGear, forms: Forms = {}): Promise<number> =>
  together(db, async (trx) => {
    const boreId = gear.bore ? await addBore(trx, gear.bore, forms, unitOf(gear)) : null;
    const { id } = await trx
      .insertInto('gear')
      .values(gearRow(gear, forms, boreId))
      .returning('id')
      .executeTakeFirstOrThrow();
    await saveBody(trx, id, gear, forms);
    return id;
  });

async function replaceBore(db: Executor, old: number | null, bore: Bore | null, gear: AnyGear, forms: Forms): Promise<number | null> {
  if (!bore) return null;
  const unit = unitOf(gear);
  if (old === null) return addBore(db, bore, forms, unit);
  await db
    .updateTable('bore')
    .set(boreRow(bore, forms, unit))
    .where('id', '=', old)
    .execute();
  return old;
}

/** What was found out of a tooth stands while the tooth does. */
function foundStill(old: Row<'gear'>, gear: AnyGear): string {
  const now: Readonly<Record<string, unknown>> = { teeth: gear.teeth, ...toothRow(gear) };
  return Object.entries(now).every(([name, value]) => old[name as 'teeth'] === value) ? old.found_by : '';
}

/**
 * Writes a wheel over the one with this id. The owner's rev is the owner's to guard. foundBy: how its pitch was found out; left out, what
 * was said of the same tooth stands. Throws RecordNotFound.
 */
export const replaceGear = (db: Executor, id: number, gear: AnyGear, forms: Forms = {}, foundBy?: string): Promise<void> =>
  together(db, async (trx) => {
    const old = await trx.selectFrom('gear').selectAll().where('id', '=', id).executeTakeFirst();
    if (!old) throw new RecordNotFound('gear', id);
    const boreId = await replaceBore(trx, old.bore_id, gear.bore, gear, forms);
    await trx
      .updateTable('gear')
      .set({ ...gearRow(gear, forms, boreId), found_by: foundBy ?? foundStill(old, gear) })
      .where('id', '=', id)
      .execute();
    if (boreId === null && old.bore_id !== null) await trx.deleteFrom('bore').where('id', '=', old.bore_id).execute();
    await saveBody(trx, id, gear, forms);
  });

const between = (row: { inner_nm: number; outer_nm: number }) => ({ inner: row.inner_nm as Length, outer: row.outer_nm as Length });

function bodyOf(row: Row<'gear'>, recesses: readonly Row<'recess'>[], openings: readonly Row<'opening'>[]): Body {
  if (row.body_known === 0) return { known: false };
  return {
    known: true,
    recesses: recesses.map((recess) => ({ side: recess.side, ...between(recess) })),
    openings: openings.map((opening) => ({ what: opening.what, ...between(opening) })),
  };
}

type PitchRow = { readonly pitch_num: number; readonly pitch_den: number; readonly pitch_kind: Gear['pitch']['kind'] };
export const pitchOf = (row: PitchRow): Gear['pitch'] => ({
  kind: row.pitch_kind,
  size: [row.pitch_num, row.pitch_den] as Ratio,
});

/** A row with its tooth: the file sees to it that all of that is there, or nothing. */
type Toothed = { readonly [K in keyof typeof NO_TOOTH]: NonNullable<Row<'gear'>[K]> };
const toothed = (row: Row<'gear'>): Toothed | null => (row.pitch_num === null ? null : (row as unknown as Toothed));

function toothOfRow(row: Row<'gear'>, tooth: Toothed): Pick<Gear, 'pitch' | 'system' | 'helix'> {
  return {
    pitch: pitchOf(tooth),
    system: {
      name: tooth.system_name,
      angle: tooth.system_angle_mas as Angle,
      addendum: tooth.addendum,
      dedendum: tooth.dedendum,
      extra: tooth.extra_nm as Length,
    },
    helix: row.helix_angle_mas === null || row.helix_hand === null ? null : { angle: row.helix_angle_mas as Angle, hand: row.helix_hand },
  };
}

function gearOf(row: Row<'gear'>, bore: Bore | null, body: Body): AnyGear {
  const [tooth, rest] = [toothed(row), { face: row.face_nm as Length | null, bore, body }];
  return { teeth: row.teeth, ...(tooth ? toothOfRow(row, tooth) : { pitch: null }), ...rest };
}

type RingRow = { readonly place_no: number; readonly inner_form: string; readonly outer_form: string };
const formsOfRings = (name: string, rows: readonly RingRow[]): [string, Forms[string]][] =>
  rows.flatMap((row) => [
    [`${name} ${row.place_no} inner`, formOfText(row.inner_form)],
    [`${name} ${row.place_no} outer`, formOfText(row.outer_form)],
  ]);

type Parts = { bore: Row<'bore'> | undefined; recesses: readonly Row<'recess'>[]; openings: readonly Row<'opening'>[] };
type StoredAny = { readonly gear: AnyGear; readonly forms: Forms; readonly foundBy: string };
function stored(row: Row<'gear'>, { bore, recesses, openings }: Parts): StoredAny {
  const rings = Object.fromEntries([...formsOfRings('recess', recesses), ...formsOfRings('opening', openings)]);
  const forms = { ...(row.face_form ? { face: formOfText(row.face_form) } : {}), ...(bore ? formsOfBore(bore) : {}), ...rings };
  return { gear: gearOf(row, bore ? boreOf(bore) : null, bodyOf(row, recesses, openings)), forms, foundBy: row.found_by };
}

/** What is turned or drilled out of the bodies of these wheels: those whose bodies are known. */
async function ringsOf<T extends 'recess' | 'opening'>(db: Executor, table: T, gearIds: readonly number[]): Promise<Row<T>[]> {
  if (gearIds.length === 0) return [];
  const query = db
    .selectFrom(table as 'recess')
    .selectAll()
    .where('gear_id', 'in', gearIds);
  return (await query.orderBy('place_no').execute()) as unknown as Row<T>[];
}

/** Many wheels at once, by id. */
async function gearsById(db: Executor, ids: readonly number[]): Promise<ReadonlyMap<number, StoredAny>> {
  if (ids.length === 0) return new Map();
  const rows = await db.selectFrom('gear').selectAll().where('id', 'in', ids).execute();
  const bores = await boresById(
    db,
    rows.flatMap((row) => row.bore_id ?? []),
  );
  const known = rows.filter((row) => row.body_known === 1).map((row) => row.id);
  const recesses = await ringsOf(db, 'recess', known);
  const openings = await ringsOf(db, 'opening', known);
  const own = <T extends { gear_id: number }>(all: readonly T[], id: number): T[] => all.filter((one) => one.gear_id === id);
  const partsOf = (row: Row<'gear'>): Parts => ({
    bore: bores.get(row.bore_id ?? 0),
    recesses: own(recesses, row.id),
    openings: own(openings, row.id),
  });
  return new Map(rows.map((row) => [row.id, stored(row, partsOf(row))]));
}

/** Throws RecordNotFound. */
export async function gearById(db: Executor, id: number): Promise<StoredAny> {
  const found = (await gearsById(db, [id])).get(id);
  if (!found) throw new RecordNotFound('gear', id);
  return found;
}

const NO_WHEEL: WheelOfRow = { stored: null, unknown: null };
const asWheel = ({ gear, ...rest }: StoredAny): WheelOfRow =>
  gear.pitch === null ? { stored: null, unknown: { gear, forms: rest.forms } } : { stored: { gear, ...rest }, unknown: null };

/** The wheels of rows that may have one. */
export async function gearsOfRows(
  db: Executor,
  rows: readonly { gear_id: number | null }[],
): Promise<(gearId: number | null) => WheelOfRow> {
  const gears = await gearsById(
    db,
    rows.flatMap((row) => row.gear_id ?? []),
  );
  return (gearId) => {
    const found = gearId === null ? undefined : gears.get(gearId);
    return found ? asWheel(found) : NO_WHEEL;
  };
}
