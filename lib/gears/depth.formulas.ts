/** How the teeth are made: a cutter of the gap's own form sunk straight in, or a rack or hob that rolls with the blank. */
export type Making = 'form cutter' | 'generated';

/** What of a tooth decides its flank: N teeth, m module, a pressure angle in radians. */
type Flank = { readonly N: number; readonly m: number; readonly a: number };

/**
 * What to feed, for each unit that the span over k reads large, with a form cutter. f = 1/(2 sin(180° k/N)).
 * Source: derived: the two gaps outside the k teeth stand 180° k/N to either side of the span's middle line; a form that sinks by d
 * along its own centre line moves its flank by d sin(180° k/N) along the span. Exact for any form.
 * Throws RangeError unless 1 ≤ k < N. Example: 22 teeth over 2 gives 1.77, so 0.005 in large asks for 0.0089 in.
 */
export function feedPerSpanFormed(N: number, k: number): number {
  if (!(k >= 1 && k < N)) throw new RangeError(`no span over ${k} of ${N} teeth`);
  return 1 / (2 * Math.sin((Math.PI * k) / N));
}

/**
 * The same for a generated wheel. f = 1/(2 sin a), a pressure angle in radians.
 * Source: derived: a rack that goes deeper by d moves each flank by d sin a, square to itself. Example: 20° gives 1.46.
 */
const feedPerSpanGenerated = (a: number): number => 1 / (2 * Math.sin(a));

/** The one of the two above that goes by how the wheel is made. Throws RangeError where a formed wheel has no such span. */
export const feedPerSpan = (made: Making, tooth: { readonly N: number; readonly a: number }, k: number): number =>
  made === 'generated' ? feedPerSpanGenerated(tooth.a) : feedPerSpanFormed(tooth.N, k);

/**
 * Backlash square to the flank from circular backlash b of this wheel, which is also what the span loses. bn = b cos a.
 * Source: derived: along the base circle an arc is the pitch circle's arc × cos a. Example: 0.004 in at 20° gives 0.0038 in.
 */
export const normalBacklash = (b: number, a: number): number => b * Math.cos(a);

/** Circular thinning from what the span has lost: the turn-about of normalBacklash, with its source. b = bn / cos a. Example: 0.0038 in at 20° gives 0.0040 in. */
export const circularBacklash = (bn: number, a: number): number => bn / Math.cos(a);

/**
 * How much deeper a form cutter goes to thin the tooth by b along the pitch circle.
 *   d = (N m/2) (cos a cos(a + f) − cos g + √(sin² a − (cos a sin(a + f) − sin g)²)),  f = 90°/N,  g = f + b/(N m)
 * N teeth, m module, a pressure angle; f and g half the gap's angle at the pitch circle before and after.
 * Source: derived: the form sinks along the middle of its gap until its flank crosses the pitch circle at g; about the pitch point the
 * flank is taken as the circle that fits it best, of radius (N m/2) sin a. Grows like b cos a / (2 sin(a + 90°/N)) while b is small.
 * Errs shallow, which leaves metal: 22 teeth, 14½°: 0.00003/P at b = 0.03/P, 0.0004/P at 0.08/P, 0.005/P at 0.2/P; steeper flanks
 * and more teeth less. A sunk form thins the tooth unevenly elsewhere. Example: 22 teeth, 8 DP, 14.5°, 0.004 in gives 0.0059 in.
 */
export function deeperForBacklashFormed(b: number, { N, m, a }: Flank): number {
  const f = Math.PI / (2 * N);
  const g = f + b / (N * m);
  const beside = Math.cos(a) * Math.sin(a + f) - Math.sin(g);
  const along = Math.sqrt(Math.max(0, Math.sin(a) ** 2 - beside ** 2));
  return ((N * m) / 2) * (Math.cos(a) * Math.cos(a + f) - Math.cos(g) + along);
}

/**
 * How much deeper a rack or hob goes for circular backlash b, and how far two sound wheels are set apart for it. d = b/(2 tan a).
 * Source: derived: the rack's tooth is wider by 2 d tan a when d deeper; for centres it holds while b is small. Example: 0.004 in at 20° gives 0.0055 in.
 */
export const deeperForBacklashGenerated = (b: number, a: number): number => b / (2 * Math.tan(a));

/** The one of the two above that goes by how the wheel is made. b and the answer in the unit of m. */
export const deeperForBacklash = (made: Making, b: number, tooth: Flank): number =>
  made === 'generated' ? deeperForBacklashGenerated(b, tooth.a) : deeperForBacklashFormed(b, tooth);

/**
 * Depth to dial from touching the blank, so that the gap ends at its true distance from the centre whatever the blank measures.
 * H = h − (Do − Dm)/2 + paper; h depth stamped on the cutter or of the system, Do nominal and Dm measured outside diameter,
 * paper the thickness of the slip between cutter and blank. Source: derived: the root's radius is Do/2 − h.
 * Example: h 0.2696, Do 3.000, Dm 2.996, paper 0.002 gives 0.2696.
 */
export const depthFromTouch = (h: number, Do: number, Dm: number, paper: number): number => h - (Do - Dm) / 2 + paper;
