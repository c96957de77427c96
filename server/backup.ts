import { existsSync } from 'node:fs';
import path from 'node:path';
import { backupNow } from '../db/backup.ts';
import { byHand } from './by-hand.ts';
import { BadSetting } from './config.ts';

await byHand(({ dataFolder }, now) => {
  const shop = path.join(dataFolder, 'shop.sqlite');
  if (!existsSync(shop))
    throw new BadSetting(`There is no shop in ${dataFolder} yet. Start Backgear once, or set BACKGEAR_DATA to its folder.`);
  return `Copied to ${backupNow(shop, path.join(dataFolder, 'copies'), now)}`;
});
