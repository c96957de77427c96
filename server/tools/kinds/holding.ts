import { holeWords } from '../../../lib/cutters/describe.ts';
import { boreWords } from '../../../lib/routing/needs.ts';
import type { LengthUnit } from '../../../lib/values/length.ts';
import { BORE_NAMES, boreFields, boreOf, boreProblems, formsOfBore, typedOfBore } from '../../forms/bore-form.ts';
import { countField, optional, textField } from '../../forms/field.ts';
import type { ValuesOf } from '../../forms/form.ts';
import { factView, sizeView } from '../../sizes.ts';
import { type Detailed, formsOf, kindForm, lengthOf, maybeSize, sizeField, sizeTyped } from './kind-form.ts';

const runOutField = (unit: LengthUnit, hint: string) => maybeSize('Run-out', unit, 0, 0.25, hint);

const mandrelFields = (unit: LengthUnit) => ({
  ...boreFields(unit),
  holding: textField({ label: 'How it holds', hint: 'Taper, expanding, nut and washer, between centres', most: 60 }),
  runOut: runOutField(unit, 'Full indicator reading between centres; empty if not tried'),
});

function mandrelDetails(values: ValuesOf<ReturnType<typeof mandrelFields>>): Detailed {
  const problems = boreProblems(values);
  const bore = boreOf(values);
  if (!bore) return { ok: false, problems: { bore: 'Say which bore it fits: a mandrel is told by that.', ...problems } };
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const { holding, runOut } = values;
  const forms = { ...formsOfBore(values), ...formsOf({ runOut }) };
  return { ok: true, details: { kind: 'mandrel', bore, holding, runOut: lengthOf(runOut) }, forms };
}

export const mandrelForm = kindForm({
  kind: 'mandrel',
  one: 'Mandrel',
  many: 'Mandrels',
  blunts: false,
  fields: mandrelFields,
  fresh: { bore: 'plain' },
  groups: [
    { legend: 'The bore that it fits', names: BORE_NAMES },
    { legend: 'How it holds', names: ['holding', 'runOut'] },
  ],
  details: mandrelDetails,
  name: ({ bore }) => `Mandrel for a ${boreWords(bore)}`,
  typed: ({ tool, forms }, unit) => ({
    ...(typedOfBore(tool.bore, (name, length) => sizeTyped(length ?? null, forms[name], unit)) as Record<
      (typeof BORE_NAMES)[number],
      string
    >),
    holding: tool.holding,
    runOut: sizeTyped(tool.runOut, forms['runOut'], unit),
  }),
  short: ({ bore, holding }) => `for a ${boreWords(bore)}${holding ? `, ${holding}` : ''}`,
  sizes: ({ tool: { bore, holding, runOut }, forms }) => [
    factView('form', 'Fits a bore that is', bore.form === 'keyed' ? 'keyed' : bore.form),
    sizeView('diameter', bore.form === 'splined' ? 'Across the grooves' : 'Diameter', bore.diameter, forms['diameter']),
    ...(bore.form === 'splined'
      ? [sizeView('minor', 'Small diameter', bore.minor, forms['minor']), factView('splines', 'Splines', String(bore.splines))]
      : []),
    ...(bore.form === 'plain' ? [] : [sizeView('key-width', 'Key width', bore.keyWidth, forms['keyWidth'])]),
    ...(bore.form === 'keyed' ? [sizeView('key-depth', 'Keyway depth', bore.keyDepth, forms['keyDepth'])] : []),
    factView('holding', 'How it holds', holding || 'not said'),
    sizeView('run-out', 'Run-out, full reading', runOut, forms['runOut']),
  ],
  lacks: ({ runOut }) => (runOut === null ? 'Run-out not tried: prove it between centres before a blank goes on it.' : ''),
});

const arborFields = (unit: LengthUnit) => ({
  diameter: sizeField('Diameter', unit, 0.05, 6, 'Where the cutter sits: it takes cutters of that very hole'),
});

