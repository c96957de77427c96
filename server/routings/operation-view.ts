import { type OperationLine, stepsShown } from '../../db/operations.ts';
import { timeWords } from '../../lib/figure/time-words.ts';
import { to } from '../addresses.ts';
import { cautionView } from '../figures.ts';
import { fieldView } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { ButtonView, HiddenView, LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { Visit } from '../visit.ts';
import { blankCaution } from './blank-words.ts';
import { bySource, figuresShown } from './figure-shown.ts';
import { gearsView } from './gears-view.ts';
import { leaveForm } from './leave-form.ts';
import { listedField } from './listed.ts';
import { measuredTable, measureFields, minutesField } from './measured.ts';
import { needsTable } from './section.ts';
import { staleView } from './stale-view.ts';
import type { MeasuredForm } from './view-model.ts';
import { firstOfAll, stateView, waitWords } from './words.ts';
import { figuresChanged, type Work, workHead } from './work.ts';

/** What was typed into the boxes for measured sizes, and what was wrong with it. */
export type Tried = { readonly typed: Typed; readonly problems: Problems };
const FRESH: Tried = { typed: {}, problems: {} };

export const revOf = (line: OperationLine): HiddenView => ({ name: 'rev', value: String(line.rev) });

function measuredForm(work: Work, { typed, problems }: Tried): MeasuredForm {
  const { line } = work;
  const measures = measureFields(line);
  const all = { ...measures, minutes: minutesField };
  return {
    action: to.operationDone(line.id),
    noteOnly: Object.keys(measures).length > 0 ? to.operationMeasured(line.id) : '',
    hidden: [revOf(line), listedField(figuresChanged(work)), formMark()],
    problem: Object.keys(problems).length > 0 ? 'Nothing is saved yet: mend what is marked.' : '',
    fields: Object.entries(all).map(([name, field]) => fieldView(name, field, typed, problems)),
  };
}

type Act = { readonly action: string; readonly says: string; readonly extra?: HiddenView };
const button = (line: OperationLine, { action, says, extra }: Act, kind: ButtonView['kind'] = 'other'): ButtonView => ({
  action,
  hidden: [revOf(line), ...(extra ? [extra] : []), formMark()],
  says,
  kind,
  confirm: '',
});

function actsOf({ line, at, today }: Work): ButtonView[] {
  const move = (by: 'up' | 'down', says: string) =>
    button(line, { action: to.operationMove(line.id), says, extra: { name: 'by', value: by } });
  return [
    ...(at > 0 ? [move('up', 'Move it up')] : []),
    ...(at < today.lines.length - 1 ? [move('down', 'Move it down')] : []),
    line.state === 'struck out'
      ? button(line, { action: to.operationRestore(line.id), says: 'Bring it back' })
      : button(line, { action: to.operationStrike(line.id), says: 'Strike it out' }, 'stop'),
  ];
}

const neighbour = (line: OperationLine | undefined): LinkView | null => (line ? { says: line.title, href: to.operation(line.id) } : null);

const TEETH_KEYS: readonly (string | null)[] = ['nick', 'rough', 'finish'];

/** The walls and the bore have a form of their own with the wheel; from them the root is worked out. */
const wallsLink = ({ line, routing, spareId }: Work): LinkView[] =>
  line.key === 'sound' && routing.closed_on === null && spareId !== null
    ? [{ says: 'Six walls and the bore: write them down with the wheel', href: `${to.item(spareId)}#walls` }]
    : [];

function linksOf(work: Work, canChange: boolean): LinkView[] {
  const { line, routing, part: own } = work;
  const open = routing.closed_on === null;
  return [
    ...(canChange ? wallsLink(work) : []),
    ...(line.figures.length > 0 ? [{ says: 'At the machine: one number at a time', href: to.atMachine(line.id) }] : []),
    ...(TEETH_KEYS.includes(line.key) && own.stored ? [{ says: 'Count the teeth: one hole at a time', href: to.teeth(line.id) }] : []),
    ...(open && canChange
      ? [
          ...(line.state === 'done' || line.state === 'struck out'
            ? []
            : [
                {
                  says: line.held_for_id === null ? 'Hold it for another operation' : 'Held: change that or release it',
                  href: to.operationHold(line.id),
                },
              ]),
          { says: 'Edit title, steps and notes', href: to.operationEdit(line.id) },
          { says: 'Add an operation after this one', href: to.operationNew(line.routing_id, line.id) },
        ]
      : []),
    { says: 'The whole routing', href: to.routing(line.routing_id) },
  ];
}

const minutesOf = (line: OperationLine): string =>
  line.minutes_taken === null
    ? `Planned ${timeWords(line.minutes_planned)}.`
    : `Planned ${timeWords(line.minutes_planned)}, took ${timeWords(line.minutes_taken)}.`;

/** What may be changed at an operation: nothing on a device that only looks, nor on a routing that is closed. */
function changing(work: Work, tried: Tried, canChange: boolean) {
  const { line, today, routing } = work;
  if (!canChange || routing.closed_on !== null) return { form: null, undo: null, leave: null, acts: [], typeOver: [] };
  const open = line.state !== 'done' && line.state !== 'struck out';
  return {
    form: open ? measuredForm(work, tried) : null,
    undo: line.state === 'done' ? button(line, { action: to.operationUndone(line.id), says: 'Not done after all' }) : null,
    leave: leaveForm(line.routing_id, today.lines, line.id, to.operation(line.id)),
    acts: line.state === 'done' ? [] : actsOf(work),
    typeOver: open
      ? line.figures.map(({ key, figure, shownFrom }) => ({
          says: bySource(figure.name, shownFrom),
          href: to.operationFigure(line.id, key),
        }))
      : [],
  };
}

export function operationView(work: Work, { trusted }: Visit, tried: Tried = FRESH): PageData<'routings/operation'> {
  const { line, at, now, today, changes } = work;
  const own = changes.filter(({ operationId }) => operationId === line.id);
  const canAccept = trusted && work.routing.closed_on === null;
  return {
    ...workHead(work, `${at + 1}. ${line.title}`, stateView(line)),
    setUp: line.setUp.says,
    minutes: minutesOf(line),
    waits: [firstOfAll(line.waits.map(waitWords)), ...line.waits.flatMap((wait) => (wait.for === 'blank' && wait.why ? [wait.why] : []))]
      .join(' ')
      .trim(),
    notes: trusted ? line.notes : '',
    needs: needsTable([line], 'What it needs', 'one', trusted),
    cautions: [...blankCaution(work, line), ...line.cautions].map(cautionView),
    figures: figuresShown(line, now),
    gears: gearsView([line]),
    stale: staleView(own, { routing: work.routing, trusted: canAccept, back: to.operation(line.id) }),
    steps: stepsShown(line),
    measured: measuredTable(line),
    ...changing(work, tried, trusted),
    links: linksOf(work, trusted),
    earlier: neighbour(today.lines[at - 1]),
    later: neighbour(today.lines[at + 1]),
  };
}
