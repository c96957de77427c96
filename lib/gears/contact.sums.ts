import type { Answer } from '../figure/figure.ts';
import { type ContactAsked, workOf } from './contact-figures.ts';
import { rack } from './contact-rack.ts';
import { ring } from './contact-ring.ts';
import { wheels } from './contact-wheels.ts';

export type { ContactAsked } from './contact-figures.ts';

/**
 * How long teeth stay in contact, and whether tips foul: two wheels, a wheel in a ring, a wheel and a rack.
 * Throws DomainError where the pair makes none. Example: 28 and 45 teeth, 8 DP, 14½°: 2.007.
 */
export function contactAnswer(asked: ContactAsked): Answer {
  if (asked.rack) return rack(asked);
  const work = workOf(asked);
  return asked.inRing ? ring(work) : wheels(work);
}