export const arborForm = kindForm({
  kind: 'arbor',
  one: 'Cutter arbor',
  many: 'Cutter arbors',
  blunts: false,
  fields: arborFields,
  fresh: {},
  groups: [{ legend: 'Its size', names: ['diameter'] }],
  details: ({ diameter }) => ({ ok: true, details: { kind: 'arbor', diameter: diameter.length }, forms: formsOf({ diameter }) }),
  name: ({ diameter }) => `Arbor ${holeWords(diameter)}`,
  typed: ({ tool, forms }, unit) => ({ diameter: sizeTyped(tool.diameter, forms['diameter'], unit) }),
  short: ({ diameter }) => holeWords(diameter),
  sizes: ({ tool, forms }) => [sizeView('diameter', 'Diameter', tool.diameter, forms['diameter'])],
  lacks: () => '',
});

const chuckFields = (unit: LengthUnit) => ({
  jaws: countField({ label: 'Jaws', limits: { least: 2, most: 8 }, unit: 'jaws' }),
  diameter: sizeField('Diameter of the body', unit, 0.5, 60),
  runOut: runOutField(unit, 'Full indicator reading on a ground bar. Not measured counts as 0.005 in: judgement'),
  topSpeed: optional(
    countField({
      label: 'Highest speed',
      hint: 'Stamped by the maker. Empty: held to 2,500 ft/min at the rim, judgement',
      unit: 'rev/min',
      limits: { least: 10, most: 20_000 },
    }),
  ),
});

export const chuckForm = kindForm({
  kind: 'chuck',
  one: 'Chuck',
  many: 'Chucks',
  blunts: false,
  fields: chuckFields,
  fresh: { jaws: '3' },
  groups: [{ legend: 'What it is', names: ['jaws', 'diameter', 'runOut', 'topSpeed'] }],
  details: ({ jaws, diameter, runOut, topSpeed }) => ({
    ok: true,
    details: { kind: 'chuck', jaws, diameter: diameter.length, runOut: lengthOf(runOut), topSpeedRpm: topSpeed },
    forms: formsOf({ diameter, runOut }),
  }),
  name: ({ jaws, diameter }) => `${jaws}-jaw chuck, ${holeWords(diameter)}`,
  typed: ({ tool, forms }, unit) => ({
    jaws: String(tool.jaws),
    diameter: sizeTyped(tool.diameter, forms['diameter'], unit),
    runOut: sizeTyped(tool.runOut, forms['runOut'], unit),
    topSpeed: tool.topSpeedRpm === null ? '' : String(tool.topSpeedRpm),
  }),
  short: ({ jaws, diameter, topSpeedRpm }) =>
    `${jaws} jaws, ${holeWords(diameter)}${topSpeedRpm === null ? '' : `, to ${topSpeedRpm} rev/min`}`,
  sizes: ({ tool, forms }) => [
    factView('jaws', 'Jaws', String(tool.jaws)),
    sizeView('diameter', 'Diameter of the body', tool.diameter, forms['diameter']),
    sizeView('run-out', 'Run-out, full reading', tool.runOut, forms['runOut']),
    tool.topSpeedRpm === null
      ? factView('top-speed', 'Highest speed', 'not stamped')
      : factView('top-speed', 'Highest speed', String(tool.topSpeedRpm), 'rev/min'),
  ],
  lacks: ({ topSpeedRpm, runOut }) =>
    [
      topSpeedRpm === null ? 'Its highest speed is not known: an iron body is held to 2,500 ft/min at the rim.' : '',
      runOut === null ? 'Its run-out is not measured: it counts as 0.005 in.' : '',
    ]
      .filter((text) => text !== '')
      .join(' '),
});

export const otherForm = kindForm({
  kind: 'other',
  one: 'Other tool',
  many: 'Taps, gauges, dogs and the rest',
  blunts: false,
  fields: () => ({}),
  fresh: {},
  groups: [],
  details: () => ({ ok: true, details: { kind: 'other' }, forms: {} }),
  name: () => '',
  typed: () => ({}),
  short: () => '',
  sizes: () => [],
  lacks: () => '',
});
