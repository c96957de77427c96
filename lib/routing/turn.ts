import { SAME_WITHIN } from '../blanks/judgements.data.ts';
import type { Caution, Figure, From } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { dialFigure } from '../turning/dial.sums.ts';
import { nextDialMove } from '../turning/next-move.sums.ts';
import { turningPlan } from '../turning/passes.sums.ts';
import { add, half, type Length, nanometres, subtract } from '../values/length.ts';
import { CAUTIONS } from './cautions.data.ts';
import type { Job } from './job.ts';
import { type LatheSpeed, latheSpeed } from './lathe-speeds.ts';
import { latheCautions } from './material-words.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation, SetUp } from './operation.ts';
import { lengthRead, standing, withFrom } from './readings.ts';
import { notKnown, operation } from './written.ts';

/** What is turned down, from what. root null: no old teeth. part: put before the keys where a routing turns twice. */
export type Turning = {
  readonly part: '' | 'hub-';
  readonly old: { readonly outside: Length; readonly from: From };
  readonly root: { readonly size: Length; readonly from: From } | null;
  readonly to: Figure;
  readonly setUp: SetUp;
  readonly needs: PlannedOperation['needs'];
  readonly after: string;
};

const titled = (part: Turning['part'], title: string): string =>
  part === '' ? title : `Hub: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;

type Plan = ReturnType<typeof turningPlan>;

const targetOf = ({ to }: Turning): Length => {
  if (!('length' in to.value)) throw new Error('a turned size is a length');
  return to.value.length;
};

const stated = (figure: Figure, { old, root }: Turning): Figure => withFrom(figure, { D: old.from, R: root?.from ?? old.from });

function plan(job: Job, turning: Turning): Plan {
  return turningPlan({
    oldOutside: turning.old.outside,
    oldRoot: turning.root?.size ?? null,
    newOutside: targetOf(turning),
    dial: job.shop.lathe?.crossDial ?? null,
    unit: job.shopUnit,
  });
}

/** The dial of this lathe for a diameter, counted from touching the old outside. */
function dialTo(job: Job, turning: Turning, diameter: Length, name: string): Figure {
  const dial = job.shop.lathe?.crossDial;
  if (!dial) return notKnown(name, 'm', 'dial not known', job.shopUnit);
  return { ...dialFigure({ move: subtract(turning.old.outside, diameter), counted: 'diameter', dial }), name };
}

const passes = ({ value }: Figure): number | null => ('count' in value ? value.count : null);

function throughTeeth(job: Job, turning: Turning, { figures }: Plan, cautions: readonly Caution[]): readonly PlannedOperation[] {
  if (!turning.root) return [];
  const to = nanometres(Math.max(turning.root.size, targetOf(turning)));
  const key = `${turning.part}through-teeth`;
  const cut = latheSpeed(job, {
    operation: key,
    diameter: turning.old.outside,
    cut: 'interrupted turning',
    passes: passes(figures.passesThrough),
  });
  return [
    operation({
      key,
      title: titled(turning.part, 'Turn through the old teeth to their roots'),
      setUp: turning.setUp,
      steps: [
        'Touch the tips with the work turning slowly; set the dial to 0 there.',
        'Take the teeth down cut by cut to the dial given, at the slower speed.',
        'Stop when the gaps are all but gone: from here on the cut is solid.',
      ],
      figures: {
        turnOff: stated(figures.turnOffPerSide, turning),
        throughTeeth: stated(figures.throughTeeth, turning),
        passes: figures.passesThrough,
        dial: dialTo(job, turning, to, 'Dial from touching the tips, to the old roots'),
        ...cut.figures,
      },
      needs: turning.needs,
      cautions: [CAUTIONS.oldTeeth, ...latheCautions(job), ...cautions.filter(({ name }) => name === 'old gaps stay'), ...cut.cautions],
      minutes: cut.minutes,
      after: [turning.after],
    }),
  ];
}

function solid(job: Job, turning: Turning, { figures }: Plan, after: string): PlannedOperation {
  const { part, setUp, needs } = turning;
  const key = `${part}solid`;
  const cut: LatheSpeed = latheSpeed(job, {
    operation: key,
    diameter: turning.root?.size ?? turning.old.outside,
    cut: 'turning',
    passes: passes(figures.passesSolid),
  });
  const read = lengthRead(job.readings, key, 'roughTo');
  const rough = read?.from === 'typed' ? read.length : standing({}, '', '', figures.roughTo).length;
  return operation({
    key,
    title: titled(part, 'Turn solid, leaving the last cuts'),
    setUp,
    steps: ['Go on in solid cuts to the size to rough to.', 'Measure the diameter and write it down: the last cuts go by it.'],
    figures: {
      ...(turning.root ? {} : { turnOff: stated(figures.turnOffPerSide, turning) }),
      solid: stated(figures.solid, turning),
      passes: figures.passesSolid,
      roughTo: figures.roughTo,
      dial: dialTo(job, turning, rough, 'Dial from touching the old outside, to rough size'),
      ...cut.figures,
    },
    measures: [
      {
        key: 'roughTo',
        name: 'Diameter after roughing',
        figure: 'roughTo',
        low: targetOf(turning),
        high: null,
        below: 'Metal gone: this is under size already.',
        above: 'Metal left for the two last cuts.',
      },
    ],
    needs,
    cautions: [...latheCautions(job), ...cut.cautions],
    minutes: cut.minutes,
    after: [after],
  });
}

/** The dial move of a last cut, from what was measured, else as planned. */
function cutMove(job: Job, measured: Length, wanted: Length, cuts: number, name: string): Figure {
  const dial = job.shop.lathe?.crossDial;
  if (!dial) return notKnown(name, 'm', 'dial not known', job.shopUnit);
  return { ...nextDialMove({ measured, wanted, dial, cuts }).figures.move, name };
}

/** Half of what is left: where the first of the two last cuts should end. */
function halfWay(job: Job, from: { length: Length; from: From }, wanted: Length): Figure {
  const unit = job.shopUnit;
  const stand = givenLength('M', 'diameter after roughing', from.length, unit, from.from);
  return {
    name: 'After the first last cut',
    symbol: 'dm',
    value: { length: half(add(from.length, wanted)) },
    unit,
    formula: '(M + d) ÷ 2',
    source: 'derived: two equal cuts',
    given: [stand, givenLength('d', 'wanted', wanted, unit, 'worked out')],
  };
}

function lastCuts(job: Job, turning: Turning, { figures }: Plan): PlannedOperation {
  const { part, setUp, needs } = turning;
  const [key, wanted] = [`${part}last-cuts`, targetOf(turning)];
  const rough = standing(job.readings, `${part}solid`, 'roughTo', figures.roughTo);
  const between = halfWay(job, rough, wanted);
  const mid = lengthRead(job.readings, key, 'halfWay') ?? standing({}, '', '', between);
  const from = (of: From): Record<string, From> => ({ T: of });
  const first = cutMove(job, rough.length, wanted, 2, 'Dial for the first last cut');
  const second = cutMove(job, mid.length, wanted, 1, 'Dial for the second last cut');
  const cut = latheSpeed(job, { operation: key, diameter: wanted, cut: 'turning', finish: true, passes: 2 });
  return operation({
    key,
    title: titled(part, 'Two measured last cuts'),
    setUp,
    steps: [
      'Set the first cut, take it, stop, measure.',
      'Work the second from what was measured, at the same speed and feed, and take it.',
    ],
    figures: {
      lastCuts: figures.lastCuts,
      firstCut: withFrom(first, from(rough.from)),
      halfWay: between,
      secondCut: withFrom(second, from(mid.from)),
      ...cut.figures,
    },
    measures: [
      {
        key: 'halfWay',
        name: 'Diameter after the first last cut',
        figure: 'halfWay',
        low: wanted,
        high: null,
        below: 'Metal gone: take no second cut.',
        above: 'Metal left for the second cut.',
      },
    ],
    needs,
    cautions: [...latheCautions(job), ...cut.cautions],
    minutes: MINUTES.lastCuts,
    after: [`${part}solid`],
  });
}

/** Old teeth off, solid, two measured last cuts. Throws DomainError when the blank is smaller than what is wanted. */
export function turnDown(job: Job, turning: Turning): readonly PlannedOperation[] {
  const worked = plan(job, turning);
  const through = throughTeeth(job, turning, worked, worked.cautions);
  return [...through, solid(job, turning, worked, through[0]?.key ?? turning.after), lastCuts(job, turning, worked)];
}

/** A face wider than wanted is faced off; nothing where it is as wanted or nobody has said. */
export function faceOff(job: Job, is: Length | null, after: string): readonly PlannedOperation[] {
  const { face, shopUnit: unit } = job;
  if (is === null || face === null || is - face <= SAME_WITHIN) return [];
  const off: Figure = {
    name: 'To face off in all',
    symbol: 'x',
    value: { length: subtract(is, face) },
    unit,
    formula: 'Fo − F',
    source: 'derived: what is there less what is wanted',
    given: [givenLength('Fo', 'face of the blank', is, unit, 'measured'), givenLength('F', 'face wanted', face, unit, 'typed')],
  };
  return [
    operation({
      key: 'faces',
      title: 'Face it to width',
      setUp: job.lathe,
      steps: ['Face one side true, then the other to width. Look from which side the width has to come off.'],
      figures: { faceOff: off },
      needs: job.mandrel,
      cautions: latheCautions(job),
      minutes: MINUTES.faces,
      after: [after],
    }),
  ];
}
