import type { Executor } from './executor.ts';

/** Capital letters and digits of a name, shortened: "H-12" gives "H12". Never empty. */
const lettersOf = (name: string, most: number): string =>
  name
    .normalize('NFKD')
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .slice(0, most) || 'X';

/** The first of wanted, wanted-2, wanted-3 … that is not taken. */
function firstFree(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted)) return wanted;
  for (let next = 2; ; next += 1) if (!taken.has(`${wanted}-${next}`)) return `${wanted}-${next}`;
}

/** The marks that are `wanted` or begin with it and a dash; by range, so that the index serves. */
async function takenMarks(db: Executor, table: 'part' | 'project', wanted: string): Promise<ReadonlySet<string>> {
  const rows = await db
    .selectFrom(table)
    .select('mark')
    .where((eb) => eb.or([eb('mark', '=', wanted), eb.and([eb('mark', '>=', `${wanted}-`), eb('mark', '<', `${wanted}.`)])]))
    .execute();
  return new Set(rows.map((row) => row.mark));
}

async function freeMark(db: Executor, table: 'part' | 'project', wanted: string): Promise<string> {
  return firstFree(wanted, await takenMarks(db, table, wanted));
}

/** A short stem for the marks of a project's parts: from its model, else its make. To be taken in the transaction that writes it. */
export const newProjectMark = (db: Executor, make: string, model: string): Promise<string> =>
  freeMark(db, 'project', lettersOf(model || make, 6));

/** A part's mark, to be written on tag and paper: "H12-22T" for a wheel, "H12-GUARD" for another thing; "-2" and on when taken. */
export const newPartMark = (db: Executor, stem: string, name: string, teeth: number | null): Promise<string> =>
  freeMark(db, 'part', `${stem}-${teeth === null ? lettersOf(name, 6) : `${teeth}T`}`);
