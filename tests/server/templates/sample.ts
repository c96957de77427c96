import type { FieldView, FigureView, FormView, Furniture, StateKind, TableView, TitleCell } from '../../../server/page.ts';
import type { Partials } from '../../../server/views.ts';

const figure = (key: string, more: Partial<FigureView>): FigureView => ({
  key,
  name: 'Outside diameter',
  symbol: 'Do',
  text: '3.0000',
  unit: 'in',
  other: '76.200 mm',
  words: false,
  mark: '',
  was: '',
  revision: '',
  limits: '2.975 to 3.000 in',
  working: {
    formula: 'Do = (N + 2) ÷ P',
    given: [{ symbol: 'N', name: 'Teeth', text: '22', unit: '', from: 'typed' }],
    source: 'Common practice, no source',
    error: '0.0001 in',
    limits: '2.975 to 3.000 in',
    note: 'Measured over the tips.',
  },
  ...more,
});

const field = (kind: FieldView['kind'], name: string, more: Partial<FieldView> = {}): FieldView => ({
  kind,
  name,
  id: `f-${name}`,
  label: `The ${name}`,
  value: '3 "<b>&',
  unit: '',
  hint: '',
  problem: '',
  inputmode: 'text',
  choices: [],
  ...more,
});

const choices = ['bites', 'skates'].map((value, i) => ({ value, says: `File ${value}`, hint: i ? 'hard' : '', chosen: i === 0 }));
const caution = (weight: 'note' | 'beware' | 'danger', word: string) => ({ name: word, says: 'Key out before power.', weight, word });
const cautions = [caution('danger', 'Danger'), caution('beware', 'Beware'), caution('note', 'Note'), caution('note', 'Note')];
const figures = [
  figure('od', {}),
  figure('wd', { mark: 'typed' }),
  figure('span', { mark: 'measured', working: null }),
  figure('feed', { was: '0.0094', revision: '1' }),
  figure('move', { text: '1 turn + 27 spaces on 33', unit: '', other: '', words: true }),
];
const KINDS: readonly StateKind[] = ['here', 'missing', 'spare', 'doubtful', 'waits', 'held', 'ready', 'done', 'old', 'off'];
const table: TableView = {
  title: 'The drawer',
  heads: [
    { says: 'Wheel', as: 'name' },
    { says: 'State', as: 'state' },
    { says: 'Outside', as: 'figure' },
  ],
  rows: KINDS.map((kind) => ({
    id: `w-${kind}`,
    cells: [
      { text: '22 teeth', unit: '', href: '/parts/1', state: null },
      { text: '', unit: '', href: '', state: { kind, says: kind } },
      { text: '3.0000', unit: 'in', href: '', state: null },
    ],
  })),
  empty: 'None.',
};
const back = { says: 'The machine', href: '/machines/1' };
const form: FormView = {
  id: 'gear',
  action: '/gears',
  method: 'post',
  hidden: [{ name: 'mark', value: 'a' }],
  problem: 'One field needs another look.',
  groups: [
    {
      legend: '',
      hint: '',
      folded: false,
      fields: [field('line', 'teeth', { problem: 'No whole number.', inputmode: 'numeric' }), field('line', 'od', { unit: 'in' })],
    },
    {
      legend: 'As tried',
      hint: 'By file.',
      folded: false,
      fields: [field('rows', 'file', { choices }), field('list', 'system', { choices, hint: 'As stamped.' })],
    },
    { legend: 'More', hint: '', folded: true, fields: [field('area', 'note'), field('ticks', 'web', { choices: choices.slice(0, 1) })] },
  ],
  act: 'Save',
  kind: 'main',
  confirm: 'Sure?',
  back,
};
const both = { name: 'teeth', value: '22', says: '22' };
export const titleBlock: readonly TitleCell[] = [
  { label: 'Machine', says: 'Halvorsen H-12', href: '/machines/1', state: null },
  { label: 'State', says: '', href: '', state: { kind: 'waits', says: 'waits for cutter No. 5' } },
  { label: 'Mark', says: 'H12-22T', href: '', state: null },
];

/** Every partial that stands on a page or sheet by itself, with every branch filled somewhere. */
export const samples: { readonly [K in Exclude<keyof Partials, 'partials/line-kinds' | 'partials/drawing'>]: Partials[K] } = {
  'partials/answer': { answer: { says: 'The 31 becomes the 22.', figures, cautions, tables: [table, { ...table, rows: [] }] } },
  'partials/at-machine': {
    at: {
      step: '3 of 9',
      name: 'Feed in',
      text: '0.5625',
      unit: 'in',
      words: false,
      limits: 'leave 0.015',
      says: 'Slowly.',
      caution: caution('danger', 'Danger'),
      earlier: back,
      later: back,
    },
  },
  'partials/back': { back },
  'partials/button': {
    button: { action: '/done', hidden: [{ name: 'mark', value: 'a' }], says: 'Mark done', kind: 'main', confirm: 'Sure?' },
  },
  'partials/cautions': { cautions },
  'partials/cautions-on-paper': { cautions },
  'partials/check-line': {},
  'partials/conflict': {
    action: '/gears',
    hidden: [],
    says: 'Changed meanwhile.',
    rows: [
      { name: 'teeth', label: 'Teeth', differs: true, stands: 'yours', yours: both, theirs: { ...both, value: '25', says: '25' } },
      { name: 'od', label: 'Outside', differs: false, stands: 'yours', yours: both, theirs: both },
    ],
    act: 'Keep these',
  },
  'partials/empty': { empty: { title: 'No machine yet', says: 'Start with one.', act: back, drawing: '' } },
  'partials/fields': { fields: [field('line', 'one')] },
  'partials/figures': { figures },
  'partials/figures-on-paper': { figures },
  'partials/form': { form },
  'partials/links': { links: [back] },
  'partials/notice': { notice: { kind: 'saved', says: 'Saved.', act: back } },
  'partials/pager': { pager: { says: '51 to 100 of 312', earlier: '/a', later: '/b' } },
  'partials/paper-block': {
    paper: {
      cells: titleBlock,
      mark: 'H12-22T',
      qr: '',
      address: 'http://shop.local:4870/',
      printedOn: '25 November 2026',
      sheetOf: '1 of 1',
    },
  },
  'partials/state': { state: { kind: 'held', says: 'held' } },
  'partials/table': { table },
  'partials/ticks': {
    ticks: { what: 'Tooth', where: 'Hole', tick: 'Cut', columns: [[{ what: '1', where: '0' }], [{ what: '2', where: '27' }]] },
  },
  'partials/title-block': { title: '22-tooth gear', titleBlock },
};

export const furniture: Furniture = {
  places: [
    { says: 'Today', href: '/' },
    { says: 'Sums', href: '/sums' },
  ],
  searchHref: '/search',
  searchText: '"><script>',
  styles: ['/assets/style.css'],
  script: '/assets/page.js',
  icon: '/assets/icon.svg',
  shopName: 'Home shop',
  version: '0.1.0',
  demo: true,
  demoOut: back,
  canChange: false,
  lookOnly: back,
  notice: { kind: 'problem', says: 'Not saved.', act: null },
};
