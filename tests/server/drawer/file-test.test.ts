import { describe, expect, it } from 'vitest';
import { conditionOf } from '../../../db/spares/condition.ts';
import { conditionWithTest, type FileTest, fileTestOf, hardnessBy, NOT_TRIED } from '../../../server/drawer/file-test.ts';

const tried = (some: Partial<FileTest>): FileTest => ({ ...NOT_TRIED, ...some });

/** Common practice, no source. Each would be wrong if one place alone were taken for the whole wheel. */
describe('what a file says', () => {
  it.each([
    ['nowhere tried', tried({}), 'not tried'],
    ['web alone bites: the teeth may still be cased', tried({ web: 'bites' }), 'not tried'],
    ['bites on the teeth', tried({ tip: 'bites', root: 'bites' }), 'file bites'],
    ['skates on the teeth, bites on the web', tried({ tip: 'skates', root: 'skates', web: 'bites' }), 'case hard'],
    ['skates in the bore only, web bites', tried({ tip: 'bites', web: 'bites', bore: 'skates' }), 'case hard'],
    ['skates on the teeth, web not tried', tried({ tip: 'skates' }), 'not tried'],
    ['skates on the web', tried({ tip: 'skates', web: 'skates' }), 'hard through'],
  ] as const)('%s', (_what, test, hardness) => {
    expect(hardnessBy(test)).toBe(hardness);
  });

  it('is kept beside what a look told, and neither spoils the other', () => {
    const looked = { teeth: 'worn', bore: 'good' } as const;
    const test = tried({ tip: 'skates', bore: 'bites' });
    const kept = conditionWithTest(looked, test);
    expect(conditionOf(kept)).toEqual(looked);
    expect(fileTestOf(kept)).toEqual(test);
    expect(fileTestOf('teeth good, bore good')).toEqual(NOT_TRIED);
  });
});
