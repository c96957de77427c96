import type { MachineLine } from '../../db/machines.ts';
import type { Dial, MachineKind } from '../../lib/tooling/tooling.ts';
import { inUnit } from '../../lib/values/length.ts';
import { type LengthForm, printShort } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { typedOfQuadrant } from '../forms/quadrant-form.ts';
import { formMark } from '../once.ts';
import type { ButtonView, CautionView, EmptyView, FigureView, FormView, LinkView, Page, StateView, TableView } from '../page.ts';
import { apart, type Fact, factView } from '../sizes.ts';
import type { PageData } from '../views.ts';
import { BACK_TO_LIST, revHidden } from './form-view.ts';

export interface ShopMachineViews {
  'shop-machines/list': Page & { says: string; table: TableView | null; empty: EmptyView | null; add: LinkView | null };
  'shop-machines/form': Page & { says: string; form: FormView };
  'shop-machines/machine': Page & {
    cautions: readonly CautionView[];
    figures: readonly FigureView[];
    facts: readonly Fact[];
    /** To the sum of its change wheels, with its quadrant filled in; null while that has not been measured. */
    wheels: LinkView | null;
    edit: LinkView | null;
    buttons: readonly ButtonView[];
  };
}

/** The usual lathe and mill: what routings are planned on. */
export type Usual = { readonly latheId: number | null; readonly millId: number | null };

const KINDS: Readonly<Record<MachineKind, string>> = {
  lathe: 'lathe',
  mill: 'milling machine',
  drill: 'drilling machine',
  shaper: 'shaper',
  planer: 'planer',
  other: 'other',
};

const isUsual = ({ row }: MachineLine, usual: Usual): boolean => row.id === usual.latheId || row.id === usual.millId;

function stateOf(line: MachineLine, usual: Usual): StateView {
  if (line.row.gone_on !== null) return { kind: 'off', says: 'gone' };
  return { kind: 'here', says: isUsual(line, usual) ? `here, the usual ${line.row.kind}` : 'here' };
}

/** "24 to 605 rev/min, 8 speeds". */
function speedWords(speeds: readonly number[]): string {
  const [low, high] = [speeds[0], speeds.at(-1)];
  if (low === undefined || high === undefined) return 'speeds not typed';
  return `${printShort(low, 2)} to ${printShort(high, 2)} rev/min, ${speeds.length} speed${speeds.length === 1 ? '' : 's'}`;
}

const READS = { travel: 'tool travel', diameter: 'off the diameter' } as const;
const dialWords = (dial: Dial | null): string =>
  dial ? `dial ${READS[dial.reads]}, ${printShort(inUnit(dial.division, dial.unit), 6)} ${dial.unit}` : 'dial not typed';

const BACK: LinkView = { says: 'Tools', href: to.tools };

const nothing = (trusted: boolean): EmptyView => ({
  title: 'No shop machine yet',
  says: 'The lathe first: its speeds, and what its cross-slide dial reads. No speed is offered that it has not, and no dial figure until its dial is known.',
  act: trusted ? { says: 'Add a machine of the shop', href: to.shopMachineNew } : null,
  drawing: '',
});

export function listView(lines: readonly MachineLine[], usual: Usual, trusted: boolean): PageData<'shop-machines/list'> {
  const table: TableView = {
    title: '',
    heads: heads(['Machine', 'name'], ['State', 'state'], ['Speeds', 'words'], ['Cross-slide', 'words']),
    rows: lines.map((line) => ({
      id: `machine-${line.row.id}`,
      cells: [
        linkCell(line.row.name, to.shopMachine(line.row.id)),
        stateCell(stateOf(line, usual)),
        cell(speedWords(line.machine.speedsRpm)),
        cell(dialWords(line.machine.crossDial)),
      ],
    })),
    empty: '',
  };
  const any = lines.length > 0;
  return {
    title: 'Shop machines',
    place: 'Tools',
    back: BACK,
    titleBlock: [],
    says: any ? 'Routings are planned on the usual lathe and the usual mill.' : '',
    table: any ? table : null,
    empty: any ? null : nothing(trusted),
    add: trusted && any ? { says: 'Add a machine of the shop', href: to.shopMachineNew } : null,
  };
}

