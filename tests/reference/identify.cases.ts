import type { Pitch } from '../../lib/gears/gear.ts';
import { identify } from '../../lib/identify/identify.ts';
import { nearMisses } from '../../lib/identify/near-misses.ts';
import { inches, millimetres } from '../../lib/values/length.ts';
import type { Case } from './case.ts';

/** Size of the likeliest pitch of a wheel of which only the outside is known. */
function pitchFound(teeth: number, outside: ReturnType<typeof inches>, kind: Pitch['kind']): number {
  const best = identify([{ teeth, readings: [{ of: 'outside', by: 'true', size: outside }] }]).pitches[0]?.known.pitch;
  return best?.kind === kind ? best.size[0] / best.size[1] : 0;
}

const nearest = (m: number, kind: Pitch['kind']): number => {
  const pairs = nearMisses().flatMap(({ finer, coarser }) => [finer, coarser]);
  const close = pairs.filter(({ pitch }) => pitch.kind === kind).sort((one, other) => Math.abs(one.m - m) - Math.abs(other.m - m))[0];
  return close ? close.pitch.size[0] / close.pitch.size[1] : 0;
};

const topic = 'identifying a gear';

export const cases: readonly Case[] = [
  {
    topic,
    kind: 'derived',
    source: 'derived: (24 + 2) ÷ 3.250 is 8; the wheel is from thoughts2share.in, Milling machine, whose answer was not legible',
    given: '24 teeth, outside 3.250 in',
    expected: 8,
    tolerance: 0,
    unit: 'DP',
    actual: () => pitchFound(24, inches(3.25), 'DP'),
    catches: 'N ÷ Do in place of (N + 2) ÷ Do, which gives 7.38',
  },
  {
    topic,
    kind: 'published',
    source: 'hobby-machinist.com, thread on change wheels of a small lathe: module 1, 80 teeth, blank 82 mm',
    given: '80 teeth, outside 82 mm',
    expected: 1,
    tolerance: 0,
    unit: 'module',
    actual: () => pitchFound(80, millimetres(82), 'module'),
    catches: 'millimetres taken for inches; 25 DP (1.016) taken for module 1',
  },
  {
    topic,
    kind: 'published',
    source: 'A note on the change gears of a 7 × 10 lathe, hint-gears2: circular pitch 0.1245 in measured, found to be module 1',
    given: 'a measured circular pitch of 0.1245 in',
    expected: 1,
    tolerance: 0,
    unit: 'module',
    actual: () => nearest(0.1245 / Math.PI, 'module'),
    catches: 'a series without module 1, or the circular pitch taken as the module',
  },
  {
    topic,
    kind: 'derived',
    source: 'derived: (48 + 2) ÷ 8 is 6.250',
    given: '48 teeth, outside 6.250 in',
    expected: 8,
    tolerance: 0,
    unit: 'DP',
    actual: () => pitchFound(48, inches(6.25), 'DP'),
    catches: 'module 3.25 preferred where the outside says 8 DP',
  },
];
