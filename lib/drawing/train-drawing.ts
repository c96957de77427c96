import { circle, type Drawing, line, type Mark, outline, type Point, text } from './drawing.ts';
import { type Letters, lettersFor, PHONE, type Shown, widthOfText } from './lettering.ts';
import type { DrawnWheel } from './train-layout.ts';

/** A slot of a quadrant as a line from its nearest to its farthest stud. */
type DrawnSlot = { readonly from: Point; readonly to: Point };

type TrainShown = {
  readonly title: string;
  /** Pitch diameter in millimetres for each tooth. */
  readonly moduleMm: number;
  /** Whether the middles are where the studs really come to stand. */
  readonly toScale?: boolean;
  readonly collarMm?: number;
  readonly slots?: readonly DrawnSlot[];
  /** Below the picture, where the middles are not where studs stand. */
  readonly note?: string;
  readonly shown?: Shown;
};

const pitchRadius = (teeth: number, moduleMm: number): number => (teeth * moduleMm) / 2;
const outsideRadius = (teeth: number, moduleMm: number): number => ((teeth + 2) * moduleMm) / 2;

const collarOf = ({ moduleMm, collarMm = moduleMm * 5 }: TrainShown): number => collarMm;
/** Half of what an arrow spans, in radians. */
const HALF_ARROW = 0.5;
/** How far above the middle of a shaft an arrow is clear of its name: at its ends, which hang lowest, by half a letter. */
const aboveName = (shown: TrainShown, { label }: Letters): number => (collarOf(shown) / 2 + label * 1.9) / Math.cos(HALF_ARROW);

const shaftsOf = (wheels: readonly DrawnWheel[]): DrawnWheel[][] => {
  const names = [...new Set(wheels.map(({ shaft }) => shaft))];
  return names.map((name) => wheels.filter(({ shaft }) => shaft === name));
};

/** A shaft that is called an idler need not be said to carry one. */
const namedSo = ({ shaft }: DrawnWheel): boolean => shaft.startsWith('idler');

/** Which wheels of a shaft lie nearer: written only where there are two. */
function placeWords(wheel: DrawnWheel, onShaft: readonly DrawnWheel[]): string {
  if (wheel.idler) return namedSo(wheel) ? '' : ' idler';
  if (onShaft.length < 2) return '';
  return wheel.plane === Math.max(...onShaft.map(({ plane }) => plane)) ? ' front' : ' behind';
}

/** An arrow stands within its wheel where there is room over the name, else outside it: never along the rim. */
function arrowRadius(teeth: number, shown: TrainShown, letters: Letters): number {
  const [within, clear] = [pitchRadius(teeth, shown.moduleMm) - letters.label * 0.9, aboveName(shown, letters)];
  return within >= clear ? within : Math.max(clear, outsideRadius(teeth, shown.moduleMm) + letters.label * 0.6);
}

/** Bent arrow over the top of the widest wheel of a shaft, the way it turns. */
function arrowMarks(onShaft: readonly DrawnWheel[], shown: TrainShown, letters: Letters): Mark[] {
  const [first] = onShaft;
  if (!first) return [];
  const radius = arrowRadius(Math.max(...onShaft.map(({ teeth }) => teeth)), shown, letters);
  const way = first.clockwise ? -1 : 1;
  const on = (angle: number, r: number): Point => [first.x + r * Math.cos(angle), first.y + r * Math.sin(angle)];
  const [begin, end] = [Math.PI / 2 - way * HALF_ARROW, Math.PI / 2 + way * HALF_ARROW];
  const bend = Array.from({ length: 13 }, (_, n): Point => on(begin + ((end - begin) * n) / 12, radius));
  const head = letters.label * 0.55;
  const back = end - (way * head * 1.6) / Math.max(radius, head);
  return [
    { draw: 'outline', points: bend, closed: false, kind: 'here' },
    outline([on(end, radius), on(back, radius + head * 0.6), on(back, radius - head * 0.6)], 'here'),
  ];
}

function shaftMarks(onShaft: readonly DrawnWheel[], shown: TrainShown, letters: Letters): Mark[] {
  const [first] = onShaft;
  const collarMm = collarOf(shown);
  if (!first) return [];
  const middle: Point = [first.x, first.y];
  const counts = onShaft.map(({ teeth }) => teeth).join(' + ');
  const foot = first.y - collarMm / 2 - letters.label * 1.2;
  return [
    circle(middle, collarMm / 2, 'edge'),
    line([first.x - collarMm / 4, first.y], [first.x + collarMm / 4, first.y], 'centre'),
    line([first.x, first.y - collarMm / 4], [first.x, first.y + collarMm / 4], 'centre'),
    text([first.x, first.y + collarMm / 2 + letters.label * 0.3], first.shaft, letters.label),
    text([first.x, foot], counts, letters.label),
  ];
}

