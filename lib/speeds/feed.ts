import type { Figure } from '../figure/figure.ts';
import type { Material } from '../gears/gear.ts';
import { inches, type Length, type LengthUnit } from '../values/length.ts';
import { FEEDS, type FeedRow } from './feeds.data.ts';
import { highestNotAbove, lowestOf } from './speed.formulas.ts';

export type FeedKind = 'lathe rough' | 'lathe finish' | 'gear cutter';

const rowOf = (material: Material): FeedRow => {
  const row = FEEDS.find((r) => r.material === material);
  if (!row) throw new Error(`no feed for ${material}`);
  return row;
};

/** The feed to aim at: per turn on the lathe, per minute under a gear cutter. */
function wantedFeed(material: Material, kind: FeedKind): { readonly feed: Length; readonly source: string } {
  const row = rowOf(material);
  if (kind === 'gear cutter') return { feed: inches(row.gearCutterInPerMin), source: row.gearCutterSource };
  return { feed: inches(kind === 'lathe rough' ? row.roughInPerRev : row.finishInPerRev), source: row.latheSource };
}

/** The feed to engage: the highest of the machine not above the wanted one, else its finest; by hand if it has none. */
export function offerFeed(asked: { material: Material; kind: FeedKind; feeds: readonly Length[]; unit?: LengthUnit }): Figure {
  const { feed, source } = wantedFeed(asked.material, asked.kind);
  const offered = (highestNotAbove(asked.feeds, feed) ?? lowestOf(asked.feeds)) as Length | null;
  const per = asked.kind === 'gear cutter' ? 'a minute' : 'a turn';
  return {
    name: `Feed ${per}`,
    symbol: 'f',
    value: { length: offered ?? feed },
    unit: asked.unit ?? 'in',
    ...(asked.kind === 'gear cutter' ? { per: 'min' as const } : {}),
    formula: '',
    source,
    given: [],
    note:
      offered === null
        ? `By hand, about this much ${per}.`
        : `The machine's feed next not above the wanted one, ${per}; its finest if all are coarser.`,
  };
}

/** Roughing rounds before the finishing one: two coarser than 10 DP in steel or an unknown metal, else one (judgement). P per inch. */
export const roughingRounds = (P: number, material: Material): number =>
  P < 10 && (material === 'steel' || material === 'unknown') ? 2 : 1;
