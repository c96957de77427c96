import { blankDrawing } from '../../lib/drawing/blank-drawing.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { gearDrawing } from '../../lib/drawing/gear-drawing.ts';
import type { Shown } from '../../lib/drawing/lettering.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { rootDiameter, toothOf, unitOfPitch } from '../../lib/gears/tooth.ts';
import { type Length, ofUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { toSvg } from '../drawing/svg.ts';
import type { Markup } from '../page.ts';
import { inOneUnit, smaller } from './on-paper.ts';
import type { Work } from './work.ts';

/** scale: "1:1", "1:2". trueScale: it carries its own check line. wide, tall: on the paper, in millimetres. */
export type PaperDrawing = {
  readonly title: string;
  readonly svg: Markup;
  readonly scale: string;
  readonly trueScale: boolean;
  readonly wide: number;
  readonly tall: number;
};

/** Letters of a label on paper, and what lettersFor makes of a width in pixels. */
const LABEL_MM = 3.2;
const LABEL_PX = 14.4;
/** Room on the first side beside the summary, and for the check line that toSvg adds. */
const ROOM = { wide: 122, tall: 168 } as const;
const CHECK_LINE = 11;
const REDUCED = [1 / 2, 1 / 4, 1 / 10] as const;

type Draw = (shown: Shown) => Drawing;
type Size = { readonly wide: number; readonly tall: number };
const sizeOf = ({ low, high }: Drawing): Size => ({ wide: high[0] - low[0], tall: high[1] - low[1] });

/** Drawn so that its letters come out right once it is made smaller. */
function reduced(draw: Draw, by: number): Drawing {
  const wanted = LABEL_MM / by;
  let wide = sizeOf(draw('paper')).wide;
  for (let step = 0; step < 6; step++) wide = sizeOf(draw({ px: (wide * LABEL_PX) / wanted })).wide;
  return smaller(draw({ px: (wide * LABEL_PX) / wanted }), by);
}

function onPaper(draw: Draw, by: number): PaperDrawing {
  const drawing = inOneUnit(by === 1 ? draw('paper') : reduced(draw, by));
  const { wide, tall } = sizeOf(drawing);
  return {
    title: drawing.title,
    svg: toSvg(drawing, { toScale: 'paper' }) as Markup,
    scale: `1:${Math.round(1 / by)}`,
    trueScale: by === 1,
    wide,
    tall: tall + (by === 1 ? CHECK_LINE : 0),
  };
}

/** The scales that fit beside the summary, the largest first; two of them, so that paper can be saved. */
function thatFit(draw: Draw): PaperDrawing[] {
  const fits = ({ wide, tall }: PaperDrawing): boolean => wide <= ROOM.wide && tall <= ROOM.tall;
  const drawn = [1, ...REDUCED].map((by) => onPaper(draw, by));
  const fitting = drawn.filter(fits).slice(0, 2);
  return fitting.length > 0 ? fitting : drawn.slice(-1);
}

/** The old root as it stands in the routing: measured, typed or worked out; else by the wheel's own system. */
function oldRootOf({ operations }: Work, old: Gear): Length {
  const found = operations.flatMap(({ figures }) => figures).find(({ key }) => key === 'oldRoot')?.shown;
  if (found && 'length' in found) return found.length;
  return ofUnit(rootDiameter(toothOf(old)), unitOfPitch(old.pitch));
}

/** The wheel, drawn inside its spare when it is cut from one, at scales that fit. None for a part that is no wheel. */
export function wheelDrawings(work: Work): PaperDrawing[] {
  const next = work.part.stored?.gear;
  if (!next) return [];
  const unit = unitOfPitch(next.pitch);
  const form: LengthForm = { unit, places: unit === 'in' ? 4 : 3 };
  const spare = work.blanks.find(({ role, thing }) => role === 'whole' && thing.kind === 'wheel')?.thing.stored?.gear;
  if (!spare) return thatFit((shown) => gearDrawing(next, { shown, form }));
  const oldRoot = oldRootOf(work, spare);
  return thatFit((shown) => blankDrawing({ old: spare, oldRoot, next }, { shown, form }));
}

/** A drawing that is to no scale, so many millimetres wide. */
export function drawnWide(draw: Draw, wide: number): PaperDrawing {
  const by = wide / sizeOf(draw('paper')).wide;
  return { ...onPaper(draw, by === 1 ? 0.999 : by), scale: '', trueScale: false };
}
