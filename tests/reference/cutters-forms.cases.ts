import { formErrorsOf } from '../../lib/cutters/form-errors.ts';
import { groundTool, halfWidthAt } from '../../lib/cutters/ground-space.ts';
import { groundToolAnswer } from '../../lib/cutters/ground-tool.sums.ts';
import { twoDiscs } from '../../lib/cutters/two-disc.formulas.ts';
import type { Value } from '../../lib/figure/figure.ts';
import type { Flanks } from '../../lib/gears/flanks.formulas.ts';
import type { Pitch } from '../../lib/gears/gear.ts';
import { generatedSpace, rackCorner, rackCutSpace } from '../../lib/gears/profile-rack.formulas.ts';
import type { Tooth } from '../../lib/gears/tooth.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches, inUnit, type LengthUnit } from '../../lib/values/length.ts';
import type { Case } from './case.ts';

const ERRORS = 'numbered cutters';
const TOOLS = 'ground tools and discs';
const PROFILES = 'generated profiles';
const degree = Math.PI / 180;
/** The second route never uses the involute: the furthest that a straight-sided rack cuts at a height, over all places of its rolling. */
const ROLLED = 'derived: straight rack rolled round the pitch circle, the furthest that it cuts sideways at that height';

const tooth = (N: number, m: number, deg: number, unit: LengthUnit = 'in', B = 1.25): Tooth => ({
  N,
  m,
  a: deg * degree,
  A: m,
  B: B * m,
  unit,
});
const system = (deg: number) => ({ name: 'as in the case', angle: degrees(deg), addendum: 1, dedendum: 1.25, extra: inches(0) });
const lengthOf = (value: Value | null, unit: LengthUnit): number => (value && 'length' in value ? inUnit(value.length, unit) : Number.NaN);

type Error = readonly [teeth: number, formFor: number, pitch: string, deg: number, part: 1 | 0.5, printed: number, catches: string];
const PITCHES: Readonly<Record<string, Pitch>> = {
  '10 DP': { kind: 'DP', size: [10, 1] },
  '8 DP': { kind: 'DP', size: [8, 1] },
  '20 DP': { kind: 'DP', size: [20, 1] },
  '5 DP': { kind: 'DP', size: [5, 1] },
  'module 2': { kind: 'module', size: [2, 1] },
  'module 3': { kind: 'module', size: [3, 1] },
};

const FORMS: readonly Error[] = [
  [12, 13, '10 DP', 14.5, 1, -0.005246, 'No. 8 at the end where its form is too full, taken without its sign'],
  [12, 13, '10 DP', 14.5, 0.5, -0.001821, 'error taken to fall evenly from tips to pitch line'],
  [16, 14, '8 DP', 14.5, 1, 0.008108, 'No. 7 at the top of its range: base circle of the form taken for the wheel’s'],
  [16, 14, '8 DP', 14.5, 0.5, 0.002935, 'height counted from the root'],
  [20, 17, '10 DP', 20, 1, 0.006184, 'No. 6 at the top of its range: 14½° taken for 20°'],
  [20, 17, '10 DP', 20, 0.5, 0.002269, 'the whole width given for one flank'],
  [25, 21, 'module 2', 20, 1, 0.098863, 'No. 5 at the top of its range, in inches where millimetres are meant'],
  [25, 21, 'module 2', 20, 0.5, 0.03692, 'a length in mm rounded as an inch'],
  [25, 22, 'module 2', 20, 1, 0.070266, 'the treatise’s count of No. 5 not followed'],
  [25, 22, 'module 2', 20, 0.5, 0.026277, 'the treatise’s count of No. 5 not followed'],
  [34, 26, '8 DP', 14.5, 1, 0.006833, 'No. 4 at the top of its range'],
  [34, 26, '8 DP', 14.5, 0.5, 0.002561, 'error at half the height taken as half'],
  [34, 30, '8 DP', 14.5, 1, 0.002937, 'No. 3½ taken for No. 4'],
  [34, 30, '8 DP', 14.5, 0.5, 0.0011, 'No. 3½ taken for No. 4'],
  [54, 35, 'module 3', 20, 1, 0.175759, 'No. 3 at the top of its range'],
  [54, 35, 'module 3', 20, 0.5, 0.066116, 'difference of pitch radii left out'],
  [54, 42, 'module 3', 20, 1, 0.091617, 'No. 2½ taken for No. 3'],
  [54, 42, 'module 3', 20, 0.5, 0.034424, 'No. 2½ taken for No. 3'],
  [134, 55, '20 DP', 20, 1, 0.003016, 'No. 2 at the top of its range'],
  [134, 55, '20 DP', 20, 0.5, 0.001122, 'fine pitch rounded away'],
  [134, 80, '20 DP', 20, 1, 0.001407, 'No. 1½ taken for No. 2'],
  [134, 80, '20 DP', 20, 0.5, 0.000521, 'No. 1½ taken for No. 2'],
  [300, 135, '10 DP', 14.5, 1, 0.002459, 'No. 1 taken as exact for a rack'],
  [300, 135, '10 DP', 14.5, 0.5, 0.000858, 'flanks that meet above the base circle drawn wrong'],
  [18, 19, '10 DP', 20, 1, -0.002043, 'No. 5½ below its range: metal left shown as metal off'],
  [18, 19, '10 DP', 20, 0.5, -0.00075, 'No. 5½ below its range: metal left shown as metal off'],
  [48, 55, '5 DP', 14.5, 1, -0.003118, 'No. 2 below its range, coarse pitch'],
  [48, 55, '5 DP', 14.5, 0.5, -0.001148, 'No. 2 below its range, coarse pitch'],
];

