import { DomainError } from '../figure/domain-error.ts';
import { degrees } from '../values/angle.ts';
import { inches } from '../values/length.ts';
import { ratio } from '../values/ratio.ts';
import type { Pitch, ToothSystem } from './gear.ts';
import { type NamedSystem, TOOTH_SYSTEMS } from './systems.data.ts';

const BY_KEY: ReadonlyMap<string, NamedSystem> = new Map(TOOTH_SYSTEMS.map((named) => [named.key, named]));
const COMPOSITE = BY_KEY.get('composite-14.5')?.name;

/** The named system, or undefined when no system has that key. */
export const systemByKey = (key: string): NamedSystem | undefined => BY_KEY.get(key);

/** True of the old milled form whose flank is an involute only about the pitch line. */
export const isComposite = (system: ToothSystem): boolean => system.name === COMPOSITE;

/**
 * Double-pitch stub P/Q, such as 5/7: pitch circle by P, addendum 1/Q and dedendum 1.25/Q in, 20°.
 * Source: value from memory. Throws DomainError unless 1 ≤ P < Q ≤ 2 P (whole numbers).
 * Example: 5/7 with 30 teeth has a 6.000 pitch and a 6.2857 outside diameter.
 */
export function doublePitchStub(P: number, Q: number): { readonly pitch: Pitch; readonly system: ToothSystem } {
  if (!(Number.isInteger(P) && Number.isInteger(Q) && P >= 1 && P < Q && Q <= 2 * P))
    throw new DomainError({
      given: `A double-pitch stub of ${P}/${Q}.`,
      limit: 'The first number is the pitch, the second is greater and at most twice the first.',
      tryThis: 'Type it as stamped, for example 5/7 or 8/10.',
      about: ['pitch'],
    });
  const system = { name: `20° stub ${P}/${Q}`, angle: degrees(20), addendum: P / Q, dedendum: (1.25 * P) / Q, extra: inches(0) };
  return { pitch: { kind: 'DP', size: ratio(P) }, system };
}
