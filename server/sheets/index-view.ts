import type { OperationLine } from '../../db/operations.ts';
import { CLAMP } from '../../lib/dividing/clamp.ts';
import { compoundTurns } from '../../lib/dividing/compound.formulas.ts';
import { dialPlace, dialPlaceWords } from '../../lib/dividing/dial-places.ts';
import type { WalkedMove } from '../../lib/dividing/index-table.ts';
import { LASH_UNKNOWN } from '../../lib/dividing/lash.ts';
import { sectorHoles, turnsMade } from '../../lib/dividing/plain.formulas.ts';
import { dialServes, type TableDial } from '../../lib/dividing/table-dial.formulas.ts';
import { leastFigure, worstFigures } from '../../lib/dividing/table-dial.sums.ts';
import { compoundWords } from '../../lib/dividing/way-words.ts';
import { inTurns } from '../../lib/dividing/ways.tables.ts';
import { indexPlate } from '../../lib/drawing/index-plate.ts';
import { printFigure, printMove } from '../../lib/figure/print-value.ts';
import { needWords } from '../../lib/routing/needs.ts';
import type { IndexMove } from '../../lib/values/move.ts';
import { plus, type Ratio, ratio, times } from '../../lib/values/ratio.ts';
import { to } from '../addresses.ts';
import { cutNothing } from '../routings/blank-words.ts';
import type { Views } from '../views.ts';
import { type Geared, gearedBy, headTurns } from './geared.ts';
import { type IndexColumns, type IndexLine, inColumns, indexLines, landsHead, passHeads, type Ticked } from './index-columns.ts';
import { dialUnit } from './operation-rows.ts';
import { onSheet, type Printed, paperBlock } from './paper.ts';
import { partCells } from './route-view.ts';
import { sheetFigure } from './sheet-figure.ts';
import type { FactView, IndexBlock } from './view-types.ts';
import { lashBack, type Walk, walkFor } from './walk.ts';
import { drawnTall, drawnWide } from './wheel-drawing.ts';
import { teethOf, type Work } from './work.ts';

/** Lines of a column on the first side and on those after it: large while the teeth are few. */
const BIG = { first: 15, later: 25 } as const;
const PLAIN = { first: 20, later: 35 } as const;
const PLATE_WIDE = 62;
/** The picture of the gears: the lines begin on the next side. */
const GEARS_TALL = 42;

/** "27 spaces = 28 holes, counting the pin’s". */
export const sectorWords = ({ spaces }: IndexMove): string =>
  spaces === 0 ? 'whole turns: no sector' : `${spaces} spaces = ${sectorHoles(spaces)} holes, counting the pin’s`;

const fraction = ([num, den]: Ratio): string => (den === 1 ? String(num) : `${num}/${den}`);

/** What all moves make together, by one pin or two. */
function turnsOfAll(teeth: number, move: WalkedMove): Ratio {
  if (!move.back) return turnsMade(teeth, move);
  const front = move.turns * move.circle + move.spaces;
  return times(ratio(teeth), compoundTurns({ front, frontCircle: move.circle, back: move.back.spaces, backCircle: move.back.circle }));
}

/** Every place is counted from zero: the handwheel has gone its whole turns at tooth 1 again. */
function dialProof(teeth: number, { turns, perTurn, vernier }: TableDial): string {
  const [num, den] = ratio(turns * perTurn * vernier, teeth);
  const each = vernier === 1 ? 'lines' : `lines of the vernier, ${perTurn} × ${vernier} to a turn`;
  return `${teeth} × ${fraction([num, den])} ${each} make ${turns} turns; the table takes ${turns}. Nick ${teeth + 1} falls in nick 1, the dial at 0.`;
}

/** Head turns as the head's own need names them; what the moves, and gears where there are any, make stands against them. */
function proofWords(teeth: number, walk: Walk, work: Pick<Work, 'operations'>): string {
  return walk.by === 'dial' ? dialProof(teeth, walk.dial) : pinProof(teeth, walk.move, work);
}

function pinProof(teeth: number, move: WalkedMove, { operations }: Pick<Work, 'operations'>): string {
  const [made, turns, geared] = [turnsOfAll(teeth, move), headTurns(operations), gearedBy(operations)];
  const asked = turns === null ? '' : `; the head takes ${turns}`;
  const nicks = `Nick ${teeth + 1} falls in nick 1.`;
  if (!geared) return `${teeth} moves of ${moveSaid(move)} make ${fraction(made)} turns${asked}. ${nicks}`;
  const [num, den] = geared.plateTurns;
  const plate = `${num < 0 ? 'less' : 'and'} ${fraction([Math.abs(num), den])} of the plate: ${fraction(plus(made, geared.plateTurns))}`;
  return `${teeth} moves of ${moveSaid(move)} make ${inTurns(made)} turns against the plate, ${plate}${asked}. ${nicks} ${falseCounts(teeth, geared)}`;
}

