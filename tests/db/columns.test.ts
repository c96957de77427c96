import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { aShop } from './bench.ts';

type Column = { name: string; nullable: boolean; number: boolean };

const db = join(import.meta.dirname, '../../db');
const snake = (name: string): string => name.replace(/(?!^)([A-Z])/g, '_$1').toLowerCase();

/** The interfaces of db/tables as written: table → its columns. Text unions and named types are text; number and Flag are numbers. */
function declared(): Map<string, Column[]> {
  const text = readdirSync(join(db, 'tables'))
    .map((file) => readFileSync(join(db, 'tables', file), 'utf8'))
    .join('\n');
  const tables = text.matchAll(/export interface (\w+)Table \{\n([\s\S]*?)\n\}/g);
  return new Map(
    [...tables].map(([, name = '', body = '']) => {
      const columns = [...body.matchAll(/^ {2}(\w+): (.+);$/gm)].map(([, column = '', type = '']) => ({
        name: column,
        nullable: /\bnull\b/.test(type),
        number: /\b(number|Flag)\b/.test(type.replace(/\[number\]/g, '')),
      }));
      return [snake(name), columns] as const;
    }),
  );
}

test('the types say what the file has: tables, columns, null or not, number or text', async () => {
  const shop = await aShop();
  const types = declared();
  const { rows: tables } = await sql<{ name: string }>`select name from sqlite_schema where type = 'table'
    and name not like 'sqlite_%' and name not like 'kysely_%' and name not like 'found\_%' escape '\\' or name = 'found_place'`.execute(
    shop.db,
  );
  expect([...types.keys()].sort()).toEqual(tables.map((table) => table.name).sort());
  for (const [table, columns] of types) {
    type Info = { name: string; type: string; notnull: number; pk: number; hidden: number };
    const { rows } = await sql<Info>`select * from pragma_table_xinfo(${table})`.execute(shop.db);
    if (table === 'found') {
      expect(columns.map((column) => column.name).filter((name) => name !== 'rowid')).toEqual(
        rows.filter((row) => row.hidden === 0).map((row) => row.name),
      );
      continue;
    }
    const real = rows.map((row) => ({ name: row.name, nullable: row.notnull === 0 && row.pk === 0, number: row.type !== 'TEXT' }));
    expect({ table, columns }).toEqual({ table, columns: real });
  }
});

test('every table is strict', async () => {
  const shop = await aShop();
  const { rows } = await sql<{ name: string; strict: number }>`select name, strict from pragma_table_list
    where schema = 'main' and type = 'table' and name not like 'sqlite_%' and name not like 'kysely_%'`.execute(shop.db);
  expect(rows.length).toBeGreaterThan(30);
  expect(rows.filter((row) => row.strict === 0)).toEqual([]);
});
