import type { LinkView } from '../page.ts';
import type { PartData } from './part-data.ts';
import { BY_HAND } from './part-forms-view.ts';
import { helicalLinks } from './wheel-links.ts';

const HELICAL =
  'No routing is worked out for helical teeth: its figures would be those of straight ones. Its sizes, its cutter and how to mill its teeth stand below. What is cast, bought, repaired or swapped can have one, written by hand.';

/** Why no routing can be opened as things stand, and what would let it. */
function noRoutingWords({ part }: PartData): string {
  const gear = part.stored?.gear;
  if (part.way === 'do without') return 'Done without: there is nothing to make, and so no routing.';
  if (part.way !== null && BY_HAND.includes(part.way)) return '';
  if (gear?.helix) return HELICAL;
  if (part.unknown) return 'Pitch not known: identify it first. Only what is cast, bought, repaired or swapped goes without it.';
  const lacking = gear ? 'nothing in the drawer serves to make it from' : 'no stock is in the drawer to make it from';
  const blank = gear ? 'a blank, or for ring and hub the stock for its ring,' : 'a blank';
  return `No routing can be opened yet: ${lacking}. Put ${blank} on record, or choose below to have it cast, bought, repaired or swapped.`;
}

/** The same with the sums that a wheel has instead of a routing. */
export function noRoutingSaid(data: PartData): { readonly noRouting: string; readonly noRoutingLinks: readonly LinkView[] } {
  const [noRouting, gear] = [noRoutingWords(data), data.part.stored?.gear];
  return { noRouting, noRoutingLinks: gear && noRouting === HELICAL ? helicalLinks(gear, data.shop.heads) : [] };
}
