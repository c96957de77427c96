/**
 * How much larger the hub is left than the ring's bore, cold: i = b × D.
 * b allowance per unit of diameter, D hub diameter measured (any unit; the answer is in the same).
 * Source: Dooley, Applied Science for Metal Workers, art. 453 (0.001 in per inch). True for rings from about 1 in up.
 * Example: 0.001 on 3.750 gives 0.00375.
 */
export const allowance = (b: number, D: number): number => b * D;

/**
 * Room by which the hot ring clears the hub while it is dropped on: f = r × D, at least g.
 * r room per unit of diameter, g least room, D hub diameter. Source: judgement. Example: 0.001 × 3.750 = 0.00375.
 */
export const dropRoom = (r: number, D: number, g: number): number => Math.max(r * D, g);

/**
 * How much warmer than the hub the ring has to be: rise = (i + f) ÷ (x × D), in the degrees that x is per.
 * i allowance, f room for dropping, D diameter, x expansion per degree.
 * Source: Assembly of shrink fits (engineeringtoolbox.com/assembly-shrink-fits-d_951.html). A rise, never a thermometer reading.
 * True while x may be taken as constant: below a few hundred degrees. Example: (0.00375 + 0.00375) ÷ (0.0000063 × 3.75) = 317 °F.
 */
export const rise = (i: number, f: number, x: number, D: number): number => (i + f) / (x * D);

/**
 * (outer² + inner²) ÷ (outer² − inner²): hoop stress at the bore of a thick ring for one unit of pressure in it.
 * Source: Lamé's thick cylinder, S. Timoshenko, Strength of Materials part II (value from memory). Example: 4.8072 over 3.75 gives 4.109.
 */
export const ringFactor = (outer: number, inner: number): number => (outer ** 2 + inner ** 2) / (outer ** 2 - inner ** 2);

/** Stiffness E (lb/in²) and Poisson's ratio v. */
export type Elastic = { readonly E: number; readonly v: number };

/**
 * Pressure between ring and hub, lb/in²: p = (i ÷ D) ÷ ((Cr + vr) ÷ Er + (Ch − vh) ÷ Eh),
 * Cr = ringFactor(Do, D) of the ring, Ch = ringFactor(D, d) of the hub.
 * i allowance, D fit, Do outside of the ring's solid part (its tooth roots), d bore of the hub (0 when solid).
 * Source: Lamé's thick cylinders pressed together, as in S. Timoshenko, Strength of Materials part II (value from memory).
 * True while neither yields. Example: 0.001 per inch, steel on steel, 4.8072 / 3.75 / 1.25 gives 5,598.
 */
export function fitPressure(i: number, D: number, Do: number, d: number, ring: Elastic, hub: Elastic): number {
  const [Cr, Ch] = [ringFactor(Do, D), ringFactor(D, d)];
  return i / D / ((Cr + ring.v) / ring.E + (Ch - hub.v) / hub.E);
}

/** Hoop stress at the bore of the ring, lb/in²: s = p × Cr. Source as fitPressure. Example: 5,598 × 4.109 = 23,000. */
export const hoopStress = (p: number, Do: number, D: number): number => p * ringFactor(Do, D);
