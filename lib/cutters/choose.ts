import type { Caution } from '../figure/figure.ts';
import { printPitch, samePitch } from '../gears/pitch.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import type { Arbor, Cutter } from '../tooling/tooling.ts';
import { adviceOn } from './advice.ts';
import { arborFor } from './arbor-fit.ts';
import { cautionsOn } from './cautions.ts';
import type { Candidate, CutterChoice, CutterQuestion, FormErrors, GearToCut, Refused } from './choice.ts';
import { angleWords, errorWords } from './describe.ts';
import { type CutterForm, formErrorsOf, tipInModules, virtualCount } from './form-errors.ts';
import { type CutterNeed, hasRightForm, isKnown, type KnownCutter } from './meets.ts';
import { exactCountOf, exactCountOfCutter } from './ranges.ts';
import { isRefused, VERDICT_WORDS, type Verdict, verdictOn } from './verdict.ts';
import { wantedFor } from './wanted.ts';

/** What the gear asks of a cutter. */
export const needOf = (gear: GearToCut): CutterNeed => ({ pitch: gear.pitch, angle: gear.system.angle, teeth: virtualCount(gear) });

const formOf = (cutter: KnownCutter, { convention }: CutterQuestion): CutterForm => ({
  pitch: cutter.pitch,
  angle: cutter.angle,
  exact: exactCountOfCutter(cutter, convention) ?? exactCountOf({ from: cutter.teethFrom, to: cutter.teethTo }, convention),
});

function troublesOf(cutter: Cutter, arbors: readonly Arbor[]): readonly string[] {
  const arbor = arborFor(cutter, arbors);
  return [
    cutter.here ? '' : 'Not in the shop, or put aside.',
    cutter.sharp ? '' : 'Blunt: grind it first.',
    arbor.wants ? arbor.says : '',
  ].filter((trouble) => trouble !== '');
}

const tipWords = (error: FormErrors, gear: GearToCut): string =>
  `Form for ${error.exact.count}: tips ${errorWords(error.tip, unitOfPitch(gear.pitch))}.`;

function candidate(cutter: KnownCutter, verdict: Verdict, error: FormErrors, question: CutterQuestion): Candidate {
  const [troubles, arbor] = [troublesOf(cutter, question.arbors), arborFor(cutter, question.arbors)];
  const says = [VERDICT_WORDS[verdict], tipWords(error, question.gear), ...troubles].join(' ');
  return { cutter, error, verdict, arbor, troubles, ready: troubles.length === 0, says };
}

const UNWRITTEN: readonly (readonly [keyof Cutter, string])[] = [
  ['pitch', 'pitch'],
  ['angle', 'pressure angle'],
  ['teethFrom', 'tooth range'],
];

function unknownCutter(cutter: Cutter): Refused {
  const lacks = UNWRITTEN.filter(([key]) => cutter[key] === null).map(([, word]) => word);
  return { cutter, reason: 'not written down', error: null, says: `No ${lacks.join(', no ')} written down: offered for nothing.` };
}

/** Why a known cutter of another pitch or angle is refused; null when both are the gear's. */
function wrongSort(cutter: KnownCutter, question: CutterQuestion): Refused | null {
  const { gear } = question;
  const [pitchOff, angleOff] = [!samePitch(cutter.pitch, gear.pitch), cutter.angle !== gear.system.angle];
  if (!pitchOff && !angleOff) return null;
  const error = formErrorsOf(gear, formOf(cutter, question));
  const what = pitchOff
    ? `Wrong pitch: ${printPitch(cutter.pitch)} for ${printPitch(gear.pitch)}.`
    : `Wrong pressure angle: ${angleWords(cutter.angle)} for ${angleWords(gear.system.angle)}.`;
  const unit = unitOfPitch(gear.pitch);
  if (!error) return { cutter, reason: pitchOff ? 'wrong pitch' : 'wrong angle', error, says: what };
  const size = `Off by ${errorWords(error.tip, unit)} at the tips, ${errorWords(error.pitchLine, unit)} at the pitch line.`;
  return { cutter, reason: pitchOff ? 'wrong pitch' : 'wrong angle', error, says: `${what} ${size}` };
}

/** One cutter judged: a candidate, or refused. */
function judge(cutter: Cutter, question: CutterQuestion): Candidate | Refused {
  if (!isKnown(cutter)) return unknownCutter(cutter);
  const wrong = wrongSort(cutter, question);
  if (wrong) return wrong;
  const error = formErrorsOf(question.gear, formOf(cutter, question));
  if (!error) return { cutter, reason: 'wrong form', error, says: 'No such form can be drawn on this gear: refused.' };
  if (hasRightForm(cutter, needOf(question.gear))) return candidate(cutter, 'right', error, question);
  const verdict = verdictOn(tipInModules(question.gear, error));
  if (!isRefused(verdict)) return candidate(cutter, verdict, error, question);
  return { cutter, reason: 'wrong form', error, says: `${VERDICT_WORDS[verdict]} ${tipWords(error, question.gear)}` };
}

const isCandidate = (judged: Candidate | Refused): judged is Candidate => 'verdict' in judged;

/** Right before second best, ready before waiting, then the smaller error at the tips, then the order of the list. */
const byWorth = (a: Candidate, b: Candidate): number =>
  Number(a.verdict !== 'right') - Number(b.verdict !== 'right') ||
  Number(!a.ready) - Number(!b.ready) ||
  Math.abs(a.error.tip) - Math.abs(b.error.tip) ||
  a.cutter.id - b.cutter.id;

/**
 * Which cutter for a gear: the right one if owned, what to look for if not, second choices with the size of their error, and what must
 * not be used and why. Pitch and angle must be the gear's exactly; then the tooth range typed in decides, never the number.
 */
export function chooseCutter(question: CutterQuestion): CutterChoice {
  const { gear, convention } = question;
  const judged = question.cutters.map((cutter) => judge(cutter, question));
  const [best, ...others] = judged.filter(isCandidate).sort(byWorth);
  const right = best?.verdict === 'right' ? best : null;
  const second = right || !best ? others : [best, ...others];
  const refused = judged.filter((one): one is Refused => !isCandidate(one));
  const wanted = right?.cutter.here && right.cutter.sharp ? null : wantedFor(needOf(gear));
  const advice = adviceOn({ gear, convention, right, second });
  const cautions: readonly Caution[] = cautionsOn({ gear, right, second, wanted });
  return { right, wanted, second, refused, advice, cautions };
}
