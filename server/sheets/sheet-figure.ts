import type { StoredFigure } from '../../db/figures.ts';
import type { OperationLine } from '../../db/operations.ts';
import { sectorHoles } from '../../lib/dividing/plain.formulas.ts';
import type { Figure, Value } from '../../lib/figure/figure.ts';
import { printValue } from '../../lib/figure/print-value.ts';
import type { Measure } from '../../lib/routing/operation.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { bySource, isFound } from '../routings/figure-shown.ts';
import { workedLine } from './worked-line.ts';

/** One figure on paper: large, in one unit; `box`: it is measured, and there is room to write; measured: what was, if it was. */
export type SheetFigure = {
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  readonly words: boolean;
  /** Words too long to stand large. */
  readonly long: boolean;
  readonly typed: boolean;
  readonly was: string;
  readonly limits: string;
  readonly worked: string;
  readonly box: boolean;
  readonly measured: string;
};

const LONG = 30;

/** What lib would say today, by `operation key/figure key`. */
export type FiguresNow = ReadonlyMap<string, Figure>;

/** Figures that stand behind others: on the part's page with their working, not on paper. */
const NOT_ON_PAPER = new Set(
  'turns leastCircle sectorHoles speedWorkedOut k feedPerSpan spanBelow cutTime roughTime finishTime left oldOutside'.split(' '),
);
/** Figures that need no line of their own: set small, one after another. */
const SMALL = new Set(
  'wholeDepth turnOff throughTeeth solid passes newRoot rootDiameter wall newOutside proof feed speed spanAbove lashSwing divisionWander chordalAddendum chordalThickness lastCuts error lean'.split(
    ' ',
  ),
);

type In = Pick<Figure, 'per'> & { readonly unit: LengthUnit; readonly places?: number | undefined };

/** A value in one unit, with the time that it is gone in where the figure has one. */
function printIn(value: Value, { unit, places, per }: In): { text: string; unit: string } {
  const printed = printValue(value, unit, places);
  return per && 'length' in value ? { text: printed.text, unit: `${printed.unit}/${per}` } : printed;
}

const said = (value: Value, shown: In): string => {
  const printed = printIn(value, shown);
  return printed.unit ? `${printed.text}\u202f${printed.unit}` : printed.text;
};

/** Numbers stand large, words after them small: "2 turns + 139.3" divisions; "27" spaces = 28 holes. */
function large(key: string, value: Value, shown: In): { text: string; unit: string } {
  const printed = printIn(value, shown);
  const cut = printed.text.lastIndexOf(' ');
  if (key === 'sector' && 'count' in value) return { text: printed.text, unit: `${printed.unit} = ${sectorHoles(value.count)} holes` };
  return 'dial' in value ? { text: printed.text.slice(0, cut), unit: printed.text.slice(cut + 1) } : printed;
}

const isZero = (value: Value): boolean => 'length' in value && value.length === 0;

function limitsWords(low: Value | null, high: Value | null, unit: LengthUnit, places?: number): string {
  const print = (value: Value): string => said(value, { unit, places });
  if (high && (!low || isZero(low))) return `at most ${print(high)}`;
  if (low && high) return `${printValue(low, unit, places).text} to ${print(high)}`;
  return low ? `at least ${print(low)}` : '';
}

const lengthValue = (length: Measure['low']): Value | null => (length === null ? null : { length });

/** The limits of what is measured stand over those of the figure itself. */
function limitsOf(stored: StoredFigure, measure: Measure | undefined, unit: LengthUnit, places?: number): string {
  const own = measure && (measure.low !== null || measure.high !== null);
  const [low, high] = own ? [lengthValue(measure.low), lengthValue(measure.high)] : [stored.low, stored.high];
  return limitsWords(low, high, unit, places);
}

/** The working; when the dial reads another unit than the formula, with what it gives in its own. */
function workedOut(figure: Figure, unit: LengthUnit): string {
  const line = workedLine(figure);
  if (line === '') return '';
  const head = `${figure.symbol} = ${line}`;
  return unit !== figure.unit && 'length' in figure.value ? `${head} = ${said(figure.value, figure)}` : head;
}

/** What a figure says on paper: as typed over, else as worked out. */
export const standsFor = ({ typed, computed }: StoredFigure): Value => typed ?? computed;

