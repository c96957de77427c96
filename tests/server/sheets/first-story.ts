import { itemsOfSet } from '../../../db/items.ts';
import { addMachine } from '../../../db/machines.ts';
import { openRoutings } from '../../../db/open-routing.ts';
import { type OperationLine, operationsOf } from '../../../db/operations.ts';
import { partsOfSet } from '../../../db/parts.ts';
import { addTool } from '../../../db/tools.ts';
import type { Dial } from '../../../lib/tooling/tooling.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import type { Db } from '../../../server/visit.ts';
import { halvorsen } from '../../db/bench.ts';
import { NOW } from '../app-for-tests.ts';

const TOOL = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
const CIRCLES = [
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];

/** A form cutter of 8 DP, 14½°, with the range that the acceptance story gives it. */
export const formCutter = (number: string, teethFrom: number, teethTo: number) => ({
  ...TOOL,
  name: `No. ${number}, 8 DP`,
  details: {
    kind: 'cutter' as const,
    pitch: { kind: 'DP' as const, size: ratio(8) },
    angle: degrees(14.5),
    number,
    teethFrom,
    teethTo,
    hole: inches(1),
    diameter: inches(2.75),
    width: inches(0.375),
    stampedDepth: null,
    steel: 'high-speed' as const,
    exactFor: null,
  },
});

type HeadDetails = Extract<Parameters<typeof addTool>[1]['details'], { kind: 'head' }>;

/** head: what there is beside 40 to 1. */
export async function toolDrawer(db: Db, head: Partial<HeadDetails> = {}): Promise<void> {
  await addTool(db, { ...TOOL, name: 'Dividing head', details: { kind: 'head', turns: 40, backPin: false, oneIdler: null, ...head } });
  for (const [at, circles] of CIRCLES.entries())
    await addTool(db, { ...TOOL, name: `Plate ${at + 1}`, details: { kind: 'plate', sides: [circles] } });
  await addTool(db, { ...TOOL, name: 'Arbor, 1 in', details: { kind: 'arbor', diameter: inches(1) } });
  await addTool(db, formCutter('4', 26, 34));
}

const dial = (reads: Dial['reads'], perTurn: number): Dial => ({ reads, unit: 'in', division: inches(0.001), perTurn });

export async function shopMachines(db: Db): Promise<void> {
  const BARE = { nose: '', notes: '' } as const;
  await addMachine(db, {
    ...BARE,
    name: 'Dunmarrow lathe',
    kind: 'lathe',
    speedsRpm: [24, 36, 58, 90, 140, 220],
    feeds: [inches(0.004), inches(0.008)],
    feedsPer: 'turn',
    crossDial: dial('diameter', 200),
    depthDial: null,
    screwedNose: true,
  });
  await addMachine(db, {
    ...BARE,
    name: 'Ashdown & Lyle mill',
    kind: 'mill',
    speedsRpm: [35, 58, 90, 140],
    feeds: [inches(0.75), inches(1.5)],
    feedsPer: 'minute',
    crossDial: dial('travel', 125),
    depthDial: dial('travel', 100),
    screwedNose: false,
  });
}

export type FirstStory = {
  readonly parts: Readonly<Record<22 | 28, number>>;
  readonly routings: Readonly<Record<22 | 28, number>>;
  readonly operation: (teeth: 22 | 28, key: string) => Promise<OperationLine>;
};

/** The first acceptance story up to its two open routings: the 22 from a 31, the 28 from a 34; No. 5 and the mandrel are lacking. */
export async function firstStory(db: Db): Promise<FirstStory> {
  const { set } = await halvorsen(db);
  await toolDrawer(db);
  await shopMachines(db);
  const [parts, things] = [await partsOfSet(db, set.id), await itemsOfSet(db, set.id)];
  const missing = (teeth: number): number => parts.find((one) => one.stored?.gear.teeth === teeth)?.id ?? 0;
  const spare = (teeth: number): number => things.find((one) => one.stored?.gear.teeth === teeth && one.state === 'spare')?.id ?? 0;
  const way = 're-cut a spare' as const;
  const [first = 0, second = 0] = await openRoutings(
    db,
    [
      { partId: missing(22), way, itemIds: [spare(31)] },
      { partId: missing(28), way, itemIds: [spare(34)] },
    ],
    NOW,
  );
  const routings = { 22: first, 28: second };
  const operation = async (teeth: 22 | 28, key: string): Promise<OperationLine> => {
    const found = (await operationsOf(db, routings[teeth])).find((one) => one.key === key);
    if (!found) throw new Error(key);
    return found;
  };
  return { parts: { 22: missing(22), 28: missing(28) }, routings, operation };
}
