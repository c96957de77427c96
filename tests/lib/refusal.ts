import { DomainError } from '../../lib/figure/domain-error.ts';

/** What is refused, with its words; fails where it is not refused. */
export function refusal(work: () => unknown): DomainError {
  try {
    work();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error('not refused');
}
