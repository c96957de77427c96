import helmet from '@fastify/helmet';
import Fastify from 'fastify';

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

/** The headers of every answer, asked of Helmet once: it works them out anew for each request, in the time of a small page, and they are always the same. */
export async function strictHeaders(): Promise<readonly (readonly [name: string, value: string])[]> {
  const once = Fastify();
  await once.register(helmet, {
    contentSecurityPolicy: CSP,
    strictTransportSecurity: false,
    referrerPolicy: { policy: 'same-origin' },
    crossOriginEmbedderPolicy: false,
    originAgentCluster: false,
  });
  once.get('/', (_request, reply) => reply.send({ ...reply.raw.getHeaders() }));
  const set: Record<string, string> = (await once.inject('/')).json();
  await once.close();
  return Object.entries(set);
}
