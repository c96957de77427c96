import { expect, it } from 'vitest';
import { needWords } from '../../../lib/routing/needs.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { refusal } from '../refusal.ts';
import { gear, shop, spare, wanted } from './halvorsen.ts';

const helix = { angle: degrees(22.5), hand: 'right' } as const;
const helical = wanted(22, { gear: gear(22, { helix }) });
const rest = { shop: shop(), readings: {} };
const bar = { id: 3, name: 'bar', material: 'steel', diameter: inches(5), length: inches(4), hole: inches(0) } as const;

it('a routing of a helical wheel is refused in words, whatever it would be made from', () => {
  const ways = [
    () => planRouting({ way: 're-cut a spare', blank: spare(34), wanted: helical, ...rest }),
    () => planRouting({ way: 'make from stock', blank: bar, wanted: helical, ...rest }),
    () => planRouting({ way: 'ring and hub', blank: { hub: spare(34), ring: bar }, wanted: helical, ...rest }),
  ];
  for (const way of ways) {
    const { message, about } = refusal(way);
    expect(message).toContain('H12-22T is a helical wheel, 22 teeth at 22.5°.');
    expect(message).toContain('No routing is worked out for helical teeth');
    expect(message).not.toContain('Leave the helix out');
    expect(about).toEqual(['helix']);
  }
});

it('the straight wheel of its count is planned, and from a helical spare too', () => {
  const blank = spare(34, { gear: gear(34, { helix }) });
  expect(planRouting({ way: 're-cut a spare', blank, wanted: wanted(22), ...rest }).operations.length).toBeGreaterThan(5);
});

it('a cutter for a virtual count is asked for in figures that can be read', () => {
  // derived: 22 ÷ cos³ 22.5° = 22 ÷ 0.788582 = 27.898
  const teeth = 22 / Math.cos(Math.PI / 8) ** 3;
  expect(needWords({ kind: 'cutter', pitch: { kind: 'DP', size: ratio(8) }, angle: degrees(14.5), teeth })).toBe(
    'cutter No. 4, 8 DP, 14½°, for 27.9 teeth',
  );
});
