import path from 'node:path';
import cookie from '@fastify/cookie';
import formbody from '@fastify/formbody';
import staticFiles from '@fastify/static';
import Fastify, { type FastifyInstance, type FastifyRequest } from 'fastify';
import type { Config } from './config.ts';
import { tell } from './errors.ts';
import { guard, isTrusted } from './guard/guard.ts';
import { legibleUrl } from './guard/legible-url.ts';
import { strictHeaders } from './guard/strict-headers.ts';
import { actOnce } from './once.ts';
import { packageFolder } from './package-folder.ts';
import { PAGES } from './pages.ts';
import { newReplies } from './reply.ts';
import { shopAddress } from './shop-address.ts';
import type { Shops } from './shops.ts';
import type { Route, Visit } from './visit.ts';

/** clock: the present as ISO text. log: false in tests. */
export type Building = { readonly shops: Shops; readonly config: Config; readonly clock: () => string; readonly log: boolean };

/** A form with a note far too long comes back as it was typed; a letter may take twelve bytes on its way. */
const MOST_BODY_BYTES = 4 * 1024 * 1024;
/** Where anyone may send something: the name of a device. */
const MOST_OPEN_BODY_BYTES = 16 * 1024;
const REQUEST_MS = 60_000;

/** What was sent, by name; a body that is no form is an empty one. */
const formOf = (body: unknown): Record<string, unknown> =>
  typeof body === 'object' && body !== null && !Array.isArray(body) ? (body as Record<string, unknown>) : {};

function visitOf(request: FastifyRequest, { shops, config, clock }: Building, trusted: boolean): Visit {
  const { db, demo } = shops.now();
  return {
    db,
    demo,
    shops,
    params: (request.params ?? {}) as Record<string, string>,
    query: (request.query ?? {}) as Record<string, unknown>,
    body: formOf(request.body),
    now: clock(),
    trusted,
    shopAddress: shopAddress(config, request.headers.host ?? ''),
    address: request.url,
    cookies: request.cookies ?? {},
  };
}

type Replies = ReturnType<typeof newReplies>;

function addRoute(app: FastifyInstance, building: Building, route: Route, replies: Replies): void {
  app.route({
    method: route.method,
    url: route.path,
    bodyLimit: route.who === 'trusted' ? MOST_BODY_BYTES : MOST_OPEN_BODY_BYTES,
    handler: async (request, reply) => {
      const visit = visitOf(request, building, await isTrusted(request, building.shops));
      const result = route.method === 'POST' && !route.bare ? await actOnce(visit, route.handle) : await route.handle(visit);
      return replies.send(reply, visit, result);
    },
    config: { who: route.who },
  });
}

/** Answers whatever went wrong with a page of words. Even when the shop's file cannot be read, nothing of the error is shown. */
function answerErrors(app: FastifyInstance, building: Building, replies: Replies): void {
  app.setErrorHandler(async (thrown: Error | undefined, request, reply) => {
    const error = thrown ?? new Error('Nothing was thrown.');
    const told = tell(error);
    if (told.status === 500) console.error(`reference ${told.reference}: ${request.method} ${request.url}`, error);
    try {
      return replies.told(reply, visitOf(request, building, await isTrusted(request, building.shops)), told);
    } catch (again) {
      console.error(`reference ${told.reference || 'none'}: the error page itself failed`, again);
      return reply.code(told.status).type('text/plain; charset=utf-8').send(`${told.says} ${told.tryThis} ${told.reference}\n`);
    }
  });
}

/** The whole server, not yet listening. */
export async function buildApp(building: Building): Promise<FastifyInstance> {
  const app = Fastify({
    logger: building.log ? { level: 'warn' } : false,
    trustProxy: false,
    bodyLimit: MOST_OPEN_BODY_BYTES,
    requestTimeout: REQUEST_MS,
    rewriteUrl: (request) => legibleUrl(request.url ?? '/'),
    // legibleUrl has already sent endless parts nowhere, counted in letters; encoded, each may take nine bytes and more
    routerOptions: { maxParamLength: 4000 },
  });
  // Forms only: these two would be read from any page's script.
  app.removeContentTypeParser(['application/json', 'text/plain']);
  const folder = packageFolder();
  const replies = newReplies(path.join(folder, 'views'));
  const strict = await strictHeaders();
  app.addHook('onRequest', (_request, reply, done) => {
    for (const [name, value] of strict) reply.raw.setHeader(name, value);
    done();
  });
  await app.register(cookie);
  await app.register(formbody);
  await app.register(staticFiles, { root: path.join(folder, 'views', 'assets'), prefix: '/assets/', index: false, maxAge: 0 });
  app.addHook('onRequest', guard(building));
  for (const route of PAGES) addRoute(app, building, route, replies);
  app.setNotFoundHandler(async (request, reply) => {
    const visit = visitOf(request, building, await isTrusted(request, building.shops));
    return replies.told(reply, visit, {
      status: 404,
      title: 'Not found',
      says: 'There is no page at this address.',
      tryThis: 'Look for it by its name or mark in the search box.',
      reference: '',
      links: [],
    });
  });
  answerErrors(app, building, replies);
  return app;
}
