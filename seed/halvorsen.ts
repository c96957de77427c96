import { addAssembly } from '../db/assemblies.ts';
import type { Executor } from '../db/executor.ts';
import { itemsOfSet } from '../db/items.ts';
import { openRoutings } from '../db/open-routing.ts';
import { holdFor } from '../db/operations.ts';
import { partsOfSet } from '../db/parts.ts';
import { addProject } from '../db/projects.ts';
import { addReading } from '../db/readings.ts';
import { addSet, fillFromDrawer } from '../db/sets.ts';
import { READING_NAMES } from '../db/spares/reading-names.ts';
import type { Gear } from '../lib/gears/gear.ts';
import { inches } from '../lib/values/length.ts';
import { daysBefore } from './dates.ts';
import { addPlace, addWheel, addWheelPlace, oldInchWheel, type Place, readRoots } from './things.ts';
import { did, leftAt, lineOf } from './work.ts';

const BORE = { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) } as const;
const WHEEL = oldInchWheel(8, 0.875, BORE);
const RECESSED: Gear['body'] = { known: true, recesses: [{ side: 'both', inner: inches(1.9), outer: inches(4.6) }], openings: [] };

/** One of each on the cast plate of the door, and the thirteen that lie in the drawer under the bed. */
const BELONG = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
const DRAWER = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52];

async function machine(db: Executor, now: string): Promise<Place> {
  const { id } = await addProject(db, {
    make: 'Halvorsen',
    model: 'H-12',
    what: 'gear hobber',
    size: '12 in',
    year: 'about 1926',
    serial: '4071',
    notes: 'Runs under power. Two index change gears were gone when it came; the cast plate on the door says which.',
    opened_on: daysBefore(now, 140),
  });
  const bed = await addAssembly(db, { project_id: id, within_id: null, name: 'bed and drive', serial: '', notes: '' });
  const head = await addAssembly(db, {
    project_id: id,
    within_id: bed.id,
    name: 'index head',
    serial: 'IH 12',
    notes: 'Change gears under the side door.',
  });
  await addPlace(db, { projectId: id, assemblyId: head.id, setId: null }, 'spline stub shaft', {
    material: 'steel',
    way: 'make from stock',
    why: 'Gone with the two wheels. Straight-sided, six keys: it is made to the bores of the wheels that are left.',
  });
  await addPlace(db, { projectId: id, assemblyId: bed.id, setId: null }, 'belt guard', { way: 'make from stock', material: 'steel' });
  const set = await addSet(db, {
    assembly_id: head.id,
    name: 'index change gears',
    sets: 'tooth counts',
    pattern: WHEEL,
    notes: 'The plate on the door: 19 22 25 28 31 34 37 41 46 52, one of each.',
  });
  return { projectId: id, assemblyId: head.id, setId: set.id };
}

async function readings(db: Executor, itemId: number, teeth: number, on: string): Promise<void> {
  if (teeth === 25) await readRoots(db, itemId, 0.792, 1.251, on);
  if (teeth !== 46) return;
  await readRoots(db, itemId, 2.105, 1.251, on);
  const how = { read_on: on, instrument: 'dial indicator', form: { unit: 'in', places: 3 } } as const;
  await addReading(db, { itemId }, { ...how, what: READING_NAMES.runOut, value: { length: inches(0.003) } });
}

async function drawer(db: Executor, { setId }: Place, now: string): Promise<void> {
  const [came, read] = [daysBefore(now, 138), daysBefore(now, 30)];
  for (const [at, teeth] of DRAWER.entries()) {
    const second = DRAWER[at - 1] === teeth;
    const body = teeth === 52 || (teeth === 46 && second) ? RECESSED : WHEEL.body;
    const { id } = await addWheel(db, { ...WHEEL, teeth, body }, setId, came, {
      kept_in: 'drawer under the bed',
      trust: second ? 'unknown' : 'original',
      notes: body === RECESSED ? 'Recessed on both sides between 1.9 and 4.6 in.' : '',
    });
    if (second) await readings(db, id, teeth, read);
  }
}

async function openBoth(db: Executor, setId: number, now: string): Promise<readonly [number, number]> {
  const [parts, things] = [await partsOfSet(db, setId), await itemsOfSet(db, setId)];
  const choice = (missing: number, spare: number) => {
    const part = parts.find(({ stored }) => stored?.gear.teeth === missing);
    const thing = things.find(({ stored, state }) => stored?.gear.teeth === spare && state === 'spare');
    if (!part || !thing) throw new Error(`${missing} from ${spare}`);
    return { partId: part.id, way: 're-cut a spare', itemIds: [thing.id] } as const;
  };
  const [first = 0, second = 0] = await openRoutings(db, [choice(22, 31), choice(28, 34)], daysBefore(now, 46));
  return [first, second];
}

/** The 22 has been counted and tried with a file; the 28 is a step further, and its roots measured smaller than worked out. */
async function begin(db: Executor, [first, second]: readonly [number, number], now: string): Promise<void> {
  for (const id of [first, second]) {
    await did(db, id, 'count', daysBefore(now, 44));
    await did(db, id, 'file-test', daysBefore(now, 44));
  }
  await did(db, second, 'sound', daysBefore(now, 4), { oldRoot: 3.958, runOut: 0.003 });
  const [waits, leads] = [await lineOf(db, second, 'line-up'), await lineOf(db, first, 'edges')];
  await holdFor(db, waits.id, waits.rev, leads.id);
  const note = 'The 28 is read, the 31 is not: its roots next, in six places. Then both wait for the spline mandrel.';
  await leftAt(db, first, 'sound', note, daysBefore(now, 4));
}

/** A hobber with two index change gears gone, both of them begun from spares and stopped for want of a spline mandrel. */
export async function fillHalvorsen(db: Executor, now: string): Promise<void> {
  const place = await machine(db, now);
  const setId = place.setId ?? 0;
  for (const teeth of BELONG) await addWheelPlace(db, place, { ...WHEEL, teeth }, 'index wheel');
  await drawer(db, place, now);
  await fillFromDrawer(db, setId);
  await begin(db, await openBoth(db, setId, now), now);
}
