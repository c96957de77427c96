import type { GearToCut } from '../../lib/cutters/choice.ts';
import { formPicture } from '../../lib/cutters/form-picture.ts';
import { GROUND_FOR, ordinates } from '../../lib/cutters/ground-space.ts';
import { type GroundAsked, groundEdge, groundToolAnswer } from '../../lib/cutters/ground-tool.sums.ts';
import { ALL_NUMBERS, numberedForm, numberedFormAnswer } from '../../lib/cutters/numbered-form.sums.ts';
import type { NumberedCutter } from '../../lib/cutters/ranges.data.ts';
import { CONVENTIONS } from '../../lib/cutters/ranges.ts';
import { twoDiscAnswer } from '../../lib/cutters/two-disc.sums.ts';
import { cutterFormDrawing } from '../../lib/drawing/cutter-form-drawing.ts';
import { groundToolSheet, SHEET_SCALES } from '../../lib/drawing/ground-tool-sheet.ts';
import { spaceProfileDrawing, type ToolDrawn, toolOutline } from '../../lib/drawing/space-profile-drawing.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import { moduleOf, unitOfPitch } from '../../lib/gears/tooth.ts';
import { type Angle, degrees } from '../../lib/values/angle.ts';
import { inUnit } from '../../lib/values/length.ts';
import { printDegrees, printShort } from '../../lib/values/print.ts';
import { angleField, choiceField, numberField, optional } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { size, sizeIfKnown } from './asks.ts';
import { WHEEL_ABOUT, wheelAsks, wheelOf } from './gears.ts';
import { sum } from './sum.ts';

const helixField = optional(
  angleField({
    label: 'Helix angle',
    hint: 'Empty: straight teeth. Else the pitch is square to the teeth',
    limits: { least: 0, most: 60 },
  }),
);
const cutAsks = { ...wheelAsks, helix: helixField };

/** The wheel to cut; the hand of its teeth makes no difference to a cutter. */
const gearOf = ({ helix, ...wheel }: ValuesOf<typeof wheelAsks> & { readonly helix: Angle | null }): GearToCut => ({
  ...wheelOf(wheel),
  helix: helix === null || helix === degrees(0) ? null : { angle: helix, hand: 'right' },
});

function numberedBy(number: string): NumberedCutter {
  const found = ALL_NUMBERS.find((one) => one.number === number);
  if (!found) throw new RangeError(`no cutter is numbered ${number}`);
  return found;
}

const numberedSum = sum({
  path: 'numbered-cutter',
  title: 'A numbered cutter on any wheel',
  group: 'Cutters',
  tells:
    'Thousandths that a numbered or half-numbered cutter is off all along the flank, under both opinions on the count it is right for.',
  asks: {
    ...cutAsks,
    number: choiceField({
      label: 'Cutter',
      choices: ALL_NUMBERS.map(({ number, from, to }) => [number, `No. ${number}: ${from} to ${to ?? 'a rack'}`] as const),
    }),
    convention: choiceField({
      label: 'Drawn as right for',
      choices: [
        [CONVENTIONS[0], 'the low end of its range'],
        [CONVENTIONS[1], 'the count that an old treatise names'],
      ],
    }),
  },
  example: { teeth: '35', pitch: '8 DP', system: 'full-14.5', helix: '', number: '4', convention: 'low end' },
  about: { ...WHEEL_ABOUT, count: ['number'] },
  work: ({ number, convention: _, ...wheel }) => numberedFormAnswer(gearOf(wheel), numberedBy(number)),
  draw: ({ number, convention, ...wheel }) => {
    const gear = gearOf(wheel);
    const form = numberedForm(gear, numberedBy(number), convention);
    const picture = formPicture(gear, form);
    if (!picture) return null;
    const [module, unit] = [moduleOf(gear.pitch), unitOfPitch(gear.pitch)];
    return cutterFormDrawing({ picture, module, unit, own: `${gear.teeth} teeth`, form: `No. ${number} as right for ${form.exact.count}` });
  },
});

