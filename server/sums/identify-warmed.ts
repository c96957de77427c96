import { setImmediate as nextTurn } from 'node:timers/promises';
import { identify } from '../../lib/identify/identify.ts';
import type { MeasuredWheel } from '../../lib/identify/readings.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';

/** Helical teeth, at which most is weighed: 30 teeth of 12 DP, 20°, 23°. */
const HELICAL: MeasuredWheel = {
  teeth: 30,
  readings: [
    { of: 'outside', by: 'true', size: inches(2.8826) },
    { of: 'span', over: 5, size: inches(1.1612) },
    { of: 'span', over: 6, size: inches(1.4072) },
    { of: 'helix', angle: degrees(24.3) },
  ],
};
const TIMES = 3;

/** The first identification after a start takes several times as long as the next: the engine has not compiled it yet. */
export async function warmIdentify(): Promise<void> {
  for (let i = 0; i < TIMES; i++) {
    identify([HELICAL]);
    await nextTurn();
  }
}
