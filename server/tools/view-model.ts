import type { ToolUse } from '../../db/needs-again.ts';
import type { ToolLine } from '../../db/tools.ts';
import { arborFor } from '../../lib/cutters/arbor-fit.ts';
import type { AnyTool, Arbor } from '../../lib/tooling/tooling.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell } from '../cells.ts';
import { conflictView } from '../forms/conflict.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type FoldedForm, foldedForm } from '../forms/folded-form.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { sizesHidden } from '../forms/gear-typed.ts';
import { formMark } from '../once.ts';
import type { ButtonView, EmptyView, FigureView, FormView, HiddenView, LinkView, Page, PagerView, TableView, TitleCell } from '../page.ts';
import { apart, type Fact } from '../sizes.ts';
import type { PageData } from '../views.ts';
import { lendFields, toolFields, toolGroups, typedOfLoan, typedOfTool } from './forms.ts';
import type { KindForm } from './kinds/kind-form.ts';
import { formOfKind } from './kinds/kinds.ts';
import { stateOf } from './state.ts';

export interface ToolViews {
  'tools/list': Page & {
    empty: EmptyView | null;
    sections: readonly { title: string; id: string; table: TableView; links: readonly LinkView[] }[];
    pager: PagerView | null;
    links: readonly LinkView[];
  };
  'tools/form': Page & { says: string; form: FormView };
  'tools/tool': Page & {
    beware: string;
    figures: readonly FigureView[];
    facts: readonly Fact[];
    use: TableView | null;
    edit: LinkView | null;
    buttons: readonly ButtonView[];
    lend: FoldedForm | null;
  };
}

const revHidden = (rev: number): HiddenView => ({ name: 'rev', value: String(rev) });
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const SAYS: Readonly<Partial<Record<KindForm['kind'], string>>> = {
  cutter: 'Type what is stamped on it. Without pitch, angle and tooth range it is offered for nothing: number sets differ by maker.',
  plate: 'Count the holes of each circle as they are stamped, and prove one by counting.',
  head: 'Crank a whole turn of the spindle once and count, if its maker does not say.',
  mandrel: 'A mandrel is told by the bore that it fits. Try it between centres with an indicator before trusting it.',
  chuck: 'Its run-out and its highest speed decide what is offered with it.',
};

const formOf = (
  kind: KindForm,
  unit: LengthUnit,
  typed: Typed,
  problems: Problems,
  more: Pick<FormView, 'action' | 'hidden' | 'act' | 'back'>,
): FormView => ({
  id: 'tool',
  method: 'post',
  problem: Object.keys(problems).length > 0 ? 'Not saved yet: mend what is marked below.' : '',
  groups: toolGroups(kind, unit, typed, problems),
  kind: 'main',
  confirm: '',
  ...more,
  hidden: [formMark(), sizesHidden(unit), ...more.hidden],
});

export const newView = (kind: KindForm, unit: LengthUnit, typed: Typed, problems: Problems): PageData<'tools/form'> => ({
  title: `New: ${lower(kind.one)}`,
  place: 'Tools',
  back: { says: 'Tools', href: to.tools },
  titleBlock: [],
  says: SAYS[kind.kind] ?? '',
  form: formOf(kind, unit, typed, problems, { action: to.toolNew(kind.kind), hidden: [], act: 'Put it on record', back: null }),
});

const backTo = ({ row }: ToolLine): LinkView => ({ says: row.name, href: to.tool(row.id) });

export function editView(
  kind: KindForm,
  line: ToolLine,
  rev: number,
  unit: LengthUnit,
  typed: Typed,
  problems: Problems,
): PageData<'tools/form'> {
  const { id, name } = line.row;
  return {
    title: `Change ${name}`,
    place: 'Tools',
    back: backTo(line),
    titleBlock: [],
    says: '',
    form: formOf(kind, unit, typed, problems, { action: to.toolEdit(id), hidden: [revHidden(rev)], act: 'Save', back: null }),
  };
}

/** line: as it stands now. */
export const editConflict = (kind: KindForm, line: ToolLine, unit: LengthUnit, yours: Typed): PageData<'conflict'> =>
  conflictView({
    what: `Two versions of ${line.row.name}`,
    place: 'Tools',
    back: backTo(line),
    action: to.toolEdit(line.row.id),
    fields: toolFields(kind, unit),
    yours,
    theirs: typedOfTool(kind, line, unit),
    hidden: [revHidden(line.row.rev), sizesHidden(unit)],
  });

export const lendConflict = (line: ToolLine, yours: Typed): PageData<'conflict'> =>
  conflictView({
    what: `Two versions of ${line.row.name}`,
    place: 'Tools',
    back: backTo(line),
    action: to.toolLend(line.row.id),
    fields: lendFields,
    yours,
    theirs: typedOfLoan(line),
    hidden: [revHidden(line.row.rev)],
  });

