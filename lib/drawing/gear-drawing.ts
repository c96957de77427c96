import type { Gear, Pitch } from '../gears/gear.ts';
import { toDegrees } from '../values/angle.ts';
import { type Length, millimetres, toMm } from '../values/length.ts';
import { type LengthForm, printDegrees, printShort } from '../values/print.ts';
import { toNumber } from '../values/ratio.ts';
import { circle, type Drawing, type LineKind, line, type Mark, outline, type Point, text } from './drawing.ts';
import { besideTo, dimensionText, type Letters, lettersFor, PHONE, type Shown, widthOfText } from './lettering.ts';
import { drawnFace, sectionMarks } from './section.ts';
import { boreOutline, boreWords, thinned, wheelOutline, wheelRadii } from './wheel-outline.ts';

/** cutterFor: the count that the cutter which mills it is made for; the teeth are drawn with that cutter's space. */
export type GearDrawingAs = {
  readonly shown?: Shown;
  readonly form: LengthForm;
  readonly kind?: LineKind;
  readonly title?: string;
  readonly cutterFor?: number;
};

/** A pitch as it is spoken: 8 DP, module 2.5, 5/16 CP. */
function pitchWords({ kind, size }: Pitch): string {
  if (kind === 'module') return `module ${printShort(toNumber(size))}`;
  if (kind === 'DP') return `${printShort(toNumber(size))} DP`;
  return size[1] === 1 ? `${size[0]} CP` : `${size[0]}/${size[1]} CP`;
}

const angleWords = (gear: Gear): string => `${printDegrees(gear.system.angle, 1).replace('.0', '').replace('.5', '½')}°`;
const helixWords = ({ helix }: Gear): string => (helix ? `, helix ${printShort(toDegrees(helix.angle), 2)}° ${helix.hand}` : '');
export const gearWords = (gear: Gear): string => `${gear.teeth} teeth, ${pitchWords(gear.pitch)}, ${angleWords(gear)}${helixWords(gear)}`;

/** Places of the drawing along x and y, in millimetres about the middle of the front view. */
type Layout = {
  readonly outside: number;
  readonly face: number;
  readonly sectionX: number;
  readonly boreX: number;
  readonly rowY: number;
  readonly low: Point;
  readonly high: Point;
};

function layoutOf(gear: Gear, { label, figure }: Letters, form: LengthForm): Layout {
  const { outside } = wheelRadii(gear);
  const face = drawnFace(gear);
  const margin = label * 0.5;
  const sectionX = outside + Math.max(label * 2.2, outside * 0.12);
  const boreX = sectionX + face + figure * 1.9;
  const right = boreX + (gear.bore ? label * 1.5 : 0) + margin;
  const faceTo =
    gear.face && isShort(face, gear.face, form, figure)
      ? sectionX + face + besideTo(dimensionText(gear.face, form).says, figure)
      : sectionX + face / 2 + widthOfText('face ?', figure) / 2;
  const rowY = -outside - figure * 2.1;
  return {
    outside,
    face,
    sectionX,
    boreX,
    rowY,
    low: [-outside - margin - label * 0.4, rowY - label * 1.6],
    high: [Math.max(right, faceTo + margin), outside + label * 2.4],
  };
}

/** Whether a dimension's letters find no room between its ends. */
const isShort = (long: number, length: Length, form: LengthForm, size: number): boolean =>
  widthOfText(dimensionText(length, form).says, size) > long;

const measureOf = (from: Point, to: Point, length: Length, form: LengthForm, size: number, beside = false): Mark => ({
  draw: 'dimension',
  from,
  to,
  size,
  ...(beside ? { beside } : {}),
  ...dimensionText(length, form),
});

function frontMarks(gear: Gear, { label }: Letters, kind: LineKind, cutterFor: number): Mark[] {
  const { outside, pitch } = wheelRadii(gear);
  const arm = outside + label * 0.4;
  const hole: Mark[] = gear.bore ? [outline(boreOutline(gear.bore), kind)] : [text([0, -label * 0.75], '?', label * 2)];
  const cross: Mark[] = gear.bore ? [line([-arm, 0], [arm, 0], 'centre'), line([0, -arm], [0, arm], 'centre')] : [];
  return [
    ...cross,
    circle([0, 0], pitch, 'centre'),
    ...bodyMarks(gear),
    ...hole,
    outline(thinned(wheelOutline(gear, undefined, cutterFor), label / 150), kind),
  ];
}

