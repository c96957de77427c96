import { angleWords, holeWords, rangeWords } from '../../../lib/cutters/describe.ts';
import { isKnown } from '../../../lib/cutters/meets.ts';
import { WHOLE_NUMBERS } from '../../../lib/cutters/ranges.data.ts';
import { printPitch, readPitch } from '../../../lib/gears/pitch.ts';
import type { Cutter } from '../../../lib/tooling/tooling.ts';
import { toDegrees } from '../../../lib/values/angle.ts';
import type { LengthUnit } from '../../../lib/values/length.ts';
import { printShort } from '../../../lib/values/print.ts';
import { quoted, type Read, read, unread } from '../../../lib/values/read.ts';
import { angleField, choiceField, countField, optional, readField, textField } from '../../forms/field.ts';
import type { ValuesOf } from '../../forms/form.ts';
import { factView, sizeView } from '../../sizes.ts';
import { type Detailed, formsOf, kindForm, lengthOf, maybeSize, sizeTyped } from './kind-form.ts';

type Range = { readonly from: number; readonly to: number | null };
const RANGE = /^(\d{1,4})(?:\s*(?:-|–|to)\s*(?:(\d{1,4})|(?:a\s+)?rack))?$/i;
const [LEAST, MOST] = [4, 1000];

/** 21 to 25, 21-25, 135 to a rack, 30. */
export function readTeethRange(text: string): Read<Range> {
  const found = RANGE.exec(text.trim().replace(/\s+teeth$/i, ''));
  if (!found) return unread(`${quoted(text)} is no range of teeth. Type it as 21 to 25, or 135 to a rack.`);
  const from = Number(found[1]);
  const to = /rack$/i.test(text.trim()) ? null : Number(found[2] ?? found[1]);
  if (from < LEAST || from > MOST || (to !== null && to > MOST))
    return unread(`${quoted(text)}: teeth are from ${LEAST} to ${MOST}, or up to a rack.`);
  return to !== null && to < from ? unread(`${quoted(text)} runs backwards: the smaller count comes first.`) : read({ from, to });
}

const fields = (unit: LengthUnit) => ({
  pitch: optional(readField({ label: 'Pitch', hint: 'As stamped: 8 DP, module 2.5 or 5/16 CP', read: (text) => readPitch(text) })),
  angle: optional(angleField({ label: 'Pressure angle', hint: '14.5 on most old cutters', limits: { least: 5, most: 45 } })),
  teeth: optional(readField({ label: 'Tooth range', hint: 'As stamped: 21 to 25, or 135 to a rack', read: readTeethRange })),
  number: textField({ label: 'Number as stamped', hint: 'The range decides, never the number: sets differ by maker', most: 20 }),
  stampedDepth: maybeSize('Depth as stamped', unit, 0.005, 4),
  hole: maybeSize('Hole', unit, 0.05, 6, 'Tells which arbor takes it'),
  diameter: maybeSize('Diameter', unit, 0.2, 20, 'Tells its speed and how far it has to run in'),
  width: maybeSize('Width', unit, 0.02, 6, 'Used to bring it central'),
  steel: choiceField({
    label: 'Steel',
    choices: [
      ['unknown', 'not known: run as carbon steel'],
      ['carbon', 'carbon steel'],
      ['high-speed', 'high-speed steel'],
      ['carbide', 'carbide'],
    ],
  }),
  exactFor: optional(
    countField({
      label: 'Form is exact for',
      hint: 'If known; else the owner’s default decides',
      unit: 'teeth',
      limits: { least: LEAST, most: MOST },
    }),
  ),
});

function details(values: ValuesOf<ReturnType<typeof fields>>): Detailed {
  const { pitch, angle, teeth, number, stampedDepth, hole, diameter, width, steel, exactFor } = values;
  if (!pitch && angle === null && !teeth && number === '' && !stampedDepth && !hole && !diameter && !width)
    return { ok: false, problems: { pitch: 'Nothing is typed yet: give what is stamped on it, or one of its sizes.' } };
  if (hole && diameter && hole.length >= diameter.length)
    return { ok: false, problems: { hole: 'The hole is as large as the cutter. Measure both again.' } };
  if (exactFor !== null && teeth && (exactFor < teeth.from || (teeth.to !== null && exactFor > teeth.to)))
    return { ok: false, problems: { exactFor: `It cuts ${rangeWords(teeth.from, teeth.to)}: a count within that range.` } };
  return {
    ok: true,
    details: {
      kind: 'cutter',
      pitch,
      angle,
      number,
      teethFrom: teeth?.from ?? null,
      teethTo: teeth?.to ?? null,
      hole: lengthOf(hole),
      diameter: lengthOf(diameter),
      width: lengthOf(width),
      stampedDepth: lengthOf(stampedDepth),
      steel,
      exactFor,
    },
    forms: formsOf({ hole, diameter, width, stampedDepth }),
  };
}

