import { describe, expect, test } from 'vitest';
import { meets, needWords, toolsFor } from '../../../lib/routing/needs.ts';
import type { Need } from '../../../lib/routing/operation.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { THREE_PLATES } from '../dividing/plates.ts';
import { arbor, cutter, head, mandrel, SPLINE } from './halvorsen.ts';

const no5: Need = { kind: 'cutter', pitch: { kind: 'DP', size: ratio(8) }, angle: degrees(14.5), teeth: 22 };

describe('a cutter', () => {
  test.each([
    ['a No. 5 that turns up', cutter(1, '5', 21, 25), true],
    ['one lent out', cutter(1, '5', 21, 25, { here: false }), false],
    ['a blunt one', cutter(1, '5', 21, 25, { sharp: false }), false],
    ['a No. 4', cutter(1, '4', 26, 34), false],
    ['a No. 5 of 10 DP', cutter(1, '5', 21, 25, { pitch: { kind: 'DP', size: ratio(10) } }), false],
    ['a No. 5 of 20°', cutter(1, '5', 21, 25, { angle: degrees(20) }), false],
    ['a No. 5 with no range written down', cutter(1, '5', 21, 25, { teethFrom: null }), false],
    ['another number with the right range', cutter(1, '4', 21, 25), true],
  ])('%s', (_, tool, fits) => expect(meets(tool, no5)).toBe(fits));
});

describe('a tool of no kind', () => {
  const keyway: Need = { kind: 'other', name: 'keyway tool, 0.2500 in wide (broach or slotting tool)' };
  test.each([
    ['Keyway broach 0.2500 in', true],
    ['1/4 in KEYWAY BROACH, with guide', true],
    ['slotting tool for keyways, 0.25', true],
    ['keyway broach', false],
    ['keyway broach 3/16 in', false],
    ['keyway broach 0.25001 in', false],
    ['0.2500 in drill', false],
    ['broach or slotting tool', false],
    ['', false],
  ])('%s', (name, fits) => expect(meets({ id: 1, name, here: true, kind: 'other' }, keyway)).toBe(fits));

  test('a word inside another word is none, and a mixed fraction is one size', () => {
    const other = (name: string, need: string) => meets({ id: 1, name, here: true, kind: 'other' }, { kind: 'other', name: need });
    expect(other('1/4 BSF taper plug', '1/4 BSF tap')).toBe(false);
    expect(other('BSF tap, 1/4', '1/4 BSF tap')).toBe(true);
    expect(other('reamer 1 1/4', 'reamer 1.2500')).toBe(true);
    expect(other('reamer 1/4', 'reamer 1.2500')).toBe(false);
  });

  test('a need of small words alone is met by its own name only', () => {
    const tool = { id: 1, name: 'The Tool', here: true, kind: 'other' } as const;
    expect(meets(tool, { kind: 'other', name: 'the tool' })).toBe(true);
    expect(meets({ ...tool, name: 'a dog' }, { kind: 'other', name: 'the tool' })).toBe(false);
  });

  test('lent out it meets nothing', () =>
    expect(meets({ id: 1, name: 'keyway broach 0.25', here: false, kind: 'other' }, keyway)).toBe(false));
});

describe('a mandrel', () => {
  const plain = { ...mandrel, bore: { form: 'plain' as const, diameter: inches(1) } };
  test.each([
    ['the spline', mandrel, SPLINE, true],
    ['within 0.002', { ...mandrel, bore: { ...SPLINE, diameter: inches(1.251) } }, SPLINE, true],
    ['0.005 off', { ...mandrel, bore: { ...SPLINE, diameter: inches(1.255) } }, SPLINE, false],
    ['ten splines', { ...mandrel, bore: { ...SPLINE, splines: 10 } }, SPLINE, false],
    ['plain in a plain bore', plain, { form: 'plain', diameter: inches(1) }, true],
    ['too small for the bore', plain, { form: 'plain', diameter: inches(1.25) }, false],
    ['too large for the bore', plain, { form: 'plain', diameter: inches(0.75) }, false],
    ['plain in a keyed bore', plain, { form: 'keyed', diameter: inches(1), keyWidth: inches(0.25), keyDepth: inches(0.125) }, true],
    ['plain in the spline', plain, SPLINE, false],
  ] as const)('%s', (_, tool, bore, fits) => expect(meets(tool, { kind: 'mandrel', bore })).toBe(fits));
});

test('a circle is met by any plate here that has it, on either side', () => {
  expect(toolsFor({ kind: 'circle', holes: 33 }, THREE_PLATES).map(({ name }) => name)).toEqual(['Plate 2']);
  expect(toolsFor({ kind: 'circle', holes: 34 }, THREE_PLATES)).toEqual([]);
  const away = THREE_PLATES.map((plate) => ({ ...plate, here: false }));
  expect(toolsFor({ kind: 'circle', holes: 33 }, away)).toEqual([]);
});

test('head, arbor, chuck and the rest go by turns, diameter, jaws and name', () => {
  expect(meets(head, { kind: 'head', turns: 40 })).toBe(true);
  expect(meets(head, { kind: 'head', turns: 60 })).toBe(false);
  expect(meets(arbor, { kind: 'arbor', diameter: inches(1) })).toBe(true);
  expect(meets(arbor, { kind: 'arbor', diameter: inches(0.875) })).toBe(false);
  expect(meets({ id: 1, name: 'Keyway Broach ', here: true, kind: 'other' }, { kind: 'other', name: 'keyway broach' })).toBe(true);
  const chuck = { id: 1, name: 'C', here: true, kind: 'chuck' as const, jaws: 4, diameter: inches(8), runOut: null, topSpeedRpm: null };
  expect(meets(chuck, { kind: 'chuck', jaws: 3 })).toBe(false);
  expect(meets(chuck, { kind: 'head', turns: 4 })).toBe(false);
});

test('needs in words', () => {
  expect(needWords(no5)).toBe('cutter No. 5, 8 DP, 14½°, for 22 teeth');
  expect(needWords({ ...no5, teeth: 9 } as Need)).toBe('cutter 8 DP, 14½°, for 9 teeth');
  expect(needWords({ kind: 'arbor', diameter: inches(0.875) })).toBe('cutter arbor of 7/8 in');
});
