import type { CutterQuestion, GearToCut } from '../../../lib/cutters/choice.ts';
import type { Pitch, ToothSystem } from '../../../lib/gears/gear.ts';
import type { Arbor, Cutter } from '../../../lib/tooling/tooling.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';

export const dp = (size: number): Pitch => ({ kind: 'DP', size: ratio(size) });
export const old14: ToothSystem = { name: '14½°', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
export const full20: ToothSystem = { name: '20° full depth', angle: degrees(20), addendum: 1, dedendum: 1.25, extra: inches(0) };
export const gearOf = (teeth: number, more: Partial<GearToCut> = {}): GearToCut => ({
  teeth,
  pitch: dp(8),
  system: old14,
  helix: null,
  ...more,
});

let lastId = 0;
/** An 8 DP, 14½° cutter with a 1 in hole, here and sharp, unless said otherwise. */
export function cutterOf(number: string, teethFrom: number | null, teethTo: number | null, more: Partial<Cutter> = {}): Cutter {
  lastId += 1;
  return {
    kind: 'cutter',
    id: lastId,
    name: `cutter No. ${number}`,
    here: true,
    number,
    pitch: dp(8),
    angle: degrees(14.5),
    teethFrom,
    teethTo,
    hole: inches(1),
    diameter: null,
    width: null,
    stampedDepth: null,
    steel: 'unknown',
    exactFor: null,
    sharp: true,
    ...more,
  };
}

export const arborOf = (size: number, here = true): Arbor => {
  lastId += 1;
  return { kind: 'arbor', id: lastId, name: `${size} in arbor`, here, diameter: inches(size) };
};

/** Ashdown & Lyle's mill: No. 2 and No. 4 of 8 DP 14½°, a 20° No. 3, and a 10 DP No. 3. */
export const drawer: readonly Cutter[] = [
  cutterOf('2', 55, 134),
  cutterOf('4', 26, 34),
  cutterOf('3', 35, 54, { name: '20° No. 3', angle: degrees(20) }),
  cutterOf('3', 35, 54, { name: '10 DP No. 3', pitch: dp(10) }),
];

export const ask = (gear: GearToCut, cutters: readonly Cutter[] = drawer, more: Partial<CutterQuestion> = {}): CutterQuestion => ({
  gear,
  cutters,
  arbors: [arborOf(1)],
  convention: 'low end',
  ...more,
});
