import { accuracyAnswer } from '../../../lib/accuracy/accuracy.sums.ts';
import { bevelPair } from '../../../lib/bevel/bevel.sums.ts';
import { milledBevel } from '../../../lib/bevel/milled.sums.ts';
import { toothStrength } from '../../../lib/strength/strength.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { crossedPair } from '../../../lib/worm/crossed.sums.ts';
import { wormAndWheel } from '../../../lib/worm/worm.sums.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const dp = (P: number) => ({ kind: 'DP', size: [P, 1] }) as const;
const WHEEL = { teeth: 22, pitch: dp(8), system: SYSTEM };
const BEVEL = { teeth: 24, mate: 36, pitch: dp(8), system: SYSTEM, shafts: degrees(90), face: inches(0.75) };

/** Wheels whose axes are not parallel, what teeth bear, and how true they are: the worked examples asked of lib. */
export const DIRECT_CROSSING = {
  'bevel-pair': () => bevelPair(BEVEL),
  'milled-bevel': () =>
    milledBevel({ ...BEVEL, bottoms: 'even clearance', cutterThickness: inches(0.15), convention: 'low end', headTurns: 40 }),
  'worm-and-wheel': () =>
    wormAndWheel({
      teeth: 60,
      starts: 1,
      pitch: dp(6),
      system: SYSTEM,
      wormPitchDiameter: inches(2),
      hand: 'right',
      embrace: degrees(60),
      friction: 0.05,
    }),
  'crossed-helical': () =>
    crossedPair({ teeth: 24, mate: 24, pitch: dp(12), system: SYSTEM, shafts: degrees(90), helix: degrees(45), hand: 'right' }),
  'tooth-strength': () => toothStrength({ ...WHEEL, face: inches(0.875), material: 'steel', stress: null, speedRpm: 100 }),
  'tooth-accuracy': () =>
    accuracyAnswer({
      ...WHEEL,
      face: inches(0.875),
      runOut: inches(0.002),
      singlePitch: null,
      cumulativePitch: null,
      lead: inches(0.001),
    }),
};
