import type { Answer, AnswerTable, Caution, Figure } from '../figure/figure.ts';
import { samePitch } from '../gears/pitch.ts';
import { nanometres } from '../values/length.ts';
import { depthTerm, outsideTerm, rootTerm } from './blank-sizes.ts';
import type { Check } from './check.ts';
import { cleanUpFrom } from './clean-up.ts';
import { CLEAN_UP, THUMB_TEETH } from './judgements.data.ts';
import { leastSpareTeeth } from './least-teeth.ts';
import { type Judged, judgeSpare, type SpareAsked } from './spare-test.ts';
import { join, lengthFigure, oneLength, type Term } from './term.ts';

export type SpareKeys =
  | 'newOutside'
  | 'oldOutside'
  | 'oldRoot'
  | 'left'
  | 'gapsStay'
  | 'turnOff'
  | 'throughTeeth'
  | 'solid'
  | 'wholeDepth'
  | 'newRoot'
  | 'wall';
/** `wall` stands only when a bore is known; `gapsStay`, `throughTeeth` and `solid` only where they mean something. */
export type SpareVerdict = Judged & { readonly answer: Answer<string> & { readonly figures: Partial<Record<SpareKeys, Figure>> } };

const SYSTEM =
  'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, rules for spur gears; proportions as named in the system';
const DERIVED = 'derived: difference of the two diameters';

type Terms = { readonly outside: Term; readonly oldOutside: Term; readonly root: Term; readonly usable: Term; readonly newRoot: Term };

function termsOf({ wanted, spare }: SpareAsked, { root, sizes }: Judged): Terms {
  return {
    outside: outsideTerm(wanted, 'new', sizes.unit),
    oldOutside: outsideTerm(spare.gear, 'old', sizes.unit),
    root: root.term,
    usable: root.usableTerm,
    newRoot: rootTerm(wanted, 'new', sizes.unit),
  };
}

/** Sizes of new and old wheel. */
function sizeFigures(asked: SpareAsked, judged: Judged, terms: Terms): Partial<Record<SpareKeys, Figure>> {
  const { sizes, root, oldOutside } = judged;
  const { unit } = sizes;
  const rootSource = root.from === 'measured' ? 'derived: geometry of equal spaces' : SYSTEM;
  const depth = depthTerm(asked.wanted, 'new', unit);
  return {
    newOutside: lengthFigure({ name: 'New outside', symbol: 'D', source: SYSTEM }, sizes.outside, unit, terms.outside),
    oldOutside: lengthFigure({ name: 'Old outside', symbol: 'Do', source: SYSTEM }, oldOutside, unit, terms.oldOutside),
    oldRoot: lengthFigure({ name: `Old root, ${root.from}`, symbol: 'Dr', source: rootSource }, root.root, unit, terms.root),
    wholeDepth: lengthFigure({ name: 'Whole depth', symbol: 'W', source: SYSTEM }, sizes.depth, unit, depth),
    newRoot: lengthFigure({ name: 'New root', symbol: 'R', source: SYSTEM }, sizes.root, unit, terms.newRoot),
  };
}

/** What is turned away and what is left, per side. */
function roomFigures(asked: SpareAsked, judged: Judged, terms: Terms): Partial<Record<SpareKeys, Figure>> {
  const { sizes, root, oldOutside, room } = judged;
  const { unit } = sizes;
  const cleanUp = asked.cleanUp ?? CLEAN_UP;
  const c = oneLength('c', 'clean-up, on the diameter', cleanUp, unit, cleanUpFrom(asked.cleanUp));
  const says = (name: string, symbol: string) => ({ name, symbol, source: DERIVED });
  const { outside, usable } = terms;
  if (room.gaps > 0)
    return { gapsStay: lengthFigure(says('Old gaps stay, deep', 'x'), room.gaps, unit, join`(${outside} − ${usable}) ÷ 2`) };
  const perSide = (a: number, b: number) => nanometres((a - b) / 2);
  return {
    left: lengthFigure(says('Left a side after cleaning up', 'l'), room.left, unit, join`(${usable} − ${c} − ${outside}) ÷ 2`),
    turnOff: lengthFigure(
      says('Turn off a side', 'u'),
      perSide(oldOutside, sizes.outside),
      unit,
      join`(${terms.oldOutside} − ${outside}) ÷ 2`,
    ),
    throughTeeth: lengthFigure(
      says('Of it through the old teeth', 'v'),
      perSide(oldOutside, root.root),
      unit,
      join`(${terms.oldOutside} − ${terms.root}) ÷ 2`,
    ),
    solid: lengthFigure(says('The rest solid', 's'), perSide(root.root, sizes.outside), unit, join`(${terms.root} − ${outside}) ÷ 2`),
  };
}

function wallFigure({ wall, sizes }: Judged, terms: Terms): Partial<Record<SpareKeys, Figure>> {
  if (!wall) return {};
  const says = { name: `Wall from new root to ${wall.over.replace(/^the /, '')}`, symbol: 'V', source: DERIVED };
  return { wall: lengthFigure(says, wall.wall, sizes.unit, join`${terms.newRoot} ÷ 2 − ${wall.radius}`) };
}

const WEIGHT = { yes: 'note', beware: 'beware', 'measure first': 'beware', no: 'danger' } as const;

const asCaution = ({ about, result, says }: Check): Caution => ({ name: about, says, weight: WEIGHT[result], about });

/** The trade's rule of thumb, beside the figures and never instead of them; it is one for straight teeth. */
function thumb({ wanted, spare, cleanUp }: SpareAsked): Caution[] {
  if (wanted.helix || spare.gear.helix || !samePitch(wanted.pitch, spare.gear.pitch)) return [];
  const more = spare.gear.teeth - wanted.teeth;
  const least = leastSpareTeeth(wanted, cleanUp);
  const whole = least === null ? '' : ` Worked out, it takes ${least} teeth or more.`;
  const says = `Rule of thumb: ${THUMB_TEETH} teeth more of the same pitch. This spare has ${more < 0 ? `${-more} fewer` : `${more} more`}.${whole}`;
  return [{ name: 'Thumb', says, weight: 'note', about: 'oldRoot' }];
}

function checksTable({ checks, sizes }: Judged): AnswerTable {
  return {
    title: 'What was looked at',
    unit: sizes.unit,
    heads: ['About', 'Result', 'Why'],
    rows: checks.map((each) => [each.about, each.result, each.says]),
  };
}

/** The spare test whole: verdict, reasons and every figure with its working. */
export function testSpare(asked: SpareAsked): SpareVerdict {
  const judged = judgeSpare(asked);
  const terms = termsOf(asked, judged);
  const figures = { ...sizeFigures(asked, judged, terms), ...roomFigures(asked, judged, terms), ...wallFigure(judged, terms) };
  const worth = judged.checks.filter((each) => each.result !== 'yes');
  const cautions = [...worth.map(asCaution), ...judged.root.cautions, ...thumb(asked)];
  return { ...judged, answer: { figures, cautions, says: judged.says, tables: [checksTable(judged)] } };
}
