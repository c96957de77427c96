import { shrinkFit } from '../../lib/fits/shrink.sums.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import { inches } from '../../lib/values/length.ts';
import { tickField, wordsField } from '../forms/field.ts';
import { size, sizeIfKnown, unitOf } from './asks.ts';
import { heatAsks, heatOf, ringField } from './blanks.ts';
import { sum } from './sum.ts';

const shrinkSum = sum({
  path: 'shrink-fit',
  title: 'Shrink fit',
  group: 'Fits',
  tells: 'A ring shrunk on a hub: what to bore it to, how hot the oven, and how hard the ring is then stretched.',
  asks: {
    hub: size({ label: 'Hub diameter', least: 0.5, most: 40 }),
    hubMeasured: tickField({ label: 'The hub is turned and measured' }),
    ringOutside: size({ label: 'Ring to its tooth roots', hint: 'Outside of its solid part', least: 0.5, most: 60 }),
    hubBore: sizeIfKnown({ label: 'Bore of the hub', hint: 'Empty: solid', least: 0, most: 40 }),
    ring: ringField,
    hubMaterial: wordsField({ label: 'Hub made of', words: MATERIALS }),
    ...heatAsks,
  },
  example: {
    hub: '3.7500',
    hubMeasured: 'yes',
    ringOutside: '4.8072',
    hubBore: '1.250',
    ring: 'steel',
    hubMaterial: 'steel',
    shop: '70',
    allowancePerInch: '',
    strength: '',
  },
  work: ({ hub, hubMeasured, ringOutside, hubBore, ring, hubMaterial, ...heat }) =>
    shrinkFit({
      hub: hub.length,
      hubMeasured,
      ringOutside: ringOutside.length,
      hubBore: hubBore?.length ?? inches(0),
      ring,
      hubMaterial,
      unit: unitOf(hub),
      ...heatOf(heat),
    }).answer,
});

export const FIT_SUMS = [shrinkSum];
