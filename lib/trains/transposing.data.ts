/**
 * Wheels that carry an inch screw over to millimetres. 127: exact, 25.4 × 5 (F. D. Jones, Turning and Boring, 1914). 63: 80 ÷ 63 = 1.26984,
 * −125 in a million; 47 and 37: 47 ÷ 37 = 1.27027, +213 in a million (shop notes on metric threading).
 * 21 with 50 60 40: 125 in a million; 73 ÷ 46 for 127 ÷ 80, −342.
 */
export const TRANSPOSING: readonly { readonly wheels: readonly number[] }[] = [
  { wheels: [127] },
  { wheels: [63] },
  { wheels: [47, 37] },
  { wheels: [73] },
  { wheels: [21] },
];
