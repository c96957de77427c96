import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { heldFigure, radii, ratioFigures, reachOf, type Work, weak } from './contact-figures.ts';
import { contactRatioInRing, involuteContactInRing } from './contact-ratio.formulas.ts';
import { atOf, baseOf, mtOf } from './flanks.formulas.ts';
import { type Inside, involuteRoom, trimmingRoom, trochoidRoom } from './interference.formulas.ts';
import { toldLength, toldNumber } from './parallel-terms.ts';

const T45 = 'SDP/SI, Elements of Metric Gear Technology, T-43 to T-45, equations 5-3 to 5-10';

const ROOM = {
  involute: '(N1 ÷ N2) − (1 − tan(acos(Db2 ÷ Di2)) ÷ tan(aw))',
  trochoid:
    '(acos(max(−1, min(1, ((Di2 ÷ 2)^2 − (Do1 ÷ 2)^2 − C^2) ÷ (C × Do1)))) + inv(acos(Db1 ÷ Do1)) − inv(aw)) × N1 ÷ N2 + inv(aw) − inv(acos(Db2 ÷ Di2)) − acos(max(−1, min(1, (C^2 + (Di2 ÷ 2)^2 − (Do1 ÷ 2)^2) ÷ (C × Di2))))',
  trimming:
    'asin(√(min(1, max(0, 1 − (Db1 × Di2 ÷ (Do1 × Db2))^2) ÷ (1 − (N1 ÷ N2)^2)))) + inv(acos(Db1 ÷ Do1)) − inv(aw) − N2 ÷ N1 × (asin(√(min(1, max(0, (Db2 × Do1 ÷ (Di2 × Db1))^2 − 1) ÷ ((N2 ÷ N1)^2 − 1)))) + inv(acos(Db2 ÷ Di2)) − inv(aw))',
};

function rooms({ at, numbers }: Work, inside: Inside): { figures: Record<string, Figure>; cautions: readonly Caution[] } {
  const { unit, A, mn } = at.couple.one;
  if (inside.ring.tip < inside.ring.base)
    return {
      figures: {},
      cautions: [
        {
          name: 'Tips inside the base circle',
          says: 'The ring’s tips stand where it has no involute: bore it out, or shift it outward.',
          weight: 'danger',
          about: 'contactRatio',
        },
      ],
    };
  const [involute, trochoid, trimming] = [involuteRoom(inside), trochoidRoom(inside), trimmingRoom(inside)];
  const number = (name: string, symbol: string, formula: string, x: number): Figure =>
    toldNumber(unit, { name, symbol, formula, source: T45 }, x, numbers, 4);
  const caution = (bad: boolean, name: string, says: string, about: string): readonly Caution[] =>
    bad && A <= 3 * mn ? [{ name, says, weight: 'beware', about }] : [];
  return {
    figures: {
      involuteRoom: number('Room against involute interference', 'ri', ROOM.involute, involute),
      trochoidRoom: number('Room against trochoid interference', 'rt', ROOM.trochoid, trochoid),
      trimmingRoom: number('Room for moving the wheel straight in', 'rr', ROOM.trimming, trimming),
    },
    cautions: [
      ...caution(
        involute < 0,
        'Involute interference',
        'The ring’s tips dig into the foot of the wheel: bore the ring’s tips shorter, or shift it outward.',
        'involuteRoom',
      ),
      ...caution(
        trochoid < 0,
        'Trochoid interference',
        'The tips foul as they leave each other: too few teeth between ring and wheel.',
        'trochoidRoom',
      ),
      ...caution(
        trimming < 0,
        'Only along the axis',
        'The wheel cannot be moved straight into the ring; a pinion cutter of this size trims the ring’s tips.',
        'trimmingRoom',
      ),
    ],
  };
}

/** A wheel in a ring: how long in contact, and the three ways in which they may foul. */
export function ring(work: Work): Answer {
  const { at, tips } = work;
  const { couple, C, aw } = at;
  const { one, mate } = couple;
  const ratio = contactRatioInRing(radii(one, tips[0]), radii(mate, tips[1]), C, atOf(one), mtOf(one));
  const path = `${reachOf('Do1', 'Db1')} − √(max(0, (Di2 ÷ 2)^2 − (Db2 ÷ 2)^2)) + C × sin(aw)`;
  const bounded = `${reachOf('Do1', 'Db1')} − max(0, √(max(0, (Di2 ÷ 2)^2 − (Db2 ÷ 2)^2)) − C × sin(aw))`;
  const held = involuteContactInRing(radii(one, tips[0]), radii(mate, tips[1]), C, atOf(one), mtOf(one));
  const room = rooms(work, {
    one: { N: one.N, base: baseOf(one) / 2, tip: tips[0] / 2 },
    ring: { N: mate.N, base: baseOf(mate) / 2, tip: tips[1] / 2 },
    C,
    aw,
  });
  const inner = { name: 'Inside of the ring', symbol: 'Di2', formula: '', source: 'as its addendum and shift have it' };
  return {
    figures: {
      ...ratioFigures(work, ratio, path),
      ...heldFigure(one.unit, ratio, held, bounded, `${work.terms.across('π')} × cos(at)`, work.numbers),
      mateOutside: toldLength(one.unit, inner, tips[1], []),
      ...room.figures,
    },
    cautions: [...weak(held), ...room.cautions],
  };
}
