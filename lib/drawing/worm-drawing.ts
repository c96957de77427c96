import { moduleOf, toothOf } from '../gears/tooth.ts';
import { inUnit } from '../values/length.ts';
import type { WormAsked } from '../worm/asked.ts';
import { throatDiameter, wormCentre } from '../worm/worm.formulas.ts';
import { circle, type Drawing, line, type Mark, outline, type Point, text } from './drawing.ts';
import { lettersFor, PHONE } from './lettering.ts';

const MM_PER_INCH = 25.4;
/** Threads drawn; a worm is mostly four to six axial pitches long. */
const PITCHES = 5;

type Thread = { readonly p: number; readonly a: number; readonly A: number; readonly B: number };

/** One side of the worm in axial section: a rack's straight flanks from −w to w, at height r of the pitch line, outward. */
function threads({ p, a, A, B }: Thread, r: number): Point[] {
  const [top, bottom] = [p / 4 - A * Math.tan(a), p / 4 + B * Math.tan(a)];
  return Array.from({ length: PITCHES }, (_, i) => (i - (PITCHES - 1) / 2) * p).flatMap((x): Point[] => [
    [x - bottom, r - B],
    [x - top, r + A],
    [x + top, r + A],
    [x + bottom, r - B],
  ]);
}

/**
 * Worm in axial section over its wheel, seen along the wheel's axis, to scale. A thread below lies half a pitch on for one start, a whole
 * one for two; the wheel is shown by its throat, pitch and root circles.
 */
export function wormDrawing(asked: WormAsked): Drawing {
  const tooth = toothOf(asked);
  const mm = tooth.unit === 'in' ? MM_PER_INCH : 1;
  const [m, d] = [moduleOf(asked.pitch) * mm, inUnit(asked.wormPitchDiameter, tooth.unit) * mm];
  const [A, B] = [tooth.A * mm, tooth.B * mm];
  const thread = { p: Math.PI * m, a: tooth.a, A, B };
  const D = asked.teeth * m;
  const C = wormCentre(d, D);
  const upper = threads(thread, d / 2);
  const lower = threads(thread, d / 2).map(([x, y]): Point => [x + (asked.starts * thread.p) / 2, -y]);
  const worm = [...upper, ...lower.reverse()].map(([x, y]): Point => [x, y + C]);
  const half = (PITCHES * thread.p) / 2 + Math.abs(asked.starts * thread.p) / 2;
  const reach = Math.max(D / 2 + A, half * 1.2);
  const letter = lettersFor(PHONE, ({ label }) => 2 * (reach + label)).label;
  const marks: Mark[] = [
    outline(worm, 'here'),
    { draw: 'hatch', rings: [worm], kind: 'section' },
    circle([0, 0], throatDiameter(D, A) / 2, 'here'),
    circle([0, 0], D / 2, 'centre'),
    circle([0, 0], D / 2 - B, 'edge'),
    line([-half * 1.15, C], [half * 1.15, C], 'centre'),
    line([0, -letter], [0, letter], 'centre'),
    line([-letter, 0], [letter, 0], 'centre'),
    text([0, letter * 1.6], `${asked.teeth} teeth`, letter),
    text([0, C + d / 2 + A + letter * 0.7], `${asked.starts} ${asked.starts === 1 ? 'start' : 'starts'}, ${asked.hand}-hand`, letter),
  ];
  return {
    title: 'Worm and wheel',
    describes: `Worm of ${asked.starts} ${asked.starts === 1 ? 'start' : 'starts'} in section over its wheel of ${asked.teeth} teeth, to scale.`,
    low: [-reach - letter, -D / 2 - A - letter],
    high: [reach + letter, C + d / 2 + A + letter * 3],
    toScale: true,
    marks,
  };
}
