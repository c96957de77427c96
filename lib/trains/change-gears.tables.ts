import type { AnswerTable } from '../figure/figure.ts';
import { inches, inUnit, type Length, type LengthUnit, millimetres } from '../values/length.ts';
import { printNumber, printShort } from '../values/print.ts';
import { arrangementsOf, type PlaceAsked, place, shaftsOf } from './arrangements.ts';
import type { Ranked } from './best-trains.ts';
import type { Train } from './nearest.ts';
import { millionths, reachWords } from './train-words.ts';

/** So that all arrangements with their idlers stay within one request: shared out evenly among them. */
const MOST_TRIES = 300;

/** Every train found. over: the length that the errors are worked out for. */
export const rowsTable = (rows: readonly Ranked[], over: Length): AnswerTable => ({
  title: 'Trains, best first: error, then wheels to change, then reach',
  unit: 'in',
  heads: ['drivers', 'driven', 'error', `over ${printShort(inUnit(over, 'in'))} in`, 'to put on', 'quadrant'],
  rows: rows.map((row) => [
    row.train.drivers.join(' × '),
    row.train.driven.join(' × '),
    row.near.exact ? 'exact' : millionths(row.near.error),
    { length: inches(row.near.error * inUnit(over, 'in')) },
    { count: row.changes },
    reachWords(row),
  ]),
});

/** What to clamp by: the stud in which slot, how far from the pivot, and how far the quadrant is swung. */
export function studsTable({ placed }: Ranked, unit: LengthUnit): AnswerTable[] {
  if (placed === null || 'why' in placed || placed.reach.slots.length === 0) return [];
  const { shafts, reach } = placed;
  const swung = `${reach.swingDegrees > 0 ? '+' : ''}${printNumber(reach.swingDegrees, 1)}°`;
  return [
    {
      title: `Where the studs stand, the first slot swung ${swung} from the line of the shafts`,
      unit,
      heads: ['stud', 'wheels', 'slot', 'from the pivot'],
      rows: shafts
        .slice(1, -1)
        .map(({ name, driven, driver, idler }, n) => [
          name,
          idler ? `${driver}, idler` : `${driven} driven, ${driver} drives`,
          { count: (reach.slots[n] as number) + 1 },
          { length: millimetres(reach.radii[n] as number) },
        ]),
    },
  ];
}

/** Whether each order of its wheels stands, and by which idlers. */
export function arrangementsTable(train: Train, asked: PlaceAsked): AnswerTable {
  const all = arrangementsOf(train);
  return {
    title: 'All arrangements of the train above',
    unit: 'in',
    heads: ['from the source on', 'stands', 'idlers'],
    rows: all.map((arrangement) => {
      const found = place(arrangement, { ...asked, tries: { left: MOST_TRIES / all.length } });
      const shafts = 'shafts' in found ? found.shafts : shaftsOf(arrangement, [], asked.ends);
      const idlers = shafts.flatMap(({ idler, driver }) => (idler ? [driver] : []));
      return [
        arrangement.pairs.map(([driver, driven]) => `${driver} to ${driven}`).join(', '),
        'why' in found ? found.why : 'fits',
        idlers.join(', ') || 'none',
      ];
    }),
  };
}
