import { sql } from 'kysely';
import type { Figure, Value } from '../lib/figure/figure.ts';
import type { LengthForm } from '../lib/values/print.ts';
import { amountOf, valueFrom } from './amounts.ts';
import { RecordNotFound, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { formOfText, formText, usualForm } from './forms.ts';

/** figure: as computed and printed, with its working. shown: measured, else typed, else computed. */
export type StoredFigure = {
  readonly operation_id: number;
  readonly key: string;
  readonly figure: Figure;
  readonly computed: Value;
  readonly typed: Value | null;
  readonly measured: Value | null;
  readonly shown: Value;
  readonly shownFrom: 'measured' | 'typed' | 'worked out';
  readonly low: Value | null;
  readonly high: Value | null;
  readonly form: LengthForm;
};

/** The whole number of a value that must be counted in the figure's own unit. */
function wholeIn(unit: string, value: Value): number | null {
  const amount = amountOf(value);
  if (amount.unit !== unit) throw new RangeError(`a figure in ${unit} takes no ${amount.unit}`);
  return amount.whole;
}

type Computed = Pick<Row<'figure'>, 'unit' | 'computed' | 'low' | 'high' | 'form' | 'printed'>;
function computedColumns(figure: Figure): Computed {
  const { unit, whole } = amountOf(figure.value);
  const [low, high] = figure.limits ?? [];
  return {
    unit,
    computed: whole,
    low: low ? wholeIn(unit, low) : null,
    high: high ? wholeIn(unit, high) : null,
    form: formText(figure.places === undefined ? usualForm(figure.unit) : { unit: figure.unit, places: figure.places }),
    printed: JSON.stringify(figure),
  };
}

const NOT_YET = { typed: null, typed_unit: null, typed_words: null, measured: null };
export const figureRow = (operation_id: number, key: string, place_no: number, figure: Figure): NewRow<'figure'> => ({
  operation_id,
  key,
  place_no,
  ...NOT_YET,
  ...computedColumns(figure),
});

function typedOf({ typed, typed_unit, typed_words }: Row<'figure'>): Value | null {
  if (typed_words !== null) return { words: typed_words };
  return typed === null || typed_unit === null ? null : valueFrom(typed, typed_unit);
}

function storedFigure(row: Row<'figure'>): StoredFigure {
  const figure = JSON.parse(row.printed) as Figure;
  const inUnit = (whole: number | null): Value | null => (whole === null ? null : valueFrom(whole, row.unit));
  const [computed, typed, measured] = [inUnit(row.computed) ?? figure.value, typedOf(row), inUnit(row.measured)];
  return {
    operation_id: row.operation_id,
    key: row.key,
    figure,
    computed,
    typed,
    measured,
    shown: measured ?? typed ?? computed,
    shownFrom: measured ? 'measured' : typed ? 'typed' : 'worked out',
    low: inUnit(row.low),
    high: inUnit(row.high),
    form: formOfText(row.form),
  };
}

export async function figuresOf(db: Executor, operationIds: readonly number[]): Promise<StoredFigure[]> {
  if (operationIds.length === 0) return [];
  const query = db.selectFrom('figure').selectAll().where('operation_id', 'in', operationIds);
  return (await query.orderBy('operation_id').orderBy('place_no').execute()).map(storedFigure);
}

async function figureUnit(db: Executor, operationId: number, key: string): Promise<string> {
  const row = await db
    .selectFrom('figure')
    .select('unit')
    .where('operation_id', '=', operationId)
    .where('key', '=', key)
    .executeTakeFirst();
  if (!row) throw new RecordNotFound('figure', key);
  return row.unit;
}

/** Types a value over a figure, or null to take it back. rev: the operation's. Throws RecordNotFound, RecordChanged. */
export const typeFigure = (db: Executor, operationId: number, rev: number, key: string, value: Value | null): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    await figureUnit(trx, operationId, key);
    const row = await saveRow(trx, 'operation', operationId, rev, {});
    const amount = value ? amountOf(value) : { whole: null, unit: null };
    const typed = { typed: amount.whole, typed_unit: amount.unit, typed_words: value && 'words' in value ? value.words : null };
    await trx.updateTable('figure').set(typed).where('operation_id', '=', operationId).where('key', '=', key).execute();
    return row;
  });

/** Sets or takes back what was measured. The caller guards the operation's rev. Throws RecordNotFound, RangeError (another kind of value). */
export async function setMeasured(db: Executor, operationId: number, key: string, value: Value | null): Promise<void> {
  const unit = await figureUnit(db, operationId, key);
  const measured = value ? wholeIn(unit, value) : null;
  await db.updateTable('figure').set({ measured }).where('operation_id', '=', operationId).where('key', '=', key).execute();
}

/** What was measured stays while the figure is still of its kind; of another kind it would be read as that. The reading itself stays on record. */
const likeMeasured = sql<number | null>`case when figure.unit = excluded.unit then figure.measured end`;

async function acceptOne(db: Executor, operationId: number, key: string, place_no: number, figure: Figure): Promise<void> {
  const columns = computedColumns(figure);
  await db
    .insertInto('figure')
    .values({ ...figureRow(operationId, key, place_no, figure) })
    .onConflict((on) => on.columns(['operation_id', 'key']).doUpdateSet({ ...columns, place_no, measured: likeMeasured }))
    .execute();
}

/**
 * Accepts what lib says today in place of what was printed. Typed values stay, and measured ones unless the figure is of another kind now. Figures that lib no longer gives go,
 * unless one was typed or measured. An operation that is done keeps what it was done by: nothing is changed.
 * Throws RecordNotFound, RecordChanged.
 */
export const acceptFigures = (
  db: Executor,
  operationId: number,
  rev: number,
  figures: Readonly<Record<string, Figure>>,
): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'operation', operationId, rev, {});
    if (row.done_on !== null) return row;
    let place = 0;
    for (const [key, figure] of Object.entries(figures)) await acceptOne(trx, operationId, key, place++, figure);
    await trx
      .deleteFrom('figure')
      .where('operation_id', '=', operationId)
      .where('key', 'not in', [...Object.keys(figures), ''])
      .where('typed_unit', 'is', null)
      .where('measured', 'is', null)
      .execute();
    return row;
  });
