import { arrangementsOf, type NotPlaced, type PlaceAsked, type Placed, place } from './arrangements.ts';
import { type NearRatio, nearestTrains, type Train, type WheelsInTrain } from './nearest.ts';
import { goesUnder } from './reach.ts';
import { compareNearness, type Target } from './target.ts';
import { stands } from './train-words.ts';
import { countOfEach } from './wheel-lists.ts';

/** A train that could be set up. changes: wheels to put on that do not stand there now. */
export type Ranked = {
  readonly train: Train;
  readonly near: NearRatio;
  readonly changes: number;
  /** null where no quadrant has been measured. */
  readonly placed: Placed | NotPlaced | null;
};

export type BestAsked = {
  readonly wheels: readonly number[];
  readonly target: Target;
  /** Two, four or six wheels at most. */
  readonly upTo: WheelsInTrain;
  readonly mounted?: Train;
  readonly quadrant?: Omit<PlaceAsked, 'drawer'>;
  /** How many trains to hand back. */
  readonly many?: number;
};

const USUAL = 12;
/** Trains of equal error and equal changes of which the reach is tried, so that one request stays short. */
const MOST_TRIED = 200;
const MOST_TRIES = 600;
const MOST_FOR_ONE = 120;
/** So many are looked through where none of the first few stands on the quadrant. */
const MOST_LOOKED_THROUGH = 60;

/**
 * The trains to choose from: least error in the work first, then fewest wheels to change, then those that reach. When the error is linear
 * in the ratio (a pitch, a feed, the drift across a face) the nearest ratio is the least error. Where none of them stands on the
 * quadrant, for wheels too wide for its cover, the last place is given to the nearest found that does.
 * Source: derived: TRADE "lead, ratio". Errors as in nearestTrains and reachOf.
 */
export function bestTrains(asked: BestAsked): Ranked[] {
  const { many = USUAL, quadrant } = asked;
  const rows = rowsOf(asked);
  const instead = quadrant && rows.length === many && !rows.some(stands) ? nearestStanding(asked, quadrant) : undefined;
  return instead ? [...rows.slice(0, many - 1), instead] : rows;
}

/** Of wheels that all go under the cover; undefined where all do, for those have been tried. */
function nearestStanding(asked: BestAsked, { quadrant, sizes }: Omit<PlaceAsked, 'drawer'>): Ranked | undefined {
  const wheels = asked.wheels.filter((teeth) => goesUnder(teeth, quadrant, sizes));
  if (wheels.length === asked.wheels.length) return undefined;
  return rowsOf({ ...asked, wheels, many: MOST_LOOKED_THROUGH }).find(stands);
}

function rowsOf(asked: BestAsked): Ranked[] {
  const { target, many = USUAL } = asked;
  const ratios = nearOf(asked);
  const rows: Ranked[] = [];
  const tries = { left: MOST_TRIES };
  for (const group of byNearness(ratios, target)) {
    const alike = group.flatMap((near) => near.trains.map((train) => ({ train, near, changes: changesFor(train, asked.mounted) })));
    alike.sort((a, b) => a.changes - b.changes || sizeOf(a.train) - sizeOf(b.train));
    rows.push(...reached(alike, asked, many - rows.length, tries));
    if (rows.length >= many) break;
  }
  return rows.slice(0, many);
}

const sizeOf = ({ drivers, driven }: Train): number => drivers.length + driven.length;

function nearOf({ wheels, target, upTo, many = USUAL }: BestAsked): NearRatio[] {
  const sizes = ([2, 4, 6] as const).filter((size) => size <= upTo);
  return sizes.flatMap((wheelsInTrain) => nearestTrains({ wheels, target, wheelsInTrain, ratios: many }));
}

/** Ratios that are equally near stand together, whatever the number of wheels. */
function byNearness(ratios: readonly NearRatio[], target: Target): NearRatio[][] {
  const rising = [...ratios].sort((a, b) => compareNearness(a.ratio, b.ratio, target));
  const groups: NearRatio[][] = [];
  for (const one of rising) {
    const last = groups.at(-1);
    if (last?.[0] && compareNearness(last[0].ratio, one.ratio, target) === 0) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** Wheels of the train that are not on the machine in the same part. */
export function changesFor({ drivers, driven }: Train, mounted?: Train): number {
  const left = (list: readonly number[], on: readonly number[]): number => {
    const there = countOfEach(on);
    return list.filter((teeth) => {
      const many = there.get(teeth) ?? 0;
      if (many > 0) there.set(teeth, many - 1);
      return many === 0;
    }).length;
  };
  return left(drivers, mounted?.drivers ?? []) + left(driven, mounted?.driven ?? []);
}

type Unplaced = Omit<Ranked, 'placed'>;

/** Equally near ones in their order; among those with equally many changes, the ones that reach come first. */
function reached(alike: readonly Unplaced[], asked: BestAsked, wanted: number, tries: { left: number }): Ranked[] {
  if (!asked.quadrant) return alike.slice(0, wanted).map((one) => ({ ...one, placed: null }));
  const tried = alike.slice(0, MOST_TRIED).map((one) => ({ ...one, placed: placeTrain(one.train, asked, tries) }));
  return tried
    .sort((a, b) => a.changes - b.changes || Number('why' in (a.placed ?? {})) - Number('why' in (b.placed ?? {})))
    .slice(0, wanted);
}

/** The first arrangement of a train that can be set up: as it is if any can, else with idlers; or why the first cannot. */
function placeTrain(train: Train, { quadrant, wheels }: BestAsked, all: { left: number }): Placed | NotPlaced | null {
  if (!quadrant) return null;
  const tries = { left: Math.min(all.left, MOST_FOR_ONE) };
  const given = tries.left;
  let why = '';
  for (const bare of [true, false])
    for (const arrangement of arrangementsOf(train)) {
      const found = place(arrangement, { ...quadrant, drawer: wheels, tries, bare });
      if ('shafts' in found) return spent(found, all, given - tries.left);
      why ||= found.why;
    }
  return spent({ why }, all, given - tries.left);
}

function spent<T>(found: T, all: { left: number }, tries: number): T {
  all.left -= Math.max(0, tries);
  return found;
}
