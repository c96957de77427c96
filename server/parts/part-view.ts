import { remembered } from '../../db/remembered.ts';
import { wheelName } from '../../db/spares/spare-of.ts';
import { judgeSpare, makes } from '../../lib/blanks/spare-test.ts';
import type { WayOffered } from '../../lib/blanks/ways.ts';
import type { LineKind } from '../../lib/drawing/drawing.ts';
import { gearDrawing, gearWords } from '../../lib/drawing/gear-drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { chosenCutter } from '../../lib/routing/chosen.ts';
import type { Way } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import { cautionView, figureView } from '../figures.ts';
import type { Problems, Typed } from '../forms/form.ts';
import { assemblyPath } from '../machines/forms.ts';
import { machineName } from '../machines/list-view.ts';
import { partState } from '../machines/machine-view.ts';
import type { DrawingView, LinkView, TableView } from '../page.ts';
import type { RoutingSection } from '../routings/view-model.ts';
import { recutOf, sparesTable } from '../sets/blanks-view.ts';
import type { PageData } from '../views.ts';
import { wheelFigures } from './figures-view.ts';
import { countedWords, identifyLinks, identifyView } from './identify-view.ts';
import { needsTable } from './needs-view.ts';
import { noRoutingSaid } from './no-routing.ts';
import type { PartData } from './part-data.ts';
import { barForms, buttonsOf, fitForm, ownWorkForm, promiseForms, wayForm } from './part-forms-view.ts';
import { linksOfSpline, sheetsFor } from './spline-links.ts';
import { sumsOfPart } from './sums-of-part.ts';
import type { FigureGroup } from './view-model.ts';
import { bestRing, waysOffered, waysTable } from './ways-view.ts';

export type PartShown = {
  readonly data: PartData;
  readonly routing: RoutingSection | null;
  readonly problem: string;
  readonly way: { readonly typed: Typed; readonly problems: Problems };
  readonly bar: { readonly typed: Typed; readonly problems: Problems };
  readonly reading: { readonly typed: Typed; readonly problems: Problems };
  readonly today: string;
  readonly trusted: boolean;
};

type PartPage = PageData<'parts/one'>;

/** What is said of a part on its way while nothing is promised to it: only what is cut from something waits for a blank. */
const UNDER_WAY: Readonly<Record<Way, string>> = {
  repair: 'Being repaired.',
  're-cut a spare': 'Being made; no spare is promised to it yet.',
  'make from stock': 'Being made; no stock is promised to it yet.',
  cast: 'Being cast.',
  buy: 'Being bought.',
  swap: 'Being swapped for.',
  'do without': 'Done without.',
};

/** One sentence: where it stands. */
function saysOf({ part, fitted, promised, way }: PartData): string {
  if (fitted) return `In its place: ${wheelName(fitted)}.`;
  if (promised.length > 0) return `Being made from ${promised.map(wheelName).join(' and ')}.`;
  if (way !== null) return UNDER_WAY[way];
  return part.way === 'do without' ? 'Missing, and done without.' : 'Missing.';
}

const keptDrawings = remembered<DrawingView>();

const KIND: Readonly<Record<string, LineKind>> = { here: 'here', waits: 'here', missing: 'missing' };

/** A wheel to be made is drawn with the space of the cutter that its plan goes by; one in its place, or without a cutter, with its own. */
const formFor = ({ fitted, shop }: PartData, gear: Gear): number =>
  fitted || gear.helix ? gear.teeth : (chosenCutter(gear, shop).right?.error.exact.count ?? gear.teeth);

function drawingOf(data: PartData, gear: Gear | undefined): PartPage['drawing'] {
  if (!gear) return null;
  const unit = unitOfPitch(gear.pitch);
  const { part } = data;
  const kind = KIND[partState(part).kind] ?? 'here';
  const cutterFor = formFor(data, gear);
  const title = `${part.mark}: ${gear.teeth} teeth`;
  const form = { unit, places: unit === 'in' ? 3 : 2 };
  return keptDrawings(JSON.stringify([title, kind, gear, cutterFor]), () =>
    drawingView(gearDrawing(gear, { form, kind, title, cutterFor })),
  );
}

