import { gearDrawing } from '../../lib/drawing/gear-drawing.ts';
import { backlashAnswer } from '../../lib/gears/backlash.sums.ts';
import { chordalAnswer } from '../../lib/gears/chordal.sums.ts';
import type { Gear, ToothSystem } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { spanAnswer } from '../../lib/gears/span.sums.ts';
import { gearBlank } from '../../lib/gears/spur.sums.ts';
import { TOOTH_SYSTEMS } from '../../lib/gears/systems.data.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { Wheel } from '../../lib/gears/wheel.ts';
import { choiceField, countField, optional, readField, TEETH } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { dimensions, size, sizeIfKnown, typedOf } from './asks.ts';
import { sum } from './sum.ts';

export const teethField = countField({ label: 'Teeth', limits: TEETH, unit: 'teeth' });
export const pitchField = readField({ label: 'Pitch', hint: 'As 8 DP, module 2.5 or 5/16 CP', read: (text) => readPitch(text) });
export const systemField = choiceField({ label: 'Tooth system', choices: TOOTH_SYSTEMS.map(({ key, name }) => [key, name] as const) });

/** The proportions behind a key that systemField let through. */
export function systemOf(key: string): ToothSystem {
  const found = systemByKey(key);
  if (!found) throw new RangeError(`no tooth system is called ${key}`);
  return found.system;
}

/** What decides a wheel's teeth: asked by every sum of a wheel. */
export const wheelAsks = { teeth: teethField, pitch: pitchField, system: systemField };
export const wheelOf = ({ teeth, pitch, system }: ValuesOf<typeof wheelAsks>): Wheel => ({ teeth, pitch, system: systemOf(system) });

/** A wheel of which only the teeth are known. */
export const bareGear = (wheel: Wheel): Gear => ({
  teeth: wheel.teeth,
  pitch: wheel.pitch,
  system: wheel.system,
  helix: null,
  face: null,
  bore: null,
  body: { known: false },
});

/** Where lib speaks of a wheel's angle, the box is that of its system. */
export const WHEEL_ABOUT = { angle: ['system'] } as const;

export const backlashField = sizeIfKnown({
  label: 'Backlash of this wheel',
  hint: 'Along the pitch circle; empty is none',
  least: 0,
  most: 5,
});
export const outsideField = sizeIfKnown({ label: 'Outside as measured', hint: 'Empty if not turned yet' });
export const overField = optional(
  countField({ label: 'Teeth between the jaws', hint: 'Empty: the count nearest the pitch circle', limits: { least: 1, most: 500 } }),
);

const EXAMPLE = { teeth: '22', pitch: '8 DP', system: 'full-14.5' };

const gearBlankSum = sum({
  path: 'gear-blank',
  title: 'Spur gear',
  group: 'Gears',
  tells: 'All sizes of a spur wheel from its teeth, pitch and tooth system.',
  asks: wheelAsks,
  example: EXAMPLE,
  about: WHEEL_ABOUT,
  work: (given) => gearBlank(wheelOf(given)),
  draw: (given) => gearDrawing(bareGear(wheelOf(given)), { form: dimensions(unitOfPitch(given.pitch)) }),
});

const spanSum = sum({
  path: 'span',
  title: 'Span over teeth',
  group: 'Gears',
  tells: 'What the vernier reads over so many teeth, one fewer and one more, and where on the flank the jaws touch.',
  asks: { ...wheelAsks, k: overField, backlash: backlashField },
  example: { ...EXAMPLE, k: '', backlash: '' },
  about: WHEEL_ABOUT,
  work: ({ k, backlash, ...wheel }) => spanAnswer(wheelOf(wheel), { ...(k === null ? {} : { k }), ...typedOf({ backlash }) }),
});

const chordalSum = sum({
  path: 'chordal-thickness',
  title: 'Chordal thickness',
  group: 'Gears',
  tells: 'Both settings of the gear-tooth vernier, corrected for the outside as it was turned.',
  asks: { ...wheelAsks, measuredOutside: outsideField, backlash: backlashField },
  example: { ...EXAMPLE, measuredOutside: '2.996', backlash: '' },
  about: WHEEL_ABOUT,
  work: ({ measuredOutside, backlash, ...wheel }) => chordalAnswer(wheelOf(wheel), typedOf({ measuredOutside, backlash })),
});

const backlashSum = sum({
  path: 'backlash',
  title: 'Backlash',
  group: 'Gears',
  tells: 'What a thinning of this wheel’s teeth is on the span, in depth of cut, and in distance of centres.',
  asks: { ...wheelAsks, backlash: size({ label: 'Backlash of this wheel', hint: 'Along the pitch circle', least: 0, most: 5 }) },
  example: { ...EXAMPLE, backlash: '0.004' },
  about: WHEEL_ABOUT,
  work: ({ backlash, ...wheel }) => backlashAnswer(wheelOf(wheel), backlash.length),
});

export const GEAR_SUMS = [gearBlankSum, spanSum, chordalSum, backlashSum];
