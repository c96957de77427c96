import type { Answer, Caution, Figure } from '../figure/figure.ts';
import type { Length } from '../values/length.ts';
import { contactAnswer } from './contact.sums.ts';
import { baseOf, type Flanks, normalThickness, pitchOf, rootOf, tipOf } from './flanks.formulas.ts';
import { pairAnswer } from './pair.sums.ts';
import { checkedFlanks, type ParallelGear } from './parallel.ts';
import { termsOf, toldLength } from './parallel-terms.ts';

const SDP = 'SDP/SI, Elements of Metric Gear Technology, T-46, and its internal gears (value from memory)';

/** gear: the ring. pinion: the teeth of the wheel inside it, if one is known. */
export type InternalAsked = {
  readonly gear: ParallelGear;
  readonly pinion?: number;
  readonly pinionShift?: number;
  readonly centre?: Length;
};

const CLEARANCE_OF_TIP = 1e-9;

type Terms = ReturnType<typeof termsOf>;
type Sized = (name: string, symbol: string, formula: string, size: number) => Figure;

function diameters(flanks: Flanks, terms: Terms, length: Sized): Record<string, Figure> {
  const D = terms.across('N');
  return {
    insideDiameter: length('Inside diameter, over the tips', 'Di', `${D} − 2 × ${terms.of(`(${terms.A}${terms.minusX})`)}`, tipOf(flanks)),
    pitchDiameter: length('Pitch diameter', 'D', D, pitchOf(flanks)),
    rootDiameter: length('Root diameter', 'Dr', `${D} + 2 × ${terms.of(`(${terms.B}${terms.plusX})`)}${terms.plusE}`, rootOf(flanks)),
    baseDiameter: length('Base diameter', 'Db', `${D} × cos(at)`, baseOf(flanks)),
  };
}

/** Tooth and space along the pitch circle: what a shift takes from one it gives to the other. */
function toothAndSpace(flanks: Flanks, terms: Terms, length: Sized): Record<string, Figure> {
  const shift = `2 × ${terms.of('X')} × tan(an)`;
  const [less, more] = flanks.v === 0 ? ['', ''] : [` − ${shift}`, ` + ${shift}`];
  const [half, tooth] = [terms.square('π ÷ 2'), normalThickness(flanks)];
  return {
    thickness: length('Tooth at the pitch circle, square to the teeth', 'sn', `${half}${less}`, tooth),
    space: length('Space at the pitch circle, square to the teeth', 'en', `${half}${more}`, Math.PI * flanks.mn - tooth),
  };
}

const NO_INVOLUTE: Caution = {
  name: 'Tips inside the base circle',
  says: 'The tips stand where the ring has no involute: bore them to the base circle, or shift outward.',
  weight: 'beware',
  about: 'insideDiameter',
};

function sizes(gear: ParallelGear): { figures: Record<string, Figure>; cautions: readonly Caution[] } {
  const flanks = checkedFlanks({ ...gear, ring: true });
  const terms = termsOf(gear, flanks);
  const length: Sized = (name, symbol, formula, size) => toldLength(flanks.unit, { name, symbol, formula, source: SDP }, size, terms.given);
  const inside = tipOf(flanks) < baseOf(flanks) - CLEARANCE_OF_TIP;
  return {
    figures: { ...diameters(flanks, terms, length), ...toothAndSpace(flanks, terms, length) },
    cautions: inside ? [NO_INVOLUTE] : [],
  };
}

/**
 * Every size of a ring with teeth on the inside and, with the count of its pinion, at what centres it runs, how long teeth stay in contact and
 * whether they foul in any of the three ways. Throws DomainError when the pinion has as many teeth as the ring, or more.
 * Example: 24 teeth, m 3, 20°, shift 0.5, pinion 16: inside 69, root 82.5, centres 13.168.
 */
export function internalAnswer({ gear, pinion, pinionShift, centre }: InternalAsked): Answer {
  const own = sizes(gear);
  if (pinion === undefined) return own;
  const asked = {
    gear: { ...gear, teeth: pinion, ring: false, shift: pinionShift ?? 0 },
    mate: gear.teeth,
    inRing: true,
    shift: pinionShift ?? 0,
    mateShift: gear.shift,
    ...(centre === undefined ? {} : { centre }),
  };
  const [pair, contact] = [pairAnswer(asked), contactAnswer(asked)];
  const { mateOutside, mateRoot, mateWorking, ...rest } = pair.figures;
  const { outsideDiameter, mateOutside: _, ...met } = contact.figures;
  return {
    figures: { ...own.figures, ...renamed(rest, outsideDiameter), ...met },
    cautions: [
      ...own.cautions,
      ...pair.cautions.map((one) => ({
        ...one,
        about: one.about === 'outsideDiameter' ? 'pinionOutside' : one.about === 'rootDiameter' ? 'pinionRoot' : (one.about ?? 'centre'),
      })),
      ...contact.cautions,
    ],
  };
}

/** The pinion's own diameters stand beside the ring's under names of their own. */
function renamed(figures: Readonly<Record<string, Figure>>, outside: Figure | undefined): Record<string, Figure> {
  const { outsideDiameter = outside, rootDiameter, ...others } = figures;
  return {
    ...others,
    ...(outsideDiameter ? { pinionOutside: outsideDiameter } : {}),
    ...(rootDiameter ? { pinionRoot: rootDiameter } : {}),
  };
}
