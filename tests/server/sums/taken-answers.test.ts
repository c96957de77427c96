import { expect, it } from 'vitest';
import { spanOver } from '../../../lib/gears/base-tangent.formulas.ts';
import type { MeasuredWheel } from '../../../lib/identify/readings.ts';
import { degrees, toDegrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { readGear } from '../../../server/forms/gear-form.ts';
import { takenAnswers } from '../../../server/sums/taken-answers.ts';

const RAD = Math.PI / 180;

/** 30 helical teeth of 8 DP and 20° in the plane of the wheel, at 20° of helix: pitch diameter 30 ÷ 8, outside 32 ÷ 8, whatever the helix. */
function inItsPlane(): MeasuredWheel {
  const [psi, at, m] = [20 * RAD, 20 * RAD, 1 / 8];
  const [an, mn] = [Math.atan(Math.tan(at) * Math.cos(psi)), m * Math.cos(psi)];
  const flanks = { N: 30, mn, an, psi, v: 0, A: m, B: 1.157 * m, ring: false, unit: 'in' } as const;
  const span = (k: number) => inches(spanOver(flanks, (Math.PI * mn) / 2, k));
  const lean = Math.atan((Math.tan(psi) * 32) / 30) / RAD;
  return {
    teeth: 30,
    readings: [
      { of: 'outside', by: 'true', size: inches(4) },
      { of: 'span', over: 4, size: span(4) },
      { of: 'span', over: 5, size: span(5) },
      { of: 'helix', angle: degrees(lean), error: degrees(0.2) },
    ],
  };
}

it('a pitch that is standard in the plane of the wheel is kept square to the teeth, and gives the same wheel', () => {
  const answers = takenAnswers([inItsPlane()]);
  const taken = answers.find(({ said }) => said.includes('in the plane of the wheel') && said.startsWith('8 DP'));
  expect(answers.map(({ said }) => said).join('; ')).toContain('8 DP');
  expect(taken).toBeDefined();
  const read = readGear({ ...taken?.boxes, hand: 'left', body: 'unknown' }, 'in');
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { gear } = read;
  if (gear.pitch === null) throw new Error('the pitch was lost');
  const P = gear.pitch.size[0] / gear.pitch.size[1];
  const helix = toDegrees(gear.helix?.angle ?? degrees(0)) * RAD;
  expect(Math.abs(30 / (P * Math.cos(helix)) - 3.75)).toBeLessThan(0.002);
  expect(Math.abs(30 / (P * Math.cos(helix)) + (2 * gear.system.addendum) / P - 4)).toBeLessThan(0.002);
  const across = Math.atan(Math.tan(toDegrees(gear.system.angle) * RAD) / Math.cos(helix)) / RAD;
  expect(Math.min(...[14.5, 15, 17.5, 20, 22.5, 25].map((angle) => Math.abs(angle - across)))).toBeLessThan(0.02);
});
