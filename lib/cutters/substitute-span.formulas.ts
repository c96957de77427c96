import { DomainError } from '../figure/domain-error.ts';
import { inv } from '../gears/involute.formulas.ts';

/** A gear of N teeth, module m, angle a (radians), cut to the right depth with a form exact for N2; k teeth between the calipers. */
export type SubstituteSpan = { readonly N: number; readonly N2: number; readonly m: number; readonly a: number; readonly k: number };

/**
 * How much a span over k teeth reads large (minus: small) at the right depth, because the form is for N2 teeth.
 * e = m (N − N2) (sin(180° k/N) − cos a (π k/N + inv a)).
 * The calipers touch the form where they would touch its own gear over k N2/N teeth; that gear's centre lies m (N − N2)/2 nearer the rim.
 * Source: derived; checked in a test on the curve itself. True while the jaws bear on the flanks: see substituteContact.
 * Throws DomainError when k is no count of teeth that can be spanned. Example: 26 on 35 teeth, 8 DP, 14½°, k = 4: −0.0018 in.
 */
export function substituteSpanError({ N, N2, m, a, k }: SubstituteSpan): number {
  if (!(Number.isInteger(k) && k >= 1 && k < N / 2)) throw noSuchSpan(N, k);
  const turn = (Math.PI * k) / N;
  return m * (N - N2) * (Math.sin(turn) - Math.cos(a) * (turn + inv(a)));
}

const noSuchSpan = (N: number, k: number): DomainError =>
  new DomainError({
    given: `A span over ${k} of ${N} teeth cannot be taken.`,
    limit: 'Span at least one tooth and less than half of them.',
    tryThis: 'Take the count that brings the jaws nearest the pitch circle.',
    about: ['k'],
  });

/**
 * Distance from the gear's centre at which the jaws touch the flank cut by the substitute form.
 * On the form's own gear the touch is at roll u = (π (k N2/N − ½) + N2 inv a)/N2; minus when the jaws would touch below its base circle.
 * Source: derived. Example: 35 on 35 teeth, 8 DP, 14½°, k = 3: 2.1732 in (pitch radius 2.1875).
 */
export function substituteContact({ N, N2, m, a, k }: SubstituteSpan): number | null {
  const u = (Math.PI * ((k * N2) / N - 0.5)) / N2 + inv(a);
  if (u < 0) return null;
  const rb = (N2 * m * Math.cos(a)) / 2;
  const at = Math.PI / (2 * N2) - inv(a) + u;
  const [x, y] = [rb * (Math.sin(at) - u * Math.cos(at)), rb * (Math.cos(at) + u * Math.sin(at))];
  return Math.hypot(x, y + (m * (N - N2)) / 2);
}

/** Every k at which the jaws bear on the flank between root and outside (A addendum, B dedendum), with the reading's error. */
export function substituteSpans(
  pair: Omit<SubstituteSpan, 'k'>,
  { A, B }: { readonly A: number; readonly B: number },
): readonly { readonly k: number; readonly error: number }[] {
  const R = (pair.N * pair.m) / 2;
  const near = Math.round((pair.N * pair.a) / Math.PI + 0.5);
  return [near - 1, near, near + 1, near + 2]
    .filter((k) => k >= 2 && k < pair.N / 2)
    .filter((k) => {
      const contact = substituteContact({ ...pair, k });
      return contact !== null && contact > R - B && contact < R + A;
    })
    .map((k) => ({ k, error: substituteSpanError({ ...pair, k }) }));
}
