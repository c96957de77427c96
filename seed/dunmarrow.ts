import { acceptChanges } from '../db/accept-changes.ts';
import { addAssembly } from '../db/assemblies.ts';
import type { Executor } from '../db/executor.ts';
import { typeFigure } from '../db/figures.ts';
import { openRouting, openRoutings } from '../db/open-routing.ts';
import { addOperation, holdFor, strikeOut } from '../db/operations.ts';
import { addProject } from '../db/projects.ts';
import { tick } from '../db/ticks.ts';
import { BENCH } from '../lib/routing/set-ups.ts';
import { inches } from '../lib/values/length.ts';
import { daysBefore } from './dates.ts';
import { addPlace, addStock, addThing, addWheel, addWheelPlace, keyedBore, oldInchWheel, type Place } from './things.ts';
import { did, didUpTo, leftAt, lineOf, type ReadAt } from './work.ts';

const KEYED = keyedBore(1, 0.25, 0.125);
const FEED_WHEEL = oldInchWheel(10, 0.75, KEYED);
const INDEX_WHEEL = oldInchWheel(16, 0.625, KEYED);

async function machine(db: Executor, now: string): Promise<{ readonly feed: Place; readonly index: Place }> {
  const { id } = await addProject(db, {
    make: 'Dunmarrow',
    model: 'D-24',
    what: 'planer',
    size: '24 in by 6 ft',
    year: 'about 1905',
    serial: '318',
    notes: 'Stood in a yard for years. The table and the ways are sound; the feed and the index centres are not.',
    opened_on: daysBefore(now, 110),
  });
  const feed = await addAssembly(db, { project_id: id, within_id: null, name: 'feed', serial: '', notes: '' });
  const index = await addAssembly(db, { project_id: id, within_id: null, name: 'index centres', serial: 'C 40', notes: '' });
  return { feed: { projectId: id, assemblyId: feed.id, setId: null }, index: { projectId: id, assemblyId: index.id, setId: null } };
}

/** Two wheels begun together: one from a spare; and one of a prime count, from bar, for which gears have to turn the plate. */
async function openBoth(db: Executor, feed: Place, index: Place, now: string): Promise<readonly [number, number]> {
  const cut = await addWheelPlace(db, feed, { ...FEED_WHEEL, teeth: 48 }, 'feed wheel', { why: 'Stripped over a third of its rim.' });
  const why = '71 is prime, and no circle here is a multiple of it: gears have to turn the plate.';
  const prime = await addWheelPlace(db, index, { ...INDEX_WHEEL, teeth: 71 }, 'index wheel', { why });
  const about = { name: '56T from a scrapped planer', kept_in: 'odd wheels' };
  const spare = await addWheel(db, { ...FEED_WHEEL, teeth: 56 }, null, daysBefore(now, 60), about);
  const bar = await addStock(db, 'steel bar, 4 3/4 in', 'steel', 4.75, 6, daysBefore(now, 40), 'bar rack');
  const [first = 0, second = 0] = await openRoutings(
    db,
    [
      { partId: cut.id, way: 're-cut a spare', itemIds: [spare.id] },
      { partId: prime.id, way: 'make from stock', itemIds: [bar.id] },
    ],
    daysBefore(now, 25),
  );
  return [first, second];
}

const READ: ReadAt = {
  sound: { oldRoot: 5.368, runOut: 0.002 },
  'prove-mandrel': { runOut: 0.0003 },
  solid: { roughTo: 5.031 },
  'last-cuts': { halfWay: 5.0155 },
  blank: { outside: 4.999, runOut: 0.001, faceRunOut: 0.002 },
  'line-up': { runOut: 0.0004 },
  'cutter-on-arbor': { rimRunOut: 0.0015 },
  central: { shift: 0.001 },
};

/** Turned, set up on the mill, and set to depth by the blank that was measured. */
async function turn(db: Executor, id: number, now: string): Promise<void> {
  const chamfer = await lineOf(db, id, 'chamfer');
  await strikeOut(db, chamfer.id, chamfer.rev, daysBefore(now, 24));
  await didUpTo(db, id, 'touch', daysBefore(now, 6), READ);
  await acceptChanges(db, id, 'all', daysBefore(now, 6));
}

const CUT_SO_FAR = 17;

