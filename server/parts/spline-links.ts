import type { PartLine } from '../../db/parts.ts';
import type { Bore } from '../../lib/gears/gear.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import type { StraightBore } from '../../lib/splines/shaft-sizes.ts';
import { usualCutter } from '../../lib/splines/usual-cutter.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { type Length, type LengthUnit, NM_PER_INCH } from '../../lib/values/length.ts';
import { printLength } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import type { LinkView } from '../page.ts';
import { COMMON_PLATES } from '../sums/read-plates.ts';

export type SplinedBore = Extract<Bore, { readonly form: 'splined' }>;

const asStraight = ({ splines, diameter, minor, keyWidth }: SplinedBore): StraightBore => ({
  splines,
  outside: diameter,
  inside: minor,
  width: keyWidth,
});

const PLACES = 4;
const isInches = (length: Length): boolean => (length * 10 ** PLACES) % NM_PER_INCH === 0;

/** The unit in which all three sizes can be typed whole. */
const unitOf = ({ diameter, minor, keyWidth }: SplinedBore): LengthUnit => ([diameter, minor, keyWidth].every(isInches) ? 'in' : 'mm');
const typed = (length: Length, unit: LengthUnit): string => `${printLength(length, { unit, places: PLACES })}${unit === 'mm' ? ' mm' : ''}`;

const plateText = ({ sides }: Plate): string => sides.map((circles) => circles.join(' ')).join(' | ');

const sizesOf = (bore: SplinedBore): Readonly<Record<string, string>> => {
  const unit = unitOf(bore);
  return {
    splines: `${bore.splines}`,
    outside: typed(bore.diameter, unit),
    inside: typed(bore.minor, unit),
    width: typed(bore.keyWidth, unit),
  };
};

/** The sheet for milling a shaft or a mandrel to a splined bore, with the head and the plates of the shop. */
export function millingSheet(bore: SplinedBore, { heads, plates }: Pick<ShopNow, 'heads' | 'plates'>): string {
  const unit = unitOf(bore);
  const here = plates.filter((plate) => plate.here);
  return to.sum('mill-splined-shaft', {
    ...sizesOf(bore),
    locates: 'outside and sides',
    cutter: typed(usualCutter(asStraight(bore), unit), unit),
    turns: `${(heads.find((head) => head.here) ?? heads[0])?.turns ?? 40}`,
    plates: here.length > 0 ? here.map(plateText).join('; ') : COMMON_PLATES,
  });
}

const findIt = (bore: SplinedBore): string => to.sum('find-a-spline', { part: 'bore', ...sizesOf(bore), sides: 'not looked at' });

/** From a wheel with a splined bore: what spline it is, and how a shaft or mandrel for it is milled. */
export const linksOfSpline = (bore: Bore | null | undefined, shop: Pick<ShopNow, 'heads' | 'plates'>): readonly LinkView[] =>
  bore?.form !== 'splined'
    ? []
    : [
        { says: 'Which spline its bore is', href: findIt(bore) },
        { says: 'Mill a shaft or mandrel to its bore', href: millingSheet(bore, shop) },
      ];

const MOST_BORES = 3;

/** From a part without teeth, which may be the shaft: a sheet for milling it to each splined bore of the machine's wheels. */
export function sheetsFor(wheels: readonly PartLine[], shop: Pick<ShopNow, 'heads' | 'plates'>): readonly LinkView[] {
  const byBore = new Map<string, LinkView>();
  for (const { name, stored } of wheels) {
    const bore = stored?.gear.bore;
    if (bore?.form !== 'splined') continue;
    const href = millingSheet(bore, shop);
    if (!byBore.has(href)) byBore.set(href, { says: `Shaft sheet: mill it to the ${bore.splines}-spline bore of ${name}`, href });
  }
  return [...byBore.values()].slice(0, MOST_BORES);
}
