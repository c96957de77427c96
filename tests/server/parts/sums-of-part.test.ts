import { describe, expect, it, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { addPart } from '../../../db/parts.ts';
import type { Gear } from '../../../lib/gears/gear.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { millimetres } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { aProject, halvorsenWheel, place } from '../../db/bench.ts';
import { shopForTests, visit } from '../app-for-tests.ts';
import { sectionOf } from '../machines/read-page.ts';
import { boxesOn, figuresByLabel } from '../sums/read-page.ts';

function system(key: string): Gear['system'] {
  const named = systemByKey(key);
  if (!named) throw new Error(`no system ${key}`);
  return named.system;
}

const straight = { ...halvorsenWheel(22), system: system('full-14.5') };
const metric = {
  ...halvorsenWheel(12),
  pitch: { kind: 'module', size: ratio(2) } as const,
  system: system('module-1.25'),
  face: millimetres(20),
};
const leaning = { ...straight, teeth: 24, helix: { angle: degrees(20), hand: 'left' } as const };

/** The sums that the page of one part leads to, by what each link says. */
async function sumsOf(gear: Gear | null, name = 'index wheel') {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const project = await aProject(db);
  const assembly = await addAssembly(db, { project_id: project.id, name: 'Box', within_id: null, serial: '', notes: '' });
  const { id } = await addPart(db, place(project.id, assembly.id, null, gear, name));
  const { body } = await visit(shop, `/parts/${id}`);
  const section = body.includes('id="sums"') ? sectionOf(body, 'sums') : '';
  const found = [...section.matchAll(/<a [^>]*?href="(\/sums\/[^"]*)"[^>]*>([^<]*)<\/a>/g)];
  const links = new Map(found.map(([, href = '', says = '']) => [says.trim(), href.replaceAll('&amp;', '&')]));
  return { links, get: (says: string) => visit(shop, links.get(says) ?? 'no such link') };
}

describe('the sums that a part leads to', () => {
  it.each([
    ['straight, inch', straight, 17],
    ['straight, 12 teeth of a module', metric, 17],
    ['11 teeth, below every numbered cutter', { ...straight, teeth: 11 }, 16],
    ['without a face', { ...straight, face: null }, 15],
    ['helical', leaning, 13],
  ])('every one answers: %s', async (_, gear, count) => {
    const { links, get } = await sumsOf(gear);
    expect(links.size).toBe(count);
    const answers = await Promise.all([...links.keys()].map(async (says) => [says, (await get(says)).statusCode] as const));
    expect(answers.filter(([, status]) => status !== 200)).toEqual([]);
  });

  it('its own count and pitch stand in the boxes: what is read over pins is that of this very wheel', async () => {
    const { get } = await sumsOf({ ...straight, teeth: 24, system: system('full-20') });
    const page = (await get('Over pins')).body;
    expect([boxesOn(page).get('teeth'), boxesOn(page).get('pitch')]).toEqual(['24', '8 DP']);
    // value from memory of the handbook's table for 1.728/P wires, 20°: 24 teeth, 26.3997 at 1 DP.
    expect(figuresByLabel(page).get('Over pins')?.text).toBe('3.3000');
  });

  it('a part whose record holds no teeth: by its name', async () => {
    const bevel = await sumsOf(null, 'Bevel wheel of the feed');
    expect([...bevel.links.keys()]).toEqual(['Sizes of a straight bevel wheel', 'Milling a bevel wheel']);
    expect((await bevel.get('Milling a bevel wheel')).statusCode).toBe(200);
    expect([...(await sumsOf(null, 'feed worm')).links.keys()]).toEqual(['Worm and wheel']);
    expect([...(await sumsOf(null, 'return spring')).links.keys()]).toEqual([]);
  });
});
