import { bestSpanCount, leastFaceForSpan, realSpanCount, spanOver, thicknessFromSpan } from '../../lib/gears/base-tangent.formulas.ts';
import { normalThickness } from '../../lib/gears/flanks.formulas.ts';
import { chordalAddendum, chordalThickness, virtualTeeth } from '../../lib/gears/spur.formulas.ts';
import type { Case } from './case.ts';
import { across, BY_SUPPORT, deg, FROM_MEMORY, rad, rows, teeth } from './parallel-rows.ts';

const topic = 'Span, thickness and chord, shifted and helical';
const T81 = 'SDP/SI, Elements of Metric Gear Technology, T-81/T-82, tables 10-1, 10-3 and 10-4';
const SHARMA = 'P. C. Sharma, A Textbook of Production Engineering, example 16.1, p. 648 (re-keyed)';

const span = (flanks: ReturnType<typeof teeth>, k: number, b = 0): number => spanOver(flanks, normalThickness(flanks) - b, k);
const shifted = teeth(24, 3, 20, { v: 1.2 });
const leaning = teeth(24, 3, 20, { helix: 25, v: 1.2 });
const radial = across(24, 3, 20, 22.5, 1.2);
const virtual = (flanks: ReturnType<typeof teeth>): number => virtualTeeth(flanks.N, flanks.psi) * flanks.mn;
const half = (flanks: ReturnType<typeof teeth>): number => deg(normalThickness(flanks) / virtual(flanks));
const chord = (flanks: ReturnType<typeof teeth>): number => chordalThickness(virtual(flanks), normalThickness(flanks));
const height = (flanks: ReturnType<typeof teeth>, ha: number): number => chordalAddendum(virtual(flanks), normalThickness(flanks), ha);

const spur = teeth(12, 10, 20, { v: 3 });
const normal = teeth(16, 5, 20, { helix: 25, v: 1 });
const inPlane = across(20, 4, 20, 22.5, 1.2);

