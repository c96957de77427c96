import { PIN_HUB, PIN_SHAFT } from './involute.data.ts';
import type { InvoluteSpline } from './involute.formulas.ts';
import type { NamedSpline } from './involute-spline.ts';
import { pinAngleHub, pinTouching } from './pins.formulas.ts';

/** k: diameter in the spline's unit; by: where it is from. */
export type UsualPin = { readonly k: number; readonly by: string };

const MEMORY = 'value from memory: 1.92/P over a shaft, 1.728/P in a hub';
const AT_PITCH = 'Omni Gear and Machine, Involute Splines, Old American Standard: touches on the pitch circle';
const HALF_WAY = 'derived: touches the flank half way down, where the usual 1.728/P does not go in or nothing is printed';

/** So far out from a part's inside to its outside pins are tried: half way first. */
const TRIED = [0.5, 0.75, 1] as const;

/** A pin that touches half way down the flank, or further out where none does so there (few teeth, their spaces wide); null when none does at all. */
function pinHalfWay(part: 'shaft' | 'hub', spline: InvoluteSpline): number | null {
  const { inside, outside } = spline[part];
  const base = spline.N * spline.m * Math.cos(spline.a);
  for (const share of TRIED)
    try {
      return pinTouching(part, spline, Math.max(inside + share * (outside - inside), base * 1.001));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  return null;
}

const PRINTED = { shaft: PIN_SHAFT, hub: PIN_HUB } as const;

/** The pin to try where another does not lie. */
export const pinNearby = (part: 'shaft' | 'hub', spline: InvoluteSpline): number => pinHalfWay(part, spline) ?? PRINTED[part] * spline.m;

/** Whether the usual pin goes in between a hub's flanks at all: with few teeth it does not. */
function goesIn({ N, m, a, t }: InvoluteSpline): boolean {
  try {
    pinAngleHub({ N, a, D: N * m, k: PIN_HUB * m, s: t });
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** The pins to measure with when none are named. */
export function usualPin(part: 'shaft' | 'hub', named: NamedSpline, spline: InvoluteSpline): UsualPin {
  if (part === 'shaft' && named.standard === 'old') return { k: pinTouching('shaft', spline, spline.N * spline.m), by: AT_PITCH };
  if (part === 'shaft') return { k: PIN_SHAFT * spline.m, by: MEMORY };
  if (named.standard !== 'old' && goesIn(spline)) return { k: PIN_HUB * spline.m, by: MEMORY };
  return { k: pinNearby('hub', spline), by: HALF_WAY };
}
