import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { heldFigure, radii, ratioFigures, reachOf, type Work, weak } from './contact-figures.ts';
import { contactRatioInRing, involuteContactInRing } from './contact-ratio.formulas.ts';
import { atOf, baseOf, mtOf } from './flanks.formulas.ts';
import { type Inside, involuteRoom, trimmingRoom, trochoidRoom } from './interference.formulas.ts';
import { toldLength, toldNumber } from './parallel-terms.ts';

const T45 = 'SDP/SI, Elements of Metric Gear Technology, T-43 to T-45, equations 5-3 to 5-10';

/** The three ways in which ring and wheel may foul. */
type Room = 'involute' | 'trochoid' | 'trimming';

const ROOM: Readonly<Record<Room, string>> = {
  involute: '(N1 ÷ N2) − (1 − tan(acos(Db2 ÷ Di2)) ÷ tan(aw))',
  trochoid:
    '(acos(max(−1, min(1, ((Di2 ÷ 2)^2 − (Do1 ÷ 2)^2 − C^2) ÷ (C × Do1)))) + inv(acos(Db1 ÷ Do1)) − inv(aw)) × N1 ÷ N2 + inv(aw) − inv(acos(Db2 ÷ Di2)) − acos(max(−1, min(1, (C^2 + (Di2 ÷ 2)^2 − (Do1 ÷ 2)^2) ÷ (C × Di2))))',
  trimming:
    'asin(√(min(1, max(0, 1 − (Db1 × Di2 ÷ (Do1 × Db2))^2) ÷ (1 − (N1 ÷ N2)^2)))) + inv(acos(Db1 ÷ Do1)) − inv(aw) − N2 ÷ N1 × (asin(√(min(1, max(0, (Db2 × Do1 ÷ (Di2 × Db1))^2 − 1) ÷ ((N2 ÷ N1)^2 − 1)))) + inv(acos(Db2 ÷ Di2)) − inv(aw))',
};

const NO_INVOLUTE: Caution = {
  name: 'Tips inside the base circle',
  says: 'The ring’s tips stand where it has no involute: bore it out, or shift it outward.',
  weight: 'danger',
  about: 'contactRatio',
};
const FOULS: Readonly<Record<Room, Caution>> = {
  involute: {
    name: 'Involute interference',
    says: 'The ring’s tips dig into the foot of the wheel: bore the ring’s tips shorter, or shift it outward.',
    weight: 'beware',
    about: 'involuteRoom',
  },
  trochoid: {
    name: 'Trochoid interference',
    says: 'The tips foul as they leave each other: too few teeth between ring and wheel.',
    weight: 'beware',
    about: 'trochoidRoom',
  },
  trimming: {
    name: 'Only along the axis',
    says: 'The wheel cannot be moved straight into the ring; a pinion cutter of this size trims the ring’s tips.',
    weight: 'beware',
    about: 'trimmingRoom',
  },
};

type Rooms = Readonly<Record<Room, number>>;

function roomFigures({ at, numbers }: Work, { involute, trochoid, trimming }: Rooms): Record<string, Figure> {
  const number = (name: string, symbol: string, room: Room, x: number): Figure =>
    toldNumber(at.couple.one.unit, { name, symbol, formula: ROOM[room], source: T45 }, x, numbers, 4);
  return {
    involuteRoom: number('Room against involute interference', 'ri', 'involute', involute),
    trochoidRoom: number('Room against trochoid interference', 'rt', 'trochoid', trochoid),
    trimmingRoom: number('Room for moving the wheel straight in', 'rr', 'trimming', trimming),
  };
}

/** None of a ring whose teeth stand more than three modules high. */
function roomCautions({ at }: Work, rooms: Rooms): readonly Caution[] {
  const { A, mn } = at.couple.one;
  if (A > 3 * mn) return [];
  return (['involute', 'trochoid', 'trimming'] as const).filter((room) => rooms[room] < 0).map((room) => FOULS[room]);
}

function rooms(work: Work, inside: Inside): { figures: Record<string, Figure>; cautions: readonly Caution[] } {
  if (inside.ring.tip < inside.ring.base) return { figures: {}, cautions: [NO_INVOLUTE] };
  const found = { involute: involuteRoom(inside), trochoid: trochoidRoom(inside), trimming: trimmingRoom(inside) };
  return { figures: roomFigures(work, found), cautions: roomCautions(work, found) };
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
