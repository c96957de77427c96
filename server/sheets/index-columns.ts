import { dialPlaces } from '../../lib/dividing/dial-places.ts';
import { indexRows, type WalkedMove } from '../../lib/dividing/index-table.ts';
import { dialServes, type TableDial } from '../../lib/dividing/table-dial.formulas.ts';
import { secondsOff } from '../../lib/dividing/table-dial.sums.ts';
import type { Pass } from './passes.ts';
import type { Walk } from './walk.ts';
import { lineShort, offShort } from './walk-words.ts';

/** A box to tick; ticked already when the tooth was counted at the mill. none: this tooth is not cut in that pass. */
export type BoxView = { readonly pass: string; readonly ticked: boolean; readonly none: boolean };
export type IndexLine = {
  readonly tooth: string;
  readonly again: boolean;
  readonly turns: string;
  readonly hole: string;
  /** How far the tooth stands off its place, in seconds; '' where every place is exact. */
  readonly off: string;
  readonly boxes: readonly BoxView[];
  /** The last of a group of five: a heavier line under it. */
  readonly groupEnds: boolean;
};

/** Columns side by side, each with its head. big: rows as high as room allows. */
export type IndexColumns = {
  readonly big: boolean;
  /** What is landed in, and whether what it is off by has a column of its own. */
  readonly lands: string;
  readonly off: boolean;
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

type Place = Pick<IndexLine, 'turns' | 'hole' | 'off'> & { readonly tooth: number; readonly again: boolean };

const byPin = (teeth: number, move: WalkedMove): Place[] =>
  indexRows(teeth, move).map(({ tooth, turnsFromStart: [num, den], hole, backHole, backAtFirst }) => ({
    tooth,
    again: backAtFirst,
    turns: String(Math.floor(num / den)),
    hole: backHole === undefined ? String(hole) : `${hole} · ${backHole}`,
    off: '',
  }));

const byDial = (teeth: number, dial: TableDial): Place[] =>
  dialPlaces(teeth, dial).map((place) => ({
    tooth: place.tooth,
    again: place.backAtFirst,
    turns: String(place.move.turns),
    hole: lineShort(place, dial),
    off: dialServes(dial, teeth) ? '' : offShort(secondsOff(place, dial)),
  }));

/**
 * A line for every tooth and the first once more. hole: with two pins that of the crank pin and that of the back pin; on a dial the line, and
 * that of the vernier. turns: whole turns since tooth 1.
 */
export const indexLines = (teeth: number, walk: Walk, all: readonly Ticked[]): IndexLine[] =>
  (walk.by === 'pin' ? byPin(teeth, walk.move) : byDial(teeth, walk.dial)).map(({ tooth, ...place }) => ({
    ...place,
    tooth: place.again ? '1' : String(tooth),
    boxes: boxesOf(tooth, teeth, all),
    groupEnds: tooth % GROUP === 0,
  }));

/** What the column of places is headed by. */
export function landsHead(walk: Walk): string {
  if (walk.by === 'dial') return walk.dial.vernier === 1 ? 'Line' : 'Line · vernier';
  return walk.move.back ? 'Hole · back' : 'Hole';
}

/** Lines in as few columns as hold them at so many lines each; of even length, a whole number of groups. */
export function inColumns(lines: readonly IndexLine[], most: number): IndexLine[][] {
  const columns = Math.max(1, Math.ceil(lines.length / most));
  const high = Math.max(1, Math.ceil(lines.length / columns / GROUP)) * GROUP;
  return Array.from({ length: Math.ceil(lines.length / high) }, (_, at) => lines.slice(at * high, (at + 1) * high));
}
