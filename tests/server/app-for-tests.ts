import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { FastifyInstance } from 'fastify';
import { buildApp } from '../../server/app.ts';
import type { Config } from '../../server/config.ts';
import { type FillDemo, openShops, type Shops } from '../../server/shops.ts';

/** The present of all tests of the server. */
export const NOW = '2026-03-14T10:00:00.000Z';

/** A server in a folder of its own with a fixed clock, not listening; asked through `app.inject`, it takes the asker for the shop PC. */
export type TestShop = {
  readonly app: FastifyInstance;
  readonly shops: Shops;
  readonly config: Config;
  readonly folder: string;
  readonly close: () => Promise<void>;
};

const nothing: FillDemo = async () => {};

type Wanted = { readonly clock?: () => string; readonly fillDemo?: FillDemo; readonly config?: Partial<Config> };

/** fillDemo: what the invented shop is filled with when it is first opened; nothing unless given. */
export async function shopForTests({ clock = () => NOW, fillDemo = nothing, config: differs = {} }: Wanted = {}): Promise<TestShop> {
  const folder = mkdtempSync(path.join(tmpdir(), 'backgear-test-'));
  const config: Config = { dataFolder: folder, port: 0, host: '127.0.0.1', names: [], printedAddress: '', ...differs };
  const shops = await openShops(config.dataFolder, clock, fillDemo);
  const app = await buildApp({ shops, config, clock, log: false });
  await app.ready();
  const close = async () => {
    await app.close();
    await shops.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { app, shops, config, folder, close };
}

/** A GET from the shop PC. */
export const visit = (shop: TestShop, url: string) => shop.app.inject({ method: 'GET', url, headers: { host: 'localhost' } });

/** A form sent from a page of the shop itself. */
export const send = (shop: TestShop, url: string, form: Readonly<Record<string, string>>) =>
  shop.app.inject({
    method: 'POST',
    url,
    headers: { host: 'localhost', origin: 'http://localhost', 'content-type': 'application/x-www-form-urlencoded' },
    payload: new URLSearchParams(form).toString(),
  });
