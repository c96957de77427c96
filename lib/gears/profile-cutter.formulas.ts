import { type HalfSpace, radiiOf, type SpacePoint, type Steps } from './profile.formulas.ts';
import { formCutSpace, formFillet } from './profile-form.formulas.ts';
import type { Tooth } from './tooth.ts';

/** How much higher than its own teeth a cutter's flank is drawn, in modules, so that it reaches the outside of a larger wheel. */
const REACH = 0.4;

/** Moved along the middle line of the space by `up`, as seen from the gear's middle. */
function movedUp([R, t]: SpacePoint, up: number): SpacePoint {
  const [x, y] = [R * Math.sin(t), R * Math.cos(t) + up];
  return [Math.hypot(x, y), Math.atan2(x, y)];
}

/** The run as far as it stays within radius ro and on its own side of the middle of the tooth; its last step is cut where it leaves. */
function within(run: readonly SpacePoint[], ro: number, half: number): SpacePoint[] {
  const past = run.findIndex(([R, t]) => R >= ro || t >= half);
  const [before, after] = [run[past - 1], run[past]];
  if (!before || !after) return [...run];
  const part = Math.min((ro - before[0]) / (after[0] - before[0] || 1), (half - before[1]) / (after[1] - before[1] || 1), 1);
  const end: SpacePoint = [before[0] + part * (after[0] - before[0]), before[1] + part * (after[1] - before[1])];
  return [...run.slice(0, past), end];
}

/**
 * Half the space that a form cutter made for N2 teeth really leaves in a wheel of N teeth, sunk to the wheel's own depth: the cutter's own
 * space, its middle m (N − N2)/2 further out along the middle line, as far as the blank reaches.
 * Derived: both spaces are half a pitch wide at their pitch lines, and these lie on each other. With N2 = N it is the wheel's own space.
 * Throws DomainError as formCutSpace. Example: form for 26 in 35 teeth, m 1: half width 1.274 at one module above the pitch line (true 1.214).
 */
export function substituteSpace(tooth: Tooth, N2: number, steps?: Steps): HalfSpace {
  const { ro } = radiiOf(tooth);
  const up = (tooth.m * (tooth.N - N2)) / 2;
  const half = Math.PI / tooth.N;
  const made = { ...tooth, N: N2 };
  const { root, fillet, flank: tall } = formCutSpace({ ...made, A: tooth.A + REACH * tooth.m }, formFillet(made), steps);
  const place = (run: readonly SpacePoint[]): SpacePoint[] => run.map((at) => movedUp(at, up));
  const flank = within(place(tall), ro, half);
  const [R = 0, t = 0] = flank.at(-1) ?? [];
  const top: SpacePoint[] =
    half - t > 1e-9
      ? [
          [R, t],
          [R, (t + half) / 2],
          [R, half],
        ]
      : [[R, t]];
  return { root: place(root), fillet: place(fillet), flank, top, formRadius: flank[0]?.[0] ?? 0, undercut: false };
}
