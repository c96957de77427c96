import type { Stock } from '../blanks/from-stock.ts';
import { type RingVerdict, ringAndHub } from '../blanks/ring-and-hub.sums.ts';
import type { SpareWheel } from '../blanks/spare-wheel.ts';
import { subtract } from '../values/length.ts';
import type { RingAndHub } from './asked.ts';
import { spareNow } from './inspect.ts';
import type { Job } from './job.ts';
import { lengthRead } from './readings.ts';

/** Ring and hub as wished before anything is turned, and as they stand with what was measured. */
export type Fit = { readonly wished: RingVerdict; readonly bored: RingVerdict; readonly heated: RingVerdict };

const askedOf = (job: Job, spare: SpareWheel, ring: Stock) => ({
  wanted: job.wanted.gear,
  spare,
  ring: ring.material,
  cleanUp: job.shop.cleanUp,
});

/** Whether the hub, as it measures by now, will carry a ring. */
export const wishedRing = (job: Job, { hub, ring }: RingAndHub): RingVerdict => ringAndHub(askedOf(job, spareNow(hub, job), ring));

export function fitOf(job: Job, spare: SpareWheel, ring: Stock): Fit {
  const asked = askedOf(job, spare, ring);
  const wished = ringAndHub(asked);
  const hub = lengthRead(job.readings, 'hub-size', 'hub');
  const bored = hub ? ringAndHub({ ...asked, hub: hub.length }) : wished;
  const bore = lengthRead(job.readings, 'bore-ring', 'ringBore');
  if (!bore) return { wished, bored, heated: bored };
  const stands = hub?.length ?? wished.hub;
  const allowancePerInch = subtract(stands, bore.length) / stands;
  return { wished, bored, heated: ringAndHub({ ...asked, hub: stands, allowancePerInch }) };
}
