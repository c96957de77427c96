import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { addAssembly } from '../../db/assemblies.ts';
import { type Executor, together } from '../../db/executor.ts';
import { addItem, type NewItem } from '../../db/items.ts';
import { openShop, type Shop } from '../../db/open.ts';
import { addPart, type NewPart } from '../../db/parts.ts';
import { addProject } from '../../db/projects.ts';
import { addSet, fillFromDrawer } from '../../db/sets.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches, nanometres } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';

export const NOW = '2026-05-01T10:00:00.000Z';
export const firstPage = { before: null, size: 50 } as const;

export const emptyFolder = (): string => mkdtempSync(join(tmpdir(), 'shop-'));

/** A new shop's file in a folder of its own; closed when the test ends. */
export async function aShop(path = join(emptyFolder(), 'shop.sqlite')): Promise<Shop> {
  const shop = await openShop(path, { copies: null, now: NOW });
  onTestFinished(() => shop.close());
  return shop;
}

/** A wheel of the Halvorsen hobber: 8 DP, 14.5°, 0.875 in face, six splines. */
export const halvorsenWheel = (teeth: number): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: ratio(8) },
  system: { name: '14½°', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: nanometres(0) },
  helix: null,
  face: inches(0.875),
  bore: { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) },
  body: { known: true, recesses: [], openings: [] },
});

const RECESSED = { side: 'both', inner: inches(1.9), outer: inches(4.6) } as const;
const recessedWheel = (teeth: number): Gear => ({
  ...halvorsenWheel(teeth),
  body: { known: true, recesses: [RECESSED], openings: [] },
});

export const aProject = (db: Executor) =>
  addProject(db, {
    make: 'Halvorsen',
    model: 'H-12',
    what: 'gear hobber',
    size: '',
    year: 'about 1926',
    serial: '4071',
    notes: '',
    opened_on: NOW,
  });

const PLAIN_ITEM = {
  name: '',
  kept_in: 'under the bed',
  from_project_id: null,
  trust: 'unknown',
  condition: '',
  hardness: 'file bites',
  material: 'steel',
  length_nm: null,
  length_form: null,
  diameter_nm: null,
  diameter_form: null,
  added_on: NOW,
  notes: '',
} as const;

export const wheel = (gear: Gear, set_id: number | null): NewItem => ({ ...PLAIN_ITEM, kind: 'wheel', set_id, gear });
export const stock = (length_nm: number | null, name = 'bar'): NewItem => ({
  ...PLAIN_ITEM,
  kind: 'stock',
  name,
  set_id: null,
  length_nm,
  length_form: length_nm === null ? null : 'in.3',
});

export const place = (
  project_id: number,
  assembly_id: number,
  set_id: number | null,
  gear: Gear | null,
  name = 'index wheel',
): NewPart => ({
  project_id,
  assembly_id,
  set_id,
  name,
  material: 'steel',
  way: null,
  why: '',
  notes: '',
  gear,
});

const BELONG = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
const DRAWER = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52];

/** A machine with one part without a gear. */
export async function onePart(db: Executor) {
  const project = await aProject(db);
  const assembly = await addAssembly(db, { project_id: project.id, within_id: null, name: 'head', serial: '', notes: '' });
  const part = await addPart(db, place(project.id, assembly.id, null, null, 'guard'));
  return { project, assembly, part };
}

/** The first acceptance story's machine, with its set and drawer. */
export const halvorsen = (shop: Executor) =>
  together(shop, async (db) => {
    const project = await aProject(db);
    const assembly = await addAssembly(db, { project_id: project.id, within_id: null, name: 'index head', serial: 'IH 12', notes: '' });
    const set = await addSet(db, { assembly_id: assembly.id, name: 'index change gears', sets: 'tooth counts', pattern: null, notes: '' });
    for (const teeth of BELONG) await addPart(db, place(project.id, assembly.id, set.id, halvorsenWheel(teeth)));
    for (const [at, teeth] of DRAWER.entries()) {
      const recessed = teeth === 52 || (teeth === 46 && DRAWER[at - 1] === 46);
      await addItem(db, wheel(recessed ? recessedWheel(teeth) : halvorsenWheel(teeth), set.id));
    }
    await fillFromDrawer(db, set.id);
    return { project, assembly, set };
  });

const figure = {
  name: 'outside diameter',
  symbol: 'D',
  value: { length: inches(3) },
  unit: 'in',
  places: 4,
  formula: '(N + 2) ÷ P',
  source: 'Machinery’s Handbook, 31st ed., Gearing',
  given: [
    { symbol: 'N', name: 'teeth', value: { count: 22 }, from: 'typed' },
    { symbol: 'P', name: 'diametral pitch', value: { number: 8, unit: '', places: 0 }, from: 'typed' },
  ],
  limits: [{ length: inches(2.9975) }, { length: inches(3) }],
} as const;

/** A short plan of our own: turn the blank, then cut it with a No. 5; between them edges are broken. */
export function plan(): PlannedOperation[] {
  const lathe = { key: 'lathe/mandrel', place: 'lathe', machineId: null, says: 'Lathe, on the spline mandrel' } as const;
  const mill = { key: 'mill/head 40', place: 'mill', machineId: null, says: 'Mill, dividing head' } as const;
  const base = { must: true, steps: ['Look first.'], measures: [], needs: [], cautions: [], minutes: 20, after: [], figures: {} };
  const pitch = { kind: 'DP', size: ratio(8) } as const;
  return [
    { ...base, key: 'turn', title: 'Turn the blank', setUp: lathe, figures: { outside: figure } },
    { ...base, key: 'edges', title: 'Break the edges', setUp: lathe, after: ['turn'] },
    {
      ...base,
      key: 'cut',
      title: 'Cut the teeth',
      setUp: mill,
      after: ['edges'],
      needs: [{ kind: 'cutter', pitch, angle: degrees(14.5), teeth: 22 }],
    },
  ];
}
