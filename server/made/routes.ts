import { type MadeLine, madeRecord, madeRecords } from '../../db/made.ts';
import type { Page as Rows } from '../../db/page.ts';
import { timeWords } from '../../lib/figure/time-words.ts';
import { to } from '../addresses.ts';
import { askedBefore } from '../asked.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { dayOf } from '../forms/date-field.ts';
import type { EmptyView, TableView } from '../page.ts';
import { recordId } from '../record-id.ts';
import type { PageData } from '../views.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { moneyWords, outcomeState, recordView } from './record-view.ts';

const SIZE = 50;

const nothing: EmptyView = {
  title: 'Nothing has been made yet',
  says: 'When a routing is through, its record stands here: what from, how, the sizes as measured, and the hours.',
  act: { says: 'See what can be done today', href: to.today },
  drawing: '',
};

function listTable(rows: readonly MadeLine[], trusted: boolean): TableView {
  return {
    title: '',
    heads: heads(
      ['Made', 'name'],
      ['Outcome', 'state'],
      ['Finished', 'words'],
      ['Time', 'figure'],
      ...(trusted ? [['Cost', 'figure'] as const] : []),
    ),
    rows: rows.map((one) => ({
      id: `made-${one.id}`,
      cells: [
        linkCell(`${one.part_mark} ${one.part_name}`, to.made(one.id)),
        stateCell(outcomeState(one.outcome)),
        cell(dayOf(one.finished_on)),
        cell(timeWords(one.minutes)),
        ...(trusted ? [cell(moneyWords(one.cost_cents))] : []),
      ],
    })),
    empty: '',
  };
}

function listView({ rows, next }: Rows<MadeLine>, before: number | null, trusted: boolean): PageData<'made/list'> {
  const any = rows.length > 0;
  const earlier = before === null ? '' : to.madeList;
  return {
    title: 'What was made',
    place: 'Today',
    back: { says: 'Today', href: to.today },
    titleBlock: [],
    says: any ? 'Newest first.' : '',
    table: any ? listTable(rows, trusted) : null,
    empty: any ? null : nothing,
    pager: next === null && before === null ? null : { says: '', earlier, later: next === null ? '' : to.madeBefore(next) },
  };
}

/** Everything that was made or spoilt, newest first. */
export async function list(visit: Visit): Promise<Result> {
  const before = askedBefore(visit);
  return show('made/list', listView(await madeRecords(visit.db, { before, size: SIZE }), before, visit.trusted));
}

export const record = async (visit: Visit): Promise<Result> =>
  show('made/record', recordView(await madeRecord(visit.db, recordId('made record', visit.params['id'])), visit.trusted));
