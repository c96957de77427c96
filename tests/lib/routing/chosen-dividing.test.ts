import { describe, expect, it } from 'vitest';
import { chosenDividing } from '../../../lib/routing/chosen-dividing.ts';
import { circlesFor } from '../../../lib/routing/circles-for.ts';
import { mountedBy, onTheHead } from '../../../lib/routing/set-ups.ts';
import type { ShopNow } from '../../../lib/routing/shop-now.ts';
import type { Head } from '../../../lib/tooling/tooling.ts';
import { head as plainHead, THREE_PLATES, TWO_SIDED } from '../dividing/plates.ts';
import { shop, wanted } from './halvorsen.ts';

const GEARS = [28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const TABLE: Head = {
  ...plainHead(90),
  id: 2,
  name: 'table',
  dialOnly: true,
  dial: { perTurn: 240, vernier: 6, near: false },
};
const near: Head = { ...TABLE, dial: { perTurn: 240, vernier: 6, near: true } };
const geared: Head = { ...plainHead(40), gears: GEARS };
const withHeads = (heads: readonly Head[], more: Partial<ShopNow> = {}): ShopNow => ({ ...shop(), plates: THREE_PLATES, heads, ...more });

describe('how a count is divided in this shop', () => {
  it('a circle before gears, gears before a dial, a dial only where every tooth falls on a line', () => {
    const all = withHeads([geared, TABLE]);
    expect(chosenDividing(22, all)).toMatchObject({ circle: 33, way: null, by: null });
    expect(chosenDividing(71, all)).toMatchObject({ way: { method: 'differential' }, by: null, head: { turns: 40 } });
    const noGears = withHeads([plainHead(40), TABLE]);
    // derived: 90 × 240 × 6 divides by 81 and by 96, not by 71; no circle of the three plates serves any of them at 40 to 1
    for (const N of [81, 96])
      expect(chosenDividing(N, noGears)).toMatchObject({ by: { exact: true }, at: { byDial: true }, head: { turns: 90 } });
    const none = chosenDividing(71, noGears);
    expect(none).toMatchObject({ by: null, way: null, circle: null });
    expect(none.answer?.says).toContain('the worst tooth would be off by 4.9″');
    expect(chosenDividing(71, withHeads([plainHead(40), near])).by).toMatchObject({ exact: false });
  });

  it('a plate that is away comes after what can be done today, and before a dial between its lines', () => {
    const away = TWO_SIDED.map((one) => ({ ...one, here: false }));
    const plates = [...THREE_PLATES, ...away];
    expect(chosenDividing(57, withHeads([geared], { plates })).way).toMatchObject({ method: 'differential' });
    expect(chosenDividing(57, withHeads([plainHead(40), near], { plates }))).toMatchObject({ circle: 57, by: null });
  });

  it('a table that takes no plate is divided on none, and gears are left alone where a helix wants them', () => {
    expect(chosenDividing(24, withHeads([TABLE]))).toMatchObject({ by: { exact: true }, needs: [{ kind: 'head', turns: 90 }] });
    expect(chosenDividing(71, withHeads([geared]), undefined, true)).toMatchObject({ way: null, circle: null });
  });
});

describe('what stands on the head', () => {
  const mounted = { turns: 40, plateId: 2, side: 0, circle: 21, gears: [] };
  const note = (teeth: number, now: ShopNow) =>
    chosenDividing(teeth, now).answer?.cautions.find(({ name }) => name === 'On the head now')?.says;

  it('is kept wherever it serves, and said; else the fewest holes', () => {
    const now = withHeads([plainHead(40)], { mounted });
    expect(chosenDividing(60, withHeads([plainHead(40)])).circle).toBe(15);
    expect(chosenDividing(60, now).circle).toBe(21);
    expect(note(60, now)).toBe('Plate 2 was set last: if it still stands on the head, the pin’s circle stays, set the sector.');
    expect(chosenDividing(16, now).circle).toBe(16);
    expect(note(16, now)).toBeUndefined();
    expect(chosenDividing(60, withHeads([plainHead(60)], { mounted })).circle).toBe(15);
  });

  it('the same gears serve the next prime with the plate turning the other way', () => {
    const on72 = { turns: 40, plateId: 1, side: 0, circle: 18, gears: [40, 72] };
    const now = withHeads([geared], { mounted: on72 });
    expect(chosenDividing(73, now).way).toMatchObject({
      method: 'differential',
      move: { circle: 18, spaces: 10 },
      train: { drivers: [40], driven: [72] },
    });
    expect(note(73, now)).toContain('Plate 1 with these gears was set last');
    expect(note(22, withHeads([geared], { mounted: { ...on72, plateId: 2 } }))).toContain('take the gears off');
  });

  it('a wheel begun on one circle goes on there, gears and all', () => {
    const begun = { plateId: 2, side: 0, circle: 21 };
    expect(chosenDividing(71, withHeads([geared]), begun).way).toMatchObject({
      move: { circle: 21, spaces: 12 },
      train: { drivers: [32], driven: [56] },
    });
  });

  it('is read back from the key of the set-up that put it there', () => {
    const at = {
      turns: 40,
      headName: 'head',
      plate: { id: 3, name: 'Plate 3', side: 1 },
      gears: '40 on the spindle, 72 on the plate’s shaft',
    };
    expect(mountedBy(onTheHead(null, null, at).key, 49)).toEqual({ turns: 40, plateId: 3, side: 1, circle: 49, gears: [40, 72] });
    expect(mountedBy(onTheHead(null, null, { ...at, gears: '' }).key, null)).toEqual({ turns: 40, plateId: 3, side: 1, gears: [] });
    expect(mountedBy(onTheHead(null, null, { ...at, plate: null, gears: '', byDial: true }).key, null)).toBeNull();
  });
});

describe('circles for several parts', () => {
  const part = (teeth: number) => ({ ...wanted(22), mark: `${teeth}T`, gear: { ...wanted(22).gear, teeth } });

  it('a part divided by gears has its way, not a refusal; one that nothing divides has its reason', () => {
    const chosen = circlesFor([part(22), part(71)], withHeads([geared]));
    expect([...chosen.byMark.keys()]).toEqual(['22T']);
    expect(chosen.choice?.refused).toEqual([]);
    expect(chosen.choice?.says).toContain('All stay on one plate');
    expect(chosen.otherwise).toMatchObject([{ mark: '71T', says: expect.stringContaining('40 on the spindle') }]);
    expect(circlesFor([part(71)], withHeads([plainHead(40)]))).toMatchObject({
      choice: null,
      otherwise: [{ says: expect.stringContaining('71 is prime') }],
    });
  });

  it('sixteen wheels that ask for sixteen circles are no reason to refuse them all: the last twelve are chosen together', () => {
    const counts = [17, 19, 23, 29, 31, 37, 39, 41, 43, 47, 49, 33, 27, 21, 18, 16];
    const chosen = circlesFor(counts.map(part), withHeads([plainHead(40)]));
    expect(chosen.byMark.size).toBeGreaterThanOrEqual(12);
    expect(chosen.byMark.has('16T')).toBe(true);
  });

  it('the plate that is on is left on where it serves them all as well as another', () => {
    const both = (mounted?: ShopNow['mounted']) =>
      circlesFor([part(60), part(75)], withHeads([plainHead(40)], mounted ? { mounted } : {})).choice?.mountings.map(
        ({ plate }) => plate.name,
      );
    // derived: 60 and 75 both want thirds and fifteenths: plate 1 alone has 15
    expect(both()).toEqual(['Plate 1']);
    const sixty = (mounted?: ShopNow['mounted']) =>
      circlesFor([part(60)], withHeads([plainHead(40)], mounted ? { mounted } : {})).byMark.get('60T');
    expect(sixty()).toMatchObject({ circle: 15 });
    expect(sixty({ turns: 40, plateId: 3, side: 0, circle: 39 })).toMatchObject({ plateId: 3, circle: 39 });
    expect(both({ turns: 40, plateId: 3, side: 0, circle: 39 })).toEqual(['Plate 1']);
  });
});
