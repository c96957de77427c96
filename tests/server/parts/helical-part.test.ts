import { describe, expect, it, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { addItem } from '../../../db/items.ts';
import { addPart, part, savePart } from '../../../db/parts.ts';
import type { ToolDetails } from '../../../db/tool-details.ts';
import { addTool } from '../../../db/tools.ts';
import type { Gear } from '../../../lib/gears/gear.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { aProject, halvorsenWheel, place, wheel } from '../../db/bench.ts';
import { send, shopForTests, visit } from '../app-for-tests.ts';
import { figureOn, rowOf, sectionOf, textOf } from '../machines/read-page.ts';

const TOOL = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;

const system = systemByKey('full-20')?.system;
if (!system) throw new Error('no such system');

/** 24 teeth, 8 DP square to the teeth, 20° full depth, 30°. */
const leaning = (more: Partial<Gear> = {}): Gear => ({
  ...halvorsenWheel(24),
  system,
  helix: { angle: degrees(30), hand: 'left' },
  face: inches(1.5),
  bore: { form: 'plain', diameter: inches(1) },
  ...more,
});

const cutter = (number: string, teethFrom: number, teethTo: number): ToolDetails => ({
  kind: 'cutter',
  ...{ pitch: { kind: 'DP', size: ratio(8) }, angle: degrees(20), number, teethFrom, teethTo },
  ...{ hole: inches(1), diameter: null, width: null, stampedDepth: null, steel: 'high-speed', exactFor: null },
});

const WHEELS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

/** A shop with a head and its wheels, the cutters for 24 and for 37 teeth, and one part. */
async function bench(gear: Gear, gears: readonly number[] = WHEELS) {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const project = await aProject(db);
  const assembly = await addAssembly(db, { project_id: project.id, name: 'Feed box', within_id: null, serial: '', notes: '' });
  const details = { kind: 'head', turns: 40, backPin: false, oneIdler: null, gears } as const;
  await addTool(db, { ...TOOL, name: 'the head', details });
  await addTool(db, { ...TOOL, name: 'plate', details: { kind: 'plate', sides: [[15, 16, 17, 18, 19, 20]] } });
  await addTool(db, { ...TOOL, name: 'short-range cutter', details: cutter('5', 21, 25) });
  await addTool(db, { ...TOOL, name: 'long-range cutter', details: cutter('3', 35, 54) });
  const { id } = await addPart(db, place(project.id, assembly.id, null, gear));
  const page = async () => (await visit(shop, `/parts/${id}`)).body;
  return { shop, db, id, page };
}

describe('the page of a helical wheel', () => {
  it('has its true sizes by label', async () => {
    const { page } = await bench(leaning());
    const html = await page();
    // derived: the wheel drawn in its own plane, 24 ÷ 8 ÷ cos 30° = 3.46410 across; ± 2 × 1/8 and 1.25/8. Unrolled, π × 3.46410 ÷ tan 30°. 24 ÷ 0.64952.
    expect(figureOn(html, 'Pitch diameter')).toBe('3.4641 in');
    expect(figureOn(html, 'Outside diameter')).toBe('3.7141 in');
    expect(figureOn(html, 'Root diameter')).toBe('3.1516 in');
    expect(figureOn(html, 'Whole depth')).toBe('0.2813 in');
    expect(figureOn(html, 'Lead')).toBe('18.8496 in');
    expect(figureOn(html, 'Virtual count, for the cutter')).toBe('36.9504');
  });

  it('has span, chord and pins by label, and says that the span touches and can be laid on', async () => {
    const { page } = await bench(leaning());
    const html = await page();
    // derived: the base cylinder unrolled, W = cos Hb × (sb + 3 × π × Db ÷ 24), tan Hb = tan 30° × cos at; the face it needs is W × sin Hb. Of all k the 4 touches nearest the pitch circle, at 3.410 (5: 3.538).
    expect(figureOn(html, 'Span over 4 teeth')).toBe('1.3547 in');
    expect(figureOn(html, 'Least face to lay the span on')).toBe('0.6365 in');
    expect(textOf(sectionOf(html, 'measuring'))).toContain('the jaws touch the flanks, and the face of 1.5000 in is wide enough');
    // derived: a straight wheel of 36.9504 teeth and 8 DP, its tooth π ÷ 16 thick.
    expect(figureOn(html, 'Chordal thickness')).toBe('0.1963 in');
    expect(figureOn(html, 'Chordal addendum')).toBe('0.1271 in');
    // derived: a ball of 0.216 moved down the middle of a space until the helical flank, searched over its surface in three dimensions, lies 0.108 from its middle.
    expect(figureOn(html, 'Pins or balls over')).toBe('0.2160 in');
    expect(figureOn(html, 'Over pins')).toBe('3.7665 in');
  });

  it('takes the cutter by the virtual count, and says how the teeth are milled', async () => {
    const { page } = await bench(leaning());
    const html = await page();
    expect(textOf(sectionOf(html, 'cutter'))).toContain('long-range cutter');
    expect(figureOn(html, 'Cutter')).toContain('35 to 54 teeth');

    const milling = sectionOf(html, 'milling');
    expect(rowOf(sectionOf(html, 'needs'), 'cutter No. 3, 8 DP, 20°, for 36.95 teeth')).toEqual([
      'cutter No. 3, 8 DP, 20°, for 36.95 teeth',
      'here',
      'long-range cutter',
    ]);
    // derived: all 12 × 11 × 10 × 9 trains of these wheels tried; 10 ÷ 18.8496 wants 0.530516, 28 × 40 ÷ 44 × 48 = 0.530303 is the nearest.
    expect(textOf(milling)).toMatch(/28 × 40 ÷ (44 × 48|48 × 44)/);
    expect(figureOn(milling, 'Lead that it cuts')).toBe('18.85714 in');
    // derived: atan(π × 3.46410 ÷ 18.85714) = 29.99002°; 1000 × π × 3.46410 × 1.5 × (1 ÷ 18.85714 − 1 ÷ 18.84956) = −0.348.
    expect(figureOn(milling, 'Table swung by')).toBe('29.9900 °');
    expect(figureOn(milling, 'Drift across the face')).toBe('−0.348 thou');
    expect(textOf(milling)).toContain('Left-hand');
    expect(textOf(milling)).toContain('push the table with the left hand');
    expect(textOf(milling)).toContain('4 TPI');
  });

  it('prints nothing of straight teeth', async () => {
    const { page } = await bench(leaning());
    const html = textOf(await page());
    // derived: 24 teeth, 8 DP, straight: 3.0000 across, 3.2500 outside, 2.6875 root; spans over 3 and 4 by the unrolled base circle; its chordal addendum.
    for (const straight of ['3.0000 in', '3.2500 in', '2.6875 in', '0.9646 in', '1.3336 in', '0.1282 in', 'for straight teeth'])
      expect(html).not.toContain(straight);
  });

  it('without a measured face and wheels says what is lacking, and works out no drift', async () => {
    const { page } = await bench(leaning({ face: null }), []);
    const html = await page();
    expect(textOf(sectionOf(html, 'measuring'))).toContain('if the face is wider than 0.6365 in; nobody has said how wide it is');
    const milling = textOf(sectionOf(html, 'milling'));
    expect(milling).toContain('No wheels of the head are on record');
    expect(milling).toContain('swung by the helix angle, 30.00°');
    expect(figureOn(html, 'Drift across the face')).toBe('');
    expect(figureOn(html, 'Lead')).toBe('18.8496 in');
  });

  it('of a narrow face says that the span runs off', async () => {
    const { page } = await bench(leaning({ face: inches(0.625) }));
    const measuring = textOf(sectionOf(await page(), 'measuring'));
    expect(measuring).toContain('The span runs off the end of the teeth');
    expect(measuring).not.toContain('wide enough');
  });
});

describe('a helical wheel and what it could be made from', () => {
  it('holds a spare against its true outside, and the true old root of a helical spare', async () => {
    const { db, page } = await bench(leaning());
    const straight = (teeth: number) => ({ ...leaning({ helix: null }), teeth });
    // derived: straight roots of 31 teeth lie at (31 − 2.5) ÷ 8 = 3.5625: over the 3.25 of a straight 24, under the 3.7141 of the helical one.
    await addItem(db, wheel(straight(31), null));
    // derived: 33 teeth at 30°: (33 ÷ cos 30° − 2.5) ÷ 8 = 4.4506 across the roots; straight they would lie at 3.8125.
    await addItem(db, wheel({ ...leaning(), teeth: 33 }, null));
    const spares = sectionOf(await page(), 'spares');
    expect(textOf(spares)).toMatch(/31 teeth[^.]*too small: the old gaps would stay 0\.076 in deep/);
    expect(textOf(spares)).toMatch(/0\.363 in a side to spare/);
  });

  it('is given no straight wheel of its count to be put in its place, nor one of the other hand', async () => {
    const { db, page } = await bench(leaning());
    await addItem(db, wheel(leaning({ helix: null }), null));
    await addItem(db, wheel(leaning({ helix: { angle: degrees(30), hand: 'right' } }), null));
    expect(await page()).not.toContain('Put it in its place');
    await addItem(db, wheel(leaning(), null));
    expect(await page()).toContain('Put it in its place');
  });

  it('opens no routing: refused in words with the sums, and nothing is promised', async () => {
    const { shop, db, id, page } = await bench(leaning());
    const { id: spare } = await addItem(db, wheel({ ...leaning(), teeth: 33 }, null));
    const ways = sectionOf(await page(), 'ways');
    expect(await page()).not.toContain('Promise it and open the routing');
    expect(textOf(ways)).toContain('No routing is worked out for helical teeth');
    expect(ways).toMatch(/href="\/sums\/helical-gear\?[^"]*helix=30/);
    expect(ways).toMatch(/href="\/sums\/helical-milling\?[^"]*drawer=24/);
    const sent = await send(shop, `/parts/${id}/promise`, { way: 're-cut a spare', item: String(spare) });
    expect(sent.statusCode).toBe(422);
    expect(textOf(sent.body)).toContain('is a helical wheel, 24 teeth at 30°. No routing is worked out for helical teeth');
    expect((await part(db, id)).routing_id).toBeNull();
  });

  it('made helical after its routing was opened, prints no sheet of straight teeth, and says so on its page', async () => {
    const { shop, db, id, page } = await bench(leaning({ helix: null }));
    const { id: spare } = await addItem(db, wheel({ ...leaning({ helix: null }), teeth: 33 }, null));
    expect((await send(shop, `/parts/${id}/promise`, { way: 're-cut a spare', item: String(spare) })).statusCode).toBe(303);
    expect((await visit(shop, `/parts/${id}/sheet`)).statusCode).toBe(200);
    const { rev } = await part(db, id);
    await savePart(db, id, rev, {}, { gear: leaning() });
    const sheet = await visit(shop, `/parts/${id}/sheet`);
    expect(sheet.statusCode).toBe(422);
    expect(textOf(sheet.body)).toContain('The figures written there are those of straight teeth: none of them is printed.');
    expect(textOf(await page())).toContain('No routing is worked out for helical teeth');
  });

  it('shows the true sizes of a helical wheel in the drawer', async () => {
    const { shop, db } = await bench(leaning());
    const { id } = await addItem(db, wheel(leaning(), null));
    const html = (await visit(shop, `/drawer/${id}`)).body;
    expect(figureOn(html, 'Outside diameter')).toBe('3.7141 in');
    expect(textOf(html)).not.toContain('for straight teeth');
  });
});
