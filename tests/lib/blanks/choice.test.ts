import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestChoice, type Score, scoreOf, type Table } from '../../../lib/blanks/best-choice.ts';
import type { Given } from '../../../lib/blanks/cheapest.ts';
import { allMayBeCut, type ChoiceAsked, chooseBlanks } from '../../../lib/blanks/choice.ts';
import { drawerOf } from '../../../lib/blanks/drawer.ts';
import type { SpareWheel } from '../../../lib/blanks/spare-wheel.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { countRatios } from '../../../lib/trains/ratio-count.ts';
import { RECESSED, spare, wanted } from './wheels.ts';

/** Every way to give rows wheels, by plain recursion: no flow, no matching. */
function* every(table: Table, row = 0, given: readonly Given[] = []): Generator<readonly Given[]> {
  if (row === table.able.length) {
    yield given;
    return;
  }
  yield* every(table, row + 1, given);
  for (let wheel = 0; wheel < table.group.length; wheel++) {
    const group = table.group[wheel] ?? 0;
    const cut = given.filter((pair) => table.group[pair.wheel] === group).length;
    if (!table.able[row]?.[wheel] || given.some((pair) => pair.wheel === wheel) || cut >= (table.mayCut[group] ?? 0)) continue;
    yield* every(table, row + 1, [...given, { row, wheel }]);
  }
}

const inOrder = ({ made, ratios, originals, metal, loss }: Score): number[] => [-made, -ratios, originals, metal, loss];

function compare(one: Score, other: Score): number {
  const [a, b] = [inOrder(one), inOrder(other)];
  for (let at = 0; at < a.length; at++) if (a[at] !== b[at]) return (a[at] ?? 0) - (b[at] ?? 0);
  return 0;
}

/** The whole set of equally good answers. */
function allBest(table: Table): string[] {
  let best: Score | null = null;
  let answers: string[] = [];
  for (const given of every(table)) {
    const score = scoreOf(table, given);
    const order = best ? compare(score, best) : -1;
    if (order < 0) [best, answers] = [score, []];
    if (order <= 0) answers.push(wordsOf(given));
  }
  return answers;
}

const wordsOf = (given: readonly Given[]): string =>
  [...given]
    .sort((a, b) => a.row - b.row)
    .map(({ row, wheel }) => `${row}:${wheel}`)
    .join(' ');

const tables = fc
  .record({ rows: fc.integer({ min: 0, max: 4 }), wheels: fc.integer({ min: 0, max: 5 }) })
  .chain(({ rows, wheels }) =>
    fc.record({
      able: fc.array(fc.array(fc.boolean(), { minLength: wheels, maxLength: wheels }), { minLength: rows, maxLength: rows }),
      metal: fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: wheels, maxLength: wheels }), {
        minLength: rows,
        maxLength: rows,
      }),
      original: fc.array(fc.integer({ min: 0, max: 1 }), { minLength: wheels, maxLength: wheels }),
      loss: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: wheels, maxLength: wheels }),
      group: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: wheels, maxLength: wheels }),
      mayCut: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 3, maxLength: 3 }),
      worth: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 16, maxLength: 16 }),
    }),
  )
  .map(({ worth, ...table }): Table => ({ ...table, ratios: (made) => worth[made.reduce((bits, row) => bits + 2 ** row, 0) % 16] ?? 0 }));

describe('the choice in plain numbers', () => {
  it('is one of the equally good answers of an exhaustive search', () => {
    fc.assert(
      fc.property(tables, (table) => {
        expect(allBest(table)).toContain(wordsOf(bestChoice(table).given));
      }),
      { numRuns: 400 },
    );
  });
  it('breaks ties by the foremost wheel for the foremost row', () => {
    const yes = [true, true, true];
    const same = [1, 1, 1];
    const table = {
      able: [yes, yes],
      metal: [same, same],
      original: [0, 0, 0],
      loss: [0, 0, 0],
      group: [0, 1, 2],
      mayCut: same,
      ratios: () => 0,
    };
    expect(wordsOf(bestChoice(table).given)).toBe('0:0 1:1');
    expect(allBest(table)).toHaveLength(6);
  });
  it('refuses in words a choice that is too wide', () => {
    const rows = Array.from({ length: 20 }, () => Array.from({ length: 10 }, () => true));
    const numbers = Array.from({ length: 10 }, () => 0);
    const wide = {
      able: rows,
      metal: rows.map(() => numbers),
      original: numbers,
      loss: numbers,
      group: numbers,
      mayCut: [10],
      ratios: () => 0,
    };
    expect(() => bestChoice(wide)).toThrow(DomainError);
  });
});

const BELONGS = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
const LIES = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52];
const wheels = LIES.map((teeth, id) => ({
  ...spare(teeth, 8, { id, name: `${teeth}T` }, id === 11 || teeth === 52 ? { body: RECESSED } : {}),
  doubt: null,
}));

