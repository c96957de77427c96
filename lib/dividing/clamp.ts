import type { Caution } from '../figure/figure.ts';

/** Said wherever a spindle is divided: in the sum, at the operation and on the index sheet. */
export const CLAMP = {
  name: 'Dividing',
  says: 'Spindle clamp off before you crank, on before you cut.',
  weight: 'beware',
} as const satisfies Caution;
