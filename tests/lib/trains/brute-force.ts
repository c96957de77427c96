/** A ratio as text in lowest terms, by whole-number Euclid on BigInt: shares nothing with the code under test. */
function lowestTerms(top: number, bottom: number): string {
  const [t, b] = [BigInt(top), BigInt(bottom)];
  let [x, y] = [t, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return `${t / x}/${b / x}`;
}

/** Every train of two and of four wheels, by places in the list, so that no wheel stands in a train twice. */
export function bruteRatios(wheels: readonly number[]): { simple: Set<string>; all: Set<string> } {
  const [simple, all] = [new Set<string>(), new Set<string>()];
  wheels.forEach((a, i) => {
    wheels.forEach((b, j) => {
      if (i === j) return;
      simple.add(lowestTerms(a, b));
      all.add(lowestTerms(a, b));
      wheels.forEach((c, k) => {
        if (k === i || k === j) return;
        wheels.forEach((d, l) => {
          if (l !== i && l !== j && l !== k) all.add(lowestTerms(a * b, c * d));
        });
      });
    });
  });
  return { simple, all };
}

export function bruteCount(wheels: readonly number[]): { simple: number; compound: number; distinct: number } {
  const { simple, all } = bruteRatios(wheels);
  return { simple: simple.size, compound: all.size - simple.size, distinct: all.size };
}
