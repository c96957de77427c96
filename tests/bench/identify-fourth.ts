import type { Candidate } from '../../lib/identify/candidates.ts';
import { bell, type Draw, from } from './identify-draw.ts';
import type { Law } from './identify-worn.ts';

/** Wheels as an island of old machines may have them: coarse and middling inch pitches by far, few of a module, hardly a circular pitch. */
function oldMachines({ known, key, m }: Candidate): number {
  const kind = { DP: 6, module: 1, CP: 0.5 }[known.pitch.kind];
  const size = m > 1 / 24 && m < 1 / 3 ? 3 : 1;
  return kind * size * (key.startsWith('old') ? 0.5 : 1);
}

/** A burr stands up and is never a hollow: most wheels have none to speak of. */
const burr = (draw: Draw): number => (draw() < 0.35 ? -Math.log(1 - draw()) * 0.0015 : 0);

/** Of five outsides one is held against a rule and named to the nearest 64th; the rest go by the vernier. */
const RULE = 1 / 64;

/**
 * The fourth law, made after temper and cap stood and used to set neither: burrs raised on the tips and bruised into the flanks, so that they
 * only ever add; a vernier set wrong by the same amount on every reading of a wheel; an outside now and then read from a rule to the nearest
 * 64th without saying so; errors even between two ends; wear that is nothing on half of the wheels and heavy on some. The teeth are counted right.
 */
export const FOURTH: Law = {
  often: oldMachines,
  noneOften: 0.05,
  wear: (draw, m) => (draw() < 0.5 ? from(draw, 0, 0.003) : from(draw, 0.002, 0.004 + 0.06 * m)),
  uneven: (draw, wear) => burr(draw) + from(draw, -0.1, 0.2) * wear,
  tipGone: (draw, m) => (draw() < 0.2 ? from(draw, 0.02, 0.3) : from(draw, 0, 0.03)) * m - 2 * burr(draw),
  rootOff: (draw, m) => -Math.abs(bell(draw)) * 0.03 * m,
  shift: (draw) => (draw() < 0.04 ? from(draw, 0, 0.4) : 0),
  misread: (draw, error) => from(draw, -1.6, 1.6) * error,
  bias: (draw) => (draw() < 0.25 ? (draw() < 0.5 ? -1 : 1) * from(draw, 0.001, 0.004) : 0),
  stretch: () => 1,
  readTo: () => 0.001,
  outsideReadTo: (draw) => (draw() < 0.2 ? RULE : 0.001),
};