/** What a dial says, and what one turn of it does to the work. */
function dialFigures(key: string, name: string, dial: Dial | null): FigureView[] {
  if (!dial) return [factView(key, name, 'not typed')];
  const turn = inUnit(dial.division, dial.unit) * dial.perTurn;
  const figure = factView(`${key}-turn`, `${name}, one turn`, printShort(turn, 6), dial.unit);
  return [
    factView(key, name, READS[dial.reads]),
    factView(`${key}-division`, `${name}, least division`, printShort(inUnit(dial.division, dial.unit), 6), dial.unit),
    { ...figure, other: `${dial.perTurn} divisions` },
    dial.lash === undefined
      ? factView(`${key}-lash`, `${name}, lash`, 'not measured')
      : factView(`${key}-lash`, `${name}, lash`, printShort(inUnit(dial.lash, dial.unit), 6), dial.unit),
  ];
}

const SCREWED: CautionView = {
  name: 'Screwed nose',
  says: 'Screwed nose: no braking and no reverse, or the chuck unscrews.',
  weight: 'beware',
  word: 'Beware',
};

function buttonsOf(line: MachineLine, usual: Usual): ButtonView[] {
  const { row } = line;
  const button = (action: string, says: string, kind: ButtonView['kind'], confirm = ''): ButtonView => ({
    action,
    hidden: [formMark(), revHidden(row.rev)],
    says,
    kind,
    confirm,
  });
  if (row.gone_on !== null) return [button(to.shopMachinePutBack(row.id), 'Put it back in the shop', 'main')];
  const mayBeUsual = (row.kind === 'lathe' || row.kind === 'mill') && !isUsual(line, usual);
  return [
    ...(mayBeUsual ? [button(to.shopMachineUsual(row.id), `Make it the usual ${row.kind}`, 'other')] : []),
    button(to.shopMachineRetire(row.id), 'It has left the shop', 'stop', `Take ${row.name} out of the shop? Its records stay.`),
  ];
}

const feedWords = ({ machine }: MachineLine, form: LengthForm | null): string =>
  form ? machine.feeds.map((feed) => printShort(inUnit(feed, form.unit), 5)).join('  ') : '';

/** The quadrant as it was typed, where it has been measured. */
function quadrantWords({ row }: MachineLine): FigureView[] {
  const typed = typedOfQuadrant(row.quadrant);
  if (!typed['between']) return [];
  const says = `${typed['between']} between the shafts; slots ${typed['slots']}; ${typed['wheelPitch']}`;
  return [{ ...factView('quadrant', 'Quadrant', says), words: true }];
}

function wheelsLink({ row }: MachineLine): LinkView | null {
  const typed = typedOfQuadrant(row.quadrant);
  if (!typed['between']) return null;
  const full = Object.entries(typed).filter(([, text]) => text !== '');
  const given = { thread: '8 TPI', screw: '8 TPI', drawer: '20-80 step 5', upTo: '4', over: '1' };
  return { says: 'Change wheels on its quadrant', href: to.sum('change-gears', { ...given, ...Object.fromEntries(full) }) };
}

function figuresOf(line: MachineLine, form: LengthForm | null): FigureView[] {
  const { machine } = line;
  const [speeds, feeds] = [machine.speedsRpm.map((rpm) => printShort(rpm, 2)).join('  '), feedWords(line, form)];
  const inWords = (key: string, name: string, text: string, unit: string): FigureView => ({
    ...factView(key, name, text || 'not typed', text ? unit : ''),
    words: true,
  });
  return [
    inWords('speeds', 'Speeds', speeds, 'rev/min'),
    inWords('feeds', 'Feeds', feeds, `${form?.unit ?? 'in'} a ${machine.feedsPer}`),
    ...dialFigures('cross', 'Cross-slide', machine.crossDial),
    ...dialFigures('depth', 'Depth', machine.depthDial),
    ...quadrantWords(line),
  ];
}

export function machineView(line: MachineLine, form: LengthForm | null, usual: Usual, trusted: boolean): PageData<'shop-machines/machine'> {
  const { row, machine } = line;
  const { figures, facts } = apart(figuresOf(line, form));
  const says = (label: string, text: string) => (text === '' ? [] : [{ label, says: text }]);
  return {
    title: row.name,
    place: 'Tools',
    back: BACK_TO_LIST,
    titleBlock: [
      { label: 'Kind', says: KINDS[row.kind], href: '', state: null },
      { label: 'State', says: '', href: '', state: stateOf(line, usual) },
    ],
    cautions: machine.screwedNose ? [SCREWED] : [],
    figures,
    facts: [...facts, ...says('Nose', row.nose), ...says('Notes', trusted ? row.notes : '')],
    wheels: wheelsLink(line),
    edit: trusted && row.gone_on === null ? { says: 'Change what is on record', href: to.shopMachineEdit(row.id) } : null,
    buttons: trusted ? buttonsOf(line, usual) : [],
  };
}
