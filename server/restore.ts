import path from 'node:path';
import { restore } from '../db/backup.ts';
import { readConfig } from './config.ts';
import { packageFolder } from './package-folder.ts';

const copy = process.argv[2];
if (!copy) {
  console.error('Which copy? npm run restore FILE (copies lie in the data folder under “copies”). Stop Backgear first.');
  process.exit(1);
}
try {
  const { dataFolder } = readConfig(process.env, packageFolder());
  const shop = path.join(dataFolder, 'shop.sqlite');
  const kept = restore(path.resolve(copy), shop, new Date().toISOString());
  process.stdout.write(`${shop} is now that copy.\n${kept ? `What stood there is kept as ${kept}\n` : ''}`);
} catch (error) {
  console.error((error as Error).message);
  process.exit(1);
}