const formCase = ([teeth, formFor, pitch, deg, part, expected, catches]: Error): Case => {
  const size = PITCHES[pitch] ?? { kind: 'DP', size: [1, 1] };
  const unit = size.kind === 'module' ? 'mm' : 'in';
  return {
    topic: ERRORS,
    kind: 'derived',
    source: ROLLED,
    table: `form of ${formFor} on ${teeth} teeth`,
    given: `form of ${formFor} on ${teeth} teeth, ${pitch}, ${deg}°, ${part} of the addendum above the pitch line`,
    expected,
    tolerance: 0.000001,
    unit,
    actual: () => {
      const gear = { teeth, pitch: size, system: system(deg), helix: null };
      const errors = formErrorsOf(gear, { pitch: size, angle: degrees(deg), exact: { count: formFor, from: 'typed' } });
      return errors ? inUnit(part === 1 ? errors.tip : errors.half, unit) : Number.NaN;
    },
    catches,
  };
};

const helicalCase = (teeth: number, helix: number, formFor: number, expected: number, catches: string): Case => ({
  topic: ERRORS,
  kind: 'derived',
  source: `${ROLLED}; the wheel at its virtual count, teeth/cos³ of the helix`,
  given: `form of ${formFor} on ${teeth} teeth at ${helix}°, normal 8 DP, 20°, at the tips`,
  expected,
  tolerance: 0.000001,
  unit: 'in',
  actual: () => {
    const pitch = PITCHES['8 DP'] ?? { kind: 'DP', size: [8, 1] };
    const gear = { teeth, pitch, system: system(20), helix: { angle: degrees(helix), hand: 'right' as const } };
    const errors = formErrorsOf(gear, { pitch, angle: degrees(20), exact: { count: formFor, from: 'typed' } });
    return errors ? inUnit(errors.tip, 'in') : Number.NaN;
  },
  catches,
});

type Width = readonly [N: number, m: number, deg: number, unit: LengthUnit, part: number, printed: number];
const WIDTHS: readonly Width[] = [
  [22, 0.125, 14.5, 'in', -0.1, 0.095207],
  [22, 0.125, 14.5, 'in', 0.4, 0.120461],
  [22, 0.125, 14.5, 'in', 0.8, 0.148359],
  [40, 2.5, 20, 'mm', -0.1, 1.878144],
  [40, 2.5, 20, 'mm', 0.4, 2.426533],
  [40, 2.5, 20, 'mm', 0.8, 2.942971],
  [17, 0.1, 20, 'in', -0.1, 0.075512],
  [17, 0.1, 20, 'in', 0.4, 0.103266],
  [17, 0.1, 20, 'in', 0.8, 0.133239],
];

const widthCase = ([N, m, deg, unit, part, expected]: Width): Case => ({
  topic: TOOLS,
  kind: 'derived',
  source: ROLLED,
  table: `widths of a tool for ${N} teeth`,
  given: `tool ground for ${N} teeth, module ${m} ${unit}, ${deg}°: half width ${part} of a module above the pitch line`,
  expected,
  tolerance: unit === 'in' ? 0.000003 : 0.00007,
  unit,
  actual: () => {
    const t = tooth(N, m, deg, unit);
    return halfWidthAt(groundTool(t, 'wheel', null).edge, t.B + part * m) ?? Number.NaN;
  },
  catches: 'height counted along the flank, or from the pitch circle instead of the tool’s tip',
});

type Disc = readonly [N: number, deg: number, diameter: number, centres: number, off: number];
const DISCS: readonly Disc[] = [
  [12, 20, 5.1573, 6.1884, 0.00668],
  [17, 20, 6.393, 7.4097, 0.006335],
  [35, 20, 12.0389, 12.7273, 0.002773],
];

