import { hobbedFlank, usableFlank } from './base-tangent.formulas.ts';
import { baseOf, type Flanks, pitchOf, rootOf, tipOf, transverseThickness } from './flanks.formulas.ts';
import { involuteAtPin, pinCircle, pinContactRadius, pinTouchingAt } from './pins.formulas.ts';
import { METRIC_PINS, WIRE_SERIES } from './wires.data.ts';

/** How a pin lies in a space of this gear; only the first can always be measured with, the second where a form cutter has cut the wheel. */
export type PinLies =
  | 'on the flank'
  | 'on a flank that a hob cuts away'
  | 'falls through'
  | 'bottoms in the root'
  | 'touches below the flank'
  | 'sits on the tips'
  | 'hidden below the tips';

/**
 * Whether a pin as thick as w stands clear of the root and, over a wheel, out past the tips. In a ring it may lie below the tips: the usual wire of
 * 1.44/P always does, and the rounded ends of an inside measure reach it between the teeth.
 */
function clear(flanks: Flanks, Rc: number, w: number): PinLies | null {
  const root = rootOf(flanks) / 2;
  if (flanks.ring ? Rc + w / 2 >= root : Rc - w / 2 <= root) return 'bottoms in the root';
  return !flanks.ring && pinHides(flanks, Rc, w) ? 'hidden below the tips' : null;
}

/** True when a pin whose middle stands on the circle of radius Rc does not stand out of (in a ring: in past) the tips. */
export const pinHides = (flanks: Flanks, Rc: number, w: number): boolean =>
  flanks.ring ? Rc - w / 2 >= tipOf(flanks) / 2 : Rc + w / 2 <= tipOf(flanks) / 2;

/** Where a pin of diameter w touches. st: transverse thickness at the standard pitch circle. Lengths in the unit of the gear. */
export function pinLies(flanks: Flanks, st: number, w: number): PinLies {
  if (!(involuteAtPin(flanks, st, w) > 0)) return flanks.ring ? 'sits on the tips' : 'falls through';
  const Rc = pinCircle(flanks, st, w);
  const along = Math.sqrt(Math.max(0, Rc ** 2 - (baseOf(flanks) / 2) ** 2));
  if (!flanks.ring && along <= w / 2) return 'falls through';
  const R = pinContactRadius(flanks, st, w);
  const { from, to } = usableFlank(flanks);
  if (R >= to) return flanks.ring ? 'bottoms in the root' : 'sits on the tips';
  if (R < from) return clear(flanks, Rc, w) ?? (flanks.ring ? 'sits on the tips' : 'touches below the flank');
  const left = hobbedFlank(flanks);
  return clear(flanks, Rc, w) ?? (left !== null && R >= left.from ? 'on the flank' : 'on a flank that a hob cuts away');
}

/** True when a pin lies so that thickness can be told by it, whatever is to be said of it. */
const pinServes = (lies: PinLies): boolean => lies === 'on the flank' || lies === 'on a flank that a hob cuts away';

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
 * to the ideal pin. Only where none does, one on the flank that a hob would cut away. null when none serves.
 */
export function bestPin(flanks: Flanks, st: number = transverseThickness(flanks)): Pin | null {
  const ideal = idealPin(flanks, st);
  const wanted = ideal ?? 1.7 * flanks.mn;
  const nearest = (): Pin[] => [...metricPins].sort((a, b) => Math.abs(a.size - wanted) - Math.abs(b.size - wanted)).slice(0, 6);
  const pins = (flanks.unit === 'in' ? inchPins(flanks) : nearest()).map((pin) => ({ pin, lies: pinLies(flanks, st, pin.size) }));
  return (pins.find(({ lies }) => lies === 'on the flank') ?? pins.find(({ lies }) => pinServes(lies)))?.pin ?? null;
}
