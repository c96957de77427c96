import { spanOver } from '../../lib/gears/base-tangent.formulas.ts';
import { foundSpline } from '../../lib/splines/find.sums.ts';
import { grooveFeed } from '../../lib/splines/hub.formulas.ts';
import { dinShift, formClearance } from '../../lib/splines/involute.formulas.ts';
import { type NamedSpline, sizesOf, usualShift } from '../../lib/splines/involute-spline.ts';
import { millSplines } from '../../lib/splines/mill.sums.ts';
import { type MillAsked, millPlan } from '../../lib/splines/mill-plan.ts';
import { betweenPins, overPins, pinTouching } from '../../lib/splines/pins.formulas.ts';
import type { InchFit } from '../../lib/splines/straight.data.ts';
import { torquePerInch } from '../../lib/splines/straight.formulas.ts';
import { inchStraight, METRIC_CHOICES } from '../../lib/splines/straight-choice.ts';
import { inches, type Length, toInches, toMm } from '../../lib/values/length.ts';
import type { Case, CaseKind } from './case.ts';
import { casesOf, type Row } from './cases-of.ts';

const topic = 'Splines';
const list = (kind: CaseKind, source: string, rows: readonly Row[], table?: string): Case[] => casesOf(topic, kind, source, rows, table);

const inch = (splines: number, fit: InchFit, D: number, what: 'inside' | 'width'): number => {
  const found = inchStraight(splines, fit, inches(D));
  return found ? toInches(found[what]) : Number.NaN;
};
const metric = (series: string, splines: number, d: number, what: 'outside' | 'width', D?: number): number => {
  const found = METRIC_CHOICES.find(
    (one) =>
      one.name.startsWith(`metric ${series}`) &&
      one.splines === splines &&
      toMm(one.inside) === d &&
      (D === undefined || toMm(one.outside) === D),
  );
  return found ? toMm(found[what]) : Number.NaN;
};

const ansi = (teeth: number, P: number, root: 'flat' | 'fillet' = 'flat') => sizesOf({ standard: 'ANSI', root, teeth, P });
const din = (reference: number, m: number, teeth: number) => sizesOf({ standard: 'DIN', reference, m, teeth });
const old = (teeth: number, outside: number, depth: 'deep' | 'intermediate' | 'shallow') =>
  sizesOf({ standard: 'old', teeth, outside, depth });
const oldHeight = (teeth: number, outside: number, depth: 'deep' | 'intermediate' | 'shallow'): number => {
  const { shaft } = old(teeth, outside, depth);
  return (shaft.outside - shaft.inside) / 2;
};
const A30 = Math.PI / 6;
const A20 = Math.PI / 9;
/** Touches the shaft's flanks on a pitch circle of 1 in, its teeth half a pitch thick. */
const pinAtPitch = (N: number): number => pinTouching('shaft', { N, m: 1 / N, a: A30, t: Math.PI / (2 * N) }, 1);
const oldPins = (N: number): number => overPins({ N, a: A30, D: 1, k: pinAtPitch(N), t: Math.PI / (2 * N) });

const plate = (id: number, circles: readonly number[]) => ({
  kind: 'plate' as const,
  id,
  name: `Plate ${id}`,
  here: true,
  sides: [circles],
});
const STUB = (bottom: number): MillAsked => ({
  bore: { splines: 6, outside: inches(1.251), inside: inches(1.063), width: inches(0.313) },
  locates: 'outside and sides',
  clearances: { outside: inches(0.001), sides: inches(0.0005), bottom: inches(bottom) },
  cutterWidth: inches(0.1875),
  head: { turns: 40, name: '40 to 1' },
  plates: [plate(1, [15, 16, 17, 18, 19, 20]), plate(2, [21, 23, 27, 29, 31, 33]), plate(3, [37, 39, 41, 43, 47, 49])],
  circle: 33,
  unit: 'in',
});
/** A figure of the shaft sheet in inches, or in spaces on 33 from the key. */
const stub = (key: string, bottom = 0.005): number => {
  const value = millSplines(STUB(bottom)).figures[key]?.value;
  if (value && 'length' in value) return toInches(value.length as Length);
  return value && 'move' in value ? value.move.turns * 33 + value.move.spaces : Number.NaN;
};
const found = (outside: number, inside: number, width: number, splines: number) =>
  foundSpline({ part: 'bore', splines, outside: inches(outside), inside: inches(inside), width: inches(width), sides: 'parallel' });
