import type { SpareVerdict } from '../blanks/spare-test.sums.ts';
import type { Chuck } from '../tooling/tooling.ts';
import { MANDREL_RUN_OUT_IN } from '../turning/limits.data.ts';
import { inches } from '../values/length.ts';
import { CAUTIONS } from './cautions.data.ts';
import type { Job } from './job.ts';
import { latheCautions } from './material-words.ts';
import { MINUTES } from './minutes.data.ts';
import { boreWords, needWords, toolsFor } from './needs.ts';
import type { PlannedOperation } from './operation.ts';
import { BENCH, inChuck } from './set-ups.ts';
import { atMost, measure, operation } from './written.ts';

const JAWS = 4;

/** The chuck in which work is trued: a four-jaw that is here, else whatever is. */
export const chuckOf = ({ shop }: Job): Chuck | null => {
  const here = shop.chucks.filter((chuck) => chuck.here);
  return here.find(({ jaws }) => jaws === JAWS) ?? here[0] ?? null;
};

const BORE_STEPS: Readonly<Record<Exclude<SpareVerdict['boreWork'], 'none'>, { title: string; steps: readonly string[] }>> = {
  'bore out': {
    title: 'Bore it out to the new bore',
    steps: ['True the old roots by indicator in the chuck.', 'Bore it out in light cuts, measuring before the last two.'],
  },
  bush: {
    title: 'Bush the bore',
    steps: ['True the old roots by indicator in the chuck.', 'Bore it true, make a bush to it, fix the bush, then bore that to size.'],
  },
  'cut a keyway': {
    title: 'Cut the new keyway',
    steps: ['True the bore by indicator in the chuck.', 'Cut the keyway, clear of any old one; burrs off.'],
  },
};

/** What the bore of the spare asks for before it goes on a mandrel; nothing where it serves as it is. */
export function boreWork(job: Job, work: SpareVerdict['boreWork'], after: string): readonly PlannedOperation[] {
  if (work === 'none') return [];
  const wants = job.gear.bore ? [`Wanted: ${boreWords(job.gear.bore)}.`] : [];
  return [
    operation({
      key: 'bore-work',
      title: BORE_STEPS[work].title,
      setUp: inChuck(job.shop.lathe, chuckOf(job)?.jaws ?? JAWS),
      steps: [...BORE_STEPS[work].steps, ...wants],
      needs: [{ kind: 'chuck', jaws: chuckOf(job)?.jaws ?? JAWS }],
      cautions: [CAUTIONS.fourJaw, ...latheCautions(job)],
      minutes: MINUTES.boreWork,
      after: [after],
    }),
  ];
}

/** Whether a mandrel that fits is in the shop. */
const mandrelHere = (job: Job): boolean => job.mandrel.some((need) => toolsFor(need, job.shop.mandrels).length > 0);

const makeOne = (job: Job, after: string): PlannedOperation =>
  operation({
    key: 'make-mandrel',
    title: 'Make the mandrel first: a routing of its own',
    setUp: BENCH,
    must: false,
    steps: [
      `Wanted: ${job.mandrel.map(needWords).join(', ') || 'a mandrel, once the bore is measured'}.`,
      'Open a part for it, or borrow one. The turning and the cutting below wait for it.',
    ],
    minutes: 5,
    after: [after],
  });

/** The mandrel proved between centres, with a word on making it where it is lacking. */
export function mandrelPhase(job: Job, after: string, made: string): readonly PlannedOperation[] {
  const runOut = atMost('Run-out of the mandrel between centres, full reading', 't', inches(MANDREL_RUN_OUT_IN), job.shopUnit);
  const lacking = mandrelHere(job) ? [] : [makeOne(job, after)];
  const prove = operation({
    key: 'prove-mandrel',
    title: 'Prove the mandrel between centres',
    setUp: job.lathe,
    steps: ['Clean both centres and the centre holes.', 'Turn it by hand under an indicator, at both ends of where the wheel sits.'],
    figures: { runOut },
    measures: [measure('runOut', runOut, 'Run-out of the mandrel', '', 'Lap the centre holes or true the mandrel before going on.')],
    needs: job.mandrel,
    minutes: MINUTES.proveMandrel,
    after: [after],
  });
  return [...lacking, prove, mountBlank(job, ['prove-mandrel', made])];
}

const mountBlank = (job: Job, after: readonly string[]): PlannedOperation =>
  operation({
    key: 'mount',
    title: 'Blank on the mandrel',
    setUp: job.lathe,
    steps: [
      'Take every burr off bore and faces.',
      job.gear.bore?.form === 'plain' || !job.gear.bore
        ? 'Push it home against the shoulder.'
        : 'Push it home; the spline or key drives it.',
      'Nut up tight. Dog on, without shake.',
    ],
    needs: job.mandrel,
    cautions: [CAUTIONS.machine],
    minutes: MINUTES.mount,
    after: [...new Set(after)],
  });
