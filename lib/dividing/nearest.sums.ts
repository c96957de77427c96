import type { AnswerTable, Figure, Value } from '../figure/figure.ts';
import type { Plate } from '../tooling/tooling.ts';
import { compareRatios, gcd, type Ratio } from '../values/ratio.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { errorAtTooth, nearestHole, worstError, worstTooth } from './nearest.formulas.ts';
import { whereOn } from './where-on.ts';

const figure = figuresFrom('derived: the nearest hole for every tooth, each counted from tooth 1');
const MOST_LISTED = 500;

/** Arc seconds of the spindle for turns of the crank. */
export const arcSeconds = ([num, den]: Ratio, R: number): number => (1_296_000 * num) / den / R;

/** The circle whose worst tooth is least off. */
function bestCircle(N: number, R: number, plates: readonly Plate[]) {
  const all = plates.flatMap((plate) =>
    plate.sides.flatMap((circles, side) => circles.map((circle) => ({ plate, side, circle, worst: worstError(R, N, circle) }))),
  );
  return all.reduce((a, b) => (compareRatios(b.worst, a.worst) < 0 ? b : a));
}

/** The nearest that can be cut where nothing is exact, with the error at the worst tooth. plates: at least one circle; none of them exact. */
export function nearestAnswer(
  N: number,
  R: number,
  plates: readonly Plate[],
): { readonly figures: Record<'nearest' | 'worst', Figure>; readonly table: AnswerTable } {
  const { plate, side, circle, worst } = bestCircle(N, R, plates);
  const tooth = worst[0] === 0 ? 1 : N <= MOST_LISTED ? worstTooth(R, N, circle) : null;
  const seconds = { number: arcSeconds(worst, R), unit: '″', places: 2 };
  const q = N / gcd(N, R * circle);
  const note = `${tooth === null ? '' : `Tooth ${tooth}. `}On a radius of 1 in that is so many seconds times 0.0000048 in. A gear with an odd space is scrap; a dial or a knob may bear it.`;
  const figures = {
    nearest: figure('Nearest, where nothing is exact', '', {
      words: `each tooth by its own hole on the ${circle} circle of ${whereOn(plate, side)}`,
    }),
    worst: figure('Error at the worst tooth', 'e', seconds, {
      formula: '1296000 × floor(q ÷ 2) ÷ (q × c × R)',
      given: [
        given('q', 'parts of a hole on which the true places fall', count(q)),
        given('c', 'holes in the circle', count(circle), 'table'),
        given('R', 'turns of the crank for one of the spindle', count(R), 'table'),
      ],
      note,
    }),
  };
  return { figures, table: holesTable(N, R, circle) };
}

function holesTable(N: number, R: number, circle: number): AnswerTable {
  const rows =
    N > MOST_LISTED
      ? []
      : Array.from({ length: N }, (_, at): (Value | string)[] => {
          const holes = nearestHole(at + 1, R, N, circle);
          return [
            count(at + 1),
            count(Math.floor(holes / circle)),
            count(holes % circle),
            { number: arcSeconds(errorAtTooth(at + 1, R, N, circle), R), unit: '″', places: 1 },
          ];
        });
  return {
    title: `Nearest holes on the ${circle} circle, counted from tooth 1`,
    unit: 'in',
    heads: ['tooth', 'turns from the start', 'hole', 'too far by'],
    rows,
  };
}
