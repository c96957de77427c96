import type { Arbor, Cutter } from '../tooling/tooling.ts';
import type { Length } from '../values/length.ts';
import { holeWords } from './describe.ts';

/** fits: the arbor to use. wants: the diameter of arbor that is lacking. says: empty when all is well. */
export type ArborFit = { readonly fits: Arbor | null; readonly wants: Length | null; readonly says: string };

const listed = (arbors: readonly Arbor[]): string => [...new Set(arbors.map((arbor) => holeWords(arbor.diameter)))].join(', ');

/** Which owned arbor takes a cutter: hole and arbor must be the same size. A hole not typed in fits none and asks to be measured. */
export function arborFor(cutter: Cutter, arbors: readonly Arbor[]): ArborFit {
  const { hole } = cutter;
  if (hole === null) return { fits: null, wants: null, says: 'Hole not written down: measure it and the arbor.' };
  const fitting = arbors.filter((arbor) => arbor.diameter === hole);
  const here = fitting.find((arbor) => arbor.here) ?? null;
  if (here) return { fits: here, wants: null, says: '' };
  const asks = `Hole ${holeWords(hole)}: needs a ${holeWords(hole)} arbor`;
  if (fitting.length > 0) return { fits: null, wants: hole, says: `${asks}; that one is not here.` };
  return { fits: null, wants: hole, says: arbors.length === 0 ? `${asks}; none is owned.` : `${asks}; owned: ${listed(arbors)}.` };
}
