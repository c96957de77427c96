import { PITCH_UNKNOWN } from '../../db/gears.ts';
import type { ItemLine } from '../../db/items.ts';
import type { PartLine } from '../../db/parts.ts';
import { remembered } from '../../db/remembered.ts';
import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import type { SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import { type PegWheel, setDrawing } from '../../lib/drawing/set-drawing.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import { to } from '../addresses.ts';
import { cell, counted, heads, linkCell, stateCell } from '../cells.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import { toSvg } from '../drawing/svg.ts';
import { partState } from '../machines/machine-view.ts';
import type { DrawingView, Markup, RowView, StateView, TableView } from '../page.ts';
import { type Bench, isMissing, neverMeasured, type Place, type Wheel } from './bench.ts';
import type { SetChoice } from './choice.ts';
import { promisedIn } from './choice.ts';

const fittedIn = ({ drawer }: Bench, place: Place): Wheel | undefined => drawer.find(({ item }) => item.id === place.item_id);
const isOver = ({ item }: Wheel): boolean => item.state === 'spare' || item.state === 'promised';

/** What a wheel that is over is to become: by promise, or as proposed. */
function becomesOf(bench: Bench, { choice }: SetChoice, { item }: Wheel): PegWheel['gear'] | null {
  const promised = promisedIn(bench).find(({ wheel }) => wheel.item.id === item.id);
  return promised?.place.gear ?? choice?.chosen.find(({ spare }) => spare.id === item.id)?.wanted.gear ?? null;
}

const doubtful = ({ spare }: Wheel): boolean => spare.gear.bore === null || !spare.gear.body.known;

function pegOf(bench: Bench, place: Place): PegWheel {
  const fitted = fittedIn(bench, place);
  if (fitted) return { gear: fitted.spare.gear, state: 'here', doubtful: doubtful(fitted) };
  if (!isMissing(place)) return { gear: place.gear, state: 'here', doubtful: false };
  return { gear: place.gear, state: place.routing_id === null ? 'missing' : 'waits', doubtful: false };
}

const DESK_PX = 1000;

type TwoWidths = { readonly phone: DrawingView; readonly desk: DrawingView };
const keptDrawings = remembered<TwoWidths>();

function hung(pegs: readonly PegWheel[], name: string): TwoWidths {
  const desk = setDrawing(pegs, { name, perRow: 12, shown: { px: DESK_PX } });
  return {
    phone: drawingView(setDrawing(pegs, { name, perRow: 5 })),
    desk: { title: desk.title, says: '', links: [], svg: toSvg(desk, { widthPx: DESK_PX }) as Markup },
  };
}

/** Every wheel of the set to one scale: what belongs in its order, then what is over. Once for a phone, once for a desk. */
export function wheelsDrawings(bench: Bench, choice: SetChoice): TwoWidths {
  const over = bench.drawer.filter(isOver).map((wheel): PegWheel => {
    const becomes = becomesOf(bench, choice, wheel);
    return { gear: wheel.spare.gear, state: 'spare', doubtful: doubtful(wheel), ...(becomes ? { becomes } : {}) };
  });
  const pegs = [...bench.places.map((place) => pegOf(bench, place)), ...over];
  return keptDrawings(JSON.stringify([bench.set.name, pegs]), () => hung(pegs, bench.set.name));
}

const toMeasure = (wheel: Wheel | undefined): string[] => {
  const lacking = wheel ? neverMeasured(wheel.spare) : [];
  return lacking.length === 0 ? [] : [`to be measured: ${lacking.join(', ')}`];
};

const HARD: Readonly<Record<SpareWheel['hardness'], string>> = {
  'file bites': '',
  'not tried': '',
  'case hard': 'case-hardened',
  'hard through': 'hard right through',
};

/** What to mind of a wheel that lies there: hard metal, worn or broken teeth, a worn bore, and what nobody has measured. */
function toMind(wheel: Wheel | undefined): string[] {
  if (!wheel) return [];
  const { hardness, condition } = wheel.spare;
  const bad = (['teeth', 'bore'] as const).filter((what) => condition[what] === 'worn' || condition[what] === 'broken');
  return [...(HARD[hardness] === '' ? [] : [HARD[hardness]]), ...bad.map((what) => `${what} ${condition[what]}`), ...toMeasure(wheel)];
}

function placeRow(bench: Bench, place: Place): RowView {
  const fitted = fittedIn(bench, place);
  return {
    id: `place-${place.id}`,
    cells: [
      linkCell(`${place.gear.teeth} teeth`, to.part(place.id)),
      stateCell(partState(place)),
      cell(place.mark),
      place.item_id === null ? cell('not there') : linkCell(`no. ${place.item_id}`, to.item(place.item_id)),
      cell(['belongs', ...toMind(fitted), ...(place.blank_fails ? [`choose the blank anew: ${place.blank_fails}`] : [])].join('; ')),
    ],
  };
}

function overState(wheel: Wheel): StateView {
  if (wheel.item.state === 'promised') return { kind: 'waits', says: 'promised' };
  return doubtful(wheel) ? { kind: 'doubtful', says: 'spare, not all measured' } : { kind: 'spare', says: 'spare' };
}

function overRow(bench: Bench, choice: SetChoice, wheel: Wheel): RowView {
  const { item, spare } = wheel;
  const becomes = becomesOf(bench, choice, wheel);
  const proposed = item.state === 'promised' ? 'promised for' : 'proposed for';
  return {
    id: `item-${item.id}`,
    cells: [
      linkCell(`${spare.gear.teeth} teeth`, to.item(item.id)),
      stateCell(overState(wheel)),
      cell('no mark'),
      cell(`no. ${item.id}`),
      cell([becomes ? `${proposed} the ${becomes.teeth}` : 'over', ...toMind(wheel)].join('; ')),
    ],
  };
}

const IDENTIFY = `${PITCH_UNKNOWN}: identify it first`;

/** A place of unknown pitch: it belongs, and that is all that is known of it. */
const unknownPlaceRow = (place: PartLine): RowView => ({
  id: `place-${place.id}`,
  cells: [
    linkCell(`${place.unknown?.gear.teeth ?? ''} teeth`, to.part(place.id)),
    stateCell(partState(place)),
    cell(place.mark),
    place.item_id === null ? cell('not there') : linkCell(`no. ${place.item_id}`, to.item(place.item_id)),
    cell(`belongs; ${IDENTIFY}`),
  ],
});

const unknownOver = ({ unknown }: Bench): readonly ItemLine[] =>
  unknown.drawer.filter(({ state }) => state === 'spare' || state === 'promised');

const unknownOverRow = (line: ItemLine): RowView => ({
  id: `item-${line.id}`,
  cells: [
    linkCell(`${line.unknown?.gear.teeth ?? ''} teeth`, to.item(line.id)),
    stateCell({ kind: 'doubtful', says: 'spare, pitch not known' }),
    cell('no mark'),
    cell(`no. ${line.id}`),
    cell(`over; ${IDENTIFY}`),
  ],
});

/** The same in a table. */
export const wheelsTable = (bench: Bench, choice: SetChoice): TableView => ({
  title: '',
  heads: heads(['Wheel', 'name'], ['State', 'state'], ['Mark', 'words'], ['Lies as', 'words'], ['In the set', 'words']),
  rows: [
    ...bench.places.map((place) => placeRow(bench, place)),
    ...bench.unknown.places.map(unknownPlaceRow),
    ...bench.drawer.filter(isOver).map((wheel) => overRow(bench, choice, wheel)),
    ...unknownOver(bench).map(unknownOverRow),
  ],
  empty: 'No wheel is on record yet.',
});

const listOf = (counts: readonly number[]): string => (counts.length === 0 ? 'none' : printDrawer(counts).replaceAll('x', ' × '));

/** Wheels of unknown pitch are neither drawn nor reckoned with: that is said wherever the set is summed up. */
function unknownWords(bench: Bench): string {
  const counts = [
    ...bench.unknown.places.flatMap(({ unknown, item_id }) => (unknown && item_id === null ? [unknown.gear.teeth] : [])),
    ...unknownOver(bench).flatMap(({ unknown }) => (unknown ? [unknown.gear.teeth] : [])),
  ];
  if (counts.length === 0) return '';
  return ` Pitch not known yet: ${listOf(counts)}. Nothing below is reckoned with ${counts.length === 1 ? 'it' : 'them'}: identify ${counts.length === 1 ? 'it' : 'them'} first.`;
}

/** Missing wheels that nothing is chosen for below, since no routing could be opened. */
function helicalWords({ places }: Bench): string {
  const counts = places.filter((place) => place.gear.helix && isMissing(place)).map(({ gear }) => gear.teeth);
  if (counts.length === 0) return '';
  return ` Helical: ${listOf(counts)}. No routing is worked out for helical teeth, and no blank is chosen below: sizes and milling stand on the page of the part.`;
}

/** The set in a few words: what is there, what is missing, what is over. */
export function wheelsWords(bench: Bench): string {
  const { places, drawer } = bench;
  const missing = places.filter(isMissing).map(({ gear }) => gear.teeth);
  const spares = drawer.filter(({ item }) => item.state === 'spare').map(({ spare }) => spare.gear.teeth);
  const there = places.length - missing.length;
  return `${counted(drawer.length + bench.unknown.drawer.length, 'gear')} in the drawer. Of ${places.length + bench.unknown.places.length} that belong ${there + bench.unknown.places.filter((place) => !isMissing(place)).length} are there. Missing: ${listOf(missing)}. Spare: ${listOf(spares)}.${unknownWords(bench)}${helicalWords(bench)}`;
}

/** "8 DP, 14½° full involute". */
export function toothWords({ places }: Bench): string {
  const gear = places[0]?.gear;
  return gear ? `${printPitch(gear.pitch)}, ${gear.system.name}` : 'not said';
}
