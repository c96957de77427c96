import type { Executor } from '../../db/executor.ts';
import type { OperationLine } from '../../db/operations.ts';
import { tick, ticksOfAll, untick } from '../../db/ticks.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Ticked } from './index-columns.ts';
import { nextMark, passesOf } from './passes.ts';

/** A routing whose teeth are counted. */
type Counted = { readonly operations: readonly OperationLine[]; readonly teeth: number };

/** The passes of several routings with what is ticked off in each, in the order given. */
export async function tickedOfAll(db: Executor, counted: readonly Counted[]): Promise<Ticked[][]> {
  const passes = counted.map(({ operations, teeth }) => passesOf(operations, teeth));
  const ticks = await ticksOfAll(
    db,
    passes.flat().map(({ operation }) => operation.id),
  );
  return passes.map((own) => own.map((pass) => ({ pass, ticks: ticks(pass.operation.id) })));
}

/** The same of one routing. */
export async function ticked(db: Executor, operations: readonly OperationLine[], teeth: number): Promise<Ticked[]> {
  return (await tickedOfAll(db, [{ operations, teeth }])).flat();
}

/** The pass of one operation. Throws DomainError for an operation that goes round no teeth. */
export function passAt(all: readonly Ticked[], operation: OperationLine): Ticked {
  const own = all.find(({ pass }) => pass.operation.id === operation.id);
  if (own) return own;
  throw new DomainError({
    given: `“${operation.title}” does not go round the teeth.`,
    limit: 'Only nicking, roughing and finishing are counted tooth by tooth.',
    tryThis: 'Open one of those on the routing.',
  });
}

/** What came of a press: counted now; already counted (twice is once); or not the next one, and so nothing was counted. */
export type Pressed = 'counted' | 'already' | 'not next';

/** Ticks one mark off, if it is the next; a second press of the same changes nothing. */
export async function markCut(db: Executor, { pass, ticks }: Ticked, mark: number, now: string): Promise<Pressed> {
  if (ticks.includes(mark)) return 'already';
  if (mark !== nextMark(pass, ticks)) return 'not next';
  await tick(db, pass.operation.id, mark, now);
  return 'counted';
}

/** Takes the last mark back; any other is left as it is, so that a second press takes back no second tooth. */
export async function takeBack(db: Executor, { pass, ticks }: Ticked, mark: number): Promise<Pressed> {
  if (!ticks.includes(mark)) return 'already';
  if (mark !== Math.max(...ticks)) return 'not next';
  await untick(db, pass.operation.id, mark);
  return 'counted';
}