describe('the drawer of the hobber', () => {
  const drawer = drawerOf(BELONGS, wheels);
  const ratiosAfter = (made: readonly number[]) => countRatios([...new Set(LIES), ...made]).distinct;
  const asked: ChoiceAsked = { missing: [wanted(22), wanted(28)], likes: drawer.likes, ratiosAfter };
  const pairs = (of: ChoiceAsked) => chooseBlanks(of).chosen.map((one) => [one.spare.gear.teeth, one.wanted.gear.teeth]);

  it('31 becomes 22 and 34 becomes 28, both 46 stay', () => {
    expect(pairs(asked)).toEqual([
      [31, 22],
      [34, 28],
    ]);
    expect(chooseBlanks(asked).score).toMatchObject({ made: 2, ratios: 1350, originals: 0 });
    expect(chooseBlanks(asked).says).toBe('31 becomes 22; 34 becomes 28.');
  });
  it('taking 34 for the 22 forces the sound 46 into the 28: more metal', () => {
    const id = drawer.likes.flatMap((group) => group.wheels).find(({ gear }) => gear.teeth === 34)?.id ?? -1;
    const other = chooseBlanks({ ...asked, forced: [{ missing: 22, spare: id }] });
    expect(other.breaks).toBe('least metal removed');
    expect(other.says).toBe('Taking 34 for the 22 forces the 46 into the 28: more metal to remove.');
    expect(other.chosen.find((one) => one.spare.gear.teeth === 46)?.spare.gear.body).not.toEqual(RECESSED);
  });
  it('refuses to force a spare that does not serve, with its reason', () => {
    const recessed = wheels[11] as SpareWheel;
    expect(() => chooseBlanks({ ...asked, forced: [{ missing: 22, spare: recessed.id }] })).toThrow(/the recess between/);
  });
});

describe('which rule a forced choice breaks', () => {
  const likes = allMayBeCut([spare(31), spare(34, 8, { trust: 'original' }), spare(40)]);
  const ask = (forced: ChoiceAsked['forced'], ratiosAfter: ChoiceAsked['ratiosAfter'] = (made) => made.length): ChoiceAsked => ({
    missing: [wanted(22), wanted(29)],
    likes,
    ratiosAfter,
    ...(forced ? { forced } : {}),
  });
  it('keeps the original, though more metal goes', () => {
    expect(chooseBlanks(ask(undefined)).says).toBe('31 becomes 22; 40 becomes 29.');
    expect(chooseBlanks(ask([{ missing: 29, spare: 34 }])).breaks).toBe('fewest originals cut');
  });
  it('most made comes first', () => {
    const few = { ...ask([{ missing: 22, spare: 40 }]), likes: allMayBeCut([spare(31), spare(40)]) };
    expect(chooseBlanks(few).breaks).toBe('most missing wheels made');
    expect(chooseBlanks(few).says).toContain('leaves the 29 unmade');
  });
  it('then the ratios', () => {
    const one = { ...ask(undefined, (made) => (made.includes(29) ? 9 : 5)), likes: allMayBeCut([spare(40)]) };
    expect(chooseBlanks(one).chosen.map(({ wanted: { gear } }) => gear.teeth)).toEqual([29]);
    expect(chooseBlanks({ ...one, forced: [{ missing: 22, spare: 40 }] }).breaks).toBe('most ratios brought back');
  });
  it('of two like wheels the one with worn teeth and a good bore is cut', () => {
    const like = (id: number, teeth: 'good' | 'worn', bore: 'good' | 'worn') => spare(31, 8, { id, condition: { teeth, bore } });
    const group = [{ wheels: [like(1, 'good', 'good'), like(2, 'worn', 'worn'), like(3, 'worn', 'good')], mayCut: 1 }];
    const choice = chooseBlanks({ missing: [wanted(22)], likes: group, ratiosAfter: () => 0 });
    expect(choice.chosen[0]?.spare.id).toBe(3);
    expect(chooseBlanks({ missing: [wanted(22)], likes: group, ratiosAfter: () => 0, forced: [{ missing: 22, spare: 1 }] }).breaks).toBe(
      'best wheel kept',
    );
  });
  it('refuses more than 20 missing', () => {
    const many = Array.from({ length: 21 }, (_, id) => ({ ...wanted(22), id }));
    expect(() => chooseBlanks({ ...ask(undefined), missing: many })).toThrow(DomainError);
  });
  it('decides 20 missing among 60 spares', () => {
    const missing = Array.from({ length: 20 }, (_, id) => ({ ...wanted(18 + id), id }));
    const spares = Array.from({ length: 60 }, (_, id) => spare(20 + (id % 30), 8, { id }));
    const choice = chooseBlanks({ missing, likes: allMayBeCut(spares), ratiosAfter: (made) => made.length });
    expect(choice.chosen).toHaveLength(20);
  });
});
