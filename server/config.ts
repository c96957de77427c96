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

/** An address to print, without a slash at the end; '' when none is set. */
function printed(text: string | undefined): string {
  const address = (text ?? '').trim().replace(/\/+$/, '');
  if (address === '') return '';
  const parsed = URL.canParse(address) ? new URL(address) : null;
  const whole =
    parsed !== null && /^https?:$/.test(parsed.protocol) && parsed.pathname === '/' && parsed.search === '' && parsed.hash === '';
  if (!whole)
    throw new BadSetting(`BACKGEAR_ADDRESS is “${text}”: give the whole address, such as http://shop.local:4870, and no page after it.`);
  return address;
}

/** Names without a port; the name that sheets print is one of them, since phones will ask by it. */
function names(listed: string | undefined, printedAddress: string): string[] {
  const given = (listed ?? '').split(/[\s,]+/).map((name) => name.replace(/:\d+$/, ''));
  return [...given, ...(printedAddress ? [new URL(printedAddress).hostname] : [])].filter((name) => name !== '');
}

/** The settings, from the environment. packageFolder: where package.json lies. Throws BadSetting. */
export function readConfig(environment: NodeJS.ProcessEnv, packageFolder: string): Config {
  const printedAddress = printed(environment['BACKGEAR_ADDRESS']);
  return {
    dataFolder: path.resolve(environment['BACKGEAR_DATA'] || path.join(packageFolder, 'data')),
    port: port(environment['BACKGEAR_PORT']),
    host: environment['BACKGEAR_HOST'] || '0.0.0.0',
    names: names(environment['BACKGEAR_NAMES'], printedAddress),
    printedAddress,
  };
}
