import { indexRows, type WalkedMove } from '../../lib/dividing/index-table.ts';
import type { Pass } from './passes.ts';

/** A box to tick; ticked already when the tooth was counted at the mill. none: this tooth is not cut in that pass. */
export type BoxView = { readonly pass: string; readonly ticked: boolean; readonly none: boolean };
export type IndexLine = {
  readonly tooth: string;
  readonly again: boolean;
  readonly turns: string;
  readonly hole: string;
  readonly boxes: readonly BoxView[];
  /** The last of a group of five: a heavier line under it. */
  readonly groupEnds: boolean;
};

/** Columns side by side, each with its head. big: rows as high as room allows. */
export type IndexColumns = {
  readonly big: boolean;
  readonly passes: readonly string[];
  readonly columns: readonly (readonly IndexLine[])[];
};

export type Ticked = { readonly pass: Pass; readonly ticks: readonly number[] };

/** Heads of the boxes: nick, rough for each round, finish. */
export const passHeads = (passes: readonly Pass[]): string[] =>
  passes.flatMap(({ kind, rounds }) => Array.from({ length: rounds }, (_, round) => (rounds > 1 ? `${kind} ${round + 1}` : kind)));

function boxesOf(tooth: number, teeth: number, all: readonly Ticked[]): BoxView[] {
  return all.flatMap(({ pass, ticks }) =>
    Array.from({ length: pass.rounds }, (_, round): BoxView => {
      const mark = round * teeth + tooth;
      const none = tooth > teeth && pass.kind !== 'nick';
      return { pass: pass.kind, ticked: !none && ticks.includes(mark), none };
    }),
  );
}

const GROUP = 5;

/** A line for every tooth and the first once more. hole: with two pins that of the crank and that of the back pin. turns: whole turns of the crank since tooth 1. */
export const indexLines = (teeth: number, move: WalkedMove, all: readonly Ticked[]): IndexLine[] =>
  indexRows(teeth, move).map(({ tooth, turnsFromStart: [num, den], hole, backHole, backAtFirst }) => ({
    tooth: backAtFirst ? '1' : String(tooth),
    again: backAtFirst,
    turns: String(Math.floor(num / den)),
    hole: backHole === undefined ? String(hole) : `${hole} · ${backHole}`,
    boxes: boxesOf(tooth, teeth, all),
    groupEnds: tooth % GROUP === 0,
  }));

/** Lines in as few columns as hold them at so many lines each; of even length, a whole number of groups. */
export function inColumns(lines: readonly IndexLine[], most: number): IndexLine[][] {
  const columns = Math.max(1, Math.ceil(lines.length / most));
  const high = Math.max(1, Math.ceil(lines.length / columns / GROUP)) * GROUP;
  return Array.from({ length: Math.ceil(lines.length / high) }, (_, at) => lines.slice(at * high, (at + 1) * high));
}
