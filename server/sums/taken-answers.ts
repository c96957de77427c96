import type { Gear } from '../../lib/gears/gear.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { standsSo } from '../../lib/identify/identify.tables.ts';
import { type Found, type Identified, identify } from '../../lib/identify/identify.ts';
import type { MeasuredWheel } from '../../lib/identify/readings.ts';
import { chanceText } from '../../lib/identify/said.ts';
import { radians, toDegrees } from '../../lib/values/angle.ts';
import { toInches } from '../../lib/values/length.ts';
import { printDegrees, printShort } from '../../lib/values/print.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import type { Taken } from '../forms/taken.ts';

const MOST = 3;
/** An answer less likely than this is not offered to be taken. */
const LEADING = 0.05;
const ANGLE_PLACES = 3;
const SIZE_PLACES = 5;

/** An answer that can be taken. key: tells it from the others of the same readings. said: how it was found, in a line. */
export type TakenAnswer = {
  readonly key: string;
  readonly name: string;
  readonly chance: string;
  readonly said: string;
  readonly boxes: Taken;
};

/** The pitch square to the teeth of a wheel whose pitch is standard in its own plane: coarser by DP, finer by module, by cos of the helix. */
function squarePitch({ kind, size }: Gear['pitch'], cos: number): string {
  const plain = toNumber(size);
  if (kind === 'DP') return `${printShort(plain / cos, SIZE_PLACES)} DP`;
  return kind === 'module' ? `module ${printShort(plain * cos, SIZE_PLACES)}` : `${printShort(plain * cos, SIZE_PLACES)} CP`;
}

type Tooth = Pick<Taken, 'pitch' | 'system' | 'angle' | 'addendum' | 'dedendum'>;

/** Proportions themselves, of a tooth whose module square to it is mn (inches). */
const ownTooth = (pitch: string, angle: string, [addendum, dedendum]: readonly [number, number]): Tooth => ({
  pitch,
  system: 'own',
  angle,
  addendum: printShort(addendum, SIZE_PLACES),
  dedendum: printShort(dedendum, SIZE_PLACES),
});

/** The form's own boxes: a named system, or the proportions themselves where the form knows none of that name. A kept wheel is measured square to its teeth. */
function toothOf({ candidate, fit }: Found): Tooth {
  const { system, key, known, m } = candidate;
  const { psi, mn, an } = fit.stance.flanks;
  if (psi > 0 && mn !== m) {
    const own = [(system.addendum * m) / mn, (system.dedendum * m + toInches(system.extra)) / mn] as const;
    return ownTooth(squarePitch(known.pitch, Math.cos(psi)), printDegrees(radians(an), ANGLE_PLACES), own);
  }
  const pitch = printPitch(known.pitch);
  if (systemByKey(key) === undefined) return ownTooth(pitch, printDegrees(system.angle, ANGLE_PLACES), [system.addendum, system.dedendum]);
  return { pitch, system: key, angle: '', addendum: '', dedendum: '' };
}

function answerOf(found: Found, teeth: number): TakenAnswer {
  const { candidate, chance, fit } = found;
  const { psi } = fit.stance.flanks;
  const name = `${candidate.name}${standsSo(found)}`;
  const said = `${name}: ${chanceText(chance)}`;
  const helix = psi > 0 ? printShort(toDegrees(radians(psi)), 2) : '';
  const boxes = { teeth: `${teeth}`, notKnown: '', helix, hand: '', saidOfIt: `By measurement ${said}.`, ...toothOf(found) };
  return { key: `${printPitch(candidate.known.pitch)} ${candidate.key}`, name: candidate.name, chance: chanceText(chance), said, boxes };
}

/** The leading answers of these readings, the likeliest first; none where none of the candidates leads. found: what was identified of these wheels already. */
export function takenAnswers(wheels: readonly MeasuredWheel[], found?: Identified): readonly TakenAnswer[] {
  const [first] = wheels;
  if (!first || first.readings.length === 0) return [];
  const { list, none } = found ?? identify(wheels);
  return list
    .slice(0, MOST)
    .filter(({ chance }) => chance > LEADING && chance > none)
    .map((one) => answerOf(one, first.teeth));
}
