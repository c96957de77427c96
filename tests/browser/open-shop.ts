import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fillDemo } from '../../seed/demo.ts';
import { buildApp } from '../../server/app.ts';
import { openShops, type Shops } from '../../server/shops.ts';

export type OpenShop = { readonly base: string; readonly shops: Shops; readonly close: () => Promise<void> };

/** A server on a free port with a data folder of its own. which: the invented shop, or an empty one. */
export async function listeningShop(which: 'demo' | 'own', clock = (): string => new Date().toISOString()): Promise<OpenShop> {
  const folder = mkdtempSync(path.join(tmpdir(), 'backgear-'));
  const shops = await openShops(folder, clock, fillDemo);
  await shops.pick(which);
  const config = { dataFolder: folder, port: 0, host: '127.0.0.1', names: [], printedAddress: 'http://shop.test:4870' };
  const app = await buildApp({ shops, config, clock, log: false });
  await app.listen({ port: 0, host: '127.0.0.1' });
  const bound = app.server.address();
  const port = typeof bound === 'object' && bound ? bound.port : 0;
  const close = async (): Promise<void> => {
    await app.close();
    await shops.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { base: `http://127.0.0.1:${port}`, shops, close };
}
