import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Material } from '../../lib/gears/gear.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import { offerSpeed, type WantedSpeed } from '../../lib/speeds/speed.sums.ts';
import { CUTS, type Cut } from '../../lib/speeds/surface-speed.ts';
import { timeOfGear, timeOfPass } from '../../lib/speeds/times.sums.ts';
import type { CutterSteel } from '../../lib/tooling/tooling.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { countField, type Field, numberField, optional, tickField, wordsField } from '../forms/field.ts';
import { size, sizeIfKnown, speedsField, typedOf, unitOf } from './asks.ts';
import { sum } from './sum.ts';

const STEELS = ['high-speed', 'carbon', 'carbide', 'unknown'] as const satisfies readonly CutterSteel[];

type Cutting = { readonly material: Material; readonly steel: CutterSteel; readonly cut: Cut; readonly surface: number | null };

/** A typed surface speed stands over the table. */
const wantedOf = ({ material, steel, cut, surface }: Cutting): WantedSpeed =>
  surface === null ? { material, steel, cut } : { surfaceSpeedFtPerMin: surface };

/** A length a minute: typed as 0.75, 20 mm or 20 mm/min. */
const perMinute = (field: Field<TypedLength>): Field<TypedLength> => ({
  ...field,
  unit: `${field.unit}/min`,
  read: (text) => field.read(text.replace(/\s*\/\s*min\.?\s*$/i, '')),
});

const minutesField = (label: string, hint: string) => optional(numberField({ label, hint, limits: { least: 0, most: 60 }, unit: 'min' }));

const speedSum = sum({
  path: 'spindle-speed',
  title: 'Spindle speed',
  group: 'Speeds',
  tells: 'The highest speed that your machine has not above the one worked out, and never above what the chuck stands.',
  asks: {
    diameter: size({ label: 'Diameter at the cut', hint: 'Of the work when turning, of the cutter when milling', least: 0.01, most: 100 }),
    material: wordsField({ label: 'Metal', words: MATERIALS }),
    steel: wordsField({ label: 'Tool of', words: STEELS }),
    cut: wordsField({ label: 'Cut', words: CUTS }),
    speeds: speedsField({ label: 'Speeds of the machine', hint: 'As 45 70 115 190 300 500' }),
    surface: optional(
      numberField({ label: 'Surface speed of your own', hint: 'Empty: from the table', limits: { least: 1, most: 3000 }, unit: 'ft/min' }),
    ),
    chuck: sizeIfKnown({ label: 'Chuck, diameter of its body', hint: 'Empty: no chuck', least: 1, most: 60 }),
    topSpeed: optional(
      numberField({
        label: 'Maker’s limit of the chuck',
        hint: 'Empty: held to 2,500 ft/min at the rim',
        limits: { least: 10, most: 20_000 },
        unit: 'rev/min',
      }),
    ),
    offCentre: tickField({ label: 'Work off-centre, or jaws out past the body' }),
  },
  example: {
    diameter: '4.125',
    material: 'steel',
    steel: 'high-speed',
    cut: 'interrupted turning',
    speeds: '25 38 58 90 140 215 330 500',
    surface: '',
    chuck: '8',
    topSpeed: '',
    offCentre: '',
  },
  about: { surfaceSpeedFtPerMin: ['surface'] },
  parts: [
    { legend: 'The cut', asks: ['diameter', 'material', 'steel', 'cut', 'surface'] },
    { legend: 'The machine', asks: ['speeds', 'chuck', 'topSpeed', 'offCentre'] },
  ],
  work: ({ diameter, speeds, chuck, topSpeed, offCentre, ...cutting }) => {
    if (topSpeed !== null && !chuck)
      throw new DomainError({
        given: 'A limit is typed, but no chuck.',
        limit: 'The limit belongs to a chuck.',
        tryThis: 'Type its diameter too, or empty both boxes.',
        about: ['chuck'],
      });
    return offerSpeed({
      ...wantedOf(cutting),
      diameter: diameter.length,
      machine: { name: 'The machine', speedsRpm: speeds },
      chuck: chuck ? { name: 'the chuck', diameter: chuck.length, topSpeedRpm: topSpeed } : null,
      offCentre,
      unit: unitOf(diameter),
    });
  },
});

const passSum = sum({
  path: 'time-of-a-pass',
  title: 'Time of a pass',
  group: 'Speeds',
  tells: 'How long a turning cut takes, and all of them with the running back between.',
  asks: {
    length: size({ label: 'Length of cut', least: 0.01, most: 200 }),
    feedPerTurn: size({ label: 'Feed a turn', least: 0.0001, most: 1 }),
    speedRpm: numberField({ label: 'Speed', limits: { least: 0.1, most: 20_000 }, unit: 'rev/min' }),
    passes: optional(countField({ label: 'Passes', hint: 'Empty: one', limits: { least: 1, most: 1000 } })),
    returnMinutes: minutesField('Running back and setting, each', 'Empty: half a minute, a guess'),
  },
  example: { length: '1.000', feedPerTurn: '0.006', speedRpm: '38', passes: '9', returnMinutes: '' },
  work: ({ length, feedPerTurn, speedRpm, passes, returnMinutes }) =>
    timeOfPass({
      length: length.length,
      feedPerTurn: feedPerTurn.length,
      speedRpm,
      unit: unitOf(length),
      ...(passes === null ? {} : { passes }),
      ...(returnMinutes === null ? {} : { returnMinutes }),
    }),
});

const gearSum = sum({
  path: 'time-of-a-gear',
  title: 'Time of a gear',
  group: 'Speeds',
  tells: 'How long a whole wheel takes on the mill: approach and overrun of the cutter, every round, and the indexing.',
  asks: {
    teeth: countField({ label: 'Teeth', limits: { least: 4, most: 1000 }, unit: 'teeth' }),
    face: size({ label: 'Face', least: 0.01, most: 50 }),
    cutterDiameter: size({ label: 'Diameter of the cutter', least: 0.1, most: 50 }),
    depth: size({ label: 'Depth of cut', least: 0.001, most: 10 }),
    feedPerMinute: perMinute(size({ label: 'Feed a minute', least: 0.01, most: 200 })),
    roughRounds: optional(
      countField({ label: 'Roughing rounds before the finishing one', hint: 'Empty: one', limits: { least: 0, most: 10 } }),
    ),
    overrun: sizeIfKnown({ label: 'Overrun past the far edge', hint: 'Empty: as long as the approach', least: 0, most: 50 }),
    indexMinutes: minutesField('Running back and indexing, each tooth', 'Empty: half a minute, a guess'),
  },
  example: {
    teeth: '22',
    face: '0.875',
    cutterDiameter: '2.75',
    depth: '0.2696',
    feedPerMinute: '0.75',
    roughRounds: '2',
    overrun: '',
    indexMinutes: '',
  },
  work: ({ teeth, face, cutterDiameter, depth, feedPerMinute, roughRounds, overrun, indexMinutes }) =>
    timeOfGear({
      teeth,
      face: face.length,
      cutterDiameter: cutterDiameter.length,
      depth: depth.length,
      feedPerMinute: feedPerMinute.length,
      unit: unitOf(face),
      ...(roughRounds === null ? {} : { roughRounds }),
      ...(indexMinutes === null ? {} : { indexMinutes }),
      ...typedOf({ overrun }),
    }),
});

export const SPEED_SUMS = [speedSum, passSum, gearSum];
