import { remembered } from '../../db/remembered.ts';
import { sizesOf } from '../../lib/blanks/blank-sizes.ts';
import { type BlankProposal, blankDrawing } from '../../lib/drawing/blank-drawing.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { gearDrawing } from '../../lib/drawing/gear-drawing.ts';
import type { Shown } from '../../lib/drawing/lettering.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { toSvg } from '../drawing/svg.ts';
import type { Markup } from '../page.ts';
import { inOneUnit, smaller } from './on-paper.ts';
import type { Work } from './work.ts';

/** A drawing as it goes on paper. scale: "1:1", "1:2"; trueScale: it carries its own check line. */
export type PaperDrawing = { readonly svg: Markup; readonly scale: string; readonly trueScale: boolean };

/** A drawing before it is inked. wide, tall: on the paper, in millimetres. */
export type Sketch = { readonly drawing: Drawing; readonly by: number; readonly wide: number; readonly tall: number };

/** Letters of a label on paper, and how high a label is on a screen. */
const LABEL_MM = 3.2;
const LABEL_PX = 14.4;
/** Room on the first side beside the summary, and for the check line that goes under a drawing of true size. */
const ROOM = { wide: 122, tall: 168 } as const;
const CHECK_LINE = 11;
const REDUCED = [1 / 2, 1 / 4, 1 / 10] as const;

type Draw = (shown: Shown) => Drawing;
const wideOf = ({ low, high }: Drawing): number => high[0] - low[0];

/** Drawn with letters so large that they come out right once all is made smaller. Letters widen the drawing a little: so twice. */
function reduced(draw: Draw, plain: Drawing, by: number): Drawing {
  const pxFor = (drawing: Drawing): number => (wideOf(drawing) * LABEL_PX * by) / LABEL_MM;
  return smaller(draw({ px: pxFor(draw({ px: pxFor(plain) })) }), by);
}

function sketch(draw: Draw, plain: Drawing, by: number): Sketch {
  const drawing = inOneUnit(by === 1 ? plain : reduced(draw, plain, by));
  const { low, high } = drawing;
  return { drawing, by, wide: high[0] - low[0], tall: high[1] - low[1] + (by === 1 ? CHECK_LINE : 0) };
}

const ink = ({ drawing, by }: Sketch): PaperDrawing => ({
  svg: toSvg(drawing, { toScale: 'paper' }) as Markup,
  scale: `1:${Math.round(1 / by)}`,
  trueScale: by === 1,
});

const inkedBefore = new WeakMap<Sketch, PaperDrawing>();

/** A sketch as it goes on paper; each is inked once. */
export function inked(one: Sketch): PaperDrawing {
  const done = inkedBefore.get(one) ?? ink(one);
  inkedBefore.set(one, done);
  return done;
}

/** The scales that fit beside the summary, the largest first; two of them, so that paper can be saved. */
function thatFit(draw: Draw): Sketch[] {
  const plain = draw('paper');
  const fitting: Sketch[] = [];
  for (const by of [1, ...REDUCED]) {
    const one = sketch(draw, plain, by);
    if ((one.wide <= ROOM.wide && one.tall <= ROOM.tall) || by === REDUCED[2]) fitting.push(one);
    if (fitting.length === 2) break;
  }
  return fitting;
}

/** The old root as it stands in the routing: measured, typed or worked out; else by the wheel's own system. */
function oldRootOf({ operations }: Work, old: Gear): Pick<BlankProposal, 'oldRoot' | 'notMeasured'> {
  const found = operations.flatMap(({ figures }) => figures).find(({ key }) => key === 'oldRoot');
  if (!found || !('length' in found.shown)) return { oldRoot: sizesOf(old).root, notMeasured: true };
  return { oldRoot: found.shown.length, notMeasured: found.shownFrom === 'worked out' && !found.figure.name.endsWith(', measured') };
}

const keptSketches = remembered<Sketch[]>();

/** The wheel, drawn inside its spare when it is cut from one, at scales that fit. None for a part that is no wheel. */
export function wheelSketches(work: Work): Sketch[] {
  const next = work.part.stored?.gear;
  if (!next) return [];
  const unit = unitOfPitch(next.pitch);
  const form: LengthForm = { unit, places: unit === 'in' ? 3 : 2 };
  const spare = work.blanks.find(({ role, thing }) => role === 'whole' && thing.kind === 'wheel')?.thing.stored?.gear;
  if (!spare) return keptSketches(JSON.stringify([form, next]), () => thatFit((shown) => gearDrawing(next, { shown, form })));
  const fine: LengthForm = { unit, places: unit === 'in' ? 4 : 3 };
  const asked = { old: spare, next, ...oldRootOf(work, spare) };
  return keptSketches(JSON.stringify([fine, asked]), () => thatFit((shown) => blankDrawing(asked, { shown, form: fine })));
}

/** A drawing that is to no scale, so many millimetres wide. */
export function drawnWide(draw: Draw, wide: number): PaperDrawing {
  const plain = draw('paper');
  const by = wide / wideOf(plain);
  const drawing = inOneUnit(reduced(draw, plain, by));
  return { svg: toSvg(drawing, { toScale: 'paper' }) as Markup, scale: '', trueScale: false };
}

/** The same, so many millimetres tall, and no wider than the paper. */
export function drawnTall(draw: Draw, tall: number): PaperDrawing {
  const { low, high } = draw('paper');
  return drawnWide(draw, Math.min(WIDEST, ((high[0] - low[0]) * tall) / (high[1] - low[1])));
}
const WIDEST = 180;
