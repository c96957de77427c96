import type { Caution } from '../figure/figure.ts';
import { CLAMP } from './clamp.ts';
import { type OneIdler, plateWay } from './idlers.ts';
import { sectorsOf } from './way-words.ts';
import type { Way } from './ways.ts';

const beware = (name: string, says: string, about = 'crank'): Caution => ({ name, says, weight: 'beware', about });

/** Said wherever gears turn the plate. */
const GEARED: readonly Caution[] = [
  beware(
    'Plate stop out',
    'Plate stop out, or the gears cannot turn the plate. Head level. Not with a helix: its gears need the same shafts.',
    'plateTurns',
  ),
  beware('Gears', 'Set the lash of the gears by hand, spindle stopped. Fingers clear of the mesh when cranking.', 'gears'),
];

const NICK = beware(
  'Nick first',
  'Nick all round 0.002 in deep and count, before cutting: a wrong idler or a plate left locked shows there.',
  'ifWrong',
);
const UNTRIED = beware(
  'Idlers not tried',
  'Crank one turn and see which way the plate goes; then write down what one idler does on this head.',
  'idlers',
);

/** Cautions of a way of dividing, where the hand is. */
export function wayCautions(way: Way, oneIdler: OneIdler): Caution[] {
  const clamp: Caution = { ...CLAMP, about: 'crank' };
  const { spaces, holes } = sectorsOf(way);
  const sector = beware(
    'Spaces, not holes',
    `Set the sector by ${spaces} spaces: that is ${holes} holes, counting the one that the pin stands in.`,
    'sector',
  );
  const away = way.method !== 'direct' && !way.plate.here ? [beware('Plate away', `${way.plate.name} is not in the shop.`)] : [];
  const sectored = holes === 'none' ? [] : [sector];
  if (way.method === 'compound') return [...away, clamp, ...sectored, beware('Two moves', TWO_MOVES)];
  if (way.method !== 'differential') return [...away, clamp, ...sectored];
  const turns = beware('Direction', `The plate turns ${plateWay(way)} the crank, seen from the crank.`, 'plateTurns');
  return [...away, clamp, ...sectored, turns, ...GEARED, NICK, ...(oneIdler ? [] : [UNTRIED])];
}

const TWO_MOVES =
  'Two moves for every tooth, crank first, then plate and crank together on the back pin. Leave one out and the wheel is spoilt.';