const falseCounts = (teeth: number, { ifWrong, ifLocked }: Geared): string =>
  `Count the nicks: ${teeth} is right, ${ifWrong} a wrong idler, ${ifLocked} a locked plate.`;

/** "5 spaces on 15, then plate and crank 7 spaces on 19 the same way". */
function moveSaid(move: WalkedMove): string {
  if (!move.back) return printMove(move);
  const front = move.turns * move.circle + move.spaces;
  return compoundWords({ front, frontCircle: move.circle, back: move.back.spaces, backCircle: move.back.circle });
}

const fact = (key: string, name: string, text: string): FactView => ({ key, name, text });

/** Depths as they are dialled, by operation: what is set before each round. */
function depthFacts({ operations, machines, now }: Work): FactView[] {
  const dials = operations.flatMap((operation: OperationLine) =>
    operation.figures
      .filter(({ key }) => /^dial\d*$/.test(key) && ['touch', 'rough'].includes(operation.key ?? ''))
      .map((stored) => sheetFigure(operation, stored, dialUnit(operation, machines), now)),
  );
  return dials.map(({ key, name, text, unit, was, typed }) =>
    fact(key, name, `${was ? `${was} → ` : ''}${text} ${unit}${typed ? ' (typed)' : ''}`),
  );
}

function cutterFact({ operations }: Work): FactView[] {
  const need = operations.flatMap(({ needs }) => needs).find((one) => one.need.kind === 'cutter');
  return need
    ? [fact('cutter', 'Cutter', `${needWords(need.need).replace(/^cutter /, '')}${need.tool_id === null ? ': lacking' : ''}`)]
    : [];
}

const gearFacts = ({ says, idlers, plate, plateTurns }: Geared): FactView[] => [
  fact('gears', 'Gears', says),
  fact('idlers', 'Idlers', idlers),
  fact(
    'plate-turns',
    'Plate turns',
    `${fraction([Math.abs(plateTurns[0]), plateTurns[1]])} a turn of the spindle, ${plate} the crank; stop out`,
  ),
];

/** What a table is set by, and how far its worst tooth stands off. */
function dialFacts({ teeth, dial }: Extract<Walk, { by: 'dial' }>): FactView[] {
  const second = dialPlace(2, teeth, dial);
  const worst = worstFigures(teeth, dial);
  const least = printFigure(leastFigure(dial));
  const exact = dialServes(dial, teeth);
  return [
    fact('crank', 'Tooth 2', dialPlaceWords(second, dial)),
    fact('least', 'Least reading', `${least.text}${least.unit}`),
    fact(
      'worst',
      'Worst tooth',
      exact ? 'none: every tooth falls on a line' : `${printFigure(worst.worstTooth).text}, off by ${printFigure(worst.worst).text}″`,
    ),
  ];
}

/** Cutter and depths: what is set on the mill, not on the head. */
const besideFacts = (work: Work): FactView[] => [...cutterFact(work), ...depthFacts(work)];

/** What is set for this part. */
function indexFacts(work: Work, walk: Walk): FactView[] {
  const teeth = fact('teeth', 'Teeth', String(teethOf(work)));
  const how = walk.by === 'dial' ? dialFacts(walk) : pinFacts(work, walk.move);
  return [teeth, ...how, ...besideFacts(work)];
}

function pinFacts(work: Work, move: WalkedMove): FactView[] {
  const geared = gearedBy(work.operations);
  return [
    fact('crank', 'Each move', moveSaid(move)),
    fact('sector', 'Sector', sectorWords(move)),
    ...(move.back
      ? [fact('back-sector', 'Sector of the back pin', sectorWords({ ...move.back, turns: 0, spaces: Math.abs(move.back.spaces) }))]
      : []),
    ...(geared ? gearFacts(geared) : []),
  ];
}

/** What the columns are headed by. */
type Headed = Pick<IndexColumns, 'passes' | 'lands' | 'off'>;

/** How many columns stand side by side: each box takes its width, and so do line and vernier with what they are off by. */
const columnsWide = ({ passes, lands, off }: Headed, big: boolean): number => {
  if (passes.length > 4 || off || lands.startsWith('Line')) return 2;
  return big || passes.length > 3 ? 3 : 4;
};

