import { usableFlank } from './base-tangent.formulas.ts';
import { baseOf, type Flanks, pitchOf, rootOf, tipOf, transverseThickness } from './flanks.formulas.ts';
import { involuteAtPin, pinCircle, pinContactRadius, pinTouchingAt } from './pins.formulas.ts';
import { METRIC_PINS, WIRE_SERIES } from './wires.data.ts';

/** How a pin lies in a space of this gear; only the first can be measured with. */
export type PinLies =
  | 'on the flank'
  | 'falls through'
  | 'bottoms in the root'
  | 'touches below the flank'
  | 'sits on the tips'
  | 'hidden below the tips';

/** Whether a pin as thick as w stands clear of the root and out of (for a ring: in past) the tips. */
function clear(flanks: Flanks, Rc: number, w: number): PinLies | null {
  const [root, tip] = [rootOf(flanks) / 2, tipOf(flanks) / 2];
  if (flanks.ring ? Rc + w / 2 >= root : Rc - w / 2 <= root) return 'bottoms in the root';
  if (flanks.ring ? Rc - w / 2 >= tip : Rc + w / 2 <= tip) return 'hidden below the tips';
  return null;
}

/** Where a pin of diameter w touches. st: transverse thickness at the standard pitch circle. Lengths in the unit of the gear. */
export function pinLies(flanks: Flanks, st: number, w: number): PinLies {
  if (!(involuteAtPin(flanks, st, w) > 0)) return flanks.ring ? 'sits on the tips' : 'falls through';
  const Rc = pinCircle(flanks, st, w);
  const along = Math.sqrt(Math.max(0, Rc ** 2 - (baseOf(flanks) / 2) ** 2));
  if (!flanks.ring && along <= w / 2) return 'falls through';
  const R = pinContactRadius(flanks, st, w);
  const { from, to } = usableFlank(flanks);
  if (R >= to) return flanks.ring ? 'bottoms in the root' : 'sits on the tips';
  return clear(flanks, Rc, w) ?? (R < from ? (flanks.ring ? 'sits on the tips' : 'touches below the flank') : 'on the flank');
}

export type Pin = { readonly size: number; readonly name: string };

/** The pin that would touch at the standard pitch circle moved out by the shift; null when that circle has no flank. */
export function idealPin(flanks: Flanks, st: number = transverseThickness(flanks)): number | null {
  try {
    return pinTouchingAt(flanks, st, pitchOf(flanks) + 2 * flanks.v);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

const inchPins = ({ mn, ring }: Flanks): readonly Pin[] =>
  WIRE_SERIES.filter((series) => series.ring === ring).map(({ factor, name }) => ({ size: factor * mn, name }));
const metricPins: readonly Pin[] = METRIC_PINS.map((size) => ({ size, name: 'nearest of the usual metric pins' }));

/**
 * The pin to measure with: of those of the series that lie on the flank, the usual one first for inch pitches; for modules the one nearest
 * to the ideal pin. null when none lies on the flank.
 */
export function bestPin(flanks: Flanks, st: number = transverseThickness(flanks)): Pin | null {
  const ideal = idealPin(flanks, st);
  const serve = (pin: Pin): boolean => pinLies(flanks, st, pin.size) === 'on the flank';
  if (flanks.unit === 'in') return inchPins(flanks).find(serve) ?? null;
  const wanted = ideal ?? 1.7 * flanks.mn;
  return (
    [...metricPins]
      .sort((a, b) => Math.abs(a.size - wanted) - Math.abs(b.size - wanted))
      .slice(0, 6)
      .find(serve) ?? null
  );
}
