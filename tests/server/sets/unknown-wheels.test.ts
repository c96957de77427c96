import { expect, it, onTestFinished } from 'vitest';
import type { UnknownGear } from '../../../db/gears.ts';
import { addItem } from '../../../db/items.ts';
import { addPart, partsOfSet, savePart } from '../../../db/parts.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { halvorsen, halvorsenWheel, place, wheel } from '../../db/bench.ts';
import { shopForTests, visit } from '../app-for-tests.ts';

const counted = (teeth: number): UnknownGear => ({ teeth, pitch: null, face: null, bore: null, body: { known: false } });

async function setWith() {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const { set, project, assembly } = await halvorsen(db);
  const page = async (): Promise<string> => (await visit(shop, `/sets/${set.id}`)).body;
  const wanted = await addPart(db, { ...place(project.id, assembly.id, set.id, null), gear: counted(33) });
  return { db, set, page, wanted };
}

const text = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/(&#160;|\s)+/g, ' ');

it('a wheel of unknown pitch belongs to the set and is missing from it, and nothing is reckoned with it', async () => {
  const { page, wanted, db, set } = await setWith();
  const words = text(await page());
  expect(words).toContain('Of 11 that belong 8 are there. Missing: 22, 28.');
  expect(words).toContain('Pitch not known yet: 33. Nothing below is reckoned with it: identify it first.');
  expect(words).toContain('3 missing');
  expect(words).toContain('Of unknown pitch and not counted here: 33. Identify first.');
  expect(words).toContain(`33 teeth missing ${wanted.mark} not there belongs; pitch not known yet: identify it first`);
  expect(words).not.toMatch(/33 from the|from the 33/);

  const spare = await addItem(db, { ...wheel(halvorsenWheel(48), set.id), gear: counted(48) });
  const more = text(await page());
  expect(more).toContain('14 gears in the drawer.');
  expect(more).toContain('Pitch not known yet: 33, 48. Nothing below is reckoned with them');
  expect(more).toContain(`48 teeth spare, pitch not known no mark no. ${spare.id} over; pitch not known yet: identify it first`);
  expect(more).not.toMatch(/from the 48/);
});

it('once its pitch is known it is one of the set', async () => {
  const { page, wanted, db, set } = await setWith();
  await savePart(db, wanted.id, wanted.rev, {}, { gear: halvorsenWheel(33) });
  expect((await partsOfSet(db, set.id)).filter(({ unknown }) => unknown)).toEqual([]);
  const words = text(await page());
  expect(words).toContain('Missing: 22, 28, 33.');
  expect(words).not.toContain('Pitch not known yet');
});

it('the page of a set stands with a helical wheel in it', async () => {
  const { page, wanted, db } = await setWith();
  await savePart(db, wanted.id, wanted.rev, {}, { gear: { ...halvorsenWheel(33), helix: { angle: degrees(20), hand: 'right' } } });
  const words = text(await page());
  expect(words).toContain('33 teeth missing');
  // No routing could be opened for it, so nothing is proposed that could not be carried out; its page says the rest.
  expect(words).toContain('Helical: 33. No routing is worked out for helical teeth');
  expect(words).not.toMatch(/33 from the|becomes 33|46 → 33/);
  expect(words).toContain('31 becomes 22; 34 becomes 28.');
});
