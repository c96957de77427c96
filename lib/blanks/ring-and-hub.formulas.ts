/**
 * The hub's diameter: the largest step below both limits: under the old roots with the clean-up off, and such that the ring keeps
 * 1.2 whole depths under its roots. D = floor(min(Du − c, R − 2.4 W) × n) ÷ n, n steps per unit (16 to the inch, 1 to the mm).
 * Du usable old root, c clean-up, R new root, W whole depth. Source: derived; the steps: judgement.
 * Example: 3.8072 − 0.010 and 4.8072 − 0.4314, by sixteenths, give 3.750.
 */
export const hubDiameter = (Du: number, c: number, R: number, W: number, n: number): number =>
  Math.floor(Math.min(Du - c, R - 2.4 * W) * n + 1e-9) / n;

/** Metal of the ring under its tooth roots: (R − D) ÷ 2. Source: derived. Example: 4.8072 over 3.750 leaves 0.5286. */
export const ringUnderTeeth = (R: number, D: number): number => (R - D) / 2;
