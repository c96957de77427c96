import type { FieldGroup, FieldView } from '../page.ts';
import type { Field } from './field.ts';
import type { Fields, Problems, Typed } from './form.ts';

const FEW = 4;

function kindOf(field: Field<unknown>): FieldView['kind'] {
  if (field.kind === 'long text') return 'area';
  if (field.kind === 'tick') return 'ticks';
  if (field.kind !== 'choice') return 'line';
  return field.choices.length <= FEW ? 'rows' : 'list';
}

const INPUT_MODES: Readonly<Record<Field<unknown>['kind'], FieldView['inputmode']>> = {
  count: 'numeric',
  decimal: 'decimal',
  text: 'text',
  choice: 'text',
  'long text': 'text',
  tick: 'text',
  hidden: 'text',
};

/** A field as the page shows it, with what was typed and what was wrong. */
export function fieldView(name: string, field: Field<unknown>, typed: Typed, problems: Problems, idPrefix = 'f'): FieldView {
  const value = typed[name] ?? '';
  const ticks = field.kind === 'tick' ? [{ value: 'yes', says: field.label, hint: '', chosen: value === 'yes' }] : null;
  const none = field.optional && field.kind === 'choice' ? [{ value: '', says: 'not said', hint: '', chosen: value === '' }] : [];
  const choices = field.choices.map(([one, says]) => ({ value: one, says, hint: '', chosen: one === value }));
  return {
    kind: kindOf(field),
    name,
    id: `${idPrefix}-${name}`,
    label: field.optional && field.kind !== 'tick' ? `${field.label} (may stay empty)` : field.label,
    value,
    unit: field.unit,
    hint: field.hint,
    problem: problems[name] ?? '',
    inputmode: INPUT_MODES[field.kind],
    choices: ticks ?? [...none, ...choices],
  };
}

/** Some or all fields of a form as one group. */
export function fieldGroup(
  legend: string,
  fields: Fields,
  typed: Typed,
  problems: Problems,
  names: readonly string[] = Object.keys(fields),
): FieldGroup {
  const shown = names.flatMap((name) => {
    const field = fields[name];
    return field ? [fieldView(name, field, typed, problems)] : [];
  });
  return { legend, hint: '', folded: false, fields: shown };
}
