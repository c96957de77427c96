import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure } from '../figure/figure.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import { printShort } from '../values/print.ts';
import type { FormErrors, GearToCut } from './choice.ts';
import { sidewaysFigure } from './cutters.sums.ts';
import { errorWords, rangeWords } from './describe.ts';
import { alongTable } from './form-along.ts';
import { addendumOf, type CutterForm, formErrorsOf, pairOf, tipInModules, virtualCount } from './form-errors.ts';
import { HALF_NUMBERS, type NumberedCutter, WHOLE_NUMBERS } from './ranges.data.ts';
import { CONVENTIONS, type Convention, exactCountOf, inRange } from './ranges.ts';
import { VERDICT_WORDS, verdictOn } from './verdict.ts';

export const ALL_NUMBERS: readonly NumberedCutter[] = [...WHOLE_NUMBERS, ...HALF_NUMBERS];

export type NumberedFormFigures = 'lowTip' | 'lowHalf' | 'lowPitch' | 'treatiseTip' | 'treatiseHalf' | 'treatisePitch';

/** The form of a numbered cutter of the wheel's own pitch and angle under one opinion on its exact count. */
export const numberedForm = (gear: GearToCut, one: NumberedCutter, convention: Convention): CutterForm => ({
  pitch: gear.pitch,
  angle: gear.system.angle,
  exact: exactCountOf(one, convention),
});

function errorsFor(gear: GearToCut, form: CutterForm): FormErrors {
  const found = formErrorsOf(gear, form);
  if (found) return found;
  throw new DomainError({
    given: `A form for ${printShort(form.exact.count)} teeth on a wheel of ${gear.teeth}.`,
    limit: 'One of the two has no flank as high as the tips, so that nothing can be held against it.',
    tryThis: 'Take the number whose range holds the wheel’s count.',
    about: ['number'],
  });
}

/** One opinion in shop words: "exact for 26 (low end): +0.0075 in at the tips. Tips a little thin: noisy, runs." */
function opinion(gear: GearToCut, one: NumberedCutter, convention: Convention): string {
  const form = numberedForm(gear, one, convention);
  const errors = errorsFor(gear, form);
  const verdict = inRange(one, virtualCount(gear)) ? 'right' : verdictOn(tipInModules(gear, errors));
  const ground = form.exact.from === 'treatise' ? 'as a treatise has it' : 'low end of its range';
  return `If exact for ${form.exact.count} (${ground}): ${errorWords(errors.tip, unitOfPitch(gear.pitch))} at the tips. ${VERDICT_WORDS[verdict]}`;
}

const OPINION: Readonly<Record<Convention, string>> = { 'low end': 'if exact at the low end', treatise: 'if exact as a treatise has it' };

function figuresOf(gear: GearToCut, one: NumberedCutter, convention: Convention): readonly [Figure, Figure, Figure] {
  const form = numberedForm(gear, one, convention);
  errorsFor(gear, form);
  const [pair, A] = [pairOf(gear, form), addendumOf(gear)];
  const subject = { name: `No. ${one.number}`, exact: form.exact };
  const at = (place: string, symbol: string, h: number): Figure =>
    sidewaysFigure(gear, subject, pair, { name: `${place}, ${OPINION[convention]}`, symbol, h });
  return [at('Error at the tips', 'et', A), at('Error half way to the pitch line', 'eh', A / 2), at('Error at the pitch line', 'ep', 0)];
}

/**
 * What the form of a numbered or half-numbered cutter does on any wheel, under both opinions on the count that it is exact for: a verdict,
 * the errors with their working, and thousandths all along the flank. A helical wheel goes by its virtual count.
 * Throws DomainError where one of the two forms has no flank as high as the tips.
 */
export function numberedFormAnswer(gear: GearToCut, one: NumberedCutter): Answer<NumberedFormFigures> {
  const [lowTip, lowHalf, lowPitch] = figuresOf(gear, one, 'low end');
  const [treatiseTip, treatiseHalf, treatisePitch] = figuresOf(gear, one, 'treatise');
  const forms = CONVENTIONS.map((convention) => numberedForm(gear, one, convention));
  const differ = forms[0]?.exact.count !== forms[1]?.exact.count;
  const said = (differ ? CONVENTIONS : CONVENTIONS.slice(0, 1)).map((convention) => opinion(gear, one, convention));
  const virtual = gear.helix ? ` By the virtual count of ${printShort(virtualCount(gear), 2)}.` : '';
  return {
    figures: { lowTip, lowHalf, lowPitch, treatiseTip, treatiseHalf, treatisePitch },
    cautions: [
      {
        name: 'number sets',
        says: 'Number sets differ by maker, and some number their modules the other way round: go by the tooth range on the cutter.',
        weight: 'note',
      },
    ],
    says: `No. ${one.number}, made for ${rangeWords(one.from, one.to)}.${virtual} ${said.join(' ')} Plus: metal off that should be there. Minus: metal left, which rubs.`,
    tables: [alongTable(gear, differ ? forms : forms.slice(0, 1))],
  };
}
