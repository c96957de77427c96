import { formOfText, formText } from '../../db/forms.ts';
import type { ItemLine } from '../../db/items.ts';
import { conditionOf } from '../../db/spares/condition.ts';
import { CONDITIONS } from '../../lib/blanks/spare-wheel.ts';
import { type Hardness, MATERIALS } from '../../lib/gears/gear.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { choiceField, lengthField, noteField, textField, wordsField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Fields, type Problems, required, type Typed, type ValuesOf } from '../forms/form.ts';
import { gearFields } from '../forms/gear-form.ts';
import { gearGroups, typedOfGear } from '../forms/gear-typed.ts';
import { lengthTyped } from '../forms/ring-field.ts';
import type { FieldGroup } from '../page.ts';
import { conditionWithTest, FILE_PLACES, FILE_WORDS, type FileTest, fileTestOf, hardnessBy, wasTried } from './file-test.ts';

export const ITEM_KINDS = ['wheel', 'stock', 'casting', 'other'] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

export const KIND_WORDS: Readonly<Record<ItemKind, { readonly one: string; readonly many: string }>> = {
  wheel: { one: 'wheel', many: 'wheels' },
  stock: { one: 'bar', many: 'bars' },
  casting: { one: 'casting', many: 'castings' },
  other: { one: 'other thing', many: 'other things' },
};

const nameField = textField({ label: 'Name', most: 80 });
export const keptField = textField({ label: 'Kept in', hint: 'Drawer, box, shelf', most: 80 });
export const materialField = wordsField({ label: 'Material', words: MATERIALS });

const whereFields = { keptIn: keptField, notes: noteField({ label: 'Notes' }) };

const TRIED = { tip: 'File on a tip', root: 'File in a root', web: 'File on the web', bore: 'File in the bore' } as const;
const fileField = (place: keyof typeof TRIED) => wordsField({ label: TRIED[place], words: FILE_WORDS });

const wheelOnly = {
  trust: choiceField({
    label: 'Trust',
    hint: 'Of two like wheels the original is kept and the other cut',
    choices: [
      ['original', 'original to its machine'],
      ['replacement', 'a replacement'],
      ['unknown', 'not known'],
    ],
  }),
  teethLook: wordsField({ label: 'Teeth', words: CONDITIONS }),
  boreLook: wordsField({ label: 'Bore', words: CONDITIONS }),
  fileTip: fileField('tip'),
  fileRoot: fileField('root'),
  fileWeb: fileField('web'),
  fileBore: fileField('bore'),
  material: materialField,
};

const WHEEL_NAMES = ['material', 'fileTip', 'fileRoot', 'fileWeb', 'fileBore'] as const;

const wheelFields = (unit: LengthUnit) => ({
  ...gearFields(unit),
  ...wheelOnly,
  name: { ...nameField, hint: 'Empty: it goes by its teeth' },
  ...whereFields,
});

const bar = (label: string, unit: LengthUnit, most: number, hint = '') =>
  lengthField({ label, hint, unit, limits: unit === 'in' ? { least: 0.05, most } : { least: 1, most: most * 25 } });

const stockFields = (unit: LengthUnit) => ({
  material: materialField,
  diameter: bar('Diameter', unit, 40),
  length: bar('Length left', unit, 400, 'A blank parted off takes its length away by itself'),
  name: { ...nameField, hint: 'Empty: it goes by its diameter. The grade, if known' },
  ...whereFields,
});

const plainFields = () => ({ name: required(nameField, 'what it is called'), material: materialField, ...whereFields });

/** The form of one kind of thing. */
export const itemFields = (kind: ItemKind, unit: LengthUnit): Fields =>
  kind === 'wheel' ? wheelFields(unit) : kind === 'stock' ? stockFields(unit) : plainFields();

export type WheelValues = ValuesOf<typeof wheelOnly> & { readonly name: string; readonly keptIn: string; readonly notes: string };
export type StockValues = ValuesOf<ReturnType<typeof stockFields>>;
export type PlainValues = ValuesOf<ReturnType<typeof plainFields>>;

