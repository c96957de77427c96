import { centralMove, centralProof } from '../../lib/turning/centering.sums.ts';
import { runOutEffects } from '../../lib/turning/run-out.sums.ts';
import { trialNick } from '../../lib/turning/trial-nick.ts';
import { fourJawTruing } from '../../lib/turning/truing.sums.ts';
import { angleField } from '../forms/field.ts';
import { size, sizeIfKnown, typedOf, unitOf } from './asks.ts';
import { DIAL_ABOUT, DIAL_EXAMPLE, dialIfKnown, dialIfKnownAsks } from './dial-asks.ts';
import { teethField } from './gears.ts';
import { sum } from './sum.ts';

const jaw = (number: number) => size({ label: `Read at jaw ${number}`, least: -1, most: 1 });
const trueTo = (label: string, hint: string) => sizeIfKnown({ label, hint, least: 0, most: 1 });

const truingSum = sum({
  path: 'four-jaw-truing',
  title: 'Truing in a four-jaw',
  group: 'Turning',
  tells: 'Which jaws to move and how far from four indicator readings, and what the work runs out now.',
  asks: {
    jaw1: jaw(1),
    jaw2: jaw(2),
    jaw3: jaw(3),
    jaw4: jaw(4),
    limit: trueTo('True enough at', 'Full reading; empty: 0.001 in'),
    screwLead: sizeIfKnown({ label: 'Lead of the jaw screw', hint: 'Empty if not known', least: 0.01, most: 1 }),
  },
  example: { jaw1: '0.040', jaw2: '0.012', jaw3: '0.000', jaw4: '0.004', limit: '', screwLead: '' },
  work: ({ jaw1, jaw2, jaw3, jaw4, limit, screwLead }) =>
    fourJawTruing({
      jaws: [jaw1.length, jaw2.length, jaw3.length, jaw4.length],
      unit: unitOf(jaw1),
      ...typedOf({ limit, screwLead }),
    }),
});

const runOutSum = sum({
  path: 'run-out',
  title: 'What a run-out does',
  group: 'Turning',
  tells: 'What the indicator reading that is left does to lash and division of the finished gear.',
  asks: {
    runOut: size({ label: 'Full indicator reading', hint: 'Highest less lowest over one turn', least: 0, most: 1 }),
    angle: angleField({ label: 'Pressure angle', limits: { least: 5, most: 44 } }),
    limit: trueTo('Limit', 'Empty: 0.002 in'),
  },
  example: { runOut: '0.002', angle: '14.5', limit: '' },
  work: ({ runOut, angle, limit }) => runOutEffects({ runOut: runOut.length, angle, unit: unitOf(runOut), ...typedOf({ limit }) }),
});

const centralSum = sum({
  path: 'cutter-central',
  title: 'Cutter over the middle',
  group: 'Turning',
  tells: 'How far to move across after touching the side of the blank, in travel and on the dial.',
  asks: {
    blankDiameter: size({ label: 'Diameter of the blank', least: 0.05, most: 100 }),
    cutterWidth: size({ label: 'Width of the cutter', least: 0.01, most: 10 }),
    paper: sizeIfKnown({ label: 'Paper between them', least: 0, most: 0.1 }),
    ...dialIfKnownAsks,
  },
  example: { blankDiameter: '3.0000', cutterWidth: '0.4375', paper: '0.002', ...DIAL_EXAMPLE },
  about: DIAL_ABOUT,
  work: ({ blankDiameter, cutterWidth, paper, ...typed }) => {
    const dial = dialIfKnown(typed);
    return centralMove({
      blankDiameter: blankDiameter.length,
      cutterWidth: cutterWidth.length,
      dial,
      unit: dial?.unit ?? unitOf(blankDiameter),
      ...typedOf({ paper }),
    });
  },
});

const proofSum = sum({
  path: 'cutter-central-proof',
  title: 'Proof that the cutter is central',
  group: 'Turning',
  tells:
    'What the shift between two light gashes says, the mandrel turned end for end: the error, the lean of every tooth, the move that cures it.',
  asks: {
    shift: size({ label: 'Shift between the two gashes', least: 0, most: 1 }),
    pitchRadius: size({ label: 'Pitch radius of the wheel', least: 0.01, most: 100 }),
    limit: trueTo('Central enough at', 'Empty: 0.001 in'),
    ...dialIfKnownAsks,
  },
  example: { shift: '0.006', pitchRadius: '1.3750', limit: '', ...DIAL_EXAMPLE },
  about: DIAL_ABOUT,
  work: ({ shift, pitchRadius, limit, ...typed }) => {
    const dial = dialIfKnown(typed);
    return centralProof({
      shift: shift.length,
      pitchRadius: pitchRadius.length,
      dial,
      unit: dial?.unit ?? unitOf(pitchRadius),
      ...typedOf({ limit }),
    });
  },
});

const nickSum = sum({
  path: 'trial-nick',
  title: 'Trial nick',
  group: 'Turning',
  tells: 'How many light nicks prove the division before a tooth is cut.',
  asks: { teeth: teethField },
  example: { teeth: '22' },
  work: ({ teeth }) => trialNick(teeth),
});

export const SETTING_UP_SUMS = [truingSum, runOutSum, centralSum, proofSum, nickSum];
