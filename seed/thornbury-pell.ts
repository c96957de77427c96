import { addAssembly } from '../db/assemblies.ts';
import type { Executor } from '../db/executor.ts';
import { openRouting } from '../db/open-routing.ts';
import { addProject } from '../db/projects.ts';
import { addReading } from '../db/readings.ts';
import { addSet, fillFromDrawer } from '../db/sets.ts';
import { READING_NAMES } from '../db/spares/reading-names.ts';
import { inches } from '../lib/values/length.ts';
import { daysBefore } from './dates.ts';
import { addPlace, addStock, addWheel, addWheelPlace, oldInchWheel, type Place, plainBore } from './things.ts';
import { did, leftAt } from './work.ts';

const BORE = { form: 'splined', diameter: inches(1.5), minor: inches(1.25), splines: 6, keyWidth: inches(0.375) } as const;
const WHEEL = oldInchWheel(12, 0.75, BORE);
const BELONG = [36, 44, 52, 60];
const DRAWER = [36, 41, 44, 48, 52];

async function machine(db: Executor, now: string): Promise<Place> {
  const { id } = await addProject(db, {
    make: 'Thornbury-Pell',
    model: 'S-16',
    what: 'shaper',
    size: '16 in',
    year: '1938',
    serial: 'S 2290',
    notes: 'The 60 of the feed box broke up and took nothing else with it. Nobody near can broach the bore.',
    opened_on: daysBefore(now, 52),
  });
  const ram = await addAssembly(db, { project_id: id, within_id: null, name: 'ram and head', serial: '', notes: '' });
  const box = await addAssembly(db, { project_id: id, within_id: null, name: 'feed box', serial: '', notes: '' });
  await addPlace(db, { projectId: id, assemblyId: ram.id, setId: null }, 'clapper box pin', { material: 'steel', way: 'make from stock' });
  const set = await addSet(db, { assembly_id: box.id, name: 'feed box wheels', sets: 'feeds', pattern: WHEEL, notes: '' });
  return { projectId: id, assemblyId: box.id, setId: set.id };
}

/** What was read on the cracked wheel of the table feed: its pitch is still to be found out. 30 teeth of 14 DP, 14½°, a little worn, would read so. */
const CRACKED: readonly (readonly [what: string, inch: number, overK: number | null])[] = [
  [READING_NAMES.jaws, 2.279, null],
  [READING_NAMES.span, 0.5525, 3],
  [READING_NAMES.span, 0.7698, 4],
];

/** A wheel nobody knows the pitch of: it is the only one of its kind on the machine, and nothing is stamped on it. */
async function unknownWheel(db: Executor, place: Place, now: string): Promise<void> {
  const gear = {
    teeth: 30,
    pitch: null,
    face: inches(0.625),
    bore: plainBore(0.875),
    body: { known: true, recesses: [], openings: [] },
  } as const;
  const why = 'Cracked from the bore to a root. Nothing is stamped on it, and no other wheel here runs with it.';
  const { id } = await addWheelPlace(db, place, gear, 'table feed wheel', { why });
  for (const [what, inch, over_k] of CRACKED) {
    const form = { unit: 'in', places: over_k === null ? 3 : 4 } as const;
    const how = { read_on: daysBefore(now, 6), instrument: over_k === null ? 'vernier' : 'plate micrometer', form };
    await addReading(db, { partId: id }, { ...how, what, over_k, value: { length: inches(inch) } });
  }
}

/** A shaper whose missing wheel no spare is big enough for: a toothed ring goes on the middle of the 48. The pitch of another is still to be found out. */
export async function fillThornburyPell(db: Executor, now: string): Promise<void> {
  const place = await machine(db, now);
  const parts = new Map<number, number>();
  for (const teeth of BELONG) parts.set(teeth, (await addWheelPlace(db, place, { ...WHEEL, teeth }, 'feed wheel')).id);
  const things = new Map<number, number>();
  for (const teeth of DRAWER)
    things.set(teeth, (await addWheel(db, { ...WHEEL, teeth }, place.setId, daysBefore(now, 50), { kept_in: 'tray in the base' })).id);
  await fillFromDrawer(db, place.setId ?? 0);
  await unknownWheel(db, place, now);
  const ring = await addStock(db, 'steel disc, 5 1/2 in', 'steel', 5.5, 1.25, daysBefore(now, 12), 'bar rack');
  const itemIds = [things.get(48) ?? 0, ring.id];
  const id = await openRouting(db, { partId: parts.get(60) ?? 0, way: 'ring and hub', itemIds }, daysBefore(now, 11));
  await did(db, id, 'count', daysBefore(now, 10));
  await did(db, id, 'file-test', daysBefore(now, 10));
  await leftAt(db, id, 'sound', 'Roots and wall of the 48 still to be read. The disc lies sawn on the bar rack.', daysBefore(now, 9));
}
