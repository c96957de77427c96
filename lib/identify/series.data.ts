/** How often a pitch is met on old machine tools: the weights below are set against each other. */
export type Met = 'usual' | 'less' | 'rare';

/** Weights of the three, and of the three kinds of pitch, before anything is measured (judgement; the owner's readings soon outweigh them). */
export const MET_WEIGHT: Readonly<Record<Met, number>> = { usual: 1, less: 0.35, rare: 0.12 };
export const KIND_WEIGHT = { DP: 1, module: 0.6, CP: 0.2 } as const;

type Series = Readonly<Record<Met, readonly (readonly [num: number, den: number])[]>>;
const whole = (...sizes: number[]): readonly (readonly [number, number])[] => sizes.map((size) => [size, 1]);
const hundredths = (...sizes: number[]): readonly (readonly [number, number])[] => sizes.map((size) => [size, 100]);

/**
 * Diametral pitches that cutters were sold in. Source: Machinery's Handbook, 31st ed., p. 2299, equivalent pitches (13 to 48);
 * coarser ones and the old fractions: value from memory.
 */
export const DP_SERIES: Series = {
  usual: whole(4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 32, 48),
  less: whole(1, 2, 3, 7, 9, 11, 13, 15, 22, 26, 28, 30, 36, 40, 64),
  rare: [...whole(17, 19, 25, 34, 38, 42, 44, 46, 72, 80, 96, 120), ...hundredths(125, 150, 175, 225, 250, 275, 350, 450, 550, 650, 750)],
};

/** Modules, in hundredths of a millimetre. Source: ISO 54, series I and II, and the quarter and eighth modules of older lists: value from memory. */
export const MODULE_SERIES: Series = {
  usual: hundredths(50, 80, 100, 125, 150, 200, 250, 300, 400, 500, 600),
  less: hundredths(30, 40, 60, 70, 75, 175, 225, 275, 350, 450, 550, 800, 1000, 1200),
  rare: [
    ...hundredths(20, 25, 90, 325, 375, 425, 475, 525, 575, 650, 700, 900, 1100),
    ...([
      [9, 8],
      [11, 8],
    ] as const),
  ],
};

/** Circular pitches in inches, by sixteenths, then by eighths. Source: Rose, Modern Machine-Shop Practice, table of circular pitches (1/16 to 3/16); the rest value from memory. */
export const CP_SERIES: Series = {
  usual: [
    [1, 4],
    [5, 16],
    [3, 8],
    [1, 2],
  ],
  less: [
    [1, 16],
    [1, 8],
    [3, 16],
    [7, 16],
    [9, 16],
    [5, 8],
    [3, 4],
    [1, 1],
  ],
  rare: [
    [1, 10],
    [11, 16],
    [13, 16],
    [7, 8],
    [15, 16],
    [9, 8],
    [5, 4],
    [3, 2],
    [2, 1],
  ],
};

/** Double-pitch stubs that were stamped so. Source: value from memory. */
export const DOUBLE_STUBS: readonly (readonly [P: number, Q: number])[] = [
  [4, 5],
  [5, 7],
  [6, 8],
  [7, 9],
  [8, 10],
  [9, 11],
  [10, 12],
  [12, 14],
];

/** How often each tooth system is met, by its key, on a wheel of inch pitch and on one of a module (judgement). */
export const INCH_SYSTEMS: Readonly<Record<string, number>> = {
  'full-14.5': 0.42,
  'composite-14.5': 0.05,
  'full-20': 0.16,
  'full-20-old': 0.1,
  'stub-20': 0.06,
  'old-15': 0.04,
  'old-17.5': 0.02,
  'old-22.5': 0.015,
  'full-25': 0.015,
};
export const FINE_SYSTEMS: Readonly<Record<string, number>> = { 'fine-20': 0.3, 'fine-14.5': 0.2 };
export const MODULE_SYSTEMS: Readonly<Record<string, number>> = {
  'module-1.25': 0.42,
  'module-7/6': 0.18,
  'module-1.157': 0.1,
  'full-14.5': 0.05,
  'old-15': 0.08,
  'stub-20': 0.06,
  'old-17.5': 0.02,
  'old-22.5': 0.01,
  'full-25': 0.01,
};
/** A pitch of the double-pitch list is as often cut so as with any other stub. */
export const DOUBLE_STUB_WEIGHT = 0.06;
