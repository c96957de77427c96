import type { Answer, AnswerTable, Caution, Figure } from '../figure/figure.ts';
import { rootDiameter, type Tooth, unitOfPitch } from '../gears/tooth.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import type { GearToCut } from './choice.ts';
import { errorWords } from './describe.ts';
import { FLY_CUTTER, RAKE, TURNING_A_CUTTER } from './tool-cautions.ts';
import { sizeGiven, toolFigure, toolTooth } from './tool-givens.ts';
import { activeFrom, discErrors, infeed, type TwoDiscs, twoDiscs } from './two-disc.formulas.ts';

/** blankWidth: of the rim of the cutter blank, null when it is as wide as the discs are apart. */
export type TwoDiscAsked = { readonly gear: GearToCut; readonly blankWidth: Length | null };
export type TwoDiscFigures = 'disc' | 'centres' | 'gap' | 'infeed' | 'off' | 'heightOfDiscs' | 'activeFrom';

const FITTED =
  'derived: the circle whose largest error against the true involute is least, from where a rack first touches it to the outside';

const figure = (tooth: Tooth, size: number, name: string, symbol: string, note: string): Figure =>
  toolFigure(tooth, size, { name, symbol, formula: '', source: FITTED, given: [], note });

function gapFigure(tooth: Tooth, { D, C }: TwoDiscs): Figure {
  return toolFigure(tooth, C - D, {
    name: 'Gap between the discs',
    symbol: 'g',
    formula: 'C − D',
    source: 'derived: two like discs side by side',
    given: [sizeGiven('C', `distance between the middles, ${tooth.unit}`, C), sizeGiven('D', `diameter of a disc, ${tooth.unit}`, D)],
    note: 'To be tried with a plug or wire between the discs.',
  });
}

function infeedFigure(tooth: Tooth, discs: TwoDiscs, width: number | null): Figure {
  const { D, C, k } = discs;
  const w = width === null || width >= C ? null : width;
  return toolFigure(tooth, infeed(discs, tooth.B, w ?? C), {
    name: 'Feed in from touching the rim of the cutter blank',
    symbol: 'i',
    formula: w === null ? 'k + B + D ÷ 2' : 'k + B + √((D ÷ 2)^2 − ((C − w) ÷ 2)^2)',
    source: 'derived: the rim is the tip of the cutter, which reaches the root of the wheel',
    given: [
      sizeGiven('k', `middles of the discs above the pitch line, ${tooth.unit}`, k),
      sizeGiven('B', `dedendum, ${tooth.unit}`, tooth.B, 'table'),
      sizeGiven('D', `diameter of a disc, ${tooth.unit}`, D),
      ...(w === null
        ? []
        : [
            sizeGiven('C', `distance between the middles, ${tooth.unit}`, C),
            sizeGiven('w', `width of the rim, ${tooth.unit}`, w, 'typed'),
          ]),
    ],
    note:
      w === null
        ? 'For a rim as wide as the discs are apart; a narrower rim is touched later.'
        : 'Both discs touch the rim’s edges at once.',
  });
}

function errorsTable(tooth: Tooth, discs: TwoDiscs): AnswerTable {
  const rows = discErrors(tooth, discs, 8).toReversed();
  return {
    title: 'What the arcs leave or take, square to the flank',
    unit: tooth.unit,
    heads: ['Above the pitch line', 'Error'],
    rows: rows.map(([error, y]) => [{ length: ofUnit(y, tooth.unit) }, { length: ofUnit(error, tooth.unit) }]),
  };
}

/** Where the discs' middles stand above the root, the form grows wider again below them. */
function tooWideBelow(tooth: Tooth, { k }: TwoDiscs): Caution[] {
  if (k <= -tooth.B) return [];
  return [
    {
      name: 'below the middles',
      says: `Below the middles of the discs, ${errorWords(ofUnit(k + tooth.B, tooth.unit), tooth.unit).replace('+', '')} from the tip, the arcs spread again: take the cutter’s tip down straight there.`,
      weight: 'beware',
      about: 'heightOfDiscs',
    },
  ];
}

/**
 * Two round discs in a holder that turn a cutter blank to nearly the form of a wheel's space: their diameter, distance and feed, and what
 * the arcs are off the true flank. Throws DomainError when no flank is left or the blank passes between the discs.
 */
export function twoDiscAnswer({ gear, blankWidth }: TwoDiscAsked): Answer<TwoDiscFigures> {
  const tooth = toolTooth(gear);
  const discs = twoDiscs(tooth);
  const unit = unitOfPitch(gear.pitch);
  const width = blankWidth === null ? null : inUnit(blankWidth, unit);
  const off = ofUnit(discs.off, unit);
  return {
    figures: {
      disc: figure(tooth, discs.D, 'Diameter of each disc', 'D', 'Hardened, the top face ground, no rake.'),
      centres: figure(tooth, discs.C, 'Distance between their middles', 'C', 'Both on one line square to the infeed.'),
      gap: gapFigure(tooth, discs),
      infeed: infeedFigure(tooth, discs, width),
      off: figure(tooth, discs.off, 'Error of the arcs at the worst', 'e', 'Square to the flank, as much too full as too thin.'),
      heightOfDiscs: figure(tooth, discs.k, 'Middles of the discs above the pitch line', 'k', 'Below it: minus.'),
      activeFrom: figure(
        tooth,
        activeFrom(tooth) - rootDiameter(tooth) / 2,
        'Flank followed from so far above the root',
        's',
        'Lower down nothing touches; corners are rounded by hand.',
      ),
    },
    cautions: [...tooWideBelow(tooth, discs), TURNING_A_CUTTER, FLY_CUTTER, RAKE],
    says: `An arc stands in for the involute: off by up to ${errorWords(off, unit).replace('+', '')} either way, shown below. Plus: metal off that should be there. Minus: metal left.`,
    tables: [errorsTable(tooth, discs)],
  };
}
