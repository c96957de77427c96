import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { to } from '../addresses.ts';
import { typedOfGear } from '../forms/gear-typed.ts';
import type { LinkView } from '../page.ts';

/** The usual lead screw of a milling machine's table; put right on the page of the sum. */
export const USUAL_TABLE_SCREW = '4 TPI';

type HeadForLead = { readonly name: string; readonly turns: number; readonly gears: readonly number[] };

/** The head that turns a helix: one that is here and has wheels, else any that is here, else the usual one. */
export function headForLead(heads: ShopNow['heads']): HeadForLead {
  const geared = heads.filter(({ gears = [] }) => gears.length > 1);
  const head = geared.find(({ here }) => here) ?? heads.find(({ here }) => here) ?? geared[0] ?? heads[0];
  return { name: head?.name ?? 'the dividing head', turns: head?.turns ?? 40, gears: head?.gears ?? [] };
}

/** From a helical wheel: its sizes and lead, and how its teeth are milled with the head and the wheels of the shop. Proportions of its own have no name that a sum could be asked by. */
export function helicalLinks(gear: Gear, heads: ShopNow['heads']): readonly LinkView[] {
  if (!gear.helix) return [];
  const { teeth = '', pitch = '', system = '', helix = '', hand = '', face = '' } = typedOfGear({ gear, forms: {} }, 'in');
  if (system === 'own') return [];
  const wheel = { teeth, pitch, system, helix, hand, ...(face === '' ? {} : { face }) };
  const { turns, gears } = headForLead(heads);
  const machine = { turns: String(turns), tableScrew: USUAL_TABLE_SCREW, drive: 'worm', upTo: '4' };
  return [
    { says: 'Its sizes and its lead, as a helical gear', href: to.sum('helical-gear', { ...wheel, plane: 'normal' }) },
    {
      says: 'Mill its teeth: wheels, table angle, cutter',
      href: to.sum('helical-milling', { ...wheel, ...machine, drawer: printDrawer(gears) }),
    },
  ];
}
