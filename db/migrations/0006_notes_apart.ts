import { type Kysely, sql } from 'kysely';

// Who finds by `notes` and who only by `text` is decided where it is asked. `text` held the notes as well, so it is written anew.
const statements = [
  `create virtual table found_apart using fts5 (
    kind unindexed, ref unindexed, title unindexed, text, notes,
    tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3 4 5 6 7')`,
  `create temp table text_anew (kind text not null, ref integer not null, text text not null, notes text not null, primary key (kind, ref))`,
  `insert into text_anew select 'project', id, concat_ws(char(10), mark, size, year, serial), notes from project`,
  `insert into text_anew select 'part', id, material, concat_ws(char(10), why, notes) from part`,
  `insert into text_anew select 'machine', id, concat_ws(char(10), kind, nose), notes from machine`,
  `insert into text_anew select 'tool', id, concat_ws(char(10), kind, kept_in), concat_ws(char(10), owner, lent_to, notes) from tool`,
  `insert into text_anew select 'made', id, '', notes from made`,
  `insert into text_anew
    select 'item', item.id, concat_ws(char(10), ifnull(gear.teeth || 'T', ''), kind, material, kept_in, condition), notes
    from item left join gear on gear.id = item.gear_id`,
  `insert into found_apart (rowid, kind, ref, title, text, notes)
    select found.rowid, found.kind, found.ref, found.title, concat_ws(char(10), found.title, anew.text), ifnull(anew.notes, '')
    from found left join text_anew as anew on anew.kind = found.kind and anew.ref = found.ref`,
  `drop table text_anew`,
  `drop table found`,
  `alter table found_apart rename to found`,
];

/** What notes say is found apart from the rest: notes may hold names and prices, and anyone on the network may search. */
export const notesApart = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
