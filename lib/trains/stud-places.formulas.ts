import type { Plain } from './quadrant.ts';

/** A place for every stud, from the pivot on: polar about the pivot, the other fixed shaft on the line of angle 0. */
export type StudPlaces = {
  readonly swing: number;
  readonly studs: readonly { readonly r: number; readonly angle: number; readonly slot: number }[];
};

export type NoPlace = 'distance' | 'slot' | 'swing';
type Stud = { readonly r: number; readonly slot: number };

/** Two fixed wheels mesh when their middles are right to this: common practice, no source. */
const FIXED_FIT_MM = 0.05;
const HAIR = 1e-9;

/**
 * Every way in which studs can stand so that each pair meshes. d: distances of the meshes from the pivot on, in millimetres;
 * the last is that to the other fixed shaft. One mesh: d1 = C. More:
 *   r1 = d1;  rk from rk² − 2 rk rj cos(slot angle between) + rj² = dk²;  cos(angle of the last stud) = (r² + C² − d²) ÷ (2 r C)
 * j: the stud before k; C: between the fixed shafts; the swing is that angle less the slot's own.
 * Source: derived: the law of cosines. Slots are straight and point at the pivot; one that does not is measured at its ends.
 * Example: C 150, meshes 80 and 100, one slot 60 to 120: r 80, angle ± 39.6°.
 */
export function studPlaces(d: readonly number[], plain: Plain): StudPlaces[] | NoPlace {
  if (d.length === 1) return Math.abs((d[0] as number) - plain.C) <= FIXED_FIT_MM ? [{ swing: 0, studs: [] }] : 'distance';
  const chains = chainsFrom(d.slice(0, -1), plain);
  if (typeof chains === 'string') return chains;
  return swung(chains, d.at(-1) as number, plain);
}

/** The studs' distances from the pivot, slot by slot. */
function chainsFrom(d: readonly number[], { slots }: Plain): Stud[][] | NoPlace {
  let chains: Stud[][] = [[]];
  for (const mesh of d) {
    const longer = chains.flatMap((chain) =>
      slots.flatMap((_, slot) => nextStuds(chain.at(-1), slot, mesh, slots).map((r) => [...chain, { r, slot }])),
    );
    if (longer.length === 0) return 'distance';
    chains = longer.filter((chain) => inSlot(chain.at(-1) as Stud, slots));
    if (chains.length === 0) return 'slot';
  }
  return chains;
}

const inSlot = ({ r, slot }: Stud, slots: Plain['slots']): boolean =>
  r >= (slots[slot]?.nearest ?? 0) - HAIR && r <= (slots[slot]?.farthest ?? 0) + HAIR;

function nextStuds(before: Stud | undefined, slot: number, mesh: number, slots: Plain['slots']): number[] {
  if (!before) return [mesh];
  const between = (slots[slot]?.angle ?? 0) - (slots[before.slot]?.angle ?? 0);
  const along = before.r * Math.cos(between);
  const under = mesh ** 2 - (before.r * Math.sin(between)) ** 2;
  if (under < 0) return [];
  return [along + Math.sqrt(under), along - Math.sqrt(under)].filter((r) => r > 0);
}

/** The quadrant swung until the last stud meshes with the other fixed shaft, to either side of the line of shafts. */
function swung(chains: readonly (readonly Stud[])[], mesh: number, { C, slots, swing }: Plain): StudPlaces[] | NoPlace {
  const reaching = chains.flatMap((chain) => {
    const { r, slot } = chain.at(-1) as Stud;
    const cosine = (r ** 2 + C ** 2 - mesh ** 2) / (2 * r * C);
    if (Math.abs(cosine) > 1) return [];
    const own = slots[slot]?.angle ?? 0;
    return [Math.acos(cosine), -Math.acos(cosine)].map((angle) => ({ chain, at: angle - own }));
  });
  if (reaching.length === 0) return 'distance';
  const allowed = reaching.filter(({ at }) => at >= swing[0] - HAIR && at <= swing[1] + HAIR);
  if (allowed.length === 0) return 'swing';
  return allowed.map(({ chain, at }) => ({
    swing: at,
    studs: chain.map(({ r, slot }) => ({ r, slot, angle: at + (slots[slot]?.angle ?? 0) })),
  }));
}
