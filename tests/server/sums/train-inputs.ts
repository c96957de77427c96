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
  starts: pick('1', '2', '3', '4'),
  dialTeeth: pick('16', '24', '18'),
  dialLines: pick('8', '4', '12'),
  driverTeeth: pick('40', '35'),
  helix: pick('15', '30', '45', '8.5', `22°30'`),
  tableScrew: pick('4 TPI', '5 mm', '5 TPI'),
  leadWanted: pick('12 in', '18.849 in', '300 mm', '6 in'),
  mate: pick('24', '36', '50'),
  lobes: pick('2.443 in 29; 2.493 in 47', '0.196 in 100', '0.5 in 25'),
};
