import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dialPlace, dialPlaces, dialPlaceWords } from '../../../lib/dividing/dial-places.ts';
import { dialServes, worstOnDial } from '../../../lib/dividing/table-dial.formulas.ts';
import { tableDialDividing } from '../../../lib/dividing/table-dial.sums.ts';
import { evaluateFigure } from '../evaluate.ts';

const dials = fc.record({
  turns: fc.constantFrom(36, 40, 60, 72, 90, 120, 180),
  perTurn: fc.integer({ min: 2, max: 400 }),
  vernier: fc.integer({ min: 1, max: 30 }),
});
const counts = fc.integer({ min: 2, max: 400 });

describe('a table divided by its dial', () => {
  it('every place is the nearest reading to the true one, counted by stepping reading by reading; the worst is the one said', () => {
    fc.assert(
      fc.property(dials, counts, (dial, N) => {
        const small = dial.perTurn * dial.vernier;
        let [reading, worst] = [0, 0];
        for (const place of dialPlaces(N, dial)) {
          // true place in readings: (n − 1) × all ÷ N; step on while the next reading is nearer
          const true_ = ((place.tooth - 1) * dial.turns * small) / N;
          while (reading + 0.5 < true_ - 1e-9) reading += 1;
          const read = (place.move.turns * dial.perTurn + place.line) * dial.vernier + place.part;
          expect(read, `${place.tooth} of ${N}`).toBe(reading);
          expect(place.part).toBeLessThan(dial.vernier);
          expect(place.line).toBeLessThan(dial.perTurn);
          worst = Math.max(worst, Math.abs(reading - true_) / small);
        }
        const [num, den] = worstOnDial(dial, N);
        expect(num / den).toBeCloseTo(worst, 9);
        expect(dialServes(dial, N)).toBe(worst < 1e-12);
        expect(num / den).toBeLessThanOrEqual(0.5 / small + 1e-12);
      }),
      { numRuns: 150 },
    );
  });

  it('comes back to 0 after the whole turns', () => {
    const dial = { turns: 90, perTurn: 240, vernier: 6 };
    expect(dialPlaces(71, dial).at(-1)).toMatchObject({
      move: { turns: 90, divisions: 0 },
      line: 0,
      part: 0,
      error: [0, 1],
      backAtFirst: true,
    });
    expect(Object.is(dialPlace(1, 71, dial).line, 0)).toBe(true);
    expect(dialPlaceWords(dialPlace(2, 71, dial), dial)).toBe('1 turn, line 64, vernier 1');
    expect(dialPlaceWords(dialPlace(9, 17, { ...dial, vernier: 1 }), { ...dial, vernier: 1 })).toBe('42 turns, line 85');
  });

  it('every printed formula works out on its printed figures', () => {
    let worked = 0;
    for (const N of [7, 17, 24, 71, 127, 360])
      for (const figure of Object.values(
        tableDialDividing({ divisions: N, dial: { turns: 90, perTurn: 240, vernier: 6 }, lash: 3 }).figures,
      )) {
        const found = evaluateFigure(figure);
        if (!found) continue;
        worked += 1;
        expect(Math.abs(found.worked - found.printed), `${N}: ${figure.name}`).toBeLessThanOrEqual(found.allowed);
      }
    expect(worked).toBeGreaterThan(20);
  });
});
