import path from 'node:path';
import { renderUnicodeCompact } from 'uqr';
import { newPairingCode } from '../db/devices.ts';
import { openShop } from '../db/open.ts';
import { to } from './addresses.ts';
import { readConfig } from './config.ts';
import { packageFolder } from './package-folder.ts';
import { shopAddress } from './shop-address.ts';

try {
  const config = readConfig(process.env, packageFolder());
  const now = new Date().toISOString();
  const shop = await openShop(path.join(config.dataFolder, 'shop.sqlite'), { copies: null, now });
  const code = await newPairingCode(shop.db, now);
  await shop.close();
  const address = `${shopAddress(config, '')}${to.pair(code)}`;
  process.stdout.write(
    `${renderUnicodeCompact(address)}\n${address}\nGood once, for ten minutes. Open it on the device that is to be paired.\n`,
  );
} catch (error) {
  console.error((error as Error).message);
  process.exit(1);
}
