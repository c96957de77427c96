import type { RootReading, SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Body, Gear } from '../../lib/gears/gear.ts';
import { HARDNESSES, MATERIALS } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { TOOTH_SYSTEMS } from '../../lib/gears/systems.data.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { choiceField, countField, optional, readField, wordsField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { ringField } from '../forms/ring-field.ts';
import { sizeIfKnown } from './asks.ts';
import { bareGear, pitchField, systemField, systemOf, teethField, wheelAsks } from './gears.ts';
import { boreField } from './read-bore.ts';
import type { SumPart } from './sum.ts';

const TEETH = { least: 4, most: 1000 };

/** How the old root was read, with what stands beside the reading where two are needed. */
const readingAsks = {
  by: choiceField({
    label: 'Old root read by',
    choices: [
      ['none', 'not measured'],
      ['wall', 'least wall from bore to root, and the bore'],
      ['across roots', 'knife edges across the roots'],
      ['depth', 'depth of a space, and the outside between jaws'],
      ['pin', 'over two pins that touch the bottoms, and the pin'],
      ['jaws', 'outside between flat jaws, nothing else'],
    ],
  }),
  reading: sizeIfKnown({ label: 'Reading', hint: 'Wall, across, depth, over pins, or outside' }),
  beside: sizeIfKnown({ label: 'Second reading', hint: 'Bore for a wall, outside for a depth, pin for pins' }),
  runOut: sizeIfKnown({
    label: 'Run-out of the old roots',
    hint: 'Full indicator reading against the bore; empty if not tried',
    least: 0,
    most: 1,
  }),
};

const lacking = (box: 'reading' | 'beside', what: string): DomainError =>
  new DomainError({
    given: `No ${what} is typed.`,
    limit: `This way of reading the root needs the ${what}.`,
    tryThis: 'Type it, or choose “not measured”.',
    about: [box],
  });

const need = (typed: TypedLength | null, box: 'reading' | 'beside', what: string): TypedLength['length'] => {
  if (!typed) throw lacking(box, what);
  return typed.length;
};

/** The reading as lib takes it. Throws DomainError where a size that it needs is not typed. */
function readingOf({ by, reading, beside }: ValuesOf<typeof readingAsks>): RootReading | null {
  if (by === 'wall') return { by, wall: need(reading, 'reading', 'wall'), bore: need(beside, 'beside', 'measured bore') };
  if (by === 'across roots') return { by, across: need(reading, 'reading', 'size across the roots') };
  if (by === 'depth') return { by, depth: need(reading, 'reading', 'depth of a space'), jaws: need(beside, 'beside', 'outside') };
  if (by === 'pin') return { by, over: need(reading, 'reading', 'size over the pins'), pin: need(beside, 'beside', 'pin') };
  return by === 'jaws' ? { by, jaws: need(reading, 'reading', 'outside between the jaws') } : null;
}

const SIDES = { both: 'both', marked: 'marked', other: 'other', plain: 'other' } as const;
const OPENINGS = { holes: 'holes', spokes: 'spokes' } as const;

/** A wanted wheel and the spare that is held against it. */
export const pairAsks = {
  ...wheelAsks,
  bore: boreField('Bore wanted'),
  face: sizeIfKnown({ label: 'Face wanted', hint: 'Width of the teeth' }),
  spareTeeth: countField({ label: 'Teeth of the spare', limits: TEETH, unit: 'teeth' }),
  sparePitch: optional(readField({ label: 'Pitch of the spare', hint: 'Empty: the same', read: (text) => readPitch(text) })),
  spareSystem: optional(
    choiceField({
      label: 'Tooth system of the spare',
      hint: 'Not said: the same',
      choices: TOOTH_SYSTEMS.map(({ key, name }) => [key, name] as const),
    }),
  ),
  spareBore: boreField('Bore of the spare'),
  spareFace: sizeIfKnown({ label: 'Face of the spare' }),
  ...readingAsks,
  body: choiceField({
    label: 'Where the metal is',
    choices: [
      ['unknown', 'not looked at yet'],
      ['solid', 'solid from bore to teeth'],
      ['hollow', 'recessed, drilled or spoked'],
    ],
  }),
  recesses: ringField({ label: 'Recesses', hint: 'both 1.9 to 4.6', words: SIDES, usual: 'both' }, 'in'),
  openings: ringField({ label: 'Holes or spokes', hint: 'holes 2 to 3', words: OPENINGS, usual: 'holes' }, 'in'),
  material: wordsField({ label: 'Material of the spare', words: MATERIALS }),
  hardness: wordsField({ label: 'Tried with a file', words: HARDNESSES }),
  caseDepth: sizeIfKnown({ label: 'Depth of its case', hint: 'Case-hardened only; empty: 0.040 in, a guess', most: 1 }),
  cleanUp: sizeIfKnown({ label: 'Clean-up, off the diameter', hint: 'Empty: 0.010 in', least: 0, most: 1 }),
};

