import type { Answer, Caution } from '../../lib/figure/figure.ts';
import { identifyAnswer } from '../../lib/identify/identify.sums.ts';
import { type Identified, identify } from '../../lib/identify/identify.ts';
import { nothingReadAnswer } from '../../lib/identify/nothing-read.sums.ts';
import { to } from '../addresses.ts';
import type { Typed } from '../forms/form.ts';
import { type Boxes, IDENTIFY_ASKS, unitOf, wheelsOf } from './identify-asks.ts';
import { sum } from './sum.ts';
import { takenAnswers } from './taken-answers.ts';

/** Boxes that hang on another one which was left empty: what was typed in them tells nothing, and that is said. */
function leftOut({
  pinUsed,
  overPins,
  mate,
  centres,
  wallRead,
  wallBore,
  k,
  spanRead,
  spanMore,
  spanMost,
  outside,
  outsideBy,
}: Boxes): string[] {
  const spans = spanRead || spanMore || spanMost;
  return [
    ...(pinUsed && !overPins ? ['The pin was left out: type what was read over both pins.'] : []),
    ...(mate !== null && !centres ? ['The teeth of the mate were left out: type the centre distance with it.'] : []),
    ...(wallBore && !wallRead ? ['The bore was left out: type the least wall from it to a root.'] : []),
    ...(k !== null && !spans ? ['The teeth between the jaws were left out: type the span over them.'] : []),
    ...(outsideBy !== null && !outside ? ['How the outside was taken was left out: type the outside.'] : []),
  ];
}

const identified = new WeakMap<Boxes, Identified>();

/** A page asks twice for the same boxes: for the answer, and for what of it can be taken. Throws DomainError. */
function identifiedOf(boxes: Boxes): Identified {
  const found = identified.get(boxes) ?? identify(wheelsOf(boxes));
  identified.set(boxes, found);
  return found;
}

function work(boxes: Boxes): Answer {
  const wheels = wheelsOf(boxes);
  const nothing = wheels.length === 1 && wheels[0]?.readings.length === 0;
  const answer: Answer = nothing
    ? nothingReadAnswer(boxes.teeth, unitOf(boxes))
    : identifyAnswer(wheels, unitOf(boxes), identifiedOf(boxes));
  const said = leftOut(boxes).map((says): Caution => ({ name: 'Not used', says, weight: 'beware' }));
  return { ...answer, cautions: [...said, ...answer.cautions] };
}

/** A count that was typed is printed on the sheet; another owner counts for himself. */
const sheetAsks = ({ teeth = '' }: Typed): Readonly<Record<string, string>> => (/^\d{1,4}$/.test(teeth) ? { teeth } : {});

const unknownGear = sum({
  path: 'unknown-gear',
  title: 'What is this gear?',
  group: 'Gears',
  tells: 'Pitch, angle and tooth form from a count and a caliper: how likely each is, what speaks against it, and what to measure next.',
  asks: IDENTIFY_ASKS,
  parts: [
    { legend: 'Root or depth', asks: ['rootRead', 'depthRead', 'wallRead', 'wallBore'], folded: true },
    { legend: 'Pins, mate, lean', asks: ['pinUsed', 'overPins', 'mate', 'centres', 'print'], folded: true },
    {
      legend: 'How well each was read',
      asks: ['outsideError', 'spanError', 'rootError', 'pinsError', 'centresError', 'printError'],
      folded: true,
    },
    { legend: 'A second wheel of the same set', asks: ['others'] },
  ],
  example: {
    ...{ teeth: '22', outside: '2.998', outsideBy: 'jaws', k: '2', spanRead: '0.5835', spanMore: '0.9638', spanMost: '' },
    ...{ rootRead: '', depthRead: '', wallRead: '', wallBore: '', pinUsed: '', overPins: '', mate: '', centres: '', print: '' },
    ...{ outsideError: '', spanError: '', rootError: '', pinsError: '', centresError: '', printError: '', others: '' },
  },
  about: {
    ...{ root: ['rootRead'], depth: ['depthRead'], wall: ['wallRead'], span: ['spanRead'], over: ['k'], helix: ['print'] },
    ...{ 'over pins': ['overPins'], pin: ['pinUsed'], bore: ['wallBore'], 'outside error': ['outsideError'], 'span error': ['spanError'] },
    ...{ 'root error': ['rootError'], 'depth error': ['rootError'], 'wall error': ['rootError'], 'over pins error': ['pinsError'] },
    ...{ 'centres error': ['centresError'] },
  },
  work,
  blankSheet: (owner, typed) => ({
    says: 'Print a blank measuring sheet',
    href: owner ? owner.sheet : to.measuringSheet(sheetAsks(typed)),
  }),
  take: (boxes) => takenAnswers(wheelsOf(boxes), identified.get(boxes)),
});

export const IDENTIFY_SUMS = [unknownGear];
