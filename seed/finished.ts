import { addAssembly } from '../db/assemblies.ts';
import type { Executor, Row } from '../db/executor.ts';
import { finishRouting } from '../db/finish-routing.ts';
import { openRouting, type RoutingChoice } from '../db/open-routing.ts';
import { fitItem, part } from '../db/parts.ts';
import { addProject, saveProject } from '../db/projects.ts';
import { routing } from '../db/routings.ts';
import { addSet, fillFromDrawer } from '../db/sets.ts';
import type { Gear } from '../lib/gears/gear.ts';
import { daysBefore } from './dates.ts';
import { addPlace, addStock, addThing, addWheel, addWheelPlace, keyedBore, oldInchWheel, type Place, plainBore } from './things.ts';
import { didUpTo, type ReadAt } from './work.ts';

type Outcome = {
  readonly outcome: 'good' | 'scrap';
  /** Days before the present on which it was begun and finished. */
  readonly from: number;
  readonly to: number;
  readonly costCents: number;
  readonly notes: string;
  /** The operation at which it was given up; null when it went to its end. */
  readonly upTo: string | null;
  readonly found: ReadAt;
};

async function minutesOf(db: Executor, routingId: number): Promise<number> {
  const rows = await db.selectFrom('operation').select('minutes_taken').where('routing_id', '=', routingId).execute();
  return rows.reduce((sum, row) => sum + (row.minutes_taken ?? 0), 0);
}

/** A wheel made earlier, from the opening of its routing to its record. */
async function made(db: Executor, choice: RoutingChoice, { from, to, upTo, found, ...rest }: Outcome, now: string): Promise<void> {
  const id = await openRouting(db, choice, daysBefore(now, from));
  await didUpTo(db, id, 'line-up', daysBefore(now, Math.ceil((from + to) / 2)), found);
  await didUpTo(db, id, upTo, daysBefore(now, to), found);
  const { rev } = await routing(db, id);
  await finishRouting(db, { routingId: id, rev, finishedOn: daysBefore(now, to), minutes: await minutesOf(db, id), ...rest });
}

const SCREW_WHEEL = oldInchWheel(10, 0.625, keyedBore(1, 0.25, 0.125));
const BELONG = [20, 25, 30, 35, 40, 45, 50, 60, 65];
const LEFT = [20, 25, 30, 35, 50, 60, 65];
const SPARES = [48, 50, 60];

async function lathe(db: Executor, now: string): Promise<Place> {
  const { id } = await addProject(db, {
    make: 'Thornbury-Pell',
    model: 'L-9',
    what: 'screw-cutting lathe',
    size: '9 in by 42 in',
    year: '1931',
    serial: 'L 774',
    notes: 'Finished, and cutting threads again. Kept here for its records.',
    opened_on: daysBefore(now, 410),
  });
  const { id: assembly_id } = await addAssembly(db, {
    project_id: id,
    within_id: null,
    name: 'change gear bracket',
    serial: '',
    notes: '',
  });
  const set = await addSet(db, { assembly_id, name: 'screw-cutting change gears', sets: 'threads', pattern: SCREW_WHEEL, notes: '' });
  return { projectId: id, assemblyId: assembly_id, setId: set.id };
}

const wheelOf = (teeth: number): Gear => ({ ...SCREW_WHEEL, teeth });

async function wheels(db: Executor, place: Place, now: string) {
  const [parts, spares] = [new Map<number, Row<'part'>>(), new Map<number, Row<'item'>>()];
  const came = daysBefore(now, 408);
  for (const teeth of BELONG) parts.set(teeth, await addWheelPlace(db, place, wheelOf(teeth), 'change gear'));
  for (const teeth of LEFT) await addWheel(db, wheelOf(teeth), place.setId, came, { trust: 'original', kept_in: 'lathe cupboard' });
  await fillFromDrawer(db, place.setId ?? 0);
  for (const teeth of SPARES) spares.set(teeth, await addWheel(db, wheelOf(teeth), place.setId, came, { kept_in: 'lathe cupboard' }));
  const idOf = (all: ReadonlyMap<number, { readonly id: number }>) => (teeth: number) => all.get(teeth)?.id ?? 0;
  return { partOf: idOf(parts), spareOf: idOf(spares) };
}

