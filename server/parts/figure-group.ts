import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer, Figure } from '../../lib/figure/figure.ts';
import { answerView, cautionView, figureView } from '../figures.ts';
import type { LinkView, TableView } from '../page.ts';
import type { FigureGroup } from './view-model.ts';

type Named = Pick<FigureGroup, 'id' | 'title'> & { readonly folded?: boolean; readonly links?: readonly LinkView[] };

/** Several answers stand on one page: the rows of each are named by their group. */
const within = (group: string, { rows, ...table }: TableView): TableView => ({
  ...table,
  rows: rows.map((row) => ({ ...row, id: `${group}-${row.id}` })),
});

/** An answer as a group of the page; where sizes make no sense together, why, in words. */
export function groupOf({ id, title, folded = false, links = [] }: Named, work: () => Answer): FigureGroup {
  try {
    const answer = work();
    const { figures, cautions, says = '' } = answer;
    return {
      id,
      title,
      says,
      folded,
      links,
      figures: Object.entries<Figure>(figures).map(([key, figure]) => figureView(key, figure)),
      cautions: cautions.map(cautionView),
      tables: answerView(answer).tables.map((table) => within(id, table)),
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { id, title, says: error.message, folded: false, links, figures: [], cautions: [] };
  }
}

/** Of an answer only these figures, in this order. */
export const only = (answer: Answer<string>, keys: readonly string[]): Answer => ({
  ...answer,
  figures: Object.fromEntries(keys.flatMap((key) => (answer.figures[key] ? [[key, answer.figures[key]]] : []))),
});

/** Of an answer all figures but these. */
export const without = (answer: Answer<string>, keys: readonly string[]): Answer =>
  only(
    answer,
    Object.keys(answer.figures).filter((key) => !keys.includes(key)),
  );
