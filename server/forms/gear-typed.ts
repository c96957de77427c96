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

function typedOfBody({ body }: Omit<Gear, 'teeth'>, size: Sizes): Typed {
  if (!body.known) return { body: 'unknown', recesses: '', openings: '' };
  const ends = (name: string, at: number, ring: { inner: Length; outer: Length }) =>
    `${size(`${name} ${at} inner`, ring.inner)} to ${size(`${name} ${at} outer`, ring.outer)}`;
  const recesses = body.recesses.map((ring, at) => `${ring.side} ${ends('recess', at, ring)}`);
  const openings = body.openings.map((ring, at) => `${ring.what} ${ends('opening', at, ring)}`);
  const body_ = recesses.length + openings.length === 0 ? 'solid' : 'hollow';
  return { body: body_, recesses: recesses.join('; '), openings: openings.join('; ') };
}

/** What a form would have had typed into it for this pattern. */
export function typedOfPattern({ gear, forms }: StoredPattern, unit: LengthUnit): Typed {
  const size: Sizes = (name, length) =>
    length === null || length === undefined ? '' : lengthTyped(length, forms[name] ?? usualForm(unitOfPitch(gear.pitch)), unit);
  return {
    pitch: printPitch(gear.pitch),
    ...typedOfSystem(gear.system),
    face: size('face', gear.face),
    ...typedOfBore(gear.bore, size),
    ...typedOfBody(gear, size),
  };
}

/** What a form would have had typed into it for this wheel. */
export const typedOfGear = (stored: { readonly gear: Gear; readonly forms: GearForms }, unit: LengthUnit): Typed => ({
  teeth: String(stored.gear.teeth),
  ...typedOfPattern(stored, unit),
});

const BORE = ['face', ...BORE_NAMES] as const;
const METAL = ['body', 'recesses', 'openings'] as const;

/** The fields of a wheel in groups. teeth false: for the pattern of a set. */
export function gearGroups(typed: Typed, problems: Problems, unit: LengthUnit, teeth = true): FieldGroup[] {
  const fields = gearFields(unit);
  const group = (legend: string, names: readonly string[], more: Partial<FieldGroup> = {}): FieldGroup => ({
    ...fieldGroup(legend, fields, typed, problems, names),
    ...more,
  });
  const over = ['angle', 'addendum', 'dedendum'];
  return [
    group('Teeth', [...(teeth ? ['teeth'] : []), 'pitch', 'system']),
    group('Proportions that were measured otherwise', over, { folded: over.every((name) => (typed[name] ?? '') === '') }),
    group('Face and bore', BORE),
    group('Web and recesses', METAL),
  ];
}

/** Tells the form which unit its boxes are in. */
export const sizesHidden = (unit: LengthUnit): HiddenView => ({ name: 'sizes', value: unit });