const TURNED_40 = { blank: { outside: 4.199, runOut: 0.001, faceRunOut: 0.002 }, 'prove-mandrel': { runOut: 0.0003 } };
const TURNED_45 = { blank: { outside: 4.6995, runOut: 0.001, faceRunOut: 0.003 }, 'prove-mandrel': { runOut: 0.0004 } };

const FORTY: Outcome = {
  ...{ outcome: 'good', upTo: null, from: 390, to: 380, costCents: 0 },
  notes: 'Went together at the first try. Next time the burrs before the last span.',
  found: { ...TURNED_40, 'first-span': { span: 1.0857 }, measure: { span: 1.0856, pinRunOut: 0.0012, outside: 4.199 } },
};
const SPOILT: Outcome = {
  ...{ outcome: 'scrap', upTo: 'burrs', from: 372, to: 369, costCents: 0 },
  notes: 'The sector was moved before the pin was home: one thin tooth at the thirty-first space. Nicks first, then nothing hurried.',
  found: { ...TURNED_45, measure: { pinRunOut: 0.009 } },
};
const FORTY_FIVE: Outcome = {
  ...{ outcome: 'good', upTo: null, from: 366, to: 351, costCents: 2850 },
  notes: 'From bar this time. All forty-six nicks fell where they should.',
  found: {
    ...TURNED_45,
    bore: { bore: 1.0004 },
    'first-span': { span: 1.0884 },
    measure: { span: 1.0883, pinRunOut: 0.0015, outside: 4.6995 },
  },
};

/** A lathe that is finished: two change gears were made for it, one of them at the second try. */
async function finishedLathe(db: Executor, now: string): Promise<void> {
  const place = await lathe(db, now);
  const { partOf, spareOf } = await wheels(db, place, now);
  const bar = await addStock(db, 'steel bar, 5 in', 'steel', 5, 7.5, daysBefore(now, 368), 'bar rack');
  const recut = 're-cut a spare';
  await made(db, { partId: partOf(40), way: recut, itemIds: [spareOf(48)] }, FORTY, now);
  await made(db, { partId: partOf(45), way: recut, itemIds: [spareOf(50)] }, SPOILT, now);
  await made(db, { partId: partOf(45), way: 'make from stock', itemIds: [bar.id] }, FORTY_FIVE, now);
}

const DRIVE_WHEEL: Gear = { ...oldInchWheel(12, 0.5, plainBore(1)), teeth: 64 };
const SIXTY_FOUR: Outcome = {
  ...{ outcome: 'good', upTo: null, from: 296, to: 284, costCents: 1900 },
  notes: 'Runs quietly. Nothing to do otherwise.',
  found: {
    bore: { bore: 1.0006 },
    blank: { outside: 5.4985, runOut: 0.0015 },
    'first-span': { span: 1.4223 },
    measure: { span: 1.4221, pinRunOut: 0.0018, outside: 5.4985 },
  },
};

/** A drill that was finished and went on: closed, its record kept. */
async function closedDrill(db: Executor, now: string): Promise<void> {
  const project = await addProject(db, {
    make: 'Ashdown & Lyle',
    model: 'B-2',
    what: 'bench drill',
    size: '',
    year: '',
    serial: '',
    notes: 'Finished; it works for the club now.',
    opened_on: daysBefore(now, 300),
  });
  const head = await addAssembly(db, { project_id: project.id, within_id: null, name: 'head', serial: '', notes: '' });
  const place = { projectId: project.id, assemblyId: head.id, setId: null };
  const wheel = await addWheelPlace(db, place, DRIVE_WHEEL, 'drive wheel');
  const disc = await addStock(db, 'steel disc, 5 3/4 in', 'steel', 5.75, 1, daysBefore(now, 298), 'bar rack');
  await made(db, { partId: wheel.id, way: 'make from stock', itemIds: [disc.id] }, SIXTY_FOUR, now);
  const spring = await addPlace(db, place, 'return spring', { way: 'buy' });
  const bought = await addThing(db, 'other', 'return spring', 'steel', daysBefore(now, 290), {
    notes: 'Bought by the drawing of the old one.',
  });
  await fitItem(db, spring.id, (await part(db, spring.id)).rev, bought.id);
  await saveProject(db, project.id, project.rev, { closed_on: daysBefore(now, 280) });
}

/** What the shop has behind it. */
export async function fillFinished(db: Executor, now: string): Promise<void> {
  await finishedLathe(db, now);
  await closedDrill(db, now);
}
