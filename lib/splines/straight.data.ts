/**
 * Straight-sided splines by fractions of the outside diameter D: w width of key or groove, d small diameter, h depth = (D − d)/2.
 * Six splines: SAE J499-2014, Parallel Side Splines for Soft Broached Holes in Fittings, the 1 in row (D 1.000, W 0.250, d 0.900, 0.850
 * and 0.800), as printed at tnlab.org. Four, ten and sixteen splines: value from memory of the same standard's table of fractions.
 */
export const INCH_FITS = ['permanent', 'slides without load', 'slides under load'] as const;
export type InchFit = (typeof INCH_FITS)[number];
export type InchRow = {
  readonly splines: number;
  readonly w: number;
  readonly fits: readonly { readonly fit: InchFit; readonly d: number; readonly h: number }[];
  readonly source: string;
};

const J499 = 'SAE J499-2014, Parallel Side Splines for Soft Broached Holes in Fittings, 1 in row of six splines';
const RECALLED = 'value from memory of the fractions of SAE J499; measure the mate';

export const INCH_STRAIGHT: readonly InchRow[] = [
  {
    splines: 4,
    w: 0.241,
    fits: [
      { fit: 'permanent', d: 0.85, h: 0.075 },
      { fit: 'slides without load', d: 0.75, h: 0.125 },
    ],
    source: RECALLED,
  },
  {
    splines: 6,
    w: 0.25,
    fits: [
      { fit: 'permanent', d: 0.9, h: 0.05 },
      { fit: 'slides without load', d: 0.85, h: 0.075 },
      { fit: 'slides under load', d: 0.8, h: 0.1 },
    ],
    source: J499,
  },
  {
    splines: 10,
    w: 0.156,
    fits: [
      { fit: 'permanent', d: 0.91, h: 0.045 },
      { fit: 'slides without load', d: 0.86, h: 0.07 },
      { fit: 'slides under load', d: 0.81, h: 0.095 },
    ],
    source: RECALLED,
  },
  {
    splines: 16,
    w: 0.098,
    fits: [
      { fit: 'permanent', d: 0.91, h: 0.045 },
      { fit: 'slides without load', d: 0.86, h: 0.07 },
      { fit: 'slides under load', d: 0.81, h: 0.095 },
    ],
    source: RECALLED,
  },
];

/**
 * How far under its nominal size the broached hole may be, of the 1 in row: D 0.999 to 1.000, W 0.248 to 0.250, d 0.001 under.
 * Source: as J499 above. Other sizes have rows of their own, which are not at hand.
 */
export const HOLE_UNDER = { outside: 0.001, width: 0.002, inside: 0.001 } as const;

export const METRIC_SERIES = ['light', 'medium', 'heavy'] as const;
export type MetricSeries = (typeof METRIC_SERIES)[number];
/** Millimetres: small diameter d, outside D, width B. */
export type MetricRow = {
  readonly series: MetricSeries;
  readonly splines: number;
  readonly d: number;
  readonly D: number;
  readonly B: number;
};

const rows = (series: MetricSeries, list: readonly (readonly [number, number, number, number])[]): readonly MetricRow[] =>
  list.map(([splines, d, D, B]) => ({ series, splines, d, D, B }));

/**
 * Light and medium: BS 5686:1986, ISO 14-1982, Straight-sided splines for cylindrical shafts, as printed at roymech.co.uk (once DIN 5462 and
 * 5463). The designation 8 × 56 × 66 printed there is a misprint: its own column D says 65. Heavy: DIN 5464, value from memory.
 */
export const METRIC_SOURCES: Readonly<Record<MetricSeries, string>> = {
  light: 'BS 5686:1986, ISO 14-1982, light series (once DIN 5462)',
  medium: 'BS 5686:1986, ISO 14-1982, medium series (once DIN 5463)',
  heavy: 'DIN 5464, value from memory; measure the mate',
};

export const METRIC_STRAIGHT: readonly MetricRow[] = [
  ...rows('light', [
    [6, 23, 26, 6],
    [6, 26, 30, 6],
    [6, 28, 32, 7],
    [8, 32, 36, 6],
    [8, 36, 40, 7],
    [8, 42, 46, 8],
    [8, 46, 50, 9],
    [8, 52, 58, 10],
    [8, 56, 62, 10],
    [8, 62, 68, 12],
    [10, 72, 78, 12],
    [10, 82, 88, 12],
    [10, 92, 98, 14],
    [10, 102, 108, 16],
    [10, 112, 120, 18],
  ]),
  ...rows('medium', [
    [6, 11, 14, 3],
    [6, 13, 16, 3.5],
    [6, 16, 20, 4],
    [6, 18, 22, 5],
    [6, 21, 25, 5],
    [6, 23, 28, 6],
    [6, 26, 32, 6],
    [6, 28, 34, 7],
    [8, 32, 38, 6],
    [8, 36, 42, 7],
    [8, 42, 48, 8],
    [8, 46, 54, 9],
    [8, 52, 60, 10],
    [8, 56, 65, 10],
    [8, 62, 72, 12],
    [10, 72, 82, 12],
    [10, 82, 92, 12],
    [10, 92, 102, 14],
    [10, 102, 112, 16],
    [10, 112, 125, 18],
  ]),
  ...rows('heavy', [
    [10, 16, 20, 2.5],
    [10, 18, 23, 3],
    [10, 21, 26, 3],
    [10, 23, 29, 4],
    [10, 26, 32, 4],
    [10, 28, 35, 4],
    [10, 32, 40, 5],
    [10, 36, 45, 5],
    [10, 42, 52, 6],
    [10, 46, 56, 7],
    [16, 52, 60, 5],
    [16, 56, 65, 5],
    [16, 62, 72, 6],
    [16, 72, 82, 7],
    [20, 82, 92, 6],
    [20, 92, 102, 7],
    [20, 102, 115, 8],
    [20, 112, 125, 9],
  ]),
];
