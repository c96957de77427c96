import { openRoutings as openAll, type RoutingChoice } from '../../db/open-routing.ts';
import type { Visit } from '../visit.ts';

/** A spare chosen for a part that is missing. */
export type SpareChosen = { readonly partId: number; readonly itemId: number };

const recut = ({ partId, itemId }: SpareChosen): RoutingChoice => ({ partId, way: 're-cut a spare', itemIds: [itemId] });

/**
 * Opens a routing for each of these parts, cut from these spares, their circles chosen together; all or none. Gives the ids of the routings.
 * Throws RecordNotFound, RoutingOpen, ItemTaken, DomainError.
 */
export const openRoutings = ({ db, now }: Visit, choices: readonly SpareChosen[]): Promise<number[]> =>
  openAll(db, choices.map(recut), now);