/** A slot, and its number beyond its far end. */
const slotMarks = ({ from, to }: DrawnSlot, n: number, letters: Letters): Mark[] => [
  line(from, to, 'edge'),
  text(beyond({ from, to }, letters.label), `slot ${n + 1}`, letters.label),
];

/** Where the name of a slot stands, its foot: half a letter past the end, above or below as the slot runs. */
function beyond({ from, to }: DrawnSlot, size: number): Point {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [x, y] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  return [to[0] + x * widthOfText('slot 0', size) * 0.6, to[1] + y * size - size * 0.4];
}

const wheelMarks = ({ teeth, x, y }: DrawnWheel, moduleMm: number): Mark[] => [
  circle([x, y], outsideRadius(teeth, moduleMm), 'here'),
  circle([x, y], pitchRadius(teeth, moduleMm), 'centre'),
];

/** What stands below the picture: of a shaft with two wheels which lies nearer, and which wheel is an idler. */
const legendOf = (shafts: readonly (readonly DrawnWheel[])[], { note }: TrainShown): string[] => [
  ...shafts
    .filter((onShaft) => onShaft.length > 1 || onShaft.some((wheel) => wheel.idler && !namedSo(wheel)))
    .map((onShaft) => `${onShaft[0]?.shaft}: ${onShaft.map((wheel) => `${wheel.teeth}${placeWords(wheel, onShaft)}`).join(', ')}`),
  ...(note ? [note] : []),
];

const LEGEND_LINE = 1.3;

function describe(shafts: readonly (readonly DrawnWheel[])[], { note }: TrainShown): string {
  const each = shafts.map((onShaft) => {
    const wheels = onShaft.map((wheel) => `${wheel.teeth}${placeWords(wheel, onShaft)}`).join(' and ');
    return `${onShaft[0]?.shaft}: ${wheels}, turning ${onShaft[0]?.clockwise ? 'clockwise' : 'anticlockwise'}`;
  });
  return `A train of wheels, from the source on. ${each.join('; ')}.${note ? ` Drawn ${note}.` : ''}`;
}

const roomForName = (slot: DrawnSlot, { label }: Letters): Point[] => {
  const [[x, y], half] = [beyond(slot, label), widthOfText('slot 0', label) / 2];
  return [
    [x - half, y - label * 0.3],
    [x + half, y + label],
  ];
};

type Edges = { readonly low: Point; readonly high: Point };

/** What the wheels and slots take up, with room for the words of narrow shafts. */
function edgesOf(wheels: readonly DrawnWheel[], shown: TrainShown, letters: Letters): Edges {
  const { moduleMm, slots = [] } = shown;
  const down = collarOf(shown) / 2 + letters.label * 1.5;
  const boxes = wheels.map(({ teeth, x, y, shaft }) => {
    const [r, up] = [outsideRadius(teeth, moduleMm), arrowRadius(teeth, shown, letters) + letters.label * 0.4];
    const wide = Math.max(r, widthOfText(shaft, letters.label) / 2, widthOfText('000 + 000', letters.label) / 2);
    return { low: [x - wide, y - Math.max(r, down)] as const, high: [x + wide, y + Math.max(r, up)] as const };
  });
  const points = [
    ...boxes.flatMap(({ low, high }) => [low, high]),
    ...slots.flatMap((slot) => [slot.from, slot.to, ...roomForName(slot, letters)]),
  ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const legend = legendOf(shaftsOf(wheels), shown).length * letters.label * LEGEND_LINE;
  return { low: [Math.min(...xs) - 2, Math.min(...ys) - 2 - legend], high: [Math.max(...xs) + 2, Math.max(...ys) + 2] };
}

/** A train of change wheels as seen from the end of the machine: which wheel is on which shaft, and which way each turns. */
export function trainDrawing(wheels: readonly DrawnWheel[], shown: TrainShown): Drawing {
  const letters = lettersFor(shown.shown ?? PHONE, (tried) => {
    const { low, high } = edgesOf(wheels, shown, tried);
    return high[0] - low[0];
  });
  const shafts = shaftsOf(wheels);
  const edges = edgesOf(wheels, shown, letters);
  const legend = legendOf(shafts, shown);
  const below = (n: number): number => edges.low[1] + (legend.length - 1 - n) * letters.label * LEGEND_LINE + letters.label * 0.3;
  return {
    title: shown.title,
    describes: describe(shafts, shown),
    ...edges,
    toScale: shown.toScale ?? false,
    marks: [
      ...(shown.slots ?? []).flatMap((slot, n) => slotMarks(slot, n, letters)),
      ...wheels.flatMap((wheel) => wheelMarks(wheel, shown.moduleMm)),
      ...shafts.flatMap((onShaft) => [...shaftMarks(onShaft, shown, letters), ...arrowMarks(onShaft, shown, letters)]),
      ...legend.map((says, n) => text([edges.low[0] + letters.label * 0.3, below(n)], says, letters.label, 'start')),
    ],
  };
}
