import type { Gear, Material } from '../gears/gear.ts';
import { nanometres } from '../values/length.ts';
import type { CleanUp } from './clean-up.ts';
import { type Stock, testStock } from './from-stock.ts';
import { metalOff } from './metal-off.ts';
import { ringAndHub } from './ring-and-hub.sums.ts';
import { type Judged, judgeSpare, makes } from './spare-test.ts';
import type { SpareWheel } from './spare-wheel.ts';

export const WAYS_TO_MAKE = ['re-cut, clean', 're-cut, only just', 'ring and hub', 'from stock', 'send out', 'do without'] as const;
type WayToMake = (typeof WAYS_TO_MAKE)[number];

/** One way to a wheel. open: it can be taken as things stand; 'measure first' when something has to be measured before. */
export type WayOffered = {
  readonly way: WayToMake;
  readonly open: 'yes' | 'measure first' | 'no';
  readonly says: string;
  readonly spare: SpareWheel | null;
  readonly stock: Stock | null;
};

/** ring: what the ring would be made of. splines: whether the shop can cut a splined bore. */
export type WaysAsked = {
  readonly wanted: Gear;
  readonly spares: readonly SpareWheel[];
  readonly stock: readonly Stock[];
  readonly ring: Material;
  readonly splines: boolean;
  readonly cleanUp?: CleanUp;
};

type Held = { readonly spare: SpareWheel; readonly judged: Judged; readonly metal: number };

const offered = (way: WayToMake, open: WayOffered['open'], says: string, more: Partial<WayOffered> = {}): WayOffered => ({
  way,
  open,
  says,
  spare: null,
  stock: null,
  ...more,
});

const openOf = (verdict: Judged['verdict']): WayOffered['open'] =>
  makes(verdict) ? 'yes' : verdict === 'measure first' ? 'measure first' : 'no';

const order = { yes: 0, 'measure first': 1, no: 2 } as const;

const against = ({ judged }: Held): number => judged.checks.filter(({ result }) => result === 'no').length;

/** What serves by the metal that comes off, the least first; of what does not, that with least against it, and then the nearest in size. */
function byUse(a: Held, b: Held): number {
  const [one, two] = [openOf(a.judged.verdict), openOf(b.judged.verdict)];
  if (one !== 'no' || two !== 'no') return order[one] - order[two] || a.metal - b.metal || a.spare.id - b.spare.id;
  return against(a) - against(b) || b.judged.room.left - a.judged.room.left || a.spare.id - b.spare.id;
}

function recuts({ wanted, spares, cleanUp }: WaysAsked): WayOffered[] {
  const held: Held[] = spares.map((spare) => ({
    spare,
    judged: judgeSpare({ wanted, spare, cleanUp }),
    metal: metalOff(wanted, spare.gear),
  }));
  return held
    .sort(byUse)
    .map(({ spare, judged }) =>
      offered(
        judged.verdict === 'only just' ? 're-cut, only just' : 're-cut, clean',
        openOf(judged.verdict),
        `${spare.name}: ${judged.says}`,
        { spare },
      ),
    );
}

/** Ring and hub on each spare, the largest hub first: the thinner ring, the less to turn. */
function rings({ wanted, spares, ring, cleanUp }: WaysAsked): WayOffered[] {
  const tried = spares.map((spare) => ({ spare, ring: ringAndHub({ wanted, spare, ring, cleanUp }) }));
  const sorted = tried.sort((a, b) => b.ring.hub - a.ring.hub || a.spare.id - b.spare.id);
  return sorted.map((one) => {
    const open = one.ring.verdict === 'serves' ? 'yes' : one.ring.verdict === 'refused' ? 'no' : 'measure first';
    return offered('ring and hub', open, `${one.spare.name}: ${one.ring.says}`, { spare: one.spare });
  });
}

function fromStock({ wanted, stock, splines }: WaysAsked): WayOffered[] {
  const splined = wanted.bore?.form === 'splined';
  const boring = splined
    ? splines
      ? ' Then bore and spline it.'
      : ' The bore has splines, which this shop cannot cut: send the blank out for splining.'
    : ' Then bore it.';
  const tried = stock.map((piece) => ({ piece, ...testStock({ wanted, stock: piece }) }));
  if (tried.length === 0)
    return [offered('from stock', 'no', splined && !splines ? `No stock is in the shop.${boring}` : 'No stock is in the shop.')];
  const smallestFirst = tried.sort(
    (a, b) => (a.piece.diameter ?? nanometres(0)) - (b.piece.diameter ?? nanometres(0)) || a.piece.id - b.piece.id,
  );
  return smallestFirst.map(({ piece, verdict, says }) => {
    const open = verdict === 'serves' ? 'yes' : verdict === 'refused' ? 'no' : 'measure first';
    return offered('from stock', open, `${piece.name}: ${says}${open === 'no' ? '' : boring}`, { stock: piece });
  });
}

/** Every way to a wheel, each with its verdict in a sentence: by kind in the trade's order, what is open first within each kind. */
export function waysFor(asked: WaysAsked): WayOffered[] {
  const splined = asked.wanted.bore?.form === 'splined';
  const sendOut = splined
    ? 'A stock wheel bored and splined outside, or a new blank sent out for splining.'
    : 'A stock wheel bored to suit, or the whole wheel sent out.';
  const all = [
    ...recuts(asked),
    ...rings(asked),
    ...fromStock(asked),
    offered('send out', 'yes', sendOut),
    offered('do without', 'yes', 'Leave it out, and see what the machine can do without it.'),
  ];
  const place = (one: WayOffered) => WAYS_TO_MAKE.indexOf(one.way) * 3 + order[one.open];
  const refusedLast = (one: WayOffered) => (one.open === 'no' && one.way.startsWith('re-cut') ? 5 : place(one));
  return all
    .map((one, at) => ({ one, at }))
    .sort((a, b) => refusedLast(a.one) - refusedLast(b.one) || a.at - b.at)
    .map(({ one }) => one);
}
