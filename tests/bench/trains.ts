import { performance } from 'node:perf_hooks';
import { type NearRatio, nearestTrains, type WheelsInTrain } from '../../lib/trains/nearest.ts';
import { numberOf, type Target, targetOf } from '../../lib/trains/target.ts';
import { printNumber } from '../../lib/values/print.ts';
import { fullSearch, trainText } from '../lib/trains/exhaustive.ts';

const say = (text: string): boolean => process.stdout.write(`${text}\n`);
const ms = (x: number): string => `${printNumber(x, 2)} ms`;

/** The middle of several runs after a few to warm up; what is slow anyway is run once. */
function middleMs(run: () => void, runs: number): number {
  if (runs > 1) for (let n = 0; n < 3; n++) run();
  const took = Array.from({ length: runs }, () => {
    const began = performance.now();
    run();
    return performance.now() - began;
  }).sort((a, b) => a - b);
  return took[Math.floor(took.length / 2)] ?? 0;
}

/** Different tooth counts with no more order in them than a drawer has. */
const drawer = (many: number): number[] => Array.from({ length: many }, (_, n) => 20 + 2 * n + (n % 2));
const shorter = (many: number): number[] => Array.from({ length: many }, (_, n) => 20 + n);
const PI = targetOf([127, 200], 1);

/** Today's answer and that of plain loops over every train, which must be the same set of trains. */
function against(wheels: readonly number[], wheelsInTrain: WheelsInTrain, target: Target, what: string): { fast: number; full: number } {
  let found: readonly NearRatio[] = [];
  const fast = middleMs(() => {
    found = nearestTrains({ wheels, target, wheelsInTrain });
  }, 15);
  const mine = found.flatMap(({ trains }) => trains.map(({ drivers, driven }) => trainText(drivers, driven)));
  let all = { off: 0, trains: [] as string[] };
  const full = middleMs(() => {
    all = fullSearch(wheels, (wheelsInTrain / 2) as 2 | 3, numberOf(target));
  }, 1);
  const same = JSON.stringify(mine.sort()) === JSON.stringify(all.trains);
  say(
    `${String(wheels.length).padStart(4)} wheels, ${wheelsInTrain} in a train, ${what}: ${ms(fast).padStart(9)} against ${ms(full).padStart(11)} exhaustive, ${printNumber(full / fast, 0).padStart(6)} ×; ${all.trains.length} equally good, ${same ? 'the same' : 'NOT THE SAME'}`,
  );
  if (!same) process.exitCode = 1;
  return { fast, full };
}

function growth(wheelsInTrain: WheelsInTrain, sizes: readonly number[], list: (many: number) => number[]): void {
  let before: { fast: number; full: number } | null = null;
  for (const many of sizes) {
    const now = against(list(many), wheelsInTrain, PI, 'a ratio with π');
    if (before)
      say(`     grown ${printNumber(now.fast / before.fast, 1)} × beside ${printNumber(now.full / before.full, 1)} × of exhaustive search`);
    before = now;
  }
}

/** The search for trains beside exhaustive search of the same wheels in the same run. */
export function benchTrains(): void {
  say('\nNearest trains: growth with the number of wheels, beside exhaustive search');
  growth(6, [10, 20, 40], drawer);
  growth(4, [25, 50, 100], shorter);
  say('Other ratios, forty wheels');
  against(drawer(40), 6, targetOf([1_270_013, 1_000_003]), 'no train exact');
  against(drawer(40), 6, targetOf([3, 2]), 'thousands exact ');
  say(
    `The largest drawer for six in a train, 48 wheels: ${ms(middleMs(() => nearestTrains({ wheels: shorter(48), target: PI, wheelsInTrain: 6, ratios: 12 }), 5))}`,
  );
  const held = process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers;
  nearestTrains({ wheels: shorter(48), target: targetOf([3, 2]), wheelsInTrain: 6, ratios: 12 });
  say(
    `Memory taken by it, at most: ${printNumber((process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers - held) / 2 ** 20, 0)} MB`,
  );
}
