import type { Gear } from '../gears/gear.ts';
import { type Length, millimetres, toMm } from '../values/length.ts';
import type { LengthForm } from '../values/print.ts';
import { circle, type Drawing, line, type Mark, outline, text } from './drawing.ts';
import { dimensionText, type Letters, lettersFor, PHONE, type Shown } from './lettering.ts';
import { boreOutline, thinned, wheelOutline, wheelRadii } from './wheel-outline.ts';

/**
 * old: the spare as it lies there; oldRoot: its root diameter, measured or worked out; next: the gear to be cut from it.
 * notMeasured: says so under the old root, where the drawing is worked to.
 */
export type BlankProposal = { readonly old: Gear; readonly oldRoot: Length; readonly next: Gear; readonly notMeasured?: boolean };
export type BlankDrawingAs = { readonly shown?: Shown; readonly form: LengthForm };

/** under: what stands under the size, in place of the other unit. */
type Row = { readonly name: string; readonly radius: number; readonly under?: string };

function rowsOf({ old, oldRoot, next, notMeasured = false }: BlankProposal): Row[] {
  return [
    { name: 'new outside', radius: wheelRadii(next).outside },
    { name: 'old root', radius: toMm(oldRoot) / 2, ...(notMeasured ? { under: 'not measured' } : {}) },
    { name: 'old outside', radius: wheelRadii(old).outside },
  ];
}

const rowY = (largest: number, place: number, { figure }: Letters): number => -largest - figure * (2 + 2.6 * place);

/** One diameter under the wheel, smallest nearest. */
function rowMarks(rows: readonly Row[], letters: Letters, form: LengthForm): Mark[] {
  const largest = Math.max(...rows.map(({ radius }) => radius));
  return [...rows]
    .sort((a, b) => a.radius - b.radius)
    .flatMap(({ name, radius, under }, place): Mark[] => {
      const y = rowY(largest, place, letters);
      const { says, also } = dimensionText(millimetres(2 * radius), form);
      const drop = (x: number): Mark => line([x, 0], [x, y - letters.label * 0.4], 'witness');
      return [
        drop(-radius),
        drop(radius),
        { draw: 'dimension', from: [-radius, y], to: [radius, y], says: `${name} ${says}`, also: under ? '' : also, size: letters.figure },
        ...(under ? [text([0, y - letters.figure * 0.84], under, letters.figure * 0.8)] : []),
      ];
    });
}

function describe({ old, next }: BlankProposal, rows: readonly Row[], form: LengthForm): string {
  const size = ({ name, radius, under }: Row): string =>
    `${name} ${dimensionText(millimetres(2 * radius), form).says}${under ? ` (${under})` : ''}`;
  const sizes = rows.map(size).join(', ');
  return `The wheel of ${next.teeth} teeth drawn inside the spare of ${old.teeth}, the metal to come off hatched: ${sizes}.`;
}

/** A proposed blank: the spare's old outline, the new wheel inside it, what comes off hatched between them, the old roots as a circle. */
export function blankDrawing(proposal: BlankProposal, { shown = PHONE, form }: BlankDrawingAs): Drawing {
  const { old, oldRoot, next } = proposal;
  const rows = rowsOf(proposal);
  const largest = Math.max(...rows.map(({ radius }) => radius));
  const half = (letters: Letters): number => largest + letters.label * 0.8;
  const letters = lettersFor(shown, (guess) => 2 * half(guess));
  const seen = letters.label / 150;
  const [was, becomes] = [thinned(wheelOutline(old), seen), thinned(wheelOutline(next), seen)];
  const bore = next.bore ?? old.bore;
  const hole: Mark = bore ? outline(boreOutline(bore), 'here') : text([0, -letters.label * 0.75], '?', letters.label * 2);
  return {
    title: `Blank for ${next.teeth} teeth from a spare of ${old.teeth}`,
    describes: describe(proposal, rows, form),
    low: [-half(letters), rowY(largest, rows.length - 1, letters) - letters.label * 1.6],
    high: [half(letters), largest + letters.label * 0.8],
    toScale: true,
    marks: [
      { draw: 'hatch', rings: [was, becomes], kind: 'metal off' },
      ...rowMarks(rows, letters, form),
      circle([0, 0], toMm(oldRoot) / 2, 'edge'),
      outline(was, 'old outline'),
      outline(becomes, 'here'),
      hole,
      ...(bore ? [line([-largest / 12, 0], [largest / 12, 0], 'centre'), line([0, -largest / 12], [0, largest / 12], 'centre')] : []),
    ],
  };
}
