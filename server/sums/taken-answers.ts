import { printPitch } from '../../lib/gears/pitch.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { standsSo } from '../../lib/identify/identify.tables.ts';
import { type Found, identify } from '../../lib/identify/identify.ts';
import type { MeasuredWheel } from '../../lib/identify/readings.ts';
import { chanceText } from '../../lib/identify/said.ts';
import { printDegrees, printShort } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import type { Taken } from '../forms/taken.ts';
import type { LinkView } from '../page.ts';

const MOST = 3;
/** An answer less likely than this is not offered to be taken. */
const LEADING = 0.05;

/** The form's own boxes: a named system, or the proportions themselves where the form knows none of that name. */
function takenOf(found: Found, teeth: number): Taken {
  const { candidate, chance } = found;
  const { system, key, known } = candidate;
  const named = systemByKey(key) !== undefined;
  return {
    teeth: `${teeth}`,
    pitch: printPitch(known.pitch),
    system: named ? key : 'own',
    angle: named ? '' : printDegrees(system.angle, 2),
    addendum: named ? '' : printShort(system.addendum, 6),
    dedendum: named ? '' : printShort(system.dedendum, 6),
    saidOfIt: `By measurement ${candidate.name}${standsSo(found)}: ${chanceText(chance)}.`,
  };
}

/** Whose form the answer goes to: "part-12" or "item-5"; null for anything else. */
function formOf(owner: string): ((given: Readonly<Record<string, string>>) => string) | null {
  const [, kind, digits] = /^(part|item)-(\d{1,9})$/.exec(owner) ?? [];
  if (!digits) return null;
  return (given) => (kind === 'part' ? to.partEdit(Number(digits), { as: 'wheel', ...given }) : to.itemEdit(Number(digits), given));
}

/** For each leading answer a way into the form of the part or thing that was asked about, with the answer written in. */
export function takenAnswers(wheels: readonly MeasuredWheel[], owner: string): readonly LinkView[] {
  const [form, first] = [formOf(owner), wheels[0]];
  if (!form || !first || first.readings.length === 0) return [];
  const { list, none } = identify(wheels);
  return list
    .slice(0, MOST)
    .filter(({ chance }) => chance > LEADING && chance > none)
    .map((found) => ({
      says: `Take this answer: ${found.candidate.name}, ${chanceText(found.chance)}`,
      href: form(takenOf(found, first.teeth)),
    }));
}
