import { idlersSay, plateWay, trainWords } from '../dividing/idlers.ts';
import { LASH_UNKNOWN, lashFigure } from '../dividing/lash.ts';
import { compoundWords, movesOf } from '../dividing/way-words.ts';
import type { Figure } from '../figure/figure.ts';
import { CAUTIONS } from './cautions.data.ts';
import { ON_THE_HEAD } from './chosen-dividing.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation } from './operation.ts';
import { dialFigures, tableAndDial } from './table-and-dial.ts';
import { notKnown, operation } from './written.ts';

/** How the lash is kept on one side; back: by how much where it has been measured. */
const oneWay = ({ lash }: Job['dividing']): string =>
  `Turn one way only. Gone past: ${lash ? 'back by the holes given' : `back ${LASH_UNKNOWN}`}, then up to the hole again.`;
const SECTOR = 'Pin in the circle given. Set the sector by spaces: the hole that the pin stands in is not one of them.';

/** How the head is set by what moves it: one pin, two pins, or gears that turn the plate. */
function setSteps(dividing: Job['dividing']): readonly string[] {
  const { at, head, way } = dividing;
  const ONE_WAY = oneWay(dividing);
  const plate = at.plate ? `${at.plate.name} on ${head.name}.` : `A plate that serves on ${head.name}.`;
  if (way?.method === 'compound')
    return [
      plate,
      `Crank pin in the ${way.move.frontCircle} circle, back pin in the ${way.move.backCircle} circle of the same side. A sector for each.`,
      `For every tooth two moves: ${compoundWords(way.move)}. Tick both before the cut.`,
      ONE_WAY,
    ];
  if (way?.method !== 'differential') return [plate, SECTOR, ONE_WAY];
  return [
    `${plate} Head level, plate stop out.`,
    `Gears: ${trainWords(way.train)}; ${idlersSay(way, head.oneIdler ?? null)}. Any size of idler that reaches.`,
    `Crank one turn and watch: the plate must turn ${plateWay(way)} the crank. If it turns the other way, one idler more or less; write down what this head does.`,
    SECTOR,
    ONE_WAY,
  ];
}

/** Of a way by two pins or gears, what is set and proved; what belongs to other ways is left out. */
function wayFigures({ answer, way }: Job['dividing']): Record<string, Figure> {
  const figures = (answer?.figures ?? {}) as Readonly<Record<string, Figure>>;
  const keys = way?.method === 'differential' ? GEARED_KEYS : TWO_PIN_KEYS;
  return Object.fromEntries(keys.flatMap((key) => (figures[key] ? [[key, figures[key]] as const] : [])));
}
const GEARED_KEYS = ['crank', 'sector', 'sectorHoles', 'plateTurns', 'gears', 'idlers', 'ifWrong', 'ifLocked', 'proof'];
const TWO_PIN_KEYS = ['crank', 'sector', 'sectorHoles', 'proof'];

const twoMoves = ({ way }: Job['dividing']): Record<string, Figure> => (way?.method === 'compound' ? movesOf(way.move) : {});

/** How many holes back the crank goes to take the lash up again; none while the head has not been tried. */
const lashHoles = ({ lash, circle }: Job['dividing']): Record<string, Figure> =>
  lash && circle ? { lash: lashFigure(lash, circle, 'holes') } : {};

/** The move of the crank, wherever it is cranked by; with two pins both moves. None while no plate is on record. */
export function crankFigures(job: Job): Record<string, Figure> {
  const { dividing } = job;
  if (dividing.by) return dialFigures(job, dividing.by);
  const crank = dividing.answer?.figures['crank'];
  return crank ? { crank, ...twoMoves(dividing), ...lashHoles(dividing) } : {};
}

/** Plate, circle and sector, and gears where they turn the plate; by the sum, or in words while there is no plate. */
export function plateAndSector(job: Job, after: readonly string[]): PlannedOperation {
  const { answer, at, needs, way, by } = job.dividing;
  if (by) return tableAndDial(job, by, after);
  const none = { crank: notKnown('Crank for one division', 'm', 'no index plate is on record', job.unit) };
  const figures: Record<string, Figure> = answer
    ? way
      ? { ...wayFigures(job.dividing), ...twoMoves(job.dividing), ...lashHoles(job.dividing) }
      : { ...answer.figures, ...lashHoles(job.dividing) }
    : none;
  return operation({
    key: 'plate',
    title: way?.method === 'differential' ? 'Plate, circle, sector and gears' : 'Plate, circle and sector',
    setUp: job.mill,
    steps: setSteps(job.dividing),
    figures,
    needs,
    cautions: answer ? answer.cautions.filter(({ weight, name }) => weight !== 'note' || name === ON_THE_HEAD) : [CAUTIONS.dividing],
    minutes: MINUTES.plate,
    after,
    ...(answer?.says && !at.plate
      ? { cautions: [{ name: 'No circle serves', says: answer.says, weight: 'danger' as const, about: 'crank' }] }
      : {}),
  });
}
