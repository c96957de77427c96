import { DomainError } from '../figure/domain-error.ts';
import { inv } from '../gears/involute.formulas.ts';

/** A standard space (half the pitch wide at the pitch circle): N teeth, m module, a pressure angle in radians. Lengths in m's unit. */
export type Form = { readonly N: number; readonly m: number; readonly a: number };

/** A cutter's form, exact for N2 teeth of module m2 and angle a2, sunk in a gear of N teeth, module m and angle a. */
export type FormPair = Form & { readonly N2: number; readonly m2: number; readonly a2: number };

const pitchRadius = ({ N, m }: Form): number => (N * m) / 2;
const baseRadius = (form: Form): number => pitchRadius(form) * Math.cos(form.a);
/** The space that the cutter was made for. */
export const cutterForm = ({ N2, m2, a2 }: FormPair): Form => ({ N: N2, m: m2, a: a2 });

function mustMakeSense({ N, m, a }: Form): void {
  if (N >= 3 && Number.isFinite(N) && m > 0 && Number.isFinite(m) && a > 0 && a < Math.PI / 4) return;
  throw new DomainError({
    given: `A form for ${N} teeth cannot be drawn with this pitch and angle.`,
    limit: 'A form needs at least 3 teeth, a pitch above 0 and a pressure angle between 0° and 45°.',
    tryThis: 'Check the count that the cutter is exact for.',
    about: ['teeth', 'pitch', 'angle'],
  });
}

/** Angle between the space's centre line and the start of its involute on the base circle: 90°/N − inv a, in radians. */
const startAngle = ({ N, a }: Form): number => Math.PI / (2 * N) - inv(a);

/**
 * Roll u (tangent of the pressure angle there) at which the flank stands y above the gear's centre, measured along the centre line:
 * the u with rb (cos(b + u) + u sin(b + u)) = y, b the start angle. y grows with u until the flank lies square across, at b + u = 90°.
 * Halved 60 times between those ends.
 */
function rollAtHeight(form: Form, y: number): number {
  const [rb, b] = [baseRadius(form), startAngle(form)];
  let [low, high] = [0, Math.PI / 2 - b];
  if (y > rb * high) throw tooHigh(form);
  for (let step = 0; step < 60; step++) {
    const u = (low + high) / 2;
    if (rb * (Math.cos(b + u) + u * Math.sin(b + u)) < y) low = u;
    else high = u;
  }
  return (low + high) / 2;
}

const tooHigh = ({ N }: Form): DomainError =>
  new DomainError({
    given: `The height asked for is above where a form for ${N} teeth ends.`,
    limit: 'The flank has turned square across the centre line there.',
    tryThis: 'Ask at the addendum or below.',
    about: ['teeth'],
  });

/**
 * Half the width of a space, square to its centre line, at height h above the pitch line (below: minus).
 * x = rb (sin(b + u) − u cos(b + u)), with u as in rollAtHeight and y = N m/2 + h; below the base circle the flank is continued
 * as a straight line to the gear's centre, x = y tan b (a convention: real cutters round the bottom off as each maker likes).
 * Source: derived, parametric equations of the involute of a circle. Throws DomainError where no flank reaches.
 * Example: 35 teeth, 8 DP, 14½°, h = 1/8 in: 0.1518 in.
 */
export function halfSpace(form: Form, h: number): number {
  mustMakeSense(form);
  const [rb, b] = [baseRadius(form), startAngle(form)];
  const y = pitchRadius(form) + h;
  if (y <= rb * Math.cos(b)) return y * Math.tan(b);
  const u = rollAtHeight(form, y);
  return rb * (Math.sin(b + u) - u * Math.cos(b + u));
}

/**
 * Distance from the gear's centre of that same point of the flank: rb √(1 + u²) on the involute.
 * Throws DomainError below the base circle, where there is no involute. Example: 35 teeth, 8 DP, 14½°, at the pitch line: 2.1897 in.
 */
export function flankRadius(form: Form, h: number): number {
  mustMakeSense(form);
  const y = pitchRadius(form) + h;
  if (y <= baseRadius(form) * Math.cos(startAngle(form))) throw noFlank(form);
  return baseRadius(form) * Math.hypot(1, rollAtHeight(form, y));
}

const noFlank = ({ N }: Form): DomainError =>
  new DomainError({
    given: `On a form for ${N} teeth that point lies below the base circle.`,
    limit: 'There is no involute below the base circle.',
    tryThis: 'Measure higher on the tooth.',
    about: ['teeth'],
  });

/**
 * Error of one flank when a cutter exact for N2 teeth cuts N, measured sideways at height h above the pitch line.
 * e = half width of the cutter's space − half width of the true space, both true involutes, pitch lines at the same depth.
 * Plus: metal off that should be there (tips thin, runs). Minus: metal left (rubs). For another pitch or angle (m2, a2) it shows
 * why that cutter is refused. Below the base circle of either form as in halfSpace.
 * Source: derived. Not true of old 14½° composite forms, which are involute only about the pitch line.
 * Example: form for 26 on 35 teeth, 8 DP, 14½°, h = 1/8 in: +0.0075 in.
 */
export const formError = (pair: FormPair, h: number): number => halfSpace(cutterForm(pair), h) - halfSpace(pair, h);

/** Where the true tooth's tip corner lies: s sideways from the centre line of the space, q from the centre of the cutter's own gear. */
export function tipCorner(pair: FormPair, A: number): { readonly s: number; readonly q: number } {
  mustMakeSense(pair);
  mustMakeSense(cutterForm(pair));
  const tip = pitchRadius(pair) + A;
  const angle = startAngle(pair) + inv(Math.acos(baseRadius(pair) / tip));
  const s = tip * Math.sin(angle);
  const q = Math.hypot(s, tip * Math.cos(angle) - pitchRadius(pair) + pitchRadius(cutterForm(pair)));
  if (q < baseRadius(cutterForm(pair))) throw noFlank(cutterForm(pair));
  return { s, q };
}

/**
 * The same error measured square to the flank, at the true tooth's real tip corner (addendum A): what a feeler at the corner would find.
 * e = rb2 (b2 + inv A2 − t), rb2 and b2 base radius and start angle of the cutter's form, cos A2 = rb2/q, sin t = s/q: two involutes
 * of one base circle stand everywhere equally far apart, by the base radius times the angle between them.
 * Source: derived. Throws DomainError where the corner lies below the cutter's base circle.
 * Example: form for 26 on 35 teeth, 8 DP, 14½°: 0.0060 in.
 */
export function formErrorSquare(pair: FormPair, A: number): number {
  const { s, q } = tipCorner(pair, A);
  const form = cutterForm(pair);
  const rb2 = baseRadius(form);
  return rb2 * (startAngle(form) + inv(Math.acos(rb2 / q)) - Math.asin(s / q));
}
