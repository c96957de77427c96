import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { to } from '../addresses.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import { answerView } from '../figures.ts';
import { fieldView } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import type { AnswerView, DrawingView, FieldGroup, FormView, LinkView, Page, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { Owner } from './identify-owner.ts';
import type { MeasuringSheet } from './measuring-sheet-view.ts';
import type { Sum } from './sum.ts';
import type { TakeView } from './take-view.ts';

type SumGroupView = {
  readonly id: string;
  readonly title: string;
  readonly sums: readonly { readonly says: string; readonly href: string; readonly tells: string }[];
};

/** The pages of this area. */
export interface SumViews {
  'sums/contents': Page & { says: string; jumps: readonly LinkView[]; groups: readonly SumGroupView[] };
  'sums/measuring-sheet': MeasuringSheet;
  'sums/sum': Page & {
    tells: string;
    isExample: boolean;
    refusal: string;
    /** Without its tables, which stand below in the whole width. */
    answer: AnswerView | null;
    tables: readonly TableView[];
    drawing: DrawingView | null;
    form: FormView;
    /** Answers that can be taken into the record that was asked about. */
    takes: readonly TakeView[];
    links: readonly LinkView[];
  };
}

const head = (title: string, back: LinkView | null) => ({ title, place: 'Sums' as const, back, titleBlock: [] });

export function contentsView(sums: readonly Sum[]): PageData<'sums/contents'> {
  const titles = [...new Set(sums.map((sum) => sum.group))];
  const groups = titles.map((title) => ({
    id: title.toLowerCase(),
    title,
    sums: sums.filter((sum) => sum.group === title).map((sum) => ({ says: sum.title, href: to.sum(sum.path), tells: sum.tells })),
  }));
  return {
    ...head('Sums', null),
    says: 'One question, one answer with its working. Nothing is saved; the address keeps the numbers.',
    jumps: groups.map((group) => ({ says: `${group.title} (${group.sums.length})`, href: `#${group.id}` })),
    groups,
  };
}

type SumShown = {
  readonly answer: Answer | null;
  readonly typed: Typed;
  readonly problems: Problems;
  readonly refusal: DomainError | null;
  readonly drawing: Drawing | null;
  readonly isExample: boolean;
  /** The record that the sum was reached from; null where there is none. */
  readonly owner: Owner | null;
  readonly takes: readonly TakeView[];
  /** Further ways on. */
  readonly more: readonly LinkView[];
};

const given = (typed: Typed): Record<string, string> => Object.fromEntries(Object.entries(typed).filter(([, text]) => text !== ''));

/** Boxes under a legend; their ids keep clear of those of the figures. */
function group(legend: string, asks: Sum['asks'], names: readonly string[], typed: Typed, problems: Problems): FieldGroup {
  const fields = names.flatMap((name) => {
    const field = asks[name];
    return field ? [fieldView(name, field, typed, problems, 'ask')] : [];
  });
  return { legend, hint: '', folded: false, fields };
}

/** The boxes as groups: those of no part first, then part by part. */
function groupsOf({ asks, parts = [] }: Sum, typed: Typed, problems: Problems): FieldGroup[] {
  const first = Object.keys(asks).filter((name) => !parts.some((part) => part.asks.includes(name)));
  const plain = first.length === 0 ? [] : [group('', asks, first, typed, problems)];
  const headed = parts.map(({ legend, asks: names, folded = false }) => ({
    ...group(legend, asks, names, typed, problems),
    folded: folded && names.every((name) => (typed[name] ?? '') === ''),
  }));
  return [...plain, ...headed];
}

function sumForm(sum: Sum, typed: Typed, problems: Problems, owner: Owner | null): FormView {
  const stray = Object.entries(problems)
    .filter(([name]) => !(name in sum.asks))
    .map(([, problem]) => problem);
  return {
    id: 'sum',
    action: `${to.sum(sum.path)}#answer`,
    method: 'get',
    hidden: owner ? [{ name: 'for', value: owner.name }] : [],
    problem: stray.join(' '),
    groups: groupsOf(sum, typed, problems),
    act: 'Work it out',
    kind: 'main',
    confirm: '',
    back: null,
  };
}

const linksOf = (sum: Sum, asked: Record<string, string>): LinkView[] => [
  ...(sum.dxf ? [{ says: 'Drawing as DXF, millimetres', href: to.sumDxf(sum.path, asked) }] : []),
  ...(sum.paper ? [{ says: 'Print at its scale, as SVG', href: to.sumSvg(sum.path, asked) }] : []),
  { says: 'The same as JSON', href: to.sumJson(sum.path, asked) },
];

export function sumView(sum: Sum, shown: SumShown): PageData<'sums/sum'> {
  const { answer, typed, problems, refusal, drawing, isExample, owner, takes, more } = shown;
  const view = answer ? answerView(answer) : null;
  return {
    ...head(sum.title, owner ? owner.page : { says: 'All sums', href: to.sums }),
    tells: sum.tells,
    isExample,
    refusal: refusal ? refusal.message : '',
    answer: view ? { ...view, tables: [] } : null,
    tables: view?.tables ?? [],
    drawing: drawing ? drawingView(drawing) : null,
    form: sumForm(sum, typed, problems, owner),
    takes,
    links: [...more, ...(answer ? linksOf(sum, given(typed)) : [])],
  };
}
