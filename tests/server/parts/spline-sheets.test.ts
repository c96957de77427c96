import { describe, expect, it, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { addPart } from '../../../db/parts.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { aProject, halvorsenWheel, place } from '../../db/bench.ts';
import { shopForTests, visit } from '../app-for-tests.ts';
import { firstStory } from '../routings/bench.ts';
import { boxesOn, figuresByLabel } from '../sums/read-page.ts';

/** The address of the link that says this. */
function linked(html: string, says: RegExp): string {
  for (const [, href = '', text = ''] of html.matchAll(/<a [^>]*?href="([^"]*)"[^>]*>([\s\S]*?)<\/a>/g))
    if (says.test(text)) return href.replaceAll('&amp;', '&');
  throw new Error(`no link says ${says}`);
}

/** A machine with one wheel as the story measured it, and its lost stub shaft. */
async function stubShaft() {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const project = await aProject(db);
  const assembly = await addAssembly(db, { project_id: project.id, name: 'Change gear box', within_id: null, serial: '', notes: '' });
  const bore = { form: 'splined', splines: 6, diameter: inches(1.251), minor: inches(1.063), keyWidth: inches(0.313) } as const;
  const wheel = await addPart(db, place(project.id, assembly.id, null, { ...halvorsenWheel(22), bore }));
  const shaft = await addPart(db, place(project.id, assembly.id, null, null, 'stub shaft'));
  return { get: (url: string) => visit(shop, url), wheel: wheel.id, shaft: shaft.id };
}

describe('a spline in the model leads to its sheets', () => {
  it('the lost stub shaft: its sheet, by the bore of the wheel that it carries', async () => {
    const { get, shaft } = await stubShaft();
    const sheet = await get(linked((await get(`/parts/${shaft}`)).body, /^Shaft sheet: mill it to the 6-spline bore of/));
    expect(sheet.statusCode).toBe(200);
    const figures = figuresByLabel(sheet.body);
    const read = (label: string) => figures.get(label)?.text;
    expect([read('Shaft outside'), read('Shaft small diameter'), read('Width of a key')]).toEqual(['1.2500', '1.0580', '0.3125']);
    expect([read('Sides: depth from touching'), read('Bottoms: depth from touching')]).toEqual(['0.1196', '0.1044']);
    expect(read('First sides: cutter’s middle off centre')).toBe('0.2500');
    expect(boxesOn(sheet.body).get('cutter')).toBe('0.1875');
  });

  it('a wheel that waits for its mandrel: how to mill one, and which spline it is', async () => {
    const { get, wheel } = await stubShaft();
    const page = (await get(`/parts/${wheel}`)).body;
    expect((await get(linked(page, /^nothing yet: mill one to the bore$/))).statusCode).toBe(200);
    const found = await get(linked(page, /^Which spline its bore is$/));
    expect(found.body).toContain('slides without load, 1.250');
    expect(found.body).toContain('measure the width at the top and at the bottom');
  });

  it('a helical wheel: its sizes and lead, and how to mill it, both filled in; its page says its helix', async () => {
    const shop = await shopForTests();
    onTestFinished(shop.close);
    const { db } = shop.shops.now();
    const project = await aProject(db);
    const assembly = await addAssembly(db, { project_id: project.id, name: 'Feed box', within_id: null, serial: '', notes: '' });
    const system = systemByKey('full-14.5')?.system;
    const helix = { angle: degrees(30), hand: 'right' } as const;
    const part = await addPart(
      db,
      place(project.id, assembly.id, null, { ...halvorsenWheel(24), ...(system ? { system } : {}), helix, face: inches(1) }),
    );
    const page = (await visit(shop, `/parts/${part.id}`)).body;
    expect(page).toContain('24 teeth, 8 DP, 14½°, helix 30° right');
    const sizes = await visit(shop, linked(page, /^Its sizes and its lead/));
    // derived: 24 ÷ 8 ÷ cos 30° = 3.4641, × π ÷ tan 30° = 18.8496
    expect(figuresByLabel(sizes.body).get('Lead')?.text).toBe('18.8496');
    const milling = await visit(shop, linked(page, /^Mill its teeth/));
    expect(milling.statusCode).toBe(200);
    expect([boxesOn(milling.body).get('helix'), boxesOn(milling.body).get('hand'), boxesOn(milling.body).get('turns')]).toEqual([
      '30',
      'right',
      '40',
    ]);
  });

  it('with the head and the plates of the shop, also while it is being made', async () => {
    const { get, part22 } = await firstStory();
    const sheet = await get(linked((await get(`/parts/${part22}`)).body, /^Mill a shaft or mandrel to its bore$/));
    expect(sheet.statusCode).toBe(200);
    expect(boxesOn(sheet.body).get('plates')).toBe('15 16 17 18 19 20; 21 23 27 29 31 33; 37 39 41 43 47 49');
    expect(boxesOn(sheet.body).get('turns')).toBe('40');
  });
});
