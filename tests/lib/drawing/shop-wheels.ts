import type { Gear } from '../../../lib/gears/gear.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';

/** A solid 8 DP, 14½° change wheel on a six-spline bore, with whatever differs. */
export const wheel = (teeth: number, differs: Partial<Gear> = {}): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: ratio(8) },
  system: { name: '14½°', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) },
  helix: null,
  face: inches(0.75),
  bore: { form: 'splined', diameter: inches(1.125), minor: inches(0.95), splines: 6, keyWidth: inches(0.25) },
  body: { known: true, recesses: [], openings: [] },
  ...differs,
});
