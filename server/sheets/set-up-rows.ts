import type { StoredFigure } from '../../db/figures.ts';
import type { StoredNeed } from '../../db/needs.ts';
import type { OperationLine } from '../../db/operations.ts';
import { dialPlace, dialPlaceWords } from '../../lib/dividing/dial-places.ts';
import { needWords } from '../../lib/routing/needs.ts';
import { sectorWords } from './index-view.ts';
import { dialUnit } from './operation-rows.ts';
import { sheetFigure } from './sheet-figure.ts';
import type { DiffersView, FactView } from './view-types.ts';
import { type Walk, walkOf } from './walk.ts';
import type { Work } from './work.ts';

/** One thing that is set for a part. */
export type SetRow = { readonly key: string; readonly name: string; readonly text: string };

const TOOLS: Readonly<Record<StoredNeed['need']['kind'], string>> = {
  cutter: 'Cutter',
  mandrel: 'Mandrel',
  head: 'Dividing head',
  circle: 'Index plate',
  arbor: 'Cutter arbor',
  chuck: 'Chuck',
  other: 'Tool',
};

function needRow({ need, tool_name }: StoredNeed): SetRow {
  const words = needWords(need).replace(/^(cutter|mandrel for a) /, '');
  const says = tool_name === null ? `${words}: lacking` : need.kind === 'cutter' ? words : tool_name;
  return { key: `${need.kind}${need.kind === 'other' ? ` ${need.name}` : ''}`, name: TOOLS[need.kind], text: says };
}

/** What is set or dialled; limits and times are for the route sheet. */
const SET = /^(travel|dial\d*|depth|speed|feed|span|feedWhenLarge|roughTo|halfWay|firstCut|secondCut|outside)$/;
const ONCE_AT_THE_MILL = /^(speed|feed)$/;

function keyOf({ key, setUp }: OperationLine, figure: string): string {
  return setUp.place === 'mill' && ONCE_AT_THE_MILL.test(figure) ? figure : `${key ?? ''}/${figure}`;
}

function figureRow(operation: OperationLine, stored: StoredFigure, { machines, now }: Work): SetRow {
  const { name, was, text, unit, typed } = sheetFigure(operation, stored, dialUnit(operation, machines), now);
  const over = /^Span (over .*)$/.exec(name)?.[1];
  const words = [over ? `${over}:` : '', was ? `${was} →` : '', text, unit, typed ? '(typed)' : ''].filter((part) => part !== '').join(' ');
  const speeds = operation.setUp.place === 'lathe' && ONCE_AT_THE_MILL.test(stored.key);
  return { key: keyOf(operation, stored.key), name: over ? 'Span' : speeds ? `${name}: ${operation.title}` : name, text: words };
}

function walkRows(walk: Walk): SetRow[] {
  if (walk.by === 'dial')
    return [
      {
        key: 'dial',
        name: 'Dial',
        text: `${walk.dial.perTurn} lines${walk.dial.vernier === 1 ? '' : `, vernier of ${walk.dial.vernier}`}`,
      },
      { key: 'turns', name: 'Tooth 2 stands at', text: dialPlaceWords(dialPlace(2, walk.teeth, walk.dial), walk.dial) },
    ];
  const { circle, turns } = walk.move;
  return [
    { key: 'circle of', name: 'Circle', text: `${circle} holes` },
    { key: 'turns', name: 'Whole turns a move', text: String(turns) },
    { key: 'sector', name: 'Sector', text: sectorWords(walk.move) },
  ];
}

/** Everything that is set for one part in this set-up, in the order of the work; each thing once. */
export function setRows(work: Work): SetRow[] {
  const { operations, part } = work;
  const walk = walkOf(work);
  const figures = operations
    .filter(({ key }) => key !== 'measure' && key !== 'nick')
    .flatMap((operation) => operation.figures.filter(({ key }) => SET.test(key)).map((stored) => figureRow(operation, stored, work)));
  const teeth = part.stored ? [{ key: 'teeth', name: 'Teeth', text: String(part.stored.gear.teeth) }] : [];
  const found = [...teeth, ...operations.flatMap(({ needs }) => needs.map(needRow)), ...(walk ? walkRows(walk) : []), ...figures];
  return found.filter((row, at) => found.findIndex(({ key }) => key === row.key) === at);
}

export type Compared = { readonly common: readonly FactView[]; readonly differing: DiffersView['rows'] };

/** The part has no such operation: there is nothing to know. */
const NOT_HERE = '–';

/** What all parts say alike stands once; the rest side by side. */
export function compared(parts: readonly (readonly SetRow[])[]): Compared {
  const names = new Map(parts.flat().map(({ key, name }) => [key, name]));
  const cellsOf = (key: string): string[] => parts.map((rows) => rows.find((row) => row.key === key)?.text ?? NOT_HERE);
  const same = (key: string): boolean => parts.length > 1 && new Set(cellsOf(key)).size === 1;
  const keys = [...names.keys()];
  return {
    common: keys.filter(same).map((key) => ({ key, name: names.get(key) ?? '', text: cellsOf(key)[0] ?? '' })),
    differing: keys.filter((key) => !same(key)).map((key) => ({ key, name: names.get(key) ?? '', cells: cellsOf(key) })),
  };
}
