import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSpareTeeth } from '../../../lib/blanks/least-teeth.ts';
import { ringAndHub } from '../../../lib/blanks/ring-and-hub.sums.ts';
import { testSpare } from '../../../lib/blanks/spare-test.sums.ts';
import { judgeSpare } from '../../../lib/blanks/spare-test.ts';
import type { SpareWheel } from '../../../lib/blanks/spare-wheel.ts';
import { inches } from '../../../lib/values/length.ts';
import { gear, spare } from './wheels.ts';

const DELIVERED = inches(0.01);

describe('whose number the clean-up is', () => {
  const inTest = (cleanUp: typeof DELIVERED | undefined) =>
    testSpare({ wanted: gear(22), spare: spare(31), cleanUp }).answer.figures.left?.given.find(({ symbol }) => symbol === 'c');

  it('nobody typed one: the judgement is a guess; 0.010 typed by the owner is the owner’s, as any other', () => {
    expect(inTest(undefined)).toMatchObject({ value: { length: DELIVERED }, from: 'guess' });
    expect(inTest(DELIVERED)).toMatchObject({ value: { length: DELIVERED }, from: 'typed' });
    expect(inTest(inches(0.012))).toMatchObject({ from: 'typed' });
  });

  const onHub = (cleanUp: typeof DELIVERED | undefined, more: Partial<SpareWheel> = {}) =>
    ringAndHub({ wanted: gear(60, 12), spare: { ...spare(48, 12), ...more }, ring: 'steel', cleanUp }).answer.figures['hub']?.given.find(
      ({ symbol }) => symbol === 'c',
    );

  it('the same for the hub of a ring; of a hard case it is the case, a guess until measured', () => {
    expect(onHub(undefined)).toMatchObject({ from: 'guess', where: 'judgement' });
    expect(onHub(DELIVERED)).toMatchObject({ from: 'typed' });
    expect(onHub(DELIVERED)).not.toHaveProperty('where');
    const hard = { hardness: 'case hard', caseDepth: null } as const;
    expect(onHub(DELIVERED, hard)).toMatchObject({ name: 'case, on the diameter', from: 'guess', value: { length: inches(0.08) } });
    expect(onHub(DELIVERED, { ...hard, caseDepth: inches(0.03) })).toMatchObject({ from: 'measured', value: { length: inches(0.06) } });
  });
});

// Typed from the stories: at 2.157 ÷ P the spare needs 4.314 teeth more, and the clean-up besides.
it.each([
  [22, 8, 27],
  [28, 8, 33],
  [60, 12, 65],
])('a %i of %i DP takes a spare of %i teeth or more, and one fewer will not do', (teeth, P, least) => {
  expect(leastSpareTeeth(gear(teeth, P), undefined)).toBe(least);
  expect(judgeSpare({ wanted: gear(teeth, P), spare: spare(least, P) }).room.left).toBeGreaterThanOrEqual(0);
  expect(judgeSpare({ wanted: gear(teeth, P), spare: spare(least - 1, P) }).room.left).toBeLessThan(0);
  const notes = testSpare({ wanted: gear(teeth, P), spare: spare(least - 1, P) }).answer.cautions.map(({ says }) => says);
  expect(notes.join(' ')).toContain(`Worked out, it takes ${least} teeth or more.`);
});

it('the count that is named is the least that cleans up, whatever is cleaned up and whatever the tooth', () => {
  fc.assert(
    fc.property(fc.integer({ min: 12, max: 90 }), fc.constantFrom(4, 8, 12, 24), fc.integer({ min: 0, max: 60 }), (teeth, P, c) => {
      const [wanted, cleanUp] = [gear(teeth, P), inches(c / 1000)];
      const least = leastSpareTeeth(wanted, cleanUp) ?? 0;
      const leftOf = (many: number) => judgeSpare({ wanted, spare: spare(many, P), cleanUp }).room.left;
      expect(leftOf(least)).toBeGreaterThanOrEqual(-1);
      expect(leftOf(least - 1)).toBeLessThan(0);
    }),
  );
});