/** Was → now: only for what was worked out and is still to be done. */
function nowOf(stored: StoredFigure, operation: OperationLine, now: FiguresNow): Figure | null {
  if (stored.typed || stored.measured || operation.done_on !== null) return null;
  return now.get(`${operation.key ?? ''}/${stored.key}`) ?? null;
}

/** A number under a limit says nothing twice: a run-out is "at most" so much. */
const onlyLimit = (limits: string): boolean => limits.startsWith('at most');

type Found = Pick<SheetFigure, 'text' | 'unit' | 'long' | 'words' | 'typed' | 'was' | 'limits' | 'worked' | 'measured'>;

/**
 * What is found by measuring, with no limit to hold it to, is nothing to work to: the sheet says to measure it, and what it would be by
 * the sum stands apart with its working.
 */
function foundByMeasuring({ stored, worked, said: text }: { stored: StoredFigure; worked: string; said: string }): Found {
  const onItem = stored.shownFrom === 'worked out' && stored.figure.name.endsWith(', measured');
  const base = { unit: '', long: false, words: true, typed: false, was: '', limits: '' } as const;
  if (onItem) return { ...base, text: 'as measured', worked, measured: text };
  const sum = stored.typed ? `typed: ${text}; ${worked}` : `worked out: ${text}${worked ? `; ${worked}` : ''}`;
  return { ...base, text: stored.measured ? 'as measured' : 'measure', worked: sum, measured: '' };
}

export function sheetFigure(operation: OperationLine, stored: StoredFigure, unit: LengthUnit | null, now: FiguresNow): SheetFigure {
  const [own, fresh] = [stored.figure, nowOf(stored, operation, now)];
  const inOne = unit ?? own.unit;
  const places = inOne === own.unit ? own.places : undefined;
  const shown = { unit: inOne, places, ...(own.per ? { per: own.per } : {}) };
  const value = standsFor(stored);
  const was = said(value, shown);
  const changed = fresh !== null && said(fresh.value, shown) !== was;
  const printed = large(stored.key, changed ? fresh.value : value, shown);
  const measure = operation.measures.find((one) => one.figure === stored.key);
  const limits = limitsOf(stored, measure, inOne, places);
  const whole: SheetFigure = {
    key: `${(operation.key ?? `own-${operation.id}`).replaceAll(' ', '-')}-${stored.key}`,
    name: bySource(own.name, stored.shownFrom),
    text: printed.text,
    unit: printed.unit,
    long: printed.text.length > LONG,
    words: 'words' in value || 'move' in value || 'dial' in value,
    typed: stored.typed !== null,
    was: changed ? was : '',
    limits: onlyLimit(limits) ? 'at most' : limits,
    worked: stored.typed ? `worked out: ${said(stored.computed, shown)}` : workedOut(changed ? fresh : own, inOne),
    box: measure !== undefined,
    measured: stored.measured ? said(stored.measured, shown) : '',
  };
  if (!measure || limits !== '' || !isFound(own.name)) return whole;
  const found = foundByMeasuring({ stored, worked: whole.worked, said: said(changed ? fresh.value : value, shown) });
  return { ...whole, ...found, measured: whole.measured || found.measured };
}

const measuredIn = ({ measures }: OperationLine, { key }: StoredFigure): boolean => measures.some(({ figure }) => figure === key);

/** The crank's move is large where it is set, small where it is only used. */
const lesser = ({ key }: OperationLine, stored: StoredFigure): boolean =>
  SMALL.has(stored.key) || (stored.key === 'crank' && key !== 'plate');

/** Shown large: what is measured, typed over, or not known to be a lesser figure. */
export const isLarge = (operation: OperationLine, stored: StoredFigure): boolean =>
  measuredIn(operation, stored) || stored.typed !== null || !(lesser(operation, stored) || NOT_ON_PAPER.has(stored.key));

/** Shown small, one after another. */
export const isSmall = (operation: OperationLine, stored: StoredFigure): boolean =>
  lesser(operation, stored) && !isLarge(operation, stored);

/** "whole depth 0.2696 in". */
export const smallWords = ({ name, text, unit, was }: SheetFigure): string =>
  `${name} ${was ? `${was} → ` : ''}${text}${unit ? `\u202f${unit}` : ''}`;
