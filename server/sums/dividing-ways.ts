import { idlersFor, plateWay } from '../../lib/dividing/idlers.ts';
import { dividingWays, type WaysAsked, waysAsked } from '../../lib/dividing/ways.sums.ts';
import type { Way } from '../../lib/dividing/ways.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { headGearsDrawing } from '../../lib/drawing/gear-train-drawing.ts';
import { indexPlate } from '../../lib/drawing/index-plate.ts';
import { choiceField, tickField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import {
  ABOUT,
  backPinField,
  directField,
  divisionsUpTo,
  gearsField,
  headField,
  mountedOf,
  onAsks,
  oneIdlerField,
  oneIdlerOf,
  pinOf,
} from './dividing-asks.ts';
import { COMMON_PLATES, platesField } from './read-plates.ts';
import { sum } from './sum.ts';

const asks = {
  divisions: divisionsUpTo(100_000),
  turns: headField,
  plates: platesField,
  gears: gearsField,
  oneIdler: oneIdlerField,
  backPin: backPinField,
  direct: directField,
  ...onAsks,
  only: choiceField({
    label: 'Show',
    choices: [
      ['any', 'every way, the easiest first'],
      ['direct', 'direct only'],
      ['plain', 'plain only'],
      ['compound', 'compound only'],
      ['differential', 'differential only'],
    ],
  }),
  nearest: tickField({ label: 'If nothing is exact, show the nearest and its error' }),
};

const askedOf = ({
  divisions,
  turns,
  plates,
  gears,
  oneIdler,
  backPin,
  direct,
  only,
  nearest,
  ...on
}: ValuesOf<typeof asks>): WaysAsked => ({
  divisions,
  tools: { turns, plates, gears, direct: direct ?? [], ...pinOf(backPin), ...mountedOf(on, plates) },
  oneIdler: oneIdlerOf(oneIdler),
  only: only === 'any' ? null : only,
  nearest,
});

/** An idler is any gear that reaches: the smallest that the train leaves over, or one of the usual size. */
const USUAL_IDLER = 24;

/** The gears of a differential way; the plate with its sector for one pin; nothing for whole turns. Untried heads are drawn with the fewest idlers. */
function drawWay(way: Way, { tools, oneIdler }: Pick<WaysAsked, 'tools' | 'oneIdler'>): Drawing | null {
  if (way.method === 'differential') {
    const { drivers, driven } = way.train;
    const plate = plateWay(way);
    const many = idlersFor(way, oneIdler ?? plate);
    const over = [...tools.gears].sort((a, b) => a - b).filter((teeth) => ![...drivers, ...driven].includes(teeth));
    const idlers = Array.from({ length: many }, (_, at) => over[at] ?? USUAL_IDLER);
    return headGearsDrawing({ drivers, driven, idlers, plate });
  }
  if (way.method === 'compound') return null;
  const { turns, spaces, circle } = way.move;
  return spaces > 0 ? indexPlate({ holes: circle, turns, spaces }) : null;
}

const waysSum = sum({
  path: 'dividing-ways',
  title: 'Every way of dividing',
  group: 'Dividing',
  tells:
    'Direct, plain, compound and differential with what is owned, easiest first, with proof; what a wrong idler would make; or what would make it possible.',
  asks,
  example: {
    ...{ divisions: '71', turns: '40', plates: COMMON_PLATES, gears: '28, 32, 40, 44, 48, 56, 64, 72, 86, 100', oneIdler: 'not tried' },
    ...{ backPin: '', direct: '', onPlate: '', onCircle: '', onGears: '', only: 'any', nearest: '' },
  },
  parts: [{ legend: 'On the head now', asks: ['onPlate', 'onCircle', 'onGears'], folded: true }],
  about: ABOUT,
  work: (given) => dividingWays(askedOf(given)),
  draw: (given) => {
    const asked = askedOf(given);
    const [way] = waysAsked(asked);
    return way ? drawWay(way, asked) : null;
  },
});

export const DIVIDING_WAYS_SUMS = [waysSum];
