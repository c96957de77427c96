import { dialPlace, lineWords } from '../dividing/dial-places.ts';
import { figuresFrom, given } from '../dividing/index-figure.ts';
import { LASH_UNKNOWN, lashFigure } from '../dividing/lash.ts';
import type { Figure } from '../figure/figure.ts';
import { pitchDiameter, toothOf } from '../gears/tooth.ts';
import { ofUnit } from '../values/length.ts';
import type { ByDial } from './by-dial.ts';
import { secondsAtWorst } from './by-dial.ts';
import { CAUTIONS } from './cautions.data.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation } from './operation.ts';
import { operation } from './written.ts';

const figure = figuresFrom('derived: the error of the worst tooth, carried out to the pitch line');

/** How far the worst tooth stands off its place, measured along the pitch line. */
function inTheWork({ gear, unit }: Job, { dial }: ByDial): Figure {
  const [diameter, seconds] = [pitchDiameter(toothOf(gear)), secondsAtWorst(gear.teeth, dial)];
  return {
    ...figure('The same at the pitch line', 'x', { length: ofUnit((diameter / 2) * ((seconds * Math.PI) / 648_000), unit) }),
    unit,
    places: unit === 'in' ? 5 : 4,
    formula: 'D ÷ 2 × e × π ÷ 648000',
    given: [
      given('D', 'pitch diameter', { length: ofUnit(diameter, unit) }),
      given('e', 'error at the worst tooth', { number: seconds, unit: '″', places: 3 }),
    ],
  };
}

const lashOf = ({ dividing: { lash } }: Job, { dial }: ByDial): Record<string, Figure> =>
  lash ? { lash: lashFigure(lash, dial.perTurn, 'lines') } : {};

/** The handwheel’s place at tooth 2, the dial it is read on, and the lash, wherever it is turned by. */
export function dialFigures(job: Job, by: ByDial): Record<string, Figure> {
  const { crank, least } = (job.dividing.answer?.figures ?? {}) as Readonly<Record<string, Figure>>;
  return { ...(crank ? { crank } : {}), ...(least ? { least } : {}), ...lashOf(job, by) };
}

/** Table, handwheel and dial: set to zero with the lash taken up, and every tooth from there. */
export function tableAndDial(job: Job, by: ByDial, after: readonly string[]): PlannedOperation {
  const { answer, needs, lash } = job.dividing;
  const { teeth } = job.gear;
  const { crank, turns, least, worst, worstTooth, proof } = (answer?.figures ?? {}) as Readonly<Record<string, Figure>>;
  const all = { crank, turns, least, worst, worstTooth, proof };
  const known = Object.fromEntries(Object.entries(all).flatMap(([key, one]) => (one ? [[key, one] as const] : [])));
  const second = dialPlace(2, teeth, by.dial);
  return operation({
    key: 'plate',
    title: 'Table, handwheel and dial',
    setUp: job.mill,
    steps: [
      `${by.head.name}: worm in mesh, table clamp free. Turn a little the way of cranking, so that the lash is taken up, and set the dial to 0 there: tooth 1.`,
      `Every tooth has its own turns and line on the index sheet, counted from that 0: tooth 2 at ${lineWords(second, by.dial)} after ${second.move.turns} whole turns. Never add the moves up.`,
      `Turn one way only. Gone past: ${lash ? 'back by the lines given' : `back ${LASH_UNKNOWN}`}, then up to the line again.`,
      'Clamp the table to cut; read the dial once more before the cutter touches.',
    ],
    figures: { ...known, worstAtPitch: inTheWork(job, by), ...lashOf(job, by) },
    needs,
    cautions: [...(answer?.cautions ?? []), CAUTIONS.dividing],
    minutes: MINUTES.plate,
    after,
  });
}
