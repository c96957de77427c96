import type { MachineLine, NewMachine } from '../../db/machines.ts';
import type { Dial } from '../../lib/tooling/tooling.ts';
import { inUnit, type LengthUnit, ofUnit } from '../../lib/values/length.ts';
import { type LengthForm, printShort } from '../../lib/values/print.ts';
import { choiceField, countField, noteField, numberField, optional, textField, tickField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Problems, required, type Typed, type ValuesOf } from '../forms/form.ts';
import { NO_QUADRANT, QUADRANT_FIELDS, QUADRANT_NAMES, quadrantProblems, quadrantText, typedOfQuadrant } from '../forms/quadrant-form.ts';
import type { FieldGroup } from '../page.ts';
import { feedsField, speedsField } from './number-line.ts';

const READS: readonly (readonly [Dial['reads'], string])[] = [
  ['travel', 'tool travel'],
  ['diameter', 'off the diameter'],
];

const dialFields = (name: string) => ({
  reads: optional(
    choiceField({
      label: `${name} dial reads`,
      hint: 'Off the diameter when 10 divisions take 10 off the diameter; tool travel when they take 20',
      choices: READS,
    }),
  ),
  unit: choiceField({
    label: `${name} dial is in`,
    choices: [
      ['in', 'inches'],
      ['mm', 'millimetres'],
    ],
  }),
  division: optional(
    numberField({ label: 'Least division', hint: 'As the dial reads: 0.001 or 0.02', limits: { least: 0.00001, most: 10 } }),
  ),
  perTurn: optional(countField({ label: 'Divisions in a turn', limits: { least: 2, most: 2000 } })),
  lash: optional(
    numberField({
      label: 'Lash',
      hint: 'What the dial turns before the slide moves, as it reads: 0.012. Empty: not measured',
      limits: { least: 0, most: 10 },
    }),
  ),
});

const cross = dialFields('Cross-slide');
const depth = dialFields('Depth');

/** unit: of the feeds. */
export const machineFields = (unit: LengthUnit) => ({
  name: required(textField({ label: 'Name', hint: 'As you call it in the shop', most: 80 }), 'what the machine is called'),
  kind: choiceField({
    label: 'Kind',
    choices: [
      ['lathe', 'lathe'],
      ['mill', 'milling machine'],
      ['drill', 'drilling machine'],
      ['shaper', 'shaper'],
      ['planer', 'planer'],
      ['other', 'other'],
    ],
  }),
  speeds: speedsField(),
  feeds: feedsField(unit),
  feedsPer: choiceField({
    label: 'Feeds are',
    choices: [
      ['turn', 'for each turn of the spindle'],
      ['minute', 'for each minute'],
    ],
  }),
  crossReads: cross.reads,
  crossUnit: cross.unit,
  crossDivision: cross.division,
  crossPerTurn: cross.perTurn,
  crossLash: cross.lash,
  depthReads: depth.reads,
  depthUnit: depth.unit,
  depthDivision: depth.division,
  depthPerTurn: depth.perTurn,
  depthLash: depth.lash,
  nose: textField({ label: 'Spindle nose', hint: 'Thread, taper or cam as known', most: 80 }),
  screwedNose: tickField({ label: 'Screwed nose: the chuck screws on' }),
  ...QUADRANT_FIELDS,
  notes: noteField({ label: 'Notes' }),
});

export type MachineValues = ValuesOf<ReturnType<typeof machineFields>>;

export const freshMachine = (unit: LengthUnit): Typed => ({
  ...NO_QUADRANT,
  kind: 'lathe',
  feedsPer: 'turn',
  crossUnit: unit,
  depthUnit: unit,
});

type DialTyped = {
  readonly reads: Dial['reads'] | null;
  readonly unit: Dial['unit'];
  readonly division: number | null;
  readonly perTurn: number | null;
  readonly lash: number | null;
};
const crossOf = (values: MachineValues): DialTyped => ({
  reads: values.crossReads,
  unit: values.crossUnit,
  division: values.crossDivision,
  perTurn: values.crossPerTurn,
  lash: values.crossLash,
});
const depthOf = (values: MachineValues): DialTyped => ({
  reads: values.depthReads,
  unit: values.depthUnit,
  division: values.depthDivision,
  perTurn: values.depthPerTurn,
  lash: values.depthLash,
});

/** A turn of a real feed screw lies between these, in inches. */
const TURN_IN = { least: 0.01, most: 2 };

