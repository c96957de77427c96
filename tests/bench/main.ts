import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { countRatios } from '../../lib/trains/ratio-count.ts';
import { printNumber } from '../../lib/values/print.ts';
import { fillDemo } from '../../seed/demo.ts';
import { buildApp } from '../../server/app.ts';
import { openShops } from '../../server/shops.ts';
import { fillLarge } from './fill.ts';
import { benchIdentify } from './identify.ts';
import { timePages } from './pages.ts';
import { timeProfiles } from './profile.ts';
import { bareStart, coldStart } from './start.ts';
import { benchTrains } from './trains.ts';

/** Everything from one run on one machine: read the ratios, not the milliseconds. */
const SIZE = { projects: 1_000, parts: 50_000, made: 500_000 };

const say = (text: string): boolean => process.stdout.write(`${text}\n`);
const ms = (x: number): string => `${printNumber(x, 2)} ms`;

async function benchPages(folder: string): Promise<void> {
  const clock = (): string => new Date().toISOString();
  const shops = await openShops(folder, clock, fillDemo);
  const { own } = shops;
  await fillDemo(own, clock());
  const began = performance.now();
  await fillLarge(own, SIZE);
  say(`Filled with ${SIZE.projects} projects, ${SIZE.parts} parts, ${SIZE.made} made records in ${ms(performance.now() - began)}`);
  const config = { dataFolder: folder, port: 0, host: '127.0.0.1', names: [], printedAddress: '' };
  const app = await buildApp({ shops, config, clock, log: false });
  const times = await timePages(app);
  say('\nPages: median against a bare page of the same bytes (slowest first)');
  for (const one of times) {
    say(
      `${printNumber(one.ms / one.bareMs, 2).padStart(7)} ×  ${ms(one.ms).padStart(10)} to ${ms(one.bareMs).padStart(8)}  ${String(one.bytes).padStart(7)} bytes  ${one.address}`,
    );
  }
  await app.close();
  await shops.close();
}

function benchProfiles(): void {
  say('\nFull tooth profiles with fillet (a thousand tangents are 1 ×)');
  for (const { name, ms: took, ofTangents } of timeProfiles())
    say(`${printNumber(ofTangents, 1).padStart(7)} ×  ${printNumber(took, 3)} ms  ${name}`);
}

function benchRatios(): void {
  say('\nRatios of a set of wheels, two and four in a train (all counts different primes: nothing falls together)');
  const primes = [...Array(400).keys()].slice(11).filter((n) => [2, 3, 5, 7, 11, 13, 17, 19].every((p) => n === p || n % p !== 0));
  const took = [15, 30, 60].map((wheels) => {
    const began = performance.now();
    const { distinct } = countRatios(primes.slice(0, wheels));
    return { wheels, distinct, ms: performance.now() - began };
  });
  for (const one of took)
    say(`${one.wheels} wheels: ${one.distinct} ratios in ${ms(one.ms)} (${printNumber(one.ms / (took[0]?.ms ?? 1), 1)} × of 15 wheels)`);
}

async function benchStart(folder: string): Promise<void> {
  const bare = await bareStart();
  const start = await coldStart(folder);
  say(
    `\nCold start on that shop: ${ms(start.ms)}, ${printNumber(start.ms / bare, 1)} × of node alone (${ms(bare)}); ${printNumber(start.idleMb, 0)} MB idle`,
  );
}

const folder = mkdtempSync(path.join(tmpdir(), 'backgear-bench-'));
try {
  benchProfiles();
  benchRatios();
  benchIdentify(say);
  benchTrains();
  await benchPages(folder);
  await benchStart(folder);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
