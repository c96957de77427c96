import type { Caution, Figure, Value, Weight } from '../figure/figure.ts';
import { type Length, type LengthUnit, nanometres } from '../values/length.ts';
import { ON_THE_HEAD } from './chosen-dividing.ts';
import type { Measure, Need, PlannedFigure, PlannedOperation, SetUp } from './operation.ts';

type Figures = Readonly<Record<string, PlannedFigure>>;

/** An operation with what most do not have left out. must: true unless it is only offered. */
export type Written = {
  readonly key: string;
  readonly title: string;
  readonly setUp: SetUp;
  readonly steps: readonly string[];
  readonly minutes: number;
  readonly after: readonly string[];
  readonly must?: boolean;
  readonly verdict?: string;
  readonly figures?: Figures;
  readonly measures?: readonly Measure[];
  readonly needs?: readonly Need[];
  readonly cautions?: readonly Caution[];
};

const WEIGHTS: Readonly<Record<Weight, number>> = { danger: 0, beware: 1, note: 2 };
const MOST_CAUTIONS = 4;

/** The weightiest first, each once, few at a time; a danger is never left out, nor what stands on the head already. */
function few(cautions: readonly Caution[]): readonly Caution[] {
  const once = cautions.filter((one, at) => cautions.findIndex(({ says }) => says === one.says) === at);
  const sorted = [...once].sort((a, b) => WEIGHTS[a.weight] - WEIGHTS[b.weight]);
  return sorted.filter(({ weight, name }, at) => weight === 'danger' || name === ON_THE_HEAD || at < MOST_CAUTIONS);
}

export const operation = ({ must = true, figures = {}, measures = [], needs = [], cautions = [], ...said }: Written): PlannedOperation => ({
  ...said,
  must,
  figures,
  measures,
  needs,
  cautions: few(cautions),
  minutes: Math.max(1, Math.round(said.minutes)),
});

/** A figure that cannot be given, and what would give it. */
export const notKnown = (name: string, symbol: string, words: string, unit: LengthUnit): Figure => ({
  name,
  symbol,
  value: { words },
  unit,
  formula: '',
  source: 'not known yet',
  given: [],
});

/** What a reading may be at most, from none upward. */
export const atMost = (name: string, symbol: string, most: Length, unit: LengthUnit, note?: string): Figure => ({
  name,
  symbol,
  value: { length: most },
  unit,
  formula: '',
  source: 'judgement: a limit that the owner may change',
  given: [],
  limits: [{ length: nanometres(0) }, { length: most }],
  ...(note ? { note } : {}),
});

const limit = (value: Value | undefined): Length | null => (value && 'length' in value ? value.length : null);

/** How the words begin that say: outside its limits, and this operation could still take off what is left. */
export const METAL_LEFT = 'Metal left:';

/** What to read against a figure's own limits. below and above: what it means to be outside them. */
export function measure(figureKey: string, figure: Figure, name: string, below: string, above: string): Measure {
  const [low, high] = figure.limits ?? [];
  return { key: figureKey, name, figure: figureKey, low: limit(low), high: limit(high), below, above };
}
