/** How many wheels there are of each number. */
export function countOfEach(wheels: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const teeth of wheels) counts.set(teeth, (counts.get(teeth) ?? 0) + 1);
  return counts;
}

/** The wheels of the first list that are left when each wheel of the second takes a like one away, lowest first. */
export function lessWheels(wheels: readonly number[], taken: readonly number[]): number[] {
  const left = countOfEach(taken);
  return sortedWheels(wheels).filter((teeth) => {
    const toTake = left.get(teeth) ?? 0;
    if (toTake > 0) left.set(teeth, toTake - 1);
    return toTake === 0;
  });
}

export const sortedWheels = (wheels: readonly number[]): number[] => [...wheels].sort((a, b) => a - b);

/** One wheel of each number that belongs and of which any lies in the drawer. */
export function oneOfEachThere(belongs: readonly number[], drawer: readonly number[]): number[] {
  const there = new Set(drawer);
  return sortedWheels([...new Set(belongs)].filter((teeth) => there.has(teeth)));
}
