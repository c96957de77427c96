import path from 'node:path';
import { backupNow } from '../db/backup.ts';
import { readConfig } from './config.ts';
import { packageFolder } from './package-folder.ts';

try {
  const { dataFolder } = readConfig(process.env, packageFolder());
  const copy = backupNow(path.join(dataFolder, 'shop.sqlite'), path.join(dataFolder, 'copies'), new Date().toISOString());
  process.stdout.write(`Copied to ${copy}\n`);
} catch (error) {
  console.error((error as Error).message);
  process.exit(1);
}
