import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { camAnswer } from '../../../lib/leads/cam.sums.ts';
import { type HelicalAsked, helicalAnswer } from '../../../lib/leads/helical.sums.ts';
import { errorAcrossFace } from '../../../lib/leads/lead.formulas.ts';
import { leadAnswer } from '../../../lib/leads/lead.sums.ts';
import { targetForLead } from '../../../lib/leads/lead-trains.ts';
import { screwCuttingAnswer } from '../../../lib/leads/screw-cutting.sums.ts';
import { dialUse, startShift, threadsToMatch } from '../../../lib/leads/thread-dial.formulas.ts';
import type { Cutter } from '../../../lib/tooling/tooling.ts';
import { nearerWith } from '../../../lib/trains/nearer-with.ts';
import { nearestTrains } from '../../../lib/trains/nearest.ts';
import { compareNearness } from '../../../lib/trains/target.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { type Ratio, ratio } from '../../../lib/values/ratio.ts';
import { everyBest } from '../trains/exhaustive.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const HEAD_WHEELS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const HEAD = { turns: 40, screw: [1, 4], drive: 'worm' } as const;
const ASKED: HelicalAsked = {
  gear: { teeth: 24, pitch: { kind: 'DP', size: [8, 1] }, system: SYSTEM },
  helix: 30,
  hand: 'right',
  face: inches(1),
  machine: HEAD,
  wheels: HEAD_WHEELS,
  upTo: 4,
};
/** The nearest of two or four wheels. */
const nearestOf = (wheels: readonly number[], target: ReturnType<typeof targetForLead>): Ratio | null =>
  ([2, 4] as const)
    .flatMap((wheelsInTrain) => nearestTrains({ wheels, target, wheelsInTrain }).slice(0, 1))
    .map((one) => one.ratio)
    .sort((a, b) => compareNearness(a, b, target))[0] ?? null;
const errorOf = (text: string): number => {
  const [top, bottom] = text.split('/').map(Number) as [number, number];
  return top / bottom;
};
const number = (value: unknown): number => (value as { number: number }).number;

