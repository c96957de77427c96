import { DomainError } from '../figure/domain-error.ts';
import { inv, inverseInv } from '../gears/involute.formulas.ts';
import { pitchDiameter, type Tooth } from '../gears/tooth.ts';
import type { GroundFor } from './ground-space.ts';

/**
 * The tooth without shift whose space is that of a shifted one: same base circle, measured from the circle on which tooth and space are alike.
 *   inv a1 = inv a + 2 v tan a ÷ (N m),  m1 = m cos a ÷ cos a1;  its radius N m1/2 lies so far out, addendum and dedendum are counted from there
 * v: shift away from the middle of wheel or ring, in the tooth's unit. Source: derived: thickness at any radius (Buckingham, Analytical Mechanics of
 * Gears, 1949, ch. 4; value from memory of the chapter) set to half the pitch. Throws DomainError where the shift inward leaves no such circle.
 * Example: 12 teeth, m 10, 20°, v 3: a1 25.795°, m1 10.4369.
 */
export function sameSpaceUnshifted(tooth: Tooth, v: number, kind: GroundFor): Tooth {
  if (v === 0) return tooth;
  const { N, m, a, A, B } = tooth;
  const turned = inv(a) + (2 * v * Math.tan(a)) / pitchDiameter(tooth);
  if (kind === 'rack' || turned <= 0) throw noShift(kind);
  const a1 = inverseInv(turned);
  const m1 = (m * Math.cos(a)) / Math.cos(a1);
  const out = (N * (m1 - m)) / 2;
  const sign = kind === 'ring' ? -1 : 1;
  return { ...tooth, m: m1, a: a1, A: A + sign * (v - out), B: B - sign * (v - out) };
}

const noShift = (kind: GroundFor): DomainError =>
  kind === 'rack'
    ? new DomainError({
        given: 'A shift of a rack.',
        limit: 'A rack’s space is the same wherever its pitch line is taken.',
        tryThis: 'Leave the shift empty and mind the depth.',
        about: ['shift'],
      })
    : new DomainError({
        given: 'A shift so far inward.',
        limit: 'Nowhere on the flank would tooth and space be alike: the teeth are thinner than that down to the base circle.',
        tryThis: 'Look at the sign: plus is away from the middle.',
        about: ['shift'],
      });
