import type { AnyGear } from '../../db/gears.ts';
import { sizesOf } from '../../lib/blanks/blank-sizes.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Body, Bore, Gear, Hand, Opening, Pitch, Recess, ToothSystem } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { TOOTH_SYSTEMS } from '../../lib/gears/systems.data.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { checkedTooth } from '../../lib/gears/wheel.ts';
import { type Angle, degrees } from '../../lib/values/angle.ts';
import { inches, type LengthUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { type Read, read, type TypedLength } from '../../lib/values/read.ts';
import { boreFields, boreOf, boreProblems, formsOfBore, sizeField } from './bore-form.ts';
import { angleField, choiceField, countField, numberField, optional, readField, TEETH, tickField } from './field.ts';
import { type FormRead, type Problems, readForm, type Typed, type ValuesOf } from './form.ts';
import { ringField } from './ring-field.ts';

/** How the lengths of a wheel were typed, by name, as the database keeps them. */
export type GearForms = Readonly<Record<string, LengthForm>>;

const PROPORTION = { least: 0.1, most: 3 };
const OWN = 'own';
/** Ends the name of a named system of which something was measured otherwise. */
export const AS_MEASURED = ', as measured';
const OWN_NAME = 'own proportions';
const PLAIN_BASE: ToothSystem = { name: OWN_NAME, angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };

const SIDES = { both: 'both', marked: 'marked', other: 'other', plain: 'other' } as const;
const OPENINGS = { holes: 'holes', hole: 'holes', spokes: 'spokes', spoke: 'spokes' } as const;

/** What a wheel's form asks for beside its teeth: what the wheels of a set have in common. unit: that of its sizes. */
export const patternFields = (unit: LengthUnit) => {
  return {
    pitch: readField({ label: 'Pitch', hint: 'As 8 DP, module 2.5 or 5/16 CP', read: (text) => readPitch(text) }),
    system: choiceField({
      label: 'Tooth system',
      choices: [
        ...TOOTH_SYSTEMS.map(({ key, name }) => [key, name] as const),
        [OWN, 'Own proportions, typed below'] as readonly [string, string],
      ],
    }),
    angle: optional(angleField({ label: 'Pressure angle', hint: 'Only if measured otherwise', limits: { least: 5, most: 45 } })),
    addendum: optional(numberField({ label: 'Addendum', hint: 'In parts of 1/P or of the module: 1 is usual', limits: PROPORTION })),
    dedendum: optional(numberField({ label: 'Dedendum', hint: 'Likewise: 1.157 or 1.25 is usual', limits: PROPORTION })),
    face: sizeField(unit, 'Face', 'Width of the teeth; empty if not measured'),
    ...boreFields(unit),
    body: choiceField({
      label: 'Where the metal is',
      choices: [
        ['unknown', 'Not looked at yet'],
        ['solid', 'Solid from bore to teeth'],
        ['hollow', 'Recessed, drilled or spoked, as below'],
      ],
    }),
    recesses: ringField({ label: 'Recesses', hint: 'both 1.9 to 4.6', words: SIDES, usual: 'both' }, unit),
    openings: ringField({ label: 'Holes or spokes', hint: 'holes 2 to 3', words: OPENINGS, usual: 'holes' }, unit),
  };
};

/** The same where the teeth may be counted and the pitch not known yet. */
export const openPatternFields = (unit: LengthUnit) => {
  const pattern = patternFields(unit);
  return {
    ...pattern,
    pitch: { ...pattern.pitch, read: (text: string): Read<Pitch | null> => (text.trim() === '' ? read(null) : pattern.pitch.read(text)) },
    notKnown: tickField({ label: 'Pitch not known yet', hint: 'Only the teeth are counted: it is identified afterwards' }),
  };
};

const HANDS: readonly (readonly [Hand, string])[] = [
  ['right', 'right hand: the teeth climb to the right'],
  ['left', 'left hand: they climb to the left'],
];

export const HAND_FIELD = optional(choiceField({ label: 'Hand', hint: 'Of helical teeth only', choices: HANDS }));

export const gearFields = (unit: LengthUnit) => ({
  teeth: countField({ label: 'Teeth', limits: TEETH, unit: 'teeth' }),
  ...openPatternFields(unit),
  helix: optional(
    angleField({ label: 'Helix angle', hint: 'At the pitch circle; straight teeth: empty', limits: { least: 0.5, most: 60 } }),
  ),
  hand: HAND_FIELD,
});

type GearFields = ReturnType<typeof gearFields>;
export type PatternValues = ValuesOf<ReturnType<typeof patternFields>>;
export type GearValues = ValuesOf<GearFields>;
type Untoothed = Omit<PatternValues, 'pitch'>;
/** A wheel's form, or the form of many: that one asks for no helix. */
type OpenValues = Untoothed & Pick<GearValues, 'teeth' | 'pitch'> & Partial<Pick<GearValues, 'helix' | 'hand'>>;

const typedAngle = ({ angle }: Untoothed): Angle | null => angle;

function systemOf(values: Untoothed): ToothSystem {
  const base = systemByKey(values.system)?.system ?? PLAIN_BASE;
  const [angle, addendum, dedendum] = [
    typedAngle(values) ?? base.angle,
    values.addendum ?? base.addendum,
    values.dedendum ?? base.dedendum,
  ];
  const same = angle === base.angle && addendum === base.addendum && dedendum === base.dedendum;
  if (same) return base;
  const name = base.name === OWN_NAME ? OWN_NAME : `${base.name}${AS_MEASURED}`;
  return { ...base, name, angle, addendum, dedendum };
}

function bodyOf({ body, recesses, openings }: Untoothed): Body {
  if (body === 'unknown') return { known: false };
  if (body === 'solid') return { known: true, recesses: [], openings: [] };
  const ends = (ring: (typeof recesses)[number] | (typeof openings)[number]) => ({ inner: ring.inner.length, outer: ring.outer.length });
  return {
    known: true,
    recesses: recesses.map((ring): Recess => ({ side: ring.what, ...ends(ring) })),
    openings: openings.map((ring): Opening => ({ what: ring.what, ...ends(ring) })),
  };
}

/** What the wheels of a set have in common. */
export const patternOf = (values: PatternValues): Omit<Gear, 'teeth'> => ({
  pitch: values.pitch,
  system: systemOf(values),
  helix: null,
  face: values.face?.length ?? null,
  bore: boreOf(values),
  body: bodyOf(values),
});

const helixOf = ({ helix = null, hand = null }: Pick<OpenValues, 'helix' | 'hand'>): Gear['helix'] =>
  helix !== null && hand !== null ? { angle: helix, hand } : null;

/** The wheel that was typed: where its pitch is not known yet, no more of it than its count and its body. */
export function gearOf({ teeth, pitch, ...values }: OpenValues): AnyGear {
  if (pitch) return { teeth, ...patternOf({ ...values, pitch }), helix: helixOf(values) };
  return { teeth, pitch, face: values.face?.length ?? null, bore: boreOf(values), body: bodyOf(values) };
}

/** How its lengths were typed. */
export function formsOf(values: Untoothed): GearForms {
  const face = values.face ? { face: values.face.form } : {};
  const rings = (name: string, all: readonly { readonly inner: TypedLength; readonly outer: TypedLength }[]) =>
    all.flatMap(({ inner, outer }, at) => [[`${name} ${at} inner`, inner.form] as const, [`${name} ${at} outer`, outer.form] as const]);
  return {
    ...face,
    ...formsOfBore(values),
    ...Object.fromEntries([...rings('recess', values.recesses), ...rings('opening', values.openings)]),
  };
}

/** What is wrong between fields that are each right by themselves. */
export function patternProblems(values: Untoothed): Problems {
  const { body, recesses, openings, system } = values;
  const problems: Record<string, string> = { ...boreProblems(values) };
  if (body === 'hollow' && recesses.length + openings.length === 0) problems['body'] = 'Type a recess or a ring of holes, or choose solid.';
  if (body !== 'hollow' && recesses.length + openings.length > 0)
    problems['body'] = 'Recesses or holes are typed below: choose “recessed, drilled or spoked”, or empty those boxes.';
  for (const name of ['angle', 'addendum', 'dedendum'] as const)
    if (system === OWN && values[name] === null) problems[name] = 'Own proportions: type this one too.';
  return problems;
}

/** A pitch, or that it is not known: one of the two, and not both. */
export function pitchProblems(typed: Typed): Problems {
  const [given, unknown] = [(typed['pitch'] ?? '').trim() !== '', typed['notKnown'] === 'yes'];
  if (given && unknown) return { notKnown: 'A pitch is typed above: empty that box, or take this tick away.' };
  return given || unknown ? {} : { pitch: 'This box is empty. Type the pitch, or tick that it is not known yet.' };
}

/** What cannot be about a whole wheel, by the field at fault: the bore lies inside the roots, the recesses inside the tips. */
export function wheelFaults(gear: Gear): Problems {
  try {
    checkedTooth({ ...gear, helix: null });
    const { root, outside } = sizesOf(gear);
    const rings = gear.body.known ? [...gear.body.recesses, ...gear.body.openings] : [];
    return {
      ...(bottomOf(gear.bore) >= root ? { boreDiameter: `The bore would cut through the roots of ${gear.teeth} teeth.` } : {}),
      ...(rings.some(({ outer }) => outer > outside) ? { recesses: `One of these lies beyond the tips of ${gear.teeth} teeth.` } : {}),
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const at = error.about.find((name) => name in gear || name === 'angle') ?? 'teeth';
    return { [at]: `${error.given} ${error.limit} ${error.tryThis}` };
  }
}

function bottomOf(bore: Bore | null): number {
  if (!bore) return 0;
  return bore.form === 'keyed' ? bore.diameter + 2 * bore.keyDepth : bore.diameter;
}

/** What is wrong between the fields of a wheel, and with the wheel that they make. */
export function gearProblems(values: GearValues): Problems {
  const hand: Problems = values.helix !== null && values.hand === null ? { hand: 'Choose the hand of the helix.' } : {};
  const between = { ...patternProblems(values), ...hand };
  const gear = gearOf(values);
  return Object.keys(between).length > 0 || gear.pitch === null ? between : wheelFaults(gear);
}

type WheelRead =
  | { readonly ok: true; readonly gear: AnyGear; readonly forms: GearForms; readonly typed: Typed }
  | { readonly ok: false; readonly problems: Problems; readonly typed: Typed };

/** Reads a whole wheel out of what was sent, problems between fields among them. */
export function readGear(sent: unknown, unit: LengthUnit): WheelRead {
  const all: FormRead<GearFields> = readForm(sent, gearFields(unit));
  const pitch = pitchProblems(all.typed);
  if (!all.ok) return { ...all, problems: { ...pitch, ...all.problems } };
  const problems = { ...pitch, ...gearProblems(all.value) };
  if (Object.keys(problems).length > 0) return { ok: false, problems, typed: all.typed };
  return { ok: true, gear: gearOf(all.value), forms: formsOf(all.value), typed: all.typed };
}

/** The unit that a form's sizes are in: it travels in a hidden field, so that the unit beside each box is always the true one. */
export const unitSent = (sent: Readonly<Record<string, unknown>>, usual: LengthUnit = 'in'): LengthUnit =>
  sent['sizes'] === 'mm' ? 'mm' : sent['sizes'] === 'in' ? 'in' : usual;
