const rad = (deg: number): number => (deg * Math.PI) / 180;
const odd = (N: number): boolean => N % 2 === 1;

// Every formula here is plane geometry of N equal spaces; source: derived. Sizes all in one unit, angles in degrees.

/**
 * Root diameter from the least wall between bore and root: Dr = 2 × (w + b ÷ 2).
 * w least wall of six places, b measured bore. Any count; run-out is already in it. Example: w 1.1679, b 1.250 gives 3.5858.
 */
export const rootFromWall = (w: number, b: number): number => 2 * (w + b / 2);

/**
 * Root diameter from knife edges across two roots: even counts Dr = T; odd counts, in the roots nearest opposite, Dr = T ÷ cos(90° ÷ N).
 * Example: 19 teeth, T 2.0786 gives 2.0857.
 */
export const rootFromAcross = (T: number, N: number): number => (odd(N) ? T / Math.cos(rad(90 / N)) : T);

/**
 * Root diameter over two pins of diameter p that touch the bottoms: even counts Dr = M − 2p; odd counts Dr = (M − p) ÷ cos(90° ÷ N) − p.
 * Wrong when a pin rests on the flanks. Example: 22 teeth, M 2.6608, p 0.100 gives 2.4608.
 */
export const rootFromPins = (M: number, p: number, N: number): number => (odd(N) ? (M - p) / Math.cos(rad(90 / N)) - p : M - 2 * p);

/** Root diameter from the outside and the depth of a space: Dr = Do − 2d. Example: 3.000 and 0.2696 give 2.4608. */
export const rootFromDepth = (Do: number, d: number): number => Do - 2 * d;

/**
 * Least and greatest true outside behind a reading T between flat jaws. Even counts: T itself. Odd counts have no tip opposite a tip:
 * jaws read between R(1 + cos(180° ÷ N)) and 2R cos(90° ÷ N), so the outside is from T ÷ cos(90° ÷ N) to 2T ÷ (1 + cos(180° ÷ N)).
 * Example: 19 teeth, T 2.616 gives 2.625 to 2.634.
 */
export function outsideFromJaws(T: number, N: number): readonly [least: number, greatest: number] {
  return odd(N) ? [T / Math.cos(rad(90 / N)), (2 * T) / (1 + Math.cos(rad(180 / N)))] : [T, T];
}

/** What flat jaws can read on an odd count of true outside Do. Example: 19 teeth of 2.625 read 2.607 to 2.616. */
export function jawsRead(Do: number, N: number): readonly [least: number, greatest: number] {
  return odd(N) ? [(Do / 2) * (1 + Math.cos(rad(180 / N))), Do * Math.cos(rad(90 / N))] : [Do, Do];
}
