import { remembered } from '../../db/remembered.ts';
import type { Hand } from '../../lib/gears/gear.ts';
import { camAnswer, type Lobe } from '../../lib/leads/cam.sums.ts';
import { type HelicalAsked, helicalAnswer, helicalTrains, helicalWaits } from '../../lib/leads/helical.sums.ts';
import { type LeadAsked, leadAnswer, leadTrains, leadWaits } from '../../lib/leads/lead.sums.ts';
import type { Drive, LeadMachine } from '../../lib/leads/lead-trains.ts';
import type { Ranked } from '../../lib/trains/best-trains.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import type { Ratio } from '../../lib/values/ratio.ts';
import { exactNumber, quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { angleField, choiceField, countField, optional, readField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { readList, size } from './asks.ts';
import { systemOf, wheelAsks } from './gears.ts';
import { cuttersField } from './read-cutters.ts';
import { mountedField, screwField, threadField, trainDrawerField } from './read-trains.ts';
import { sum } from './sum.ts';
import { drawRanked } from './trains.ts';

/** The wheels that came with many a universal head of 40 to 1. */
const HEAD_WHEELS = '24x2, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100';
const ENDS = { first: 'table screw', last: 'head' };

const MACHINE_ASKS = {
  turns: countField({ label: 'Turns of the crank for one of the spindle', limits: { least: 1, most: 1000 } }),
  tableScrew: screwField({ label: 'Table screw', hint: '4 TPI, 5 mm' }),
  drive: choiceField<Drive>({
    label: 'Wheels drive',
    choices: [
      ['worm', 'the worm of the head'],
      ['direct', 'the spindle direct, worm out: short leads'],
    ],
  }),
};
const drawerField = trainDrawerField({ label: 'Wheels in the drawer', hint: 'As they lie there: 24x2, 28, 32-48 step 8' });
const missingField = trainDrawerField({ label: 'Wheels missing from the set', hint: 'Empty: none' });
const handField = choiceField<Hand>({
  label: 'Hand',
  choices: [
    ['right', 'right'],
    ['left', 'left'],
  ],
});
const upToField = choiceField({
  label: 'Wheels in a train',
  choices: [
    ['4', 'up to four'],
    ['2', 'two'],
    ['6', 'up to six'],
  ],
});
const faceField = size({ label: 'Face', hint: 'Width that the teeth run across', most: 40 });
const ABOUT = {
  drawer: ['drawer'],
  missing: ['missing'],
  wheels: ['drawer'],
  lobes: ['lobes'],
  turns: ['turns'],
  helix: ['helix'],
  screw: ['tableScrew'],
  lead: ['leadWanted'],
} as const;

const machineOf = ({ turns, tableScrew, drive }: { turns: number; tableScrew: Ratio; drive: Drive }): LeadMachine => ({
  turns,
  screw: tableScrew,
  drive,
});
const upToOf = (text: string): 2 | 4 | 6 => Number(text) as 2 | 4 | 6;

const HELICAL_ASKS = {
  ...wheelAsks,
  helix: angleField({ label: 'Helix angle', limits: { least: 0, most: 89 } }),
  hand: handField,
  face: faceField,
  ...MACHINE_ASKS,
  drawer: drawerField,
  upTo: upToField,
  missing: missingField,
  mate: optional(countField({ label: 'Teeth of the mate', limits: { least: 6, most: 500 } })),
  mounted: mountedField,
  cutters: optional(cuttersField),
};

const helicalOf = (given: ValuesOf<typeof HELICAL_ASKS>) => ({
  gear: { teeth: given.teeth, pitch: given.pitch, system: systemOf(given.system) },
  helix: toDegrees(given.helix),
  hand: given.hand,
  face: given.face.length,
  machine: machineOf(given),
  wheels: given.drawer,
  upTo: upToOf(given.upTo),
  missing: given.missing,
  ...(given.cutters === null ? {} : { cutters: given.cutters }),
  ...(given.mate === null ? {} : { mate: given.mate }),
  ...(given.mounted ? { mounted: given.mounted } : {}),
});

const keptHelical = remembered<readonly Ranked[]>();
/** Searched once for the figures and the picture. */
const helicalRows = (asked: HelicalAsked): readonly Ranked[] => keptHelical(JSON.stringify(asked), () => helicalTrains(asked));

const helicalSum = sum({
  path: 'helical-milling',
  title: 'Milling helical teeth',
  group: 'Leads',
  tells:
    'Lead, wheels between table screw and head, drift across the face, table angle and which way, cutter by virtual count, and the mate.',
  asks: HELICAL_ASKS,
  example: {
    teeth: '24',
    pitch: '8 DP',
    system: 'full-14.5',
    helix: '30',
    hand: 'right',
    face: '1',
    turns: '40',
    tableScrew: '4 TPI',
    drive: 'worm',
    drawer: HEAD_WHEELS,
    upTo: '4',
    missing: '',
    mate: '',
    mounted: '',
    cutters: '',
  },
  about: ABOUT,
  parts: [{ legend: 'More, if known', asks: ['cutters', 'missing', 'mate', 'mounted'], folded: true }],
  work: (given) => helicalAnswer(helicalOf(given), helicalRows(helicalOf(given))),
  waits: (given) => helicalWaits(helicalOf(given), helicalRows(helicalOf(given))),
  draw: (given) => drawRanked(helicalRows(helicalOf(given))[0], 1.5, ENDS),
});

const NO_END = /^\s*(∞|inf(\.|inite|inity)?|endless|straight)(\s|$)/i;
const STRAIGHT = 'A lead without end is straight teeth: no wheels are needed. Lock the head and cut straight along.';
const anyLead = threadField({ label: 'Lead wanted', hint: '12 in, 300 mm' });
const leadField = { ...anyLead, read: (text: string) => (NO_END.test(text) ? unread(STRAIGHT) : anyLead.read(text)) };

const LEAD_ASKS = {
  leadWanted: leadField,
  diameter: size({ label: 'Diameter of the work', hint: 'Where the lead is to be true', most: 40 }),
  face: faceField,
  hand: handField,
  ...MACHINE_ASKS,
  drawer: drawerField,
  upTo: upToField,
  missing: missingField,
  mounted: mountedField,
};

const leadOf = (given: ValuesOf<typeof LEAD_ASKS>) => ({
  lead: given.leadWanted,
  diameter: given.diameter.length,
  face: given.face.length,
  hand: given.hand,
  machine: machineOf(given),
  wheels: given.drawer,
  upTo: upToOf(given.upTo),
  missing: given.missing,
  ...(given.mounted ? { mounted: given.mounted } : {}),
});

const keptLeads = remembered<readonly Ranked[]>();
/** As above. */
const leadRows = (asked: LeadAsked): readonly Ranked[] => keptLeads(JSON.stringify(asked), () => leadTrains(asked));

const leadSum = sum({
  path: 'wheels-for-a-lead',
  title: 'Wheels for a lead',
  group: 'Leads',
  tells:
    'The wheels between table screw and head for a lead, the drift across the face, the table’s angle, and which missing wheel would make it exact.',
  asks: LEAD_ASKS,
  example: {
    leadWanted: '12 in',
    diameter: '2',
    face: '1.5',
    hand: 'right',
    turns: '40',
    tableScrew: '4 TPI',
    drive: 'worm',
    drawer: HEAD_WHEELS,
    upTo: '4',
    missing: '',
    mounted: '',
  },
  about: ABOUT,
  parts: [{ legend: 'More, if known', asks: ['missing', 'mounted'], folded: true }],
  work: (given) => leadAnswer(leadOf(given), leadRows(leadOf(given))),
  waits: (given) => leadWaits(leadOf(given), leadRows(leadOf(given))),
  draw: (given) => drawRanked(leadRows(leadOf(given))[0], 1.5, ENDS),
});

const LOBE_HOW = 'Type each lobe as its rise and the hundredths of a turn: 2.443 in 29; 2.493 in 47.';

function readLobe(piece: string): Read<Lobe> {
  const found = /^(.+?)\s+in\s+(.+)$/i.exec(piece);
  const [rise, part] = [exactNumber(found?.[1] ?? ''), exactNumber(found?.[2] ?? '')];
  if (!rise || !part) return unread(`${quoted(piece)} could not be read. ${LOBE_HOW}`);
  const lobe = { rise: rise[0] / rise[1], hundredths: part[0] / part[1] };
  const sound = lobe.rise >= 0.001 && lobe.rise <= 20 && lobe.hundredths >= 0.1 && lobe.hundredths <= 100;
  return sound ? read(lobe) : unread(`${quoted(piece)}: a rise is from 0.001 to 20 in, within 0.1 to 100 hundredths. ${LOBE_HOW}`);
}

const camSum = sum({
  path: 'cam-lobes',
  title: 'Cams and scrolls with the head tilted',
  group: 'Leads',
  tells: 'One set of wheels for all lobes of a cam, and the tilt of head and vertical attachment for each.',
  asks: {
    lobes: readField({ label: 'Lobes', hint: LOBE_HOW, read: (text) => readList(text, 'the lobes', readLobe, /[;\n]/) }),
    ...MACHINE_ASKS,
    drawer: drawerField,
  },
  example: { lobes: '2.443 in 29; 2.493 in 47', turns: '40', tableScrew: '4 TPI', drive: 'worm', drawer: HEAD_WHEELS },
  about: ABOUT,
  work: (given) => camAnswer({ lobes: given.lobes, machine: machineOf(given), wheels: given.drawer }),
});

export const LEAD_SUMS = [helicalSum, leadSum, camSum];
