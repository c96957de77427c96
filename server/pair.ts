import path from 'node:path';
import { renderUnicodeCompact } from 'uqr';
import { newPairingCode } from '../db/devices.ts';
import { openShop } from '../db/open.ts';
import { to } from './addresses.ts';
import { byHand } from './by-hand.ts';
import { makeFolder } from './data-folder.ts';
import { shopAddress } from './shop-address.ts';

await byHand(async (config, now) => {
  makeFolder(config.dataFolder);
  const shop = await openShop(path.join(config.dataFolder, 'shop.sqlite'), { copies: path.join(config.dataFolder, 'copies'), now });
  try {
    const address = `${shopAddress(config, '')}${to.pair(await newPairingCode(shop.db, now))}`;
    return `${renderUnicodeCompact(address)}\n${address}\nGood once, for ten minutes. Open it on the device that is to be paired.`;
  } finally {
    await shop.close();
  }
});
