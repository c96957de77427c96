/** Takes values with the bits of the sets that have them, and hands each distinct value back once with all its bits. */
export type ValueTally = {
  readonly put: (value: number, bits: number) => void;
  /** Hands over every value, each once, in order of first arrival, and empties the tally. */
  readonly drain: (visit: (value: number, bits: number) => void) => void;
};

const FIRST_SIZE = 1 << 13;

/**
 * A hash table over typed arrays, with open addressing and at most half full: a Map of a million numbers takes several times as long.
 * Values must be above 0 (0 marks an empty place) and bits must not be 0. Two values are the same when they are the same double.
 */
export function valueTally(): ValueTally {
  let [values, bitsOf, order] = places(FIRST_SIZE);
  let used = 0;
  const one = new Float64Array(1);
  const halves = new Uint32Array(one.buffer);

  const placeOf = (value: number): number => {
    one[0] = value;
    const mixed = Math.imul((halves[0] as number) ^ Math.imul(halves[1] as number, 0x85ebca6b), 0x9e3779b1);
    const last = values.length - 1;
    let place = (mixed ^ (mixed >>> 15)) & last;
    for (let there = values[place]; there !== 0 && there !== value; there = values[place]) place = (place + 1) & last;
    return place;
  };

  const grow = (): void => {
    const [oldValues, oldBits, oldOrder] = [values, bitsOf, order];
    [values, bitsOf, order] = places(oldValues.length * 2);
    for (let n = 0; n < used; n++) {
      const from = oldOrder[n] as number;
      const to = placeOf(oldValues[from] as number);
      values[to] = oldValues[from] as number;
      bitsOf[to] = oldBits[from] as number;
      order[n] = to;
    }
  };

  const put = (value: number, bits: number): void => {
    if (used === order.length) grow();
    const place = placeOf(value);
    const had = bitsOf[place] as number;
    if (had === 0) {
      values[place] = value;
      order[used++] = place;
    }
    bitsOf[place] = had | bits;
  };

  const drain = (visit: (value: number, bits: number) => void): void => {
    for (let n = 0; n < used; n++) {
      const place = order[n] as number;
      visit(values[place] as number, bitsOf[place] as number);
      values[place] = 0;
      bitsOf[place] = 0;
    }
    used = 0;
  };
  return { put, drain };
}

const places = (size: number): [Float64Array, Int32Array, Int32Array] => [
  new Float64Array(size),
  new Int32Array(size),
  new Int32Array(size / 2),
];
