import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../lib/figure/figure.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { helicalAnswer } from '../../../lib/gears/helical.sums.ts';
import { pairAnswer } from '../../../lib/gears/pair.sums.ts';
import { parallelOf } from '../../../lib/gears/parallel.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { shiftAnswer } from '../../../lib/gears/shift.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { refusal } from '../refusal.ts';
import { wheelOf } from './wheel-of.ts';

const names = (answer: Answer): readonly string[] => answer.cautions.map(({ name }) => name);
const printed = (answer: Answer, key: string): string | undefined => {
  const figure = answer.figures[key];
  return figure && printFigure(figure).text;
};
const ring = (teeth: number, pitch: string, system = 'full-20') => parallelOf(wheelOf(teeth, pitch, system), { ring: true });

describe('between the usual wires of a ring', () => {
  // M of rings by the formulas of SDP/SI, Technical section, p. T60, worked apart: 1 DP, 1.44/P.
  it.each([
    [16, 'full-20', '14.6630'],
    [31, 'full-20', '29.6242'],
    [40, 'full-20', '38.6644'],
    [32, 'full-14.5', '30.8623'],
  ])('%i teeth, %s: 1.44/P is taken, though it lies below the tips, and that is said', (teeth, system, M) => {
    for (const answer of [
      pinsAnswer({ gear: ring(teeth, '1 DP', system) }),
      pinsAnswer({ gear: ring(teeth, '1 DP', system), pin: inches(1.44) }),
    ]) {
      expect(printed(answer, 'overPins')).toBe(M);
      expect(printed(answer, 'pin')).toBe('1.4400');
      expect(names(answer)).toContain('Pins below the tips');
    }
  });

  it('a pin that stands in past the tips is not said to lie below them', () => {
    const answer = pinsAnswer({ gear: ring(40, '1 DP'), pin: inches(1.68) });
    expect(names(answer)).not.toContain('Pins below the tips');
    expect(names(pinsAnswer({ gear: ring(40, 'module 2') }))).not.toContain('Pins below the tips');
  });

  it('a pin that bottoms in a ring, or sits on its tips, is refused still', () => {
    expect(refusal(() => pinsAnswer({ gear: ring(40, '1 DP'), pin: inches(0.7) })).limit).toMatch(/bottoms in the root/);
    expect(refusal(() => pinsAnswer({ gear: ring(40, '1 DP'), pin: inches(2.6) })).limit).toMatch(/tips/);
  });

  it('over a wheel a pin that hides below the tips is refused', () => {
    const gear = parallelOf(wheelOf(60, '1 DP', 'full-20'));
    expect(refusal(() => pinsAnswer({ gear, pin: inches(1.3) })).limit).toMatch(/past the tips|bottoms/);
  });
});

describe('spans of leaning and shifted wheels say what is wrong with them', () => {
  it('that a hob cuts away where the jaws touch, and that no span serves', () => {
    const few = shiftAnswer({ gear: parallelOf(wheelOf(4, '4 DP', 'full-14.5')) });
    expect(printed(few, 'span')).toBeDefined();
    expect(names(few)).toContain('Undercut, span');
    expect(names(shiftAnswer({ gear: parallelOf(wheelOf(24, 'module 3', 'module-1.25'), { shift: 0.4 }) }))).toEqual([]);
    const flat = shiftAnswer({
      gear: parallelOf(
        {
          ...wheelOf(300, 'module 1', 'module-1.25'),
          system: { ...wheelOf(300, 'module 1', 'module-1.25').system, addendum: 0.01, dedendum: 0.02 },
        },
        { shift: 1 },
      ),
    });
    expect(flat.figures['span'] === undefined).toBe(names(flat).includes('No span'));
  });

  it('a helical wheel says it, too', () => {
    const gear = { ...parallelOf(wheelOf(4, '24 DP', 'full-20'), { shift: -0.592 }), helix: { angle: degrees(20), hand: 'left' as const } };
    const answer = helicalAnswer({ gear });
    expect(printed(answer, 'span') === undefined || names(answer).includes('Undercut, span')).toBe(true);
  });
});

it('centres nearer than the base circles, with both shifts typed, are refused by what is wrong', () => {
  const gear = parallelOf(wheelOf(30, 'module 2', 'module-1.25'));
  const refused = refusal(() => pairAnswer({ gear, mate: 40, inRing: false, shift: 0, mateShift: 0, centre: millimetres(60) }));
  expect(refused.limit).toContain('Nearer than 65.778 mm no line touches both base circles');
  expect(refused.about).toEqual(['centre']);
  const found = refusal(() => pairAnswer({ gear, mate: 40, inRing: false, centre: millimetres(60) }));
  expect(found.limit).toContain('No shift reaches it');
});
