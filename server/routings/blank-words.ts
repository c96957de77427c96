import type { OperationLine } from '../../db/operations.ts';
import type { Written } from '../../db/replan.ts';
import type { Caution } from '../../lib/figure/figure.ts';

const ANEW = 'Cut nothing: choose the blank anew.';

/** What whoever stands at the machine reads first when the blank of this operation will not do; '' while it will. */
export function cutNothing({ waits }: OperationLine): string {
  const why = waits.flatMap((wait) => (wait.for === 'blank' && wait.why ? [wait.why] : []))[0];
  return why ? `${ANEW} ${why}` : '';
}

const WHERE_IT_IS_MEASURED: readonly (string | null)[] = ['sound', 'stock'];

/** At the operation that measured the blank and found it too small. */
export const blankCaution = ({ routing }: Pick<Written, 'routing'>, { key }: OperationLine): Caution[] =>
  routing.closed_on === null && routing.blank_fails !== '' && WHERE_IT_IS_MEASURED.includes(key)
    ? [{ name: 'Blank', says: `${ANEW} ${routing.blank_fails}`, weight: 'danger' }]
    : [];
