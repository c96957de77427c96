import type { AnyGear, UnknownGear } from '../../db/gears.ts';
import type { Gear, ToothSystem } from '../../lib/gears/gear.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import { TOOTH_SYSTEMS } from '../../lib/gears/systems.data.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { type LengthForm, printShort } from '../../lib/values/print.ts';
import type { FieldGroup, HiddenView } from '../page.ts';
import { BORE_NAMES, typedOfBore } from './bore-form.ts';
import { fieldGroup } from './field-view.ts';
import type { Problems, Typed } from './form.ts';
import { AS_MEASURED, type GearForms, gearFields } from './gear-form.ts';
import { lengthTyped } from './ring-field.ts';

/** A wheel without its teeth, with how its lengths were typed. */
export type StoredPattern = { readonly gear: Omit<Gear, 'teeth'>; readonly forms: GearForms };

const usualForm = (unit: LengthUnit): LengthForm => ({ unit, places: unit === 'in' ? 4 : 3 });

/** The system's key, and what of it was typed over. */
function typedOfSystem(system: ToothSystem): Typed {
  const named = TOOTH_SYSTEMS.find(({ name }) => system.name === name || system.name === `${name}${AS_MEASURED}`);
  const over = (x: number, base: number | undefined): string => (x === base ? '' : printShort(x, 6));
  return {
    system: named?.key ?? 'own',
    angle: over(toDegrees(system.angle), named && toDegrees(named.system.angle)),
    addendum: over(system.addendum, named?.system.addendum),
    dedendum: over(system.dedendum, named?.system.dedendum),
  };
}

type Sizes = (name: string, length: Length | null | undefined) => string;

function typedOfBody({ body }: Pick<Gear, 'body'>, size: Sizes): Typed {
  if (!body.known) return { body: 'unknown', recesses: '', openings: '' };
  const ends = (name: string, at: number, ring: { inner: Length; outer: Length }) =>
    `${size(`${name} ${at} inner`, ring.inner)} to ${size(`${name} ${at} outer`, ring.outer)}`;
  const recesses = body.recesses.map((ring, at) => `${ring.side} ${ends('recess', at, ring)}`);
  const openings = body.openings.map((ring, at) => `${ring.what} ${ends('opening', at, ring)}`);
  const body_ = recesses.length + openings.length === 0 ? 'solid' : 'hollow';
  return { body: body_, recesses: recesses.join('; '), openings: openings.join('; ') };
}

type Whole = Pick<Gear, 'face' | 'bore' | 'body'>;
function typedOfWhole(gear: Whole, forms: GearForms, usual: LengthForm, unit: LengthUnit): Typed {
  const size: Sizes = (name, length) => (length === null || length === undefined ? '' : lengthTyped(length, forms[name] ?? usual, unit));
  return { face: size('face', gear.face), ...typedOfBore(gear.bore, size), ...typedOfBody(gear, size) };
}

/** What a form would have had typed into it for this pattern. */
export const typedOfPattern = ({ gear, forms }: StoredPattern, unit: LengthUnit): Typed => ({
  pitch: printPitch(gear.pitch),
  ...typedOfSystem(gear.system),
  ...typedOfWhole(gear, forms, usualForm(unitOfPitch(gear.pitch)), unit),
});

/** Thousandths of an arc second stand in so many decimals of a degree. */
const HELIX_PLACES = 7;
const typedOfHelix = ({ helix }: Gear): Typed => ({
  helix: helix ? printShort(toDegrees(helix.angle), HELIX_PLACES) : '',
  hand: helix?.hand ?? '',
});

/** A wheel that is only counted: the system stands as the usual one, and says nothing. */
const typedOfUnknown = ({ gear, forms }: { readonly gear: UnknownGear; readonly forms: GearForms }, unit: LengthUnit): Typed => ({
  ...{ pitch: '', notKnown: 'yes', system: 'full-14.5', angle: '', addendum: '', dedendum: '', helix: '', hand: '' },
  ...typedOfWhole(gear, forms, usualForm(unit), unit),
});

/** What a form would have had typed into it for this wheel. */
export function typedOfGear({ gear, forms }: { readonly gear: AnyGear; readonly forms: GearForms }, unit: LengthUnit): Typed {
  const rest =
    gear.pitch === null ? typedOfUnknown({ gear, forms }, unit) : { ...typedOfPattern({ gear, forms }, unit), ...typedOfHelix(gear) };
  return { teeth: String(gear.teeth), ...rest };
}

const BORE = ['face', ...BORE_NAMES] as const;
const HELICAL = ['helix', 'hand'] as const;
const METAL = ['body', 'recesses', 'openings'] as const;

/** Whose form it is: one wheel's, that of many wheels of one pattern, or the pattern of a set, which has a pitch. */
export type FormOf = 'wheel' | 'wheels' | 'pattern';

const TOOTH: Readonly<Record<FormOf, readonly string[]>> = {
  wheel: ['teeth', 'pitch', 'notKnown', 'system'],
  wheels: ['pitch', 'notKnown', 'system'],
  pattern: ['pitch', 'system'],
};

/** The fields of a wheel in groups. */
export function gearGroups(typed: Typed, problems: Problems, unit: LengthUnit, of: FormOf = 'wheel'): FieldGroup[] {
  const fields = gearFields(unit);
  const group = (legend: string, names: readonly string[], more: Partial<FieldGroup> = {}): FieldGroup => ({
    ...fieldGroup(legend, fields, typed, problems, names),
    ...more,
  });
  const over = ['angle', 'addendum', 'dedendum'];
  const empty = (names: readonly string[]): boolean => names.every((name) => (typed[name] ?? '') === '' && !problems[name]);
  return [
    group('Teeth', TOOTH[of]),
    group('Proportions that were measured otherwise', over, { folded: empty(over) }),
    ...(of === 'wheel' ? [group('Helical teeth', HELICAL, { folded: empty(HELICAL) })] : []),
    group('Face and bore', BORE),
    group('Web and recesses', METAL),
  ];
}

/** Tells the form which unit its boxes are in. */
export const sizesHidden = (unit: LengthUnit): HiddenView => ({ name: 'sizes', value: unit });
