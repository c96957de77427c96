/** One way to choose pins: so many pitches thick. */
export type WireSeries = { readonly key: string; readonly name: string; readonly factor: number; readonly ring: boolean };

/**
 * Wires for inch pitches, of 1/P. Source: SDP/SI, Technical section, p. T60 (1.728/P over wheels, 1.44/P between rings); 1.92/P and 1.68/P:
 * the other two series of the trade, value from memory (ANSI B92.1 names 1.92/P and 1.728/P for its splines).
 */
export const WIRE_SERIES: readonly WireSeries[] = [
  { key: '1.728', name: '1.728/P, the usual wire', factor: 1.728, ring: false },
  { key: '1.68', name: '1.68/P, the alternate wire', factor: 1.68, ring: false },
  { key: '1.92', name: '1.92/P, for long addenda', factor: 1.92, ring: false },
  { key: '1.44', name: '1.44/P, between the teeth of a ring', factor: 1.44, ring: true },
  { key: '1.68 ring', name: '1.68/P, between the teeth of a ring', factor: 1.68, ring: true },
];

/**
 * Measuring pins for modules, mm. Source: the steps of DIN 3977, value from memory; in between, drill shanks and needle rollers serve.
 */
export const METRIC_PINS: readonly number[] = [
  0.25, 0.28, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.25, 1.4, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75, 4,
  4.25, 4.5, 5, 5.25, 5.5, 6, 6.5, 7, 7.5, 8, 9, 10, 10.5, 11, 12, 14, 15, 16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90,
  100,
];
