import { contactRatioAt, contactRatioInRing, contactRatioOnRack } from '../../lib/gears/contact-ratio.formulas.ts';
import { atOf, baseOf, type Flanks, mtOf, pitchOf, rootOf, tipOf } from '../../lib/gears/flanks.formulas.ts';
import { overlapRatio } from '../../lib/gears/helical.formulas.ts';
import { involuteRoom, largestTip, leastPinion, trimmingRoom, trochoidRoom } from '../../lib/gears/interference.formulas.ts';
import { inv } from '../../lib/gears/involute.formulas.ts';
import {
  backlashAngle,
  backlashOfCentre,
  backlashSquare,
  type Couple,
  centreAt,
  involuteOfWorkingAngle,
  shiftsFor,
  standardCentre,
  tipShortening,
  workingAngle,
  workingAngleAt,
  workingBacklash,
  workingDiameters,
} from '../../lib/gears/pair.formulas.ts';
import type { Case } from './case.ts';
import { BY_TANGENTS, deg, FROM_MEMORY, type Row, rad, radiiOf, rows, teeth } from './parallel-rows.ts';

const topic = 'Pairs, contact and interference';
const T46 = 'SDP/SI, Elements of Metric Gear Technology, T-46, table 5-4';
const T109 = 'SDP/SI, Elements of Metric Gear Technology, T-109, table 11-1';
const ISO_SHEET = 'Gear Generating Profile Shift Calculations, worksheet after ISO 21771:2007, equations 62 and 63';
const KHURMI = 'R. S. Khurmi and J. K. Gupta, Theory of Machines, ch. 12 (re-keyed)';
const BEVAN = 'T. Bevan, The Theory of Machines, ch. 10 (re-keyed)';

const centre = (couple: Couple): number => centreAt(couple, workingAngle(couple));
const ratio = (one: Flanks, mate: Flanks, C: number): number => {
  const K = tipShortening({ one, mate }, C);
  return contactRatioAt(radiiOf(one, tipOf(one) - 2 * K), radiiOf(mate, tipOf(mate) - 2 * K), C, atOf(one), mtOf(one));
};
const tight = (one: Flanks, mate: Flanks): number => ratio(one, mate, centre({ one, mate }));
const inRing = (one: Flanks, mate: Flanks): number =>
  contactRatioInRing(radiiOf(one), radiiOf(mate), centre({ one, mate }), atOf(one), mtOf(one));
const path = (one: Flanks, mate: Flanks): number => tight(one, mate) * Math.PI * mtOf(one) * Math.cos(atOf(one));

/** Ring of 50, module 1, 20°: what table 5-4 prints for each pinion. */
const few = (z1: number, x2: number): Couple => ({ one: teeth(z1, 1, 20), mate: teeth(50, 1, 20, { v: x2, ring: true }) });
const T46_ROWS = [
  [49, 1, 61.0605, 0.971, 1.105],
  [48, 0.6, 46.0324, 1.354, 1.512],
  [47, 0.4, 37.4155, 1.775, 1.726],
  [46, 0.3, 32.4521, 2.227, 1.835],
  [45, 0.2, 28.2019, 2.666, 1.933],
  [44, 0.11, 24.5356, 3.099, 2.014],
  [43, 0.06, 22.3755, 3.557, 2.053],
  [42, 0.01, 20.3854, 4.01, 2.088],
] as const;
const ringRows = (pick: (row: (typeof T46_ROWS)[number]) => readonly [string, number, () => number]): readonly Row[] =>
  T46_ROWS.map((row) => [...pick(row), 'signs of a ring: sums where differences belong'] as Row);

const spread: Couple = { one: teeth(31, 3.5, 20, { helix: 21 }), mate: teeth(30, 3.5, 20, { helix: 21 }) };
const spreadAngle = workingAngleAt(spread, 116.5);
const shifted: Couple = { one: teeth(12, 3, 20, { v: 1.8 }), mate: teeth(24, 3, 20, { v: 1.08 }) };
const plain: Couple = { one: teeth(12, 3, 20), mate: teeth(24, 3, 20) };
const ring: Couple = { one: teeth(16, 3, 20), mate: teeth(24, 3, 20, { v: 1.5, ring: true }) };
const leaning: Couple = { one: teeth(12, 3, 20, { helix: 30, v: 0.29427 }), mate: teeth(60, 3, 20, { helix: 30 }) };
const inside = ({ one, mate }: Couple) => ({
  one: { N: one.N, base: baseOf(one) / 2, tip: tipOf(one) / 2 },
  ring: { N: mate.N, base: baseOf(mate) / 2, tip: tipOf(mate) / 2 },
  C: centre({ one, mate }),
  aw: workingAngle({ one, mate }),
});
const standardRing = (z1: number, z2: number) => inside({ one: teeth(z1, 1, 20), mate: teeth(z2, 1, 20, { ring: true }) });
const annular = { one: teeth(18, 4, 20, { A: 8.5 }), mate: teeth(72, 4, 20, { A: 3.5, ring: true }) };
const loose: Couple = { one: teeth(20, 2, 20), mate: teeth(40, 2, 20) };

