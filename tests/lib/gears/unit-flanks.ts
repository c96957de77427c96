import type { Flanks } from '../../../lib/gears/flanks.formulas.ts';

export const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Flanks of module 1, 20°, addendum 1 and dedendum 1.25, but for what a test says otherwise. */
export const flanks = (N: number, more: Partial<Flanks> = {}): Flanks => ({
  N,
  mn: 1,
  an: rad(20),
  psi: 0,
  v: 0,
  A: 1,
  B: 1.25,
  ring: false,
  unit: 'mm',
  ...more,
});
