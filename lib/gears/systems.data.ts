import { degrees } from '../values/angle.ts';
import { inches, type Length } from '../values/length.ts';
import type { ToothSystem } from './gear.ts';

/** A tooth system by name. `key` never changes; `source` is of the proportions; `note` says when a wheel is likely to have it. */
export type NamedSystem = {
  readonly key: string;
  readonly name: string;
  readonly system: ToothSystem;
  readonly source: string;
  readonly note: string;
};

const NONE: Length = inches(0);
const MEMORY = 'value from memory';
const NAVY = 'US Navy, Machinery Repairman (14345), appendices III and IV';
const COARSE = 'Machine Elements in Mechanical Design, 4th ed., p. 314, table 8-4';
const SIXTH = 'PIC Design, Gear Pitch Equivalents (1998), table 7.3: clearance one sixth of the module';

const system = (name: string, angle: number, addendum: number, dedendum: number, extra: Length = NONE): ToothSystem => ({
  name,
  angle: degrees(angle),
  addendum,
  dedendum,
  extra,
});

/** The named tooth systems, commonest on old machine tools first. Proportions are multiples of 1/P or of the module. */
export const TOOTH_SYSTEMS: readonly NamedSystem[] = [
  {
    key: 'full-14.5',
    name: '14½° full involute',
    system: system('14½° full involute', 14.5, 1, 1.157),
    source: NAVY,
    note: 'The usual inch wheel of old machine tools, cut with numbered form cutters.',
  },
  {
    key: 'composite-14.5',
    name: '14½° composite',
    system: system('14½° composite', 14.5, 1, 1.157),
    source: MEMORY,
    note: 'The old milled form: an involute only about the pitch line, rounded above and below it.',
  },
  {
    key: 'full-20-old',
    name: '20° old full depth',
    system: system('20° old full depth', 20, 1, 1.157),
    source: MEMORY,
    note: 'Early 20° wheels kept the depth of the 14½° ones. Measure the depth.',
  },
  {
    key: 'full-20',
    name: '20° full depth',
    system: system('20° full depth', 20, 1, 1.25),
    source: COARSE,
    note: 'The later inch wheel, coarser than 20 pitch.',
  },
  {
    key: 'stub-20',
    name: '20° stub',
    system: system('20° stub', 20, 0.8, 1),
    source: MEMORY,
    note: 'Short strong teeth; not the same as the double-pitch stub.',
  },
  {
    key: 'fine-20',
    name: '20° fine pitch',
    system: system('20° fine pitch', 20, 1, 1.2, inches(0.002)),
    source: `${COARSE}; PIC Design, Gear Pitch Equivalents (1998), table 7.2`,
    note: '20 pitch and finer, unless the stamp on the cutter says otherwise.',
  },
  {
    key: 'fine-14.5',
    name: '14½° fine pitch',
    system: system('14½° fine pitch', 14.5, 1, 1.2, inches(0.002)),
    source: 'PIC Design, Gear Pitch Equivalents (1998), table 7.2 (angle: value from memory)',
    note: 'Fine wheels of the older angle. 20 pitch itself was also cut to 1.157/P.',
  },
  {
    key: 'module-1.25',
    name: '20° module, 1.25',
    system: system('20° module, 1.25', 20, 1, 1.25),
    source: COARSE,
    note: 'The usual metric wheel.',
  },
  {
    key: 'module-7/6',
    name: '20° module, one sixth clearance',
    system: system('20° module, one sixth clearance', 20, 1, 7 / 6),
    source: SIXTH,
    note: 'Older metric wheels; the depth is 2.167 modules.',
  },
  {
    key: 'module-1.157',
    name: '20° module, 1.157',
    system: system('20° module, 1.157', 20, 1, 1.157),
    source: MEMORY,
    note: 'Metric wheels cut to inch proportions; the depth is 2.157 modules.',
  },
  {
    key: 'old-15',
    name: '15° full depth',
    system: system('15° full depth', 15, 1, 1.157),
    source: MEMORY,
    note: 'Some Continental and early wheels. Measure the depth.',
  },
  {
    key: 'old-17.5',
    name: '17½° full depth',
    system: system('17½° full depth', 17.5, 1, 1.157),
    source: MEMORY,
    note: 'Met now and then between 14½° and 20°. Measure the depth.',
  },
  {
    key: 'old-22.5',
    name: '22½° stub',
    system: system('22½° stub', 22.5, 0.8, 1),
    source: MEMORY,
    note: 'Old heavy drives. Measure addendum and depth.',
  },
  {
    key: 'full-25',
    name: '25° full depth',
    system: system('25° full depth', 25, 1, 1.25),
    source: MEMORY,
    note: 'Heavily loaded wheels. Measure the depth.',
  },
];
