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

/** A peer on the LAN that is none of this machine's own addresses (a network kept for documents). */
export const LAN_PEER = '198.51.100.23';

type Asked = {
  readonly method?: 'GET' | 'HEAD' | 'POST' | 'PUT' | 'PATCH' | 'DELETE' | 'OPTIONS';
  /** The address that the request comes from; the shop PC unless given. */
  readonly peer?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly form?: Readonly<Record<string, string>> | string;
};

/** Any request. Without headers of its own it asks `localhost`, and a change says that it came from there. */
export const ask = (shop: TestShop, url: string, { method = 'GET', peer = '127.0.0.1', headers, form }: Asked = {}) =>
  shop.app.inject({
    method,
    url,
    remoteAddress: peer,
    headers: {
      ...(form === undefined ? {} : { 'content-type': 'application/x-www-form-urlencoded' }),
      ...(headers ?? { host: 'localhost', ...(method === 'GET' || method === 'HEAD' ? {} : { origin: 'http://localhost' }) }),
    },
    ...(form === undefined ? {} : { payload: typeof form === 'string' ? form : new URLSearchParams(form).toString() }),
  });

/** Pairs a device as people do: the PC makes a code, the phone presses its button. Gives the cookie that the phone keeps. */
export async function pairedCookie(shop: TestShop, name = 'phone'): Promise<string> {
  const made = await send(shop, '/devices/code', {});
  const code = String(made.headers.location).split('/').at(-1) ?? '';
  const headers = { host: 'localhost', origin: 'http://localhost' };
  const paired = await ask(shop, `/pair/${code}`, { method: 'POST', peer: LAN_PEER, headers, form: { name } });
  const cookie = paired.cookies.find((one) => one.name === 'backgear-device');
  return `backgear-device=${cookie?.value ?? ''}`;
}
