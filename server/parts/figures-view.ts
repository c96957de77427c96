import { cutterAnswer } from '../../lib/cutters/cutters.sums.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { chordalAnswer } from '../../lib/gears/chordal.sums.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { spanAnswer } from '../../lib/gears/span.sums.ts';
import { gearBlank } from '../../lib/gears/spur.sums.ts';
import type { ChosenCircle } from '../../lib/routing/asked.ts';
import { chosenDividing } from '../../lib/routing/chosen-dividing.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { groupOf, only, without } from './figure-group.ts';
import { helicalMeasuring, helicalMilling, helicalSizes } from './helical-view.ts';
import type { FigureGroup } from './view-model.ts';

/** The first of these that stand on the page open; the rest is folded behind them. */
const BLANK_FIRST = ['outsideDiameter', 'pitchDiameter', 'rootDiameter', 'wholeDepth'];

/** The span and the chord, as they are measured while the teeth are cut. */
function measured(gear: Gear): Answer {
  const [span, chord] = [spanAnswer(gear), chordalAnswer(gear)];
  return { figures: { ...span.figures, ...chord.figures }, cautions: [...span.cautions, ...chord.cautions] };
}

function dividing(gear: Gear, shop: ShopNow, circle: ChosenCircle | null): Answer {
  const { answer, head } = chosenDividing(gear.teeth, shop, circle ?? undefined, gear.helix !== null);
  if (answer) return answer;
  throw new DomainError({
    given: `${gear.teeth} divisions on the ${head.name}.`,
    limit: 'No index plate is on record.',
    tryThis: 'Put the plates and their circles on record under Tools.',
    about: ['plates'],
  });
}

function sizesOf(gear: Gear): FigureGroup[] {
  const blank = () => gearBlank(gear);
  return [
    groupOf({ id: 'sizes', title: 'Its sizes' }, () => only(blank(), BLANK_FIRST)),
    groupOf({ id: 'more-sizes', title: 'More of its sizes', folded: true }, () => ({ ...without(blank(), BLANK_FIRST), cautions: [] })),
  ];
}

/** All figures that a wheel is cut by, in the order of the work. circle: what its routing divides it on, if it is being made. */
export function wheelFigures(gear: Gear, shop: ShopNow, circle: ChosenCircle | null): FigureGroup[] {
  const { cutters, arbors, convention } = shop;
  const { helix } = gear;
  return [
    ...(helix ? helicalSizes(gear, shop) : sizesOf(gear)),
    groupOf({ id: 'dividing', title: 'Dividing' }, () => dividing(gear, shop, circle)),
    ...(helix ? helicalMeasuring(gear) : [groupOf({ id: 'measuring', title: 'Measuring the teeth' }, () => measured(gear))]),
    groupOf({ id: 'cutter', title: 'Cutter' }, () => cutterAnswer({ gear, cutters, arbors, convention })),
    ...(helix ? [helicalMilling({ ...gear, helix }, shop)] : []),
  ];
}
