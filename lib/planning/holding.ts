import { DomainError } from '../figure/domain-error.ts';
import { printCount } from '../values/print.ts';
import { byId } from './order.ts';
import { allBefore, statesOf } from './states.ts';
import type { OperationState, WorkOperation } from './work.ts';

/** ratios: how many the machine has today and would have with this part made; null where it is no change wheel. */
export type HoldAsked = {
  readonly hold: number;
  readonly heldFor: number;
  readonly operations: readonly WorkOperation[];
  readonly ratios?: { readonly today: number; readonly withIt: number } | null;
};

/** delays: whether holding keeps this work waiting longer than it would. choices: both, in a sentence each; the owner chooses. */
export type Holding = { readonly delays: boolean; readonly why: string; readonly choices: { readonly now: string; readonly hold: string } };

type All = ReadonlyMap<number, WorkOperation>;

function both(hold: number, heldFor: number, all: All): readonly [WorkOperation, WorkOperation] {
  const [one, other] = [all.get(hold), all.get(heldFor)];
  if (!one || !other) throw new RangeError(`no operation ${one ? heldFor : hold}`);
  if (hold !== heldFor && !allBefore(heldFor, all).has(hold)) return [one, other];
  throw new DomainError({
    given: `“${other.title}” of ${other.partName} itself waits for “${one.title}” of ${one.partName}.`,
    limit: 'Two operations cannot be kept back for each other.',
    tryThis: 'Hold the other one, or neither.',
    about: ['heldFor'],
  });
}

const toolsOf = ({ waits }: OperationState): readonly string[] => waits.filter((wait) => wait.for === 'tool').map(({ says }) => says);

/** What the other waits for, from outside the two routings, that this one does not. */
const more = (one: OperationState, other: OperationState): readonly string[] => {
  const own = toolsOf(one);
  return toolsOf(other).filter((says) => !own.includes(says));
};

const listed = (words: readonly string[]): string => words.join(' and ');

function reason(one: WorkOperation, other: WorkOperation, lacking: readonly string[], together: readonly string[]): string {
  if (lacking.length > 0) {
    const first = together.length === 0 ? '' : ` Both wait for ${listed(together)} first.`;
    return `Yes: ${other.partName} waits for ${listed(lacking)} as well, and ${one.partName} does not.${first}`;
  }
  if (together.length > 0) return `No: both wait for ${listed(together)}, and for nothing else.`;
  return 'No: neither waits for a tool.';
}

type States = ReadonlyMap<number, OperationState>;

/** The state of all work while this operation is held for nothing. */
const statesWithout = (hold: number, operations: readonly WorkOperation[]): States =>
  new Map(statesOf(operations.map((each) => (each.id === hold ? { ...each, heldFor: null } : each))).map((state) => [state.id, state]));

function holding([one, other]: readonly [WorkOperation, WorkOperation], states: States, ratios: HoldAsked['ratios']): Holding {
  const [mine, theirs] = [states.get(one.id), states.get(other.id)];
  if (!mine || !theirs) throw new RangeError('an operation without a state');
  const lacking = more(mine, theirs);
  const own = toolsOf(mine).filter((says) => toolsOf(theirs).includes(says));
  const gain = ratios ? `: ratios ${printCount(ratios.today)} to ${printCount(ratios.withIt)}` : '';
  const until = lacking.length > 0 ? `hold it for ${listed(lacking)}` : `hold it for ${other.partName}`;
  return {
    delays: lacking.length > 0,
    why: reason(one, other, lacking, own),
    choices: {
      now: `Do ${one.title} (${one.partName}) now${gain}${gain === '' ? ':' : ','} one more setting-up.`,
      hold: `Or ${until}, and do both in one setting-up.`,
    },
  };
}

/**
 * Would keeping an operation back for another, so that both share one setting-up, delay anything? Asked of one operation and any of the
 * others that it could be held for; how things stand is worked out once. asItStands: the state of all work, where it is known already. Throws DomainError where the other waits for it.
 */
export function holdingFor({ hold, operations, ratios }: Omit<HoldAsked, 'heldFor'>, asItStands?: States): (heldFor: number) => Holding {
  const all = byId(operations);
  let states = (all.get(hold)?.heldFor ?? null) === null ? asItStands : undefined;
  return (heldFor) => {
    const pair = both(hold, heldFor, all);
    states ??= statesWithout(hold, operations);
    return holding(pair, states, ratios);
  };
}

/** The same for one of them. */
export const holdingDelays = (asked: HoldAsked): Holding => holdingFor(asked)(asked.heldFor);
