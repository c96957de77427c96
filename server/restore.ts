import { realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { restore } from '../db/backup.ts';
import { byHand } from './by-hand.ts';
import { BadSetting } from './config.ts';
import { makeFolder } from './data-folder.ts';

const there = (file: string) => statSync(file, { throwIfNoEntry: false });

function refuseBadCopy(copy: string, shop: string): void {
  const found = there(copy);
  if (!found) throw new BadSetting(`There is no file ${copy}.`);
  if (!found.isFile()) throw new BadSetting(`${copy} is no file. Name one of the copies in it.`);
  if (there(shop) && realpathSync(copy) === realpathSync(shop)) throw new BadSetting(`${copy} is the shop itself. Name a copy of it.`);
}

await byHand(({ dataFolder }, now) => {
  const given = process.argv[2];
  if (!given) throw new BadSetting('Which copy? npm run restore FILE (copies lie in the data folder under “copies”). Stop Backgear first.');
  const copy = path.resolve(process.env['INIT_CWD'] ?? '', given);
  const shop = path.join(dataFolder, 'shop.sqlite');
  refuseBadCopy(copy, shop);
  makeFolder(dataFolder);
  const kept = restore(copy, shop, now);
  return `${shop} is now that copy.${kept ? `\nWhat stood there is kept as ${kept}` : ''}`;
});
