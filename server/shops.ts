import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import { emptyShop } from '../db/empty.ts';
import { openShop, type Shop } from '../db/open.ts';
import { makeFolder } from './data-folder.ts';
import type { Db } from './visit.ts';

type WhichShop = 'own' | 'demo';

/**
 * The owner's shop and the invented one: two files, of which one is open to visitors. Whatever is done in the invented shop
 * lies in a file of its own, so leaving it loses nothing. `pick` is remembered over a restart; `demoAnew` fills the invented shop afresh.
 */
export type Shops = {
  readonly now: () => { readonly db: Db; readonly demo: boolean };
  /** The owner's own file, which also holds the paired devices. */
  readonly own: Db;
  readonly pick: (which: WhichShop) => Promise<void>;
  readonly demoAnew: () => Promise<void>;
  readonly copyDaily: (now: string) => void;
  readonly close: () => Promise<void>;
};

/** Fills an empty file; runs in a transaction, so that a shop half filled never stays. */
export type FillDemo = (db: Db, now: string) => Promise<void>;

const OPEN_KEY = 'open shop';
const FILLED_KEY = 'demo filled';

const settingOf = async (db: Db, key: string): Promise<string> =>
  (await db.selectFrom('setting').select('value').where('key', '=', key).executeTakeFirst())?.value ?? '';

const keep = (db: Db, key: string, value: string): Promise<unknown> =>
  db
    .insertInto('setting')
    .values({ key, value })
    .onConflict((row) => row.column('key').doUpdateSet({ value }))
    .execute();

/** Opens a shop's file and makes sure that it can be written: SQLite itself would open it for reading only, without a word. */
async function openToWrite(file: string, copies: string | null, now: string): Promise<Shop> {
  if (existsSync(file)) accessSync(file, constants.W_OK);
  return openShop(file, { copies, now });
}

const fill = (demo: Shop, fillDemo: FillDemo, now: string): Promise<unknown> =>
  demo.db.transaction().execute(async (db) => {
    await emptyShop(db);
    await fillDemo(db, now);
    await keep(db, FILLED_KEY, now);
  });

/** Runs what it is given one after another. */
function oneByOne(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work, work);
    last = mine.catch(() => undefined);
    return mine;
  };
}

/** Opens the shop in the data folder. clock: gives the present as ISO text. */
export async function openShops(dataFolder: string, clock: () => string, fillDemo: FillDemo): Promise<Shops> {
  makeFolder(dataFolder);
  const own = await openToWrite(path.join(dataFolder, 'shop.sqlite'), path.join(dataFolder, 'copies'), clock());
  const inTurn = oneByOne();
  let demo: Shop | null = null;
  let which: WhichShop = 'own';

  const openDemo = async (): Promise<Shop> => {
    demo ??= await openToWrite(path.join(dataFolder, 'demo.sqlite'), null, clock());
    if ((await settingOf(demo.db, FILLED_KEY)) === '') await fill(demo, fillDemo, clock());
    return demo;
  };

  if ((await settingOf(own.db, OPEN_KEY)) === 'demo') {
    await openDemo();
    which = 'demo';
  }

  return {
    own: own.db,
    now: () => (which === 'demo' && demo ? { db: demo.db, demo: true } : { db: own.db, demo: false }),
    pick: (wanted) =>
      inTurn(async () => {
        if (wanted === 'demo') await openDemo();
        await keep(own.db, OPEN_KEY, wanted);
        which = wanted;
      }),
    demoAnew: () => inTurn(async () => void (await fill(await openDemo(), fillDemo, clock()))),
    copyDaily: (now) => {
      own.copyDaily(now);
    },
    close: async () => {
      await Promise.allSettled([own.close(), demo?.close()]);
    },
  };
}
