import { describe, expect, it } from 'vitest';
import { deepestSystem, measuredRoot, oldRoot } from '../../../lib/blanks/measured-root.sums.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { rootFromAcross, rootFromPins } from '../../../lib/gears/measured-root.formulas.ts';
import { inches, toInches } from '../../../lib/values/length.ts';
import { gear, spare, system } from './wheels.ts';

/** Least distance over two points or discs in the spaces of N equal spaces, found by walking all pairs: another route than the formula. */
function overDiscs(N: number, rootRadius: number, pin: number): number {
  const centre = rootRadius + pin / 2;
  let most = 0;
  for (let k = 1; k < N; k++) most = Math.max(most, 2 * centre * Math.sin((Math.PI * k) / N));
  return most + pin;
}

describe('the old root from what was measured', () => {
  it.each([17, 18, 19, 22])('over pins and knife edges on %i spaces', (N) => {
    expect(rootFromPins(overDiscs(N, 1.2, 0.1), 0.1, N)).toBeCloseTo(2.4, 12);
    expect(rootFromAcross(overDiscs(N, 1.2, 0), N)).toBeCloseTo(2.4, 12);
  });
  it('prints the four roots of the hobber, all exact ties, upward', () => {
    const printed = [31, 34].map((teeth) => printFigure(measuredRoot(spare(teeth)).figures.oldRoot).text);
    expect(printed).toEqual(['3.5858', '3.9608']);
  });
  it('not measured: worked out, with the deepest system of its angle', () => {
    expect(oldRoot(spare(31)).from).toBe('worked out');
    expect(deepestSystem(gear(31)).dedendum).toBe(1.157);
    expect(deepestSystem(gear(31, 8, { system: system('stub-20') })).dedendum).toBe(1.25);
    expect(deepestSystem(gear(31, 24)).dedendum).toBe(1.2);
  });
  it('the wall counts twice, the bore once', () => {
    const from = spare(31, 8, { reading: { by: 'wall', wall: inches(1.1679), bore: inches(1.25) } });
    expect(toInches(oldRoot(from).root)).toBeCloseTo(3.5858, 9);
    expect(oldRoot(from).from).toBe('measured');
  });
  it('flat jaws on an odd count say so, and an under-size outside makes the root smaller', () => {
    const short = oldRoot(spare(19, 8, { reading: { by: 'jaws', jaws: inches(2.58) } }));
    expect(short.from).toBe('worked out');
    expect(toInches(short.root)).toBeCloseTo(19 / 8 - 2.314 / 8 - (2.625 - 2.58 / Math.cos(Math.PI / 38)), 6);
    expect(short.cautions[0]?.says).toContain('Flat jaws on an odd count');
  });
  it('asks for the run-out when only a diameter was taken', () => {
    const names = (runOut: number | null) =>
      oldRoot(
        spare(34, 8, { reading: { by: 'across roots', across: inches(3.96) }, runOut: runOut === null ? null : inches(runOut) }),
      ).cautions.map(({ name }) => name);
    expect(names(null)).toContain('Run-out');
    expect(names(0.002)).not.toContain('Run-out');
  });
});
