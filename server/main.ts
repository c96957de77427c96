import { buildApp } from './app.ts';
import { type Config, readConfig } from './config.ts';
import { greeting } from './greeting.ts';
import { packageFolder } from './package-folder.ts';
import { readAllRooms } from './pages.ts';
import { plainWord } from './plain-word.ts';
import { portIsFree } from './port-free.ts';
import { type FillDemo, openShops, type Shops } from './shops.ts';

const clock = (): string => new Date().toISOString();
const HOUR_MS = 3_600_000;
/** How long whoever is still being answered may take once the program is told to end. */
const LAST_ANSWERS_MS = 500;
/** The first page has a second to itself before the rooms behind the other pages are read in. */
const FIRST_PAGE_MS = 1000;

/** The invented shop is read in only when somebody enters it. */
const fillDemo: FillDemo = async (db, now) => (await import('../seed/demo.ts')).fillDemo(db, now);

/** A copy a day for a program that runs for weeks. */
function copyDaily(shops: Shops): void {
  const daily = () => {
    try {
      shops.copyDaily(clock());
    } catch (error) {
      console.error('Today’s copy of the shop could not be taken:', error);
    }
  };
  daily();
  setInterval(daily, HOUR_MS).unref();
}

/** Whoever asks for a room sooner has it read in at once. */
function readRoomsSoon(): void {
  const read = () => void readAllRooms().catch((error: unknown) => console.error('Some pages could not be read in:', error));
  setTimeout(read, FIRST_PAGE_MS).unref();
}

/** Ends on a signal: answers what it is answering, writes everything out, and cuts off whoever holds a connection open. */
function endOnSignal(close: () => Promise<void>, cutOff: () => void): void {
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      setTimeout(cutOff, LAST_ANSWERS_MS).unref();
      close().then(
        () => process.exit(0),
        (error: unknown) => {
          console.error('Closing failed:', error);
          process.exit(1);
        },
      );
    });
  }
}

async function start(): Promise<void> {
  let config: Config | null = null;
  try {
    config = readConfig(process.env, packageFolder());
    await portIsFree(config.port, config.host);
    const shops = await openShops(config.dataFolder, clock, fillDemo);
    const app = await buildApp({ shops, config, clock, log: true });
    app.addHook('onClose', () => shops.close());
    await app.listen({ port: config.port, host: config.host });
    endOnSignal(
      () => app.close(),
      () => app.server.closeAllConnections(),
    );
    const bound = app.server.address();
    process.stdout.write(greeting(config, typeof bound === 'object' && bound ? bound.port : config.port));
    copyDaily(shops);
    readRoomsSoon();
  } catch (error) {
    console.error(plainWord(error, config) ?? error);
    process.exit(1);
  }
}

await start();
