import { DomainError } from '../figure/domain-error.ts';
import { bestChoice, type Score, scoreOf, type Table } from './best-choice.ts';
import type { Given } from './cheapest.ts';
import type { CleanUp } from './clean-up.ts';
import { metalOff } from './metal-off.ts';
import { type Judged, judgeSpare, makes } from './spare-test.ts';
import type { SpareWheel, Wanted } from './spare-wheel.ts';

/** Like wheels of the drawer, of which so many may be cut: what belongs stays. */
export type LikeGroup = { readonly wheels: readonly SpareWheel[]; readonly mayCut: number };
export type Pair = { readonly missing: number; readonly spare: number };

/** ratiosAfter: how many ratios there are once wheels of these tooth counts are made. forced: pairs that the owner insists on, by id. */
export type ChoiceAsked = {
  readonly missing: readonly Wanted[];
  readonly likes: readonly LikeGroup[];
  readonly ratiosAfter: (made: readonly number[]) => number;
  readonly forced?: readonly Pair[];
  readonly cleanUp?: CleanUp;
  readonly acceptNarrower?: boolean;
};

const RULES = [
  'most missing wheels made',
  'most ratios brought back',
  'fewest originals cut',
  'least metal removed',
  'best wheel kept',
] as const;
type Rule = (typeof RULES)[number];

export type Chosen = { readonly wanted: Wanted; readonly spare: SpareWheel; readonly judged: Judged };
/** breaks: the first rule that the forced pairs break against the free choice; null when none is forced, or when it is as good. */
export type BlankChoice = {
  readonly chosen: readonly Chosen[];
  readonly notMade: readonly Wanted[];
  readonly score: Score;
  readonly breaks: Rule | null;
  readonly says: string;
};

const MOST_MISSING = 20;
export const MOST_SPARES = 60;

/** Every spare may be cut: each a group of its own. */
export const allMayBeCut = (spares: readonly SpareWheel[]): LikeGroup[] => spares.map((spare) => ({ wheels: [spare], mayCut: 1 }));

type Bench = {
  readonly missing: readonly Wanted[];
  readonly spares: readonly SpareWheel[];
  readonly judged: readonly (readonly Judged[])[];
  readonly table: Table;
};

const byTeeth = (one: { id: number; gear: { teeth: number } }, other: { id: number; gear: { teeth: number } }): number =>
  one.gear.teeth - other.gear.teeth || one.id - other.id;

function refuseMany(missing: number, spares: number): void {
  if (missing <= MOST_MISSING && spares <= MOST_SPARES) return;
  throw new DomainError({
    given: `${missing} missing wheels and ${spares} spares.`,
    limit: `The choice is made exactly for up to ${MOST_MISSING} missing wheels and ${MOST_SPARES} spares.`,
    tryThis: 'Leave out what is not wanted now.',
    about: ['missing', 'spares'],
  });
}

/** Good teeth are kept, a bad bore is no blank: 0 for worn teeth on a good bore, 3 for good teeth on a bad bore. */
const lossOf = ({ condition }: SpareWheel): number =>
  (condition.teeth === 'worn' || condition.teeth === 'broken' ? 0 : 2) + (condition.bore === 'worn' || condition.bore === 'broken' ? 1 : 0);

function benchOf({ missing: asked, likes, ratiosAfter, cleanUp, acceptNarrower }: ChoiceAsked): Bench {
  const missing = [...asked].sort(byTeeth);
  const spares = likes.flatMap(({ wheels }) => wheels).sort(byTeeth);
  refuseMany(missing.length, spares.length);
  const extra = { cleanUp, ...(acceptNarrower === undefined ? {} : { acceptNarrower }) };
  const judged = missing.map(({ gear }) => spares.map((spare) => judgeSpare({ wanted: gear, spare, ...extra })));
  const table: Table = {
    able: judged.map((row) => row.map(({ verdict }) => makes(verdict))),
    metal: missing.map(({ gear }) => spares.map((spare) => metalOff(gear, spare.gear))),
    original: spares.map(({ trust }) => (trust === 'original' ? 1 : 0)),
    loss: spares.map(lossOf),
    group: spares.map((spare) => likes.findIndex(({ wheels }) => wheels.includes(spare))),
    mayCut: likes.map(({ mayCut }) => Math.max(0, mayCut)),
    ratios: (made) => ratiosAfter(made.map((row) => missing[row]?.gear.teeth ?? 0)),
  };
  return { missing, spares, judged, table };
}

/** The forced pairs as places in the table. Throws DomainError when a pair is not there or its spare does not serve. */
function forcedPairs({ missing, spares, judged, table }: Bench, forced: readonly Pair[]): Given[] {
  const cut = table.mayCut.map(() => 0);
  return forced.map((pair, at) => {
    const [row, wheel] = [missing.findIndex(({ id }) => id === pair.missing), spares.findIndex(({ id }) => id === pair.spare)];
    const twice = forced.findIndex((one) => one.missing === pair.missing || one.spare === pair.spare) < at;
    const found = judged[row]?.[wheel];
    const group = table.group[wheel] ?? 0;
    cut[group] = (cut[group] ?? 0) + 1;
    const kept = (cut[group] ?? 0) > (table.mayCut[group] ?? 0);
    if (found && makes(found.verdict) && !twice && !kept) return { row, wheel };
    const why = twice ? 'A wheel is cut from one spare, and a spare once.' : kept ? 'It belongs to the set and is kept.' : found?.says;
    throw new DomainError({
      given: `${spares[wheel]?.name ?? 'That spare'} for ${missing[row]?.name ?? 'that wheel'}.`,
      limit: why ?? 'No such pair is here.',
      tryThis: 'Choose another pair.',
      about: ['forced'],
    });
  });
}