type Form = Pick<Cutter, 'number' | 'pitch' | 'angle' | 'teethFrom' | 'teethTo'>;
const numberWords = ({ number }: Form): string => (number === '' ? '' : /^\d/.test(number) ? `No. ${number}` : number);
const range = ({ teethFrom, teethTo }: Form): string => (teethFrom === null ? '' : rangeWords(teethFrom, teethTo));
const pitchWords = ({ pitch }: Form): string => (pitch ? printPitch(pitch) : '');
const listed = (words: readonly string[]): string => words.filter((word) => word !== '').join(', ');

/** What must still be typed before it is offered, and where the usual set has its number. */
function lacks(cutter: Cutter): string {
  if (isKnown(cutter)) return '';
  const missing = [
    ...(cutter.pitch ? [] : ['pitch']),
    ...(cutter.angle === null ? ['pressure angle'] : []),
    ...(cutter.teethFrom === null ? ['tooth range'] : []),
  ];
  const usual = WHOLE_NUMBERS.find(({ number }) => number === cutter.number.replace(/^no\.?\s*/i, ''));
  const guess =
    usual && cutter.teethFrom === null
      ? ` In the commonest set No. ${usual.number} cuts ${rangeWords(usual.from, usual.to)} (${usual.source}); other makers number theirs the other way round.`
      : '';
  return `Offered for nothing until its ${listed(missing).replace(/, ([^,]*)$/, ' and $1')} ${missing.length === 1 ? 'is' : 'are'} typed in: number sets differ by maker.${guess}`;
}

const STEELS = { unknown: 'steel not known', carbon: 'carbon steel', 'high-speed': 'high-speed steel', carbide: 'carbide' } as const;

export const cutterForm = kindForm({
  kind: 'cutter',
  one: 'Form cutter',
  many: 'Form cutters',
  blunts: true,
  fields,
  fresh: { steel: 'unknown' },
  groups: [
    { legend: 'What it cuts', names: ['pitch', 'angle', 'teeth', 'number', 'stampedDepth'] },
    { legend: 'Its sizes', names: ['hole', 'diameter', 'width', 'steel', 'exactFor'] },
  ],
  details,
  name: (cutter) => listed([`Cutter ${numberWords(cutter)}`.trim(), pitchWords(cutter)]),
  typed: ({ tool, forms }, unit) => ({
    pitch: pitchWords(tool),
    angle: tool.angle === null ? '' : printShort(toDegrees(tool.angle), 6),
    teeth:
      tool.teethFrom === null
        ? ''
        : range(tool)
            .replace(' teeth to', ' to')
            .replace(/ teeth$/, ''),
    number: tool.number,
    stampedDepth: sizeTyped(tool.stampedDepth, forms['stampedDepth'], unit),
    hole: sizeTyped(tool.hole, forms['hole'], unit),
    diameter: sizeTyped(tool.diameter, forms['diameter'], unit),
    width: sizeTyped(tool.width, forms['width'], unit),
    steel: tool.steel,
    exactFor: tool.exactFor === null ? '' : String(tool.exactFor),
  }),
  short: (cutter) =>
    listed([
      numberWords(cutter),
      pitchWords(cutter),
      cutter.angle === null ? '' : angleWords(cutter.angle),
      range(cutter),
      cutter.hole === null ? '' : `hole ${holeWords(cutter.hole)}`,
    ]) || 'nothing typed yet',
  sizes: ({ tool, forms }) => [
    factView('pitch', 'Pitch', pitchWords(tool) || 'not typed'),
    tool.angle === null
      ? factView('angle', 'Pressure angle', 'not typed')
      : factView('angle', 'Pressure angle', printShort(toDegrees(tool.angle), 3), '°'),
    factView('range', 'Cuts', range(tool) || 'not typed'),
    factView('number', 'Stamped', tool.number === '' ? 'none' : `No. ${tool.number.replace(/^no\.?\s*/i, '')}`),
    sizeView('depth', 'Depth as stamped', tool.stampedDepth, forms['stampedDepth']),
    sizeView('hole', 'Hole', tool.hole, forms['hole']),
    sizeView('diameter', 'Diameter', tool.diameter, forms['diameter']),
    sizeView('width', 'Width', tool.width, forms['width']),
    factView('steel', 'Steel', STEELS[tool.steel]),
    ...(tool.exactFor === null ? [] : [factView('exact', 'Form is exact for', String(tool.exactFor), 'teeth')]),
  ],
  lacks,
});
