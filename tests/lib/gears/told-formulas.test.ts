import { expect, it } from 'vitest';
import type { Answer } from '../../../lib/figure/figure.ts';
import { contactAnswer } from '../../../lib/gears/contact.sums.ts';
import { parallelOf } from '../../../lib/gears/parallel.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { shiftAnswer, undercutAnswer } from '../../../lib/gears/shift.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { evaluateFigure } from '../evaluate.ts';
import { wheelOf } from './wheel-of.ts';

const gear = (N: number, pitch: string, system: string, helix = 0, more = {}) => ({
  ...parallelOf(wheelOf(N, pitch, system), more),
  ...(helix ? { helix: { angle: degrees(helix), hand: 'right' as const } } : {}),
});

/** Every printed formula, worked on its printed givens, gives the printed figure; the figures named are among them. */
const ANSWERS: readonly (readonly [string, () => Answer, readonly string[]])[] = [
  [
    '12 and 60, 14½°',
    () => contactAnswer({ gear: gear(12, 'module 1', 'full-14.5'), mate: 60, inRing: false }),
    ['hobbedContact', 'involuteContact'],
  ],
  [
    '10 and 30, 20°, helical',
    () => contactAnswer({ gear: gear(10, '8 DP', 'full-20', 8), mate: 30, inRing: false, face: inches(1) }),
    ['hobbedContact'],
  ],
  [
    '8 and 9, shifted',
    () => contactAnswer({ gear: gear(8, 'module 2', 'module-1.25'), mate: 9, inRing: false, shift: 0.1, mateShift: 0.2 }),
    [],
  ],
  ['12 on a rack', () => contactAnswer({ gear: gear(12, '1/2 CP', 'full-14.5'), mate: 12, inRing: false, rack: true }), ['hobbedContact']],
  [
    '25 leaning, pins',
    () => pinsAnswer({ gear: gear(25, 'module 2', 'module-1.25', 15), reading: millimetres(56.6) }),
    ['overFlatAnvils', 'thicknessFlat'],
  ],
  ['19 leaning, 8 DP, pins', () => pinsAnswer({ gear: gear(19, '8 DP', 'full-14.5', 22.5) }), ['overFlatAnvils']],
  ['ring of 31, pins', () => pinsAnswer({ gear: gear(31, '4 DP', 'full-20', 0, { ring: true }) }), ['overPins']],
  ['12 undercut', () => undercutAnswer(gear(12, '8 DP', 'full-14.5')), ['formDiameter']],
  ['30 whole', () => undercutAnswer(gear(30, '8 DP', 'full-20')), ['formDiameter']],
  ['14, 25°, shifted', () => shiftAnswer({ gear: gear(14, 'module 2', 'full-25', 10, { shift: 0.15 }) }), ['formDiameter', 'span']],
];

it.each(ANSWERS)('%s', (_name, work, named) => {
  const { figures } = work();
  for (const name of named) expect(Object.keys(figures)).toContain(name);
  let worked = 0;
  for (const figure of Object.values(figures)) {
    const by = evaluateFigure(figure);
    if (!by) continue;
    worked += 1;
    expect(Math.abs(by.worked - by.printed), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(by.allowed);
  }
  expect(worked).toBeGreaterThan(2);
});
