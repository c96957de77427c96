import { groundToolAnswer } from '../../../lib/cutters/ground-tool.sums.ts';
import { numberedFormAnswer } from '../../../lib/cutters/numbered-form.sums.ts';
import { WHOLE_NUMBERS } from '../../../lib/cutters/ranges.data.ts';
import { twoDiscAnswer } from '../../../lib/cutters/two-disc.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const wheel = (teeth: number) => ({ teeth, pitch: { kind: 'DP', size: [8, 1] } as const, system: SYSTEM, helix: null });
const NO_4 = WHOLE_NUMBERS.filter(({ from }) => from === 26);

/** Cutters that are not there, and what does instead: the worked examples asked of lib. */
export const DIRECT_CUTTERS = {
  'numbered-cutter': () => NO_4.map((one) => numberedFormAnswer(wheel(35), one))[0] ?? { figures: {}, cautions: [] },
  'ground-tool': () => groundToolAnswer({ gear: wheel(22), kind: 'wheel', fillet: null, step: inches(0.01) }),
  'two-disc-tool': () => twoDiscAnswer({ gear: wheel(22), blankWidth: null }),
} as const;
