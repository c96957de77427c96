import { plainIndexing } from '../dividing/plain.sums.ts';
import type { Answer, AnswerTable, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { BURRS, FLAT_BOTTOMS, HANDS, MAKER, ONE_WAY, TRIAL } from './cautions.ts';
import { bottomFigures, type MillGivens, sideFigures } from './mill-figures.ts';
import { type MillAsked, type MillPlan, millPlan } from './mill-plan.ts';
import { singleCut } from './single-cut.sums.ts';

/**
 * A straight-sided shaft milled with one side-and-face cutter: where the cutter stands, how deep, how far the crank goes, what is left at
 * the bottom and whether the shaft then enters its bore. All first sides, then all bottoms, then all second sides: the cross slide moves
 * one way only. Throws DomainError for a bore, clearances, a cutter or plates that cannot make it.
 * Example: bore 1.251 × 1.063 × 0.313, six splines, cutter 0.1875, circle 33: 0.2500 off, 0.1196 deep; bottoms 0.1044 at 3 turns + 2 and + 20.
 */
export function millSplines(asked: MillAsked): Answer {
  const plan = millPlan(asked);
  const { unit } = asked;
  const givens = givensOf(asked, plan);
  const indexing = plainIndexing({
    divisions: plan.shaft.N,
    head: asked.head,
    plates: asked.plates,
    circle: plan.cuts.on.circle,
    plateId: plan.cuts.on.plate.id,
  });
  return {
    figures: {
      ...plan.sizes.figures,
      ...sideFigures(plan, givens, unit),
      crank: { ...indexing.figures.crank, name: 'Crank from key to key' },
      ...bottomFigures(asked, plan, givens),
      ...singleCut(asked, plan, givens),
    },
    cautions: [
      BURRS,
      HANDS,
      TRIAL,
      ONE_WAY,
      ...(asked.locates === 'bottom' ? [FLAT_BOTTOMS] : []),
      ...indexing.cautions.filter(({ name }) => name !== 'Spaces, not holes'),
      MAKER,
    ],
    says: verdict(asked, plan),
    tables: [cutTable(plan, unit)],
  };
}

const text = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(x, unit), { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

function verdict({ bore, locates, unit }: MillAsked, { highest, enters, tooLarge, cuts, shaft }: MillPlan): string {
  const inside = text(inUnit(bore.inside, unit), unit);
  const high = `The highest metal left at the bottoms stands ${text(highest, unit)} across; the bore has ${highest > inUnit(bore.inside, unit) ? 'only ' : ''}${inside}`;
  const over = tooLarge > 0 ? ` As turned the outside is ${text(tooLarge, unit)} over the bore’s grooves.` : '';
  const way = `${high}${over ? '.' : ':'}${over} ${over ? 'The' : 'the'} shaft ${enters ? 'enters' : 'does not enter'}.`;
  const count = cuts.off.length === 1 ? 'one bottom cut' : `${cuts.off.length} bottom cuts`;
  return `Located by ${locates === 'sides' ? 'the sides' : locates}. ${shaft.N} first sides, ${count} a space, ${shaft.N} second sides. ${way}`;
}

function givensOf({ bore, cutterWidth, turned, head, unit }: MillAsked, { sizes, cuts }: MillPlan): MillGivens {
  const length = (symbol: string, name: string, size: Length, from: Given['from'] = 'worked out'): Given =>
    givenLength(symbol, name, size, unit, from);
  return {
    D: turned === undefined ? length('D', 'shaft outside', sizes.D) : length('D', 'shaft outside as turned', turned, 'measured'),
    d: length('d', 'shaft small diameter', sizes.d),
    w: length('w', 'width of a key', sizes.w),
    c: length('c', 'width that the cutter cuts', cutterWidth, 'typed'),
    N: { symbol: 'N', name: 'splines', value: { count: bore.splines }, from: 'typed' },
    R: { symbol: 'R', name: `turns of the crank for one of the spindle (${head.name})`, value: { count: head.turns }, from: 'table' },
    C: { symbol: 'C', name: 'holes in the circle', value: { count: cuts.on.circle }, from: 'table' },
  };
}

/** The cuts in the order in which they are made. */
function cutTable({ shaft, cuts }: MillPlan, unit: LengthUnit): AnswerTable {
  const offset = (shaft.w + shaft.c) / 2;
  const size = (x: number) => ({ length: ofUnit(x, unit) });
  const depth = (floor: number) => size(shaft.D / 2 - floor);
  const side = depth(Math.sqrt(shaft.d ** 2 - shaft.w ** 2) / 2);
  const bottom = depth(Math.sqrt(shaft.d ** 2 - shaft.c ** 2) / 2);
  const turned = (off: number): string =>
    off === 0 ? 'half a space' : `half a space ${off < 0 ? 'less' : 'and'} ${Math.abs(off)} on ${cuts.on.circle}`;
  return {
    title: 'The cuts, in their order',
    unit,
    heads: ['cut', 'cutter’s middle', 'turned from the key', 'depth', 'how often'],
    rows: [
      ['first sides', size(offset), 'nothing', side, { count: shaft.N }],
      ...cuts.off.map((off) => ['bottoms', size(0), turned(off), bottom, { count: shaft.N }] as const),
      ['second sides', size(-offset), 'nothing', side, { count: shaft.N }],
    ],
  };
}
