import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Forms } from '../../db/bores.ts';
import { addGear, gearById, replaceGear } from '../../db/gears.ts';
import type { Bore, Gear } from '../../lib/gears/gear.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches, type Length, millimetres, nanometres } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { aShop, halvorsenWheel } from './bench.ts';

const size = fc.integer({ min: 1, max: 1e10 }).map(nanometres);
const ring = fc.tuple(size, size).map(([a, b]) => ({ inner: Math.min(a, b) as Length, outer: (Math.max(a, b) + 1) as Length }));
const bore: fc.Arbitrary<Bore> = fc.oneof(
  fc.record({ form: fc.constant('plain' as const), diameter: size }),
  fc.record({ form: fc.constant('keyed' as const), diameter: size, keyWidth: size, keyDepth: size }),
  fc.record({
    form: fc.constant('splined' as const),
    diameter: size,
    minor: size,
    splines: fc.integer({ min: 1, max: 60 }),
    keyWidth: size,
  }),
);
const gear: fc.Arbitrary<Gear> = fc.record({
  teeth: fc.integer({ min: 1, max: 1000 }),
  pitch: fc.record({
    kind: fc.constantFrom('DP' as const, 'module' as const, 'CP' as const),
    size: fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 })).map(([a, b]) => ratio(a, b)),
  }),
  system: fc.record({
    name: fc.string(),
    angle: fc.integer({ min: 1, max: 45 }).map(degrees),
    addendum: fc.constantFrom(1, 0.8, 5 / 7),
    dedendum: fc.constantFrom(1, 1.157, 6.25 / 7),
    extra: fc.integer({ min: 0, max: 99999 }).map(nanometres),
  }),
  helix: fc.option(
    fc.record({ angle: fc.integer({ min: 1, max: 80 }).map(degrees), hand: fc.constantFrom('right' as const, 'left' as const) }),
  ),
  face: fc.option(size),
  bore: fc.option(bore),
  body: fc.oneof(
    fc.constant({ known: false as const }),
    fc.record({
      known: fc.constant(true as const),
      recesses: fc.array(
        ring.map((r) => ({ side: 'both' as const, ...r })),
        { maxLength: 3 },
      ),
      openings: fc.array(
        ring.map((r) => ({ what: 'spokes' as const, ...r })),
        { maxLength: 3 },
      ),
    }),
  ),
});

test('any wheel comes back as it went in, also written over another', async () => {
  const { db } = await aShop();
  await fc.assert(
    fc.asyncProperty(gear, gear, async (first, second) => {
      const id = await addGear(db, first);
      expect((await gearById(db, id)).gear).toEqual(first);
      await replaceGear(db, id, second);
      expect((await gearById(db, id)).gear).toEqual(second);
    }),
    { numRuns: 60 },
  );
  const bores = await db.selectFrom('bore').select('id').execute();
  const used = await db.selectFrom('gear').select('bore_id').where('bore_id', 'is not', null).execute();
  expect(bores).toHaveLength(used.length);
});

// 1.250 in is 31.75 mm: 31,750,000 nm by the definition of the inch (25.4 mm, 1959 agreement); 14.5 x 3,600,000 = 52,200,000.
test('the columns hold whole nanometres and thousandths of a second', async () => {
  const { db } = await aShop();
  const id = await addGear(db, halvorsenWheel(22));
  const row = await db
    .selectFrom('gear')
    .innerJoin('bore', 'bore.id', 'gear.bore_id')
    .selectAll()
    .where('gear.id', '=', id)
    .executeTakeFirstOrThrow();
  expect(row).toMatchObject({
    teeth: 22,
    pitch_num: 8,
    pitch_den: 1,
    system_angle_mas: 52_200_000,
    diameter_nm: 31_750_000,
    face_nm: 22_225_000,
  });
});

test('lengths come back in the form in which they were typed', async () => {
  const { db } = await aShop();
  const forms: Forms = { face: { unit: 'in', over: 64 }, diameter: { unit: 'mm', places: 2 }, 'recess 0 inner': { unit: 'in', places: 1 } };
  const body = { known: true, recesses: [{ side: 'both', inner: inches(1.9), outer: millimetres(116.8) }], openings: [] } as const;
  const id = await addGear(db, { ...halvorsenWheel(52), body }, forms);
  const back = (await gearById(db, id)).forms;
  expect(back).toMatchObject(forms);
  expect(back['recess 0 outer']).toEqual({ unit: 'in', places: 4 });
  const { face_form } = await db.selectFrom('gear').select('face_form').where('id', '=', id).executeTakeFirstOrThrow();
  expect(face_form).toBe('in/64');
});
