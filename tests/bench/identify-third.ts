import type { Candidate } from '../../lib/identify/candidates.ts';
import { bell, type Draw, from } from './identify-draw.ts';
import type { Law } from './identify-worn.ts';

/** Kinds and systems as often as a shop of metric and imperial machines might meet them: again a count of its own. */
function mixedShop({ known, key, composite }: Candidate): number {
  const kind = { DP: 3, module: 3, CP: 1 }[known.pitch.kind];
  return kind * (composite ? 2 : key.startsWith('stub') ? 0.5 : 1);
}

/** Student's law of three degrees: the bell in the middle, with tails that fall off slowly. */
const heavy = (draw: Draw): number => bell(draw) / Math.sqrt((bell(draw) ** 2 + bell(draw) ** 2 + bell(draw) ** 2) / 3);

/**
 * The third law, made when everything was tuned and set, and then used to lower the temper: a caliper whose scale is stretched or shrunk, readings with heavy tails, written
 * down to half a thousandth or to 0.02 mm, outsides worn away or turned in every second wheel, wear that is even over its range.
 */
export const THIRD: Law = {
  often: mixedShop,
  noneOften: 0.06,
  wear: (draw, m) => from(draw, 0, 0.004 + 0.045 * m),
  uneven: (draw, wear) => heavy(draw) * 0.12 * wear,
  tipGone: (draw, m) => (draw() < 0.5 ? Math.abs(heavy(draw)) * 0.02 : from(draw, 0.03, 0.4)) * m,
  rootOff: (draw, m) => heavy(draw) * 0.02 * m,
  shift: (draw) => (draw() < 0.08 ? from(draw, -0.25, 0.5) : 0),
  misread: (draw, error) => heavy(draw) * error * 0.8,
  bias: () => 0,
  stretch: (draw) => 1 + from(draw, -0.0006, 0.0006),
  readTo: (draw) => (draw() < 0.5 ? 0.0005 : 0.02 / 25.4),
};
