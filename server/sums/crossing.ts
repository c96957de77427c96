import { bevelPair } from '../../lib/bevel/bevel.sums.ts';
import { milledBevel } from '../../lib/bevel/milled.sums.ts';
import { CONVENTIONS } from '../../lib/cutters/ranges.ts';
import { bevelDrawing } from '../../lib/drawing/bevel-drawing.ts';
import { crossedDrawing } from '../../lib/drawing/crossed-drawing.ts';
import { wormDrawing } from '../../lib/drawing/worm-drawing.ts';
import { degrees } from '../../lib/values/angle.ts';
import { crossedPair } from '../../lib/worm/crossed.sums.ts';
import { wormAndWheel } from '../../lib/worm/worm.sums.ts';
import { angleField, choiceField, countField, numberField, optional, wordsField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { size, sizeIfKnown } from './asks.ts';
import { systemOf, WHEEL_ABOUT, wheelAsks } from './gears.ts';
import { sum } from './sum.ts';

const mateField = countField({ label: "Mate's teeth", limits: { least: 4, most: 1000 }, unit: 'teeth' });
const shaftsField = angleField({ label: 'Angle between the shafts', hint: '90 if they are square', limits: { least: 1, most: 179 } });
const handField = wordsField({ label: 'Hand', hint: 'Right: teeth lean to the right, axis upright', words: ['right', 'left'] });

const bevelAsks = {
  ...wheelAsks,
  mate: mateField,
  shafts: shaftsField,
  face: sizeIfKnown({ label: 'Face', hint: 'Empty: a third of the cone distance' }),
};
const BEVEL_EXAMPLE = { teeth: '24', pitch: '8 DP', system: 'full-14.5', mate: '36', shafts: '90', face: '0.750' };

const bevelOf = ({ teeth, mate, pitch, system, shafts, face }: ValuesOf<typeof bevelAsks>) => ({
  teeth,
  mate,
  pitch,
  system: systemOf(system),
  shafts,
  face: face?.length ?? null,
});

const bevelSum = sum({
  path: 'bevel-pair',
  title: 'Straight bevel wheel',
  group: 'Gears',
  tells: 'Cones, blank and depths of a straight bevel wheel from its own teeth and its mate’s.',
  asks: bevelAsks,
  example: BEVEL_EXAMPLE,
  about: WHEEL_ABOUT,
  work: (given) => bevelPair(bevelOf(given)),
  draw: (given) => bevelDrawing(bevelOf(given)),
});

const milledSum = sum({
  path: 'milled-bevel',
  title: 'Bevel wheel on the milling machine',
  group: 'Gears',
  tells:
    'Which bevel cutter, how far to set it over and how far to roll the blank, so that a form cutter is right at both ends of the face.',
  asks: {
    ...bevelAsks,
    cutterThickness: size({
      label: 'Cutter’s thickness',
      hint: 'At its pitch line: a dedendum from its tip, with the gear-tooth vernier',
      least: 0.01,
      most: 3,
    }),
    bottoms: choiceField({
      label: 'Bottoms of the spaces',
      choices: [
        ['even clearance', 'leave even clearance all along'],
        ['to the apex', 'run to the apex'],
      ],
    }),
    convention: choiceField({
      label: 'A numbered cutter is exact for',
      choices: CONVENTIONS.map(
        (one) => [one, one === 'low end' ? 'the lowest count of its range' : 'the count of the old treatise'] as const,
      ),
    }),
    headTurns: countField({ label: 'Turns of the crank for one of the head', limits: { least: 1, most: 400 } }),
  },
  example: { ...BEVEL_EXAMPLE, cutterThickness: '0.150', bottoms: 'even clearance', convention: 'low end', headTurns: '40' },
  about: WHEEL_ABOUT,
  work: (given) =>
    milledBevel({
      ...bevelOf(given),
      cutterThickness: given.cutterThickness.length,
      bottoms: given.bottoms,
      convention: given.convention,
      headTurns: given.headTurns,
    }),
  draw: (given) => bevelDrawing(bevelOf(given)),
});

const FRICTION_LIMITS = { least: 0.001, most: 0.5 };
const FRICTION = 0.05;
const EMBRACE = degrees(60);

const wormAsks = {
  ...wheelAsks,
  starts: countField({ label: 'Starts of the worm', limits: { least: 1, most: 12 } }),
  wormPitchDiameter: size({ label: 'Worm’s pitch diameter', hint: 'Its outside less two addenda', least: 0.05, most: 40 }),
  hand: handField,
  embrace: optional(angleField({ label: 'Face hugs the worm over', hint: 'Empty: 60°', limits: { least: 1, most: 180 } })),
  friction: optional(numberField({ label: 'Friction', hint: 'Empty: 0.05, bronze on steel in oil (a guess)', limits: FRICTION_LIMITS })),
};

const wormOf = ({ system, embrace, friction, wormPitchDiameter, ...given }: ValuesOf<typeof wormAsks>) => ({
  ...given,
  system: systemOf(system),
  wormPitchDiameter: wormPitchDiameter.length,
  embrace: embrace ?? EMBRACE,
  friction: friction ?? FRICTION,
});

const wormSum = sum({
  path: 'worm-and-wheel',
  title: 'Worm and wheel',
  group: 'Gears',
  tells: 'Lead, lead angle and diameters of a worm and its hollow-faced wheel, and whether the worm holds.',
  asks: wormAsks,
  example: {
    teeth: '60',
    pitch: '6 DP',
    system: 'full-14.5',
    starts: '1',
    wormPitchDiameter: '2.000',
    hand: 'right',
    embrace: '60',
    friction: '',
  },
  about: WHEEL_ABOUT,
  work: (given) => wormAndWheel(wormOf(given)),
  draw: (given) => wormDrawing(wormOf(given)),
});

const crossedSum = sum({
  path: 'crossed-helical',
  title: 'Crossed helical wheels',
  group: 'Gears',
  tells: 'Two helical wheels on shafts that cross without meeting: diameters, leads, the mate’s helix and the centre distance.',
  asks: {
    ...wheelAsks,
    mate: mateField,
    shafts: shaftsField,
    helix: angleField({ label: 'Helix of the first wheel', hint: 'From its axis', limits: { least: 0.1, most: 89 } }),
    hand: handField,
  },
  example: { teeth: '24', pitch: '12 DP', system: 'full-14.5', mate: '24', shafts: '90', helix: '45', hand: 'right' },
  about: WHEEL_ABOUT,
  work: (given) => crossedPair({ ...given, system: systemOf(given.system) }),
  draw: (given) => crossedDrawing({ ...given, system: systemOf(given.system) }),
});

export const CROSSING_SUMS = [bevelSum, milledSum, wormSum, crossedSum];
