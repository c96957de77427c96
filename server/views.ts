import type { DeviceViews } from './devices/view-model.ts';
import type { DrawerViews } from './drawer/view-model.ts';
import type { MachineViews } from './machines/view-model.ts';
import type { MadeViews } from './made/view-model.ts';
import type {
  AnswerView,
  AtMachineView,
  ButtonView,
  CautionView,
  ConflictRow,
  DrawingView,
  EmptyView,
  FieldView,
  FigureView,
  FormView,
  HiddenView,
  LinkView,
  Markup,
  NoticeView,
  Page,
  PageHead,
  PagerView,
  PaperBlock,
  StateView,
  TableView,
  TicksView,
  TitleCell,
  WithoutFurniture,
} from './page.ts';
import type { PartViews } from './parts/view-model.ts';
import type { RoutingViews } from './routings/view-model.ts';
import type { SearchViews } from './search/view-model.ts';
import type { SetViews } from './sets/view-model.ts';
import type { SettingViews } from './settings/view-model.ts';
import type { SheetViews } from './sheets/view-types.ts';
import type { ShopViews } from './shop/view-model.ts';
import type { ShopMachineViews } from './shop-machines/view-model.ts';
import type { SumViews } from './sums/view-model.ts';
import type { TodayViews } from './today/view-model.ts';
import type { ToolViews } from './tools/view-model.ts';

/** The three layouts: what a page must hand over to stand in them. */
export interface Layouts {
  layout: Page & { body: Markup };
  'machine-layout': Page & { body: Markup };
  'sheet-layout': Pick<Page, 'title' | 'styles' | 'script' | 'icon' | 'back'> & { body: Markup };
}

/** Every partial, by its path under views. */
export interface Partials {
  'partials/answer': { answer: AnswerView };
  'partials/at-machine': { at: AtMachineView };
  'partials/back': { back: LinkView };
  'partials/button': { button: ButtonView };
  'partials/cautions': { cautions: readonly CautionView[] };
  'partials/cautions-on-paper': { cautions: readonly CautionView[] };
  'partials/check-line': Record<never, never>;
  'partials/conflict': { action: string; hidden: readonly HiddenView[]; says: string; rows: readonly ConflictRow[]; act: string };
  'partials/drawing': { drawing: DrawingView };
  'partials/empty': { empty: EmptyView };
  'partials/fields': { fields: readonly FieldView[] };
  'partials/figures': { figures: readonly FigureView[] };
  'partials/figures-on-paper': { figures: readonly FigureView[] };
  'partials/form': { form: FormView };
  'partials/line-kinds': Record<never, never>;
  'partials/links': { links: readonly LinkView[] };
  'partials/notice': { notice: NoticeView };
  'partials/pager': { pager: PagerView };
  'partials/paper-block': { paper: PaperBlock };
  'partials/state': { state: StateView };
  'partials/table': { table: TableView };
  'partials/ticks': { ticks: TicksView };
  'partials/title-block': { title: string; titleBlock: readonly TitleCell[] };
}

/** Pages that belong to no area. */
interface CommonPages {
  /** Asks once more before something that cannot be taken back. */
  confirm: Page & { says: string; form: FormView };
  /** 409: both versions side by side. */
  conflict: Page & Partials['partials/conflict'];
  /** 404, 409, 422 and 500. `reference` is '' except on 500. */
  error: Page & { says: string; tryThis: string; reference: string; links: readonly LinkView[] };
}

/** Every template with its data. A page builder adds the interface of an area here, and to nothing else. */
export interface Views
  extends Layouts,
    Partials,
    CommonPages,
    MadeViews,
    RoutingViews,
    DeviceViews,
    MachineViews,
    SearchViews,
    PartViews,
    SetViews,
    SheetViews,
    ShopViews,
    SumViews,
    TodayViews,
    ToolViews,
    SettingViews,
    ShopMachineViews,
    DrawerViews {}

/** The templates that stand in the layout: what `reply.page` takes. */
export type PageName = { [K in keyof Views]: Views[K] extends PageHead ? (K extends keyof Layouts ? never : K) : never }[keyof Views];
export type PageData<K extends PageName> = WithoutFurniture<Views[K]>;
