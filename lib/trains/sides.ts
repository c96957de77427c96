/** What can stand on one side of a train: the products of one, two or three wheels, rising, and which numbers each is made of. */
export type Sides = {
  readonly many: number;
  /** The product of the tooth counts, rising. */
  readonly product: Float64Array;
  /** Places in the list of numbers, ten bits each. */
  readonly made: Int32Array;
};

/** The numbers that lie there, and how many wheels of each. */
export type Numbers = { readonly teeth: readonly number[]; readonly there: readonly number[] };

const BITS = 10;
const PLACE = (1 << BITS) - 1;

/** The tooth counts of the wheels of one side, lowest first. */
export function teethOf(made: number, wheels: number, teeth: readonly number[]): number[] {
  const found: number[] = [];
  for (let k = 0; k < wheels; k++) found.push(teeth[(made >> (BITS * k)) & PLACE] as number);
  return found;
}

/** How many different sides of so many wheels there can be at most: for bounding the work before it begins. */
function mostSides(numbers: number, wheels: number): number {
  if (wheels === 1) return numbers;
  return wheels === 2 ? (numbers * (numbers + 1)) / 2 : (numbers * (numbers + 1) * (numbers + 2)) / 6;
}

/** Every side of so many wheels, each set of numbers once however many like wheels lie there. */
export function sidesOf({ teeth, there }: Numbers, wheels: 1 | 2 | 3): Sides {
  const most = mostSides(teeth.length, wheels);
  const product = new Float64Array(most);
  const made = new Int32Array(most);
  let many = 0;
  const put = (size: number, from: number): void => {
    product[many] = size;
    made[many++] = from;
  };
  for (let i = 0; i < teeth.length; i++) {
    const a = teeth[i] as number;
    if (wheels === 1) put(a, i);
    else
      for (let j = (there[i] as number) > 1 ? i : i + 1; j < teeth.length; j++) {
        const ab = a * (teeth[j] as number);
        if (wheels === 2) put(ab, i | (j << BITS));
        else
          for (let k = thirdFrom(i, j, there); k < teeth.length; k++) put(ab * (teeth[k] as number), i | (j << BITS) | (k << (2 * BITS)));
      }
  }
  return sorted(product.subarray(0, many), made.subarray(0, many), many);
}

/** The third wheel is not before the second, and of its own number only where another lies there. */
function thirdFrom(i: number, j: number, there: readonly number[]): number {
  const used = i === j ? 2 : 1;
  return (there[j] as number) > used ? j : j + 1;
}

const DIGIT = 11;
const BUCKETS = 1 << DIGIT;

/** Sorts by product, digit by digit from the low end: the products are whole numbers below 6.4e7, so three passes do. */
function sorted(product: Float64Array, made: Int32Array, many: number): Sides {
  let [from, fromMade]: [Float64Array, Int32Array] = [product, made];
  let [to, toMade]: [Float64Array, Int32Array] = [new Float64Array(many), new Int32Array(many)];
  const greatest = from.reduce((most, one) => Math.max(one, most), 0);
  for (let unit = 1; unit <= greatest; unit *= BUCKETS) {
    const start = startsOf(from, unit);
    for (let n = 0; n < many; n++) {
      const one = from[n] as number;
      const digit = digitOf(one, unit);
      const at = start[digit] as number;
      start[digit] = at + 1;
      to[at] = one;
      toMade[at] = fromMade[n] as number;
    }
    [from, to] = [to, from];
    [fromMade, toMade] = [toMade, fromMade];
  }
  return { many, product: from, made: fromMade };
}

const digitOf = (size: number, unit: number): number => ((size / unit) | 0) & (BUCKETS - 1);

/** Where in the sorted list each digit begins. */
function startsOf(list: Float64Array, unit: number): Int32Array {
  const start = new Int32Array(BUCKETS + 1);
  for (let n = 0; n < list.length; n++) {
    const next = digitOf(list[n] as number, unit) + 1;
    start[next] = (start[next] as number) + 1;
  }
  for (let digit = 0; digit < BUCKETS; digit++) start[digit + 1] = (start[digit + 1] as number) + (start[digit] as number);
  return start;
}
