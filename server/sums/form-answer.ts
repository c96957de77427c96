import type { FormErrors, GearToCut } from '../../lib/cutters/choice.ts';
import { type CutterFigures, cutterAnswer } from '../../lib/cutters/cutters.sums.ts';
import { angleWords, errorWords } from '../../lib/cutters/describe.ts';
import { alongTable } from '../../lib/cutters/form-along.ts';
import { type CutterForm, formErrorsOf, tipInModules } from '../../lib/cutters/form-errors.ts';
import { formPicture } from '../../lib/cutters/form-picture.ts';
import { VERDICT_WORDS, verdictOn } from '../../lib/cutters/verdict.ts';
import { cutterFormDrawing } from '../../lib/drawing/cutter-form-drawing.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer, Figure, Value } from '../../lib/figure/figure.ts';
import { moduleOf, unitOfPitch } from '../../lib/gears/tooth.ts';
import type { Cutter } from '../../lib/tooling/tooling.ts';
import type { Angle } from '../../lib/values/angle.ts';

export type FormKey = Exclude<CutterFigures, 'cutter'>;

/** A cutter of which nothing but its form is known, for the gear that is to be cut. */
const formOnly = (gear: GearToCut, count: number): Cutter => ({
  kind: 'cutter',
  id: 1,
  name: `A form for ${count}`,
  here: true,
  sharp: true,
  pitch: gear.pitch,
  angle: gear.system.angle,
  number: '',
  teethFrom: gear.teeth,
  teethTo: gear.teeth,
  hole: null,
  diameter: null,
  width: null,
  stampedDepth: null,
  steel: 'unknown',
  exactFor: count,
});

const formAsked = (gear: GearToCut, count: number, angle: Angle): CutterForm => ({
  pitch: gear.pitch,
  angle,
  exact: { count, from: 'typed' },
});

function errorsOf(gear: GearToCut, count: number, angle: Angle): FormErrors {
  const found = formErrorsOf(gear, formAsked(gear, count, angle));
  if (found) return found;
  throw new DomainError({
    given: `A form for ${count} teeth on a wheel of ${gear.teeth}.`,
    limit: 'One of the two has no flank as high as the tips, so that nothing can be held against it.',
    tryThis: 'Take a count nearer to the wheel’s own.',
    about: ['count'],
  });
}

const NAMES: Readonly<Record<FormKey, readonly [name: string, symbol: string]>> = {
  formErrorTip: ['Error of form at the tips, sideways', 'et'],
  formErrorHalf: ['Error of form half way to the pitch line', 'eh'],
  formErrorPitch: ['Error of form at the pitch line', 'ep'],
  formErrorSquare: ['Error of form square to the flank at the tip corner', 'eq'],
};

/** The errors of a form of another pressure angle: the reason why it is refused, without working. */
function otherAngle(gear: GearToCut, { tip, half, pitchLine, square }: FormErrors, angle: Angle): Record<FormKey, Figure> {
  const figure = (key: FormKey, value: Value): Figure => {
    const [name, symbol] = NAMES[key];
    const note = `A form of ${angleWords(angle)} on teeth of ${angleWords(gear.system.angle)}.`;
    return {
      name,
      symbol,
      value,
      unit: unitOfPitch(gear.pitch),
      formula: '',
      source: 'derived: true involutes of both angles drawn to the same depth',
      given: [],
      note,
    };
  };
  return {
    formErrorTip: figure('formErrorTip', { length: tip }),
    formErrorHalf: figure('formErrorHalf', { length: half }),
    formErrorPitch: figure('formErrorPitch', { length: pitchLine }),
    formErrorSquare: figure('formErrorSquare', square === null ? { words: 'no form there' } : { length: square }),
  };
}

/**
 * How far a cutter's form is off on a wheel. count: what its form is exact for; angle: the cutter's, if not the wheel's.
 * Throws DomainError where one of the two has no flank as high as the tips.
 */
export function formAnswer(gear: GearToCut, count: number, angle: Angle = gear.system.angle): Answer<FormKey> {
  const errors = errorsOf(gear, count, angle);
  const unit = unitOfPitch(gear.pitch);
  const tips = `Tips ${errorWords(errors.tip, unit)}. Plus: metal off that should be there. Minus: metal left, which rubs.`;
  if (angle !== gear.system.angle)
    return {
      figures: otherAngle(gear, errors, angle),
      cautions: [],
      says: `Wrong pressure angle: refused. ${tips}`,
      tables: [alongTable(gear, [formAsked(gear, count, angle)])],
    };
  const same = { gear, cutters: [formOnly(gear, count)], arbors: [], convention: 'low end' } as const;
  const { figures, cautions } = cutterAnswer(same);
  const { formErrorTip, formErrorHalf, formErrorPitch, formErrorSquare } = figures;
  return {
    figures: { formErrorTip, formErrorHalf, formErrorPitch, formErrorSquare },
    cautions: cautions.filter(({ about }) => about === 'formErrorTip'),
    says: `${VERDICT_WORDS[verdictOn(tipInModules(gear, errors))]} ${tips}`,
    tables: [alongTable(gear, [formAsked(gear, count, angle)])],
  };
}

/** The form over the true space; null where one of the two cannot be drawn. */
export function formDrawing(gear: GearToCut, count: number, angle: Angle = gear.system.angle): Drawing | null {
  const picture = formPicture(gear, formAsked(gear, count, angle));
  if (!picture) return null;
  const form = `a form right for ${count}${angle === gear.system.angle ? '' : `, ${angleWords(angle)}`}`;
  return cutterFormDrawing({ picture, module: moduleOf(gear.pitch), unit: unitOfPitch(gear.pitch), own: `${gear.teeth} teeth`, form });
}
