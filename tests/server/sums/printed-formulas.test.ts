import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Answer, Figure } from '../../../lib/figure/figure.ts';
import { readForm } from '../../../server/forms/form.ts';
import { SUMS } from '../../../server/sums/contents.ts';
import { answerJson } from '../../../server/sums/json.ts';
import type { Sum } from '../../../server/sums/sum.ts';
import { evaluateFigure } from '../../lib/evaluate.ts';
import { type Boxes, boxesFor } from './random-inputs.ts';

/** How far a printed formula, worked on its printed figures, ends from the printed answer, as a part of what printing may do. */
function offBy(figure: Figure): number | null {
  const by = evaluateFigure(figure);
  if (!by) return null;
  const off = Math.abs(by.worked - by.printed);
  return off === 0 ? 0 : off / by.allowed;
}

const lies = ({ figures }: Answer): string[] =>
  Object.values<Figure>(figures).flatMap((figure) => {
    const off = offBy(figure);
    return off !== null && !(off <= 1) ? [`${figure.name}: ${figure.symbol} = ${figure.formula} is off ${off} times what is allowed`] : [];
  });

/** Anything in an answer that no page may show. */
function unprintable(value: unknown, at = ''): string[] {
  if (value === undefined || value === null || (typeof value === 'number' && !Number.isFinite(value))) return [`${at}: ${value}`];
  if (typeof value === 'string') return /undefined|NaN|Infinity|\[object/.test(value) ? [`${at}: ${value}`] : [];
  if (typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([name, one]) => unprintable(one, `${at}.${name}`));
}

type Outcome = { readonly answer: Answer } | { readonly refused: DomainError } | { readonly problems: Readonly<Record<string, string>> };

function worked(sum: Sum, boxes: Boxes): Outcome {
  const read = readForm(boxes, sum.asks, true);
  if (!read.ok) return { problems: read.problems };
  try {
    const answer = sum.work(read.value as never);
    sum.draw?.(read.value as never);
    return { answer };
  } catch (error) {
    if (error instanceof DomainError) return { refused: error };
    throw error;
  }
}

const boxesOf = (sum: Sum, about: readonly string[]): readonly string[] =>
  about.flatMap((name) => sum.about?.[name] ?? (name in sum.asks ? [name] : []));

const RUNS = 60;

describe('a printed formula works out', () => {
  it('over every example: each formula on its printed figures gives the printed answer', () => {
    let formulas = 0;
    for (const sum of SUMS) {
      const outcome = worked(sum, sum.example);
      expect('answer' in outcome, sum.path).toBe(true);
      if (!('answer' in outcome)) continue;
      expect(lies(outcome.answer), sum.path).toEqual([]);
      formulas += Object.values<Figure>(outcome.answer.figures).filter((figure) => offBy(figure) !== null).length;
    }
    expect(formulas).toBeGreaterThan(90);
  });

  it.each(SUMS.map((sum) => [sum.path, sum] as const))('%s: every figure has a name that begins as a label does', (_, sum) => {
    const outcome = worked(sum, sum.example);
    if (!('answer' in outcome)) throw new Error('the example is refused');
    const names = Object.values<Figure>(outcome.answer.figures).map(({ name }) => name);
    expect(names.filter((name) => !/^[\p{Lu}\d]/u.test(name))).toEqual([]);
  });

  it.each(SUMS.map((sum) => [sum.path, sum] as const))('%s, whatever is typed', (_, sum) => {
    const seen = { answers: 0, formulas: 0 };
    fc.assert(
      fc.property(boxesFor(sum), (boxes) => {
        const outcome = worked(sum, boxes);
        if ('problems' in outcome) throw new Error(`not even read: ${JSON.stringify(outcome.problems)}`);
        if ('refused' in outcome) {
          expect(
            boxesOf(sum, outcome.refused.about),
            `a refusal stands beside no box: ${outcome.refused.message} (${outcome.refused.about})`,
          ).not.toEqual([]);
          return;
        }
        expect(lies(outcome.answer)).toEqual([]);
        expect(unprintable(answerJson(outcome.answer))).toEqual([]);
        seen.answers++;
        seen.formulas += Object.values<Figure>(outcome.answer.figures).filter(({ formula }) => formula !== '').length;
      }),
      { numRuns: RUNS },
    );
    // A run in which nearly everything is refused proves nothing.
    expect(seen.answers, `${seen.answers} of ${RUNS} gave an answer`).toBeGreaterThanOrEqual(RUNS / 5);
  });
});

describe('a lie is caught', () => {
  const span = SUMS.find(({ path }) => path === 'span');
  const outcome = span ? worked(span, span.example) : null;
  const figure = outcome && 'answer' in outcome ? (outcome.answer.figures['span'] as Figure) : null;

  it('when the formula is not the one that was worked', () => {
    if (!figure) throw new Error('no span');
    expect(lies({ figures: { span: figure }, cautions: [] })).toEqual([]);
    expect(lies({ figures: { span: { ...figure, formula: figure.formula.replace('0.5', '1.5') } }, cautions: [] })).toHaveLength(1);
    expect(lies({ figures: { span: { ...figure, formula: figure.formula.replace('inv(a)', 'sin(a)') } }, cautions: [] })).toHaveLength(1);
  });

  it('when a printed figure put in is not the one that was worked with', () => {
    if (!figure) throw new Error('no span');
    const with23 = figure.given.map((given) => (given.symbol === 'N' ? { ...given, value: { count: 23 } } : given));
    expect(lies({ figures: { span: { ...figure, given: with23 } }, cautions: [] })).toHaveLength(1);
  });

  it('when a symbol is not given, or given and not used', () => {
    if (!figure) throw new Error('no span');
    expect(() => offBy({ ...figure, given: figure.given.slice(1) })).toThrow();
    expect(() =>
      offBy({ ...figure, given: [...figure.given, { symbol: 'z', name: 'nothing', value: { count: 1 }, from: 'typed' }] }),
    ).toThrow(/not used/);
  });

  it('also where degrees could be taken for radians', () => {
    const runOut = SUMS.find(({ path }) => path === 'run-out');
    const one = runOut && worked(runOut, { ...runOut.example, angle: `14°20'` });
    if (!one || !('answer' in one)) throw new Error('no run-out');
    const lash = one.answer.figures['lashSwing'] as Figure;
    expect(lies({ figures: { lash }, cautions: [] })).toEqual([]);
    const bare = lash.given.map((given) => (given.symbol === 'a' ? { ...given, value: { number: 14.3333, unit: '', places: 4 } } : given));
    expect(lies({ figures: { lash: { ...lash, given: bare } }, cautions: [] })).toHaveLength(1);
  });
});
