import { describe, expect, it } from 'vitest';
import { secondChoice } from '../../../lib/blanks/second-choice.sums.ts';
import { testSpare } from '../../../lib/blanks/spare-test.sums.ts';
import { judgeSpare } from '../../../lib/blanks/spare-test.ts';
import type { SpareWheel } from '../../../lib/blanks/spare-wheel.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Figure } from '../../../lib/figure/figure.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import type { Gear } from '../../../lib/gears/gear.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { evaluateFigure } from '../evaluate.ts';
import { gear, RECESSED, SIX, spare, system } from './wheels.ts';

const judge = (teeth: number, from: SpareWheel, more: Partial<Gear> = {}) => judgeSpare({ wanted: gear(teeth, 8, more), spare: from });
const results = (from: ReturnType<typeof judge>) => Object.fromEntries(from.checks.map(({ about, result }) => [about, result]));
const text = (figure: Figure | undefined) => (figure ? printFigure(figure).text : '');

describe('the drawer of the hobber', () => {
  it('31 becomes 22 and 34 becomes 28, with the printed figures', () => {
    const { figures } = testSpare({ wanted: gear(22), spare: spare(31) }).answer;
    const printed = ['oldOutside', 'oldRoot', 'newOutside', 'turnOff', 'throughTeeth', 'wholeDepth', 'newRoot'] as const;
    expect(printed.map((key) => text(figures[key]))).toEqual(['4.1250', '3.5858', '3.0000', '0.5625', '0.2696', '0.2696', '2.4608']);
    expect(judge(28, spare(34)).verdict).toBe('clean');
  });
  it('25 does not make a 22, nor 31 a 28: the gaps stay', () => {
    const small = judge(22, spare(25));
    expect(small.verdict).toBe('old gaps stay');
    expect(small.says).toContain('0.0821 in deep');
    expect(judge(28, spare(31)).verdict).toBe('old gaps stay');
  });
  it('names the recess of the 46 and refuses it for both', () => {
    for (const teeth of [22, 28]) {
      const judged = judge(teeth, spare(46, 8, {}, { body: RECESSED }));
      expect(judged.verdict).toBe('refused');
      expect(judged.says).toContain('the recess between 1.9000 in and 4.6000 in on both sides');
    }
  });
  it('never says yes to a wheel whose body nobody measured', () => {
    expect(judge(22, spare(31, 8, {}, { body: { known: false } })).verdict).toBe('measure first');
  });
});

describe('what else is looked at', () => {
  it('a recess that only touches the new ring is not in the way', () => {
    const edge = { known: true, recesses: [{ side: 'marked', inner: inches(1.4), outer: inches(1.8) }], openings: [] } as const;
    expect(judge(22, spare(31, 8, {}, { body: edge })).verdict).toBe('clean');
  });
  it('hardness: case-hard only with the outside a case depth under the old roots', () => {
    expect(results(judge(22, spare(31, 8, { hardness: 'case hard' })))['hardness']).toBe('beware');
    expect(results(judge(28, spare(33, 8, { hardness: 'case hard', caseDepth: inches(0.045) })))['hardness']).toBe('no');
    expect(judge(22, spare(31, 8, { hardness: 'hard through' })).verdict).toBe('refused');
    expect(results(judge(22, spare(31, 8, { hardness: 'not tried' })))['hardness']).toBe('beware');
  });
  it('a spline must be the same; a plain bore is bored out or bushed', () => {
    const five = { ...SIX, splines: 5 };
    expect(judge(22, spare(31, 8, {}, { bore: five })).verdict).toBe('refused');
    const near = { ...SIX, diameter: inches(1.252) };
    expect(judge(22, spare(31, 8, {}, { bore: near })).verdict).toBe('clean');
    expect(judge(22, spare(31, 8, {}, { bore: { ...SIX, diameter: inches(1.2521) } })).verdict).toBe('refused');
    const plain = (d: number) => ({ form: 'plain', diameter: inches(d) }) as const;
    expect(judge(22, spare(31, 8, {}, { bore: plain(1) }), { bore: plain(1.25) }).boreWork).toBe('bore out');
    expect(judge(22, spare(31, 8, {}, { bore: plain(1.5) }), { bore: plain(1.25) }).boreWork).toBe('bush');
    expect(judge(22, spare(31, 8, {}, { bore: null })).verdict).toBe('measure first');
  });
  it('a wall under 1.2 whole depths is a caution, under 1.0 refused', () => {
    const plain = (d: number) => ({ bore: { form: 'plain', diameter: inches(d) } }) as const;
    const wall = (d: number) => results(judge(22, spare(31, 8, {}, plain(d)), plain(d)))['wall'];
    expect([wall(1.813), wall(1.815), wall(1.921), wall(1.922)]).toEqual(['yes', 'beware', 'beware', 'no']);
  });
  it('a keyway’s corner counts for the wall', () => {
    const keyed = { form: 'keyed', diameter: inches(1.7), keyWidth: inches(0.25), keyDepth: inches(0.125) } as const;
    expect(judge(22, spare(31, 8, {}, { bore: keyed }), { bore: keyed }).wall?.over).toBe('the corner of the keyway');
    expect(results(judge(22, spare(31, 8, {}, { bore: keyed }), { bore: keyed }))['wall']).toBe('no');
  });
  it('a wider face is faced off, a narrower one wants the owner’s word', () => {
    const narrow = spare(31, 8, {}, { face: inches(0.75) });
    expect(judge(22, narrow).verdict).toBe('refused');
    expect(judgeSpare({ wanted: gear(22), spare: narrow, acceptNarrower: true }).verdict).toBe('clean');
    expect(judge(22, spare(31, 8, {}, { face: inches(1) })).verdict).toBe('clean');
  });
  it('run-out takes away from a diameter, not from walls', () => {
    const across = spare(34, 8, { reading: { by: 'across roots', across: inches(3.9608) }, runOut: inches(0.12) });
    expect(judge(28, across).verdict).toBe('only just');
    const wall = { by: 'wall', wall: inches(1.3554), bore: inches(1.25) } as const;
    expect(judge(28, spare(34, 8, { reading: wall, runOut: inches(0.12) })).verdict).toBe('clean');
  });
  it('clean-up of 0.010 decides between a trace and none', () => {
    const root = (d: number) => spare(34, 8, { reading: { by: 'wall', wall: inches((d - 1.25) / 2), bore: inches(1.25) } });
    expect(judge(28, root(3.76)).verdict).toBe('only just');
    expect(judge(28, root(3.759)).verdict).toBe('old gaps stay');
    expect(judgeSpare({ wanted: gear(28), spare: root(3.759), cleanUp: inches(0.008) }).verdict).toBe('only just');
  });
  it('pitches and systems may differ', () => {
    const module3 = spare(40, 8, {}, { pitch: { kind: 'module', size: ratio(3) }, system: system('module-1.25') });
    expect(judge(22, module3).verdict).toBe('clean');
    expect(judge(28, spare(34, 8, {}, { system: { ...system('full-14.5'), dedendum: 2.2 } })).verdict).toBe('old gaps stay');
  });
  it('refuses a spare that is itself too small, and readings that cannot be', () => {
    expect(judge(22, spare(19)).verdict).toBe('refused');
    expect(() => judge(22, spare(31, 8, { reading: { by: 'across roots', across: inches(9) } }))).toThrow(DomainError);
  });
});

