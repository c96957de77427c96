import type { Body, Bore, Gear } from '../lib/gears/gear.ts';
import { unitOfPitch } from '../lib/gears/tooth.ts';
import type { Angle } from '../lib/values/angle.ts';
import type { Length } from '../lib/values/length.ts';
import { type Ratio, ratio } from '../lib/values/ratio.ts';
import { addBore, boreOf, boreRow, boresById, type Forms, formsOfBore } from './bores.ts';
import { RecordNotFound } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';

/** A wheel as lib has it, and how its lengths were typed. */
export type StoredGear = { readonly gear: Gear; readonly forms: Forms };

const formIn = (gear: Gear, forms: Forms, name: string): string => formText(forms[name] ?? usualForm(unitOfPitch(gear.pitch)));

function gearRow(gear: Gear, forms: Forms, bore_id: number | null): NewRow<'gear'> {
  const [pitch_num, pitch_den] = ratio(...gear.pitch.size);
  return {
    teeth: gear.teeth,
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
    face_nm: gear.face,
    face_form: gear.face === null ? null : formIn(gear, forms, 'face'),
    bore_id,
    body_known: gear.body.known ? 1 : 0,
  };
}

/** Writes recesses and openings anew. */
async function saveBody(db: Executor, gear_id: number, gear: Gear, forms: Forms): Promise<void> {
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
export const addGear = (db: Executor, gear: Gear, forms: Forms = {}): Promise<number> =>
  together(db, async (trx) => {
    const boreId = gear.bore ? await addBore(trx, gear.bore, forms, unitOfPitch(gear.pitch)) : null;
    const { id } = await trx
      .insertInto('gear')
      .values(gearRow(gear, forms, boreId))
      .returning('id')
      .executeTakeFirstOrThrow();
    await saveBody(trx, id, gear, forms);
    return id;
  });

async function replaceBore(db: Executor, old: number | null, bore: Bore | null, gear: Gear, forms: Forms): Promise<number | null> {
  if (!bore) return null;
  const unit = unitOfPitch(gear.pitch);
  if (old === null) return addBore(db, bore, forms, unit);
  await db
    .updateTable('bore')
    .set(boreRow(bore, forms, unit))
    .where('id', '=', old)
    .execute();
  return old;
}

/** Writes a wheel over the one with this id. The owner's rev is the owner's to guard. Throws RecordNotFound. */
export const replaceGear = (db: Executor, id: number, gear: Gear, forms: Forms = {}): Promise<void> =>
  together(db, async (trx) => {
    const old = await trx.selectFrom('gear').select('bore_id').where('id', '=', id).executeTakeFirst();
    if (!old) throw new RecordNotFound('gear', id);
    const boreId = await replaceBore(trx, old.bore_id, gear.bore, gear, forms);
    await trx
      .updateTable('gear')
      .set(gearRow(gear, forms, boreId))
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

export const pitchOf = (row: Pick<Row<'gear'>, 'pitch_num' | 'pitch_den' | 'pitch_kind'>): Gear['pitch'] => ({
  kind: row.pitch_kind,
  size: [row.pitch_num, row.pitch_den] as Ratio,
});

function gearOf(row: Row<'gear'>, bore: Bore | null, body: Body): Gear {
  return {
    teeth: row.teeth,
    pitch: pitchOf(row),
    system: {
      name: row.system_name,
      angle: row.system_angle_mas as Angle,
      addendum: row.addendum,
      dedendum: row.dedendum,
      extra: row.extra_nm as Length,
    },
    helix: row.helix_angle_mas === null || row.helix_hand === null ? null : { angle: row.helix_angle_mas as Angle, hand: row.helix_hand },
    face: row.face_nm as Length | null,
    bore,
    body,
  };
}

type RingRow = { readonly place_no: number; readonly inner_form: string; readonly outer_form: string };
const formsOfRings = (name: string, rows: readonly RingRow[]): [string, Forms[string]][] =>
  rows.flatMap((row) => [
    [`${name} ${row.place_no} inner`, formOfText(row.inner_form)],
    [`${name} ${row.place_no} outer`, formOfText(row.outer_form)],
  ]);

type Parts = { bore: Row<'bore'> | undefined; recesses: readonly Row<'recess'>[]; openings: readonly Row<'opening'>[] };
function stored(row: Row<'gear'>, { bore, recesses, openings }: Parts): StoredGear {
  const rings = Object.fromEntries([...formsOfRings('recess', recesses), ...formsOfRings('opening', openings)]);
  const forms = { ...(row.face_form ? { face: formOfText(row.face_form) } : {}), ...(bore ? formsOfBore(bore) : {}), ...rings };
  return { gear: gearOf(row, bore ? boreOf(bore) : null, bodyOf(row, recesses, openings)), forms };
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
async function gearsById(db: Executor, ids: readonly number[]): Promise<ReadonlyMap<number, StoredGear>> {
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
export async function gearById(db: Executor, id: number): Promise<StoredGear> {
  const found = (await gearsById(db, [id])).get(id);
  if (!found) throw new RecordNotFound('gear', id);
  return found;
}

/** The wheels of rows that may have one. */
export async function gearsOfRows(
  db: Executor,
  rows: readonly { gear_id: number | null }[],
): Promise<(gearId: number | null) => StoredGear | null> {
  const gears = await gearsById(
    db,
    rows.flatMap((row) => row.gear_id ?? []),
  );
  return (gearId) => (gearId === null ? null : (gears.get(gearId) ?? null));
}
