import { LOW_END_SOURCE, TREATISE_SOURCE } from '../../lib/cutters/ranges.data.ts';
import { choiceField, lengthField } from '../forms/field.ts';

const thin = (most: number) => ({ limits: { least: 0, most }, unit: 'in' as const });

/** The owner's defaults. Each is kept as it was typed, under the name of its field. */
export const settingFields = {
  cleanUp: lengthField({
    label: 'Clean-up',
    hint: 'Off the diameter of a blank, below the old roots, so that no trace of them stays. Judgement.',
    ...thin(0.25),
  }),
  paper: lengthField({
    label: 'Paper for touching off',
    hint: 'Measure your own slip. Cigarette paper is about 0.001 in: value from memory.',
    ...thin(0.02),
  }),
  backlash: lengthField({
    label: 'Backlash of a new wheel',
    hint: 'Thinning on its pitch circle. None where the stud moves, as change wheels do. Common practice, no source.',
    ...thin(0.05),
  }),
  convention: choiceField({
    label: 'A numbered cutter is exact for',
    choices: [
      ['low end', 'the least count of its range'],
      ['treatise', 'the count that the treatise names'],
    ],
    hint: `Least count: ${LOW_END_SOURCE}. Named count: ${TREATISE_SOURCE}. A count typed with the cutter stands over both.`,
  }),
  unit: choiceField({
    label: 'Unit of the work',
    choices: [
      ['pitch', 'by the pitch of the wheel'],
      ['in', 'inches'],
      ['mm', 'millimetres'],
    ],
    hint: 'Large on pages, the other small beside it. At a machine its own dial decides.',
  }),
};

/** What stands until the owner says otherwise. */
export const AS_DELIVERED: Readonly<Record<keyof typeof settingFields, string>> = {
  cleanUp: '0.010',
  paper: '0.001',
  backlash: '0',
  convention: 'low end',
  unit: 'pitch',
};