const testOf = ({ fileTip, fileRoot, fileWeb, fileBore }: WheelValues): FileTest => ({
  tip: fileTip,
  root: fileRoot,
  web: fileWeb,
  bore: fileBore,
});

/** before: the hardness on record, which stands while no file was tried here. */
export function wheelColumns(values: WheelValues, before: Hardness) {
  const test = testOf(values);
  return {
    name: values.name,
    trust: values.trust,
    condition: conditionWithTest({ teeth: values.teethLook, bore: values.boreLook }, test),
    hardness: wasTried(test) ? hardnessBy(test) : before,
    material: values.material,
    kept_in: values.keptIn,
    notes: values.notes,
  };
}

const plainColumns = ({ name, material, keptIn, notes }: PlainValues) => ({ name, material, kept_in: keptIn, notes });

const NO_WHEEL = { trust: 'unknown', condition: '', hardness: 'not tried' } as const;

export function stockColumns(values: StockValues) {
  const { diameter, length } = values;
  return {
    ...plainColumns(values),
    ...NO_WHEEL,
    diameter_nm: diameter.length,
    diameter_form: formText(diameter.form),
    length_nm: length.length,
    length_form: formText(length.form),
  };
}

export const thingColumns = (values: PlainValues) => ({ ...plainColumns(values), ...NO_WHEEL });

/** An empty form. */
export const freshItem = (kind: ItemKind): Typed =>
  kind === 'wheel'
    ? {
        system: 'full-14.5',
        body: 'unknown',
        trust: 'unknown',
        teethLook: 'not looked at',
        boreLook: 'not looked at',
        material: 'unknown',
        ...Object.fromEntries(FILE_PLACES.map((place) => [`file${place.charAt(0).toUpperCase()}${place.slice(1)}`, 'not tried'])),
      }
    : { material: kind === 'stock' ? 'steel' : 'unknown' };

function typedOfWheel(line: ItemLine, unit: LengthUnit): Typed {
  const [looked, test] = [conditionOf(line.condition), fileTestOf(line.condition)];
  const wheel = line.stored ?? line.unknown;
  return {
    ...(wheel ? typedOfGear(wheel, unit) : {}),
    trust: line.trust,
    teethLook: looked.teeth,
    boreLook: looked.bore,
    fileTip: test.tip,
    fileRoot: test.root,
    fileWeb: test.web,
    fileBore: test.bore,
  };
}

/** What would have been typed for a thing on record. */
export function typedOfItem(line: ItemLine, unit: LengthUnit): Typed {
  const size = (nm: number | null, form: string | null): string =>
    nm === null || form === null ? '' : lengthTyped(nm as Length, formOfText(form), unit);
  const common = { name: line.name, material: line.material, keptIn: line.kept_in, notes: line.notes };
  if (line.kind === 'wheel') return { ...typedOfWheel(line, unit), ...common };
  return { ...common, diameter: size(line.diameter_nm, line.diameter_form), length: size(line.length_nm, line.length_form) };
}

const FILE_HINT = 'A file that bites on the teeth and skates nowhere: soft. Skates on the teeth, bites on the web: case-hardened.';

export function itemGroups(kind: ItemKind, unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const fields = itemFields(kind, unit);
  const group = (legend: string, names: readonly string[], hint = ''): FieldGroup => ({
    ...fieldGroup(legend, fields, typed, problems, names),
    hint,
  });
  const where = group('Where it is', ['keptIn', 'notes']);
  if (kind === 'wheel')
    return [
      ...gearGroups(typed, problems, unit),
      group('How it looks', ['trust', 'teethLook', 'boreLook']),
      group('Metal and file test', WHEEL_NAMES, FILE_HINT),
      group('Name and place', ['name', 'keptIn', 'notes']),
    ];
  if (kind === 'stock') return [group('The bar', ['material', 'diameter', 'length', 'name']), where];
  return [group('What it is', ['name', 'material']), where];
}
