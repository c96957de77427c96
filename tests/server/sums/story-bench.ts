export const EIGHT = { pitch: '8 DP', system: 'full-14.5' };
const PLATES = '15-16-17-18-19-20; 21-23-27-29-31-33; 37-39-41-43-47-49';
export const BELONGS = '19, 22, 25, 28, 31, 34, 37, 41, 46, 52';
export const DRAWER = '19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52';
const SPLINES = '6 splines 1.250 x 1.0625 x 0.3125';
export const SPARE = {
  ...EIGHT,
  bore: SPLINES,
  face: '0.875',
  spareBore: SPLINES,
  spareFace: '0.875',
  by: 'none',
  body: 'solid',
  material: 'steel',
  hardness: 'file bites',
};
export const HEAD = { turns: '40', plates: PLATES };