const discCases = ([N, deg, D, C, off]: Disc): readonly Case[] => {
  const one = (given: string, expected: number, tolerance: number, actual: () => number, catches: string): Case => ({
    topic: TOOLS,
    kind: 'derived',
    source: 'derived: discs tried round about by chance steps on an unwound string until none is better',
    table: `two discs for ${N} teeth`,
    given: `two discs for ${N} teeth, module 1, ${deg}°: ${given}`,
    expected,
    tolerance,
    unit: 'modules',
    actual,
    catches,
  });
  const fitted = () => twoDiscs(tooth(N, 1, deg));
  return [
    one('diameter', D, 0.002, () => fitted().D, 'circle of curvature at the pitch point taken for the best one'),
    one('distance of middles', C, 0.002, () => fitted().C, 'half distance given'),
    one('largest error', off, 0.000002, () => fitted().off, 'mean error given for the largest'),
  ];
};

const curvature = (N: number, deg: number, expected: number): Case => ({
  topic: TOOLS,
  kind: 'memory',
  source: 'Buckingham, Analytical Mechanics of Gears (1949), radius of curvature at the pitch point r sin a: value from memory',
  given: `two discs for ${N} teeth, module 1, ${deg}°: diameter near twice the radius of curvature`,
  expected,
  tolerance: expected * 0.0015,
  unit: 'modules',
  actual: () => twoDiscs(tooth(N, 1, deg)).D,
  catches: 'a fit that leaves the involute’s own curvature',
});

const SPUR = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152';
const chord = (source: string, teeth: number, pitch: Pitch, unit: LengthUnit, expected: number, tolerance: number): Case => ({
  topic: TOOLS,
  kind: 'published',
  source,
  given: `width of a tool for ${teeth} teeth where it meets the pitch circle (printed as the chord of the tooth, which is as wide)`,
  expected,
  tolerance,
  unit,
  actual: () => {
    const gear = { teeth, pitch, system: system(14.5), helix: null };
    const { figures } = groundToolAnswer({ gear, kind: 'wheel', fillet: null, step: inches(0.1) });
    return lengthOf(figures.pitchWidth.value, unit);
  },
  catches: 'the arc given for the chord, or half of it',
});

type Made = readonly [N: number, mn: number, deg: number, x: number, helix: number, part: number, printed: number, catches: string];
const MADE: readonly Made[] = [
  [12, 2.54, 20, 0.4, 0, 0.2, 1.95851, 'a shift that moves the tips and not the flanks'],
  [12, 2.54, 20, 0.4, 0, 0.7, 2.97175, 'sign of the shift'],
  [24, 3, 20, 0, 30, 0.2, 3.08331, 'normal module where the transverse one belongs'],
  [24, 3, 20, 0, 30, 0.7, 4.01458, 'normal angle where the transverse one belongs'],
  [10, 2.54, 20, 0.15, 23, 0.2, 2.45044, 'shift of a helical wheel taken by the transverse module'],
  [10, 2.54, 20, 0.15, 23, 0.7, 3.6835, 'shift of a helical wheel taken by the normal angle'],
  [25, 2.54, 14.5, -0.2, 0, 0.2, 2.33986, 'shift inward taken as outward'],
  [25, 2.54, 14.5, -0.2, 0, 0.7, 2.95509, 'shift inward taken as outward'],
  [30, 2, 20, -0.3, 15, 0.2, 2.06669, 'shift inward of a helical wheel'],
  [18, 2.54, 14.5, 0, 45, 0.2, 3.13668, 'a steep helix worked by the first order'],
  [18, 2.54, 14.5, 0, 45, 0.7, 3.91573, 'a steep helix worked by the first order'],
];

const flanksOf = (N: number, mn: number, deg: number, x: number, helix: number, B = 1.25): Flanks => ({
  N,
  mn,
  an: deg * degree,
  psi: helix * degree,
  v: x * mn,
  A: mn,
  B: B * mn,
  ring: false,
  unit: 'mm',
});

/** Half width of a drawn space at a height above the standard pitch line. */
function drawnWidth(flanks: Flanks, height: number): number {
  const pitchRadius = (flanks.N * flanks.mn) / Math.cos(flanks.psi) / 2;
  const { fillet, flank } = generatedSpace(flanks, undefined, { fillet: 60, flank: 600 });
  const points = [...fillet, ...flank].map(([R, t]) => [R * Math.sin(t), R * Math.cos(t) - pitchRadius] as const);
  const at = points.findIndex(([, y]) => y >= height);
  const [upper, lower] = [points[at], points[at - 1]];
  if (!upper || !lower) return Number.NaN;
  return lower[0] + ((upper[0] - lower[0]) * (height - lower[1])) / (upper[1] - lower[1]);
}

const madeCase = ([N, mn, deg, x, helix, part, expected, catches]: Made): Case => ({
  topic: PROFILES,
  kind: 'derived',
  source: ROLLED,
  table: `profile of ${N} teeth, shift ${x}, helix ${helix}°`,
  given: `${N} teeth, module ${mn}, ${deg}°, shift ${x}, helix ${helix}°: half width of the space ${part} of a module above the pitch line`,
  expected,
  tolerance: 0.00003,
  unit: 'mm',
  actual: () => drawnWidth(flanksOf(N, mn, deg, x, helix), part * mn),
  catches,
});

