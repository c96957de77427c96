import type { Caution } from '../figure/figure.ts';

export const BURRS: Caution = {
  name: 'Burr edges',
  says: 'Burr edges like razors; file with the machine stopped.',
  weight: 'danger',
  about: 'sideDepth',
};
export const HANDS: Caution = {
  name: 'Hands away',
  says: 'Hands and brush away; feed against the cutter’s pull; carry cutters in a rag.',
  weight: 'danger',
  about: 'crossMove',
};
export const TRIAL: Caution = {
  name: 'Trial piece first',
  says: 'Trial piece first: both sides of one key, measure, and correct the cross move by half of what the key is off. A cutter cuts wider than it measures.',
  weight: 'beware',
  about: 'firstOffset',
};
export const ONE_WAY: Caution = {
  name: 'One way',
  says: 'All cross moves the same way, lash taken out before the first. Spindle clamp off before cranking, on before cutting.',
  weight: 'beware',
  about: 'crossMove',
};
export const FLAT_BOTTOMS: Caution = {
  name: 'Located at the bottom',
  says: 'A plain cutter leaves flats: only their edges reach the small diameter. To locate there, leave metal and grind it round, or use a cutter ground to the circle.',
  weight: 'beware',
  about: 'bottomDepth',
};
export const MAKER: Caution = {
  name: 'First of all',
  says: 'The machine’s maker, local rules and licensed trades come first.',
  weight: 'note',
};
export const NO_GEAR_CUTTER: Caution = {
  name: 'No gear cutter',
  says: 'The sides are flat and parallel: an involute gear or spline cutter would spoil it.',
  weight: 'beware',
  about: 'best',
};
