import type { Value } from '../lib/figure/figure.ts';
import type { Length } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';
import { amountOf, valueFrom } from './amounts.ts';
import type { Executor, Row } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';
import { untilChanged } from './until-changed.ts';

/** What it was read on: exactly one. partId: on the wheel that somebody holds for a part. */
export type ReadOn = { readonly itemId: number } | { readonly operationId: number } | { readonly partId: number };

/**
 * what: the trade's name of it ("wall", "over pins", "span", "full indicator reading"). over_k: teeth spanned. pin: its diameter.
 * place_no: which of several places. mateTeeth: of the wheel it ran with. error: how far off it may be, as the value's own kind.
 */
export type NewReading = {
  readonly what: string;
  readonly value: Value;
  readonly form?: LengthForm;
  readonly over_k?: number | null;
  readonly pin?: Length | null;
  readonly place_no?: number | null;
  readonly mateTeeth?: number | null;
  readonly error?: Value | null;
  readonly read_on: string;
  readonly instrument: string;
};
export type Reading = Row<'reading'> & { readonly shown: Value; readonly lengthForm: LengthForm };

export async function addReading(db: Executor, on: ReadOn, reading: NewReading): Promise<number> {
  const { unit, whole } = amountOf(reading.value);
  if (whole === null) throw new RangeError('a reading is a number');
  const row = {
    item_id: 'itemId' in on ? on.itemId : null,
    operation_id: 'operationId' in on ? on.operationId : null,
    part_id: 'partId' in on ? on.partId : null,
    what: reading.what,
    over_k: reading.over_k ?? null,
    pin_nm: reading.pin ?? null,
    place_no: reading.place_no ?? null,
    mate_teeth: reading.mateTeeth ?? null,
    value: whole,
    unit,
    form: formText(reading.form ?? usualForm('in')),
    error: reading.error ? amountOf(reading.error).whole : null,
    read_on: reading.read_on,
    instrument: reading.instrument,
  };
  const { id } = await db.insertInto('reading').values(row).returning('id').executeTakeFirstOrThrow();
  return id;
}

export const asRead = (row: Row<'reading'>): Reading => ({
  ...row,
  shown: valueFrom(row.value, row.unit),
  lengthForm: formOfText(row.form),
});

function columnOf(on: ReadOn): readonly ['item_id' | 'operation_id' | 'part_id', number] {
  if ('itemId' in on) return ['item_id', on.itemId];
  return 'partId' in on ? ['part_id', on.partId] : ['operation_id', on.operationId];
}

/** In the order in which they were taken; the newest 500. */
export const readingsOf = untilChanged(async (db: Executor, on: ReadOn): Promise<Reading[]> => {
  const [column, id] = columnOf(on);
  const rows = await db.selectFrom('reading').selectAll().where(column, '=', id).orderBy('id', 'desc').limit(500).execute();
  return rows.reverse().map(asRead);
});

/** A reading that was noted wrong is struck; what hung on it has to be worked again by the caller. */
export async function strikeReading(db: Executor, id: number): Promise<void> {
  await db.deleteFrom('reading').where('id', '=', id).execute();
}
