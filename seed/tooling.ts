import type { Executor } from '../db/executor.ts';
import { addMachine } from '../db/machines.ts';
import { setSetting } from '../db/settings.ts';
import { addTool, type NewTool } from '../db/tools.ts';
import type { Cutter } from '../lib/tooling/tooling.ts';
import { degrees } from '../lib/values/angle.ts';
import { inches, millimetres } from '../lib/values/length.ts';
import { ratio } from '../lib/values/ratio.ts';
import { dayAfter, daysBefore } from './dates.ts';
import { addStock } from './things.ts';

const HERE = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
type Standing = Partial<Omit<NewTool, 'details' | 'forms' | 'name'>>;

const place = (db: Executor, name: string, details: NewTool['details'], about: Standing = {}, forms: NewTool['forms'] = {}) =>
  addTool(db, { ...HERE, name, ...about, details, forms });

/** The numbers of the usual set of eight that lie here, with the counts that they cut. */
const RANGES = { '2': [55, 134], '3': [35, 54], '4': [26, 34], '5': [21, 25] } as const;
type Numbered = keyof typeof RANGES;
type Stamped = Pick<Cutter, 'stampedDepth' | 'hole' | 'diameter' | 'width' | 'steel'>;

const inchCutter = (pitch: number, angle: number, number: Numbered, stamped: Stamped): NewTool['details'] => ({
  kind: 'cutter',
  pitch: { kind: 'DP', size: ratio(pitch) },
  angle: degrees(angle),
  number,
  teethFrom: RANGES[number][0],
  teethTo: RANGES[number][1],
  exactFor: null,
  ...stamped,
});

const sizes = (depth: number, hole: number, diameter: number, width: number, steel: Cutter['steel'] = 'high-speed'): Stamped => ({
  stampedDepth: inches(depth),
  hole: inches(hole),
  diameter: inches(diameter),
  width: inches(width),
  steel,
});

const IN3 = { unit: 'in', places: 3 } as const;
const CUTTER_FORMS = { hole: { unit: 'in', over: 8 }, diameter: { unit: 'in', over: 8 }, width: IN3, stampedDepth: IN3 } as const;

async function cutters(db: Executor, now: string): Promise<void> {
  const add = (name: string, details: NewTool['details'], about: Standing = {}) =>
    place(db, name, details, { kept_in: 'cutter drawer', ...about }, CUTTER_FORMS);
  await add('Cutter No. 2, 8 DP', inchCutter(8, 14.5, '2', sizes(0.27, 1, 3, 0.29)));
  await add('Cutter No. 4, 8 DP', inchCutter(8, 14.5, '4', sizes(0.27, 1, 3, 0.31)));
  await add('Cutter No. 3, 8 DP, 20°', inchCutter(8, 20, '3', sizes(0.281, 1, 3, 0.33)), {
    notes: 'Came in a box of odd cutters. For the 14½° wheels it is no use.',
  });
  await add('Cutter No. 3, 10 DP', inchCutter(10, 14.5, '3', sizes(0.216, 1, 2.75, 0.25, 'carbon')));
  await add('Cutter No. 2, 12 DP', inchCutter(12, 14.5, '2', sizes(0.18, 1, 2.625, 0.2)));
  await add('Cutter No. 2, 16 DP', inchCutter(16, 14.5, '2', sizes(0.135, 1, 2.5, 0.15)));
  await add('Cutter No. 4, 10 DP', inchCutter(10, 14.5, '4', sizes(0.216, 1, 2.75, 0.25, 'carbon')), {
    wear: 'dull',
    notes: 'Rubs more than it cuts. To be sharpened on the face only.',
  });
  await add('Cutter No. 5, 8 DP', inchCutter(8, 14.5, '5', sizes(0.27, 0.875, 2.875, 0.33)), {
    owner: 'a neighbour',
    here: 0,
    lent_to: 'its owner, not fetched yet',
    due_on: dayAfter(now, 21),
    kept_in: '',
    notes: 'Offered on loan, not fetched yet. Its hole is 7/8 in, and the arbor here is 1 in: a 7/8 in arbor has to come with it.',
  });
  await metricCutter(db);
}

const metricCutter = (db: Executor) =>
  place(
    db,
    'Cutter No. 3, module 2',
    {
      kind: 'cutter',
      pitch: { kind: 'module', size: ratio(2) },
      angle: degrees(20),
      number: '3',
      teethFrom: 17,
      teethTo: 20,
      exactFor: null,
      stampedDepth: millimetres(4.5),
      hole: millimetres(22),
      diameter: millimetres(60),
      width: millimetres(6.5),
      steel: 'high-speed',
    },
    {
      kept_in: 'cutter drawer',
      notes: 'This maker numbers from the small counts up.',
    },
    {
      hole: { unit: 'mm', places: 0 },
      diameter: { unit: 'mm', places: 0 },
      width: { unit: 'mm', places: 1 },
      stampedDepth: { unit: 'mm', places: 1 },
    },
  );

const PLATES = [
  ['Plate 1', [[15, 16, 17, 18, 19, 20]]],
  ['Plate 2', [[21, 23, 27, 29, 31, 33]]],
  ['Plate 3', [[37, 39, 41, 43, 47, 49]]],
] as const;

const LARGE_PLATE = [
  [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43],
  [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66],
] as const;

