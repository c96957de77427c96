import type { Pitch } from '../gears/gear.ts';
import { over, type Ratio, ratio, sameRatio } from '../values/ratio.ts';

/** Module in millimetres as an exact ratio; null for circular pitch, which has π in it. 25.4 mm to the inch. */
function exactModule({ kind, size }: Pitch): Ratio | null {
  if (kind === 'CP') return null;
  return kind === 'module' ? size : over(ratio(127, 5), size);
}

/**
 * Whether two pitches are one and the same, exactly: 10 DP is not module 2.5 (1.6 percent off), 25.4 DP is module 1.
 * A circular pitch equals only a circular pitch.
 */
export function samePitch(one: Pitch, other: Pitch): boolean {
  const [a, b] = [exactModule(one), exactModule(other)];
  if (a && b) return sameRatio(a, b);
  return one.kind === other.kind && sameRatio(one.size, other.size);
}
