import { describe, expect, it } from 'vitest';
import { remembered } from '../../../db/remembered.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { readBore } from '../../../server/sums/read-bore.ts';
import { readCutters } from '../../../server/sums/read-cutters.ts';
import { readPlates } from '../../../server/sums/read-plates.ts';

const cutters = (text: string) => {
  const found = readCutters(text);
  if (!found.ok) throw new Error(found.problem);
  return found.value;
};

describe('a drawer of cutters in one line', () => {
  it('reads pitch, angle, number and tooth range', () => {
    const [two, three] = cutters('8 DP 14.5 No.2 55-134; module 2.5 20° No 3½ 30 to 34');
    expect(two).toMatchObject({
      pitch: { kind: 'DP', size: [8, 1] },
      angle: degrees(14.5),
      number: '2',
      teethFrom: 55,
      teethTo: 134,
      here: true,
      sharp: true,
    });
    expect(three).toMatchObject({ pitch: { kind: 'module', size: [5, 2] }, angle: degrees(20), number: '3½', teethFrom: 30, teethTo: 34 });
  });
  it('reads what else is known of one', () => {
    const [one] = cutters('5/16 CP 14 1/2 No. 1 135-rack hole 7/8 depth 0.2146 right for 150 blunt away');
    expect(one).toMatchObject({
      pitch: { kind: 'CP', size: [5, 16] },
      angle: degrees(14.5),
      teethFrom: 135,
      teethTo: null,
      hole: inches(0.875),
      stampedDepth: inches(0.2146),
      exactFor: 150,
      sharp: false,
      here: false,
    });
  });
  it('leaves the range open where none is written: lib then offers it for nothing', () => {
    expect(cutters('8 DP 14.5 No.4')[0]).toMatchObject({ number: '4', teethFrom: null, teethTo: null });
  });
  it('gives each an id of its own, and none for an empty box', () => {
    expect(cutters('8 DP 14.5 26-34; 8 DP 14.5 21-25').map(({ id }) => id)).toEqual([1, 2]);
    expect(cutters('  ')).toEqual([]);
  });
  it.each(['No.4', '8 DP', '14.5 No.4 26-34', '8 DP 14.5 34-26', '8 DP 99 No.4 26-34', '8 DP 14.5 26-34 shiny', '8 DP 14.5 right for 1'])(
    'refuses %s in words',
    (text) => {
      const found = readCutters(text);
      expect(found.ok).toBe(false);
      if (!found.ok) expect(found.problem).toMatch(/^“|^[A-Z]/);
    },
  );
});

describe('index plates in one line', () => {
  it('reads plates and their sides, however the circles are parted', () => {
    const found = readPlates('15-16-17; 24, 25, 28 | 46 47 49');
    expect(found).toMatchObject({
      ok: true,
      value: [
        { id: 1, name: 'Plate 1', sides: [[15, 16, 17]] },
        {
          id: 2,
          sides: [
            [24, 25, 28],
            [46, 47, 49],
          ],
        },
      ],
    });
  });
  it.each(['', '15 x 17', '1 15', '1001', '15 | 16 | 17', ';', '|', Array(14).fill('20').join(';')])('refuses “%s”', (text) => {
    expect(readPlates(text).ok).toBe(false);
  });
});

describe('a bore in one line', () => {
  it.each([
    ['1.25', { form: 'plain', diameter: inches(1.25) }],
    ['28 mm', { form: 'plain', diameter: millimetres(28) }],
    ['1 in key 1/4 x 1/8', { form: 'keyed', diameter: inches(1), keyWidth: inches(0.25), keyDepth: inches(0.125) }],
    [
      '6 splines 1.250 × 1.0625 x 5/16',
      { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) },
    ],
  ])('reads %s', (text, bore) => {
    expect(readBore(text)).toEqual({ ok: true, value: bore });
  });
  it.each(['', 'big', '6 splines 1.25 x 1.0625', '6 splines 1.0625 x 1.25 x 0.3125', '1 key 1/4', '1 splines 1.25 x 1 x 0.3', '0'])(
    'refuses “%s”',
    (text) => {
      expect(readBore(text).ok).toBe(false);
    },
  );
});

it('what was worked out once is not worked out again, until too much else has been', () => {
  const keep = remembered<number>();
  let worked = 0;
  const work = () => ++worked;
  expect([keep('a', work), keep('a', work), keep('b', work)]).toEqual([1, 1, 2]);
  for (let i = 0; i < 60; i++) keep(`other ${i}`, work);
  expect(keep('a', work)).toBe(63);
});