/** Fewest teeth without undercut on the drawn profile, tried upward. */
const fewestWhole = (deg: number, B: number, A = 1): number => {
  for (let N = 8; N < 60; N++) if (!rackCutSpace({ N, m: 1, a: deg * degree, A, B, unit: 'in' }).undercut) return N;
  return Number.NaN;
};

const radius = (source: string, given: string, expected: number, tolerance: number, actual: () => number, catches: string): Case => ({
  topic: PROFILES,
  kind: 'published',
  source,
  given,
  expected,
  tolerance,
  unit: 'mm',
  actual,
  catches,
});

const SDP = 'SDP/SI, Elements of Metric Gear Technology, T-81, table 10-1';
const MOTT = 'Machine Elements in Mechanical Design, 4th ed., p. 320';
const ISO53 = 'ISO 53:1998, standard basic rack: value from memory';

export const cases: readonly Case[] = [
  ...FORMS.map(formCase),
  helicalCase(24, 30, 35, 0.001118, 'the true count taken for the virtual one'),
  helicalCase(20, 45, 55, 0.00036, 'teeth/cos² for teeth/cos³'),
  helicalCase(40, 15, 35, 0.004436, 'virtual count rounded before the form is worked'),
  ...WIDTHS.map(widthCase),
  ...DISCS.flatMap(discCases),
  curvature(135, 20, 46.173),
  curvature(55, 20, 18.811),
  curvature(400, 14.5, 100.152),
  chord(SPUR, 23, { kind: 'DP', size: [1, 1] }, 'in', 1.5696, 0.00005),
  chord(SPUR, 23, { kind: 'DP', size: [5, 1] }, 'in', 0.3139, 0.00005),
  chord(SPUR, 15, { kind: 'DP', size: [1, 1] }, 'in', 1.5679, 0.00005),
  ...MADE.map(madeCase),
  radius(
    SDP,
    '12 teeth, module 10, 20°, shift 0.3: the tooth’s chord at the pitch circle, from the drawn space',
    17.8256,
    0.00005,
    () => {
      const flanks = flanksOf(12, 10, 20, 0.3, 0);
      const flank = generatedSpace(flanks, undefined, { fillet: 8, flank: 2000 }).flank;
      const at = flank.findIndex(([R]) => R >= 60);
      const [[R1, t1], [R0, t0]] = [flank[at] ?? [0, 0], flank[at - 1] ?? [0, 0]];
      const turn = Math.PI / 12 - (t0 + ((60 - R0) / (R1 - R0)) * (t1 - t0));
      return 2 * 60 * Math.sin(turn);
    },
    'shift that leaves the thickness as it was',
  ),
  {
    topic: PROFILES,
    kind: 'published',
    source: MOTT,
    given: 'fewest teeth whose drawn flank is whole, 14½° full depth',
    expected: 32,
    tolerance: 1e-9,
    unit: 'teeth',
    actual: () => fewestWhole(14.5, 1.157),
    catches: 'undercut judged by the dedendum with its clearance',
  },
  {
    topic: PROFILES,
    kind: 'published',
    source: MOTT,
    given: 'fewest teeth whose drawn flank is whole, 20° full depth',
    expected: 18,
    tolerance: 1e-9,
    unit: 'teeth',
    actual: () => fewestWhole(20, 1.25),
    catches: 'undercut judged by the dedendum with its clearance',
  },
  {
    topic: PROFILES,
    kind: 'memory',
    source: 'American stub tooth, 20°, 0.8 and 1: value from memory',
    given: 'fewest teeth whose drawn flank is whole, 20° stub',
    expected: 14,
    tolerance: 1e-9,
    unit: 'teeth',
    actual: () => fewestWhole(20, 1, 0.8),
    catches: 'full depth taken for stub',
  },
  {
    topic: PROFILES,
    kind: 'memory',
    source: ISO53,
    given: 'profile A, 20°, 1/1.25: corner of the rack',
    expected: 0.38,
    tolerance: 0.0005,
    unit: 'modules',
    actual: () => rackCorner(tooth(40, 1, 20, 'mm')),
    catches: 'corner that reaches into the flank a mate uses',
  },
  {
    topic: PROFILES,
    kind: 'memory',
    source: ISO53,
    given: 'profile D, 20°, 1/1.4: corner of the rack, its tip one round',
    expected: 0.39,
    tolerance: 0.005,
    unit: 'modules',
    actual: () => rackCorner(tooth(40, 1, 20, 'mm', 1.4)),
    catches: 'corner larger than the tip has room for',
  },
];
