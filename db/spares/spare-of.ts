import type { RootReading, SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import { type Length, nanometres } from '../../lib/values/length.ts';
import type { ItemLine } from '../items.ts';
import type { Reading } from '../readings.ts';
import { conditionOf } from './condition.ts';
import { READING_NAMES, type ReadingName } from './reading-names.ts';

/** The last reading under a name; null when there is none, or when it is no length. */
function last(readings: readonly Reading[], name: ReadingName): { readonly length: Length; readonly pin: Length | null } | null {
  const found = readings.filter((reading) => reading.what === name).at(-1);
  return found && 'length' in found.shown ? { length: found.shown.length, pin: found.pin_nm as Length | null } : null;
}

/**
 * The least wall. One reading without a place is the least of six as somebody worked it out; walls by place are the last one taken at
 * each place, and the least of those counts. The newer of the two ways stands.
 */
function leastWall(readings: readonly Reading[]): { readonly length: Length } | null {
  const walls = readings.filter((reading) => reading.what === READING_NAMES.wall);
  const newest = last(walls, READING_NAMES.wall);
  if (!newest || walls.at(-1)?.place_no === null) return newest;
  const byPlace = new Map(
    walls.flatMap((wall) => (wall.place_no !== null && 'length' in wall.shown ? [[wall.place_no, wall.shown.length]] : [])),
  );
  return { length: nanometres(Math.min(...byPlace.values())) };
}

/** The old root as measured, by the surest reading that was taken: wall, then pins, across, depth, and the outside alone. */
function rootReadingOf(readings: readonly Reading[]): RootReading | null {
  const [wall, bore, pins, across] = [
    leastWall(readings),
    last(readings, READING_NAMES.bore),
    last(readings, READING_NAMES.pins),
    last(readings, READING_NAMES.across),
  ];
  const [depth, jaws] = [last(readings, READING_NAMES.depth), last(readings, READING_NAMES.jaws)];
  if (wall && bore) return { by: 'wall', wall: wall.length, bore: bore.length };
  if (pins?.pin) return { by: 'pin', over: pins.length, pin: pins.pin };
  if (across) return { by: 'across roots', across: across.length };
  if (depth && jaws) return { by: 'depth', depth: depth.length, jaws: jaws.length };
  return jaws ? { by: 'jaws', jaws: jaws.length } : null;
}

/** What a wheel of the drawer is called: its own name, else its teeth and the number that its page and the list show. */
export function wheelName({ id, name, stored, unknown }: Pick<ItemLine, 'id' | 'name' | 'stored' | 'unknown'>): string {
  const wheel = stored ?? unknown;
  return name || (wheel ? `${wheel.gear.teeth}T, no. ${id}` : `no. ${id}`);
}

/** A wheel of the drawer as lib holds it against a wanted one; null when it has no teeth on record, or a pitch that nobody knows yet. */
export function spareOf(item: ItemLine, readings: readonly Reading[]): SpareWheel | null {
  if (!item.stored) return null;
  return {
    id: item.id,
    name: wheelName(item),
    gear: item.stored.gear,
    reading: rootReadingOf(readings),
    runOut: last(readings, READING_NAMES.runOut)?.length ?? null,
    trust: item.trust,
    condition: conditionOf(item.condition),
    material: item.material,
    hardness: item.hardness,
    caseDepth: last(readings, READING_NAMES.caseDepth)?.length ?? null,
  };
}
