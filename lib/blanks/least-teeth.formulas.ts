/**
 * Fewest teeth of a spare that cleans up for a new wheel: its roots have to lie outside the new outside with the clean-up on it.
 * (No − 2 jo) m − 2 f ≥ D + c, so No = ceil((D + c + 2 f) ÷ m + 2 jo). D new outside, c clean-up on the diameter, m module of the spare,
 * jo its dedendum in modules, f what is added to that; all lengths in one unit. Source: derived.
 * Stops being true for a spare whose root was measured: then that stands. Example: 3.000, 0.010, 1/8, 1.157, 0 gives 27.
 */
export const leastTeeth = (D: number, c: number, m: number, jo: number, f: number): number =>
  Math.ceil((D + c + 2 * f) / m + 2 * jo - 1e-9);
