import { drawerOf } from '../../lib/blanks/drawer.ts';
import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import type { Answer, Figure, Given } from '../../lib/figure/figure.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { soundWheel } from './sound-wheel.ts';
import { toldFigures } from './told-figure.ts';

export type DrawerKey = 'missing' | 'missingMany' | 'spare' | 'spareMany' | 'present';

const wheels = (count: number) => ({ count, unit: 'wheels' }) as const;
const told = toldFigures('derived: number by number, what belongs against what lies there');
const figure = (name: string, symbol: string, value: Figure['value'], formula = '', given: readonly Given[] = []): Figure => ({
  ...told(name, symbol, value),
  formula,
  given,
});
const counted = (symbol: string, name: string, many: number): Given => ({ symbol, name, value: wheels(many), from: 'worked out' });
const listed = (counts: readonly number[]): Figure['value'] => ({ words: counts.length === 0 ? 'none' : printDrawer(counts) });

/** What a drawer holds of what belongs: missing, spare and there, number by number. model: a wheel of the set but for its teeth. */
export function drawerAnswer(belongs: readonly number[], there: readonly number[], model: Gear): Answer<DrawerKey> {
  const drawer = drawerOf(
    belongs,
    there.map((teeth, at) => soundWheel({ ...model, teeth }, at + 1)),
  );
  const spares = drawer.spare.map(({ gear }) => gear.teeth);
  const present = counted('K', 'places filled', drawer.present.length);
  const numbers = [...new Set([...belongs, ...there])].sort((a, b) => a - b);
  const many = (list: readonly number[], teeth: number): number => list.filter((one) => one === teeth).length;
  return {
    figures: {
      missing: figure('Missing', '', listed(drawer.missing)),
      missingMany: figure('Wheels missing', 'M', wheels(drawer.missing.length), 'B − K', [
        counted('B', 'wheels that belong', belongs.length),
        present,
      ]),
      spare: figure('Spare', '', listed(spares)),
      spareMany: figure('Wheels spare', 'S', wheels(spares.length), 'D − K', [counted('D', 'wheels in the drawer', there.length), present]),
      present: figure('Places filled', 'K', wheels(drawer.present.length)),
    },
    cautions: [],
    says: drawer.missing.length === 0 ? 'Nothing is missing.' : `Missing: ${printDrawer(drawer.missing)}.`,
    tables: [
      {
        title: 'Number by number',
        unit: 'in',
        heads: ['teeth', 'belong', 'in the drawer', 'missing', 'spare'],
        rows: numbers.map((teeth) => [
          { count: teeth },
          { count: many(belongs, teeth) },
          { count: many(there, teeth) },
          { count: many(drawer.missing, teeth) },
          { count: many(spares, teeth) },
        ]),
      },
    ],
  };
}
