import type { PlanAsked } from './asked.ts';
import { jobOf } from './job.ts';
import type { PlannedOperation } from './operation.ts';
import { sayTyped } from './readings.ts';
import { recut } from './recut.ts';

export type Plan = { readonly operations: readonly PlannedOperation[] };

/**
 * The routing of one gear: every operation in order, with set-up, tooling, figures, what to measure and the cautions.
 * What was measured replaces what was worked out in every figure after it; what was typed stays, and says so.
 * Throws DomainError for a wheel or a blank that make no sense together.
 */
export function planRouting(asked: PlanAsked): Plan {
  const job = jobOf(asked);
  const operations = asked.way === 're-cut a spare' ? recut(job, asked.blank) : [];
  return { operations: operations.map((operation) => sayTyped(operation, asked.readings)) };
}
