import { readPitch } from '../../../lib/gears/pitch.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import type { Wheel } from '../../../lib/gears/wheel.ts';

/** A wheel as a test writes it: 22, '8 DP', 'full-14.5'. */
export function wheelOf(teeth: number, pitchText: string, systemKey = 'full-14.5'): Wheel {
  const [pitch, named] = [readPitch(pitchText), systemByKey(systemKey)];
  if (!pitch.ok || !named) throw new Error(`${pitchText}, ${systemKey}`);
  return { teeth, pitch: pitch.value, system: named.system };
}
