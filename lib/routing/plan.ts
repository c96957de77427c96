import type { PlanAsked } from './asked.ts';
import { blankFails } from './blank-fails.ts';
import { type Job, jobOf } from './job.ts';
import type { PlannedOperation } from './operation.ts';
import { sayTyped } from './readings.ts';
import { recut } from './recut.ts';
import { ringOnHub } from './ring.ts';
import { fromStock } from './stock.ts';

/** blankFails: why it cannot be made from its blank as that measures by now; '' while nothing stands against it. */
export type Plan = { readonly operations: readonly PlannedOperation[]; readonly blankFails: string };

function operationsOf(job: Job, asked: PlanAsked): readonly PlannedOperation[] {
  if (asked.way === 're-cut a spare') return recut(job, asked.blank);
  return asked.way === 'make from stock' ? fromStock(job, asked.blank) : ringOnHub(job, asked.blank);
}

/**
 * The routing of one gear: every operation in order, with set-up, tooling, figures, what to measure and the cautions.
 * What was measured replaces what was worked out in every figure after it; what was typed stays, and says so.
 * Throws DomainError for a wheel or a blank that make no sense together.
 */
export function planRouting(asked: PlanAsked): Plan {
  const job = jobOf(asked);
  const operations = operationsOf(job, asked);
  return { operations: operations.map((operation) => sayTyped(operation, asked.readings)), blankFails: blankFails(job, asked) };
}
