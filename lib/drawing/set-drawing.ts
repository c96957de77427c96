import type { Gear } from '../gears/gear.ts';
import { COARSE, FINE, type Steps } from '../gears/profile.formulas.ts';
import { circle, type Drawing, type LineKind, line, type Mark, moved, outline, type Point, roundOf, text } from './drawing.ts';
import { type Letters, lettersFor, PHONE, type Shown, widthOfText } from './lettering.ts';
import { boreOutline, thinned, wheelOutline, wheelRadii } from './wheel-outline.ts';

type WheelState = 'here' | 'missing' | 'spare' | 'waits';

/** doubtful: something about it was never measured. becomes: the gear that this spare is proposed for. */
export type PegWheel = { readonly gear: Gear; readonly state: WheelState; readonly doubtful: boolean; readonly becomes?: Gear };

/** perRow: about how many wheels of middling size hang side by side; 4 suits a phone, 12 a wide screen. */
export type SetDrawingAs = { readonly shown?: Shown; readonly perRow?: number; readonly name: string };

type Hung = { readonly wheel: PegWheel; readonly radius: number; readonly x: number };
type Row = { readonly hung: readonly Hung[]; readonly radius: number };

const radiusOf = (wheel: PegWheel): number => wheelRadii(wheel.gear).outside;

/** Room for a wheel and its figure on the peg, whichever is wider. */
const roomFor = (wheel: PegWheel, { label }: Letters): number =>
  Math.max(2 * radiusOf(wheel), widthOfText(countWords(wheel), label)) + label * 0.5;

/** Hangs the wheels side by side in their order; a new peg whenever the width is used up, and for the spares. */
function hang(wheels: readonly PegWheel[], width: number, letters: Letters): Row[] {
  const rows: PegWheel[][] = [];
  let [used, onSparePeg] = [Number.POSITIVE_INFINITY, false];
  for (const wheel of wheels) {
    const room = roomFor(wheel, letters);
    const isSpare = wheel.state === 'spare';
    if (used + room > width || isSpare !== onSparePeg) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)?.push(wheel);
    used += room;
    onSparePeg = isSpare;
  }
  return rows.map((row) => spread(row, letters));
}

function spread(row: readonly PegWheel[], letters: Letters): Row {
  let x = 0;
  const hung = row.map((wheel): Hung => {
    const room = roomFor(wheel, letters);
    x += room;
    return { wheel, radius: radiusOf(wheel), x: x - room / 2 };
  });
  return { hung, radius: Math.max(...row.map(radiusOf)) };
}

/** Wide enough for the largest wheel and for about so many of middling size. */
function widthFor(wheels: readonly PegWheel[], perRow: number): number {
  const radii = wheels.map(radiusOf);
  const mean = radii.reduce((sum, r) => sum + r, 0) / wheels.length;
  const all = radii.reduce((sum, r) => sum + 2.3 * r, 0);
  return Math.max(2.3 * Math.max(...radii), Math.min(2.3 * mean * perRow, all * 1.05));
}

/** The count stands in the wheel if it fits between bore and roots, else below it; a proposed blank says what it becomes: 31 → 22. */
const countWords = ({ gear, becomes }: PegWheel): string => (becomes ? `${gear.teeth}\u2009→\u2009${becomes.teeth}` : String(gear.teeth));

function countFits(wheel: PegWheel, { label }: Letters): boolean {
  const { root } = wheelRadii(wheel.gear);
  return !wheel.becomes && root - boreRadius(wheel, label) > label * 1.25 && widthOfText(countWords(wheel), label) < 1.3 * root;
}

function countMarks({ wheel, radius, x }: Hung, y: number, letters: Letters): Mark[] {
  const { label } = letters;
  const within = y - (boreRadius(wheel, label) + wheelRadii(wheel.gear).root) / 2 - label * 0.36;
  return [text([x, countFits(wheel, letters) ? within : y - radius - label * 1.05], countWords(wheel), label)];
}

const boreRadius = (wheel: PegWheel, label: number): number =>
  wheel.doubtful || !wheel.gear.bore ? label * 0.6 : Math.max(...boreOutline(wheel.gear.bore).map(([px, py]) => Math.hypot(px, py)));

