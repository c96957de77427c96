import { expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { pairAnswer } from '../../../lib/gears/pair.sums.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { wheelOf } from './wheel-of.ts';

const plain = { plane: 'normal', ring: false, shift: 0 } as const;

/** The answer, or the refusal in shop words; any other error goes through. */
function answered<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

it('a wheel that ends inside its base circle is said to have no flank, and small wheels are answered or refused in words', () => {
  const names = new Set<string>();
  for (const shift of [-1, -0.9, -0.8, -0.675, -0.5])
    for (const helix of [0, 15, 30, 40]) {
      const gear = { ...wheelOf(4, '8 DP'), ...plain, helix: { angle: degrees(helix), hand: 'right' }, shift } as const;
      const answer = answered(() => pairAnswer({ gear, mate: 59, inRing: false, shift, mateShift: 0 }));
      for (const { name } of answer?.cautions ?? []) names.add(name);
      for (const centre of [0.1, 3, 4, 4.6]) answered(() => pairAnswer({ gear, mate: 59, inRing: false, shift, centre: inches(centre) }));
    }
  expect([...names]).toContain('No flank');
});

it('a reading with pins that fall between the full teeth is answered in words', () => {
  for (const pin of [0.01, 0.05, 0.1, 0.15, 0.2, 0.3, 0.6])
    for (const reading of [0.5, 2, 2.9, 3.1, 3.4, 6])
      for (const shift of [-0.6, 0, 0.5])
        answered(() => pinsAnswer({ gear: { ...wheelOf(22, '8 DP'), ...plain, shift }, pin: inches(pin), reading: inches(reading) }));
});
