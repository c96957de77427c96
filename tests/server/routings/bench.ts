import { onTestFinished } from 'vitest';
import type { Executor } from '../../../db/executor.ts';
import { itemsOfSet } from '../../../db/items.ts';
import { addMachine } from '../../../db/machines.ts';
import { openRoutings } from '../../../db/open-routing.ts';
import { type OperationLine, operationsOf } from '../../../db/operations.ts';
import { partsOfSet } from '../../../db/parts.ts';
import { routing } from '../../../db/routings.ts';
import { addTool } from '../../../db/tools.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { halvorsen } from '../../db/bench.ts';
import { NOW, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';

export const TOOL = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
const CIRCLES = [
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];
const DIAL = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 } as const;

export const NO_4 = {
  kind: 'cutter',
  pitch: { kind: 'DP', size: ratio(8) },
  angle: degrees(14.5),
  number: 'No. 4',
  teethFrom: 26,
  teethTo: 34,
  hole: inches(1),
  diameter: inches(2.75),
  width: inches(0.25),
  stampedDepth: inches(0.27),
  steel: 'high-speed',
  exactFor: null,
} as const;

/** Lathe, mill, head, plates and the No. 4 of the first story; no No. 5 and no mandrel. */
async function tooling(db: Executor): Promise<void> {
  const machine = {
    speedsRpm: [30, 45, 70, 110, 180],
    feeds: [inches(0.004), inches(0.008)],
    feedsPer: 'turn',
    screwedNose: true,
    nose: '',
    notes: '',
  } as const;
  await addMachine(db, { ...machine, name: 'the lathe', kind: 'lathe', crossDial: DIAL, depthDial: null });
  await addMachine(db, { ...machine, name: 'the mill', kind: 'mill', crossDial: DIAL, depthDial: DIAL });
  await addTool(db, { ...TOOL, name: 'the head', details: { kind: 'head', turns: 40, backPin: false, oneIdler: null } });
  for (const [at, circles] of CIRCLES.entries())
    await addTool(db, { ...TOOL, name: `plate ${at + 1}`, details: { kind: 'plate', sides: [circles] } });
  await addTool(db, { ...TOOL, name: 'one-inch arbor', details: { kind: 'arbor', diameter: inches(1) } });
  await addTool(db, { ...TOOL, name: 'No. 4', details: NO_4 });
}

export type Bench = {
  readonly shop: TestShop;
  readonly db: Executor;
  readonly part22: number;
  readonly part28: number;
  readonly spare31: number;
  readonly first: number;
  readonly second: number;
  readonly line: (routingId: number, key: string) => Promise<OperationLine>;
  readonly get: (url: string) => ReturnType<typeof visit>;
  readonly post: (url: string, form: Readonly<Record<string, string>>) => ReturnType<typeof send>;
};

/** The first story with both routings open: the 22 from a 31, the 28 from a 34. */
export async function firstStory(): Promise<Bench> {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const { set } = await halvorsen(db);
  await tooling(db);
  const [parts, things] = [await partsOfSet(db, set.id), await itemsOfSet(db, set.id)];
  const missing = (teeth: number): number => parts.find((one) => one.stored?.gear.teeth === teeth)?.id ?? 0;
  const spare = (teeth: number): number => things.find((one) => one.stored?.gear.teeth === teeth && one.state === 'spare')?.id ?? 0;
  const [first = 0, second = 0] = await openRoutings(
    db,
    [
      { partId: missing(22), way: 're-cut a spare', itemIds: [spare(31)] },
      { partId: missing(28), way: 're-cut a spare', itemIds: [spare(34)] },
    ],
    NOW,
  );
  const line = async (routingId: number, key: string): Promise<OperationLine> => {
    const found = (await operationsOf(db, routingId)).find((one) => one.key === key);
    if (!found) throw new Error(`no operation ${key}`);
    return found;
  };
  return {
    shop,
    db,
    part22: missing(22),
    part28: missing(28),
    spare31: spare(31),
    first,
    second,
    line,
    get: (url) => visit(shop, url),
    post: (url, form) => send(shop, url, form),
  };
}

/** The number that stands in a page under a figure's key. */
export const figureIn = (html: string, key: string): string =>
  new RegExp(`data-figure="${key}"[\\s\\S]*?<b class="number[^"]*">([^<]*)</b>`).exec(html)?.[1] ?? `no figure ${key}`;

/** The one-time mark of the form that posts to an address. */
export const markIn = (html: string, action: string): string =>
  new RegExp(`action="${action}"[\\s\\S]*?name="mark" value="([^"]+)"`).exec(html)?.[1] ?? '';

const unescaped = (text: string): string =>
  text.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

/** What the forms of a page list as worked out otherwise, each as the page sends it: the whole list first. */
export const listsIn = (html: string): string[] =>
  [...html.matchAll(/name="listed" value="([^"]*)"/g)].map(([, text = '']) => unescaped(text)).sort((a, b) => b.length - a.length);

/** Accepts all that the page of a routing lists, as its button does. */
export async function acceptListed({ get, post, db }: Bench, routingId: number): ReturnType<typeof send> {
  const [listed = '[]'] = listsIn((await get(`/routings/${routingId}`)).body);
  return post(`/routings/${routingId}/accept`, { rev: String((await routing(db, routingId)).rev), listed });
}

/** Marks an operation done from its own page, as it stands there. */
export async function markDoneOn({ get, post }: Bench, id: number, form: Readonly<Record<string, string>> = {}): ReturnType<typeof send> {
  const html = (await get(`/operations/${id}`)).body;
  const own = html.slice(html.indexOf('id="measured"'));
  return post(`/operations/${id}/done`, { rev: /name="rev" value="(\d+)"/.exec(own)?.[1] ?? '', listed: listsIn(own)[0] ?? '', ...form });
}

/** Nothing on a page may look like a mistake of ours. */
export const blemish = /undefined|NaN|\[object|href=""/;
