import { type Kysely, sql } from 'kysely';

const statements = [
  `create table made (
    id integer primary key, part_id integer not null references part, routing_id integer not null unique references routing,
    outcome text not null check (outcome in ('good', 'scrap')), finished_on text not null, minutes integer not null check (minutes >= 0),
    cost_cents integer not null check (cost_cents >= 0), notes text not null, sheet text not null check (json_valid(sheet))) strict`,
  `create index made_of_part on made (part_id, id)`,
  `create virtual table found using fts5 (
    kind unindexed, ref unindexed, title unindexed, text, tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3 4 5 6 7')`,
  `create table found_place (kind text not null, ref integer not null, found_rowid integer not null unique, primary key (kind, ref)) strict, without rowid`,
  `create table device (
    id integer primary key, token_sha256 text not null unique, name text not null, paired_on text not null, seen_on text not null,
    revoked_on text) strict`,
  `create table pairing_code (code_sha256 text primary key, made_at text not null, good_until text not null, used_at text) strict, without rowid`,
  `create table sent (mark text primary key check (mark <> ''), answered_with text not null, at text not null) strict, without rowid`,
  `create index sent_at on sent (at)`,
  `create table setting (key text primary key, value text not null, rev integer not null default 1) strict, without rowid`,
];

export const records = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
