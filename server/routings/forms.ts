import type { StoredFigure } from '../../db/figures.ts';
import type { OperationLine } from '../../db/operations.ts';
import type { Value } from '../../lib/figure/figure.ts';
import { printValue } from '../../lib/figure/print-value.ts';
import type { SetUp } from '../../lib/routing/operation.ts';
import { type Read, read } from '../../lib/values/read.ts';
import {
  angleField,
  choiceField,
  countField,
  type Field,
  lengthField,
  noteField,
  numberField,
  optional,
  textField,
} from '../forms/field.ts';
import { required, type Typed } from '../forms/form.ts';

const MINUTES = { least: 0, most: 100_000 };

const stepsField = noteField({ label: 'Steps', hint: 'One on each line.' });
const titleField = required(textField({ label: 'Title', most: 120 }), 'what is done at this operation');
const minutesField = countField({ label: 'Minutes planned', unit: 'min', limits: MINUTES });
const notesField = noteField({ label: 'Notes', hint: 'Printed on the route sheet.' });

/** What may be changed on an operation by hand. */
export const editFields = { title: titleField, steps: stepsField, minutes: minutesField, notes: notesField };

export const linesOf = (text: string): string[] =>
  text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');

export const typedOfOperation = ({ title, steps, minutes_planned, notes }: OperationLine): Typed => ({
  title,
  steps: steps.join('\n'),
  minutes: String(minutes_planned),
  notes,
});

const PLACES: Readonly<Record<SetUp['place'], string>> = {
  bench: 'Bench',
  lathe: 'Lathe',
  mill: 'Mill',
  oven: 'Oven',
  'machine under repair': 'On the machine that it belongs to',
};

/** The set-ups of a routing, by their key, and after them the bare places. */
export function setUpsFor(lines: readonly OperationLine[]): readonly SetUp[] {
  const known = new Map(lines.map(({ setUp }) => [setUp.key, setUp]));
  const bare = Object.entries(PLACES).map(
    ([place, says]): SetUp => ({ key: place, place: place as SetUp['place'], machineId: null, says }),
  );
  return [...known.values(), ...bare.filter(({ key }) => !known.has(key))];
}

/** An operation that the owner adds. */
export const ownFields = (lines: readonly OperationLine[]) => ({
  title: titleField,
  after: choiceField({
    label: 'After',
    choices: [
      ['0', 'nothing: it comes first'] as readonly [string, string],
      ...lines.map(({ id, title }, at) => [String(id), `${at + 1}. ${title}`] as const),
    ],
  }),
  setUp: choiceField({ label: 'Where', choices: setUpsFor(lines).map(({ key, says }) => [key, says] as const) }),
  steps: stepsField,
  need: optional(textField({ label: 'A tool that it needs', hint: 'By name, as in the tool drawer; it waits until that is here.' })),
  minutes: minutesField,
  notes: notesField,
});

const FAR = { in: { least: -200, most: 200 }, mm: { least: -5000, most: 5000 } } as const;
const WIDE = { least: -1_000_000_000, most: 1_000_000_000 };

const wrapped = <T>(field: Field<T>, wrap: (value: T) => Value): Field<Value> => ({
  ...field,
  read: (text): Read<Value> => {
    const one = field.read(text);
    return one.ok ? read(wrap(one.value)) : one;
  },
});

/** The box for a figure typed over: of the kind that the figure is. */
export function valueField({ figure, computed }: StoredFigure): Field<Value> {
  const asked = { label: 'The figure that shall stand', hint: 'What was worked out stays beside it.' };
  if ('length' in computed)
    return wrapped(lengthField({ ...asked, unit: figure.unit, limits: FAR[figure.unit] }), ({ length }) => ({ length }));
  if ('angle' in computed) return wrapped(angleField({ ...asked, limits: { least: 0, most: 360 } }), (angle) => ({ angle }));
  const unit = 'number' in computed || 'count' in computed ? (computed.unit ?? '') : '';
  if ('count' in computed)
    return wrapped(countField({ ...asked, unit, limits: { least: 0, most: WIDE.most } }), (count) => ({
      count,
      ...(unit ? { unit } : {}),
    }));
  if ('number' in computed) return wrapped(numberField({ ...asked, unit, limits: WIDE }), (number) => ({ number, unit, places: 4 }));
  return wrapped(required(textField(asked), 'the words that shall stand'), (words) => ({ words }));
}

/** What was typed over a figure, as it would be typed; '' when nothing was. */
export function typedOver({ typed, figure }: StoredFigure): string {
  if (!typed) return '';
  return printValue(typed, figure.unit).text.replaceAll('−', '-');
}
