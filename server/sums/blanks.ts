import { measuredRoot, oldRoot } from '../../lib/blanks/measured-root.sums.ts';
import { ringAndHub } from '../../lib/blanks/ring-and-hub.sums.ts';
import { secondChoice } from '../../lib/blanks/second-choice.sums.ts';
import { testSpare } from '../../lib/blanks/spare-test.sums.ts';
import { blankDrawing } from '../../lib/drawing/blank-drawing.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { readingFahrenheit } from '../../lib/values/temperature.ts';
import { countField, numberField, optional, tickField, wordsField } from '../forms/field.ts';
import { dimensions, sizeIfKnown, typedOf } from './asks.ts';
import { WHEEL_ABOUT } from './gears.ts';
import { PAIR_ABOUT, PAIR_EXAMPLE, PAIR_PARTS, type PairGiven, pairAsks, rootAsks, rootSpareOf, spareOf, wantedOf } from './spare-asks.ts';
import { sum } from './sum.ts';

const rootSum = sum({
  path: 'measured-root',
  title: 'Old root, measured',
  group: 'Blanks',
  tells: 'The root diameter of a loose wheel from what a calliper can reach, odd counts corrected, and what of it is true to the bore.',
  asks: rootAsks,
  example: { teeth: '31', pitch: '8 DP', system: 'full-14.5', by: 'wall', reading: '1.1670', beside: '1.2500', runOut: '' },
  about: WHEEL_ABOUT,
  work: (given) => measuredRoot(rootSpareOf(given)),
});

const narrowerField = tickField({ label: 'A narrower face is accepted' });

const asked = (given: PairGiven & { readonly acceptNarrower: boolean }) => ({
  wanted: wantedOf(given),
  spare: spareOf(given),
  acceptNarrower: given.acceptNarrower,
  ...typedOf({ cleanUp: given.cleanUp }),
});

/** The new wheel inside the old one; nothing where the new one would be the larger. */
function drawPair(given: PairGiven) {
  const [wanted, spare] = [wantedOf(given), spareOf(given)];
  const judged = testSpare({ wanted, spare });
  if (judged.sizes.outside > judged.oldOutside) return null;
  const { root } = oldRoot(spare, unitOfPitch(wanted.pitch));
  return blankDrawing({ old: spare.gear, oldRoot: root, next: wanted }, { form: dimensions(unitOfPitch(wanted.pitch)) });
}

const spareSum = sum({
  path: 'spare-test',
  title: 'Will this spare do?',
  group: 'Blanks',
  tells: 'Holds a loose wheel against the one that is missing: old gaps, metal, hardness, bore, face and wall, with a plain verdict.',
  asks: { ...pairAsks, acceptNarrower: narrowerField },
  example: { ...PAIR_EXAMPLE, acceptNarrower: '' },
  about: PAIR_ABOUT,
  parts: [PAIR_PARTS[0], PAIR_PARTS[1], { ...PAIR_PARTS[2], asks: [...PAIR_PARTS[2].asks, 'acceptNarrower'] }],
  work: (given) => testSpare(asked(given)).answer,
  draw: drawPair,
});

const mateField = optional(
  countField({ label: 'Teeth of its mate', hint: 'Empty: it runs with a rack', limits: { least: 4, most: 1000 }, unit: 'teeth' }),
);

const secondSum = sum({
  path: 'second-choice',
  title: 'Second choice: short teeth',
  group: 'Blanks',
  tells: 'A spare that is a little too small, turned to its old root: how short the teeth come and how well they still carry.',
  asks: {
    ...pairAsks,
    mate: mateField,
    lastOfItsSpline: tickField({ label: 'It is the last wheel with this spline' }),
    acceptNarrower: narrowerField,
  },
  example: { ...PAIR_EXAMPLE, teeth: '28', spareTeeth: '32', mate: '40', lastOfItsSpline: '', acceptNarrower: '' },
  about: PAIR_ABOUT,
  parts: [
    PAIR_PARTS[0],
    { ...PAIR_PARTS[1], asks: [...PAIR_PARTS[1].asks, 'mate', 'lastOfItsSpline'] },
    { ...PAIR_PARTS[2], asks: [...PAIR_PARTS[2].asks, 'acceptNarrower'] },
  ],
  work: (given) => secondChoice({ ...asked(given), mate: given.mate ?? 'rack', lastOfItsSpline: given.lastOfItsSpline }),
});

/** What a shrink fit may be told beside its sizes: asked alike by both sums of it. */
export const heatAsks = {
  shop: optional(numberField({ label: 'Shop temperature', hint: 'Empty: 70 °F', limits: { least: -20, most: 130 }, unit: '°F' })),
  allowancePerInch: optional(
    numberField({
      label: 'Allowance per inch',
      hint: 'Empty: 0.001 for steel, 0.0005 for iron',
      limits: { least: 0.0001, most: 0.003 },
      unit: 'in',
    }),
  ),
  strength: optional(
    numberField({
      label: 'Yield of the ring, tensile for iron',
      hint: 'Empty: as in the table',
      limits: { least: 5000, most: 300_000 },
      unit: 'lb/in²',
    }),
  ),
};
export const ringField = wordsField({ label: 'Ring made of', words: MATERIALS });

type Heat = { readonly shop: number | null; readonly allowancePerInch: number | null; readonly strength: number | null };
export const heatOf = ({ shop, allowancePerInch, strength }: Heat) => ({
  ...(shop === null ? {} : { shop: readingFahrenheit(shop) }),
  ...(allowancePerInch === null ? {} : { allowancePerInch }),
  ...(strength === null ? {} : { strength }),
});

const ringSum = sum({
  path: 'ring-and-hub',
  title: 'Ring and hub',
  group: 'Blanks',
  tells: 'No spare is big enough: keep the middle of one and shrink a ring on it. Hub, ring, heat, stress, and whether it will carry.',
  asks: { ...pairAsks, ring: ringField, hub: sizeIfKnown({ label: 'Hub as measured', hint: 'Empty until it is turned' }), ...heatAsks },
  example: {
    ...PAIR_EXAMPLE,
    teeth: '60',
    pitch: '12 DP',
    bore: '6 splines 1.250 x 1.0625 x 0.3125',
    spareTeeth: '48',
    ring: 'steel',
    hub: '',
    shop: '',
    allowancePerInch: '',
    strength: '',
  },
  about: { ...PAIR_ABOUT, hub: ['hub'], ringOutside: ['teeth'], hubBore: ['spareBore'] },
  parts: [
    PAIR_PARTS[0],
    { ...PAIR_PARTS[1], asks: [...PAIR_PARTS[1].asks, 'ring', 'hub'] },
    { ...PAIR_PARTS[2], asks: [...PAIR_PARTS[2].asks, 'shop', 'allowancePerInch', 'strength'] },
  ],
  work: (given) =>
    ringAndHub({
      wanted: wantedOf(given),
      spare: spareOf(given),
      ring: given.ring,
      ...typedOf({ hub: given.hub, cleanUp: given.cleanUp }),
      ...heatOf(given),
    }).answer,
});

export const BLANK_SUMS = [spareSum, rootSum, secondSum, ringSum];
