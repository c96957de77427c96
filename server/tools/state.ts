import type { ToolLine } from '../../db/tools.ts';
import type { StateView } from '../page.ts';

/** How a tool stands, in one word or two. */
export function stateOf({ row }: ToolLine): StateView {
  if (row.gone_on !== null) return { kind: 'off', says: 'gone' };
  if (row.here === 0) return { kind: 'missing', says: 'lent out' };
  if (row.wear === 'worn out') return { kind: 'off', says: 'worn out' };
  const borrowed = row.owner === '' ? '' : ', borrowed';
  if (row.wear === 'dull') return { kind: 'doubtful', says: `blunt${borrowed}` };
  return { kind: 'here', says: `here${borrowed}` };
}