/** arbors: those owned, for a cutter's hole. */
type Seen = {
  readonly use: readonly ToolUse[];
  readonly arbors: readonly Arbor[];
  readonly trusted: boolean;
  readonly typed: Typed;
  readonly problems: Problems;
};

function buttonsOf({ row }: ToolLine): ButtonView[] {
  const button = (action: string, says: string, kind: ButtonView['kind'], more: readonly HiddenView[] = []): ButtonView => ({
    action,
    hidden: [formMark(), revHidden(row.rev), ...more],
    says,
    kind,
    confirm: '',
  });
  const worn = (wear: string, says: string) => button(to.toolWear(row.id), says, 'other', [{ name: 'wear', value: wear }]);
  if (row.gone_on !== null) return [button(to.toolPutBack(row.id), 'Put it on the list again', 'main')];
  const { blunts } = formOfKind(row.kind);
  return [
    ...(row.here === 0 ? [button(to.toolBack(row.id), 'It has come back', 'main')] : []),
    ...(blunts && row.wear === 'sharp' ? [worn('dull', 'Mark it blunt')] : []),
    ...(blunts && row.wear !== 'sharp' ? [worn('sharp', 'Mark it sharp')] : []),
    ...(!blunts && row.wear !== 'sharp' ? [worn('sharp', 'Mark it fit for work')] : []),
    ...(row.wear === 'worn out' ? [] : [worn('worn out', 'Mark it worn out')]),
    { ...button(to.toolRetire(row.id), 'Take it off the list', 'stop'), confirm: `Take ${row.name} off the list? Its records stay.` },
  ];
}

function lendForm(line: ToolLine, typed: Typed, problems: Problems): FoldedForm | null {
  const { row } = line;
  if (row.here === 0 || row.gone_on !== null) return null;
  return foldedForm('Lend it out', {
    id: 'lend',
    action: to.toolLend(row.id),
    method: 'post',
    hidden: [formMark(), revHidden(row.rev)],
    problem: '',
    groups: [fieldGroup('', lendFields, typed, problems)],
    act: 'Lend it out',
    kind: 'main',
    confirm: '',
    back: null,
  });
}

/** One line for each part whose work counts on it, with the first operation that does. */
function useTable(use: readonly ToolUse[]): TableView | null {
  if (use.length === 0) return null;
  const parts = [...new Set(use.map((work) => work.part_id))].map((id) => use.filter((work) => work.part_id === id));
  return {
    title: 'Work that counts on it',
    heads: heads(['Part', 'name'], ['Operations', 'words'], ['First', 'words']),
    rows: parts.flatMap((works) => {
      const [first] = works;
      if (!first) return [];
      const name = linkCell(`${first.part_mark} ${first.part_name}`, to.part(first.part_id));
      return [{ id: `work-${first.id}`, cells: [name, cell(String(works.length)), cell(first.title)] }];
    }),
    empty: '',
  };
}

function cellsOf(line: ToolLine, trusted: boolean): TitleCell[] {
  const { row } = line;
  const said = (label: string, says: string): TitleCell[] => (says === '' ? [] : [{ label, says, href: '', state: null }]);
  return [
    ...said('Kind', formOfKind(row.kind).one),
    { label: 'State', says: '', href: '', state: stateOf(line) },
    ...said('Kept in', row.kept_in),
    ...(trusted ? [...said('Belongs to', row.owner), ...said('Lent to', row.here === 0 ? row.lent_to : '')] : []),
    ...said('Due back', row.due_on ?? ''),
  ];
}

/** A cutter whose hole no owned arbor fits says so where it is put on record. */
const arborLacking = (tool: AnyTool, arbors: readonly Arbor[]): string =>
  tool.kind === 'cutter' && tool.hole !== null && arbors.length > 0 ? arborFor(tool, arbors).says : '';

export function toolView(line: ToolLine, { use, arbors, trusted, typed, problems }: Seen): PageData<'tools/tool'> {
  const { row, tool } = line;
  const kind = formOfKind(row.kind);
  const { figures, facts } = apart(kind.sizes(line));
  return {
    title: row.name,
    place: 'Tools',
    back: { says: 'Tools', href: to.tools },
    titleBlock: cellsOf(line, trusted),
    beware: [kind.lacks(tool as never), arborLacking(tool, arbors)].filter((says) => says !== '').join(' '),
    figures,
    facts: [...facts, ...(row.notes === '' || !trusted ? [] : [{ label: 'Notes', says: row.notes }])],
    use: useTable(use),
    edit: trusted && row.gone_on === null ? { says: 'Change what is on record', href: to.toolEdit(row.id) } : null,
    buttons: trusted ? buttonsOf(line) : [],
    lend: trusted ? lendForm(line, typed, problems) : null,
  };
}
