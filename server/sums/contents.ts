import { gearBlankSum } from './gears.ts';
import type { Sum } from './sum.ts';

/** Every sum, in the order of the contents page. To add one: write it in its group's file and give it a line here. */
export const SUMS: readonly Sum[] = [gearBlankSum];

export const sumByPath = (path: string): Sum | undefined => SUMS.find((sum) => sum.path === path);
