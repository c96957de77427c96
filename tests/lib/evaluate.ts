import { create, all as everything } from 'mathjs';
import type { Figure, Value } from '../../lib/figure/figure.ts';
import { printFigure, printValue } from '../../lib/figure/print-value.ts';
import { MAS_PER_DEGREE } from '../../lib/values/angle.ts';
import { type LengthUnit, NM_PER_INCH, NM_PER_MM } from '../../lib/values/length.ts';

const math = create(everything ?? {}, {});
const FUNCTIONS = {
  inv: (a: number) => Math.tan(a) - a,
  acos: Math.acos,
  asin: Math.asin,
  atan: Math.atan,
};

/** A printed number with half a unit of its last place: what the reader can know of the true figure. */
type Shown = { readonly x: number; readonly half: number };

/** A calculator takes no comma at the thousands, and no true minus. */
const plainMinus = (text: string): string => text.replaceAll('−', '-').replace(/(\d),(?=\d{3})/g, '$1');

function shown(value: Value, text: string): Shown | null {
  if ('move' in value) return { x: value.move.turns + value.move.spaces / value.move.circle, half: 0 };
  if ('dial' in value) return { x: value.dial.turns + value.dial.divisions / value.dial.perTurn, half: 0.05 / value.dial.perTurn };
  if ('words' in value) return null;
  if ('ratio' in value) return { x: value.ratio[0] / value.ratio[1], half: 0 };
  const time = /^(\d+) h(?: (\d+) min)?$/.exec(text);
  if (time) return { x: Number(time[1]) * 60 + Number(time[2] ?? 0), half: 0.5 };
  const places = /\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
  const x = Number(plainMinus(text));
  return { x, half: 'count' in value ? 0 : 0.5 / 10 ** places };
}

/** Whether the print lost nothing: then the reader knows the figure itself, and not only its last place. */
function printsWhole(value: Value, x: number, unit: LengthUnit): boolean {
  if ('length' in value) return Math.round(x * (unit === 'in' ? NM_PER_INCH : NM_PER_MM) * 1000) === value.length * 1000;
  if ('angle' in value) return Math.round(x * MAS_PER_DEGREE * 1000) === value.angle * 1000;
  return 'number' in value && x === value.number;
}

const toSyntax = (formula: string): string =>
  plainMinus(formula)
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('·', '*')
    .replaceAll('½', '(1/2)')
    .replaceAll('√(', 'sqrt(')
    .replaceAll('π', 'pi')
    .replace(/(\d+(?:\.\d+)?)°/g, '($1*pi/180)');

export type Evaluation = { readonly printed: number; readonly worked: number; readonly allowed: number };

/**
 * Works a figure's printed formula on its printed givens, as a reader with a pocket calculator would.
 * allowed: half a unit of the printed answer plus what the rounding of the printed givens, and of the answer to the nanometre, can do to it. null: there is no formula.
 * Throws when the formula uses a symbol that is not given, or a given is not used.
 */
export function evaluateFigure(figure: Figure): Evaluation | null {
  if (figure.formula === '') return null;
  const answer = shown(figure.value, printFigure(figure).text);
  if (!answer) return null;
  const node = math.parse(toSyntax(figure.formula));
  const used = new Set<string>();
  node.traverse((part) => {
    if (part.type === 'SymbolNode') used.add((part as unknown as { name: string }).name);
  });
  const scope = new Map<string, Shown & { angle: boolean }>();
  for (const given of figure.given) {
    if (!used.has(given.symbol)) throw new Error(`${figure.name}: ${given.symbol} is given but not used in ${figure.formula}`);
    const one = shown(given.value, printValue(given.value, figure.unit, placesOf(given.value)).text);
    if (!one) throw new Error(`${figure.name}: ${given.symbol} is no number`);
    const half = printsWhole(given.value, one.x, figure.unit) ? 0 : one.half;
    scope.set(given.symbol, { x: one.x, half, angle: 'angle' in given.value });
  }
  const work = (by: ReadonlyMap<string, number>, smooth = false): number => {
    const values: Record<string, unknown> = { ...FUNCTIONS, ...(smooth ? WITHOUT_STEPS : {}) };
    for (const [symbol, one] of scope) {
      const x = one.x + (by.get(symbol) ?? 0) * one.half;
      values[symbol] = one.angle ? (x * Math.PI) / 180 : x;
    }
    const result = Number(node.compile().evaluate(values));
    return 'angle' in figure.value ? (result * 180) / Math.PI : result;
  };
  const worked = work(new Map());
  let allowed = answer.half + keptWithin(figure);
  for (const symbol of scope.keys()) {
    const [up, down] = [work(new Map([[symbol, 1]])), work(new Map([[symbol, -1]]))];
    allowed += Math.max(Math.abs(up - worked), Math.abs(down - worked));
  }
  if (STEPPED.test(figure.formula)) allowed = Math.max(allowed, answer.half + acrossSteps([...scope.keys()], work));
  return { printed: answer.x, worked, allowed: allowed * 1.0001 + 1e-12 * Math.abs(worked) };
}

const STEPPED = /floor|ceil|round/;
const same = (x: number): number => x;
const WITHOUT_STEPS = { floor: same, ceil: same, round: same };

/**
 * How far a formula with steps in it can move when all its printed givens are off together, each by its half the way that raises
 * (or lowers) the answer: one alone may stop short of a step that all of them cross.
 */
function acrossSteps(symbols: readonly string[], work: (by: ReadonlyMap<string, number>, smooth?: boolean) => number): number {
  const middle = work(new Map(), true);
  const up = new Map(symbols.map((symbol) => [symbol, work(new Map([[symbol, 1]]), true) >= middle ? 1 : -1]));
  const down = new Map([...up].map(([symbol, by]) => [symbol, -by]));
  return Math.max(Math.abs(work(up) - work(new Map())), Math.abs(work(down) - work(new Map())));
}

/** A length is kept to the nanometre and an angle to the thousandth of a second before it is printed: near a tie that half decides the last place. */
function keptWithin({ value, unit }: Figure): number {
  if ('length' in value) return 0.5 / (unit === 'in' ? NM_PER_INCH : NM_PER_MM);
  return 'angle' in value ? 0.5 / MAS_PER_DEGREE : 0;
}

const placesOf = (value: Value): number | undefined => ('number' in value ? value.places : undefined);
