import type {
  AtMachineView,
  ButtonView,
  CautionView,
  DrawingView,
  EmptyView,
  FieldView,
  FigureView,
  FormView,
  HiddenView,
  LinkView,
  Page,
  StateView,
  TableView,
} from '../page.ts';

/** One operation in the list of its routing. number: its place. minutes: planned, or taken. */
export type OperationRow = {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly state: StateView;
  readonly minutes: string;
  readonly offered: boolean;
};

/** Operations one after another in one set-up. */
export type SetUpRows = { readonly says: string; readonly rows: readonly OperationRow[] };

/** One figure that lib says otherwise by now. was, now: as printed, '' where there was or is none. accept: null where one may only look. */
export type ChangedView = {
  readonly says: string;
  readonly where: string;
  readonly was: string;
  readonly now: string;
  readonly accept: ButtonView | null;
};
export type StaleView = {
  readonly title: string;
  readonly says: string;
  readonly canAccept: boolean;
  readonly changes: readonly ChangedView[];
  readonly acceptAll: ButtonView | null;
};

/** Where work was left, and the form to say so now. form: null where one may only look. */
export type LeftOffView = { readonly says: string; readonly note: string; readonly href: string; readonly form: FormView | null };

/** A routing as the page of its part shows it. blankFails: why its blank will not do. */
export type RoutingSection = {
  readonly title: string;
  readonly says: string;
  readonly refusal: string;
  readonly blankFails: string;
  readonly chooseAnew: LinkView | null;
  readonly minutes: string;
  readonly stale: StaleView | null;
  readonly groups: readonly SetUpRows[];
  readonly empty: EmptyView | null;
  readonly needs: TableView | null;
  /** Which gear is on which stud, where gears turn the plate. */
  readonly gears: DrawingView | null;
  readonly leftOff: LeftOffView;
  readonly links: readonly LinkView[];
};

/** What is measured at an operation, and the two things that can be done with it: noted, or noted and done. */
export type MeasuredForm = {
  readonly action: string;
  readonly noteOnly: string;
  readonly hidden: readonly HiddenView[];
  readonly problem: string;
  readonly fields: readonly FieldView[];
};

export interface RoutingViews {
  'routings/section': { section: RoutingSection };
  'routings/changes': { stale: StaleView };
  'routings/routing': Page & { section: RoutingSection };
  'routings/form': Page & { says: string; figures: readonly FigureView[]; form: FormView; buttons: readonly ButtonView[] };
  'routings/operation': Page & {
    setUp: string;
    minutes: string;
    waits: string;
    notes: string;
    needs: TableView | null;
    cautions: readonly CautionView[];
    figures: readonly FigureView[];
    gears: DrawingView | null;
    stale: StaleView | null;
    steps: readonly string[];
    measured: TableView | null;
    form: MeasuredForm | null;
    undo: ButtonView | null;
    leave: FormView | null;
    acts: readonly ButtonView[];
    links: readonly LinkView[];
    typeOver: readonly LinkView[];
    earlier: LinkView | null;
    later: LinkView | null;
  };
  'routings/at-machine': Page & { at: AtMachineView };
  'routings/set-ups': Page & { says: string; groups: readonly SharedView[]; empty: EmptyView | null };
}

/** Operations of several parts in one set-up: what stays, what differs, and whether to hold. */
export type SharedView = {
  readonly says: string;
  readonly common: string;
  readonly differs: TableView;
  readonly work: TableView;
  readonly holding: readonly string[];
  readonly links: readonly LinkView[];
};