/** Roughed all round and being finished: it was left part way. */
async function cutPartWay(db: Executor, id: number, now: string): Promise<void> {
  await didUpTo(db, id, 'first-span', daysBefore(now, 3));
  await did(db, id, 'first-span', daysBefore(now, 2), { span: 1.0901 });
  const finish = await lineOf(db, id, 'finish');
  await typeFigure(db, finish.id, finish.rev, 'feed', { length: inches(0.5) });
  for (let tooth = 1; tooth <= CUT_SO_FAR; tooth += 1) await tick(db, finish.id, tooth, daysBefore(now, 1));
  const note = `Space ${CUT_SO_FAR} cut, spindle stopped and clamped. The next move has not been made.`;
  await leftAt(db, id, 'finish', note, daysBefore(now, 1));
}

type ByHand = { readonly title: string; readonly steps: readonly string[]; readonly minutes: number; readonly notes?: string };
async function byHand(db: Executor, routingId: number, operations: readonly ByHand[]): Promise<void> {
  for (const [at, { notes = '', ...one }] of operations.entries())
    await addOperation(db, routingId, { ...one, notes, setUp: BENCH, needs: [], at: at + 1 });
}

const BLOCK: readonly ByHand[] = [
  {
    title: 'Make the pattern',
    steps: ['Finished sizes, finish on the machined faces, then the shrink rule.', 'Draft 2° on every side that is drawn.'],
    minutes: 600,
  },
  {
    title: 'Send to the foundry',
    steps: ['Mark the pattern; note when it went and what was promised.'],
    minutes: 30,
    notes: 'Six weeks were promised.',
  },
  { title: 'Measure the casting before cutting', steps: ['Length, boss width, centre height; the bosses against the bolts.'], minutes: 40 },
  { title: 'Bore and face the block', steps: ['First cut under the skin, rough, let it rest, finish.'], minutes: 480 },
];

const SHAFT: readonly ByHand[] = [
  { title: 'Rough the shaft', steps: ['Centre both ends, rough to 1/32 in over.'], minutes: 150 },
  { title: 'Turn the journals to the bore', steps: ['Fit both journals to the bored block, 0.0015 in under.'], minutes: 120 },
];

/** A casting, and a shaft whose journals wait for it. */
async function blockAndShaft(db: Executor, place: Place, now: string): Promise<void> {
  const why = 'Cracked through the bore. The broken one is at hand.';
  const block = await addPlace(db, place, 'bearing block', { material: 'cast iron', way: 'cast', why });
  const shaft = await addPlace(db, place, 'feed shaft', { material: 'steel', way: 'make from stock' });
  const bar = await addStock(db, 'steel bar, 1 1/4 in', 'steel', 1.25, 40, daysBefore(now, 90), 'bar rack');
  const cast = await openRouting(db, { partId: block.id, way: 'cast', itemIds: [] }, daysBefore(now, 45));
  await byHand(db, cast, BLOCK);
  for (const { title } of BLOCK.slice(0, 2)) await did(db, cast, title, daysBefore(now, 30));
  const takes = { length: inches(26.5), form: { unit: 'in', places: 3 } } as const;
  const choice = { partId: shaft.id, way: 'make from stock', itemIds: [bar.id], takes } as const;
  const turned = await openRouting(db, choice, daysBefore(now, 28));
  await byHand(db, turned, SHAFT);
  await did(db, turned, 'Rough the shaft', daysBefore(now, 14));
  const [journals, bored] = [await lineOf(db, turned, 'Turn the journals to the bore'), await lineOf(db, cast, 'Bore and face the block')];
  await holdFor(db, journals.id, journals.rev, bored.id);
}

/** A planer with a casting at the foundry, a shaft that waits for it, a wheel half cut and one that no plate divides without gears. */
export async function fillDunmarrow(db: Executor, now: string): Promise<void> {
  const { feed, index } = await machine(db, now);
  await blockAndShaft(db, feed, now);
  await addPlace(db, feed, 'rack guard', { material: 'steel' });
  await addPlace(db, index, 'centre stud', { material: 'steel', way: 'make from stock' });
  await addThing(db, 'casting', 'bracket casting, rough', 'cast iron', daysBefore(now, 88), {
    kept_in: 'casting shelf',
    notes: 'A second bracket came with the machine. Nobody knows its place.',
  });
  const [cut, prime] = await openBoth(db, feed, index, now);
  await did(db, prime, 'stock', daysBefore(now, 19));
  await turn(db, cut, now);
  await cutPartWay(db, cut, now);
}
