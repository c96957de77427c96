import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Dial } from '../tooling/tooling.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { dialFigure } from './dial.sums.ts';
import { countPasses, MOST_PASSES, passTable } from './pass-table.ts';
import { LAST_CUTS, LAST_OFF_DIAMETER_IN, passesFor, perSide, ROUGHING_DEPTH_IN, type Stages, stagesOf } from './passes.formulas.ts';

/** oldRoot: null when there are no old teeth (bar, ring). depthPerPass: a side. lastOff: left for the last cuts, off the diameter. */
export type TurningAsked = {
  readonly oldOutside: Length;
  readonly oldRoot: Length | null;
  readonly newOutside: Length;
  readonly dial?: Dial | null;
  readonly depthPerPass?: Length | null;
  readonly lastOff?: Length | null;
  readonly unit?: LengthUnit;
};

export type TurningKey =
  | 'turnOffPerSide'
  | 'throughTeeth'
  | 'solid'
  | 'roughTo'
  | 'passesThrough'
  | 'passesSolid'
  | 'lastCuts'
  | 'lastCutMove';

const derived = 'derived: half the difference of two diameters';
const rule = 'judgement: 0.015 in a side is left, taken in two equal cuts of 0.015 in off the diameter, each measured';

const say = (length: Length, unit: LengthUnit) => `${printLength(length, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

function checkedSizes({ oldOutside, oldRoot, newOutside }: TurningAsked, unit: LengthUnit): void {
  const refuse = (given: string, limit: string, tryThis: string, about: string[]): never => {
    throw new DomainError({ given, limit, tryThis, about });
  };
  if (!(newOutside > 0))
    refuse(`The new outside is ${say(newOutside, unit)}.`, 'It has to be above 0.', 'Work out the blank of the gear.', ['newOutside']);
  if (newOutside > oldOutside)
    refuse(
      `The new outside of ${say(newOutside, unit)} is larger than the old of ${say(oldOutside, unit)}.`,
      'Turning takes metal off.',
      'Choose a larger spare, stock, or a ring on a hub.',
      ['oldOutside', 'newOutside'],
    );
  if (oldRoot !== null && !(oldRoot > 0 && oldRoot <= oldOutside))
    refuse(
      `The old root is ${say(oldRoot, unit)} under an outside of ${say(oldOutside, unit)}.`,
      'A root lies between 0 and the outside.',
      'Measure wall and bore again.',
      ['oldRoot'],
    );
}

function checkedPasses(passes: number, depth: Length, unit: LengthUnit): void {
  if (passes <= MOST_PASSES) return;
  throw new DomainError({
    given: `${passes} cuts of ${say(depth, unit)} a side.`,
    limit: `A plan holds ${MOST_PASSES} cuts at most.`,
    tryThis: 'Take more depth a pass, or saw or gash the teeth off first.',
    about: ['depthPerPass'],
  });
}

function cautionsOf({ oldRoot, newOutside, oldOutside }: TurningAsked, unit: LengthUnit): Caution[] {
  const cautions: Caution[] = [];
  if (oldRoot !== null && newOutside > oldRoot) {
    const x = ofUnit(perSide(inUnit(newOutside, unit), inUnit(oldRoot, unit)), unit);
    cautions.push({
      name: 'old gaps stay',
      says: `The old gaps stay ${say(x, unit)} deep under the new outside: this blank is too small.`,
      weight: 'danger',
      about: 'solid',
    });
  }
  if (oldRoot !== null && oldRoot < oldOutside)
    cautions.push({
      name: 'bumpy cut',
      says: 'Old teeth off: key out of the chuck, chuck within its speed, tool short, tailstock up, stand out of line. On a screwed nose no braking and no reverse.',
      weight: 'beware',
      about: 'throughTeeth',
    });
  return cautions;
}

type Sizes = { readonly D: Given; readonly R: Given; readonly d: Given };

function sideFigures(
  { D, R, d }: Sizes,
  asked: TurningAsked,
  unit: LengthUnit,
): Pick<Record<TurningKey, Figure>, 'turnOffPerSide' | 'throughTeeth' | 'solid'> {
  const [Do, Dn] = [inUnit(asked.oldOutside, unit), inUnit(asked.newOutside, unit)];
  const root = inUnit(asked.oldRoot ?? asked.oldOutside, unit);
  const figure = (name: string, symbol: string, size: number, formula: string, given: Given[], note?: string): Figure => ({
    name,
    symbol,
    value: { length: ofUnit(size, unit) },
    unit,
    formula,
    source: derived,
    given,
    ...(note ? { note } : {}),
  });
  return {
    turnOffPerSide: figure('To turn off, a side', 'h', perSide(Do, Dn), '(D − d) ÷ 2', [D, d]),
    throughTeeth: figure(
      'Of it over the gaps of the old teeth',
      'ht',
      perSide(Do, Math.max(root, Dn)),
      '(D − max(R, d)) ÷ 2',
      [D, R, d],
      asked.oldRoot === null ? 'No old teeth.' : 'Slower: an interrupted cut.',
    ),
    solid: figure('Of it solid', 'hs', Math.max(0, perSide(root, Dn)), 'max(0, R − d) ÷ 2', [R, d]),
  };
}

/** A plan checked and staged, in plain numbers of one unit. p: one roughing pass, a side. */
type Staged = { readonly stages: Stages; readonly p: number; readonly depth: Length; readonly unit: LengthUnit };

function staged(asked: TurningAsked, unit: LengthUnit): Staged {
  checkedSizes(asked, unit);
  const last = inUnit(asked.lastOff ?? inches(LAST_OFF_DIAMETER_IN), unit);
  const depth = asked.depthPerPass ?? inches(ROUGHING_DEPTH_IN);
  if (!(depth > 0 && last >= 0)) {
    const given = `A pass of ${say(depth, unit)} a side.`;
    throw new DomainError({ given, limit: 'It has to be above 0.', tryThis: 'Try 0.030 in a side.', about: ['depthPerPass'] });
  }
  const root = inUnit(asked.oldRoot ?? asked.oldOutside, unit);
  const stages = stagesOf(inUnit(asked.oldOutside, unit), root, inUnit(asked.newOutside, unit), last);
  const p = inUnit(depth, unit);
  checkedPasses(countPasses(stages, p), depth, unit);
  return { stages, p, depth, unit };
}

function passFigures(asked: TurningAsked, { stages, p, depth, unit }: Staged): Record<'passesThrough' | 'passesSolid', Figure> {
  const per = givenLength('p', 'one roughing pass, a side', depth, unit, asked.depthPerPass ? 'typed' : 'table');
  const passes = (name: string, symbol: string, from: number, to: number): Figure => ({
    name,
    symbol,
    value: { count: passesFor(perSide(from, to), p) },
    unit,
    formula: 'ceil(t ÷ p − 0.001)',
    source: 'common practice, no source: equal passes, none deeper than p',
    given: [givenLength('t', 'depth of it, a side', ofUnit(perSide(from, to), unit), unit, 'worked out'), per],
  });
  return {
    passesThrough: passes('Passes over the gaps', 'nt', stages.start, stages.root),
    passesSolid: passes('Passes solid', 'ns', stages.root, stages.rough),
  };
}

function lastFigures(asked: TurningAsked, d: Given, { stages, unit }: Staged): Record<'roughTo' | 'lastCuts' | 'lastCutMove', Figure> {
  const left = ofUnit(stages.rough - stages.end, unit);
  const c = givenLength('c', 'left for the last cuts, off the diameter', left, unit, asked.lastOff ? 'typed' : 'guess');
  const cut = ofUnit((stages.rough - stages.end) / LAST_CUTS, unit);
  const base = { unit, source: rule };
  const named = { name: 'Dial for each last cut', symbol: 'ml' };
  const note = 'Measure before each of the two and after.';
  return {
    roughTo: {
      ...base,
      name: 'Rough to, then measure',
      symbol: 'dr',
      value: { length: ofUnit(stages.rough, unit) },
      formula: 'd + c',
      given: [d, c],
    },
    lastCuts: {
      ...base,
      name: 'Each of the two last cuts, off the diameter',
      symbol: 'cl',
      value: { length: cut },
      formula: 'c ÷ 2',
      given: [c],
      note,
    },
    lastCutMove: asked.dial
      ? { ...dialFigure({ move: cut, counted: 'diameter', dial: asked.dial }), ...named }
      : { ...base, ...named, value: { words: 'dial not known' }, formula: '', given: [] },
  };
}

/**
 * Turning a blank down: over the old gaps to the old root, then solid to the last 0.030 in off the diameter, then two equal measured cuts.
 * Throws DomainError for a new outside above the old, a root above the outside, or a pass so fine that no plan would hold it.
 */
export function turningPlan(asked: TurningAsked): Answer<TurningKey> {
  const unit = asked.unit ?? asked.dial?.unit ?? 'in';
  const plan = staged(asked, unit);
  const D = givenLength('D', 'old outside', asked.oldOutside, unit, 'measured');
  const rootName = asked.oldRoot === null ? 'no old teeth: the outside' : 'old root';
  const R = givenLength('R', rootName, asked.oldRoot ?? asked.oldOutside, unit, 'measured');
  const d = givenLength('d', 'new outside', asked.newOutside, unit, 'worked out');
  const figures = { ...sideFigures({ D, R, d }, asked, unit), ...lastFigures(asked, d, plan), ...passFigures(asked, plan) };
  const table = passTable(plan.stages, plan.p, unit, asked.dial ?? null);
  return { figures, cautions: cautionsOf(asked, unit), tables: [table] };
}
