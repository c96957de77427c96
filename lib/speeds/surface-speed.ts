import type { Material } from '../gears/gear.ts';
import type { CutterSteel } from '../tooling/tooling.ts';
import { CUTTING_SPEEDS, type TableCut } from './cutting-speeds.data.ts';

export const CUTS = ['turning', 'interrupted turning', 'milling', 'form milling'] as const;
/** interrupted turning: over the gaps of old teeth. form milling: with a form cutter, such as a gear cutter. */
export type Cut = (typeof CUTS)[number];

/** Which of the table's speeds a cut goes by, how many times slower it is, and why. */
type Share = { readonly of: TableCut; readonly slower: number; readonly why: string };

const SHARES: Readonly<Record<Cut, Share>> = {
  turning: { of: 'turning', slower: 1, why: '' },
  'interrupted turning': { of: 'turning', slower: 2, why: 'over gaps at half the speed of plain turning (judgement)' },
  milling: { of: 'milling', slower: 1, why: '' },
  'form milling': { of: 'milling', slower: 1.5, why: 'a form cutter at two thirds of plain milling (judgement)' },
};

/** A surface speed in ft/min as the table has it, how many times slower this cut goes, and the words for both. */
export type SurfaceSpeed = { readonly ftPerMin: number; readonly slower: number; readonly source: string; readonly why: string };

/** A tool of unknown steel may be carbon steel, which loses its edge for good when it is run too fast. */
const asCutterSteel = (steel: CutterSteel) => (steel === 'unknown' ? 'carbon' : steel);

/** Surface speed for a metal, a cutter's steel and a kind of cut. */
export function surfaceSpeed(material: Material, steel: CutterSteel, cut: Cut): SurfaceSpeed {
  const { of, slower, why } = SHARES[cut];
  const known = asCutterSteel(steel);
  const row = CUTTING_SPEEDS.find((r) => r.material === material && r.steel === known && r.cut === of);
  if (!row) throw new Error(`no cutting speed for ${material}, ${known}, ${of}`);
  return { ftPerMin: row.ftPerMin, slower, source: row.source, why };
}