const groundAsks = {
  ...cutAsks,
  kind: choiceField({
    label: 'For',
    choices: [
      [GROUND_FOR[0], 'a wheel'],
      [GROUND_FOR[1], 'a ring with teeth on the inside'],
      [GROUND_FOR[2], 'a rack'],
    ],
  }),
  fillet: sizeIfKnown({ label: 'Corner of the tip', hint: 'Radius; empty: the usual one', least: 0, most: 2 }),
  step: size({ label: 'A width every', hint: 'Along the depth', least: 0.0001, most: 1 }),
  times: choiceField({
    label: 'Printed at',
    choices: SHEET_SCALES.map((times) => [String(times), times === 1 ? 'true size' : `${times} times size`] as const),
  }),
  profileShift: optional(
    numberField({
      label: 'Profile shift',
      hint: 'Plus: away from the middle; empty: none',
      limits: { least: -2, most: 2 },
      unit: 'of 1/P or m',
    }),
  ),
};

const groundAsked = ({ kind, fillet, step, profileShift, times: _, ...wheel }: ValuesOf<typeof groundAsks>): GroundAsked => ({
  gear: gearOf(wheel),
  kind,
  fillet: fillet?.length ?? null,
  step: step.length,
  shift: profileShift ?? 0,
});

const FOR: Readonly<Record<(typeof GROUND_FOR)[number], (teeth: number) => string>> = {
  wheel: (teeth) => `Tool for a wheel of ${teeth} teeth`,
  ring: (teeth) => `Tool for a ring of ${teeth} teeth`,
  rack: () => 'Tool for a rack',
};

/** What the tool is for, so that its sheet needs no page beside it. */
function saysOf({ gear: { teeth, pitch, system, helix }, kind, shift }: GroundAsked): string {
  const leans = helix ? [`helix ${printDegrees(helix.angle, 2)}°`] : [];
  const moved = shift ? [`shift ${printShort(shift, 4)}`] : [];
  return [FOR[kind](teeth), printPitch(pitch), `${printDegrees(system.angle, 1)}°`, ...leans, ...moved].join(', ');
}

function drawn(given: ValuesOf<typeof groundAsks>): ToolDrawn {
  const asked = groundAsked(given);
  const { tooth, tool } = groundEdge(asked);
  return {
    edge: tool.edge,
    rows: ordinates(tooth, tool, inUnit(asked.step, tooth.unit)),
    unit: tooth.unit,
    says: saysOf(asked),
    times: Number(given.times),
  };
}

const groundSum = sum({
  path: 'ground-tool',
  title: 'Tool ground to the space',
  group: 'Cutters',
  tells:
    'When no cutter can be had: a fly cutter or shaper tool ground to one space, by widths from its tip up, as a print and as a drawing to cut from.',
  asks: groundAsks,
  example: {
    teeth: '22',
    pitch: '8 DP',
    system: 'full-14.5',
    helix: '',
    kind: 'wheel',
    fillet: '',
    step: '0.010',
    times: '10',
    profileShift: '',
  },
  about: { ...WHEEL_ABOUT, corner: ['fillet'], shift: ['profileShift'] },
  parts: [{ legend: 'Tool', asks: ['kind', 'profileShift', 'fillet', 'step', 'times'] }],
  work: (given) => groundToolAnswer(groundAsked(given)),
  draw: (given) => spaceProfileDrawing(drawn(given)),
  dxf: (given) => toolOutline(drawn(given)),
  paper: (given) => groundToolSheet(drawn(given)),
});

const twoDiscSum = sum({
  path: 'two-disc-tool',
  title: 'Cutter turned with two discs',
  group: 'Cutters',
  tells:
    'Two round discs that turn a cutter blank to nearly the form: diameter, distance, infeed, and how far their arcs leave the true flank.',
  asks: {
    ...cutAsks,
    blankWidth: sizeIfKnown({ label: 'Width of the cutter blank’s rim', hint: 'Empty: as wide as the discs are apart' }),
  },
  example: { teeth: '22', pitch: '8 DP', system: 'full-14.5', helix: '', blankWidth: '' },
  about: WHEEL_ABOUT,
  work: ({ blankWidth, ...wheel }) => twoDiscAnswer({ gear: gearOf(wheel), blankWidth: blankWidth?.length ?? null }),
});

export const CUTTER_TOOL_SUMS = [numberedSum, groundSum, twoDiscSum];
