import { fieldView } from '../forms/field-view.ts';
import type { Typed } from '../forms/form.ts';
import { HAND_FIELD } from '../forms/gear-form.ts';
import { formMark } from '../once.ts';
import type { FieldGroup, FormView, LinkView } from '../page.ts';
import type { Owner } from './identify-owner.ts';
import type { TakenAnswer } from './taken-answers.ts';

/** One answer to be taken: at once, or by way of the form, where it can be looked over first. */
export type TakeView = { readonly form: FormView; readonly lookOver: LinkView };

/** A print says how far the teeth lean, not which way: that is asked. */
const handGroup = (at: number): FieldGroup => ({
  legend: '',
  hint: '',
  folded: false,
  fields: [fieldView('hand', HAND_FIELD, {}, {}, `take-${at}`)],
});

function takeForm({ rev, take }: Owner, { key, name, chance, boxes }: TakenAnswer, typed: Typed, at: number): FormView {
  const asked = Object.entries(typed).filter(([, text]) => text !== '');
  return {
    id: `take-${at}`,
    action: take,
    method: 'post',
    hidden: [...asked, ['answer', key] as const, ['rev', `${rev}`] as const]
      .map(([hidden, value]) => ({ name: hidden, value }))
      .concat(formMark()),
    problem: '',
    groups: boxes.helix === '' ? [] : [handGroup(at)],
    act: `Take this answer: ${name}, ${chance}`,
    kind: 'main',
    confirm: '',
    back: null,
  };
}

/** The answers that can be taken into the wheel that was asked about. typed: the boxes, which are sent along. */
export const takesView = (owner: Owner, answers: readonly TakenAnswer[], typed: Typed): readonly TakeView[] =>
  answers.map((answer, at) => ({
    form: takeForm(owner, answer, typed, at),
    lookOver: { says: 'Look it over in the form first', href: owner.form(answer.boxes) },
  }));
