/** Which rows may take which wheels, which wheels are alike, and how many of each like group may be cut. */
export type Field = {
  readonly able: readonly (readonly boolean[])[];
  readonly group: readonly number[];
  readonly mayCut: readonly number[];
};

type State = { readonly rowOf: Map<number, number>; readonly cut: number[] };

/**
 * The most rows that can each be given a wheel of their own, no like group being cut more often than it may.
 * Augmenting paths through wheels and groups (J. Hopcroft, R. Karp, the simple form); exact.
 */
export function mostRows(field: Field, rows: readonly number[]): number {
  const state: State = { rowOf: new Map(), cut: field.mayCut.map(() => 0) };
  return rows.filter((row) => place(field, state, row, new Set(), new Set())).length;
}

function place(field: Field, state: State, row: number, tried: Set<number>, full: Set<number>): boolean {
  for (let wheel = 0; wheel < field.group.length; wheel++) {
    if (!field.able[row]?.[wheel] || tried.has(wheel)) continue;
    tried.add(wheel);
    const held = state.rowOf.get(wheel);
    const free = held === undefined ? makeRoom(field, state, wheel, tried, full) : place(field, state, held, tried, full);
    if (!free) continue;
    state.rowOf.set(wheel, row);
    return true;
  }
  return false;
}

/** Room in the wheel's like group: there is some, or one of its cut wheels is given back by sending its row elsewhere. */
function makeRoom(field: Field, state: State, wheel: number, tried: Set<number>, full: Set<number>): boolean {
  const group = field.group[wheel] ?? 0;
  if ((state.cut[group] ?? 0) < (field.mayCut[group] ?? 0)) {
    state.cut[group] = (state.cut[group] ?? 0) + 1;
    return true;
  }
  if (full.has(group)) return false;
  full.add(group);
  for (const [other, row] of state.rowOf) {
    if (field.group[other] !== group || tried.has(other)) continue;
    tried.add(other);
    if (!place(field, state, row, tried, full)) continue;
    state.rowOf.delete(other);
    return true;
  }
  return false;
}
