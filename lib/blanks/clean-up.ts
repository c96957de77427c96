import type { From } from '../figure/figure.ts';
import { type Length, nanometres } from '../values/length.ts';
import { CASE_DEPTH, CLEAN_UP } from './judgements.data.ts';
import type { SpareWheel } from './spare-wheel.ts';

/** Off the diameter of a spare, below its old roots, as the owner typed it; undefined while nobody did, and judgement stands in its place. */
export type CleanUp = Length | undefined;

/** Whose number it is: a typed one is the owner's, whatever it reads. */
export const cleanUpFrom = (typed: CleanUp): From => (typed === undefined ? 'guess' : 'typed');

/** What a hub loses below its old roots: the clean-up, or the whole of a hard case where that is more. */
export function offHub({ hardness, caseDepth }: SpareWheel, typed: CleanUp): { off: Length; name: string; from: From } {
  const cleanUp = typed ?? CLEAN_UP;
  const case2 = hardness === 'case hard' ? nanometres(2 * (caseDepth ?? CASE_DEPTH)) : nanometres(0);
  if (case2 > cleanUp) return { off: case2, name: 'case, on the diameter', from: caseDepth === null ? 'guess' : 'measured' };
  return { off: cleanUp, name: 'clean-up, on the diameter', from: cleanUpFrom(typed) };
}
