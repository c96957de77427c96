import type { Field } from './matching.ts';

/** A pair of row and wheel that were given to each other. */
export type Given = { readonly row: number; readonly wheel: number };

type Edge = { readonly to: number; room: number; readonly cost: bigint; readonly back: number };

/** Nodes: a source, one per row, one per wheel, one per like group, a sink. */
class Net {
  readonly edges: Edge[] = [];
  readonly from: number[][];
  constructor(nodes: number) {
    this.from = Array.from({ length: nodes }, () => []);
  }
  join(a: number, b: number, room: number, cost: bigint): number {
    const at = this.edges.length;
    this.edges.push({ to: b, room, cost, back: at + 1 }, { to: a, room: 0, cost: -cost, back: at });
    this.from[a]?.push(at);
    this.from[b]?.push(at + 1);
    return at;
  }
}

/** The edges of the cheapest path that still has room (Bellman's method, since sending a row back has a negative cost); null when none. */
function cheapestPath(net: Net, source: number, sink: number): number[] | null {
  const best = net.from.map((): bigint | null => null);
  const by = net.from.map(() => -1);
  best[source] = 0n;
  const queue = [source];
  const waiting = new Set(queue);
  for (let node = queue.shift(); node !== undefined; node = queue.shift()) {
    waiting.delete(node);
    for (const at of net.from[node] ?? []) {
      const edge = net.edges[at] as Edge;
      const cost = (best[node] as bigint) + edge.cost;
      const known = best[edge.to] ?? null;
      if (edge.room === 0 || (known !== null && cost >= known)) continue;
      best[edge.to] = cost;
      by[edge.to] = at;
      if (!waiting.has(edge.to)) queue.push(edge.to);
      waiting.add(edge.to);
    }
  }
  return best[sink] === null ? null : pathBack(net, by, source, sink);
}

function pathBack(net: Net, by: readonly number[], source: number, sink: number): number[] {
  const path: number[] = [];
  for (let node = sink; node !== source; ) {
    const at = by[node] as number;
    path.push(at);
    node = (net.edges[(net.edges[at] as Edge).back] as Edge).to;
  }
  return path;
}

/**
 * Gives as many rows as can be a wheel each, at the least total cost; exact. cost: what a pair costs, in one whole number that holds
 * every rule in its order. Like groups are cut no oftener than they may.
 * Method: cheapest augmenting paths, one row at a time (J. Edmonds, R. Karp, 1972); each stage is the cheapest for so many rows.
 */
export function cheapest(field: Field, rows: readonly number[], cost: (row: number, wheel: number) => bigint): Given[] {
  const wheels = field.group.length;
  const [source, wheelAt, groupAt] = [0, 1 + rows.length, 1 + rows.length + wheels];
  const sink = groupAt + field.mayCut.length;
  const net = new Net(sink + 1);
  const pairs: { at: number; row: number; wheel: number }[] = [];
  rows.forEach((row, place) => {
    net.join(source, 1 + place, 1, 0n);
    for (let wheel = 0; wheel < wheels; wheel++)
      if (field.able[row]?.[wheel]) pairs.push({ at: net.join(1 + place, wheelAt + wheel, 1, cost(row, wheel)), row, wheel });
  });
  for (const [wheel, group] of field.group.entries()) net.join(wheelAt + wheel, groupAt + group, 1, 0n);
  for (const [group, most] of field.mayCut.entries()) net.join(groupAt + group, sink, most, 0n);
  for (let path = cheapestPath(net, source, sink); path; path = cheapestPath(net, source, sink))
    for (const at of path) {
      const edge = net.edges[at] as Edge;
      edge.room -= 1;
      (net.edges[edge.back] as Edge).room += 1;
    }
  return pairs.filter(({ at }) => net.edges[at]?.room === 0).map(({ row, wheel }) => ({ row, wheel }));
}