/** The table without the forced rows and wheels; their likes may be cut so much less often. */
function without(table: Table, forced: readonly Given[]): Table {
  const gone = (row: number, wheel: number) => forced.some((pair) => pair.row === row || pair.wheel === wheel);
  return {
    ...table,
    able: table.able.map((cells, row) => cells.map((able, wheel) => able && !gone(row, wheel))),
    mayCut: table.mayCut.map((most, group) => most - forced.filter(({ wheel }) => table.group[wheel] === group).length),
    ratios: (made) => table.ratios([...made, ...forced.map(({ row }) => row)].sort((a, b) => a - b)),
  };
}

/** The first rule by which one score is worse than the best; null when it is as good. */
function firstBroken(best: Score, other: Score): Rule | null {
  if (other.made < best.made) return RULES[0];
  if (other.ratios < best.ratios) return RULES[1];
  if (other.originals > best.originals) return RULES[2];
  if (other.metal > best.metal) return RULES[3];
  return other.loss > best.loss ? RULES[4] : null;
}

const RULE_SAYS: Readonly<Record<Rule, (best: Score, other: Score) => string>> = {
  'most missing wheels made': (best, other) => `${other.made} made instead of ${best.made}`,
  'most ratios brought back': (best, other) => `${other.ratios} ratios instead of ${best.ratios}`,
  'fewest originals cut': (best, other) => `${other.originals} originals cut instead of ${best.originals}`,
  'least metal removed': () => 'more metal to remove',
  'best wheel kept': () => 'the better one of two like wheels is cut',
};

const pairWords = ({ wanted, spare }: Chosen): string => `${spare.gear.teeth} becomes ${wanted.gear.teeth}`;

function saysForced(bench: Bench, forced: readonly Given[], given: readonly Given[], free: readonly Given[], broken: string): string {
  const teeth = (list: readonly { gear: { teeth: number } }[], at: number) => list[at]?.gear.teeth ?? 0;
  const taken = forced.map(({ row, wheel }) => `${teeth(bench.spares, wheel)} for the ${teeth(bench.missing, row)}`).join(' and ');
  const isForced = (row: number) => forced.some((pair) => pair.row === row);
  const others = given.filter(({ row, wheel }) => !isForced(row) && !free.some((pair) => pair.row === row && pair.wheel === wheel));
  const forces = others.map(({ row, wheel }) => `the ${teeth(bench.spares, wheel)} into the ${teeth(bench.missing, row)}`);
  const lost = free
    .filter(({ row }) => !given.some((pair) => pair.row === row))
    .map(({ row }) => `leaves the ${teeth(bench.missing, row)} unmade`);
  const follows = [...(forces.length > 0 ? [`forces ${forces.join(' and ')}`] : []), ...lost].join(' and ');
  return `Taking ${taken}${follows ? ` ${follows}` : ''}: ${broken}.`;
}

function chosenOf(bench: Bench, given: readonly Given[]): Chosen[] {
  const inOrder = [...given].sort((a, b) => a.row - b.row);
  return inOrder.flatMap(({ row, wheel }) => {
    const [wanted, spare, judged] = [bench.missing[row], bench.spares[wheel], bench.judged[row]?.[wheel]];
    return wanted && spare && judged ? [{ wanted, spare, judged }] : [];
  });
}

/** A spare that only lacks a measurement is no spare that fails. */
const noneSays = ({ judged }: Bench): string =>
  judged.some((row) => row.some((one) => one.verdict === 'measure first'))
    ? 'No spare becomes any of them yet: measure those that are large enough.'
    : 'No spare becomes any of them.';

/**
 * Which spare becomes which missing wheel, over all of them at once and exactly, in this order: most missing wheels made; most ratios
 * brought back; fewest originals cut; least metal removed; among like wheels the best kept; then the lowest count and id. With forced
 * pairs, the best that is left, and the first rule that this breaks. Throws DomainError beyond 20 missing × 60 spares.
 */
export function chooseBlanks(asked: ChoiceAsked): BlankChoice {
  const bench = benchOf(asked);
  const free = bestChoice(bench.table);
  const forced = forcedPairs(bench, asked.forced ?? []);
  const rest = forced.length === 0 ? free : bestChoice(without(bench.table, forced));
  const given = forced.length === 0 ? free.given : [...forced, ...rest.given];
  const score = scoreOf(bench.table, given);
  const breaks = firstBroken(free.score, score);
  const chosen = chosenOf(bench, given);
  const notMade = bench.missing.filter((wanted) => !chosen.some((one) => one.wanted === wanted));
  const broken = breaks ? RULE_SAYS[breaks](free.score, score) : 'as good as any other choice';
  const plain = chosen.length === 0 ? noneSays(bench) : `${chosen.map(pairWords).join('; ')}.`;
  const says = forced.length === 0 ? plain : saysForced(bench, forced, given, free.given, broken);
  return { chosen, notMade, score, breaks, says };
}