export const cases: readonly Case[] = [
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-1', tolerance: 6e-5, unit: 'mm' }, [
    ['m 10, 20°, 12 teeth, shift 0.3: thickness', 17.8918, () => normalThickness(spur), 'shift once instead of twice'],
    ['the same: chord', 17.8256, () => chord(spur), 'arc for chord'],
    ['the same: chordal addendum', 13.6657, () => height(spur, 13), 'shift left out of the addendum'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-1', tolerance: 6e-6, unit: '°' }, [
    ['the same: half angle', 8.5427, () => half(spur), 'whole angle for half'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-3', tolerance: 6e-5, unit: 'mm' }, [
    ['mn 5, 25°, 16 teeth, shift 0.2: thickness', 8.5819, () => normalThickness(normal), 'transverse angle for normal'],
    ['the same: chord', 8.5728, () => chord(normal), 'true count for virtual'],
    ['the same: chordal addendum', 6.1712, () => height(normal, 6), 'true count for virtual'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-3', tolerance: 6e-6, unit: '°' }, [
    ['the same: half angle', 4.57556, () => half(normal), 'virtual count by the base helix'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-3', tolerance: 6e-5, unit: 'teeth' }, [
    ['16 teeth, 25°: virtual count', 21.4928, () => virtualTeeth(16, rad(25)), 'cos² for cos³'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-4', tolerance: 6e-5, unit: 'mm' }, [
    [
      'mt 4, 22½°, 20 teeth, shift 0.3: thickness',
      6.6119,
      () => normalThickness(inPlane),
      'normal module where the transverse one is given',
    ],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-4', tolerance: 6e-6, unit: '°' }, [
    ['the same: half angle', 4.04196, () => half(inPlane), 'shift of the other plane'],
  ]),
  ...rows({ topic, kind: 'published', source: T81, table: 'SDP/SI table 10-4', tolerance: 6e-5, unit: 'teeth' }, [
    ['20 teeth, 22½°: virtual count', 25.362, () => virtualTeeth(20, rad(22.5)), 'cos for cos³'],
  ]),
  ...rows({ topic, kind: 'published', source: SHARMA, tolerance: 6e-4, unit: 'mm' }, [
    ['34 teeth, m 5: chord', 7.851, () => chord(teeth(34, 5, 20)), 'arc for chord'],
    ['34 teeth, m 5: chordal addendum', 5.091, () => height(teeth(34, 5, 20), 5), 'addendum without the arc’s rise'],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-5, unit: 'mm' }, [
    ['m 3, 20°, 24 teeth, shift 0.4, over 4', 32.8266, () => span(shifted, 4), 'shift times tan for shift times sin'],
    ['mn 3, 25°, 24 teeth, shift 0.4, over 5', 42.0085, () => span(leaning, 5), 'transverse angle outside the brackets'],
    ['mt 3, 22½°, 24 teeth, shift 0.4, over 4', 30.591, () => span(radial, 4), 'plane of the standard'],
    ['mt 4, 22½°, 20 teeth, shift 0.3: chord', 6.6065, () => chord(inPlane), 'plane of the standard'],
    ['the same: chordal addendum', 4.835, () => height(inPlane, 4.7184), 'plane of the standard'],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-6, unit: 'teeth' }, [
    ['m 3, 20°, 24 teeth, shift 0.4: real count', 3.78787, () => realSpanCount(shifted), 'count of the unshifted wheel'],
    ['mn 3, 25°, the same: real count', 4.63009, () => realSpanCount(leaning), 'straight-tooth count'],
    ['mt 3, 22½°, the same: real count', 4.31728, () => realSpanCount(radial), 'plane of the standard'],
  ]),
  ...rows({ topic, kind: 'derived', source: BY_SUPPORT, tolerance: 2e-6, unit: 'in or mm' }, [
    ['22 teeth, 8 DP, 14½°, over 2', 0.585049, () => span(teeth(22, 0.125, 14.5), 2), 'one space too many'],
    ['22 teeth, 8 DP, 14½°, over 3', 0.965239, () => span(teeth(22, 0.125, 14.5), 3), 'a base pitch missing'],
    ['24 teeth, m 3, 20°, shift 0.4, over 4', 32.826627, () => span(shifted, 4), 'sign of the shift'],
    ['12 teeth, m 1, 20°, shift 0.3, over 2', 4.801476, () => span(teeth(12, 1, 20, { v: 0.3 }), 2), 'few teeth'],
    ['100 teeth, m 1, 14½°, over 9', 26.38979, () => span(teeth(100, 1, 14.5), 9), 'many teeth'],
    ['18 teeth, m 1, 20°, over 2', 4.680297, () => span(teeth(18, 1, 20), 2), 'tie of the count'],
    ['71 teeth, 12 DP, 14½°, over 6', 1.425795, () => span(teeth(71, 1 / 12, 14.5), 6), 'pitch in inches'],
    ['40 teeth, 10 DP, 20°, over 5', 1.384481, () => span(teeth(40, 0.1, 20), 5), 'pitch in inches'],
    ['16 teeth, m 5, 25°, shift −0.2, over 2', 22.682489, () => span(teeth(16, 5, 25, { v: -1 }), 2), 'minus shift'],
    ['45 teeth, m 2, 22½°, shift 0.6, over 7', 40.439242, () => span(teeth(45, 2, 22.5, { v: 1.2 }), 7), 'large shift'],
    ['30 teeth, m 2, 20°, shift 0.25, over 4', 21.847273, () => span(teeth(30, 2, 20, { v: 0.5 }), 4), 'shift in modules'],
    ['22 teeth, 8 DP, 0.004 thinner, over 2', 0.581176, () => span(teeth(22, 0.125, 14.5), 2, 0.004), 'backlash without the cosine'],
  ]),
  ...rows({ topic, kind: 'derived', source: `${BY_SUPPORT}; the reading typed back`, tolerance: 2e-6, unit: 'in or mm' }, [
    [
      '0.581176 over 2 of 22, 8 DP',
      0.19235,
      () => thicknessFromSpan(teeth(22, 0.125, 14.5), 0.581176, 2),
      'round trip whose errors cancel',
    ],
    [
      '40.439242 over 7 of 45, m 2, 22½°',
      4.135705,
      () => thicknessFromSpan(teeth(45, 2, 22.5), 40.439242, 7),
      'shift put in on the way back',
    ],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 0, unit: 'teeth' }, [
    ['mn 3, 25°, 24 teeth, shift 0.4: over', 5, () => bestSpanCount(leaning) ?? 0, 'count of the straight wheel'],
    ['m 3, 24 teeth, shift 0.4: over', 4, () => bestSpanCount(shifted) ?? 0, 'count of the unshifted wheel'],
    ['mt 3, 22½°: over', 4, () => bestSpanCount(radial) ?? 0, 'count rounded up'],
  ]),
  ...rows({ topic, kind: 'derived', source: 'derived: 42.0085 × sin 25° × cos 20°', tolerance: 6e-4, unit: 'mm' }, [
    [
      'least face for the span of 42.0085 at 25°',
      16.683,
      () => leastFaceForSpan(leaning, 42.0085),
      'helix of the pitch circle for that of the base',
    ],
  ]),
];
