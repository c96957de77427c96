import type { Pitch } from '../gears/gear.ts';
import { samePitch } from '../gears/pitch.ts';
import type { Cutter } from '../tooling/tooling.ts';
import type { Angle } from '../values/angle.ts';
import { inRange } from './ranges.ts';

/** What a gear asks of a cutter: the pitch and angle of its tooth, and its count (a helical gear's virtual count). */
export type CutterNeed = { readonly pitch: Pitch; readonly angle: Angle; readonly teeth: number };

/** A cutter of which enough is written down to judge it. */
export type KnownCutter = Cutter & { readonly pitch: Pitch; readonly angle: Angle; readonly teethFrom: number };

/** Without pitch, angle and tooth range a cutter is offered for nothing: number sets differ by maker. */
export const isKnown = (cutter: Cutter): cutter is KnownCutter =>
  cutter.pitch !== null && cutter.angle !== null && cutter.teethFrom !== null;

/** Right form: pitch and angle exactly, the count within the range typed in; wherever the cutter lies and however blunt. */
export const hasRightForm = (cutter: Cutter, { pitch, angle, teeth }: CutterNeed): boolean =>
  isKnown(cutter) &&
  samePitch(cutter.pitch, pitch) &&
  cutter.angle === angle &&
  inRange({ from: cutter.teethFrom, to: cutter.teethTo }, teeth);

/** Whether a cutter meets the need today: right form, here, and sharp. */
export const cutterMeets = (cutter: Cutter, need: CutterNeed): boolean => hasRightForm(cutter, need) && cutter.here && cutter.sharp;
