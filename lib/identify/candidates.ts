import type { ToothSystem } from '../gears/gear.ts';
import { printPitch } from '../gears/pitch.ts';
import { doublePitchStub, isComposite, systemByKey } from '../gears/systems.ts';
import { toRadians } from '../values/angle.ts';
import { toInches } from '../values/length.ts';
import { type KnownPitch, PITCHES } from './pitches.ts';
import { DOUBLE_STUB_WEIGHT, DOUBLE_STUBS, FINE_SYSTEMS, INCH_SYSTEMS, MODULE_SYSTEMS } from './series.data.ts';

/**
 * One pitch with one tooth system: what a wheel may be. Lengths in inches: m module, A addendum, B dedendum; a pressure angle in radians.
 * often: how often it is met before anything is measured, of 1 over all candidates. system is null where the key names none (double-pitch stubs).
 */
export type Candidate = {
  readonly known: KnownPitch;
  readonly key: string;
  readonly name: string;
  readonly system: ToothSystem;
  readonly m: number;
  readonly a: number;
  readonly A: number;
  readonly B: number;
  readonly composite: boolean;
  readonly often: number;
};

/** From here on finer the fine-pitch systems are met. */
const FINE_M = 1 / 20 + 1e-9;

const named = (weights: Readonly<Record<string, number>>): [string, ToothSystem, number][] =>
  Object.entries(weights).flatMap(([key, often]) => {
    const found = systemByKey(key);
    return found ? [[key, found.system, often] as [string, ToothSystem, number]] : [];
  });

const doubled = (P: number): [string, ToothSystem, number][] =>
  DOUBLE_STUBS.filter(([first]) => first === P).map(([first, second]) => [
    `stub-${first}/${second}`,
    doublePitchStub(first, second).system,
    DOUBLE_STUB_WEIGHT,
  ]);

function systemsFor({ pitch, m }: KnownPitch): [string, ToothSystem, number][] {
  if (pitch.kind === 'module') return named(MODULE_SYSTEMS);
  const fine = pitch.kind === 'DP' && m <= FINE_M ? named(FINE_SYSTEMS) : [];
  const stubs = pitch.kind === 'DP' && pitch.size[1] === 1 ? doubled(pitch.size[0]) : [];
  return [...named(INCH_SYSTEMS), ...fine, ...stubs];
}

/** Nobody has counted how often each system is met: their weights are brought nearer together by this power, so that none is favoured by guess (judgement). */
const MODESTY = 0.5;

function candidatesOf(known: KnownPitch): Candidate[] {
  const systems = systemsFor(known).map(([key, system, often]) => [key, system, often ** MODESTY] as const);
  const sum = systems.reduce((total, [, , often]) => total + often, 0);
  return systems.map(([key, system, often]) => ({
    known,
    key,
    name: `${printPitch(known.pitch)}, ${system.name}`,
    system,
    m: known.m,
    a: toRadians(system.angle),
    A: system.addendum * known.m,
    B: system.dedendum * known.m + toInches(system.extra),
    composite: isComposite(system),
    often: (known.often * often) / sum,
  }));
}

/** Every candidate, pitch by pitch, finest first. */
export const CANDIDATES: readonly Candidate[] = PITCHES.flatMap(candidatesOf);
