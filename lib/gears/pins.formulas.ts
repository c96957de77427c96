import { atOf, baseOf, type Flanks, pitchOf, psibOf } from './flanks.formulas.ts';
import { inv, inverseInv } from './involute.formulas.ts';
import { crossing } from './profile.formulas.ts';

// Pins or balls two by two, in spaces as nearly opposite as the count allows. A wheel is measured over them, a ring between them.

const out = ({ ring }: Flanks): 1 | -1 => (ring ? -1 : 1);

/** Half the angle of the space at the base circle, as it stands in the pin formulas: wheel π/N − st/d − inv at, ring π/N − st/d + inv at. */
const halfSpaceAtBase = (flanks: Flanks, st: number): number => Math.PI / flanks.N - st / pitchOf(flanks) - out(flanks) * inv(atOf(flanks));

/**
 * Involute of the pressure angle at the middle of a pin of diameter w:
 *   wheel: inv f = st/d + inv at + w/(db cos ψb) − π/N;   ring: inv f = inv at + (π/N − st/d) − w/(db cos ψb).
 * st thickness of the tooth as an arc of the standard pitch circle, in the plane of the wheel; π/N − st/d is half the space.
 * Source: SDP/SI, Technical section, p. T60 (ring); Elements of Metric Gear Technology, T-85 (wheel, value from memory); ISO 21771:2007, dimension
 * over balls (value from memory) has it for helical gears. Below 0 the pin has fallen through to where no involute is.
 * Example: m 1, 20°, 20 teeth, pin 1.7: 0.0268197.
 */
export const involuteAtPin = (flanks: Flanks, st: number, w: number): number =>
  out(flanks) * (w / (baseOf(flanks) * Math.cos(psibOf(flanks))) - halfSpaceAtBase(flanks, st));

/** Radius of the circle on which the pins' middles stand: db/(2 cos f). Throws RangeError when the pin falls through. */
export const pinCircle = (flanks: Flanks, st: number, w: number): number =>
  baseOf(flanks) / (2 * Math.cos(inverseInv(involuteAtPin(flanks, st, w))));

/** How much nearer than across the middle two pins stand: 1, or cos(90°/N) where no space is opposite a space. */
const across = (N: number): number => (N % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * N)));

/**
 * Over two pins (a ring: between them): M = 2 Rc + w, odd counts M = 2 Rc cos(90°/N) + w; of a ring minus w. Rc from pinCircle.
 * Of a helical gear of odd count this is over balls, which stand in one plane across the axis; two long pins, free to slide, read otherwise.
 * Source: as involuteAtPin. Throws RangeError when the pin falls through. Example: m 1, 20°, 20 teeth, pin 1.7: 22.2941.
 */
export const overPins = (flanks: Flanks, st: number, w: number): number =>
  2 * pinCircle(flanks, st, w) * across(flanks.N) + out(flanks) * w;

/**
 * Thickness from a reading over (between) pins: the turn-about of overPins.
 *   cos f = db cos(90°/N or 0)/(M ∓ w),  wheel: st/d = π/N + inv f − inv at − w/(db cos ψb);  ring: st/d = π/N + inv at − inv f − w/(db cos ψb).
 * Source: as overPins. Throws RangeError when the pins would stand inside the base circle. Example: 22.2941 at m 1, 20°, 20 teeth, 1.7 gives 1.5708.
 */
export function thicknessFromPins(flanks: Flanks, M: number, w: number): number {
  const cos = (baseOf(flanks) * across(flanks.N)) / (M - out(flanks) * w);
  if (!(cos > 0 && cos <= 1)) throw new RangeError(`pins of ${w} that read ${M} stand inside the base circle`);
  const space = w / (baseOf(flanks) * Math.cos(psibOf(flanks))) - out(flanks) * inv(Math.acos(cos));
  return pitchOf(flanks) * (Math.PI / flanks.N - space - out(flanks) * inv(atOf(flanks)));
}

/**
 * Radius at which the pin touches the flank, in the plane of the wheel: √(Rb² + (Rb tan f ∓ (w/2) cos ψb)²), minus for a wheel.
 * Source: ISO 21771:2007, contact diameter of balls: tan at the contact = tan f ∓ w cos ψb/db (value from memory).
 * Throws RangeError when the pin falls through or would touch below the base circle. Example: m 1, 20°, 20 teeth, pin 1.7: 9.980.
 */
export function pinContactRadius(flanks: Flanks, st: number, w: number): number {
  const Rb = baseOf(flanks) / 2;
  const along = Rb * Math.tan(inverseInv(involuteAtPin(flanks, st, w))) - out(flanks) * (w / 2) * Math.cos(psibOf(flanks));
  if (!(along >= 0)) throw new RangeError(`a pin of ${w} touches below the base circle`);
  return Math.hypot(Rb, along);
}

/**
 * The pin or ball that touches the flank at a circle of diameter dc, whatever is its angle f at the pin's middle:
 *   f + tan f (1/cos² ψb − 1) = tan ac/cos² ψb ± η,  w = db (tan f − tan ac)/cos ψb,  cos ac = db/dc, η half the space's angle at the base circle;
 * of a ring the signs turn. Straight teeth: f = tan ac + η, w = db (inv f + η).
 * Source: SDP/SI, Elements of Metric Gear Technology, T-84, ideal pin diameter (straight teeth; value from memory); helical teeth derived: the pin's
 * middle and its point of touch lie on one normal, cos ψb of which lies in the plane of the wheel.
 * Throws RangeError when dc lies inside the base circle or no pin touches there. Example: m 1, 20°, 20 teeth at the pitch circle: 1.7245.
 */
export function pinTouchingAt(flanks: Flanks, st: number, dc: number): number {
  const [db, cos] = [baseOf(flanks), Math.cos(psibOf(flanks))];
  if (!(dc >= db)) throw new RangeError(`no pin touches at ${dc}, inside the base circle`);
  const touch = Math.tan(Math.acos(db / dc));
  const wanted = touch / cos ** 2 + out(flanks) * halfSpaceAtBase(flanks, st);
  if (!(wanted > 0 && wanted < 1.55)) throw new RangeError(`no pin touches at ${dc}`);
  const f = crossing((x) => x + Math.tan(x) * (1 / cos ** 2 - 1) - wanted, 0, 1.56);
  const w = (out(flanks) * db * (Math.tan(f) - touch)) / cos;
  if (!(w > 0)) throw new RangeError(`no pin touches at ${dc}`);
  return w;
}
