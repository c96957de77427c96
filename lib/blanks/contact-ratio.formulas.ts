/** Base radius, pitch radius and outside radius of a wheel, one unit. */
export type Radii = { readonly base: number; readonly pitch: number; readonly outside: number };

/** Length of contact beyond the pitch point on the side of this wheel's tips: √(Ro² − Rb²) − R sin a, never below 0. */
const beyond = ({ base, outside, pitch }: Radii, a: number): number =>
  Math.max(0, Math.sqrt(Math.max(0, outside ** 2 - base ** 2)) - pitch * Math.sin(a));

/**
 * Contact ratio of two wheels on their true centres: (g1 + g2) ÷ (π m cos a), g = √(Ro² − Rb²) − R sin a, and neither g longer than
 * the mate's R sin a, beyond which there is no involute. a pressure angle in radians, m module.
 * Source: Machinery's Handbook, 31st ed., "Gearing", contact ratio (value from memory). Undercut shortens it further.
 * Example: 28 and 45 teeth, 14½°: 2.007.
 */
export function contactRatio(one: Radii, mate: Radii, a: number, m: number): number {
  const g1 = Math.min(beyond(one, a), mate.pitch * Math.sin(a));
  const g2 = Math.min(beyond(mate, a), one.pitch * Math.sin(a));
  return (g1 + g2) / (Math.PI * m * Math.cos(a));
}

/**
 * Contact ratio with a rack of addendum A: (g1 + min(A ÷ sin a, R sin a)) ÷ (π m cos a). Source and limits as above.
 * Example: 32 teeth at 14½° with a rack: about 2.1.
 */
export function contactRatioWithRack(one: Radii, A: number, a: number, m: number): number {
  const g2 = Math.min(A / Math.sin(a), one.pitch * Math.sin(a));
  return (beyond(one, a) + g2) / (Math.PI * m * Math.cos(a));
}
