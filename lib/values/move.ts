/** One move of an index crank: whole turns, then SPACES (never holes) on a circle. `spaces` is below `circle`. */
export type IndexMove = { readonly turns: number; readonly spaces: number; readonly circle: number };

/** A move of a feed dial from its stated zero. `divisions` is below `perTurn` and may lie between two lines. */
export type DialMove = { readonly turns: number; readonly divisions: number; readonly perTurn: number };
