import { describe, expect, it } from 'vitest';
import { ringAndHub } from '../../../lib/blanks/ring-and-hub.sums.ts';
import { testSpare } from '../../../lib/blanks/spare-test.sums.ts';
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