const nominal = (what: 'outside' | 'inside' | 'width'): number => {
  const best = found(1.251, 1.063, 0.313, 6);
  return best ? toInches(best[what]) : Number.NaN;
};

const J499 = 'SAE J499-2014, Parallel Side Splines for Soft Broached Holes in Fittings, 1 in row of six splines (tnlab.org)';
const ISO14 = 'BS 5686:1986, ISO 14-1982, Straight-sided splines for cylindrical shafts (roymech.co.uk, Straight Sided Spline Dimensions)';
const CATALOGUE = 'Splined shafts and splined hubs DIN ISO 14, catalogue page 327 (vdocument.in): list of profiles, 6 × 11 × 14 and on';
const B92 =
  'derived: equation printed in ANSI B92.1-1970, R1993 (engineersedge.com, American National Standard Involute Splines), worked by hand';
const STOCK = 'Spline components, table of splined hubs: teeth, nominal outside and pitch (testing.mechaface.com, Spline Components)';
const OMNI = 'Omni Gear and Machine, Involute Splines, Old American Standard';
const SHEET = 'Worked sheet of a spline DIN 5480, 6 × 0.8 × 30° × 6 (xueke.org, document 311542)';
const W50 =
  'Some concepts about DIN 5480 spline dimension, part 2, W 50 × 2 × 24 × 8h (grabcad.com, tutorial), sizes of inspection of DIN 5480-2';
const STORY = 'derived: the story of the missing stub shaft, cuts simulated on a round bar';

