import path from 'node:path';
import { performance } from 'node:perf_hooks';
import Fastify, { type FastifyInstance } from 'fastify';
import { packageFolder } from '../../server/package-folder.ts';
import type { Furniture, Place } from '../../server/page.ts';
import { newTemplates } from '../../server/templates.ts';
import { kindOf, walk } from '../browser/walk.ts';

const ROUNDS = 41;
const OF_ONE_KIND = 2;

const median = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

async function timeOf(app: FastifyInstance, url: string): Promise<{ ms: number; bytes: number }> {
  const times: number[] = [];
  let bytes = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    const answer = await app.inject({ method: 'GET', url, headers: { host: 'localhost' } });
    times.push(performance.now() - start);
    bytes = answer.rawPayload.length;
  }
  return { ms: median(times), bytes };
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

export type PageTime = {
  readonly kind: string;
  readonly address: string;
  readonly ms: number;
  readonly bareMs: number;
  readonly bytes: number;
};

/** Every page that links lead to, each beside the bare page of the same bytes, slowest ratio first. */
export async function timePages(app: FastifyInstance): Promise<PageTime[]> {
  const pages = await walk(['/', '/sums', '/made', '/search?q=Stud'], OF_ONE_KIND, async (address) => {
    const answer = await app.inject({ method: 'GET', url: address, headers: { host: 'localhost' } });
    return { address, status: answer.statusCode, type: String(answer.headers['content-type'] ?? ''), body: answer.body };
  });
  const bare = bareServer();
  const times: PageTime[] = [];
  for (const { address, body, type } of pages) {
    if (!type.startsWith('text/html')) continue;
    bare.put(body);
    const [own, plain] = [await timeOf(app, address), await timeOf(bare.app, '/')];
    times.push({ kind: kindOf(address), address, ms: own.ms, bareMs: plain.ms, bytes: own.bytes });
  }
  await bare.app.close();
  return times.sort((a, b) => b.ms / b.bareMs - a.ms / a.bareMs);
}