/** Room for lines: all of it; less where two pins are set; none on the first side where gears are drawn. */
type FirstSide = 'plain' | 'two pins' | 'gears';
const TWO_PINS_TAKE = 7;

const headed = (walk: Walk, lines: readonly IndexLine[], all: readonly Ticked[]): Headed => ({
  passes: passHeads(all.map(({ pass }) => pass)),
  lands: landsHead(walk),
  off: lines.some(({ off }) => off !== ''),
});

/** The lines of one part shared out over sides, each in columns side by side. */
function sidesOf(lines: readonly IndexLine[], head: Headed, firstSide: FirstSide): IndexColumns[] {
  const most = ({ first, later }: typeof BIG | typeof PLAIN) =>
    firstSide === 'gears' ? { first: 0, later } : { first: firstSide === 'plain' ? first : first - TWO_PINS_TAKE, later };
  const bigRoom = most(BIG);
  const big = lines.length <= (firstSide === 'gears' ? bigRoom.later : bigRoom.first) * columnsWide(head, true);
  const [room, wide] = [most(big ? BIG : PLAIN), firstSide === 'plain' ? columnsWide(head, big) : Math.min(3, columnsWide(head, big))];
  const [first, later] = [room.first * wide, room.later * wide];
  const rest = Array.from({ length: Math.max(0, Math.ceil((lines.length - first) / later)) }, (_, at) =>
    lines.slice(first + at * later, first + (at + 1) * later),
  );
  const side = (some: readonly IndexLine[], fits: number): IndexColumns => ({ big, ...head, columns: inColumns(some, fits) });
  return [
    first === 0 ? { big, ...head, columns: [] } : side(lines.slice(0, first), room.first),
    ...rest.map((some) => side(some, room.later)),
  ];
}

/** The table of one part, small, to stand on a sheet with others. */
export function indexBlock(work: Work, all: readonly Ticked[]): IndexBlock {
  const [teeth, walk] = [teethOf(work), walkFor(work)];
  const lines = indexLines(teeth, walk, all);
  const head = headed(walk, lines, all);
  const most = Math.max(10, Math.ceil(lines.length / columnsWide(head, false)));
  return {
    id: `index-${work.part.id}`,
    title: `${work.part.mark} ${work.part.name}`,
    facts: indexFacts(work, walk).filter(({ key }) => ['teeth', 'crank', 'sector', 'worst', 'cutter'].includes(key)),
    proof: proofWords(teeth, walk, work),
    clamp: CLAMP.says,
    columns: { big: false, ...head, columns: inColumns(lines, most) },
  };
}

const firstSideOf = (walk: Walk, geared: Geared | null): FirstSide =>
  geared ? 'gears' : walk.by === 'pin' && walk.move.back ? 'two pins' : 'plain';
const plateOf = ({ circle, turns, spaces }: WalkedMove) => ({ holes: circle, turns, spaces });

/** setUp: where the teeth are cut. */
export function indexSheet(work: Work, setUp: string, all: readonly Ticked[], printed: Printed): Views['sheets/index-sheet'] {
  const [teeth, walk, { part }] = [teethOf(work), walkFor(work), work];
  const geared = walk.by === 'pin' ? gearedBy(work.operations) : null;
  const lines = indexLines(teeth, walk, all);
  const sides = sidesOf(lines, headed(walk, lines, all), firstSideOf(walk, geared));
  const title = `${part.mark} ${part.name}`;
  const [facts, beside, back] = [indexFacts(work, walk), geared ? besideFacts(work) : [], lashBack(work)];
  const anew = work.operations.map(cutNothing).find((says) => says !== '');
  return {
    ...onSheet(`Index sheet ${title}`, { says: part.mark, href: to.part(part.id) }),
    heading: `${teeth} teeth: index table`,
    setUp,
    block: {
      id: `index-${part.id}`,
      title,
      facts: facts.filter(({ key }) => !beside.some((one) => one.key === key)),
      proof: proofWords(teeth, walk, work),
      clamp: anew || CLAMP.says,
    },
    plate: walk.by === 'pin' ? drawnWide((shown) => indexPlate(plateOf(walk.move), { shown }), PLATE_WIDE) : null,
    place: walk.by === 'pin' ? 'hole' : 'line',
    lash: back ? `${back} or more` : LASH_UNKNOWN,
    beside,
    gears: geared ? drawnTall(geared.draw, GEARS_TALL) : null,
    sides: sides.map((columns, at) => ({
      first: at === 0,
      columns,
      paper: paperBlock({ cells: partCells(work), mark: part.mark, leadsTo: to.part(part.id) }, printed, at + 1, sides.length),
    })),
  };
}
