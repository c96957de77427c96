import { printPitch } from '../gears/pitch.ts';
import type { Wanted } from './choice.ts';
import { angleWords, rangeWords } from './describe.ts';
import type { CutterNeed } from './meets.ts';
import { halfNumberFor, wholeNumberFor } from './ranges.ts';

/** The cutter to look for: "No. 5, 8 DP, 14½°, 21 to 25 teeth". Below 12 teeth the sets end, and it is one made for that count. */
export function wantedFor({ pitch, angle, teeth }: CutterNeed): Wanted {
  const [whole, half, near] = [wholeNumberFor(teeth), halfNumberFor(teeth), Math.round(teeth)];
  const size = `${printPitch(pitch)}, ${angleWords(angle)}`;
  const says = whole
    ? `No. ${whole.number}, ${size}, ${rangeWords(whole.from, whole.to)}`
    : `${size}, made for ${near} teeth (the numbered sets begin at 12)`;
  const [teethFrom, teethTo] = whole ? [whole.from, whole.to] : [near, near];
  return { number: whole?.number ?? null, halfNumber: half?.number ?? null, teethFrom, teethTo, teeth, pitch, angle, says };
}
