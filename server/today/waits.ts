import type { OpenWork } from '../../db/today.ts';
import { needWords } from '../../lib/routing/needs.ts';
import { to } from '../addresses.ts';

export type Gathered = {
  readonly says: string;
  readonly href: string;
  readonly held: boolean;
  readonly at: string;
  readonly marks: readonly string[];
};

type One = OpenWork['waits'][number];

function words(wait: One, { part_id }: OpenWork): { says: string; href: string; held: boolean } | null {
  if (wait.for === 'tool') {
    const { kind } = wait.need;
    return { says: needWords(wait.need), href: to.toolsOfKind(kind === 'circle' ? 'plate' : kind), held: false };
  }
  if (wait.for === 'blank' && wait.why)
    return { says: `another blank: choose the blank anew. ${wait.why}`, href: to.part(part_id), held: false };
  if (wait.for === 'blank') return { says: 'a blank to cut it from', href: '', held: false };
  if (wait.for === 'held') return { says: `${wait.partMark}: ${wait.title}`, href: to.operation(wait.operationId), held: true };
  return null;
}

/** What the parts wait for from outside their own routing, each thing once, with all the parts that need it; most parts first. */
export function gatherWaits(rows: readonly OpenWork[]): Gathered[] {
  const found = new Map<string, { says: string; href: string; held: boolean; at: string; marks: Set<string> }>();
  for (const work of rows) {
    for (const wait of work.waits) {
      const one = words(wait, work);
      if (!one) continue;
      const before = found.get(one.says);
      if (before) before.marks.add(work.part_mark);
      else found.set(one.says, { ...one, at: wait.at, marks: new Set([work.part_mark]) });
    }
  }
  return [...found.values()].map((one) => ({ ...one, marks: [...one.marks] })).sort((a, b) => b.marks.length - a.marks.length);
}
