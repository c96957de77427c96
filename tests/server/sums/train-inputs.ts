import fc from 'fast-check';

const pick = (...texts: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const THREADS = [
  '11 TPI',
  '8 TPI',
  '11 1/2 TPI',
  '1.75 mm',
  '0.7 mm',
  'module 1.5',
  '10 DP',
  '0.004 in',
  '0.0625 in',
  '8 TPI x 2',
  '3 mm lead',
] as const;
const wheels = fc
  .array(fc.oneof(fc.constantFrom(20, 24, 30, 40, 50, 60, 80, 127), fc.integer({ min: 16, max: 130 })), { minLength: 2, maxLength: 12 })
  .map((list) => list.join(', '));

/** What may be typed into the boxes of trains and leads. */
export const TRAIN_BOXES: Readonly<Record<string, fc.Arbitrary<string>>> = {
  thread: pick(...THREADS),
  screw: pick('8 TPI', '4 TPI', '16 TPI', '5 mm', '3 mm', '0.25 in'),
  over: pick('1', '4', '0.5', '25 mm'),
  mounted: pick('40 / 60', '40 × 30 / 60 × 75'),
  between: pick('6', '150 mm', '5.5'),
  slots: pick('1.4 to 5.5', '1.4 to 5.5; 1.8 to 4.7 at 50'),
  swing: pick('-80 to 60', '-30 to 30'),
  collar: pick('0.9', '22 mm'),
  widest: pick('8', '5'),
  abreast: pick('1', '2', '3'),
  wheelPitch: pick('16 DP', 'module 1.5', '20 DP'),
  list: fc.array(pick(...THREADS), { minLength: 1, maxLength: 8 }).map((list) => list.join(', ')),
  missing: pick('', '46, 55', '127', '28, 28, 22'),
  near: pick('0', '500', '2000'),
  ratio: pick('1.27', '127/100', 'pi/4', '3 pi', '0.8660254', '1'),
  most: pick('50', '500', '100000'),
  within: pick('0', '100', '5000'),
  trainDrawer: wheels,
};
