import type { Caution } from '../figure/figure.ts';

/** Top rake of a form tool, and what it does to the form. */
export const RAKE: Caution = {
  name: 'rake',
  says: 'Top of the tool flat, no rake: the shape is true only then. With rake, every distance from the tip must be longer along the face by 1 ÷ cos of it: 1.004 times at 5°, 1.015 at 10°.',
  weight: 'beware',
};

/** Common practice, no source: angles by which a form tool clears its own cut. */
export const CLEARANCE: Caution = {
  name: 'clearance',
  says: 'Relieve it all round behind the edge, about 8° to 10° under the tip and 2° to 3° at the sides; a fly cutter clears the circle it turns in. Sharpen on the top face only.',
  weight: 'note',
};

export const FLY_CUTTER: Caution = {
  name: 'fly cutter',
  says: 'One tooth: slow, guarded, held by more than one screw. The machine’s maker and local rules come first.',
  weight: 'danger',
};

export const SHAPER_TOOL: Caution = {
  name: 'shaper tool',
  says: 'Isolate before reaching into a ring; set the stroke by hand and see that it clears both ways. The machine’s maker and local rules come first.',
  weight: 'danger',
};

export const TURNING_A_CUTTER: Caution = {
  name: 'turning the cutter',
  says: 'Two wide edges cut at once: slow, stiff, little overhang; stand out of line. The machine’s maker and local rules come first.',
  weight: 'danger',
};
