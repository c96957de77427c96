import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { setSetting } from '../../db/settings.ts';
import { countRatios } from '../../lib/trains/ratio-count.ts';
import { printNumber } from '../../lib/values/print.ts';
import { fillDemo } from '../../seed/demo.ts';
import { buildApp } from '../../server/app.ts';
import { openShops } from '../../server/shops.ts';
import { fillLarge, type Size } from './fill.ts';
import { benchIdentify } from './identify.ts';
import { changedTimesBare, medianOf, type PageTime, timePages, timesBare } from './pages.ts';
import { timeProfiles } from './profile.ts';
import { bareStart, coldStart, type Start } from './start.ts';
import { benchTrains } from './trains.ts';

/** Everything from one run on one machine: read the ratios, not the milliseconds. */
const SIZE = { projects: 1_000, parts: 50_000, made: 500_000 };

const say = (text: string): boolean => process.stdout.write(`${text}\n`);
const ms = (x: number): string => `${printNumber(x, 2)} ms`;

const clock = (): string => new Date().toISOString();

async function timesIn(folder: string, size: Size): Promise<readonly PageTime[]> {
  mkdirSync(folder, { recursive: true });
  const shops = await openShops(folder, clock, fillDemo);
  const { own } = shops;
  await fillDemo(own, clock());
  const began = performance.now();
  await fillLarge(own, size);
  say(`\nFilled with ${size.projects} projects, ${size.parts} parts, ${size.made} made records in ${ms(performance.now() - began)}`);
  const config = { dataFolder: folder, port: 0, host: '127.0.0.1', names: [], printedAddress: '' };
  const app = await buildApp({ shops, config, clock, log: false });
  let changes = 0;
  const times = await timePages(app, () => setSetting(own, 'benched', String(changes++)));
  await app.close();
  await shops.close();
  return times;
}

const times = (x: number): string => `${printNumber(x, 2)} ×`;

/** Every page of the large shop; then how the slowest, and the page that grew most, stand beside the same in a shop of a tenth the size. */
async function benchPages(folder: string): Promise<string> {
  const small = await timesIn(path.join(folder, 'small'), { projects: SIZE.projects / 10, parts: SIZE.parts / 10, made: SIZE.made / 10 });
  const large = await timesIn(path.join(folder, 'large'), SIZE);
  say(
    'Pages against a bare page of the same bytes, processor time: seen again, and first seen after something was written (slowest first)',
  );
  for (const one of large)
    say(
      `${times(timesBare(one)).padStart(9)} ${times(changedTimesBare(one)).padStart(9)}  ${ms(one.ms).padStart(10)} ${ms(one.changedMs).padStart(10)} to ${ms(one.bareMs).padStart(8)}  ${String(one.bytes).padStart(7)} bytes  ${one.address}`,
    );
  // sums read nothing of the shop
  const grown = large.flatMap((one) => {
    const before = small.find(({ kind }) => kind === one.kind);
    return before && !one.kind.startsWith('/sums') ? [{ one, before, by: one.changedMs / before.changedMs }] : [];
  });
  const most = grown.toSorted((a, b) => b.by - a.by)[0];
  const slowest = grown.toSorted((a, b) => b.one.changedMs - a.one.changedMs)[0];
  for (const [what, pair] of [
    ['The slowest page', slowest],
    ['The page that grew most', most],
  ] as const)
    if (pair)
      say(
        `${what} beside a shop with ten times fewer records: ${pair.one.address} ${ms(pair.one.changedMs)} against ${ms(pair.before.changedMs)}, ${times(pair.by)}`,
      );
  const within = large.filter((one) => timesBare(one) <= 3).length;
  return `Median of ${large.length} pages: ${times(medianOf(large, timesBare))} the bare page seen again (${within} within 3 ×), ${times(medianOf(large, changedTimesBare))} first seen after something was written`;
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

async function benchStart(folder: string): Promise<string> {
  const bares = [await bareStart(), await bareStart(), await bareStart()].toSorted((a, b) => a.processorMs - b.processorMs);
  const bare = bares[1] ?? { ms: Number.NaN, processorMs: Number.NaN };
  const first = await coldStart(folder);
  const later =
    [await coldStart(folder), await coldStart(folder), await coldStart(folder)].toSorted((a, b) => a.processorMs - b.processorMs)[1] ??
    first;
  const said = ({ ms: took, processorMs, wordMs, idleMb }: Start): string =>
    `${ms(processorMs)} of processor time to the first page, ${printNumber(processorMs / bare.processorMs, 1)} × of node alone; by the clock ${ms(took)}, its word after ${ms(wordMs)}; ${printNumber(idleMb, 0)} MB idle`;
  return [
    `Node alone: ${ms(bare.processorMs)} of processor time, ${ms(bare.ms)} by the clock`,
    `Cold start on that shop: ${said(later)}`,
    `The first of a day, with the whole file checked and copied: ${said(first)}`,
  ].join('\n');
}

const folder = mkdtempSync(path.join(tmpdir(), 'backgear-bench-'));
try {
  benchProfiles();
  benchRatios();
  benchIdentify(say);
  benchTrains();
  const pages = await benchPages(folder);
  const start = await benchStart(path.join(folder, 'large'));
  say(`\n${start}\n${pages}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
