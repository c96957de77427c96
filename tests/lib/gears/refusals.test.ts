import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { backlashAnswer } from '../../../lib/gears/backlash.sums.ts';
import { chordalAnswer } from '../../../lib/gears/chordal.sums.ts';
import { depthToDial } from '../../../lib/gears/depth.sums.ts';
import { stillToFeed } from '../../../lib/gears/feed.sums.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { gearBlank } from '../../../lib/gears/spur.sums.ts';
import { doublePitchStub } from '../../../lib/gears/systems.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { wheelOf } from './wheel-of.ts';

const t22 = wheelOf(22, '8 DP');
const with22 = (over: object) => ({ ...t22, system: { ...t22.system, ...over } });
const feed = (spanRead: number, k = 2) =>
  stillToFeed({ gear: t22, k, spanRead: inches(spanRead), spanWanted: inches(0.585), made: 'form cutter' });

const REFUSED: readonly (readonly [string, string, () => unknown])[] = [
  ['3 teeth', 'teeth', () => gearBlank(wheelOf(3, '8 DP'))],
  ['0 teeth', 'teeth', () => gearBlank(wheelOf(0, '8 DP'))],
  ['−5 teeth', 'teeth', () => gearBlank(wheelOf(-5, '8 DP'))],
  ['22.5 teeth', 'teeth', () => gearBlank(wheelOf(22.5, '8 DP'))],
  ['1e9 teeth', 'teeth', () => gearBlank(wheelOf(1e9, '8 DP'))],
  ['an angle of 0', 'angle', () => gearBlank(with22({ angle: degrees(0) }))],
  ['an angle of 60°', 'angle', () => gearBlank(with22({ angle: degrees(60) }))],
  ['no addendum', 'system', () => gearBlank(with22({ addendum: 0 }))],
  ['roots beyond the middle', 'teeth', () => gearBlank({ ...with22({ dedendum: 2.5 }), teeth: 4 })],
  ['a helical wheel', 'helix', () => gearBlank({ ...t22, helix: { angle: degrees(20), hand: 'right' } })],
  ['a span over 1 of 60, below the flank', 'k', () => spanAnswer(wheelOf(60, '12 DP'), { k: 1 })],
  ['a span over 9 of 22, beyond the tips', 'k', () => spanAnswer(t22, { k: 9 })],
  ['a span over 0', 'k', () => spanAnswer(t22, { k: 0 })],
  ['a span over more teeth than there are', 'k', () => spanAnswer(t22, { k: 23 })],
  ['a span over 2.5 teeth', 'k', () => spanAnswer(t22, { k: 2.5 })],
  ['negative backlash', 'backlash', () => spanAnswer(t22, { backlash: inches(-0.001) })],
  ['backlash of half a tooth', 'backlash', () => backlashAnswer(t22, inches(0.1))],
  ['an outside of another wheel', 'measuredOutside', () => chordalAnswer(t22, { measuredOutside: inches(3.3) })],
  ['a reading two thirds of a base pitch large', 'spanRead', () => feed(0.585 + 0.25)],
  ['an outside more than an addendum a side under', 'measuredOutside', () => depthToDial({ gear: t22, measuredOutside: inches(2.74) })],
  ['a blank of nothing', 'measuredOutside', () => depthToDial({ gear: t22, measuredOutside: inches(0) })],
  ['a stamp of another pitch', 'stampedDepth', () => depthToDial({ gear: t22, stampedDepth: inches(0.1348) })],
  ['a paper as thick as card', 'paper', () => depthToDial({ gear: t22, paper: inches(0.05) })],
  ['a span read over another count', 'spanRead', () => feed(0.9652)],
  ['5/7 turned about', 'pitch', () => doublePitchStub(7, 5)],
];

