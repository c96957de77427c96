import { performance } from 'node:perf_hooks';
import { formCutSpace } from '../../lib/gears/profile-form.formulas.ts';
import { toothPoints } from '../../lib/gears/profile-outline.ts';
import { plainFlanks, rackCutSpace } from '../../lib/gears/profile-rack.formulas.ts';
import { shapedRingSpace } from '../../lib/gears/profile-ring.formulas.ts';
import type { Tooth } from '../../lib/gears/tooth.ts';

const tooth: Tooth = { N: 22, m: 1 / 8, a: (14.5 * Math.PI) / 180, A: 1 / 8, B: 1.157 / 8, unit: 'in' };
const ring = { ...plainFlanks({ ...tooth, N: 120, a: (20 * Math.PI) / 180, B: 1.25 / 8 }), ring: true };

/** What is drawn: a full tooth with both fillets, undercut where it comes so. */
const PROFILES: Readonly<Record<string, () => unknown>> = {
  'as a rack leaves it, undercut': () => toothPoints(rackCutSpace(tooth), tooth.N),
  'as a form cutter leaves it': () => toothPoints(formCutSpace(tooth), tooth.N),
  'inside, as a pinion cutter leaves it': () => toothPoints(shapedRingSpace(ring, { Nc: 40, c: 0.025 }), ring.N),
};

/** A thousand tangents: the yardstick of the same machine in the same run. */
function thousandTangents(): number {
  let sum = 0;
  for (let i = 0; i < 1000; i++) sum += Math.tan(i / 1000);
  return sum;
}

function medianMs(work: () => unknown): number {
  for (let i = 0; i < 200; i++) work();
  const times = Array.from({ length: 301 }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  });
  return times.sort((a, b) => a - b)[150] ?? Number.NaN;
}

export type ProfileTime = { readonly name: string; readonly ms: number; readonly ofTangents: number };

/** Full tooth profiles with their fillets: milliseconds, and how many thousand tangents each takes as long as. */
export function timeProfiles(): readonly ProfileTime[] {
  const yardstick = medianMs(thousandTangents);
  return Object.entries(PROFILES).map(([name, work]) => {
    const ms = medianMs(work);
    return { name, ms, ofTangents: ms / yardstick };
  });
}
