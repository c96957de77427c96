import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure } from '../figure/figure.ts';
import { contactRatio, contactRatioWithRack, type Radii } from '../gears/contact-ratio.formulas.ts';
import type { Gear } from '../gears/gear.ts';
import { exact } from '../gears/givens.ts';
import { baseDiameter, outsideDiameter, pitchDiameter, type Tooth } from '../gears/tooth.ts';
import { inUnit, type Length, nanometres } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { toNumber } from '../values/ratio.ts';
import { inWords, outsideTerm, plainTooth, teethTerm } from './blank-sizes.ts';
import { judgeSpare, type SpareAsked } from './spare-test.ts';
import { join, lengthFigure, one, type Term } from './term.ts';

/** mate: the teeth of the wheel that it runs with, of the same system, or a rack. lastOfItsSpline: no other wheel has this spline. */
export type SecondAsked = SpareAsked & { readonly mate: number | 'rack'; readonly lastOfItsSpline: boolean };
export type SecondKeys = 'outside' | 'short' | 'before' | 'after';

function refuse(says: string, limit: string): never {
  throw new DomainError({ given: says, limit, tryThis: 'Choose another spare, ring and hub, or stock.', about: ['spare'] });
}

const radiiOf = (tooth: Tooth, outside = outsideDiameter(tooth)): Radii => ({
  base: baseDiameter(tooth) / 2,
  pitch: pitchDiameter(tooth) / 2,
  outside: outside / 2,
});

/** Contact ratio of the wanted wheel when its outside is `outside`. */
function ratioAt(wanted: Gear, mate: number | 'rack', outside: Length): number {
  const tooth = plainTooth(wanted);
  const own = radiiOf(tooth, inUnit(outside, tooth.unit));
  if (mate === 'rack') return contactRatioWithRack(own, tooth.A, tooth.a, tooth.m);
  return contactRatio(own, radiiOf({ ...tooth, N: mate }), tooth.a, tooth.m);
}

const SOURCE = 'Machinery’s Handbook, 31st ed., “Gearing”, contact ratio (value from memory)';

/** The outside in modules, so that the formula holds for every kind of pitch. */
function inModules({ pitch }: Gear, outside: Term): Term {
  const size = exact(toNumber(pitch.size));
  if (pitch.kind === 'DP') return join`(${outside}) × ${one('P', 'teeth per inch of pitch diameter', size, 'typed')}`;
  if (pitch.kind === 'module') return join`(${outside}) ÷ ${one('m', 'module', size, 'typed')}`;
  return join`(${outside}) × π ÷ ${one('p', 'circular pitch', size, 'typed')}`;
}

/** Contact beyond the pitch point, in modules, of N teeth with the outside u, held to what the mate's involute can meet. */
const reach = (u: Term, N: Term, a: Term, most: Term): Term =>
  join`min(max(0, √(max(0, (${u} ÷ 2)^2 − (${N} × cos(${a}) ÷ 2)^2)) − ${N} × sin(${a}) ÷ 2), ${most})`;

function ratioTerm({ wanted, mate }: SecondAsked, outside: Term): Term {
  const N = teethTerm(wanted, 'new');
  const k = one('k', 'addendum, new wheel', exact(wanted.system.addendum), 'table', wanted.system.name);
  const a = one('a', 'pressure angle', { angle: wanted.system.angle }, 'table', wanted.system.name);
  const least = join`${N} × sin(${a}) ÷ 2`;
  const u = inModules(wanted, outside);
  if (mate === 'rack')
    return join`(max(0, √(max(0, (${u} ÷ 2)^2 − (${N} × cos(${a}) ÷ 2)^2)) − ${least}) + min(${k} ÷ sin(${a}), ${least})) ÷ (π × cos(${a}))`;
  const n = one('n', 'teeth of the mate', { count: mate }, 'typed');
  const mateSide = reach(join`(${n} + 2 × ${k})`, n, a, least);
  return join`(${reach(u, N, a, join`${n} × sin(${a}) ÷ 2`)} + ${mateSide}) ÷ (π × cos(${a}))`;
}

function ratioFigure(name: string, symbol: string, asked: SecondAsked, outside: Length, term: Term): Figure {
  const mate = asked.mate === 'rack' ? 'a rack' : `${asked.mate} teeth`;
  const value = { number: ratioAt(asked.wanted, asked.mate, outside), unit: '', places: 2 };
  const { text, given } = ratioTerm(asked, term);
  return { name: `${name}, with ${mate}`, symbol, value, unit: plainTooth(asked.wanted).unit, formula: text, source: SOURCE, given };
}

function checked(asked: SecondAsked): ReturnType<typeof judgeSpare> {
  const judged = judgeSpare(asked);
  if (asked.lastOfItsSpline) refuse('It is the last wheel with this spline.', 'The last of a spline is never cut on a second choice.');
  if (judged.verdict !== 'old gaps stay' || judged.room.gaps === 0)
    refuse(judged.says, 'A second choice is only for a spare that fails by its old gaps alone.');
  if (judged.room.gaps >= judged.sizes.depth / 4)
    refuse(
      `The addendum would be short by ${inWords(judged.room.gaps, judged.sizes.unit)}.`,
      'More than a quarter of the whole depth is too much.',
    );
  return judged;
}

/**
 * Second choice: turn the spare to its old root and cut to the true pitch circle. The addendum comes out short by x, and the wheel carries
 * with fewer teeth at a time: contact ratio before and after. Throws DomainError when the spare is the last of its spline, when it fails for
 * any other reason, and when more than a quarter of the depth is lost (judgement).
 */
export function secondChoice(asked: SecondAsked): Answer<SecondKeys> {
  const { sizes, root, room } = checked(asked);
  const { unit } = sizes;
  const outside = nanometres(root.usable);
  const after = ratioAt(asked.wanted, asked.mate, outside);
  const term = join`(${outsideTerm(asked.wanted, 'new', unit)} − ${root.usableTerm}) ÷ 2`;
  const says = (name: string, symbol: string) => ({ name, symbol, source: 'derived: the old root becomes the new outside' });
  const enough = after >= 1.2 ? 'it carries' : 'too little: at least 1.2 is wanted (judgement)';
  return {
    figures: {
      outside: lengthFigure(says('Turn to', 'D'), outside, unit, root.usableTerm),
      short: lengthFigure(says('Addendum short by', 'x'), room.gaps, unit, term),
      before: ratioFigure('Contact ratio, full outside', 'q', asked, sizes.outside, outsideTerm(asked.wanted, 'new', unit)),
      after: ratioFigure('Contact ratio, short', 'z', asked, outside, root.usableTerm),
    },
    cautions: [
      {
        name: 'Second choice',
        says: `Depth is dialled from the true pitch circle: less by ${inWords(room.gaps, unit)} than for a full blank. Traces of the old roots may stay in the tips.`,
        weight: 'beware',
        about: 'short',
      },
    ],
    says: `Teeth short by ${inWords(room.gaps, unit)}; contact ratio ${printNumber(after, 2)}, ${enough}.`,
  };
}
