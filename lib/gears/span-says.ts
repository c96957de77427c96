import type { Figure } from '../figure/figure.ts';
import type { LengthUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';

/** What the jaws should have beside the lines that they touch along: 1/8 in, 3 mm (judgement). */
const TO_REST_ON = { in: 0.125, mm: 3 } as const;

const size = (x: number, unit: LengthUnit): string => `${printNumber(x, unit === 'in' ? 4 : 3)} ${unit}`;

/** Of a helical span that touches the flanks: whether the face is wide enough to lay it on. '' where it is not: a caution says that. */
export function spanSays(span: Figure | undefined, leastFace: number | null, face: number | null, unit: LengthUnit): string {
  if (!span || leastFace === null) return '';
  const touches = `${span.name}: the jaws touch the flanks`;
  if (face === null) return `${touches}, if the face is wider than ${size(leastFace, unit)}; nobody has said how wide it is.`;
  if (face <= leastFace) return '';
  if (face < leastFace + TO_REST_ON[unit])
    return `${touches}, and the face of ${size(face, unit)} leaves little beyond the ${size(leastFace, unit)} that they need.`;
  return `${touches}, and the face of ${size(face, unit)} is wide enough: ${size(leastFace, unit)} is the least.`;
}
