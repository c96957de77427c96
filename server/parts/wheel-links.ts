import type { PartLine } from '../../db/parts.ts';
import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { to } from '../addresses.ts';
import { typedOfGear } from '../forms/gear-typed.ts';
import type { LinkView } from '../page.ts';
import { linksOfSpline } from './spline-links.ts';

/** The usual lead screw of a milling machine's table; put right on the page of the sum. */
const USUAL_TABLE_SCREW = '4 TPI';

/** From a helical wheel: its sizes and lead, and how its teeth are milled with the head and the wheels of the shop. Proportions of its own have no name that a sum could be asked by. */
function linksOfHelix({ stored }: Pick<PartLine, 'stored'>, { heads }: Pick<ShopNow, 'heads'>): readonly LinkView[] {
  if (!stored?.gear.helix) return [];
  const { teeth = '', pitch = '', system = '', helix = '', hand = '', face = '' } = typedOfGear(stored, 'in');
  if (system === 'own') return [];
  const wheel = { teeth, pitch, system, helix, hand, ...(face === '' ? {} : { face }) };
  const head = heads.find((one) => one.here) ?? heads[0];
  const machine = { turns: `${head?.turns ?? 40}`, tableScrew: USUAL_TABLE_SCREW, drive: 'worm', upTo: '4' };
  return [
    { says: 'Its sizes and its lead, as a helical gear', href: to.sum('helical-gear', { ...wheel, plane: 'normal' }) },
    {
      says: 'Mill its teeth: wheels, table angle, cutter',
      href: to.sum('helical-milling', { ...wheel, ...machine, drawer: printDrawer(head?.gears ?? []) }),
    },
  ];
}

/** The sums that a wheel leads to, filled in: of its helix and of its splined bore. */
export const linksOfWheel = (part: Pick<PartLine, 'stored'>, shop: Pick<ShopNow, 'heads' | 'plates'>): readonly LinkView[] => [
  ...linksOfHelix(part, shop),
  ...linksOfSpline(part.stored?.gear.bore, shop),
];
