import { sql } from 'kysely';
import type { Db } from '../../server/visit.ts';

/** How large the benched shop is. */
export type Size = { readonly projects: number; readonly parts: number; readonly made: number };

const count = (n: number) => sql`with recursive c(i) as (select 1 union all select i + 1 from c where i < ${n})`;

/** Adds rows by the thousand to a shop; ids run on from what is there. Plain SQL: it is the size that matters here, not the way in. */
export async function fillLarge(db: Db, { projects, parts, made }: Size): Promise<void> {
  const top = async (table: 'project' | 'assembly' | 'part' | 'routing'): Promise<number> =>
    (
      await db
        .selectFrom(table)
        .select((eb) => eb.fn.max('id').as('top'))
        .executeTakeFirst()
    )?.top ?? 0;
  const [p, a, t, r] = [await top('project'), await top('assembly'), await top('part'), await top('routing')];
  await db.transaction().execute(async (trx) => {
    await sql`insert into project (id, make, model, what, size, year, serial, mark, notes, opened_on)
      ${count(projects)} select ${p} + i, 'Dunmarrow', 'No. ' || i, 'planer', '', '', 'S' || i, 'X' || i, '', '2025-01-01' from c`.execute(
      trx,
    );
    await sql`insert into assembly (id, project_id, name, serial, notes) ${count(projects)} select ${a} + i, ${p} + i, 'Feed box', '', '' from c`.execute(
      trx,
    );
    await sql`insert into part (id, project_id, assembly_id, name, mark, material, why, notes)
      ${count(parts)} select ${t} + i, ${p} + 1 + i % ${projects}, ${a} + 1 + i % ${projects}, 'Stud ' || i, 'X' || (1 + i % ${projects}) || '-S' || i, '', '', '' from c`.execute(
      trx,
    );
    await sql`insert into routing (id, part_id, way, opened_on, closed_on, notes)
      ${count(made)} select ${r} + i, ${t} + 1 + i % ${parts}, 'make from stock', '2025-01-02', '2025-02-02', '' from c`.execute(trx);
    await sql`insert into made (part_id, routing_id, outcome, finished_on, minutes, cost_cents, notes, sheet)
      ${count(made)} select ${t} + 1 + i % ${parts}, ${r} + i, 'good', '2025-02-02', 60 + i % 240, 0, '', '{}' from c`.execute(trx);
    await sql`insert into found (kind, ref, title, text) ${count(parts)}
      select 'part', ${t} + i, 'Stud ' || i, 'Stud ' || i || char(10) || 'X' || (1 + i % ${projects}) || '-S' || i from c`.execute(trx);
  });
}
