import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Pitch } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { moduleOf, unitOfPitch } from '../../lib/gears/tooth.ts';
import type { PlaceAsked, Turns } from '../../lib/trains/arrangements.ts';
import { plainQuadrant, type Quadrant, type Slot, USUAL_OPENING } from '../../lib/trains/quadrant.ts';
import { type Angle, degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { quoted, type Read, read, readAngle, readLength, type TypedLength, unread } from '../../lib/values/read.ts';
import { readList, sizeIfKnown } from '../sums/asks.ts';
import { choiceField, countField, type Field, optional, readField } from './field.ts';
import { type Problems, readForm, type Typed } from './form.ts';

function readSlot(piece: string): Read<Slot> {
  const found = /^(.+?)\s*(?:to|–|\.\.)\s*(.+?)(?:\s+at\s+(-?.+))?$/i.exec(piece);
  const HOW = 'Type nearest to farthest stud from the pivot, and the angle from the first slot: 1.4 to 5.5; 1.8 to 4.7 at 50.';
  if (!found) return unread(`${quoted(piece)} could not be read. ${HOW}`);
  const limits = { least: 0.1, most: 40 };
  const [near, far] = [
    readLength(found[1] ?? '', 'the nearest stud', 'in', limits),
    readLength(found[2] ?? '', 'the farthest stud', 'in', limits),
  ];
  const angle = signedAngle(found[3] ?? '0', 'the angle of a slot');
  if (!near.ok) return near;
  if (!far.ok) return far;
  return angle.ok ? read({ nearest: near.value.length, farthest: far.value.length, angle: angle.value }) : angle;
}

function signedAngle(text: string, name: string): Read<Angle> {
  const minus = /^\s*[-−]/.test(text);
  const found = readAngle(text.replace(/^\s*[-−]/, ''), name, { least: 0, most: 180 });
  return found.ok && minus ? read(degrees(-found.value / 3_600_000)) : found;
}

const listOrNone =
  <T>(one: (text: string) => Read<T>) =>
  (text: string): Read<T | null> =>
    text.trim() === '' ? read(null) : one(text);

const slotsField: Field<readonly Slot[] | null> = {
  ...readField({
    label: 'Slots',
    hint: 'Nearest to farthest stud from the pivot, and the angle from the first slot, plus = anticlockwise: 1.4 to 5.5; 1.8 to 4.7 at 50',
    unit: 'in',
    read: listOrNone((text) => readList(text, 'the slots', readSlot, /[;\n]/)),
  }),
  optional: true,
};

function readSwing(text: string): Read<readonly [Angle, Angle]> {
  const found = /^(.+?)\s*(?:to|\.\.)\s*(.+)$/i.exec(text.trim());
  const [from, to] = [signedAngle(found?.[1] ?? '', 'the swing'), signedAngle(found?.[2] ?? '', 'the swing')];
  return from.ok && to.ok
    ? read([from.value, to.value] as const)
    : unread(`${quoted(text)} could not be read. Type the swing of the first slot from the line of the shafts: -70 to 60.`);
}
const swingField: Field<readonly [Angle, Angle] | null> = {
  ...readField({
    label: 'Swing of the first slot',
    hint: 'From the line of the two shafts, plus = anticlockwise as you face the wheels: -70 to 60',
    unit: '°',
    read: listOrNone(readSwing),
  }),
  optional: true,
};

const turns = choiceField<Turns>({
  label: 'The last shaft turns',
  choices: [
    ['either', 'either way: the machine can reverse it'],
    ['same', 'the same way as the first'],
    ['opposite', 'the other way'],
  ],
});
/** Not said: either way will do. */
const turnsField: Field<Turns> = { ...turns, optional: true, read: (text) => (text === '' ? read('either') : turns.read(text)) };

type Pivot = Quadrant['pivot'];
const pivot = choiceField<Pivot>({
  label: 'The quadrant swings about',
  choices: [
    ['driven', 'the shaft that is driven'],
    ['driver', 'the shaft that drives'],
  ],
});
/** Not said: about the screw, as on most lathes. */
const pivotField: Field<Pivot> = { ...pivot, optional: true, read: (text) => (text === '' ? read('driven') : pivot.read(text)) };

type QuadrantTyped = {
  readonly between: TypedLength | null;
  readonly slots: readonly Slot[] | null;
  readonly swing: readonly [Angle, Angle] | null;
  readonly collar: TypedLength | null;
  readonly widest: TypedLength | null;
  readonly abreast: number | null;
  readonly wheelPitch: Pitch | null;
  readonly lastTurns: Turns;
  readonly pivot: Pivot;
};

const WIDE_OPEN = inches(100);
const USUAL_COLLAR = inches(0.9);

/** The quadrant where it was typed; null where nothing of it was. A half-typed one is refused, each missing box by its name. */
export function quadrantOf(typed: QuadrantTyped, ends: PlaceAsked['ends']): Omit<PlaceAsked, 'drawer'> | null {
  const { between, slots, wheelPitch } = typed;
  if (!between && !slots && !wheelPitch) return null;
  if (!between || !slots || !wheelPitch) throw halfTyped(typed);
  const collar = typed.collar?.length ?? USUAL_COLLAR;
  const quadrant: Quadrant = {
    between: between.length,
    pivot: typed.pivot,
    slots,
    swing: typed.swing ?? [degrees(-90), degrees(90)],
    stud: collar,
    collar,
    widest: typed.widest?.length ?? WIDE_OPEN,
    abreast: typed.abreast ?? 2,
  };
  const moduleMm = moduleOf(wheelPitch) * (unitOfPitch(wheelPitch) === 'mm' ? 1 : 25.4);
  return { quadrant, sizes: { moduleMm, opening: USUAL_OPENING }, ends, turns: typed.lastTurns };
}

function halfTyped({ between, slots, wheelPitch }: QuadrantTyped): DomainError {
  const lacks = [between ? '' : 'between', slots ? '' : 'slots', wheelPitch ? '' : 'wheelPitch'].filter((name) => name !== '');
  return new DomainError({
    given: 'Only part of the quadrant was typed.',
    limit: 'Whether a train stands needs the distance between the shafts, the slots and the pitch of the wheels.',
    tryThis: 'Type all three, or none.',
    about: lacks,
  });
}

/** A quadrant as measured once for a machine; every box may stay empty until it has been. */
export const QUADRANT_FIELDS = {
  between: sizeIfKnown({ label: 'Between the fixed shafts', hint: 'Middle to middle', most: 60 }),
  pivot: pivotField,
  slots: slotsField,
  swing: swingField,
  collar: sizeIfKnown({ label: 'Collars of the studs, diameter', most: 10 }),
  widest: sizeIfKnown({ label: 'Widest wheel under the cover', most: 60 }),
  abreast: optional(countField({ label: 'Wheels side by side on a stud', limits: { least: 1, most: 3 } })),
  wheelPitch: optional(readField({ label: 'Pitch of the wheels', hint: 'As 16 DP or module 1.5', read: readPitch })),
  lastTurns: turnsField,
};
export const QUADRANT_NAMES = Object.keys(QUADRANT_FIELDS);

/** These say something even where nothing was measured. */
const CHOICES = ['lastTurns', 'pivot'];

export const NO_QUADRANT = {
  between: '',
  pivot: 'driven',
  slots: '',
  swing: '',
  collar: '',
  widest: '',
  abreast: '',
  wheelPitch: '',
  lastTurns: 'either',
};

/** As kept with a machine: the boxes as they were typed; nothing where none of them was. */
export function quadrantText(typed: Typed): string {
  const full = QUADRANT_NAMES.filter((name) => !CHOICES.includes(name) && (typed[name] ?? '') !== '');
  return full.length === 0 ? '{}' : JSON.stringify(Object.fromEntries([...full, ...CHOICES].map((name) => [name, typed[name] ?? ''])));
}

export const typedOfQuadrant = (kept: string): Typed => ({ ...NO_QUADRANT, ...(JSON.parse(kept) as Typed) });

/** What does not agree between its boxes, beside each. */
export function quadrantProblems(typed: Typed): Problems {
  const found = readForm(typed, QUADRANT_FIELDS);
  if (!found.ok) return found.problems;
  try {
    const asked = quadrantOf(found.value, { first: '', last: '' });
    if (asked) plainQuadrant(asked.quadrant);
    return {};
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return Object.fromEntries(error.about.map((name) => [name, `${error.limit} ${error.tryThis}`]));
  }
}
