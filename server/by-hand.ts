import { type Config, readConfig } from './config.ts';
import { packageFolder } from './package-folder.ts';
import { plainWord } from './plain-word.ts';

/** Runs one thing that is done by hand beside the server; prints what it gives, or one clear sentence and exit code 1. */
export async function byHand(work: (config: Config, now: string) => string | Promise<string>): Promise<void> {
  let config: Config | null = null;
  try {
    config = readConfig(process.env, packageFolder());
    process.stdout.write(`${await work(config, new Date().toISOString())}\n`);
  } catch (error) {
    console.error(plainWord(error, config) ?? error);
    process.exitCode = 1;
  }
}