/** A dial is whole or not there; and a turn of it is one that a feed screw may have. */
function dialProblems({ reads, unit, division, perTurn, lash }: DialTyped, name: 'cross' | 'depth'): Problems {
  if (reads === null && division === null && perTurn === null && lash === null) return {};
  const whole = 'A dial wants what it reads, its least division and its divisions in a turn; or leave all three empty.';
  if (reads === null) return { [`${name}Reads`]: whole };
  if (division === null) return { [`${name}Division`]: whole };
  if (perTurn === null) return { [`${name}PerTurn`]: whole };
  const turn = inUnit(ofUnit(division * perTurn, unit), 'in');
  if (lash !== null && lash >= division * perTurn)
    return { [`${name}Lash`]: 'A whole turn of lash and more: look at the nut, or at the number.' };
  if (turn >= TURN_IN.least && turn <= TURN_IN.most) return {};
  const says = `${printShort(division, 6)} × ${perTurn} makes one turn ${printShort(division * perTurn, 4)} ${unit}: no feed screw has that. Look at the dial again.`;
  return { [`${name}Division`]: says };
}

export const machineProblems = (values: MachineValues, typed: Typed): Problems => ({
  ...quadrantProblems(typed),
  ...dialProblems(crossOf(values), 'cross'),
  ...dialProblems(depthOf(values), 'depth'),
});

const dialOf = ({ reads, unit, division, perTurn, lash }: DialTyped): Dial | null =>
  reads === null || division === null || perTurn === null
    ? null
    : { reads, unit, division: ofUnit(division, unit), perTurn, ...(lash === null ? {} : { lash: ofUnit(lash, unit) }) };

/** The machine that was typed, once machineProblems has found none. */
export const machineOf = (values: MachineValues, typed: Typed): NewMachine => ({
  quadrant: quadrantText(typed),
  name: values.name,
  kind: values.kind,
  speedsRpm: values.speeds,
  feeds: values.feeds.feeds.map(({ length }) => length),
  feedsPer: values.feedsPer,
  crossDial: dialOf(crossOf(values)),
  depthDial: dialOf(depthOf(values)),
  screwedNose: values.screwedNose,
  nose: values.nose,
  notes: values.notes,
  ...(values.feeds.form ? { feedForm: values.feeds.form } : {}),
});

const dialTyped = (name: 'cross' | 'depth', dial: Dial | null, unit: LengthUnit): Typed => ({
  [`${name}Reads`]: dial?.reads ?? '',
  [`${name}Unit`]: dial?.unit ?? unit,
  [`${name}Division`]: dial ? printShort(inUnit(dial.division, dial.unit), 6) : '',
  [`${name}PerTurn`]: dial ? String(dial.perTurn) : '',
  [`${name}Lash`]: dial?.lash === undefined ? '' : printShort(inUnit(dial.lash, dial.unit), 6),
});

/** What would have been typed for a machine on record. form: of its feeds. */
export function typedOfShopMachine({ row, machine }: MachineLine, form: LengthForm | null, unit: LengthUnit): Typed {
  const shown = form ?? { unit, places: 4 };
  const feeds = machine.feeds.map((feed) => printShort(inUnit(feed, shown.unit), 5)).join(' ');
  return {
    name: row.name,
    kind: row.kind,
    speeds: machine.speedsRpm.map((rpm) => printShort(rpm, 2)).join(' '),
    feeds: feeds === '' || shown.unit === unit ? feeds : `${feeds} ${shown.unit}`,
    feedsPer: row.feeds_per,
    ...dialTyped('cross', machine.crossDial, unit),
    ...dialTyped('depth', machine.depthDial, unit),
    nose: row.nose,
    screwedNose: row.screwed_nose === 1 ? 'yes' : '',
    ...typedOfQuadrant(row.quadrant),
    notes: row.notes,
  };
}

const DIAL = ['Reads', 'Unit', 'Division', 'PerTurn', 'Lash'];

export function machineGroups(unit: LengthUnit, typed: Typed, problems: Problems): FieldGroup[] {
  const fields = machineFields(unit);
  const group = (legend: string, names: readonly string[], hint = ''): FieldGroup => ({
    ...fieldGroup(legend, fields, typed, problems, names),
    hint,
  });
  return [
    group('The machine', ['name', 'kind']),
    group('Speeds and feeds', ['speeds', 'feeds', 'feedsPer'], 'Only what the machine really has is ever offered.'),
    group(
      'Cross-slide dial',
      DIAL.map((name) => `cross${name}`),
      'On a mill: the table’s cross travel.',
    ),
    group(
      'Depth dial',
      DIAL.map((name) => `depth${name}`),
      'On a mill: the knee, or what sets the depth of cut.',
    ),
    group(
      'Quadrant of the change wheels',
      QUADRANT_NAMES,
      'Measured once: whether a train can stand is then known before anything is fetched.',
    ),
    group('Spindle', ['nose', 'screwedNose', 'notes']),
  ];
}
