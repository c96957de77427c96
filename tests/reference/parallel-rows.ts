import type { Radii } from '../../lib/gears/contact-ratio.formulas.ts';
import { baseOf, type Flanks, pitchOf, tipOf } from '../../lib/gears/flanks.formulas.ts';
import { normalAngle } from '../../lib/gears/helical.formulas.ts';
import type { Case } from './case.ts';

export const rad = (deg: number): number => (deg * Math.PI) / 180;
export const deg = (angle: number): number => (angle * 180) / Math.PI;

type More = Partial<Pick<Flanks, 'v' | 'ring' | 'A' | 'B'>> & { readonly helix?: number };

/** Teeth of N, module (of 1 DP: 1) and angle square to the teeth, degrees; a shift v is a length. */
export const teeth = (N: number, mn: number, an: number, { helix = 0, v = 0, ring = false, A = mn, B = 1.25 * mn }: More = {}): Flanks => ({
  N,
  mn,
  an: rad(an),
  psi: rad(helix),
  v,
  A,
  B,
  ring,
  unit: 'mm',
});

/** The same where module, angle, addendum and shift hold in the plane of the wheel. */
export const across = (N: number, mt: number, at: number, helix: number, v = 0): Flanks => ({
  N,
  mn: mt * Math.cos(rad(helix)),
  an: normalAngle(rad(at), rad(helix)),
  psi: rad(helix),
  v,
  A: mt,
  B: 1.25 * mt,
  ring: false,
  unit: 'mm',
});

export const radiiOf = (flanks: Flanks, tip: number = tipOf(flanks)): Radii => ({
  base: baseOf(flanks) / 2,
  pitch: pitchOf(flanks) / 2,
  outside: tip / 2,
});

export type Row = readonly [given: string, expected: number, actual: () => number, catches: string];
export type Head = Pick<Case, 'topic' | 'kind' | 'source' | 'tolerance' | 'unit'> & { readonly table?: string };

export const rows = (head: Head, of: readonly Row[]): readonly Case[] =>
  of.map(([given, expected, actual, catches]) => ({ ...head, given, expected, actual, catches }));

export const BY_TOUCH = 'derived: a ball sunk between two sampled flanks until it touches, least distance found by search';
export const BY_SUPPORT = 'derived: widest extent of the sampled outer flanks across the jaws';
export const BY_TANGENTS = 'derived: contact ratio by the tangents of the tip angles, working angle by halving';
export const FROM_MEMORY = 'value from memory: worked gears of a metric gear handbook';
