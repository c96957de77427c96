import fc from 'fast-check';

type Boxes = Readonly<Record<string, string>>;

const pick = (...texts: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);

/** What may be typed into the boxes of an unknown gear; sizes are asked for here and settled together below. */
export const IDENTIFY_BOXES: Readonly<Record<string, fc.Arbitrary<string>>> = {
  spanRead: pick('asked'),
  spanMore: pick('asked'),
  spanMost: pick('asked'),
  rootRead: pick('asked'),
  depthRead: pick('asked'),
  wallRead: pick('asked'),
  wallBore: pick('1', '25 mm'),
  pinUsed: pick('0.216', '0.1'),
  overPins: pick('asked'),
  centres: pick('asked'),
  print: pick('0', '12', '20.5'),
  outsideError: pick('0.001', '0.005'),
  spanError: pick('0.0005', '0.02 mm'),
  rootError: pick('0.01'),
  pinsError: pick('0.0005'),
  centresError: pick('0.002'),
  printError: pick('0.5', '2'),
  others: pick('28: outside 3.748, over 3 0.971', '35: outside 94 mm'),
};

/** Sizes of some wheel, right and wrong: by the count, a pitch that hangs on it, and a little off. */
export function settledUnknown(boxes: Boxes): Boxes {
  const N = Number(boxes['teeth']);
  const m = [1 / 8, 1 / 10, 0.0984, 0.1279, 1 / 16][N % 5] ?? 0.1;
  const k = Math.max(1, Math.min(Number(boxes['k']) || 2, Math.ceil(N / 12)));
  const off = (N % 7) * 0.001;
  const typed = (x: number): string => x.toFixed(4);
  const W = (count: number): string => typed(m * (2.952 * (count - 0.5) + 0.014 * N) - off);
  const sizes: Boxes = {
    outside: typed((N + 2) * m - off),
    spanRead: W(k),
    spanMore: W(k + 1),
    spanMost: W(k + 2),
    rootRead: typed((N - 2.4) * m + off),
    depthRead: typed(2.2 * m + off),
    wallRead: typed(((N - 2.4) * m - 1) / 2 + 0.5),
    overPins: typed((N + 2.4) * m),
    centres: typed(((N + Number(boxes['mate'] || '30')) * m) / 2 + off),
  };
  const filled = Object.fromEntries(Object.entries(sizes).filter(([name]) => name === 'outside' || (boxes[name] ?? '') !== ''));
  const beside = { k: `${k}`, mate: boxes['mate'] || '30', pinUsed: `${typed(1.728 * m)}`, wallBore: '1' };
  return { ...boxes, ...filled, ...beside };
}
