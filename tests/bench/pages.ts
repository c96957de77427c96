import path from 'node:path';
import Fastify, { type FastifyInstance } from 'fastify';
import { packageFolder } from '../../server/package-folder.ts';
import type { Furniture, Place } from '../../server/page.ts';
import { newTemplates } from '../../server/templates.ts';
import { kindOf, walk } from '../browser/walk.ts';

const ROUNDS = 31;
const CHANGED_ROUNDS = 7;
const OF_ONE_KIND = 2;

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

const get = (app: FastifyInstance, url: string) => app.inject({ method: 'GET', url, headers: { host: 'localhost' } });

/** Processor time, not the clock: whatever else the machine does meanwhile would be counted too, and most where a page is asked for while it is busy. */
async function msOf(work: () => Promise<unknown>): Promise<number> {
  const start = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** Two things turn by turn, so that a machine that slows down slows both alike. */
async function sideBySide(one: () => Promise<unknown>, other: () => Promise<unknown>): Promise<readonly [number, number]> {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round++) {
    times[0].push(await msOf(one));
    times[1].push(await msOf(other));
  }
  return [median(times[0]), median(times[1])];
}

/** The same page when something was written before every view of it, so that nothing is remembered of the shop. */
async function afterChanges(work: () => Promise<unknown>, change: () => Promise<unknown>): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < CHANGED_ROUNDS; round++) {
    await change();
    times.push(await msOf(work));
  }
  return median(times);
}

const HEAD = { title: 'Bare', place: 'Today', back: null, titleBlock: [] };
const FURNITURE: Furniture = {
  places: ['Today', 'Machines', 'Drawer', 'Tools', 'Sums'].map((says) => ({ says: says as Place, href: '/' })),
  searchHref: '/search',
  searchText: '',
  styles: ['/assets/style.css', '/assets/drawing.css'],
  script: '/assets/page.js',
  icon: '/assets/icon.svg',
  shopName: 'Backgear',
  version: '0',
  demo: false,
  demoOut: null,
  canChange: true,
  lookOnly: null,
  notice: null,
};

/** A bare Fastify and Eta server: the same layout round the same bytes, its strings ready made. A sheet, which has no layout of a page, is given whole. */
function bareServer(): { app: FastifyInstance; put: (page: string) => void } {
  const app = Fastify({ logger: false });
  const eta = newTemplates(path.join(packageFolder(), 'views'));
  eta.loadTemplate('@in-layout', "<% layout('/layout') %><%~ it.main %>");
  eta.loadTemplate('@whole', '<%~ it.main %>');
  let [template, main] = ['@whole', ''];
  app.get('/', (_request, reply) => reply.type('text/html; charset=utf-8').send(eta.render(template, { ...FURNITURE, ...HEAD, main })));
  const put = (page: string): void => {
    const inside = /<main id="work"[^>]*>([\s\S]*)<\/main>/.exec(page)?.[1];
    [template, main] = inside === undefined ? ['@whole', page] : ['@in-layout', inside];
  };
  return { app, put };
}

/** ms: seen again, nothing written since. changedMs: seen first after something was written. bareMs: the bare page of the same bytes. */
export type PageTime = {
  readonly kind: string;
  readonly address: string;
  readonly ms: number;
  readonly changedMs: number;
  readonly bareMs: number;
  readonly bytes: number;
};

export const timesBare = ({ ms, bareMs }: PageTime): number => ms / bareMs;
export const changedTimesBare = ({ changedMs, bareMs }: PageTime): number => changedMs / bareMs;
export const medianOf = (times: readonly PageTime[], ratio: (one: PageTime) => number): number => median(times.map(ratio));

/** Every page that links lead to, each beside the bare page of the same bytes, slowest ratio first. change: writes something small into the shop. */
export async function timePages(app: FastifyInstance, change: () => Promise<unknown>): Promise<PageTime[]> {
  const pages = await walk(['/', '/sums', '/made', '/search?q=Stud'], OF_ONE_KIND, async (address) => {
    const answer = await get(app, address);
    return { address, status: answer.statusCode, type: String(answer.headers['content-type'] ?? ''), body: answer.body };
  });
  const bare = bareServer();
  const times: PageTime[] = [];
  for (const { address, body, type } of pages) {
    if (!type.startsWith('text/html')) continue;
    bare.put(body);
    const changedMs = await afterChanges(() => get(app, address), change);
    const [ms, bareMs] = await sideBySide(
      () => get(app, address),
      () => get(bare.app, '/'),
    );
    times.push({ kind: kindOf(address), address, ms, changedMs, bareMs, bytes: Buffer.byteLength(body) });
  }
  await bare.app.close();
  return times.sort((a, b) => timesBare(b) - timesBare(a));
}
