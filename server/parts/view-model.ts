import type { ButtonView, CautionView, DrawingView, FigureView, FormView, LinkView, Page, TableView } from '../page.ts';
import type { RoutingSection } from '../routings/view-model.ts';
import type { IdentifyView } from './identify-view.ts';

/** Figures that belong together. says: the verdict, or why there are none. */
export type FigureGroup = {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly figures: readonly FigureView[];
  readonly cautions: readonly CautionView[];
  readonly folded: boolean;
  /** To the sums that it was worked by, where other sizes may be typed. */
  readonly links?: readonly LinkView[];
  /** What else was weighed: every circle that serves, every cutter in the drawer and why not. Folded behind the figures. */
  readonly tables?: readonly TableView[];
};

export interface PartViews {
  /** routing: while one is open. needs: before that. blank: what it is, or would be, cut from. */
  'parts/one': Page & {
    says: string;
    problem: string;
    identify: IdentifyView | null;
    drawing: DrawingView | null;
    routing: RoutingSection | null;
    blank: { readonly title: string; readonly says: string; readonly drawing: DrawingView; readonly group: FigureGroup } | null;
    /** To the choice over the whole set, of which this one part is only a piece. */
    together: LinkView | null;
    promise: readonly FormView[];
    spares: TableView | null;
    ways: TableView | null;
    wayForm: FormView | null;
    wayWords: string;
    /** What opens a routing for a way that is followed by hand, and why there is none; null and '' where neither is to be said. */
    own: FormView | null;
    noRouting: string;
    noRoutingLinks: readonly LinkView[];
    needs: TableView | null;
    groups: readonly FigureGroup[];
    facts: readonly { readonly label: string; readonly says: string }[];
    notes: string;
    made: TableView | null;
    fit: FormView | null;
    buttons: readonly ButtonView[];
    links: readonly LinkView[];
  };
  'parts/readings': { identify: IdentifyView };
  'parts/form': Page & { says: string; links: readonly LinkView[]; form: FormView };
}
