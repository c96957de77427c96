import type { Executor, Row } from './executor.ts';
import { untilChanged } from './until-changed.ts';

/** A promise of an item, or of a length of it, to a part that is being made. */
export type Promised = Pick<Row<'blank'>, 'routing_id' | 'role' | 'takes_nm' | 'takes_form'> & {
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
};

/** What an item is promised to, bars with what each part takes. */
export const promisesOf = untilChanged(
  (db: Executor, itemId: number): Promise<Promised[]> =>
    db
      .selectFrom('blank')
      .innerJoin('routing', 'routing.id', 'blank.routing_id')
      .innerJoin('part', 'part.id', 'routing.part_id')
      .select(['blank.routing_id', 'blank.role', 'blank.takes_nm', 'blank.takes_form'])
      .select(['part.id as part_id', 'part.mark as part_mark', 'part.name as part_name'])
      .where('blank.item_id', '=', itemId)
      .where('blank.released', '=', 0)
      .where('routing.closed_on', 'is', null)
      .orderBy('blank.routing_id')
      .limit(100)
      .execute(),
);

/** What was made of an item: the record, the part, and the new thing; item_id null: it ended as scrap. */
export type CutInto = Pick<Row<'made'>, 'id' | 'outcome' | 'finished_on'> & {
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
  readonly item_id: number | null;
};

export const cutInto = untilChanged(
  (db: Executor, itemId: number): Promise<CutInto[]> =>
    db
      .selectFrom('blank')
      .innerJoin('made', 'made.routing_id', 'blank.routing_id')
      .innerJoin('part', 'part.id', 'made.part_id')
      .leftJoin('item', 'item.made_id', 'made.id')
      .select(['made.id', 'made.outcome', 'made.finished_on', 'part.id as part_id'])
      .select(['part.mark as part_mark', 'part.name as part_name', 'item.id as item_id'])
      .where('blank.item_id', '=', itemId)
      .where('blank.released', '=', 0)
      .orderBy('made.id')
      .limit(100)
      .execute(),
);
