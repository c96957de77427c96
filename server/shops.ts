import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { openShop, type Shop } from '../db/open.ts';
import type { Db } from './visit.ts';

/**
 * The owner's shop and the invented one: two files, of which one is open to visitors. Whatever is done in the invented shop
 * lies in a file of its own, so leaving it loses nothing. `pick` is remembered over a restart.
 */
export type Shops = {
  readonly now: () => { readonly db: Db; readonly demo: boolean };
  /** The owner's own file, which also holds the paired devices. */
  readonly own: Db;
  readonly pick: (which: 'own' | 'demo') => Promise<void>;
  readonly copyDaily: (now: string) => void;
  readonly close: () => Promise<void>;
};

export type FillDemo = (db: Db, now: string) => Promise<void>;

const OPEN_KEY = 'open shop';

async function remembered(own: Shop): Promise<'own' | 'demo'> {
  const row = await own.db.selectFrom('setting').select('value').where('key', '=', OPEN_KEY).executeTakeFirst();
  return row?.value === 'demo' ? 'demo' : 'own';
}

const remember = (own: Shop, which: string): Promise<unknown> =>
  own.db
    .insertInto('setting')
    .values({ key: OPEN_KEY, value: which })
    .onConflict((row) => row.column('key').doUpdateSet({ value: which }))
    .execute();

/** Opens the shop in the data folder. clock: gives the present as ISO text. */
export async function openShops(dataFolder: string, clock: () => string, fillDemo: FillDemo): Promise<Shops> {
  mkdirSync(dataFolder, { recursive: true });
  const copies = path.join(dataFolder, 'copies');
  const own = await openShop(path.join(dataFolder, 'shop.sqlite'), { copies, now: clock() });
  let demo: Shop | null = null;

  const openDemo = async (): Promise<Shop> => {
    const file = path.join(dataFolder, 'demo.sqlite');
    const fresh = !existsSync(file);
    const shop = await openShop(file, { copies: null, now: clock() });
    if (fresh) await fillDemo(shop.db, clock());
    return shop;
  };

  let which = await remembered(own);
  if (which === 'demo') demo = await openDemo();

  return {
    own: own.db,
    now: () => (which === 'demo' && demo ? { db: demo.db, demo: true } : { db: own.db, demo: false }),
    pick: async (wanted) => {
      if (wanted === 'demo') demo ??= await openDemo();
      await remember(own, wanted);
      which = wanted;
    },
    copyDaily: (now) => {
      own.copyDaily(now);
    },
    close: async () => {
      await own.close();
      await demo?.close();
    },
  };
}