export const cases: readonly Case[] = [
  ...list(
    'published',
    J499,
    [
      ['1 in, six, permanent: small diameter', 0.9, 1e-9, 'in', () => inch(6, 'permanent', 1, 'inside'), 'fits exchanged'],
      [
        '1 in, six, slides without load: small diameter',
        0.85,
        1e-9,
        'in',
        () => inch(6, 'slides without load', 1, 'inside'),
        'fits exchanged',
      ],
      ['1 in, six, slides under load: small diameter', 0.8, 1e-9, 'in', () => inch(6, 'slides under load', 1, 'inside'), 'fits exchanged'],
      ['1 in, six: width', 0.25, 1e-9, 'in', () => inch(6, 'permanent', 1, 'width'), 'width taken of the small diameter'],
      [
        '1 in, six, permanent: torque at 1000 lb/in²',
        143,
        0.55,
        'in lb',
        () => torquePerInch(1000, 6, 1, 0.9),
        'mean radius taken as mean diameter',
      ],
      ['1 in, six, slides without load: torque', 208, 0.55, 'in lb', () => torquePerInch(1000, 6, 1, 0.85), 'height taken as D − d'],
      ['1 in, six, slides under load: torque', 270, 0.55, 'in lb', () => torquePerInch(1000, 6, 1, 0.8), 'one key instead of all'],
    ],
    'J499 1 in',
  ),
  ...list('published', 'T. H. Wentzell, Machine Design, example 15.2, p. 335', [
    [
      'six splines 1.000/0.810, 2 in long, 1000 lb/in²',
      515.85,
      0.005,
      'in lb',
      () => 2 * torquePerInch(1000, 6, 1, 0.81),
      'mean radius of the keys left out',
    ],
  ]),
  ...list(
    'published',
    ISO14,
    [
      ['light, 6 × 23: outside', 26, 1e-9, 'mm', () => metric('light', 6, 23, 'outside'), 'light and medium exchanged'],
      ['light, 8 × 52: outside', 58, 1e-9, 'mm', () => metric('light', 8, 52, 'outside'), 'a row shifted'],
      ['light, 10 × 112: width', 18, 1e-9, 'mm', () => metric('light', 10, 112, 'width'), 'last row missing'],
      ['light, 8 × 46: width', 9, 1e-9, 'mm', () => metric('light', 8, 46, 'width'), 'width of the row above'],
      ['light, 10 × 92: outside', 98, 1e-9, 'mm', () => metric('light', 10, 92, 'outside'), 'light and medium exchanged'],
    ],
    'ISO 14 light',
  ),
  ...list(
    'published',
    ISO14,
    [
      ['medium, 6 × 13: width', 3.5, 1e-9, 'mm', () => metric('medium', 6, 13, 'width'), 'a half rounded off'],
      ['medium, 8 × 36: outside', 42, 1e-9, 'mm', () => metric('medium', 8, 36, 'outside'), 'light and medium exchanged'],
      ['medium, 10 × 82: outside', 92, 1e-9, 'mm', () => metric('medium', 10, 82, 'outside'), 'count of the next size'],
      [
        'medium, 8 × 56: outside 65 as its column prints, not 66 as its designation does',
        65,
        1e-9,
        'mm',
        () => metric('medium', 8, 56, 'outside'),
        'the misprinted designation 8 × 56 × 66',
      ],
      ['medium, 10 × 112: outside', 125, 1e-9, 'mm', () => metric('medium', 10, 112, 'outside'), 'last row missing'],
    ],
    'ISO 14 medium',
  ),
  ...list(
    'published',
    CATALOGUE,
    [
      ['6 × 11', 14, 1e-9, 'mm', () => metric('medium', 6, 11, 'outside'), 'smallest size missing'],
      ['6 × 16', 20, 1e-9, 'mm', () => metric('medium', 6, 16, 'outside'), 'a row shifted'],
      ['6 × 21', 25, 1e-9, 'mm', () => metric('medium', 6, 21, 'outside'), 'a row shifted'],
      ['6 × 28', 34, 1e-9, 'mm', () => metric('medium', 6, 28, 'outside'), 'light taken for medium'],
      ['8 × 46', 54, 1e-9, 'mm', () => metric('medium', 8, 46, 'outside'), 'six keys kept where eight begin'],
    ],
    'catalogue DIN ISO 14',
  ),
  ...list(
    'published',
    STOCK,
    [
      ['9 teeth, 16/32: 5/8', 0.625, 1e-9, 'in', () => ansi(9, 16).shaft.outside, 'outside of a gear, (N + 2)/P'],
      ['13 teeth, 16/32: 7/8', 0.875, 1e-9, 'in', () => ansi(13, 16).shaft.outside, 'second pitch taken for the first'],
      ['13 teeth, 8/16: 1 3/4', 1.75, 1e-9, 'in', () => ansi(13, 8).shaft.outside, 'second pitch taken for the first'],
      ['14 teeth, 12/24: 1 1/4', 1.25, 1e-9, 'in', () => ansi(14, 12).shaft.outside, 'pitch diameter taken for outside'],
      ['14 teeth, 10/20: 1 1/2', 1.5, 1e-9, 'in', () => ansi(14, 10, 'fillet').shaft.outside, 'fillet root made to change the outside'],
    ],
    'stock hubs inch',
  ),
  ...list(
    'published',
    STOCK,
    [
      [
        '14 teeth, 20 mm, module 1.25 of DIN 5480 is of the series (1 yes)',
        1,
        0,
        '',
        () => Number(usualShift(20, 1.25, 14)),
        'greatest shift set too low',
      ],
      [
        '14 teeth, 30 mm, module 2 of DIN 5480 is of the series (1 yes)',
        1,
        0,
        '',
        () => Number(usualShift(30, 2, 14)),
        'least shift set too high',
      ],
    ],
    'stock hubs DIN 5480',
  ),
  ...list(
    'published',
    OMNI,
    [
      ['pin, 6 splines of 1 in', 0.3660253, 2e-7, 'in', () => pinAtPitch(6), 'pin tangent at the base circle'],
      ['pin, 10 splines of 1 in', 0.2012936, 2e-7, 'in', () => pinAtPitch(10), 'half a pitch taken for a quarter'],
      ['pin, 16 splines of 1 in', 0.120585, 2e-7, 'in', () => pinAtPitch(16), 'cos 30° left out'],
      ['pin, 24 splines of 1 in', 0.0786596, 2e-7, 'in', () => pinAtPitch(24), 'angle in degrees'],
      ['pin, 36 splines of 1 in', 0.051719, 5e-7, 'in', () => pinAtPitch(36), 'angle in degrees'],
    ],
    'old American pins',
  ),
  ...list(
    'published',
    OMNI,
    [
      ['over pins, 6 splines, intermediate', 1.59077, 6e-7, 'in', () => oldPins(6), 'pin added on one side only'],
      ['over pins, 10 splines, intermediate', 1.31566, 6e-7, 'in', () => oldPins(10), 'inv of the pressure angle left out'],
      ['over pins, 16 splines, intermediate', 1.186008, 6e-7, 'in', () => oldPins(16), 'k divided by D instead of the base diameter'],
      ['over pins, 24 splines (first column, shifted there)', 1.120219, 6e-7, 'in', () => oldPins(24), 'π/N taken for π/2N'],
    ],
    'old American over pins',
  ),
  ...list(
    'published',
    OMNI,
    [
      ['six, 0.9375 in: deep height', 0.0469, 6e-5, 'in', () => oldHeight(6, 0.9375, 'deep'), 'depth taken on the diameter'],
      ['six, 1.5 in: intermediate height', 0.0638, 6e-5, 'in', () => oldHeight(6, 1.5, 'intermediate'), 'depths exchanged'],
      ['six, 4.125 in: shallow height', 0.1444, 6e-5, 'in', () => oldHeight(6, 4.125, 'shallow'), 'depths exchanged'],
      ['sixteen, 2.4375 in: deep height (misprinted .1279)', 0.1219, 6e-5, 'in', () => oldHeight(16, 2.4375, 'deep'), 'the misprint .1279'],
      ['six, 0.75 in: diametral pitch', 8, 5e-5, '1/in', () => 1 / old(6, 0.75, 'deep').m, 'pitch of the inside'],
    ],
    'old American depths',
  ),
  ...list(
    'published',
    OMNI,
    [
      ['sixteen, 1.5 in: diametral pitch', 10.6667, 6e-5, '1/in', () => 1 / old(16, 1.5, 'deep').m, 'pitch of the inside'],
      ['sixteen, 4.125 in: diametral pitch', 3.8788, 6e-5, '1/in', () => 1 / old(16, 4.125, 'deep').m, 'a row shifted'],
      ['ten, 1.5 in: diametral pitch', 6.6667, 6e-5, '1/in', () => 1 / old(10, 1.5, 'deep').m, 'count left out'],
    ],
    'old American pitches',
  ),
  ...list(
    'published',
    SHEET,
    [
      ['shift of the reference diameter', 0.16, 1e-9, 'mm', () => dinShift(6, 0.8, 6), 'shift doubled, or 2.2 m taken for 1.1 m'],
      [
        'addendum 0.45 m from the shifted pitch line',
        0.36,
        1e-9,
        'mm',
        () => (din(6, 0.8, 6).shaft.outside - (4.8 + 2 * 0.16)) / 2,
        'addendum of a gear',
      ],
      [
        'dedendum 0.55 m from the shifted pitch line',
        0.44,
        1e-9,
        'mm',
        () => (4.8 + 2 * 0.16 - din(6, 0.8, 6).shaft.inside) / 2,
        'dedendum of a hob taken for that of a broach',
      ],
      [
        'tooth height 0.8',
        0.8,
        1e-9,
        'mm',
        () => (din(6, 0.8, 6).shaft.outside - din(6, 0.8, 6).shaft.inside) / 2,
        'height on the diameter',
      ],
      [
        'pitch, as twice tooth and space without the shift',
        2.51327,
        6e-6,
        'mm',
        () => 2 * (din(6, 0.8, 6).t - 2 * 0.16 * Math.tan(A30)),
        'shift taken off the tooth',
      ],
    ],
    'DIN 5480 sheet',
  ),
  ...list('published', W50, [
    [
      'W 50 × 2 × 24: over pins of 4 mm',
      54.218,
      0.0006,
      'mm',
      () => overPins({ N: 24, a: A30, D: 48, k: 4, t: din(50, 2, 24).t }),
      'shift of the reference diameter left out, or with its sign turned',
    ],
    [
      'W 50 × 2 × 24: over 4 teeth',
      21.179,
      0.0006,
      'mm',
      () => spanOver({ N: 24, mn: 2, an: A30, psi: 0, v: -0.1, A: 0.9, B: 1.1, ring: false, unit: 'mm' }, din(50, 2, 24).t, 4),
      'a tooth of half the pitch',
    ],
  ]),
  ...list('derived', B92, [
    ['20 teeth, 16/32, flat: shaft outside 21/16', 1.3125, 1e-9, 'in', () => ansi(20, 16).shaft.outside, 'gear addendum'],
    ['20 teeth, 16/32, flat: shaft inside 18.65/16', 1.165625, 1e-9, 'in', () => ansi(20, 16).shaft.inside, 'fillet for flat'],
    ['20 teeth, 16/32, flat: hub outside 21.35/16', 1.334375, 1e-9, 'in', () => ansi(20, 16).hub.outside, 'no room under the shaft’s tips'],
    ['20 teeth, 16/32: hub inside 19/16', 1.1875, 1e-9, 'in', () => ansi(20, 16).hub.inside, 'hub and shaft exchanged'],
    ['20 teeth, 16/32, fillet: hub outside 21.8/16', 1.3625, 1e-9, 'in', () => ansi(20, 16, 'fillet').hub.outside, 'flat for fillet'],
    [
      '24 teeth, 8/16, fillet: shaft inside 22.2/8',
      2.775,
      1e-9,
      'in',
      () => ansi(24, 8, 'fillet').shaft.inside,
      'fine depth on coarse pitch',
    ],
    ['20 teeth, 16/32: space π/32', 0.0981748, 5e-8, 'in', () => ansi(20, 16).t, 'second pitch taken for the first'],
    ['form clearance at 0.5 in, held at its least', 0.002, 1e-9, 'in', () => formClearance(0.5), 'no least'],
    ['form clearance at 4 in', 0.004, 1e-9, 'in', () => formClearance(4), 'a hundredth for a thousandth'],
    ['form clearance at 15 in, held at its most', 0.01, 1e-9, 'in', () => formClearance(15), 'no most'],
  ]),
  ...list('memory', 'value from memory: tables of over-pin measurement of spur gears, pins of 1.728 and 1.7', [
    [
      '20 teeth of 1 mm, 20°, pin 1.7',
      22.2941,
      6e-5,
      'mm',
      () => overPins({ N: 20, a: A20, D: 20, k: 1.7, t: Math.PI / 2 }),
      'π/N taken twice',
    ],
    [
      '6 teeth of 1 in, 20°, pin 1.728',
      8.3032,
      6e-5,
      'in',
      () => overPins({ N: 6, a: A20, D: 6, k: 1.728, t: Math.PI / 2 }),
      'few teeth: pin by chord',
    ],
    [
      '10 teeth of 1 in, 20°, pin 1.728',
      12.3445,
      6e-5,
      'in',
      () => overPins({ N: 10, a: A20, D: 10, k: 1.728, t: Math.PI / 2 }),
      'pressure angle for pin angle',
    ],
    [
      '8 teeth of 1 in, 14½°, pin 1.728',
      10.316,
      6e-5,
      'in',
      () => overPins({ N: 8, a: (14.5 * Math.PI) / 180, D: 8, k: 1.728, t: Math.PI / 2 }),
      'angle fixed at 30°',
    ],
  ]),
  ...list('derived', 'derived: SDP/SI inch section, p. T60, formulas for internal gears worked by hand', [
    [
      'between pins 1.44, 20 teeth of 1 in, 20°',
      18.6635,
      6e-5,
      'in',
      () => betweenPins({ N: 20, a: A20, D: 20, k: 1.44, s: Math.PI / 2 }),
      'pin added instead of taken off',
    ],
    [
      'between pins 1.44, 31 teeth of 1 in, 20°',
      29.6242,
      6e-5,
      'in',
      () => betweenPins({ N: 31, a: A20, D: 31, k: 1.44, s: Math.PI / 2 }),
      'odd count taken for even',
    ],
    [
      'between pins 1.44, 40 teeth of 1 in, 20°',
      38.6644,
      6e-5,
      'in',
      () => betweenPins({ N: 40, a: A20, D: 40, k: 1.44, s: Math.PI / 2 }),
      'sign of the pin’s term',
    ],
  ]),
  ...list(
    'memory',
    'value from memory of the fractions of SAE J499',
    [
      ['four of 2 in, permanent: small diameter', 1.7, 1e-9, 'in', () => inch(4, 'permanent', 2, 'inside'), 'six taken for four'],
      ['four of 2 in: width', 0.482, 1e-9, 'in', () => inch(4, 'slides without load', 2, 'width'), 'six taken for four'],
      [
        'ten of 2 in, slides under load: small diameter',
        1.62,
        1e-9,
        'in',
        () => inch(10, 'slides under load', 2, 'inside'),
        'fits exchanged',
      ],
      ['sixteen of 2 in: width', 0.196, 1e-9, 'in', () => inch(16, 'permanent', 2, 'width'), 'ten taken for sixteen'],
      ['ten of 2 in: width', 0.312, 1e-9, 'in', () => inch(10, 'permanent', 2, 'width'), 'sixteen taken for ten'],
    ],
    'J499 fractions',
  ),
  ...list(
    'memory',
    'value from memory of DIN 5464',
    [
      ['10 × 16: outside', 20, 1e-9, 'mm', () => metric('heavy', 10, 16, 'outside'), 'medium taken for heavy'],
      ['16 × 62: width', 6, 1e-9, 'mm', () => metric('heavy', 16, 62, 'width'), 'count of the lighter series'],
      ['20 × 112: outside', 125, 1e-9, 'mm', () => metric('heavy', 20, 112, 'outside'), 'last row missing'],
    ],
    'DIN 5464',
  ),
  ...list('memory', 'value from memory of ISO 4156, 30°', [
    ['24 teeth, module 2.5, flat: hub outside', 63.75, 1e-9, 'mm', () => iso(24, 2.5).hub.outside, '1.8 for a flat root'],
    ['24 teeth, module 2.5: shaft outside', 62.5, 1e-9, 'mm', () => iso(24, 2.5).shaft.outside, 'inch proportions'],
    ['24 teeth, module 2.5: hub inside', 57.74, 0.006, 'mm', () => iso(24, 2.5).hub.inside, 'form clearance left out'],
  ]),
  ...list('derived', STORY, [
    ['bore 1.251, 1.063, 0.313, six: outside of the standard', 1.25, 1e-9, 'in', () => nominal('outside'), 'metric 32 taken'],
    ['and its small diameter', 1.0625, 1e-9, 'in', () => nominal('inside'), 'permanent or sliding fit taken'],
    ['and its width', 0.3125, 1e-9, 'in', () => nominal('width'), 'width of another fraction'],
    ['shaft small diameter', 1.058, 1e-9, 'in', () => stub('small'), 'room taken from the nominal instead of the bore'],
    ['cutter’s middle off centre', 0.25, 1e-9, 'in', () => stub('firstOffset'), 'near face set on the centre'],
    ['near face off centre', 0.1563, 6e-5, 'in', () => stub('nearFace'), 'far face reckoned'],
    ['depth of the sides', 0.1196, 6e-5, 'in', () => stub('sideDepth'), '(D − d)/2 dialled'],
    ['depth of the bottoms', 0.1044, 6e-5, 'in', () => stub('bottomDepth'), '(D − d)/2 dialled'],
    ['crank from key to key, spaces on 33', 6 * 33 + 22, 0, 'spaces', () => stub('crank'), 'holes for spaces'],
    ['first bottom cut, spaces on 33', 3 * 33 + 2, 0, 'spaces', () => stub('bottomFirst'), 'a key’s foot cut away'],
    ['second bottom cut, spaces on 33', 3 * 33 + 20, 0, 'spaces', () => stub('bottomLast'), 'both cuts turned one way'],
    ['highest point left, across', 1.059, 6e-5, 'in', () => stub('highest'), 'ridge taken for none'],
    ['depth of the sides for 1.0625', 0.1172, 6e-5, 'in', () => stub('sideDepth', 0.0005), 'depth fixed'],
    ['depth of the bottoms for 1.0625', 0.1021, 6e-5, 'in', () => stub('bottomDepth', 0.0005), 'depth fixed'],
    ['first bottom cut for 1.0625, spaces on 33', 3 * 33 + 1, 0, 'spaces', () => stub('bottomFirst', 0.0005), 'rounded up into the key'],
    ['second bottom cut for 1.0625, spaces on 33', 3 * 33 + 21, 0, 'spaces', () => stub('bottomLast', 0.0005), 'rounded up into the key'],
    ['one bottom cut at (D − d)/2: edges', 0.0082, 6e-5, 'in', () => stub('singleEdge', 0.0005), 'flat taken for round'],
    ['one bottom cut: ridges', 0.0091, 6e-5, 'in', () => stub('singleRidge', 0.0005), 'ridges forgotten'],
    ['cutter for one cut a space', 0.2371, 6e-5, 'in', () => stub('wideCutter', 0.0005), 'arc taken for chord'],
    ['and its depth', 0.1071, 6e-5, 'in', () => stub('wideDepth', 0.0005), '(D − d)/2 dialled'],
    ['keys left at 1.0625 by one cut: enters (0 no)', 0, 0, '', () => Number(singleEnters()), 'a shaft that does not enter passed'],
    ['the shaft cut as said: enters (1 yes)', 1, 0, '', () => Number(millPlan(STUB(0.005)).enters), 'a good shaft refused'],
  ]),
  ...list('derived', 'derived: height of a chord, worked by hand', [
    [
      'hub 1.25 × 1.0625 × 0.3125: feed from touching',
      0.1172,
      6e-5,
      'in',
      () => grooveFeed(1.25, 1.0625, 0.3125),
      'feed from the middle of the nose',
    ],
  ]),
];

function iso(teeth: number, m: number) {
  const named: NamedSpline = { standard: 'ISO', root: 'flat', teeth, m };
  return sizesOf(named);
}

function singleEnters(): boolean {
  const value = millSplines(STUB(0.0005)).figures['singleEnters']?.value;
  return value !== undefined && 'words' in value && value.words.startsWith('yes');
}
