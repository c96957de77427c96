import { ringAndHub } from '../../lib/blanks/ring-and-hub.sums.ts';
import { judgeSpare } from '../../lib/blanks/spare-test.ts';
import type { SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import { WAYS_TO_MAKE, type WayOffered, waysFor } from '../../lib/blanks/ways.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { cell, heads, stateCell } from '../cells.ts';
import type { StateView, TableView } from '../page.ts';
import type { PartData } from './part-data.ts';

/** A splined bore is broached or slotted: nobody has said yet that the shop can. */
const SPLINES_HERE = false;

const OPEN: Readonly<Record<WayOffered['open'], StateView>> = {
  yes: { kind: 'ready', says: 'can be taken' },
  'measure first': { kind: 'doubtful', says: 'measure first' },
  no: { kind: 'off', says: 'not so' },
};

/** Spares whose readings make sense; the others are named in the table of spares. */
const sound = (wanted: Gear, spares: readonly SpareWheel[], data: PartData): SpareWheel[] =>
  spares.filter((spare) => {
    try {
      judgeSpare({ wanted, spare, cleanUp: data.shop.cleanUp });
      return true;
    } catch (error) {
      if (error instanceof DomainError) return false;
      throw error;
    }
  });

export function waysOffered(gear: Gear, data: PartData): WayOffered[] {
  const spares = sound(
    gear,
    data.spares.map(({ spare }) => spare),
    data,
  );
  return waysFor({ wanted: gear, spares, stock: data.stock, ring: 'steel', splines: SPLINES_HERE, cleanUp: data.shop.cleanUp });
}

/** The ways considered: the best of each kind, and how many more there are of it. */
export function waysTable(offered: readonly WayOffered[]): TableView {
  const rows = WAYS_TO_MAKE.flatMap((way) => {
    const all = offered.filter((one) => one.way === way);
    const [best] = all;
    if (!best) return [];
    const more = all.length > 1 ? ` (${all.length - 1} more of this kind)` : '';
    return [{ id: `way-${WAYS_TO_MAKE.indexOf(way)}`, cells: [cell(way), stateCell(OPEN[best.open]), cell(`${best.says}${more}`)] }];
  });
  return { title: '', heads: heads(['Way', 'name'], ['State', 'state'], ['Why', 'words']), rows, empty: '' };
}

/** Spares from which it may be cut again, the one with least metal to come off in front. */
export const recutSpares = (offered: readonly WayOffered[]): SpareWheel[] =>
  offered
    .flatMap(({ way, open, spare }, at) => (way.startsWith('re-cut') && open === 'yes' && spare ? [{ spare, at }] : []))
    .sort((a, b) => a.spare.gear.teeth - b.spare.gear.teeth || a.at - b.at)
    .map(({ spare }) => spare);

/** The best spare for a hub, with its figures; null when none serves, or none is needed. */
export function bestRing(gear: Gear, offered: readonly WayOffered[], data: PartData) {
  const recut = offered.some(({ way, open }) => way.startsWith('re-cut') && open === 'yes');
  const best = offered.find(({ way, open, spare }) => way === 'ring and hub' && open === 'yes' && spare !== null);
  if (recut || !best?.spare) return null;
  return { spare: best.spare, ...ringAndHub({ wanted: gear, spare: best.spare, ring: 'steel', cleanUp: data.shop.cleanUp }) };
}

export const hubSpares = (offered: readonly WayOffered[]): SpareWheel[] =>
  offered.flatMap(({ way, open, spare }) => (way === 'ring and hub' && open === 'yes' && spare ? [spare] : []));