describe('sizes that make no sense together are refused in words', () => {
  it.each(REFUSED)('%s', (_name, about, work) => {
    try {
      work();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      const said = error as DomainError;
      expect(said.about).toContain(about);
      expect(said.message).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
      for (const part of [said.given, said.limit, said.tryThis]) expect(part).toMatch(/^[A-Z0-9].*\.$/);
      return;
    }
    throw new Error('not refused');
  });

  it('says over which counts the wheel can be spanned', () => {
    expect(() => spanAnswer(t22, { k: 9 })).toThrow('The jaws touch the flanks over 1 to 4 teeth. Measure over 2.');
  });
});

describe('it works, but beware', () => {
  const names = (answer: { readonly cautions: readonly { readonly name: string }[] }): string[] => answer.cautions.map((one) => one.name);
  it('undercut under 32 teeth at 14½°, 18 at 20°, 14 for the stub', () => {
    const undercut = (N: number, key: string): boolean => names(gearBlank(wheelOf(N, '8 DP', key))).includes('Undercut');
    expect([undercut(31, 'full-14.5'), undercut(32, 'full-14.5')]).toEqual([true, false]);
    expect([undercut(17, 'full-20'), undercut(18, 'full-20')]).toEqual([true, false]);
    expect([undercut(13, 'stub-20'), undercut(14, 'stub-20')]).toEqual([true, false]);
    expect([undercut(11, 'composite-14.5'), undercut(12, 'composite-14.5')]).toEqual([true, false]);
  });
  it('a tooth that ends in a point', () => {
    expect(names(gearBlank({ ...with22({ addendum: 2, dedendum: 2.2, angle: degrees(25) }), teeth: 12 }))).toContain('Pointed tip');
    expect(names(gearBlank(wheelOf(40, '8 DP')))).toEqual([]);
  });
  it('fine pitch cut to coarse proportions, and coarse to fine', () => {
    expect(names(gearBlank(wheelOf(40, '20 DP')))).toEqual(['Fine pitch']);
    expect(names(gearBlank(wheelOf(40, '19 DP')))).toEqual([]);
    expect(names(gearBlank(wheelOf(40, '24 DP', 'fine-20')))).toEqual([]);
    expect(names(gearBlank(wheelOf(40, '12 DP', 'fine-20')))).toEqual(['Fine pitch']);
  });
  it('a composite tooth', () => {
    expect(names(spanAnswer(wheelOf(40, '8 DP', 'composite-14.5')))).toEqual(['Composite form']);
    expect(names(spanAnswer(wheelOf(40, '8 DP')))).toEqual([]);
  });
  it('stamp and system more than 0.002 in apart', () => {
    const stamped = (size: number): string[] => names(depthToDial({ gear: t22, stampedDepth: inches(size) }));
    expect([stamped(0.27), stamped(0.2716), stamped(0.2717), stamped(0.2812)]).toEqual([
      [],
      [],
      ['Stamp and system differ'],
      ['Stamp and system differ'],
    ]);
  });
  it('a blank over and under its limits', () => {
    const blank = (size: number): string[] => names(depthToDial({ gear: t22, measuredOutside: inches(size) }));
    expect([blank(3), blank(2.9975), blank(3.001), blank(2.995)]).toEqual([[], [], ['Blank over size'], ['Blank under size']]);
  });
  it('metal left, right, and gone', () => {
    expect(feed(0.59).says).toContain('feed 0.0089 in deeper');
    expect(feed(0.585).says).toContain('stop here');
    const gone = feed(0.582);
    expect(gone.says).toContain('Metal gone: the teeth are 0.0031 in thin');
    expect(gone.figures.stillToFeed.value).toEqual({ length: 0 });
  });
});

it('an outside under by less than an addendum a side is taken, and said to be under size', () => {
  const { figures, cautions } = depthToDial({ gear: t22, measuredOutside: inches(2.8) });
  expect(figures.depthToDial.value).toEqual({ length: inches(0.269625 - 0.1) });
  expect(cautions.map(({ name }) => name)).toContain('Blank under size');
});
