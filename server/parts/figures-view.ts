import { cutterAnswer } from '../../lib/cutters/cutters.sums.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer, Figure } from '../../lib/figure/figure.ts';
import { chordalAnswer } from '../../lib/gears/chordal.sums.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { spanAnswer } from '../../lib/gears/span.sums.ts';
import { gearBlank } from '../../lib/gears/spur.sums.ts';
import type { ChosenCircle } from '../../lib/routing/asked.ts';
import { chosenDividing } from '../../lib/routing/chosen-dividing.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { answerView, cautionView, figureView } from '../figures.ts';
import type { TableView } from '../page.ts';
import type { FigureGroup } from './view-model.ts';

type Named = Pick<FigureGroup, 'id' | 'title'> & { readonly folded?: boolean };

/** Several answers stand on one page: the rows of each are named by their group. */
const within = (group: string, { rows, ...table }: TableView): TableView => ({
  ...table,
  rows: rows.map((row) => ({ ...row, id: `${group}-${row.id}` })),
});

/** An answer as a group of the page; where sizes make no sense together, why, in words. */
function groupOf({ id, title, folded = false }: Named, work: () => Answer): FigureGroup {
  try {
    const answer = work();
    const { figures, cautions, says = '' } = answer;
    return {
      id,
      title,
      says,
      folded,
      figures: Object.entries<Figure>(figures).map(([key, figure]) => figureView(key, figure)),
      cautions: cautions.map(cautionView),
      tables: answerView(answer).tables.map((table) => within(id, table)),
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { id, title, says: error.message, folded: false, figures: [], cautions: [] };
  }
}

const only = (answer: Answer<string>, keys: readonly string[]): Answer => ({
  ...answer,
  figures: Object.fromEntries(Object.entries<Figure>(answer.figures).filter(([key]) => keys.includes(key))),
});

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

/** All figures that a wheel is cut by, in the order of the work. circle: what its routing divides it on, if it is being made. */
export function wheelFigures(gear: Gear, shop: ShopNow, circle: ChosenCircle | null): FigureGroup[] {
  const { cutters, arbors, convention } = shop;
  const blank = () => gearBlank(gear);
  return [
    groupOf({ id: 'sizes', title: 'Its sizes' }, () => only(blank(), BLANK_FIRST)),
    groupOf({ id: 'more-sizes', title: 'More of its sizes', folded: true }, () => {
      const answer = blank();
      const rest = Object.keys(answer.figures).filter((key) => !BLANK_FIRST.includes(key));
      return { ...only(answer, rest), cautions: [] };
    }),
    groupOf({ id: 'dividing', title: 'Dividing' }, () => dividing(gear, shop, circle)),
    groupOf({ id: 'measuring', title: 'Measuring the teeth' }, () => measured(gear)),
    groupOf({ id: 'cutter', title: 'Cutter' }, () => cutterAnswer({ gear, cutters, arbors, convention })),
  ];
}
