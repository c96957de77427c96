import { describe, expect, it } from 'vitest';
import { bevelDrawing } from '../../../lib/drawing/bevel-drawing.ts';
import { crossedDrawing } from '../../../lib/drawing/crossed-drawing.ts';
import type { Drawing } from '../../../lib/drawing/drawing.ts';
import { wormDrawing } from '../../../lib/drawing/worm-drawing.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { pitchOf, systemNamed } from '../../reference/gear-asks.ts';

const wheel = (teeth: number, pitch: string) => ({ teeth, pitch: pitchOf(pitch), system: systemNamed('full-14.5') });
const bevel = (teeth: number, mate: number, shafts: number) =>
  bevelDrawing({ ...wheel(teeth, '8 DP'), mate, shafts: degrees(shafts), face: null });
const worm = (teeth: number, starts: number, diameter: number) =>
  wormDrawing({
    ...wheel(teeth, '6 DP'),
    starts,
    wormPitchDiameter: inches(diameter),
    hand: 'right',
    embrace: degrees(60),
    friction: 0.05,
  });
const crossed = (teeth: number, mate: number, helix: number, shafts: number) =>
  crossedDrawing({ ...wheel(teeth, '12 DP'), mate, shafts: degrees(shafts), helix: degrees(helix), hand: 'left' });

const DRAWINGS: readonly (readonly [string, Drawing])[] = [
  ['bevel 24/36', bevel(24, 36, 90)],
  ['bevel 60/15', bevel(60, 15, 90)],
  ['bevel 20/20 at 60°', bevel(20, 20, 60)],
  ['bevel 20/30 at 120°', bevel(20, 30, 120)],
  ['worm 60', worm(60, 1, 2)],
  ['worm 20, 4 starts', worm(20, 4, 2.5)],
  ['crossed 24/24', crossed(24, 24, 45, 90)],
  ['crossed 12/90', crossed(12, 90, 60, 90)],
];

/** On the narrowest phone a drawing is 328 px wide; the look allows no letters under 14 px. */
describe('letters on a phone', () => {
  it.each(DRAWINGS)('%s: none under 14 px, none beyond the edge', (_, { marks, low, high }) => {
    const perPx = (high[0] - low[0]) / 328;
    const words = marks.flatMap((mark) => (mark.draw === 'text' ? [mark] : []));
    expect(words.length).toBeGreaterThan(0);
    for (const { size, at } of words) {
      expect(size / perPx).toBeGreaterThan(14);
      expect(at[0]).toBeGreaterThanOrEqual(low[0]);
      expect(at[0]).toBeLessThanOrEqual(high[0]);
      expect(at[1]).toBeGreaterThanOrEqual(low[1]);
      expect(at[1] + size).toBeLessThanOrEqual(high[1]);
    }
  });
});
