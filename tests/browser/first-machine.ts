/** What the owner of the first acceptance story types, box by box. Machine, set and drawer: story. */
export const MACHINE = { make: 'Halvorsen', model: 'H-12', what: 'gear hobber', serial: '4071' };
const SPLINES = { bore: 'splined', boreDiameter: '1.250', boreMinor: '1.0625', splines: '6', keyWidth: '0.3125' };
export const SET = {
  name: 'Index change gears',
  sets: 'tooth counts',
  pitch: '8 DP',
  system: 'full-14.5',
  face: '0.875',
  ...SPLINES,
  body: 'solid',
  belongs: '19, 22, 25, 28, 31, 34, 37, 41, 46, 52',
  drawer: '19x2, 25x2, 31x2, 34x2, 37, 41, 46x2, 52',
  material: 'steel',
  hardness: 'file bites',
  trust: 'original',
};
export const RECESSED = { body: 'hollow', recesses: 'both 1.9 to 4.6' };

const EIGHT = { pitch: '8 DP', angle: '14.5', diameter: '2.75', width: '0.4375', steel: 'high-speed' };
export const NO_4 = { ...EIGHT, number: '4', teeth: '26 to 34', hole: '1' };
export const NO_5 = { ...EIGHT, number: '5', teeth: '21 to 25', hole: '1' };
/** On loan, and made for another arbor. */
export const NO_5_LOAN = { ...NO_5, hole: '7/8', owner: 'A neighbour' };
export const SPLINE_MANDREL = { ...SPLINES, holding: 'between centres, nut and washer', runOut: '0.0005' };

/** Kind by kind, what the tool drawer holds: a No. 4, no No. 5, no mandrel. */
export const TOOLS: readonly (readonly [kind: string, typed: Readonly<Record<string, string>>])[] = [
  ['head', { turns: '40' }],
  ['plate', { side1: '15 16 17 18 19 20' }],
  ['plate', { side1: '21 23 27 29 31 33' }],
  ['plate', { side1: '37 39 41 43 47 49' }],
  ['cutter', NO_4],
  ['arbor', { diameter: '1' }],
];

const inches = (of: string, reads: string, perTurn: string) => ({
  [`${of}Reads`]: reads,
  [`${of}Unit`]: 'in',
  [`${of}Division`]: '0.001',
  [`${of}PerTurn`]: perTurn,
});
export const LATHE = {
  name: 'Dunmarrow lathe',
  kind: 'lathe',
  speeds: '24, 36, 58, 90, 140, 220',
  feeds: '0.004, 0.008',
  feedsPer: 'turn',
  ...inches('cross', 'diameter', '200'),
  screwedNose: 'yes',
};
export const MILL = {
  name: 'Ashdown & Lyle mill',
  kind: 'mill',
  speeds: '35, 58, 90, 140',
  feeds: '0.75, 1.5',
  feedsPer: 'minute',
  ...inches('cross', 'travel', '125'),
  ...inches('depth', 'travel', '100'),
};