/** The promised spare with the wheel inside it; nothing where its readings make no sense any more. */
function promisedBlank({ part, promisedWheel, shop }: PartData, gear: Gear | undefined): PartPage['blank'] {
  if (!gear || !promisedWheel || part.blank_fails) return null;
  const { spare, item } = promisedWheel;
  try {
    const judged = judgeSpare({ wanted: gear, spare, cleanUp: shop.cleanUp });
    if (!makes(judged.verdict)) return null;
    const { drawing, figures, cautions } = recutOf(
      { wanted: { id: part.id, name: part.name, gear }, spare, judged },
      shop.cleanUp,
      'recut',
    );
    const title = `From the ${spare.gear.teeth}`;
    return {
      title,
      says: `${wheelName(item)}: ${judged.says}`,
      drawing,
      group: { id: 'recut', title, says: '', figures, cautions, folded: false },
    };
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

function ringGroup(gear: Gear, offered: readonly WayOffered[], data: PartData): FigureGroup[] {
  const ring = bestRing(gear, offered, data);
  if (!ring) return [];
  return [
    {
      id: 'ring',
      title: `Ring and hub, on ${ring.spare.name}`,
      says: ring.says,
      figures: Object.entries<Figure>(ring.answer.figures).map(([key, figure]) => figureView(`ring-${key}`, figure)),
      cautions: ring.answer.cautions.map(cautionView),
      folded: true,
    },
  ];
}

const TRUST = { original: 'original to its machine', replacement: 'a replacement', unknown: 'not known' } as const;

function factsOf({ part, set, assemblies, fitted }: PartData, gear: Gear | undefined): PartPage['facts'] {
  const named = [
    ['Assembly', assemblyPath(assemblies, part.assembly_id)],
    ['Change gears', set?.name ?? ''],
    ['Wheel', gear ? `${gearWords(gear)}, ${gear.system.name}` : countedWords(part)],
    ['Its pitch is known', part.stored?.foundBy ?? ''],
    ['Trust of the wheel in its place', gear && fitted ? TRUST[fitted.trust] : ''],
    ['Material', part.material],
  ] as const;
  return named.filter(([, says]) => says !== '').map(([label, says]) => ({ label, says }));
}

const madeTable = ({ made }: PartData): TableView => ({
  title: '',
  heads: heads(['Made on', 'name'], ['State', 'state'], ['Took', 'words']),
  rows: made.map((one) => ({
    id: `made-${one.id}`,
    cells: [
      linkCell(one.finished_on.slice(0, 10), to.made(one.id)),
      stateCell(one.outcome === 'good' ? { kind: 'done', says: 'good' } : { kind: 'off', says: 'scrap' }),
      cell(`${one.minutes} min`),
    ],
  })),
  empty: 'Not made here yet.',
});

const linksOf = ({ part, set, fitted, promised, project, shop, mates }: PartData, trusted: boolean): LinkView[] => [
  ...sheetsFor(mates, shop),
  ...linksOfSpline(part.stored?.gear.bore, shop),
  ...(set ? [{ says: `The whole set: ${set.name}`, href: to.set(set.id) }] : []),
  ...[...(fitted ? [fitted] : []), ...promised].map((one) => ({ says: `In the drawer: ${wheelName(one)}`, href: to.item(one.id) })),
  ...(trusted
    ? [
        {
          says: part.stored || part.unknown ? 'Change the wheel, its name or notes' : 'Change what is said of it',
          href: to.partEdit(part.id),
        },
      ]
    : []),
  ...(trusted && part.item_id === null && part.routing_id === null
    ? [{ says: 'It does not belong: take it off the list', href: to.partRemove(part.id) }]
    : []),
  ...(set ? [] : [{ says: machineName(project), href: to.machine(project.id) }]),
];

type ToBeMade = Pick<PartPage, 'promise' | 'together' | 'spares' | 'ways' | 'needs'> & { readonly ring: readonly FigureGroup[] };

/** What is shown while a wheel is missing and nothing is being made: ways, spares, needs, and how to promise a blank. */
function toBeMade({ data, trusted, bar: { typed, problems } }: PartShown, gear: Gear | undefined): ToBeMade {
  const nothing = { promise: [], together: null, spares: null, ways: null, needs: null, ring: [] };
  if (!isOpen(data) || data.part.unknown) return nothing;
  if (!gear) return { ...nothing, promise: trusted ? barForms(data, typed, problems) : [] };
  const offered = waysOffered(gear, data);
  const spares = data.spares.map(({ spare }) => spare);
  return {
    promise: trusted && !gear.helix ? promiseForms(offered, data) : [],
    together:
      data.set && !gear.helix
        ? { says: `All that is missing from ${data.set.name} is chosen for together there`, href: `${to.set(data.set.id)}#blanks` }
        : null,
    spares: sparesTable({ id: data.part.id, name: `the ${gear.teeth}`, gear }, spares, data.shop.cleanUp),
    ways: waysTable(offered),
    needs: needsTable(gear, data.shop),
    ring: ringGroup(gear, offered, data),
  };
}

const isOpen = ({ part }: PartData): boolean => part.item_id === null && part.routing_id === null;

function blockOf({ part, project }: PartData, gear: Gear | undefined): PartPage['titleBlock'] {
  const state = partState(part);
  return [
    { label: 'Machine', says: machineName(project), href: to.machine(project.id), state: null },
    { label: 'Part', says: gear ? gearWords(gear) : countedWords(part) || part.name, href: '', state: null },
    { label: 'State', says: state.says, href: '', state },
    { label: 'Mark', says: part.mark, href: '', state: null },
  ];
}

/** The place of one part, and all that is known of getting it. */
export function partView(shown: PartShown): PartPage {
  const { data, routing, problem, way, trusted } = shown;
  const { part, project, set } = data;
  const gear = part.stored?.gear;
  const { ring, ...making } = toBeMade(shown, gear);
  return {
    title: part.name,
    place: 'Machines',
    back: set ? { says: set.name, href: to.set(set.id) } : { says: machineName(project), href: to.machine(project.id) },
    titleBlock: blockOf(data, gear),
    says: saysOf(data),
    problem,
    identify: identifyView(shown),
    drawing: drawingOf(data, gear),
    routing,
    blank: promisedBlank(data, gear),
    ...making,
    own: trusted && isOpen(data) ? ownWorkForm(data) : null,
    ...(isOpen(data) && !making.promise.length ? noRoutingSaid(data) : { noRouting: '', noRoutingLinks: [] }),
    wayForm: trusted && part.item_id === null ? wayForm(data, way.typed, way.problems) : null,
    wayWords: part.way === null ? '' : [`Chosen: ${part.way}.`, trusted ? part.why : ''].filter((words) => words !== '').join(' '),
    groups: [...(gear ? [...ring, ...wheelFigures(gear, data.shop, data.circle)] : []), ...sumsOfPart(part, data.shop)],
    facts: factsOf(data, gear),
    notes: trusted ? part.notes : '',
    made: madeTable(data),
    fit: trusted && isOpen(data) ? fitForm(data) : null,
    buttons: trusted ? buttonsOf(data) : [],
    links: [...(part.unknown ? [] : identifyLinks(shown)), ...linksOf(data, trusted)],
  };
}
