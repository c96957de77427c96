import { printCount } from '../lib/values/print.ts';
import type { CellView, ColumnKind, HeadView, StateView } from './page.ts';

/** Cells and heads of a table. */
export const cell = (text: string, unit = ''): CellView => ({ text, unit, href: '', state: null });
export const linkCell = (text: string, href: string): CellView => ({ text, unit: '', href, state: null });
export const stateCell = (state: StateView): CellView => ({ text: '', unit: '', href: '', state });
export const heads = (...pairs: readonly (readonly [says: string, as: ColumnKind])[]): HeadView[] =>
  pairs.map(([says, as]) => ({ says, as }));

const PLURALS: Readonly<Record<string, string>> = { tooth: 'teeth' };

/** "1 part", "2 parts", "1,350 ratios". */
export function counted(count: number, one: string): string {
  return `${printCount(count)} ${count === 1 ? one : (PLURALS[one] ?? `${one}s`)}`;
}
