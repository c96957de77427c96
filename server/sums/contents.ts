import { BLANK_SUMS } from './blanks.ts';
import { CROSSING_SUMS } from './crossing.ts';
import { CUTTER_TOOL_SUMS } from './cutter-tools.ts';
import { CUTTER_SUMS } from './cutters.ts';
import { DEPTH_SUMS } from './depths.ts';
import { DIVIDING_SUMS } from './dividing.ts';
import { HOLE_SUMS } from './dividing-holes.ts';
import { OTHER_DIVIDING_SUMS } from './dividing-others.ts';
import { DIVIDING_WAYS_SUMS } from './dividing-ways.ts';
import { FIT_SUMS } from './fits.ts';
import { GEAR_SUMS } from './gears.ts';
import { HELICAL_SUMS } from './helical.ts';
import { IDENTIFY_SUMS } from './identify.ts';
import { INTERNAL_SUMS } from './internal.ts';
import { LEAD_SUMS } from './leads.ts';
import { MESH_SUMS } from './mesh.ts';
import { PIN_SUMS } from './pins.ts';
import { SCREW_CUTTING_SUMS } from './screw-cutting.ts';
import { SETTING_UP_SUMS } from './setting-up.ts';
import { SPEED_SUMS } from './speeds.ts';
import { SPLINE_SUMS } from './splines.ts';
import { STRENGTH_SUMS } from './strength.ts';
import type { Sum } from './sum.ts';
import { TRAIN_SUMS } from './trains.ts';
import { TURNING_SUMS } from './turning.ts';
import { WHEEL_SUMS } from './wheels.ts';

/** Every sum, in the order of the contents page. To add one: write it in its group's file, in the list at the end of that file. */
export const SUMS: readonly Sum[] = [
  ...WHEEL_SUMS,
  ...TRAIN_SUMS,
  ...SCREW_CUTTING_SUMS,
  ...LEAD_SUMS,
  ...IDENTIFY_SUMS,
  ...GEAR_SUMS,
  ...PIN_SUMS,
  ...HELICAL_SUMS,
  ...INTERNAL_SUMS,
  ...MESH_SUMS,
  ...DEPTH_SUMS,
  ...CROSSING_SUMS,
  ...STRENGTH_SUMS,
  ...BLANK_SUMS,
  ...CUTTER_SUMS,
  ...CUTTER_TOOL_SUMS,
  ...DIVIDING_SUMS,
  ...DIVIDING_WAYS_SUMS,
  ...OTHER_DIVIDING_SUMS,
  ...HOLE_SUMS,
  ...TURNING_SUMS,
  ...SETTING_UP_SUMS,
  ...SPEED_SUMS,
  ...FIT_SUMS,
  ...SPLINE_SUMS,
];

const BY_PATH: ReadonlyMap<string, Sum> = new Map(SUMS.map((sum) => [sum.path, sum]));

export const sumByPath = (path: string): Sum | undefined => BY_PATH.get(path);

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}½]+/gu) ?? [];

/** Sums that hold every word typed, or the beginning of it, in title or in what they tell; titles first. Nothing typed finds none. */
export function sumsHolding(typed: string): readonly Sum[] {
  const wanted = wordsOf(typed);
  if (wanted.length === 0) return [];
  const holds = (text: string): boolean => wanted.every((word) => wordsOf(text).some((one) => one.startsWith(word)));
  const named = SUMS.filter(({ title }) => holds(title));
  return [...named, ...SUMS.filter((sum) => !named.includes(sum) && holds(`${sum.title} ${sum.tells}`))];
}
