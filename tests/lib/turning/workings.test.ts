import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../lib/figure/figure.ts';
import { offerSpeed } from '../../../lib/speeds/speed.sums.ts';
import { timeOfGear, timeOfPass } from '../../../lib/speeds/times.sums.ts';
import type { Dial } from '../../../lib/tooling/tooling.ts';
import { centralMove, centralProof } from '../../../lib/turning/centering.sums.ts';
import { dialMove } from '../../../lib/turning/dial.sums.ts';
import { nextDialMove } from '../../../lib/turning/next-move.sums.ts';
import { turningPlan } from '../../../lib/turning/passes.sums.ts';
import { runOutEffects } from '../../../lib/turning/run-out.sums.ts';
import { trialNick } from '../../../lib/turning/trial-nick.ts';
import { fourJawTruing } from '../../../lib/turning/truing.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { evaluateFigure } from '../evaluate.ts';

const inchDial: Dial = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 };
const metricDial: Dial = { reads: 'diameter', unit: 'mm', division: millimetres(0.02), perTurn: 250 };
const speeds = { name: 'mill', speedsRpm: [45, 73, 118] };
const gear = { teeth: 22, face: inches(0.875), cutterDiameter: inches(3.5), depth: inches(0.269625), feedPerMinute: inches(0.75) };
const proof = { shift: inches(0.0061), pitchRadius: inches(1.375) };
const blank = { oldOutside: inches(4.125), oldRoot: inches(3.58575), newOutside: inches(3) };

/** Every sum of the two rooms, on both kinds of dial and in both units. */
const answers: Readonly<Record<string, Answer>> = {
  'travel on an inch dial': dialMove({ move: inches(0.5625), counted: 'travel', dial: inchDial }),
  'diameter on a dial of travel': dialMove({ move: inches(0.56251), counted: 'diameter', dial: inchDial }),
  'travel on a dial of diameter': dialMove({ move: inches(0.375), counted: 'travel', dial: metricDial }),
  'next move': nextDialMove({ measured: inches(3.0123), wanted: inches(3), dial: inchDial, cuts: 2 }),
  'metal gone': nextDialMove({ measured: inches(2.99), wanted: inches(3), dial: metricDial }),
  'turning plan': turningPlan({ ...blank, dial: inchDial }),
  'turning plan, too small': turningPlan({ ...blank, oldRoot: inches(2.9), dial: metricDial }),
  'turning plan, bar': turningPlan({ ...blank, oldRoot: null, depthPerPass: inches(0.05) }),
  truing: fourJawTruing({ jaws: [inches(0.0205), inches(-0.003), inches(-0.0195), inches(0.004)], screwLead: inches(0.05) }),
  'run-out': runOutEffects({ runOut: inches(0.0025), angle: degrees(14.5) }),
  central: centralMove({ blankDiameter: inches(2.9963), cutterWidth: inches(0.311), paper: inches(0.002), dial: inchDial }),
  'central proof': centralProof({ ...proof, dial: metricDial }),
  nick: trialNick(22),
  'speed typed': offerSpeed({ surfaceSpeedFtPerMin: 62.5, diameter: inches(3.5), machine: speeds }),
  'speed of a form cutter, metric': offerSpeed({
    material: 'steel',
    steel: 'high-speed',
    cut: 'form milling',
    diameter: millimetres(80),
    machine: speeds,
    unit: 'mm',
  }),
  'speed in a chuck': offerSpeed({
    material: 'brass',
    steel: 'carbide',
    cut: 'interrupted turning',
    diameter: inches(4.125),
    machine: speeds,
    chuck: { name: 'chuck', diameter: inches(8), topSpeedRpm: null },
    offCentre: true,
  }),
  'speed in a chuck with a maker': offerSpeed({
    surfaceSpeedFtPerMin: 300,
    diameter: inches(1),
    machine: speeds,
    chuck: { name: 'chuck', diameter: inches(6), topSpeedRpm: 1500 },
    unit: 'mm',
  }),
  'time of a gear': timeOfGear({ ...gear, roughRounds: 2 }),
  'time of a gear, metric': timeOfGear({ ...gear, overrun: inches(0.1), unit: 'mm' }),
  'time of passes': timeOfPass({ length: inches(0.875), feedPerTurn: inches(0.0053), speedRpm: 118, passes: 9 }),
};

describe('a printed formula, worked on its printed figures, gives the printed answer', () => {
  it.each(Object.entries(answers))('%s', (_name, { figures }) => {
    for (const figure of Object.values(figures)) {
      expect(figure.source.length, figure.name).toBeGreaterThan(5);
      const found = evaluateFigure(figure);
      if (!found) continue;
      expect(
        Math.abs(found.printed - found.worked),
        `${figure.name}: ${figure.formula} gives ${found.worked}, printed ${found.printed}`,
      ).toBeLessThanOrEqual(found.allowed);
    }
  });
});
