import type { Caution } from '../figure/figure.ts';
import { inches, inUnit } from '../values/length.ts';
import { toNumber } from '../values/ratio.ts';
import { leastTeeth, tipThickness } from './spur.formulas.ts';
import { isComposite } from './systems.ts';
import type { Tooth } from './tooth.ts';
import type { Wheel } from './wheel.ts';

/** Least count of the composite form. Source: value from memory. */
const COMPOSITE_LEAST = 12;

/** The least whole count that a rack or hob leaves whole. */
const leastWhole = ({ system }: Wheel, tooth: Tooth): number =>
  isComposite(system) ? COMPOSITE_LEAST : Math.ceil(leastTeeth(tooth.A / tooth.m, tooth.a) - 1e-9);

function undercut(wheel: Wheel, tooth: Tooth): readonly Caution[] {
  const least = leastWhole(wheel, tooth);
  if (wheel.teeth >= least) return [];
  const says = `Under ${least} teeth a hob or rack of this system cuts into the foot of the tooth; a form cutter does not, but the tips of a big mate may rub there.`;
  return [{ name: 'Undercut', says, weight: 'beware', about: 'rootDiameter' }];
}

function pointed(tooth: Tooth): readonly Caution[] {
  if (tipThickness(tooth) > 0) return [];
  const says = 'The flanks meet before they reach the outside diameter: the tooth ends in a point. Take a lower addendum.';
  return [{ name: 'Pointed tip', says, weight: 'beware', about: 'outsideDiameter' }];
}

/** 20 DP and finer is usually cut to 1.2/P + 0.002 in. Source: Machine Elements in Mechanical Design, 4th ed., table 8-4. */
function finePitch({ pitch, system }: Wheel): readonly Caution[] {
  if (pitch.kind !== 'DP') return [];
  const [fine, finelyCut] = [toNumber(pitch.size) >= 20, system.extra > 0];
  if (fine === finelyCut) return [];
  const says = fine
    ? 'Wheels of 20 DP and finer are usually cut to 1.2/P + 0.002 in. Use the depth stamped on the cutter.'
    : 'The fine system is for 20 DP and finer. Use the depth stamped on the cutter.';
  return [{ name: 'Fine pitch', says, weight: 'note', about: 'wholeDepth' }];
}

/** What to beware of in a wheel of this count and system. */
export const wheelCautions = (wheel: Wheel, tooth: Tooth): readonly Caution[] => [
  ...undercut(wheel, tooth),
  ...pointed(tooth),
  ...finePitch(wheel),
];

/** Said where a measure touches flank that a form cutter leaves and a hob takes away. */
export const UNDERCUT_THERE =
  'It touches where a hob or rack cuts the foot of the tooth away: true for a wheel cut with a form cutter, not for a hobbed one.';

/** A span or a thickness away from the pitch line means little on a composite tooth. */
export const compositeCaution = ({ system }: Wheel, about: string): readonly Caution[] =>
  isComposite(system)
    ? [
        {
          name: 'Composite form',
          says: 'This tooth is an involute only about the pitch line: compare with a sound wheel.',
          weight: 'beware',
          about,
        },
      ]
    : [];

/** How far a measured outside may lie from the nominal one: +0 − 0.02 of 1/P or of the module (judgement). */
export const outsideAllowance = ({ m }: Tooth): number => 0.02 * m;

/** Beware of a blank that is not within its limits. Dm measured, Do nominal, both in the tooth's unit. */
export function blankCautions(tooth: Tooth, Do: number, Dm: number): readonly Caution[] {
  const hair = inUnit(inches(0.00005), tooth.unit);
  if (Dm > Do + hair)
    return [
      {
        name: 'Blank over size',
        says: 'The blank is over its nominal size: metal left, another cut. As it is the tips stand too far out.',
        weight: 'beware',
        about: 'measuredOutside',
      },
    ];
  if (Dm < Do - outsideAllowance(tooth) - hair)
    return [
      {
        name: 'Blank under size',
        says: 'The blank is under its limit: the depth is lessened to keep the roots where they belong, and the tips are short.',
        weight: 'beware',
        about: 'measuredOutside',
      },
    ];
  return [];
}
