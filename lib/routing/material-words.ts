import type { Caution } from '../figure/figure.ts';
import type { Material } from '../gears/gear.ts';
import { CAUTIONS } from './cautions.data.ts';
import type { Job } from './job.ts';

/** What the metal itself asks of whoever cuts it. */
export function materialCautions(material: Material): readonly Caution[] {
  if (material === 'cast iron') return [CAUTIONS.iron];
  return material === 'phenolic' ? [CAUTIONS.phenolic] : [];
}

/** What the lathe asks beside: a screwed nose. */
export const latheCautions = ({ shop, material }: Job): readonly Caution[] => [
  ...(shop.lathe?.screwedNose ? [CAUTIONS.screwedNose] : []),
  ...materialCautions(material),
];