const HEAD_GEARS = [28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const TABLE_DIAL = { perTurn: 240, vernier: 6, near: false } as const;

async function dividing(db: Executor, now: string): Promise<void> {
  await place(
    db,
    'Dividing head, 40 to 1',
    { kind: 'head', turns: 40, backPin: false, oneIdler: null, gears: HEAD_GEARS, lash: ratio(1, 12) },
    { kept_in: 'under the mill', notes: 'Its change gears hang on the rack by the mill. What one idler does has not been tried.' },
  );
  await place(
    db,
    'Rotary table, 90 to 1',
    { kind: 'head', turns: 90, backPin: false, oneIdler: null, dial: TABLE_DIAL, dialOnly: true, lash: ratio(1, 80) },
    { kept_in: 'on the floor by the drill', notes: 'Minutes on the handwheel, a vernier to 10 seconds. No plate fits it.' },
  );
  for (const [name, sides] of PLATES) await place(db, name, { kind: 'plate', sides }, { kept_in: 'rack by the mill' });
  const lent = { here: 0, lent_to: 'the club', due_on: dayAfter(now, 9), kept_in: 'rack by the mill' } as const;
  await place(db, 'Large plate, two sides', { kind: 'plate', sides: LARGE_PLATE }, lent);
}

async function holding(db: Executor): Promise<void> {
  await place(db, 'Arbor, 1 in', { kind: 'arbor', diameter: inches(1) }, { kept_in: 'on the mill' }, { diameter: { unit: 'in', over: 8 } });
  await place(db, 'Arbor, 22 mm', { kind: 'arbor', diameter: millimetres(22) }, {}, { diameter: { unit: 'mm', places: 0 } });
  await place(db, 'Three-jaw chuck', { kind: 'chuck', jaws: 3, diameter: inches(6), runOut: inches(0.002), topSpeedRpm: 1800 }, {}, CHUCK);
  await place(db, 'Four-jaw chuck', { kind: 'chuck', jaws: 4, diameter: inches(8), runOut: null, topSpeedRpm: 1200 }, {}, CHUCK);
  await place(
    db,
    'Plain mandrel, 1 in',
    {
      kind: 'mandrel',
      bore: { form: 'plain', diameter: inches(1) },
      holding: 'shoulder and nut',
      runOut: inches(0.0003),
    },
    { kept_in: 'lathe cupboard' },
  );
  await place(db, '1/4 in keyway broach', { kind: 'other' }, { kept_in: 'lathe cupboard' });
  await place(db, 'hand reamer, 1 in', { kind: 'other' }, { kept_in: 'lathe cupboard', wear: 'worn out' });
}

const CHUCK = { runOut: IN3, diameter: { unit: 'in', places: 0 } } as const;

const CROSS_DIAL = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 } as const;
const KNEE_DIAL = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 125, lash: inches(0.012) } as const;

async function machines(db: Executor): Promise<void> {
  await addMachine(db, {
    name: 'Lathe, 7 in centres',
    kind: 'lathe',
    speedsRpm: [28, 45, 70, 112, 180, 285, 450, 720],
    feeds: [0.002, 0.003, 0.004, 0.006, 0.008, 0.012].map(inches),
    feedsPer: 'turn',
    crossDial: CROSS_DIAL,
    depthDial: null,
    screwedNose: true,
    nose: 'screwed, 2 1/4 in, 8 to the inch',
    notes: 'Takes 14 in over the bed and 8 in over the saddle.',
    feedForm: IN3,
  });
  await addMachine(db, {
    name: 'Horizontal mill',
    kind: 'mill',
    speedsRpm: [26, 38, 60, 92, 145, 225, 350],
    feeds: [0.5, 0.75, 1.125, 1.75, 2.75, 4.25].map(inches),
    feedsPer: 'minute',
    crossDial: CROSS_DIAL,
    depthDial: KNEE_DIAL,
    screwedNose: false,
    nose: 'No. 40 taper',
    notes: 'The knee screw has 0.012 in of lost motion: come up to every depth from below.',
    feedForm: IN3,
  });
  await addMachine(db, {
    name: 'Pillar drill',
    kind: 'drill',
    speedsRpm: [120, 215, 390, 700, 1250],
    feeds: [],
    feedsPer: 'turn',
    crossDial: null,
    depthDial: null,
    screwedNose: false,
    nose: 'No. 2 taper',
    notes: '',
  });
}

/** The invented shop's own tools and machines. There is no spline mandrel, no 8 DP No. 3 and no No. 5 in it. */
export async function fillTooling(db: Executor, now: string): Promise<void> {
  await machines(db);
  await dividing(db, now);
  await holding(db);
  await cutters(db, now);
  await stock(db, now);
  await setSetting(db, 'cleanUp', '0.010');
}

/** What lies on the bar rack and is promised to nothing. */
async function stock(db: Executor, now: string): Promise<void> {
  const came = daysBefore(now, 120);
  await addStock(db, 'steel bar, 4 1/2 in', 'steel', 4.5, 6, came, 'bar rack');
  await addStock(db, 'steel bar, 2 in', 'steel', 2, 22, came, 'bar rack');
  await addStock(db, 'cast iron bar, 7 1/2 in', 'cast iron', 7.5, 4, came, 'under the bench');
  await addStock(db, 'bronze bar, 1 1/2 in', 'bronze', 1.5, 9.25, came, 'bar rack');
}
