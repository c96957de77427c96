import type { Kysely, KyselyPlugin } from 'kysely';

/** The same shop, with every statement counted that goes to it. */
function counting<T>(db: Kysely<T>): { readonly db: Kysely<T>; readonly count: () => number } {
  let statements = 0;
  const plugin: KyselyPlugin = {
    transformQuery: ({ node }) => {
      statements += 1;
      return node;
    },
    transformResult: async ({ result }) => result,
  };
  return { db: db.withPlugin(plugin), count: () => statements };
}

/** How many statements something takes. */
export async function statementsOf<T>(db: Kysely<T>, act: (db: Kysely<T>) => Promise<unknown>): Promise<number> {
  const counted = counting(db);
  await act(counted.db);
  return counted.count();
}