/** What stands there is drawn with its teeth; what does not (missing, or an old outline to be turned off) as circles. */
function wheelMarks({ wheel, radius, x }: Hung, y: number, { label }: Letters): Mark[] {
  const { gear, state, doubtful, becomes } = wheel;
  const at: Point = [x, y];
  const seen = label / 40;
  const steps = (of: Gear): Steps => (wheelRadii(of).outside - wheelRadii(of).root > label ? FINE : COARSE);
  const toothed = (of: Gear): Point[] => moved(thinned(wheelOutline(of, steps(of)), seen), at);
  const hole: Mark[] =
    doubtful || !gear.bore
      ? [text([x, y - label * 0.36], '?', label)]
      : [outline(moved(thinned(boreOutline(gear.bore), seen), at), holeKind(state))];
  if (state === 'missing') return [circle(at, radius, state), circle(at, wheelRadii(gear).root, state), ...hole];
  if (!becomes) return [outline(toothed(gear), state), ...hole];
  const inside = toothed(becomes);
  const rings = [moved(roundOf(radius), at), inside];
  return [{ draw: 'hatch', rings, kind: 'metal off' }, circle(at, radius, 'old outline'), outline(inside, 'here'), ...hole];
}

/** Bores are small here: thin, unless it is dashes that say the state. */
const holeKind = (state: WheelState): LineKind => (state === 'here' ? 'edge' : state);

/** The peg: a thin line behind the wheels, drawn only where no wheel covers it. */
function pegMarks(row: Row, y: number, width: number): Mark[] {
  const marks: Mark[] = [];
  let from = 0;
  for (const { radius, x } of row.hung) {
    if (x - radius > from) marks.push(line([from, y], [x - radius, y], 'witness'));
    from = x + radius;
  }
  return from < width ? [...marks, line([from, y], [width, y], 'witness')] : marks;
}

type KeyEntry = { readonly kind: LineKind; readonly says: string };

function keyOf(wheels: readonly PegWheel[]): KeyEntry[] {
  const count = (state: WheelState): number => wheels.filter((wheel) => wheel.state === state && !wheel.becomes).length;
  const states: [LineKind, number][] = [
    ['here', count('here')],
    ['missing', count('missing')],
    ['spare', count('spare')],
    ['waits', count('waits')],
    ['old outline', wheels.filter(({ becomes }) => becomes).length],
  ];
  return states.filter(([, n]) => n > 0).map(([kind, n]) => ({ kind, says: `${n} ${kind === 'old outline' ? 'to be cut down' : kind}` }));
}

/** Under the pegs, which line means what, as many side by side as fit. */
function keyMarks(entries: readonly KeyEntry[], top: number, width: number, { label }: Letters): { marks: Mark[]; low: number } {
  let [x, y] = [0, top - label];
  const marks: Mark[] = [];
  for (const { kind, says } of entries) {
    const room = label * 3.4 + widthOfText(says, label);
    if (x > 0 && x + room > width) [x, y] = [0, y - label * 1.6];
    marks.push(line([x, y + label * 0.32], [x + label * 2.6, y + label * 0.32], kind), text([x + label * 3, y], says, label, 'start'));
    x += room + label * 0.8;
  }
  return { marks, low: y - label * 0.6 };
}

function describe(name: string, wheels: readonly PegWheel[]): string {
  const list = (state: WheelState): string => {
    const counts = wheels.filter((wheel) => wheel.state === state && !wheel.becomes).map(({ gear }) => gear.teeth);
    return counts.length ? ` ${state}: ${counts.join(', ')}.` : '';
  };
  const cut = wheels.flatMap(({ gear, becomes }) => (becomes ? [`${becomes.teeth} from ${gear.teeth}`] : []));
  const doubtful = wheels.filter((wheel) => wheel.doubtful).map(({ gear }) => gear.teeth);
  const tail = `${cut.length ? ` To be cut down: ${cut.join(', ')}.` : ''}${doubtful.length ? ` Not all measured: ${doubtful.join(', ')}.` : ''}`;
  return `The wheels of ${name} side by side to one scale.${list('here')}${list('missing')}${list('spare')}${list('waits')}${tail}`;
}

/** All wheels of a set to one scale, hung on pegs in the order given; what belongs and is missing is drawn in its place, dashed. */
export function setDrawing(wheels: readonly PegWheel[], { shown = PHONE, perRow = 4, name }: SetDrawingAs): Drawing {
  const width = wheels.length ? widthFor(wheels, perRow) : 100;
  const letters = lettersFor(shown, () => width);
  const marks: Mark[] = [];
  let y = 0;
  for (const row of hang(wheels, width, letters)) {
    y -= row.radius;
    marks.push(...pegMarks(row, y, width), ...row.hung.flatMap((one) => [...wheelMarks(one, y, letters), ...countMarks(one, y, letters)]));
    y -= row.radius + letters.label * (row.hung.every(({ wheel }) => countFits(wheel, letters)) ? 0.5 : 1.45);
  }
  const key = keyMarks(keyOf(wheels), y, width, letters);
  const margin = letters.label * 0.3;
  return {
    title: `Wheels of ${name}`,
    describes: describe(name, wheels),
    low: [-margin, key.low],
    high: [width + margin, margin],
    toScale: true,
    marks: [...marks, ...key.marks],
  };
}
