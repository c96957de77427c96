import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawerOf } from '../../../lib/blanks/drawer.ts';
import { printDrawer, readDrawer } from '../../../lib/blanks/read-drawer.ts';
import { spare } from './wheels.ts';

describe('a drawer as people write it', () => {
  it.each([
    ['19x2, 22, 25-31 odd, 34, 46x2', [19, 19, 22, 25, 27, 29, 31, 34, 46, 46]],
    ['25–31 step 3; 20 - 24 even', [20, 22, 24, 25, 28, 31]],
    ['19×2\n2x22', [19, 19, 22, 22]],
    ['24-30 odd x2', [25, 25, 27, 27, 29, 29]],
    ['30 to 32', [30, 31, 32]],
    ['19 19 22 31x2, 34', [19, 19, 22, 31, 31, 34]],
    ['', []],
  ])('%s', (text, counts) => {
    expect(readDrawer(text)).toEqual({ counts, problems: [] });
  });
  it.each([
    ['19, twenty, 22', 'could not be read'],
    ['3', 'from 6 to 500 teeth'],
    ['501', 'from 6 to 500 teeth'],
    ['19x0', 'from 1 to 20 like wheels'],
    ['19x999', 'from 1 to 20 like wheels'],
    ['31-25', 'runs backwards'],
    ['22 odd', 'wants a range'],
    ['20-30 step 0', 'at least 1'],
    ['22-22 odd', 'no wheel at all'],
    ['20-120 x20', 'at most 300'],
    ['<script>, 19', '“<script>” could not be read'],
    ['-5', 'could not be read'],
    ['22 25 odd', 'could not be read'],
    ['1e9', 'could not be read'],
  ])('%s: a problem in words', (text, says) => {
    expect(readDrawer(text).problems.join(' ')).toContain(says);
  });
  it('one bad piece does not lose the others', () => {
    expect(readDrawer('19, x, 22').counts).toEqual([19, 22]);
  });
  it('reads back what it prints', () => {
    const counts = fc.array(fc.integer({ min: 6, max: 60 }), { maxLength: 15 });
    fc.assert(
      fc.property(counts, (list) => {
        expect(readDrawer(printDrawer(list)).counts).toEqual([...list].sort((a, b) => a - b));
      }),
    );
  });
});

describe('what is there, missing and over', () => {
  const wheel = (teeth: number, id: number, more = {}) => ({ ...spare(teeth, 8, { id, ...more }), doubt: null as string | null });
  const belongs = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
  const lies = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52].map((teeth, id) => wheel(teeth, id));
  it('the hobber: eight counts present, 22 and 28 missing, five spares', () => {
    const drawer = drawerOf(belongs, lies);
    expect(drawer.present.map(({ teeth }) => teeth)).toEqual([19, 25, 31, 34, 37, 41, 46, 52]);
    expect(drawer.missing).toEqual([22, 28]);
    expect(drawer.spare.map(({ gear }) => gear.teeth)).toEqual([19, 25, 31, 34, 46]);
  });
  it('keeps the original, then the best teeth; a broken wheel stands for nothing', () => {
    const three = [
      wheel(31, 1, { condition: { teeth: 'worn', bore: 'good' } }),
      wheel(31, 2, { condition: { teeth: 'good', bore: 'good' } }),
      wheel(31, 3, { condition: { teeth: 'broken', bore: 'good' }, trust: 'original' }),
    ];
    expect(drawerOf([31], three).present[0]?.wheel.id).toBe(2);
    expect(drawerOf([31], [...three, wheel(31, 4, { trust: 'original' })]).present[0]?.wheel.id).toBe(4);
    const broken = drawerOf([31], three.slice(2));
    expect([broken.missing, broken.spare.length, broken.likes.length]).toEqual([[31], 1, 1]);
  });
  it('a doubtful wheel stands for nothing and is no blank', () => {
    const drawer = drawerOf([31], [{ ...wheel(31, 1), doubt: 'pitch not known' }]);
    expect([drawer.missing, drawer.spare, drawer.doubtful.length, drawer.likes]).toEqual([[31], [], 1, []]);
  });
  it('belonging twice keeps two', () => {
    const drawer = drawerOf([46, 46, 46], lies);
    expect(drawer.missing).toEqual([46]);
    expect(drawer.present.map(({ teeth }) => teeth)).toEqual([46, 46]);
  });
});