export type PairGiven = ValuesOf<typeof pairAsks>;

export const PAIR_PARTS = [
  { legend: 'The wheel wanted', asks: ['teeth', 'pitch', 'system', 'bore', 'face'] },
  { legend: 'The spare', asks: ['spareTeeth', 'spareBore', 'spareFace', 'body', 'material', 'hardness', 'by', 'reading', 'beside'] },
  {
    legend: 'More of the spare',
    asks: ['sparePitch', 'spareSystem', 'recesses', 'openings', 'runOut', 'caseDepth', 'cleanUp'],
    folded: true,
  },
] as const satisfies readonly SumPart[];

/** Where lib speaks of the pair in other words. */
export const PAIR_ABOUT = {
  angle: ['system'],
  reading: ['reading'],
  spare: ['spareTeeth'],
  hub: ['material'],
  teeth: ['teeth'],
} as const;

/** Case 1 of a common bench: a six-spline change wheel to be cut from a larger one. */
export const PAIR_EXAMPLE: Readonly<Record<keyof typeof pairAsks, string>> = {
  teeth: '22',
  pitch: '8 DP',
  system: 'full-14.5',
  bore: '6 splines 1.250 x 1.0625 x 0.3125',
  face: '0.875',
  spareTeeth: '31',
  sparePitch: '',
  spareSystem: '',
  spareBore: '6 splines 1.250 x 1.0625 x 0.3125',
  spareFace: '0.875',
  by: 'none',
  reading: '',
  beside: '',
  runOut: '',
  body: 'solid',
  recesses: '',
  openings: '',
  material: 'steel',
  hardness: 'file bites',
  caseDepth: '',
  cleanUp: '',
};

export const wantedOf = ({ teeth, pitch, system, bore, face }: PairGiven): Gear => ({
  ...bareGear({ teeth, pitch, system: systemOf(system) }),
  bore,
  face: face?.length ?? null,
});

function bodyOf({ body, recesses, openings }: PairGiven): Body {
  if (body === 'unknown') return { known: false };
  const rings = recesses.length + openings.length;
  if (body === 'hollow' && rings === 0)
    throw new DomainError({
      given: 'The spare is recessed, drilled or spoked.',
      limit: 'The test needs the two diameters between which it is.',
      tryThis: 'Type a recess or a ring of holes.',
      about: ['recesses', 'openings'],
    });
  if (body === 'solid' && rings > 0)
    throw new DomainError({
      given: 'Solid, but a recess or holes are typed.',
      limit: 'It can be only one.',
      tryThis: 'Choose “recessed, drilled or spoked”, or empty those boxes.',
      about: ['body'],
    });
  const ends = (ring: PairGiven['recesses'][number] | PairGiven['openings'][number]) => ({
    inner: ring.inner.length,
    outer: ring.outer.length,
  });
  return {
    known: true,
    recesses: recesses.map((ring) => ({ side: ring.what, ...ends(ring) })),
    openings: openings.map((ring) => ({ what: ring.what, ...ends(ring) })),
  };
}

/** The spare as it was described. Throws DomainError where what is typed does not go together. */
export function spareOf(given: PairGiven): SpareWheel {
  const { spareTeeth, sparePitch, pitch, spareSystem, system, spareBore, spareFace, runOut, material, hardness, caseDepth } = given;
  const gear: Gear = {
    ...bareGear({ teeth: spareTeeth, pitch: sparePitch ?? pitch, system: systemOf(spareSystem ?? system) }),
    bore: spareBore,
    face: spareFace?.length ?? null,
    body: bodyOf(given),
  };
  return {
    id: 1,
    name: `${spareTeeth}T`,
    gear,
    reading: readingOf(given),
    runOut: runOut?.length ?? null,
    trust: 'unknown',
    condition: { teeth: 'not looked at', bore: 'not looked at' },
    material,
    hardness,
    caseDepth: caseDepth?.length ?? null,
  };
}

/** A spare of which only the teeth and the reading are asked. */
export const rootAsks = { teeth: teethField, pitch: pitchField, system: systemField, ...readingAsks };
export function rootSpareOf(given: ValuesOf<typeof rootAsks>): SpareWheel {
  const { teeth, pitch, system, runOut } = given;
  return {
    id: 1,
    name: `${teeth}T`,
    gear: bareGear({ teeth, pitch, system: systemOf(system) }),
    reading: readingOf(given),
    runOut: runOut?.length ?? null,
    trust: 'unknown',
    condition: { teeth: 'not looked at', bore: 'not looked at' },
    material: 'unknown',
    hardness: 'not tried',
    caseDepth: null,
  };
}
