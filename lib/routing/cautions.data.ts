import { CLAMP } from '../dividing/clamp.ts';
import type { Caution } from '../figure/figure.ts';
import { BY_HAND } from '../turning/truing.sums.ts';

/** One line each, shown where the hand is. They stand under the machine's maker, local rules and licensed trades. */
export const CAUTIONS = {
  machine: {
    name: 'At the machine',
    says: 'Eyes covered. Never measure, wipe, reach or brush while a spindle turns; isolate it before you change a cutter, chuck or wheel. The maker of the machine and local rules come first.',
    weight: 'beware',
  },
  oldTeeth: {
    name: 'Old teeth off',
    says: 'A bumpy cut: key out, chuck within its speed, tool short, tailstock up. Stand out of line with the work.',
    weight: 'danger',
  },
  screwedNose: { name: 'Screwed nose', says: 'Chuck or driver can unscrew: no braking, no running backwards.', weight: 'danger' },
  iron: { name: 'Iron', says: 'Cut it dry, cover the ways, and wear a mask against the dust.', weight: 'beware' },
  phenolic: {
    name: 'Phenolic',
    says: 'Wear a mask, use no air line. Old stuff may hold asbestos: when in doubt leave it alone.',
    weight: 'danger',
  },
  fourJaw: BY_HAND,
  milling: {
    name: 'Milling',
    says: 'Hands and brush away from the cutter; feed against its pull; carry cutters in a rag.',
    weight: 'beware',
  },
  dividing: CLAMP,
  burrs: { name: 'Burrs', says: 'Burred edges cut like razors. File only with the machine stopped.', weight: 'beware' },
  hardening: {
    name: 'Hardening',
    says: 'Quenching oil can take fire: lid at hand, room about you, long tongs, and no breathing of the fumes. A hardening shop is the better place.',
    weight: 'danger',
  },
} as const satisfies Readonly<Record<string, Caution>>;
