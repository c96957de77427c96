import { DomainError } from '../figure/domain-error.ts';
import type { Pitch, ToothSystem } from '../gears/gear.ts';
import { toothOf } from '../gears/tooth.ts';
import { checkedTooth } from '../gears/wheel.ts';
import { type Angle, toDegrees, toRadians } from '../values/angle.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { printDegrees, printLength, printShort } from '../values/print.ts';
import { coneDistance, pitchAngle } from './bevel.formulas.ts';

/** Two straight bevel wheels. teeth: of the wheel to make; mate: of the other. face: null, a third of the cone distance is taken. */
export type BevelPair = {
  readonly teeth: number;
  readonly mate: number;
  readonly pitch: Pitch;
  readonly system: ToothSystem;
  readonly shafts: Angle;
  readonly face: Length | null;
};

/** The pair as plain numbers, lengths in `unit`, angles in radians. g1 the pitch angle of the wheel to make, g2 the mate's. */
export type Cones = {
  readonly N1: number;
  readonly N2: number;
  readonly m: number;
  readonly a: number;
  readonly A: number;
  readonly B: number;
  readonly S: number;
  readonly g1: number;
  readonly g2: number;
  readonly Ao: number;
  readonly F: number;
  readonly unit: LengthUnit;
};

function checkShafts(shafts: Angle): void {
  const deg = toDegrees(shafts);
  if (deg >= 10 && deg <= 170) return;
  throw new DomainError({
    given: `Shafts at ${printDegrees(shafts, 2)}°.`,
    limit: 'The angle between the shafts lies from 10° to 170°.',
    tryThis: 'Most pairs stand at 90°; parallel shafts take spur wheels.',
    about: ['shafts'],
  });
}

function checkCone(g: number, whose: string): void {
  if (g < Math.PI / 2 - 1e-9) return;
  throw new DomainError({
    given: `The pitch cone of ${whose} would open to ${printShort((2 * g * 180) / Math.PI, 1)}°.`,
    limit: 'At 180° and more it is a crown or an internal bevel, which no form cutter mills.',
    tryThis: 'Look at the shaft angle and at which wheel has more teeth.',
    about: ['shafts', 'teeth', 'mate'],
  });
}

/** The face as typed, else a third of the cone distance. Throws DomainError when it would leave no tooth at the small end. */
function faceOf({ face }: BevelPair, Ao: number, unit: LengthUnit): number {
  const F = face === null ? Ao / 3 : inUnit(face, unit);
  if (F > 0 && F <= Ao / 2) return F;
  throw new DomainError({
    given: `A face of ${face === null ? '' : printLength(face, { unit, places: 3 })} ${unit}.`,
    limit: `The cone distance is ${printShort(Ao, 3)} ${unit}; more than half of it leaves too little tooth at the small end.`,
    tryThis: 'A third of the cone distance is usual.',
    about: ['face'],
  });
}

/** The plain numbers, once the pair is known to make sense. Throws DomainError in shop words when it does not. */
export function checkedCones(pair: BevelPair): Cones {
  checkedTooth({ teeth: pair.teeth, pitch: pair.pitch, system: pair.system });
  checkedTooth({ teeth: pair.mate, pitch: pair.pitch, system: pair.system });
  checkShafts(pair.shafts);
  const { N, m, a, A, B, unit } = toothOf(pair);
  const S = toRadians(pair.shafts);
  const g1 = pitchAngle(N, pair.mate, S);
  const g2 = pitchAngle(pair.mate, N, S);
  checkCone(g1, 'this wheel');
  checkCone(g2, 'the mate');
  const Ao = coneDistance(N * m, g1);
  return { N1: N, N2: pair.mate, m, a, A, B, S, g1, g2, Ao, F: faceOf(pair, Ao, unit), unit };
}
