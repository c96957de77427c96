import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { restore } from '../db/backup.ts';
import { closeToOthers } from '../db/in-use.ts';
import { byHand } from './by-hand.ts';
import { BadSetting } from './config.ts';

await byHand(({ dataFolder }, now) => {
  const given = process.argv[2];
  if (!given) throw new BadSetting('Which copy? npm run restore FILE (copies lie in the data folder under “copies”). Stop Backgear first.');
  const copy = path.resolve(process.env['INIT_CWD'] ?? '', given);
  if (!existsSync(copy)) throw new BadSetting(`There is no file ${copy}.`);
  const shop = path.join(dataFolder, 'shop.sqlite');
  mkdirSync(dataFolder, { recursive: true });
  if (existsSync(shop)) closeToOthers(shop);
  const kept = restore(copy, shop, now);
  return `${shop} is now that copy.${kept ? `\nWhat stood there is kept as ${kept}` : ''}`;
});
