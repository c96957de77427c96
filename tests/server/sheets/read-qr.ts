/**
 * Reads a drawn QR code of versions 1 to 5, ecc L (one block, byte mode), by the standard's own rules and without error correction:
 * ISO/IEC 18004, data placement, masking and format information (value from memory; a wrong rule reads nonsense, never the address).
 */
const CELL = 10;
const BORDER = 2;

function modulesIn(svg: string): boolean[][] {
  const size = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]) / CELL - 2 * BORDER;
  const modules = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [, x, y] of svg.matchAll(/M(\d+),(\d+)h/g)) {
    const row = modules[Number(y) / CELL - BORDER];
    if (row) row[Number(x) / CELL - BORDER] = true;
  }
  return modules;
}

const MASKS: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];

/** Finders with their format strips, timing lines, and from version 2 on the one alignment mark. */
function isData(x: number, y: number, size: number): boolean {
  if ((x < 9 && y < 9) || (x >= size - 8 && y < 9) || (x < 9 && y >= size - 8)) return false;
  if (x === 6 || y === 6) return false;
  const mark = size - 7;
  return size === 21 || Math.abs(x - mark) > 2 || Math.abs(y - mark) > 2;
}

/** Two columns at a time from the right, up and down in turn; the timing column is passed over. */
function bitsOf(modules: readonly (readonly boolean[])[], mask: number): number[] {
  const size = modules.length;
  const bits: number[] = [];
  let up = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step++) {
      const y = up ? size - 1 - step : step;
      for (const x of [right, right - 1])
        if (isData(x, y, size)) bits.push(Number((modules[y]?.[x] ?? false) !== (MASKS[mask]?.(x, y) ?? false)));
    }
    up = !up;
  }
  return bits;
}

/** The five bits of format information beside the first finder: two of error correction, three of the mask. */
function formatOf(modules: readonly (readonly boolean[])[]): { ecc: number; mask: number } {
  const read = [0, 1, 2, 3, 4].map((x) => Number(modules[8]?.[x] ?? false));
  const word = Number.parseInt(read.join(''), 2) ^ 0b10101;
  return { ecc: word >> 3, mask: word & 0b111 };
}

export function readQr(svg: string): string {
  const modules = modulesIn(svg);
  const { ecc, mask } = formatOf(modules);
  if (ecc !== 0b01 || modules.length > 37) throw new Error(`a QR code of ${modules.length} modules, ecc ${ecc}, is not read here`);
  const bits = bitsOf(modules, mask);
  const number = (from: number, count: number): number => Number.parseInt(bits.slice(from, from + count).join(''), 2);
  if (number(0, 4) !== 0b0100) throw new Error('not in byte mode');
  const bytes = Array.from({ length: number(4, 8) }, (_, at) => number(12 + at * 8, 8));
  return new TextDecoder().decode(new Uint8Array(bytes));
}
