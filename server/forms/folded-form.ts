import type { FormView } from '../page.ts';

/** A whole form that is folded away until it is touched; it stands open when it came back with a problem. */
export type FoldedForm = { readonly summary: string; readonly open: boolean; readonly form: FormView };

const isAmiss = (form: FormView): boolean =>
  form.problem !== '' || form.groups.some((group) => group.fields.some((field) => field.problem !== ''));

export const foldedForm = (summary: string, form: FormView, open = false): FoldedForm => ({ summary, form, open: open || isAmiss(form) });
