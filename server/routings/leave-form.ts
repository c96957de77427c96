import type { OperationLine } from '../../db/operations.ts';
import { to } from '../addresses.ts';
import { choiceField, noteField, optional } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { FormView } from '../page.ts';

/** Where one stops, and a word to oneself. */
export const leaveFields = (lines: readonly OperationLine[]) => ({
  operation: optional(
    choiceField({
      label: 'I stop at',
      choices: lines.filter(({ state }) => state !== 'struck out').map(({ id, title }) => [String(id), title] as const),
    }),
  ),
  note: noteField({ label: 'A word for next time', hint: 'What is set, what is not.' }),
});

/** The operation at which one probably stops: the one said before, else the first that is ready, else the first to do. */
function likely(lines: readonly OperationLine[], said: number | null): string {
  const open = lines.filter(({ state }) => state !== 'done' && state !== 'struck out');
  const found = open.find(({ id }) => id === said) ?? open.find(({ state }) => state === 'ready') ?? open[0];
  return found ? String(found.id) : '';
}

/** One tap keeps the place; the note may stay empty. */
export function leaveForm(
  routingId: number,
  lines: readonly OperationLine[],
  said: number | null,
  back: string,
  tried: { readonly typed: Typed; readonly problems: Problems } | null = null,
): FormView {
  const typed = tried?.typed ?? { operation: likely(lines, said), note: '' };
  return {
    id: 'leave',
    action: to.routingLeave(routingId),
    method: 'post',
    hidden: [{ name: 'back', value: back }, formMark()],
    problem: '',
    groups: [fieldGroup('', leaveFields(lines), typed, tried?.problems ?? {})],
    act: 'I stop here',
    kind: 'main',
    confirm: '',
    back: null,
  };
}
