import { readDrawer } from '../../lib/blanks/read-drawer.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Pitch } from '../../lib/gears/gear.ts';
import { moduleOf, unitOfPitch } from '../../lib/gears/tooth.ts';
import type { PlaceAsked, Turns } from '../../lib/trains/arrangements.ts';
import type { Train } from '../../lib/trains/nearest.ts';
import { type Quadrant, type Slot, USUAL_OPENING } from '../../lib/trains/quadrant.ts';
import { readWanted, type Wanted } from '../../lib/trains/wanted.ts';
import { type Angle, degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import type { Ratio } from '../../lib/values/ratio.ts';
import { quoted, type Read, read, readAngle, readLength, type TypedLength, unread } from '../../lib/values/read.ts';
import { choiceField, type Field, readField } from '../forms/field.ts';
import { readList } from './asks.ts';

type Asked = { readonly label: string; readonly hint: string };

/** A thread, lead or feed. */
export const threadField = (asked: Asked): Field<Wanted> => readField({ ...asked, read: readWanted });
/** A list of them, commas or lines between. */
export const threadsField = (asked: Asked): Field<readonly Wanted[]> =>
  readField({ ...asked, read: (text) => readList(text, 'the list', readWanted, /[,;\n]/) });

function readScrew(text: string): Read<Ratio> {
  const found = readWanted(text);
  if (!found.ok) return found;
  return found.value.pi === 1 ? unread(`${quoted(text)}: a lead screw is typed as 8 TPI, 5 mm or 0.25 in.`) : read(found.value.size);
}
/** The lead of a screw, or what equal wheels cut, in inches. */
export const screwField = (asked: Asked): Field<Ratio> => readField({ ...asked, read: readScrew });

const MOST_LETTERS = 2000;

function readWheels(text: string): Read<readonly number[]> {
  if (text.length > MOST_LETTERS) return unread(`${text.length} letters are too many for a drawer: at most ${MOST_LETTERS}.`);
  const { counts, problems } = readDrawer(text);
  return problems.length > 0 ? unread(problems.slice(0, 3).join(' ')) : read(counts);
}
/** All wheels that lie there, up to what lib takes; an empty drawer is a drawer too. */
export const trainDrawerField = (asked: Asked): Field<readonly number[]> => readField({ ...asked, read: readWheels });

function readMounted(text: string): Read<Train | null> {
  if (text.trim() === '') return read(null);
  const sides = text.split(/[/÷]/).map((side) => side.split(/[\s,×x*]+/).filter((piece) => piece !== ''));
  const [drivers, driven] = sides;
  const whole = sides.flat().every((piece) => /^\d{1,3}$/.test(piece) && Number(piece) >= 4);
  if (sides.length !== 2 || !drivers || !driven || !whole || drivers.length !== driven.length || drivers.length < 1 || drivers.length > 3)
    return unread(`${quoted(text)} could not be read. Type the train on the machine, drivers first, as 40 × 30 / 60 × 75.`);
  return read({ drivers: drivers.map(Number), driven: driven.map(Number) });
}
/** The train that is on the machine now. */
export const mountedField: Field<Train | null> = {
  ...readField({ label: 'On the machine now', hint: 'Drivers, then driven: 40 × 30 / 60 × 75', read: readMounted }),
  optional: true,
};

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

export const slotsField: Field<readonly Slot[] | null> = {
  ...readField({
    label: 'Slots',
    hint: 'Nearest to farthest stud from the pivot: 1.4 to 5.5; 1.8 to 4.7 at 50',
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
export const swingField: Field<readonly [Angle, Angle] | null> = {
  ...readField({
    label: 'Swing of the first slot',
    hint: 'From the line of the two shafts, as -70 to 60',
    unit: '°',
    read: listOrNone(readSwing),
  }),
  optional: true,
};

export const turnsField = choiceField<Turns>({
  label: 'The last shaft turns',
  choices: [
    ['either', 'either way: the machine can reverse it'],
    ['same', 'the same way as the first'],
    ['opposite', 'the other way'],
  ],
});

export type QuadrantTyped = {
  readonly between: TypedLength | null;
  readonly slots: readonly Slot[] | null;
  readonly swing: readonly [Angle, Angle] | null;
  readonly collar: TypedLength | null;
  readonly widest: TypedLength | null;
  readonly abreast: number | null;
  readonly wheelPitch: Pitch | null;
  readonly lastTurns: Turns;
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
    pivot: 'driven',
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
