import type { LikeGroup } from './choice.ts';
import type { Condition, SpareWheel } from './spare-wheel.ts';

/** doubt: why it may not be what it seems (pitch not known, count not sure), or null. */
export type DrawerWheel = SpareWheel & { readonly doubt: string | null };

/** fill: the wheel that stands for each belonging count. missing, spare and doubtful as the trade means them. */
export type Drawer = {
  readonly present: readonly { readonly teeth: number; readonly wheel: DrawerWheel }[];
  readonly missing: readonly number[];
  readonly spare: readonly DrawerWheel[];
  readonly doubtful: readonly DrawerWheel[];
  readonly likes: readonly LikeGroup[];
};

const TEETH: Readonly<Record<Condition, number>> = { good: 0, 'not looked at': 1, worn: 2, broken: 3 };
const TRUST = { original: 0, unknown: 1, replacement: 2 } as const;

/** Keep first: the original, then the best teeth; of two alike the one with the bad bore, since it is no blank. */
function keepFirst(one: SpareWheel, other: SpareWheel): number {
  const bore = (wheel: SpareWheel) => -TEETH[wheel.condition.bore];
  return (
    TRUST[one.trust] - TRUST[other.trust] ||
    TEETH[one.condition.teeth] - TEETH[other.condition.teeth] ||
    bore(one) - bore(other) ||
    one.id - other.id
  );
}

const sound = (wheel: DrawerWheel): boolean => wheel.doubt === null && wheel.condition.teeth !== 'broken';

type Sorted = { readonly kept: DrawerWheel[]; readonly over: DrawerWheel[]; readonly likes: LikeGroup[] };

/** The wheels of one count: as many as belong are kept, the rest are spare; a broken one stands for nothing. */
function sortCount(wheels: readonly DrawerWheel[], belong: number): Sorted {
  const good = wheels.filter(sound).sort(keepFirst);
  const broken = wheels.filter((wheel) => wheel.doubt === null && !sound(wheel));
  const kept = good.slice(0, belong);
  const group = { wheels: good, mayCut: good.length - kept.length };
  const likes = [...(group.mayCut > 0 ? [group] : []), ...broken.map((wheel) => ({ wheels: [wheel], mayCut: 1 }))];
  return { kept, over: [...good.slice(belong), ...broken], likes };
}

/**
 * What is there, what is missing, what is over. belongs: the counts of the whole set, like ones repeated. A doubtful wheel stands for
 * nothing until the doubt is cleared, and is no blank either.
 */
export function drawerOf(belongs: readonly number[], wheels: readonly DrawerWheel[]): Drawer {
  const counts = [...new Set([...belongs, ...wheels.map(({ gear }) => gear.teeth)])].sort((a, b) => a - b);
  const sorted = counts.map((teeth) => {
    const belong = belongs.filter((count) => count === teeth).length;
    return {
      teeth,
      belong,
      ...sortCount(
        wheels.filter(({ gear }) => gear.teeth === teeth),
        belong,
      ),
    };
  });
  return {
    present: sorted.flatMap(({ teeth, kept }) => kept.map((wheel) => ({ teeth, wheel }))),
    missing: sorted.flatMap(({ teeth, belong, kept }) => Array.from({ length: belong - kept.length }, () => teeth)),
    spare: sorted.flatMap(({ over }) => over),
    doubtful: wheels.filter(({ doubt }) => doubt !== null),
    likes: sorted.flatMap(({ likes }) => likes),
  };
}