/** Recesses of the marked side and openings, as thin circles in the front view. */
function bodyMarks(gear: Gear): Mark[] {
  if (!gear.body.known) return [];
  const seen = [...gear.body.recesses.filter(({ side }) => side !== 'other'), ...gear.body.openings];
  return seen.flatMap(({ inner, outer }) => [circle([0, 0], toMm(inner) / 2, 'edge'), circle([0, 0], toMm(outer) / 2, 'edge')]);
}

function dimensionMarks(gear: Gear, at: Layout, { label, figure }: Letters, form: LengthForm): Mark[] {
  const { outside, rowY, sectionX, face } = at;
  const down = (x: number, y: number): Mark => line([x, y], [x, rowY - label * 0.4], 'witness');
  const across: Mark[] = [
    down(-outside, 0),
    down(outside, 0),
    measureOf([-outside, rowY], [outside, rowY], millimetres(2 * outside), form, figure),
  ];
  const wide: Mark[] = gear.face
    ? [
        down(sectionX, -outside - label * 0.3),
        down(sectionX + face, -outside - label * 0.3),
        measureOf([sectionX, rowY], [sectionX + face, rowY], gear.face, form, figure, isShort(face, gear.face, form, figure)),
      ]
    : [text([sectionX + face / 2, rowY + figure * 0.3], 'face ?', figure)];
  if (gear.bore === null) return [...across, ...wide];
  return [...across, ...wide, ...boreMarks(gear.bore.diameter, at, { label, figure }, form)];
}

/** The bore beside the section; where its letters are longer than it is, the witness lines leave them room. */
function boreMarks(bore: Length, { sectionX, face, boreX }: Layout, { label, figure }: Letters, form: LengthForm): Mark[] {
  const r = toMm(bore) / 2;
  const start = sectionX + face + label * 0.3;
  const short = isShort(2 * r, bore, form, figure);
  const pieces = short ? [start, boreX - figure * 1.1, boreX - figure * 0.15, boreX + figure * 0.08] : [start, boreX + label * 0.4];
  const witness = (y: number): Mark[] =>
    pieces.flatMap((from, at) => (at % 2 === 0 ? [line([from, y], [pieces[at + 1] ?? from, y], 'witness')] : []));
  return [...witness(r), ...witness(-r), measureOf([boreX, -r], [boreX, r], bore, form, figure)];
}

/** Said only where the form is not the wheel's own. */
const milledWords = (gear: Gear, cutterFor: number): string => (cutterFor === gear.teeth ? '' : `, as milled with a form for ${cutterFor}`);

/** As much of the wheel's words as the width of the drawing holds; the title below says the rest. */
function headingWords(gear: Gear, width: number, size: number): string {
  const teeth = `${gear.teeth} teeth`;
  return [gearWords(gear), `${teeth}, ${pitchWords(gear.pitch)}`].find((words) => widthOfText(words, size) <= width) ?? teeth;
}

function describe(gear: Gear, outside: number, form: LengthForm): string {
  const size = dimensionText(millimetres(2 * outside), form).says;
  const face = gear.face ? `face ${dimensionText(gear.face, form).says}` : 'face not measured';
  const bore = gear.bore ? `${boreWords(gear.bore)} ${dimensionText(gear.bore.diameter, form).says}` : boreWords(null);
  const body = gear.body.known ? '' : ' Where its metal is has not been measured.';
  return `A wheel of ${gearWords(gear)}, from the front and cut through its axis: outside ${size}, ${face}, ${bore}.${body}`;
}

/** A wheel to scale: front view with its teeth, and cut through beside it; dimensions outside, bore, face. */
export function gearDrawing(gear: Gear, { shown = PHONE, form, kind = 'here', title, cutterFor = gear.teeth }: GearDrawingAs): Drawing {
  const letters = lettersFor(shown, (guess) => {
    const { low, high } = layoutOf(gear, guess, form);
    return high[0] - low[0];
  });
  const at = layoutOf(gear, letters, form);
  const heading = text(
    [at.low[0] + letters.label * 0.5, at.outside + letters.label * 1.1],
    headingWords(gear, at.high[0] - at.low[0] - letters.label, letters.label),
    letters.label,
    'start',
  );
  return {
    title: `${title ?? `Wheel of ${gear.teeth} teeth`}${milledWords(gear, cutterFor)}`,
    describes: `${describe(gear, at.outside, form)}${cutterFor === gear.teeth ? '' : ` Teeth as a form cutter made for ${cutterFor} teeth leaves them.`}`,
    low: at.low,
    high: at.high,
    toScale: true,
    marks: [
      heading,
      ...frontMarks(gear, letters, kind, cutterFor),
      ...sectionMarks(gear, { x: at.sectionX, face: at.face, letter: letters.label }, kind),
      ...dimensionMarks(gear, at, letters, form),
    ],
  };
}
