import path from 'node:path';
import cookie from '@fastify/cookie';
import formbody from '@fastify/formbody';
import helmet from '@fastify/helmet';
import staticFiles from '@fastify/static';
import Fastify, { type FastifyInstance, type FastifyRequest } from 'fastify';
import type { Config } from './config.ts';
import { tell } from './errors.ts';
import { guard, isTrusted } from './guard/guard.ts';
import { actOnce } from './once.ts';
import { packageFolder } from './package-folder.ts';
import { PAGES } from './pages.ts';
import { newReplies } from './reply.ts';
import { shopAddress } from './shop-address.ts';
import type { Shops } from './shops.ts';
import type { Route, Visit } from './visit.ts';

/** clock: the present as ISO text. log: false in tests. */
export type Building = { readonly shops: Shops; readonly config: Config; readonly clock: () => string; readonly log: boolean };

const MOST_BODY_BYTES = 256 * 1024;

const CSP = {
  useDefaults: false,
  directives: {
    defaultSrc: ["'none'"],
    styleSrc: ["'self'"],
    scriptSrc: ["'self'"],
    imgSrc: ["'self'", 'data:'],
    connectSrc: ["'self'"],
    manifestSrc: ["'self'"],
    formAction: ["'self'"],
    baseUri: ["'none'"],
    frameAncestors: ["'none'"],
  },
};

async function visitOf(request: FastifyRequest, { shops, config, clock }: Building): Promise<Visit> {
  const { db, demo } = shops.now();
  return {
    db,
    demo,
    shops,
    params: (request.params ?? {}) as Record<string, string>,
    query: (request.query ?? {}) as Record<string, unknown>,
    body: (request.body ?? {}) as Record<string, unknown>,
    now: clock(),
    trusted: await isTrusted(request, shops),
    shopAddress: shopAddress(config, request.headers.host ?? ''),
    address: request.url,
    cookies: request.cookies,
  };
}

function addRoute(app: FastifyInstance, building: Building, route: Route, replies: ReturnType<typeof newReplies>): void {
  app.route({
    method: route.method,
    url: route.path,
    handler: async (request, reply) => {
      const visit = await visitOf(request, building);
      const result = route.method === 'POST' && !route.bare ? await actOnce(visit, route.handle) : await route.handle(visit);
      return replies.send(reply, visit, result);
    },
    config: { who: route.who },
  });
}

/** The whole server, not yet listening. */
export async function buildApp(building: Building): Promise<FastifyInstance> {
  const app = Fastify({
    logger: building.log ? { level: 'warn' } : false,
    trustProxy: false,
    bodyLimit: MOST_BODY_BYTES,
    routerOptions: { maxParamLength: 200 },
  });
  const folder = packageFolder();
  const replies = newReplies(path.join(folder, 'views'));
  await app.register(helmet, {
    contentSecurityPolicy: CSP,
    strictTransportSecurity: false,
    referrerPolicy: { policy: 'same-origin' },
    crossOriginEmbedderPolicy: false,
    originAgentCluster: false,
  });
  await app.register(cookie);
  await app.register(formbody, { bodyLimit: MOST_BODY_BYTES });
  await app.register(staticFiles, { root: path.join(folder, 'views', 'assets'), prefix: '/assets/', index: false, maxAge: 0 });
  app.addHook('onRequest', guard(building));
  for (const route of PAGES) addRoute(app, building, route, replies);
  app.setNotFoundHandler(async (request, reply) => {
    const visit = await visitOf(request, building);
    return replies.told(reply, visit, {
      status: 404,
      title: 'Not found',
      says: 'There is no page at this address.',
      tryThis: 'Look for it by its name or mark in the search box.',
      reference: '',
      links: [],
    });
  });
  app.setErrorHandler(async (error: Error, request, reply) => {
    const told = tell(error);
    if (told.status === 500) console.error(`reference ${told.reference}`, error);
    return replies.told(reply, await visitOf(request, building), told);
  });
  return app;
}
