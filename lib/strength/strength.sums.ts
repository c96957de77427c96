import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { numberGiven, told } from '../figure/told.ts';
import type { Material } from '../gears/gear.ts';
import { type Tooth, unitOfPitch } from '../gears/tooth.ts';
import { checkedTooth, type Wheel } from '../gears/wheel.ts';
import { toDegrees } from '../values/angle.ts';
import { inUnit, type Length, toInches } from '../values/length.ts';
import { printLength, printShort } from '../values/print.ts';
import { LEWIS, type LewisSystem, STATIC_STRESS } from './lewis.data.ts';
import { barthShare, lewisFactor, pitchLineFtPerMin, powerHp, safeToothLoad } from './lewis.formulas.ts';

/** stress: lb/in² where the owner knows it, else the material's. speed: rev/min. */
export type StrengthAsked = Wheel & {
  readonly face: Length;
  readonly material: Material;
  readonly stress: number | null;
  readonly speedRpm: number;
};

export type StrengthKey = 'load' | 'power' | 'torque' | 'standing' | 'factor' | 'pitchLineSpeed';

const CATALOGUE = 'Spur gears, Lewis formula (Barth revision), catalogue page; Wentzell, Machine Design, ch. 12';
const FASTEST_FT_PER_MIN = 1500;

/** The table that speaks of a tooth like this one. Throws DomainError where none does. */
function systemOf({ system }: Wheel): LewisSystem {
  const deg = toDegrees(system.angle);
  if (Math.abs(deg - 14.5) < 0.01 && system.addendum > 0.9) return '14.5';
  if (Math.abs(deg - 20) < 0.01) return system.addendum > 0.9 ? '20' : '20 stub';
  throw new DomainError({
    given: `Teeth of ${printShort(deg, 2)}°.`,
    limit: 'Form factors are tabled for 14½°, 20° and 20° stub.',
    tryThis: 'Take the nearest of them that has the smaller angle; it errs on the weak side.',
    about: ['system', 'angle'],
  });
}

function factorOf(wheel: Wheel): { readonly Y: number; readonly system: LewisSystem } {
  const system = systemOf(wheel);
  const least = LEWIS[system][0]?.[0] ?? 0;
  if (wheel.teeth >= least) return { Y: lewisFactor(system, wheel.teeth), system };
  throw new DomainError({
    given: `${wheel.teeth} teeth.`,
    limit: `The table of form factors begins at ${least} teeth for this system.`,
    tryThis: 'So small a pinion is weak at its foot: compare with one that has run.',
    about: ['teeth'],
  });
}

function stressOf({ stress, material }: StrengthAsked): Given {
  if (stress !== null) return { ...numberGiven('S', 'static stress, lb/in²', stress, 0), from: 'typed' };
  if (material === 'unknown')
    throw new DomainError({
      given: 'Neither the metal nor its stress is known.',
      limit: 'Strength needs one of them.',
      tryThis: 'Try a file and a spark, or take cast iron, the weakest usual metal.',
      about: ['material', 'stress'],
    });
  return {
    ...numberGiven('S', 'static stress, lb/in²', STATIC_STRESS[material], 0, 'table'),
    where: `${material}, a usual working figure`,
  };
}

function checkedFace({ face }: StrengthAsked, { m, unit }: Tooth): number {
  const F = inUnit(face, unit);
  if (F > 0 && F <= 40 * m) return toInches(face);
  throw new DomainError({
    given: `A face of ${printLength(face, { unit, places: 3 })} ${unit}.`,
    limit: 'A face is above 0 and at most 40 times 1/P or the module; teeth wider than about 12 times never bear all along.',
    tryThis: 'Type the width of the narrower of the two wheels.',
    about: ['face'],
  });
}

/** Diametral pitch and pitch diameter in inches, whatever the pitch was typed as: the formula is an inch formula. */
function inchTerms(tooth: Tooth): { readonly P: number; readonly D: number } {
  const m = tooth.unit === 'in' ? tooth.m : tooth.m / 25.4;
  return { P: 1 / m, D: tooth.N * m };
}

function cautions(V: number): readonly Caution[] {
  const fast: readonly Caution[] =
    V > FASTEST_FT_PER_MIN
      ? [
          {
            name: 'Fast',
            says: `Over ${FASTEST_FT_PER_MIN} ft/min at the pitch line the rule is not to be trusted.`,
            weight: 'beware',
            about: 'load',
          },
        ]
      : [];
  return [
    ...fast,
    {
      name: 'Breaking only',
      says: 'This is bending of a sound tooth, steady load, old rule of thumb stresses: not wear, not shock, not a cracked or welded tooth. Where a broken tooth drops a load or a table on somebody, ask the maker or an engineer.',
      weight: 'beware',
      about: 'load',
    },
  ];
}

/**
 * What a tooth bears by Lewis, with Barth's allowance for speed. Throws DomainError where no factor or stress is known.
 * Example: 24 teeth, 12 DP, 14½°, face 0.75, 27,500 lb/in², 1800 rev/min: 202 lb, 5.77 hp.
 */
export function toothStrength(asked: StrengthAsked): Answer<StrengthKey> {
  const tooth = checkedTooth(asked);
  const { Y, system } = factorOf(asked);
  const stress = stressOf(asked);
  const S = 'number' in stress.value ? stress.value.number : 0;
  const F = checkedFace(asked, tooth);
  const { P, D } = inchTerms(tooth);
  const V = pitchLineFtPerMin(D, asked.speedRpm);
  const W = safeToothLoad(S, F, Y, P, V);
  const given = {
    S: stress,
    F: numberGiven('F', 'face, in', F, 6),
    Y: numberGiven('Y', 'form factor', Y, 6, 'table'),
    P: numberGiven('P', 'diametral pitch', P, 6, 'worked out'),
    V: numberGiven('V', 'pitch line speed, ft/min', V, 3, 'worked out'),
    W: numberGiven('W', 'load, lb', W, 3, 'worked out'),
    D: numberGiven('D', 'pitch diameter, in', D, 6, 'worked out'),
    n: numberGiven('n', 'rev/min', asked.speedRpm, 3),
  };
  const unit = unitOfPitch(asked.pitch);
  const figure = (
    name: string,
    symbol: string,
    formula: string,
    number: number,
    of: string,
    places: number,
    from: readonly Given[],
  ): Figure => told(unit, { name, symbol, formula, source: CATALOGUE }, { number, unit: of, places }, from);
  return {
    figures: {
      load: figure('Safe load along the pitch line', 'W', 'S × F × Y ÷ P × 600 ÷ (600 + V)', W, 'lb', 0, [
        given.S,
        given.F,
        given.Y,
        given.P,
        given.V,
      ]),
      power: figure('Safe power', 'H', 'W × V ÷ 33000', powerHp(W, V), 'hp', 2, [given.W, given.V]),
      torque: figure('Safe torque', 'T', 'W × D ÷ 2', (W * D) / 2, 'in-lb', 0, [given.W, given.D]),
      standing: figure('Safe load standing still', 'W0', 'S × F × Y ÷ P', W / barthShare(V), 'lb', 0, [given.S, given.F, given.Y, given.P]),
      pitchLineSpeed: figure('Pitch line speed', 'V', 'π × D × n ÷ 12', V, 'ft/min', 0, [given.D, given.n]),
      factor: told(
        unit,
        {
          name: 'Form factor',
          symbol: 'Y',
          formula: '',
          source: `Lewis's table for ${system === '14.5' ? '14½' : system}°, value from memory, some lines read in print`,
        },
        { number: Y, unit: '', places: 3 },
      ),
    },
    cautions: cautions(V),
  };
}
