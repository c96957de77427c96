import { describe, expect, it } from 'vitest';
import { readGear } from '../../../server/forms/gear-form.ts';
import { typedOfGear } from '../../../server/forms/gear-typed.ts';

const SPLINED = {
  teeth: '31',
  pitch: '8 DP',
  system: 'full-14.5',
  face: '0.875',
  bore: 'splined',
  boreDiameter: '1.250',
  boreMinor: '1 1/16',
  splines: '6',
  keyWidth: '0.3125',
  body: 'hollow',
  recesses: 'both 1.9 to 4.0; marked 4.02 to 4.1',
  openings: '',
};
const read = (sent: Record<string, string>, unit: 'in' | 'mm' = 'in') => {
  const one = readGear(sent, unit);
  if (!one.ok) throw new Error(JSON.stringify(one.problems));
  return one;
};
const problemsOf = (sent: Record<string, string>) => {
  const one = readGear({ ...SPLINED, ...sent }, 'in');
  return one.ok ? {} : one.problems;
};

describe('the form of a wheel', () => {
  it('reads a splined wheel with recesses in whole nanometres', () => {
    const { gear, forms } = read(SPLINED);
    expect(gear.bore).toEqual({ form: 'splined', diameter: 31_750_000, minor: 26_987_500, splines: 6, keyWidth: 7_937_500 });
    expect(gear.face).toBe(22_225_000);
    expect(gear.body).toEqual({
      known: true,
      openings: [],
      recesses: [
        { side: 'both', inner: 48_260_000, outer: 101_600_000 },
        { side: 'marked', inner: 102_108_000, outer: 104_140_000 },
      ],
    });
    expect(forms['minor']).toEqual({ unit: 'in', over: 16 });
  });

  it.each([
    ['inches', SPLINED, 'in'],
    [
      'millimetres',
      {
        ...SPLINED,
        pitch: 'module 2.5',
        system: 'module-1.25',
        boreMinor: '26.5',
        boreDiameter: '30',
        keyWidth: '6',
        face: '20.50',
        recesses: '',
        body: 'solid',
      },
      'mm',
    ],
    ['own depth', { ...SPLINED, system: 'full-20', dedendum: '1.18' }, 'in'],
    ['own proportions', { ...SPLINED, system: 'own', angle: '17', addendum: '0.9', dedendum: '1.1' }, 'in'],
    [
      'keyed, drilled',
      { ...SPLINED, bore: 'keyed', boreMinor: '', splines: '', keyDepth: '0.125', recesses: '', openings: 'spokes 2 to 3.5' },
      'in',
    ],
  ] as const)('gives back what was typed: %s', (_, sent, unit) => {
    const { gear, forms, typed } = read(sent, unit);
    const back = typedOfGear({ gear, forms }, unit);
    for (const [name, text] of Object.entries(typed)) expect([name, back[name] ?? '']).toEqual([name, text]);
    expect(read(back, unit).gear).toEqual(gear);
  });

  it('shows a millimetre size in an inch form with its unit, and takes it so', () => {
    const { gear, forms } = read({ ...SPLINED, face: '22 mm' });
    expect(typedOfGear({ gear, forms }, 'in')['face']).toBe('22 mm');
    expect(gear.face).toBe(22_000_000);
  });

  it('keeps the name of a system whose depth was measured otherwise, and its key', () => {
    const { gear } = read({ ...SPLINED, dedendum: '1.2' });
    expect(gear).toMatchObject({ system: { name: '14½° full involute, as measured', dedendum: 1.2, addendum: 1 } });
  });

  it.each([
    ['letters for teeth', { teeth: 'many' }, 'teeth'],
    ['no teeth', { teeth: '' }, 'teeth'],
    ['1e9 teeth', { teeth: '1000000000' }, 'teeth'],
    ['a bare pitch', { pitch: '8' }, 'pitch'],
    ['a spline without its count', { splines: '' }, 'splines'],
    ['a small diameter that is the larger', { boreMinor: '1.3' }, 'boreMinor'],
    ['a bore through the roots', { boreDiameter: '3.7' }, 'boreDiameter'],
    ['a recess beyond the tips', { recesses: 'both 1.9 to 5' }, 'recesses'],
    ['a recess of one size', { recesses: 'both 1.9' }, 'recesses'],
    ['a recess turned round', { recesses: '4 to 1.9' }, 'recesses'],
    ['hollow, with nothing typed', { recesses: '' }, 'body'],
    ['solid, with a recess typed', { body: 'solid' }, 'body'],
    ['own proportions without an angle', { system: 'own', addendum: '1', dedendum: '1.2' }, 'angle'],
    ['a diameter of no form', { bore: '' }, 'bore'],
    ['a script', { face: '<script>' }, 'face'],
  ])('refuses %s beside its field', (_, sent, at) => expect(Object.keys(problemsOf(sent))).toEqual([at]));

  it('takes a wheel whose pitch is not known yet, and gives it back so', () => {
    const sent = { ...SPLINED, pitch: '', notKnown: 'yes' };
    const { gear, forms, typed } = read(sent);
    expect(gear).toMatchObject({ teeth: 31, pitch: null, face: 22_225_000 });
    expect(Object.keys(gear).sort()).toEqual(['body', 'bore', 'face', 'pitch', 'teeth']);
    expect(typedOfGear({ gear, forms }, 'in')).toMatchObject({ ...typed, angle: '', addendum: '', dedendum: '' });
  });

  it('never takes a default for a pitch: one is typed, or it is said not to be known, and not both', () => {
    expect(problemsOf({ pitch: '' })).toEqual({ pitch: 'This box is empty. Type the pitch, or tick that it is not known yet.' });
    expect(problemsOf({ pitch: '', face: 'x' })).toHaveProperty('pitch');
    expect(problemsOf({ notKnown: 'yes' })).toHaveProperty('notKnown');
    expect(problemsOf({ pitch: '', notKnown: 'yes' })).toEqual({});
  });

  it('keeps the helix of a helical wheel, and asks for its hand', () => {
    const { gear, forms } = read({ ...SPLINED, helix: '23.0625', hand: 'left' });
    expect(gear).toMatchObject({ helix: { angle: 83_025_000, hand: 'left' } });
    expect(typedOfGear({ gear, forms }, 'in')).toMatchObject({ helix: '23.0625', hand: 'left' });
    expect(problemsOf({ helix: '23' })).toEqual({ hand: 'Choose the hand of the helix.' });
  });
});
