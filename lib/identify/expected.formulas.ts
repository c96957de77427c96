import { spanContactRadius, spanOver } from '../gears/base-tangent.formulas.ts';
import { type Flanks, normalThickness, pitchOf, rootOf, tipOf, transverseThickness } from '../gears/flanks.formulas.ts';
import { helixAt } from '../gears/helical.formulas.ts';
import { overPins } from '../gears/pins.formulas.ts';
import type { Candidate } from './candidates.ts';
import { BOTTOM_SPREAD_M, CENTRES_SPREAD_M, COMPOSITE_SPREAD_M, OFF_FLANK_SPREAD_M, ROOT_SPREAD_M } from './judgements.data.ts';
import type { Plain } from './readings.ts';

/** How a candidate may stand: its flanks with helix and shift, and by how much of the module neither is known. */
export type Stance = { readonly flanks: Flanks; readonly often: number; readonly shiftWide: number; readonly helixWide: number };

/**
 * What a sound wheel of this stance would read: nominal; what one inch of thinning along the pitch circle (wear) or one inch off the
 * outside (tip) does to it; and error: how far the reading may be off, with what the candidate itself leaves open.
 */
export type Expected = {
  readonly read: number;
  readonly nominal: number;
  readonly perWear: number;
  readonly perTip: number;
  readonly error: number;
};

const spanOf = (flanks: Flanks, k: number): number => spanOver(flanks, normalThickness(flanks), k);

/** False when the jaws over k teeth would reach beyond the tips. Example: 22 teeth, 8 DP, 14½°: over 4 true, over 5 false. */
export const spanTouches = (flanks: Flanks, k: number): boolean => 2 * spanContactRadius(flanks, spanOf(flanks, k)) <= tipOf(flanks);

const wide = (...parts: readonly number[]): number => Math.hypot(...parts);

function diameter(reading: Plain, { flanks, shiftWide, helixWide }: Stance, nominal: number, perTip: number, own: number): Expected {
  const byHelix = pitchOf(flanks) * Math.tan(flanks.psi) * helixWide;
  return { read: reading.read, nominal, perWear: 0, perTip, error: wide(reading.error, own, 2 * shiftWide, byHelix) };
}

function spanExpected(reading: Plain, { flanks, shiftWide, helixWide }: Stance, composite: boolean): Expected {
  const nominal = spanOf(flanks, reading.beside);
  const beyond = spanTouches(flanks, reading.beside) ? 0 : OFF_FLANK_SPREAD_M;
  const own = Math.max(beyond, composite ? COMPOSITE_SPREAD_M : 0) * flanks.mn;
  const byHelix =
    flanks.psi === 0
      ? 0
      : (spanOf({ ...flanks, psi: flanks.psi + 0.01 }, reading.beside) - spanOf(flanks, reading.beside)) * 100 * helixWide;
  const error = wide(reading.error, own, 2 * shiftWide * Math.sin(flanks.an), byHelix);
  return { read: reading.read, nominal, perWear: -Math.cos(flanks.an), perTip: 0, error };
}

/** Over pins, and what wear does to it: the slope of the reading by the thickness. A pin that falls through rests on the bottom of the space. */
function pinsExpected(reading: Plain, stance: Stance): Expected {
  const { flanks, shiftWide } = stance;
  const [st, w, little] = [transverseThickness(flanks), reading.beside, flanks.mn / 500];
  const bottom: Expected = { ...diameter(reading, stance, rootOf(flanks) + 2 * w, 0, BOTTOM_SPREAD_M * flanks.mn) };
  try {
    const nominal = overPins(flanks, st, w);
    const slope = (nominal - overPins(flanks, st - little, w)) / little;
    const error = wide(reading.error, 2 * slope * Math.tan(flanks.an) * shiftWide);
    return { ...diameter(reading, stance, nominal, 0, 0), perWear: -slope, error };
  } catch (fault) {
    if (fault instanceof RangeError) return bottom;
    throw fault;
  }
}

function centresExpected(reading: Plain, stance: Stance): Expected {
  const { flanks, shiftWide } = stance;
  const middle = ((flanks.N + reading.beside) * pitchOf(flanks)) / (2 * flanks.N) + flanks.v;
  return {
    ...diameter(reading, stance, middle, 0, CENTRES_SPREAD_M * flanks.mn),
    error: wide(reading.error, CENTRES_SPREAD_M * flanks.mn, shiftWide),
  };
}

/** What one reading of a wheel should be, were it this candidate in this stance. */
export function expected(reading: Plain, stance: Stance, { composite }: Candidate): Expected {
  const { flanks } = stance;
  const m = flanks.mn;
  switch (reading.of) {
    case 'outside':
      return diameter(reading, stance, tipOf(flanks), -1, 0);
    case 'root':
      return diameter(reading, stance, rootOf(flanks), 0, ROOT_SPREAD_M * m);
    case 'depth':
      return {
        read: reading.read,
        nominal: flanks.A + flanks.B,
        perWear: 0,
        perTip: -0.5,
        error: wide(reading.error, (ROOT_SPREAD_M * m) / 2),
      };
    case 'span':
      return spanExpected(reading, stance, composite);
    case 'centres':
      return centresExpected(reading, stance);
    case 'helix':
      return {
        read: reading.read,
        nominal: helixAt(flanks.psi, pitchOf(flanks), tipOf(flanks)),
        perWear: 0,
        perTip: 0,
        error: reading.error,
      };
    case 'over pins':
      return pinsExpected(reading, stance);
  }
}
