import { performance } from 'node:perf_hooks';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { span } from '../../lib/gears/spur.formulas.ts';
import { type Identified, identify } from '../../lib/identify/identify.ts';
import { MOST_SAID } from '../../lib/identify/temper.data.ts';
import { printNumber } from '../../lib/values/print.ts';
import { seeded } from './identify-draw.ts';
import { FOURTH } from './identify-fourth.ts';
import { THIRD } from './identify-third.ts';
import { FIRST, type MadeUp, makeUp, SECOND } from './identify-worn.ts';

/** How often the first answer was right at each tenth of stated confidence. said and right are sums over n answers. */
type Bin = { readonly n: number; readonly said: number; readonly right: number };
type Borne = { readonly answers: readonly Bin[]; readonly pitches: readonly Bin[]; readonly angles: readonly Bin[] };

type Judged = { readonly said: number; readonly right: boolean };

/** The first answer, a candidate or none, with what was said of it. */
function judged({ list, none }: Identified, { truth }: MadeUp): Judged {
  const best = list[0];
  return !best || none > best.chance ? { said: none, right: truth === null } : { said: best.chance, right: truth === best.candidate };
}

function judgedPitch({ pitches, none }: Identified, { truth }: MadeUp): Judged {
  const best = pitches[0];
  return !best || none > best.chance ? { said: none, right: truth === null } : { said: best.chance, right: truth?.known === best.known };
}

const degreesOf = (a: number): number => Math.round((a * 1800) / Math.PI) / 10;

function judgedAngle({ angles, none }: Identified, { truth }: MadeUp): Judged {
  const best = angles[0];
  return !best || none > best.chance
    ? { said: none, right: truth === null }
    : { said: best.chance, right: truth !== null && degreesOf(truth.a) === best.deg };
}

const binned = (all: readonly Judged[]): readonly Bin[] =>
  Array.from({ length: 10 }, (_, i) => {
    const inside = all.filter(({ said }) => Math.min(9, Math.floor(said * 10)) === i);
    return { n: inside.length, said: inside.reduce((sum, { said }) => sum + said, 0), right: inside.filter(({ right }) => right).length };
  });

/** What is found, or null where a slip made readings that are refused in words: nothing is said of those. */
function unlessRefused({ wheel }: MadeUp): Identified | null {
  try {
    return identify([wheel]);
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** So many made-up wheels by one law, each identified. */
function borneOut(law: typeof FIRST, seed: number, wheels: number): Borne {
  const draw = seeded(seed);
  const each = Array.from({ length: wheels }, () => makeUp(draw, law)).flatMap((made) => {
    const found = unlessRefused(made);
    return found ? [{ answer: judged(found, made), pitch: judgedPitch(found, made), angle: judgedAngle(found, made) }] : [];
  });
  return {
    answers: binned(each.map(({ answer }) => answer)),
    pitches: binned(each.map(({ pitch }) => pitch)),
    angles: binned(each.map(({ angle }) => angle)),
  };
}

/** The expected calibration error: by how much said and right differ, bin by bin, weighed by how many. */
function calibrationError(bins: readonly Bin[]): number {
  const all = bins.reduce((sum, { n }) => sum + n, 0);
  return bins.reduce((sum, { said, right }) => sum + Math.abs(said - right), 0) / all;
}

/** A thousand spans: what an identification is held against. */
function thousandSpans(): number {
  const began = performance.now();
  let sum = 0;
  for (let i = 0; i < 1000; i++) sum += span({ N: 20 + (i % 80), m: 0.125, a: 0.25 + i * 1e-5 }, 3);
  return sum > 0 ? performance.now() - began : 0;
}

/** Too few say nothing of a bin. */
const ENOUGH = 30;
/** More than two errors of chance below what was said: the page says more than is borne out. */
function overstated({ n, said, right }: Bin): string {
  const p = Math.min(MOST_SAID, said / n);
  return n >= ENOUGH && p - right / n > 2 * Math.sqrt((p * (1 - p)) / n) ? ', OVERSTATED' : '';
}

function lines(title: string, bins: readonly Bin[]): string[] {
  const rows = bins.map(({ n, said, right }, i) => {
    const bin = `  ${i * 10} to ${i * 10 + 10} %: ${String(n).padStart(5)} wheels`;
    return n === 0 ? bin : `${bin}, said ${printNumber(said / n, 3)}, right ${printNumber(right / n, 3)}${overstated({ n, said, right })}`;
  });
  return [title, ...rows, `  expected calibration error ${printNumber(calibrationError(bins), 4)}`];
}

const WHEELS = 1500;

/** Ten bins by each simulator, then how long one identification takes. */
export function benchIdentify(say: (text: string) => void): void {
  say('\nWhat is this gear: how often the first answer is right at each stated confidence');
  for (const [name, law, seed] of [
    ['First simulator (tuning)', FIRST, 1],
    ['Second simulator (judging)', SECOND, 4021],
    ['Third simulator (made when 0.8 was set; the temper was lowered to 0.6 by it)', THIRD, 77003],
    ['Third simulator, fourth seed (judging what was set by the third)', THIRD, 90211],
    ['Fourth simulator (burrs, a vernier off, a rule; nothing was set by it)', FOURTH, 118007],
  ] as const) {
    const { answers, pitches, angles } = borneOut(law, seed, WHEELS);
    for (const [what, bins] of [
      ['pitch and tooth system', answers],
      ['pitch alone', pitches],
      ['pressure angle alone', angles],
    ] as const)
      for (const line of lines(`${name}: ${what}`, bins)) say(line);
  }
  const draw = seeded(9);
  const times = Array.from({ length: 200 }, () => makeUp(draw, FIRST)).map(({ wheel }) => {
    const began = performance.now();
    identify([wheel]);
    return performance.now() - began;
  });
  const middle = times.toSorted((a, b) => a - b)[100] ?? 0;
  const slow = times.toSorted((a, b) => a - b)[190] ?? 0;
  const spans = thousandSpans();
  say(
    `One identification: median ${printNumber(middle, 1)} ms, nineteen in twenty under ${printNumber(slow, 1)} ms; ${printNumber(middle / spans, 0)} × a thousand spans`,
  );
}