export const cases: readonly Case[] = [
  ...rows(
    { topic, kind: 'published', source: T46, table: 'T46 angles', tolerance: 6e-5, unit: '°' },
    ringRows(([z, x, aw]) => [`${z} in 50, ring shift ${x}: working angle`, aw, () => deg(workingAngle(few(z, x)))]),
  ),
  ...rows(
    { topic, kind: 'published', source: T46, table: 'T46 centres', tolerance: 6e-4, unit: 'mm' },
    ringRows(([z, x, , a]) => [`${z} in 50, ring shift ${x}: centres`, a, () => centre(few(z, x))]),
  ),
  ...rows(
    { topic, kind: 'published', source: T46, table: 'T46 contact', tolerance: 6e-4, unit: '' },
    ringRows(([z, x, , , e]) => [`${z} in 50, ring shift ${x}: contact ratio`, e, () => inRing(few(z, x).one, few(z, x).mate)]),
  ),
  ...rows(
    { topic, kind: 'published', source: T109, tolerance: 6e-5, unit: '' },
    [
      [
        '12 and 60, mn 3, 30°, tips as printed: contact ratio',
        1.2939,
        () => contactRatioAt(radiiOf(leaning.one, 48.153), radiiOf(leaning.mate, 213.842), 125, atOf(leaning.one), mtOf(leaning.one)),
        'normal base pitch for transverse; tips rounded to thousandths cost 0.00009',
      ],
    ].map(([given, expected, actual, catches]) => [given, expected, actual, catches] as Row),
  ).map((one) => ({ ...one, tolerance: 1.5e-4 })),
  ...rows({ topic, kind: 'published', source: T109, tolerance: 6e-6, unit: '°' }, [
    ['mn 3, 20°, 30°: transverse angle', 22.79588, () => deg(atOf(leaning.one)), 'cos multiplied instead of divided'],
  ]),
  ...rows({ topic, kind: 'published', source: T109, tolerance: 6e-4, unit: 'mm' }, [
    ['12 teeth, mn 3, 30°: base', 38.322, () => baseOf(leaning.one), 'normal angle at the base'],
    ['60 teeth, mn 3, 30°: base', 191.611, () => baseOf(leaning.mate), 'normal angle at the base'],
  ]),
  ...rows({ topic, kind: 'published', source: T109, tolerance: 6e-5, unit: '°' }, [
    ['the same at 125: working angle', 23.1126, () => deg(workingAngleAt(leaning, 125)), 'unshifted angle'],
  ]),
  ...rows({ topic, kind: 'published', source: ISO_SHEET, table: 'ISO sheet, angles and centres', tolerance: 1e-9, unit: 'mm or °' }, [
    ['31 and 30, mn 3.5, 21°: reference centres', 114.3447280708, () => standardCentre(spread), 'normal module for transverse'],
    ['transverse angle', 21.2990642859, () => deg(atOf(spread.one)), 'tan times cos'],
    ['working angle at 116.5', 23.8707609654, () => deg(spreadAngle), 'ratio of centres turned about'],
  ]),
  ...rows({ topic, kind: 'published', source: ISO_SHEET, table: 'ISO sheet, involutes', tolerance: 6e-11, unit: '' }, [
    ['involute of the transverse angle', 0.01812609488, () => inv(atOf(spread.one)), 'tan without the arc'],
    ['involute of the working angle', 0.0259052382, () => inv(spreadAngle), 'few digits'],
  ]),
  ...rows({ topic, kind: 'published', source: ISO_SHEET, table: 'ISO sheet, shifts', tolerance: 6e-10, unit: 'of mn' }, [
    [
      'sum of shifts, no backlash (eq. 62)',
      0.6518771312,
      () => shiftsFor(spread, spreadAngle) / 3.5,
      'transverse tangent with the normal module',
    ],
    [
      'less 0.03 along the circle: by 2 mn tan an',
      0.640102228,
      () => shiftsFor(spread, spreadAngle) / 3.5 - 0.03 / (2 * 3.5 * Math.tan(rad(20))),
      'backlash along the circle taken for that square to the flanks',
    ],
    [
      'less 0.03 square to the flanks: by 2 mn sin an (eq. 63)',
      0.639346541,
      () => shiftsFor(spread, spreadAngle) / 3.5 - 0.03 / (2 * 3.5 * Math.sin(rad(20))),
      'backlash square to the flanks taken for that along the circle',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.3 and 12.7`, tolerance: 0.06, unit: 'mm' }, [
    [
      '30 and 80, m 12, addendum 10: path of contact',
      52.3,
      () => path(teeth(30, 12, 20, { A: 10 }), teeth(80, 12, 20, { A: 10 })),
      'addendum taken for the module',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.3`, tolerance: 0.006, unit: 'mm' }, [
    [
      'the same: arc of contact',
      55.61,
      () => path(teeth(30, 12, 20, { A: 10 }), teeth(80, 12, 20, { A: 10 })) / Math.cos(rad(20)),
      'path for arc',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.7`, tolerance: 0.006, unit: 'mm' }, [
    [
      '18 in 72, m 4, addenda 8.5 and 3.5: path of contact',
      28.04,
      () => inRing(annular.one, annular.mate) * Math.PI * 4 * Math.cos(rad(20)),
      'ring’s addendum outward',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.4`, tolerance: 0.006, unit: '°' }, [
    [
      '20 and 40, m 5: the pinion turns while a pair is in mesh',
      29.43,
      () => tight(teeth(20, 5, 20), teeth(40, 5, 20)) * 18,
      'angle of the wheel',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.6`, tolerance: 0.06, unit: '°' }, [
    [
      '17 and 49, m 6: the pinion turns while a pair is in mesh',
      34.6,
      () => (tight(teeth(17, 6, 20), teeth(49, 6, 20)) * 360) / 17,
      'undercut limit of 17',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: `${KHURMI}, ex. 12.11`, tolerance: 0.006, unit: 'mm' }, [
    [
      '16 and 28, m 6, 16°: greatest addendum of the pinion',
      10.76,
      () => largestTip(48 * Math.cos(rad(16)), 132, rad(16)) - 48,
      'limits of the two exchanged',
    ],
    ['the same: of the wheel', 4.56, () => largestTip(84 * Math.cos(rad(16)), 132, rad(16)) - 84, 'limits of the two exchanged'],
  ]),
  ...rows(
    {
      topic,
      kind: 'published',
      source: `${BEVAN}, ex. 4; also ${KHURMI}, ex. 12.9 (its 3 to 1 is printed 16, one too many by its own rounding)`,
      tolerance: 0,
      unit: 'teeth',
    },
    [
      ['20°, equal wheels: least pinion', 13, () => Math.ceil(leastPinion(1, rad(20), 1)), 'rack’s limit for every mate'],
      ['20°, 3 to 1: least pinion', 15, () => Math.ceil(leastPinion(1, rad(20), 3)), 'ratio turned about'],
      ['20°, a rack: least pinion', 18, () => Math.ceil(leastPinion(1, rad(20), 1e6)), 'limit for great ratios'],
    ],
  ),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-5, unit: 'mm or °' }, [
    ['12 and 24, m 3, shifts 0.6 and 0.36: centres', 56.4999, () => centre(shifted), 'standard centres plus the shifts'],
    ['the same: working angle', 26.0886, () => deg(workingAngle(shifted)), 'one tangent for two'],
    ['the same: centres', 13.1683, () => centre(ring), 'sum for difference'],
  ]),
  ...rows(
    {
      topic,
      kind: 'memory',
      source: `${FROM_MEMORY}; taken from its involute in six places, which moves the angle by 0.0001°`,
      tolerance: 1.1e-4,
      unit: '°',
    },
    [['16 in 24, ring shift 0.5: working angle', 31.0937, () => deg(workingAngle(ring)), 'sum for difference']],
  ),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-7, unit: '' }, [
    ['12 and 24: involute of the working angle', 0.034316, () => involuteOfWorkingAngle(shifted), 'degrees for radians'],
    ['16 in 24: involute of the working angle', 0.060401, () => involuteOfWorkingAngle(ring), 'minus teeth'],
    [
      '12 and 60, 30°: involute of the working angle',
      0.023405,
      () => involuteOfWorkingAngle(leaning),
      'transverse module with the normal tangent',
    ],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-4, unit: 'mm' }, [
    [
      '12 and 24 shifted: outside of the wheel',
      44.84,
      () => tipOf(shifted.one) - 2 * tipShortening(shifted, centre(shifted)),
      'tips not turned down',
    ],
    [
      'the same: outside of the mate',
      79.4,
      () => tipOf(shifted.mate) - 2 * tipShortening(shifted, centre(shifted)),
      'tips not turned down',
    ],
    ['the same: roots', 32.1, () => rootOf(shifted.one), 'shift on the outside only'],
    ['the same: working pitch diameter', 37.667, () => workingDiameters(shifted, centre(shifted))[0], 'standard pitch diameter'],
    ['ring of 24, shift 0.5: inside', 69, () => tipOf(ring.mate), 'ring’s shift inward'],
    ['ring of 24, shift 0.5: root', 82.5, () => rootOf(ring.mate), 'ring’s root inward'],
    ['16 in 24: working pitch diameter of the ring', 79.01, () => workingDiameters(ring, centre(ring))[1], 'sum of teeth'],
    ['12 and 60, 30°: centres', 125, () => centre(leaning), 'plane of the shift'],
    ['12 and 60, 30°: pitch diameter', 41.569, () => pitchOf(leaning.one), 'cos multiplied'],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 1.1e-3, unit: '' }, [
    ['12 and 24, shifts 0.6 and 0.36: contact ratio', 1.2021, () => tight(shifted.one, shifted.mate), 'tips not turned down'],
    ['12 and 24 unshifted: contact ratio', 1.5111, () => tight(plain.one, plain.mate), 'standard’s formula held back where tips foul'],
  ]),
  ...rows({ topic, kind: 'derived', source: BY_TANGENTS, tolerance: 2e-7, unit: '' }, [
    ['28 and 45, 20°', 1.6869265, () => tight(teeth(28, 1, 20), teeth(45, 1, 20)), 'base pitch'],
    ['32 and 32, 8 DP, 14½°', 1.970982, () => tight(teeth(32, 0.125, 14.5), teeth(32, 0.125, 14.5)), 'symmetric pair'],
    ['16 in 24, m 3, ring shift 0.5', 1.6794949, () => inRing(ring.one, ring.mate), 'ring’s tips outward'],
    ['18 in 40, 8 DP, 20°', 2.1364839, () => inRing(teeth(18, 0.125, 20), teeth(40, 0.125, 20, { ring: true })), 'ring’s tips outward'],
    ['20 and 40, m 2, at 60.5', 1.3948618, () => ratio(loose.one, loose.mate, 60.5), 'standard angle at spread centres'],
    [
      '20 and 40, shifts ±0.2',
      1.6076135,
      () => tight(teeth(20, 2, 20, { v: 0.4 }), teeth(40, 2, 20, { v: -0.4 })),
      'shortening where shifts cancel',
    ],
    [
      '15 and 60, 10 DP, shifts ±0.3',
      1.5582091,
      () => tight(teeth(15, 0.1, 20, { v: 0.03 }), teeth(60, 0.1, 20, { v: -0.03 })),
      'long and short addendum',
    ],
    [
      '30 in 90, both shifted 0.2',
      1.822457,
      () => inRing(teeth(30, 2, 20, { v: 0.4 }), teeth(90, 2, 20, { v: 0.4, ring: true })),
      'shifts of ring and wheel added',
    ],
    ['22 and 37, 8 DP, 14½°, at 3.7', 1.7968529, () => ratio(teeth(22, 0.125, 14.5), teeth(37, 0.125, 14.5), 3.7), 'inch centres'],
    [
      '18 and 54, mn 2, 15°',
      1.5726169,
      () => tight(teeth(18, 2, 20, { helix: 15 }), teeth(54, 2, 20, { helix: 15 })),
      'normal pitch for transverse',
    ],
    [
      '25 and 40, mn 1/6, 14½°, 30°, at 6.3',
      1.360215,
      () => ratio(teeth(25, 1 / 6, 14.5, { helix: 30 }), teeth(40, 1 / 6, 14.5, { helix: 30 }), 6.3),
      'helical and spread',
    ],
    [
      '13 and 13, m 4, 25°, shifts 0.1',
      1.2803419,
      () => tight(teeth(13, 4, 25, { v: 0.4 }), teeth(13, 4, 25, { v: 0.4 })),
      'shortening of a small sum',
    ],
  ]),
  ...rows({ topic, kind: 'derived', source: BY_TANGENTS, tolerance: 2e-6, unit: 'mm, in or of the module' }, [
    [
      '18 and 54, mn 2, 15°: centres',
      74.539885,
      () => standardCentre({ one: teeth(18, 2, 20, { helix: 15 }), mate: teeth(54, 2, 20, { helix: 15 }) }),
      'cos of the helix',
    ],
    [
      '13 and 13, m 4, 25°, shifts 0.1: centres',
      52.7744267,
      () => centre({ one: teeth(13, 4, 25, { v: 0.4 }), mate: teeth(13, 4, 25, { v: 0.4 }) }),
      'shift added straight to the centres',
    ],
    [
      '20 and 40, m 2, at 60.5: sum of shifts',
      0.2576435,
      () => shiftsFor(loose, workingAngleAt(loose, 60.5)) / 2,
      'centres’ increase taken for the shift',
    ],
    [
      '19 and 61, m 1.5, at 60.6: sum of shifts',
      0.4145956,
      () => {
        const couple = { one: teeth(19, 1.5, 20), mate: teeth(61, 1.5, 20) };
        return shiftsFor(couple, workingAngleAt(couple, 60.6)) / 1.5;
      },
      'involute function’s sign',
    ],
  ]),
  ...rows(
    {
      topic,
      kind: 'derived',
      source: 'derived: 60 × 2 × (inv 20.2439° − inv 20°) cos 20°/cos 20.2439°, and its parts',
      tolerance: 2e-4,
      unit: 'mm',
    },
    [
      ['20 and 40, m 2, 0.1 further apart: along the circle', 0.0734, () => workingBacklash(loose, 60.1, 0), 'Δ for 2 Δ tan a'],
      ['the same with 0.05 off the teeth', 0.1235, () => workingBacklash(loose, 60.1, 0.05), 'thinning forgotten'],
      ['0.1 along, 20°: square to the flanks', 0.094, () => backlashSquare(loose, 0.1, rad(20)), 'divided by the cosine'],
      ['0.1 along, 20°: as centres', 0.1374, () => backlashOfCentre(0.1, rad(20)), 'tan a for 2 tan a'],
      ['0.1 along, working diameter 50: angle in radians', 0.004, () => backlashAngle(0.1, 50), 'radius for diameter'],
    ],
  ),
  ...rows(
    {
      topic,
      kind: 'published',
      source:
        'SDP/SI, Elements of Metric Gear Technology, T-46: none of its pairs has involute or trochoid interference, every one has trimming',
      table: 'T46 interference',
      tolerance: 0,
      unit: 'yes or no',
    },
    [
      ['49 in 50: trochoid', 1, () => Number(trochoidRoom(inside(few(49, 1))) >= 0), 'trochoid inequality turned about'],
      ['45 in 50: trochoid', 1, () => Number(trochoidRoom(inside(few(45, 0.2))) >= 0), 'trochoid inequality turned about'],
      ['45 in 50: involute', 1, () => Number(involuteRoom(inside(few(45, 0.2))) >= 0), 'involute inequality turned about'],
      ['49 in 50: trimming', 0, () => Number(trimmingRoom(inside(few(49, 1))) >= 0), 'radians for degrees'],
      ['42 in 50: trimming', 0, () => Number(trimmingRoom(inside(few(42, 0.01))) >= 0), 'ratio of counts turned about'],
    ],
  ),
  ...rows(
    {
      topic,
      kind: 'published',
      source: 'SDP/SI, Elements of Metric Gear Technology, T-45: standard teeth at 20° clear by trochoid when they differ by more than 9',
      tolerance: 0,
      unit: 'yes or no',
    },
    [
      ['50 and 60 differ by 10: clear', 1, () => Number(trochoidRoom(standardRing(50, 60)) >= 0), 'limit of the difference'],
      ['50 and 56 differ by 6: foul', 0, () => Number(trochoidRoom(standardRing(50, 56)) >= 0), 'limit of the difference'],
    ],
  ),
  ...rows(
    {
      topic,
      kind: 'derived',
      source: 'derived: by hand, 2 × tan 30° ÷ (π/6); (√(17² − 15.4904²) − 4.0061 + 3.9939) ÷ 3.0415',
      tolerance: 6e-4,
      unit: '',
    },
    [
      ['6 DP transverse, 30°, face 2: overlap', 2.205, () => overlapRatio(2, Math.cos(rad(30)) / 6, rad(30)), 'cos for sin'],
      [
        '32 teeth, 14½°, rack: contact ratio',
        2.2986,
        () => contactRatioOnRack(radiiOf(teeth(32, 1, 14.5)), 1, rad(14.5), 1),
        'rack’s addendum over the tangent',
      ],
    ],
  ),
];
