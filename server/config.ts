import path from 'node:path';

/** Everything that the environment may set. Documented in README.md, "Settings". */
export type Config = {
  /** The one folder that holds both databases and their copies. */
  readonly dataFolder: string;
  readonly port: number;
  readonly host: string;
  /** Further names under which this server may be asked, beside its own. */
  readonly names: readonly string[];
  /** Address printed on sheets; empty: the first LAN address. */
  readonly printedAddress: string;
};

/** Says what is wrong with a setting; the program prints it and ends with exit code 1. */
export class BadSetting extends Error {
  override readonly name = 'BadSetting';
}

function port(text: string | undefined): number {
  if (text === undefined || text === '') return 4870;
  const number = Number(text);
  if (!/^\d{1,5}$/.test(text) || number > 65_535) throw new BadSetting(`BACKGEAR_PORT is “${text}”: give a whole number from 0 to 65535.`);
  return number;
}

/** The settings, from the environment. packageFolder: where package.json lies. Throws BadSetting. */
export function readConfig(environment: NodeJS.ProcessEnv, packageFolder: string): Config {
  return {
    dataFolder: path.resolve(environment['BACKGEAR_DATA'] || path.join(packageFolder, 'data')),
    port: port(environment['BACKGEAR_PORT']),
    host: environment['BACKGEAR_HOST'] || '0.0.0.0',
    names: (environment['BACKGEAR_NAMES'] ?? '').split(/[\s,]+/).filter((name) => name !== ''),
    printedAddress: (environment['BACKGEAR_ADDRESS'] ?? '').replace(/\/+$/, ''),
  };
}
