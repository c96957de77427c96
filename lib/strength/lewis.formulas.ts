import { LEWIS, type LewisRow, type LewisSystem } from './lewis.data.ts';

/** 1/N: the factor runs nearly straight in it, and a rack lies at 0. */
const inverse = ([teeth]: LewisRow): number => (teeth === null ? 0 : 1 / teeth);

/**
 * Lewis's form factor Y of a tooth: load at the tip = stress × face × Y ÷ P. Between two lines of the table it is taken in proportion in 1/N.
 * Throws RangeError below the table's first count. Example: 48 teeth at 14½°: 0.344.
 */
export function lewisFactor(system: LewisSystem, N: number): number {
  const rows = LEWIS[system];
  const at = rows.findIndex(([teeth]) => teeth === null || teeth >= N);
  const [above, below] = [rows[at], rows[at - 1]];
  if (!above || (at === 0 && above[0] !== N)) throw new RangeError(`the table of ${system} begins above ${N} teeth`);
  if (!below || above[0] === N) return above[1];
  const share = (1 / N - inverse(below)) / (inverse(above) - inverse(below));
  return below[1] + share * (above[1] - below[1]);
}

/** Pitch line speed, ft/min: V = π D n ÷ 12; D in, n rev/min. Source: Wentzell, Machine Design, ex 12.2. Example: 2.5 in at 1725: 1129. */
export const pitchLineFtPerMin = (D: number, n: number): number => (Math.PI * D * n) / 12;

/** Barth's share of the static load that a running tooth takes: 600 ÷ (600 + V). Source: Spur gears, Lewis formula (Barth revision), catalogue page. Example: 1129: 0.347. */
export const barthShare = (V: number): number => 600 / (600 + V);

/** Load along the pitch line, lb: W = S F Y/P × 600/(600 + V); S lb/in², F face in. Source: as barthShare. Example: 47500, 1, .32, 8, standing: 1900. */
export const safeToothLoad = (S: number, F: number, Y: number, P: number, V: number): number => ((S * F * Y) / P) * barthShare(V);

/** Power at a load along the pitch line, hp: W V ÷ 33000. Source: as barthShare. Example: 201.9 lb at 942.5 ft/min: 5.77. */
export const powerHp = (W: number, V: number): number => (W * V) / 33_000;
