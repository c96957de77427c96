import { circle, type Drawing, line, type Mark, outline, type Point, roundOf, text } from './drawing.ts';
import { type Letters, lettersFor, PHONE, type Shown, widthOfText } from './lettering.ts';

/** circle: holes in the circle used; turns: whole turns of the crank before the spaces; spaces: SPACES moved on the circle, so the sector shows one hole more. */
export type IndexMove = { readonly holes: number; readonly turns: number; readonly spaces: number };

/** The plate is drawn 100 mm across; it is not to scale with any real plate. */
const [RIM, RING] = [50, 41];

/** Clockwise from the top, as the crank goes round. */
const onRing = (hole: number, holes: number, radius: number): Point => {
  const t = (2 * Math.PI * hole) / holes;
  return [radius * Math.sin(t), radius * Math.cos(t)];
};

/** Holes between the sector's arms are drawn heavy and counted; hole 0 carries the pin. */
function holeMarks({ holes, spaces }: IndexMove): Mark[] {
  const size = Math.min(1.9, (Math.PI * RING) / holes / 1.7);
  return Array.from({ length: holes }, (_, hole): Mark => {
    const at = onRing(hole, holes, RING);
    return circle(at, size, hole <= spaces ? 'here' : 'spare');
  });
}

/** An arm of the sector: its straight edge just clears the hole on the outer side of the holes counted. */
function armMarks(hole: number, outward: 1 | -1, { holes }: IndexMove): Mark[] {
  const edge = hole + outward * 0.5;
  const inner = onRing(edge, holes, 9);
  const outer = onRing(edge, holes, RING + 2.5);
  const back = onRing(edge + outward * Math.min(1.6, holes / 24), holes, RING);
  return [outline([inner, outer, back], 'edge'), line(inner, outer, 'here')];
}

/** Where the number of the hole to land in stands: outside it, and drawn back along the circle until it is clear of the sector's arm. */
function landingAt({ holes, spaces }: Pick<IndexMove, 'holes' | 'spaces'>, label: number): Point {
  const radius = (RING + RIM) / 2 + label * 0.1;
  const t = (2 * Math.PI * spaces) / holes;
  const [wide, tall] = [widthOfText(String(spaces), label) / 2, label * 0.4];
  const along = Math.abs(Math.cos(t)) * wide + Math.abs(Math.sin(t)) * tall + label * 0.15;
  const clear = (Math.PI * radius) / holes;
  return onRing(spaces - (Math.max(0, along - clear) * holes) / (2 * Math.PI * radius), holes, radius);
}

/** Where the words stand: below the middle, or, when the arm comes down there, beside it among the holes counted. */
function wordsAt({ holes, spaces }: Pick<IndexMove, 'holes' | 'spaces'>, figure: number): Point {
  const turned = (360 * (spaces + 0.5)) / holes;
  return turned > 115 && turned < 245 ? [23, figure * 0.4] : [0, -8 - figure * 1.4];
}

function figureMarks({ holes, spaces }: IndexMove, { label, figure }: Letters): Mark[] {
  const [zx, zy] = onRing(0, holes, RING - label * 1.1);
  const [ex, ey] = landingAt({ holes, spaces }, label);
  const [wx, wy] = wordsAt({ holes, spaces }, figure);
  const clearOfPin = Math.min(spaces, holes - spaces) * ((2 * Math.PI * RIM) / holes) > label * 1.2;
  return [
    text([zx, zy - label * 0.36], '0', label),
    ...(clearOfPin ? [text([ex, ey - label * 0.36], String(spaces), label)] : []),
    text([wx, wy], spacesWords(spaces), figure),
    text([wx, wy - label * 1.35], spaces > 0 ? `= ${spaces + 1} holes` : 'back to hole 0', label),
  ];
}

const spacesWords = (spaces: number): string => (spaces === 0 ? 'whole turns' : `${spaces} ${spaces === 1 ? 'space' : 'spaces'}`);
const turnsWords = (turns: number): string => `${turns} whole ${turns === 1 ? 'turn' : 'turns'}`;

function describe({ holes, turns, spaces }: IndexMove): string {
  if (spaces === 0) return `An index circle of ${holes} holes. Each move is ${turnsWords(turns)}, back to hole 0.`;
  const whole = turns === 0 ? '' : `${turnsWords(turns)} and `;
  return `An index circle of ${holes} holes. Each move is ${whole}${spacesWords(spaces)}: the sector takes in ${spaces + 1} holes, the pin stands in hole 0 and lands in hole ${spaces}.`;
}

/** The circle used, with the sector set: its arms stand outside hole 0, where the pin is, and outside the hole to land in. */
export function indexPlate(move: IndexMove, { shown = PHONE }: { readonly shown?: Shown } = {}): Drawing {
  const { holes, spaces } = move;
  const letters = lettersFor(shown, () => 2 * RIM + 4);
  const pin = onRing(0, holes, RING);
  return {
    title: `Circle of ${holes} holes`,
    describes: describe(move),
    low: [-RIM - 2, -RIM - 2],
    high: [RIM + 2, RIM + 8],
    toScale: false,
    marks: [
      circle([0, 0], RIM, 'edge'),
      circle([0, 0], RING, 'centre'),
      circle([0, 0], 8, 'edge'),
      ...holeMarks(move),
      ...(spaces > 0 ? [...armMarks(0, -1, move), ...armMarks(spaces, 1, move)] : []),
      { draw: 'hatch', rings: [roundOf(3, 32).map(([x, y]): Point => [x + pin[0], y + pin[1]])], kind: 'section' },
      circle(pin, 3, 'here'),
      line([pin[0], RING + 3], [pin[0], RIM + 7], 'here'),
      ...figureMarks(move, letters),
    ],
  };
}
