import path from 'node:path';
import { renderUnicodeCompact } from 'uqr';
import { DamagedDatabase, ForeignDatabase, MigrationFailed, NewerDatabase } from '../db/problems.ts';
import { fillDemo } from '../seed/demo.ts';
import { buildApp } from './app.ts';
import { BadSetting, type Config, readConfig } from './config.ts';
import { lanAddresses } from './guard/addresses.ts';
import { packageFolder } from './package-folder.ts';
import { openShops, type Shops } from './shops.ts';

const clock = (): string => new Date().toISOString();
const HOUR_MS = 3_600_000;

const say = (text: string): boolean => process.stdout.write(`${text}\n`);

/** What a person can do about an error at the start; null when it is our own mistake. */
function plainWord(error: unknown, config: Config | null): string | null {
  if (error instanceof BadSetting) return error.message;
  if ([DamagedDatabase, ForeignDatabase, MigrationFailed, NewerDatabase].some((kind) => error instanceof kind))
    return (error as Error).message;
  const code = (error as { code?: string }).code ?? '';
  const folder = config?.dataFolder ?? '';
  if (code === 'EADDRINUSE') return `Port ${config?.port} is taken. Is Backgear already running? Else set BACKGEAR_PORT to another number.`;
  if (code === 'EADDRNOTAVAIL') return `${config?.host} is no address of this machine. Set BACKGEAR_HOST to one that is, or leave it out.`;
  if (['EACCES', 'EROFS', 'EPERM', 'ENOTDIR', 'EEXIST', 'SQLITE_CANTOPEN', 'SQLITE_READONLY'].some((one) => code.startsWith(one))) {
    return `The data folder ${folder} cannot be written (${code}). Give this user the right to, or set BACKGEAR_DATA to another folder.`;
  }
  return null;
}

function greet(config: Config, port: number): void {
  say(`\nBackgear is open. Data: ${path.join(config.dataFolder, 'shop.sqlite')}`);
  say(`On this PC:  http://localhost:${port}`);
  const lan = config.host === '0.0.0.0' || config.host === '::' ? lanAddresses() : [];
  for (const address of lan) say(`On the LAN:  http://${address.includes(':') ? `[${address}]` : address}:${port}`);
  const first = config.printedAddress || (lan[0] ? `http://${lan[0].includes(':') ? `[${lan[0]}]` : lan[0]}:${port}` : '');
  if (first) say(`\n${renderUnicodeCompact(first)}\n${first}`);
}

/** A copy a day for a program that runs for weeks; closing writes everything out. */
function keepHouse(shops: Shops, close: () => Promise<void>): void {
  const daily = () => {
    try {
      shops.copyDaily(clock());
    } catch (error) {
      console.error('Today’s copy of the shop could not be taken:', error);
    }
  };
  daily();
  setInterval(daily, HOUR_MS).unref();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      close().then(
        () => process.exit(0),
        () => process.exit(1),
      );
    });
  }
}

async function start(): Promise<void> {
  let config: Config | null = null;
  try {
    config = readConfig(process.env, packageFolder());
    const shops = await openShops(config.dataFolder, clock, fillDemo);
    const app = await buildApp({ shops, config, clock, log: true });
    app.addHook('onClose', () => shops.close());
    await app.listen({ port: config.port, host: config.host });
    keepHouse(shops, () => app.close());
    const bound = app.server.address();
    greet(config, typeof bound === 'object' && bound ? bound.port : config.port);
  } catch (error) {
    console.error(plainWord(error, config) ?? error);
    process.exit(1);
  }
}

await start();
