import type { Gear } from '../../lib/gears/gear.ts';
import { chosenCutter } from '../../lib/routing/chosen.ts';
import { chosenDividing } from '../../lib/routing/chosen-dividing.ts';
import { needWords, toolsFor } from '../../lib/routing/needs.ts';
import type { Need } from '../../lib/routing/operation.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import type { AnyTool } from '../../lib/tooling/tooling.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import type { CellView, TableView } from '../page.ts';
import { millingSheet } from './spline-links.ts';

const allOf = ({ cutters, plates, heads: all, mandrels, arbors, chucks, others }: ShopNow): AnyTool[] => [
  ...cutters,
  ...plates,
  ...all,
  ...mandrels,
  ...arbors,
  ...chucks,
  ...others,
];

/** What a wheel is held on and cut with, the mandrel before all. */
function needsOf(gear: Gear, shop: ShopNow): Need[] {
  const mandrel: Need[] = gear.bore ? [{ kind: 'mandrel', bore: gear.bore }] : [];
  return [...mandrel, chosenCutter(gear, shop).need, ...chosenDividing(gear.teeth, shop, undefined, gear.helix !== null).needs];
}

/** Nothing meets it; a mandrel for a splined bore can be milled in the shop, and the sheet for it is a touch away. */
const unmet = (need: Need, shop: ShopNow): CellView =>
  need.kind === 'mandrel' && need.bore.form === 'splined'
    ? linkCell('nothing yet: mill one to the bore', millingSheet(need.bore, shop))
    : cell('nothing yet');

/** The tooling that a wheel will want, and what of it is here. */
export function needsTable(gear: Gear, shop: ShopNow): TableView {
  const tools = allOf(shop);
  return {
    title: '',
    heads: heads(['Needs', 'name'], ['State', 'state'], ['Met by', 'words']),
    rows: needsOf(gear, shop).map((need, at) => {
      const [met] = toolsFor(need, tools);
      const state = met ? ({ kind: 'here', says: 'here' } as const) : ({ kind: 'waits', says: 'not in the shop' } as const);
      return {
        id: `need-${at}`,
        cells: [cell(needWords(need)), stateCell(state), met ? linkCell(met.name, to.tool(met.id)) : unmet(need, shop)],
      };
    }),
    empty: '',
  };
}
