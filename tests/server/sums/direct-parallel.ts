import type { Answer } from '../../../lib/figure/figure.ts';
import { contactAnswer } from '../../../lib/gears/contact.sums.ts';
import type { Pitch } from '../../../lib/gears/gear.ts';
import { helicalAnswer } from '../../../lib/gears/helical.sums.ts';
import { internalAnswer } from '../../../lib/gears/internal.sums.ts';
import { pairAnswer } from '../../../lib/gears/pair.sums.ts';
import { type ParallelGear, parallelOf } from '../../../lib/gears/parallel.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { shiftAnswer, undercutAnswer } from '../../../lib/gears/shift.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';

const system = (name: string, angle: number, dedendum: number) => ({
  name,
  angle: degrees(angle),
  addendum: 1,
  dedendum,
  extra: inches(0),
});
const FULL = system('14½° full involute', 14.5, 1.157);
const FULL20 = system('20° full depth', 20, 1.25);
const MODULE = system('20° module, 1.25', 20, 1.25);
const DP = (P: number): Pitch => ({ kind: 'DP', size: [P, 1] });
const M3: Pitch = { kind: 'module', size: [3, 1] };

const gear = (teeth: number, pitch: Pitch, of: typeof FULL, more: Partial<ParallelGear> = {}): ParallelGear => ({
  ...parallelOf({ teeth, pitch, system: of }),
  helix: null,
  ...more,
});

/** The worked examples of gears on parallel shafts, asked of lib directly. */
export const DIRECT_PARALLEL: Readonly<Record<string, () => Answer>> = {
  'gear-pair': () => pairAnswer({ gear: gear(12, M3, MODULE), mate: 24, inRing: false, centre: millimetres(56.5) }),
  'contact-ratio': () => contactAnswer({ gear: gear(28, DP(8), FULL), mate: 45, inRing: false, rack: false }),
  'helical-gear': () =>
    helicalAnswer({ gear: gear(18, DP(6), FULL20, { helix: { angle: degrees(25), hand: 'right' } }), face: inches(1.5) }),
  'profile-shift': () => shiftAnswer({ gear: gear(24, M3, MODULE, { shift: 0.4 }) }),
  undercut: () => undercutAnswer(gear(12, DP(8), FULL)),
  'internal-gear': () => internalAnswer({ gear: gear(40, DP(8), FULL20, { ring: true }), pinion: 18 }),
  'over-pins': () => pinsAnswer({ gear: gear(22, DP(8), FULL) }),
  'between-pins': () => pinsAnswer({ gear: gear(40, DP(8), FULL20, { ring: true }) }),
};
