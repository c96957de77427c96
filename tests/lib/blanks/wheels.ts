import type { SpareWheel, Wanted } from '../../../lib/blanks/spare-wheel.ts';
import type { Bore, Gear } from '../../../lib/gears/gear.ts';
import { TOOTH_SYSTEMS } from '../../../lib/gears/systems.data.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';

/** Straight-sided six-spline bore of 1.250, as in the hobber and the shaper of the invented shop. */
export const SIX: Bore = { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) };

export function system(key: string) {
  const found = TOOTH_SYSTEMS.find((named) => named.key === key);
  if (!found) throw new Error(`no tooth system ${key}`);
  return found.system;
}

export const gear = (teeth: number, P = 8, more: Partial<Gear> = {}): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: ratio(P) },
  system: system('full-14.5'),
  helix: null,
  face: inches(0.875),
  bore: SIX,
  body: { known: true, recesses: [], openings: [] },
  ...more,
});

export const spare = (teeth: number, P = 8, more: Partial<SpareWheel> = {}, of: Partial<Gear> = {}): SpareWheel => ({
  id: teeth,
  name: `${teeth}T`,
  gear: gear(teeth, P, of),
  reading: null,
  runOut: null,
  trust: 'unknown',
  condition: { teeth: 'not looked at', bore: 'good' },
  material: 'steel',
  hardness: 'file bites',
  caseDepth: null,
  ...more,
});

export const wanted = (teeth: number, P = 8): Wanted => ({ id: teeth, name: `${teeth}T`, gear: gear(teeth, P) });

/** Recessed between 1.9 and 4.6 in on both sides. */
export const RECESSED = { known: true, recesses: [{ side: 'both', inner: inches(1.9), outer: inches(4.6) }], openings: [] } as const;