describe('second choice', () => {
  const asked = { wanted: gear(22), spare: spare(26), mate: 46, lastOfItsSpline: false } as const;
  it('shows what is lost, and is never for the last of a spline', () => {
    const { figures } = secondChoice(asked);
    expect(text(figures.short)).toBe('0.0196');
    expect(Number(text(figures.after))).toBeLessThan(Number(text(figures.before)));
    expect(() => secondChoice({ ...asked, lastOfItsSpline: true })).toThrow(/last/);
    expect(() => secondChoice({ ...asked, spare: spare(31) })).toThrow(DomainError);
  });
});

describe('every printed formula, worked on its printed givens, gives the printed answer', () => {
  const helical = { helix: { angle: degrees(15), hand: 'right' } } as const;
  const keyed = { form: 'keyed', diameter: inches(1), keyWidth: inches(0.25), keyDepth: inches(0.0937) } as const;
  const metric = {
    pitch: { kind: 'module', size: ratio(5, 2) },
    system: system('module-7/6'),
    bore: { form: 'plain', diameter: millimetres(20) },
  } as const;
  const fine = { pitch: { kind: 'CP', size: ratio(5, 32) }, system: system('fine-20') } as const;
  const readings = [
    spare(31, 8, { reading: { by: 'wall', wall: inches(1.16788), bore: inches(1.2503) } }),
    spare(31, 8, { reading: { by: 'across roots', across: inches(3.58) }, runOut: inches(0.003) }),
    spare(31, 8, { reading: { by: 'pin', over: inches(3.77), pin: inches(0.1) } }),
    spare(31, 8, { reading: { by: 'depth', depth: inches(0.2693), jaws: inches(4.12) } }),
    spare(31, 8, { reading: { by: 'jaws', jaws: inches(4.05) } }),
  ];
  const answers = [
    ...readings.map((from) => testSpare({ wanted: gear(22), spare: from }).answer),
    testSpare({ wanted: gear(22), spare: spare(25) }).answer,
    testSpare({ wanted: gear(22, 8, helical), spare: spare(34, 8, {}, helical) }).answer,
    testSpare({ wanted: gear(22, 8, { bore: keyed }), spare: spare(31, 8, {}, { bore: keyed }) }).answer,
    testSpare({ wanted: gear(20, 8, metric), spare: spare(31, 8, {}, metric) }).answer,
    testSpare({ wanted: gear(20, 8, metric), spare: spare(31) }).answer,
    testSpare({ wanted: gear(60, 8, fine), spare: spare(70, 8, {}, fine) }).answer,
    secondChoice({ wanted: gear(22), spare: spare(26), mate: 46, lastOfItsSpline: false }),
    secondChoice({ wanted: gear(22), spare: spare(26), mate: 'rack', lastOfItsSpline: false }),
    secondChoice({ wanted: gear(60, 8, fine), spare: spare(64, 8, {}, fine), mate: 30, lastOfItsSpline: false }),
  ];
  it.each(answers.map((answer, at) => [at, answer] as const))('answer %i', (_at, answer) => {
    const figures: Figure[] = Object.values(answer.figures);
    expect(figures.length).toBeGreaterThan(3);
    for (const figure of figures) {
      const worked = evaluateFigure(figure);
      expect(worked, figure.name).not.toBeNull();
      if (worked) expect(Math.abs(worked.printed - worked.worked), `${figure.name}: ${figure.formula}`).toBeLessThanOrEqual(worked.allowed);
    }
  });
});
