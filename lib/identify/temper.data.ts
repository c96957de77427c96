/**
 * The readings are never quite as independent as they are taken to be; their logarithms count for this part. Set by the first simulator
 * of tests/bench, borne out by the second, which it never saw.
 */
export const TEMPER = 0.8;

/** The most that a page says of any answer, whatever comes out: the bench bears out no more. */
export const MOST_SAID = 0.95;
