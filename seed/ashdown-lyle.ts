import { addAssembly } from '../db/assemblies.ts';
import type { Executor } from '../db/executor.ts';
import { addProject } from '../db/projects.ts';
import { addSet, fillFromDrawer } from '../db/sets.ts';
import type { Gear } from '../lib/gears/gear.ts';
import { inches } from '../lib/values/length.ts';
import { daysBefore } from './dates.ts';
import { addPlace, addWheel, addWheelPlace, keyedBore, oldInchWheel, type Place, readRoots } from './things.ts';

const WHEEL = oldInchWheel(8, 0.75, keyedBore(1, 0.25, 0.125));
const SPOKED: Gear['body'] = { known: true, recesses: [], openings: [{ what: 'spokes', inner: inches(2), outer: inches(5.5) }] };
const BELONG = [24, 28, 32, 35, 40, 44, 48, 56, 60];
const DRAWER = [24, 28, 32, 32, 40, 44, 44, 48, 60, 60];

async function machine(db: Executor, now: string): Promise<Place> {
  const { id } = await addProject(db, {
    make: 'Ashdown & Lyle',
    model: 'P-3',
    what: 'plain horizontal mill',
    size: 'table 36 in',
    year: 'before 1914',
    serial: '',
    notes: 'The feed is by change gears behind the column. Two are gone, and with them the slow feeds.',
    opened_on: daysBefore(now, 75),
  });
  const column = await addAssembly(db, { project_id: id, within_id: null, name: 'column', serial: '', notes: '' });
  const feed = await addAssembly(db, { project_id: id, within_id: column.id, name: 'feed drive', serial: 'F 311', notes: '' });
  const table = await addAssembly(db, { project_id: id, within_id: null, name: 'table and knee', serial: '', notes: '' });
  await addPlace(db, { projectId: id, assemblyId: table.id, setId: null }, 'knee crank', {
    way: 'buy',
    why: 'Any crank for a 3/4 in square will do.',
  });
  await addPlace(db, { projectId: id, assemblyId: table.id, setId: null }, 'table stop dog', { material: 'cast iron' });
  const set = await addSet(db, { assembly_id: feed.id, name: 'feed change gears', sets: 'feeds', pattern: WHEEL, notes: '' });
  return { projectId: id, assemblyId: feed.id, setId: set.id };
}

/** Where the metal is in the second of two like wheels. Of the worn 32 nobody has looked yet. */
function bodyOf(teeth: number): Gear['body'] {
  if (teeth === 60) return SPOKED;
  return teeth === 32 ? { known: false } : WHEEL.body;
}

/** What is known of each wheel of the drawer; of two like ones the second is the doubtful one. */
function about(teeth: number, second: boolean) {
  if (teeth === 44 && second) return { hardness: 'case hard', notes: 'A file skates on the tips.' } as const;
  if (teeth === 32 && second) return { condition: 'teeth worn, bore good', trust: 'replacement' } as const;
  if (teeth === 48) return { hardness: 'not tried', condition: '' } as const;
  return {};
}

async function drawer(db: Executor, { setId }: Place, now: string): Promise<void> {
  for (const [at, teeth] of DRAWER.entries()) {
    const second = DRAWER[at - 1] === teeth;
    const gear = { ...WHEEL, teeth, body: second ? bodyOf(teeth) : WHEEL.body };
    const usual = { kept_in: 'box by the column', trust: second ? 'unknown' : 'original' } as const;
    const { id } = await addWheel(db, gear, setId, daysBefore(now, 74), { ...usual, ...about(teeth, second) });
    if (teeth === 60 && second) await readRoots(db, id, 3.11, 1.001, daysBefore(now, 20));
  }
}

/** A mill with two feed change gears gone and nothing begun: what to make them from is still to be chosen. */
export async function fillAshdownLyle(db: Executor, now: string): Promise<void> {
  const place = await machine(db, now);
  for (const teeth of BELONG)
    await addWheelPlace(
      db,
      place,
      { ...WHEEL, teeth },
      'feed wheel',
      teeth === 35 ? { why: 'The slowest feed but one goes through it.' } : {},
    );
  await drawer(db, place, now);
  await fillFromDrawer(db, place.setId ?? 0);
}
