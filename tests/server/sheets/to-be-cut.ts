import { expect, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { addItem } from '../../../db/items.ts';
import { openRoutings } from '../../../db/open-routing.ts';
import { operationsOf } from '../../../db/operations.ts';
import { addPart } from '../../../db/parts.ts';
import type { Gear } from '../../../lib/gears/gear.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import type { Db } from '../../../server/visit.ts';
import { aProject, halvorsenWheel, place, wheel } from '../../db/bench.ts';
import { NOW, shopForTests, visit } from '../app-for-tests.ts';
import { shopMachines, toolDrawer } from './first-story.ts';

type Head = Parameters<typeof toolDrawer>[1];
/** Change gears of the head, as in the fourth story. */
export const GEARS = [28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

const fine = (teeth: number): Gear => ({
  ...halvorsenWheel(teeth),
  pitch: { kind: 'DP', size: ratio(16) },
  bore: { form: 'plain', diameter: inches(1) },
});

/** Another wheel of 16 DP to be cut in the same shop, from a spare of nine teeth more: its part, its routing, and its operations by key. */
export async function anotherWheel(db: Db, teeth: number) {
  const project = await aProject(db);
  const assembly = await addAssembly(db, { project_id: project.id, within_id: null, name: `feed box ${teeth}`, serial: '', notes: '' });
  const part = await addPart(db, place(project.id, assembly.id, null, fine(teeth)));
  const spare = await addItem(db, wheel(fine(teeth + 9), null));
  const [routing = 0] = await openRoutings(db, [{ partId: part.id, way: 're-cut a spare', itemIds: [spare.id] }], NOW);
  const operation = async (key: string): Promise<number> => (await operationsOf(db, routing)).find((one) => one.key === key)?.id ?? 0;
  return { part, routing, operation };
}

/** A shop with a head, three plates and both machines, in which one wheel of 16 DP is to be cut. head: what there is beside 40 to 1. */
export async function toBeCut(teeth: number, head: Head) {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const db = shop.shops.own;
  await toolDrawer(db, head);
  await shopMachines(db);
  const body = async (address: string): Promise<string> => {
    const answer = await visit(shop, address);
    expect(answer.statusCode, address).toBe(200);
    expect(answer.body).not.toMatch(/undefined|NaN|\[object/);
    return answer.body;
  };
  return { shop, db, body, ...(await anotherWheel(db, teeth)) };
}