describe('helicalAnswer', () => {
  it('works 24 teeth of 8 DP at 30°: diameter, lead, virtual count by hand', () => {
    const { figures } = helicalAnswer(ASKED);
    expect(number(figures.diameter.value)).toBeCloseTo(3 / Math.cos(Math.PI / 6), 9);
    expect(number(figures.lead.value)).toBeCloseTo(24 * (Math.PI / 8) * 2, 9);
    expect(number(figures.virtual.value)).toBeCloseTo(24 / Math.cos(Math.PI / 6) ** 3, 9);
    expect(figures.virtual.note).toContain('No. 3');
  });

  it('names the cutter of the drawer by the virtual count, 36.95 for 24 teeth at 30°, not by the count itself', () => {
    const cutter = (id: number, number: string, teethFrom: number, teethTo: number): Cutter => ({
      kind: 'cutter',
      id,
      name: `No. ${number}, 8 DP`,
      here: true,
      pitch: { kind: 'DP', size: [8, 1] },
      angle: degrees(14.5),
      number,
      teethFrom,
      teethTo,
      hole: null,
      diameter: null,
      width: null,
      stampedDepth: null,
      steel: 'high-speed',
      exactFor: null,
      sharp: true,
    });
    const drawer = [cutter(1, '4', 26, 34), cutter(2, '5', 21, 25), cutter(3, '3', 35, 54)];
    const named = (cutters: readonly Cutter[]) => helicalAnswer({ ...ASKED, cutters }).figures.cutter;
    expect(named(drawer).value).toEqual({ words: 'No. 3, 8 DP' });
    // With no No. 3 none is right: what the plain count would take is never offered as right.
    const without = named(drawer.slice(0, 2));
    expect((without.value as { words: string }).words).not.toBe('No. 5, 8 DP');
    expect((without.value as { words: string }).words).toMatch(/none/);
  });

  it('drifts across the face as a helix walked in a thousand steps does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        fc.double({ min: 0.2, max: 4, noNaN: true }),
        fc.double({ min: 3, max: 60, noNaN: true }),
        (d, F, L) => {
          const L1 = L * 1.003;
          let apart = 0;
          for (let n = 0; n < 1000; n++) apart += (F / 1000) * ((Math.PI * d) / L1 - (Math.PI * d) / L);
          expect(errorAcrossFace(d, F, L, L1)).toBeCloseTo(apart, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('says that the mate cancels only where the same wheels give it the same angle', () => {
    const mate = (teeth: number) => helicalAnswer({ ...ASKED, mate: teeth }).cautions.find(({ name }) => name === 'Mate')?.says ?? '';
    expect(mate(24)).toContain('the drift cancels');
    expect(mate(48)).toContain('The same wheels would serve only a mate of 24');
  });

  it('refuses straight teeth, and says so of an empty drawer', () => {
    expect(() => helicalAnswer({ ...ASKED, helix: 0 })).toThrow(/no wheels are needed/);
    expect(() => helicalAnswer({ ...ASKED, helix: 89 })).toThrow(/worm/);
    expect(helicalAnswer({ ...ASKED, wheels: [] }).says).toContain('fewer than two wheels');
    expect(helicalAnswer({ ...ASKED, wheels: [40, 40] }).figures.train.value).toEqual({ ratio: [1, 1] });
  });

  it('warns of short leads, and of the worm taken out', () => {
    const lead = (typed: readonly [number, number], drive: 'worm' | 'direct') =>
      leadAnswer({
        lead: { says: '', size: typed, pi: 0 },
        diameter: inches(1),
        face: inches(1),
        hand: 'left',
        machine: { ...HEAD, drive },
        wheels: HEAD_WHEELS,
        upTo: 4,
      }).cautions.map(({ name }) => name);
    expect(lead([1, 1], 'worm')).toContain('Short lead');
    expect(lead([1, 2], 'worm')).toContain('Out of reach');
    expect(lead([1, 4], 'direct')).toContain('Worm out');
    expect(lead([1, 4], 'direct')).not.toContain('Dividing');
    expect(lead([12, 1], 'worm')).toContain('Dividing');
    expect(lead([12, 1], 'worm')).not.toContain('Short lead');
  });
});

describe('nearerWith', () => {
  const lead = { says: '', size: ratio(370, 24), pi: 0 } as const;

  it('names the missing wheel that would make a lead exact, and none where it is exact already', () => {
    const today = nearestOf(HEAD_WHEELS, targetForLead(lead, HEAD));
    const [first, ...others] = nearerWith(targetForLead(lead, HEAD), HEAD_WHEELS, [41, 37, 37], today);
    expect(first).toMatchObject({ teeth: 37, exact: true });
    for (const other of others) expect(other.exact).toBe(false);
    expect(nearerWith(targetForLead({ ...lead, size: ratio(12) }, HEAD), HEAD_WHEELS, [37], [5, 6])).toEqual([]);
  });

  it('agrees with every train of the drawer and that one wheel, and offers none that does not halve what today is off by', () => {
    const wheels = fc.array(fc.constantFrom(20, 24, 28, 32, 36, 40, 44, 48), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(
        wheels,
        fc.uniqueArray(fc.constantFrom(23, 30, 37, 40), { maxLength: 3 }),
        fc.integer({ min: 200, max: 6000 }),
        (drawer, missing, n) => {
          const wanted = { says: '', size: ratio(n, 100), pi: 0 } as const;
          const nearest = (list: readonly number[]): number =>
            Math.min(
              ...[1, 2].filter((side) => 2 * side <= list.length).map((side) => errorOf(everyBest(list, side, 1000n, BigInt(n)).error)),
            );
          const today = nearestOf(drawer, targetForLead(wanted, HEAD));
          const found = new Map(
            nearerWith(targetForLead(wanted, HEAD), drawer, missing, today).map(({ teeth, ratio: [top, bottom] }) => [
              teeth,
              Math.abs(top / bottom - 1000 / n),
            ]),
          );
          for (const teeth of missing) {
            const [without, withIt] = [nearest(drawer), nearest([...drawer, teeth])];
            if (2 * withIt < without * (1 - 1e-9)) expect(found.get(teeth)).toBeCloseTo(withIt, 10);
            else if (2 * withIt > without * (1 + 1e-9)) expect(found.has(teeth)).toBe(false);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('refuses more missing numbers than it can try at once', () => {
    const many = Array.from({ length: 11 }, (_, n) => 101 + n);
    expect(() => nearerWith(targetForLead(lead, HEAD), HEAD_WHEELS, many, null)).toThrow(/At most 10/);
  });
});

describe('camAnswer', () => {
  it('gears for no less than the longest lobe, and tilts each so that its own lead comes out', () => {
    const lobe = fc.record({ rise: fc.double({ min: 0.1, max: 2, noNaN: true }), hundredths: fc.integer({ min: 10, max: 100 }) });
    fc.assert(
      fc.property(fc.array(lobe, { minLength: 1, maxLength: 4 }), (lobes) => {
        const answer = camAnswer({ lobes, machine: HEAD, wheels: HEAD_WHEELS });
        const G = number(answer.figures.geared.value);
        const leads = lobes.map(({ rise, hundredths }) => (rise * 100) / hundredths);
        expect(G).toBeGreaterThanOrEqual(Math.max(...leads) - 1e-6);
        answer.tables?.[0]?.rows.forEach((row, n) => {
          const tilt = (row[3] as { angle: number }).angle / 3_600_000;
          expect(G * Math.sin((tilt * Math.PI) / 180)).toBeCloseTo(Math.min(leads[n] ?? 0, G), 4);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('gears for the shortest lead that leaves the head at 80° or lower, by every train of a drawer of many wheels', () => {
    const wheels = Array.from({ length: 16 }, (_, n) => 21 + 5 * n + (n % 3));
    const leads: number[] = [];
    for (const [i, a] of wheels.entries())
      for (const [j, c] of wheels.entries()) {
        if (i === j) continue;
        leads.push((10 * c) / a);
        for (const [k, b] of wheels.entries())
          for (const [m, d] of wheels.entries()) if (new Set([i, j, k, m]).size === 4) leads.push((10 * c * d) / (a * b));
      }
    for (const rise of [0.3, 1.15, 2.748, 4.041]) {
      const low = Math.min(...leads.filter((G) => rise * 10 <= G * Math.sin((80 * Math.PI) / 180)));
      const answer = camAnswer({ lobes: [{ rise, hundredths: 10 }], machine: HEAD, wheels });
      expect(number(answer.figures.geared.value)).toBeCloseTo(low, 5);
    }
  });

  it('refuses a lobe longer than any train gears for', () => {
    expect(() => camAnswer({ lobes: [{ rise: 20, hundredths: 1 }], machine: HEAD, wheels: HEAD_WHEELS })).toThrow(/No two or four/);
  });
});

describe('the thread dial, walked thread by thread', () => {
  const thread = fc.tuple(fc.integer({ min: 1, max: 60 }), fc.constantFrom(1, 2, 4));
  it('offers exactly the lines at which the screw and the work agree', () => {
    fc.assert(
      fc.property(
        thread,
        fc.constantFrom(4, 6, 8, 16),
        fc.constantFrom([16, 8], [16, 4], [24, 12], [12, 12]),
        ([n, of], screw, [teeth, lines]) => {
          if (teeth === undefined || lines === undefined) return;
          const use = dialUse(threadsToMatch(ratio(1, screw), ratio(of, n)), { teeth, lines });
          // Threads of the work gone by when k lines have passed: (k × teeth ÷ lines ÷ screw) × n ÷ of must be whole.
          const serves = (k: number): boolean => (k * teeth * n) % (lines * screw * of) === 0 && (k * teeth) % lines === 0;
          const turn = (t: number): number[] => Array.from({ length: lines }, (_, k) => k).filter((k) => serves(k + t * lines));
          if (use.use === 'lines') for (let t = 0; t < 6; t++) expect(turn(t)).toEqual([...use.lines]);
          if (use.use === 'count turns') {
            expect(serves(use.turns * lines)).toBe(true);
            for (let t = 1; t < use.turns; t++) expect(serves(t * lines)).toBe(false);
          }
          for (let k = 1; k < 3 * use.step && use.use !== 'anywhere'; k++) expect(serves(k)).toBe(k % use.step === 0);
          if (use.use === 'anywhere') for (let j = 1; j < 8; j++) expect((j * n) % (screw * of)).toBe(0);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('moves from start to start by whole threads of the screw, or says that none does', () => {
    for (const [screw, tpi, starts] of [
      [4, 4, 2],
      [8, 6, 3],
      [8, 8, 2],
      [4, 10, 2],
      [6, 5, 4],
    ] as const) {
      const L = ratio(starts, tpi);
      const j = startShift(ratio(1, screw), L, starts);
      const hits = Array.from({ length: 200 }, (_, k) => k + 1).filter(
        (k) => (k * tpi) % (screw * starts) === (screw * starts) / starts && (screw * starts) % starts === 0,
      );
      expect(j).toBe(hits[0] ?? null);
    }
  });

  it('never opens the half-nuts on a pitch that holds π', () => {
    const answer = screwCuttingAnswer({
      thread: { says: 'module 1', size: [5, 127], pi: 1 },
      starts: 2,
      screw: [1, 8],
      dial: { teeth: 16, lines: 8 },
      driver: 40,
    });
    expect(answer.figures.match.value).toEqual({ words: 'never' });
    // From start to start of a worm of module 1, two starts: one pitch, π mm.
    expect(number(answer.figures.shift.value)).toBeCloseTo(Math.PI / 25.4, 9);
    expect(answer.figures.driver.value).toEqual({ count: 20, unit: 'teeth' });
    expect(answer.figures.halfNut.value).toEqual({ words: 'no number of whole threads does it' });
  });

  it('counts lines as they pass where the same line does not serve in every turn', () => {
    const lines = (starts: number): unknown =>
      screwCuttingAnswer({ thread: { says: '', size: [1, 6], pi: 0 }, starts, screw: [1, 8], dial: { teeth: 16, lines: 6 }, driver: null })
        .figures.lines.value;
    // 6 TPI, 3 starts on 8 TPI: the lead is 4 threads of the screw; lines pass every 16/6 of a thread, so every third line, 8 threads.
    expect(lines(3)).toEqual({ words: 'every third line from the one started on' });
    // 5 starts: 20 threads; whole threads come every third line, and 20 first with the 15th line, 40 threads.
    expect(lines(5)).toEqual({ words: 'the line started on, every 5 turns of the dial' });
    // 0.7 mm, 4 starts, on a 3 mm screw: 14 threads; a line passes every 4 threads, so 28 threads after 7 lines of the 8.
    const passing = screwCuttingAnswer({
      thread: { says: '', size: [7, 254], pi: 0 },
      starts: 4,
      screw: [15, 127],
      dial: { teeth: 32, lines: 8 },
      driver: null,
    });
    expect(passing.figures.lines.value).toEqual({
      words: 'every 7th line as it passes, counted on from the one last closed at; the line started on comes right again after 7 turns',
    });
  });
});
