import type { FastifyReply, FastifyRequest } from 'fastify';
import { deviceOf } from '../../db/devices.ts';
import type { Config } from '../config.ts';
import { Refused } from '../errors.ts';
import type { Shops } from '../shops.ts';
import { isOwnName, isShopPc } from './addresses.ts';
import { originProblem } from './origin.ts';

declare module 'fastify' {
  interface FastifyContextConfig {
    who?: 'anyone' | 'trusted';
  }
}

export const TOKEN_COOKIE = 'backgear-device';

/** The shop PC itself, or a device that was paired and not revoked. */
export async function isTrusted(request: FastifyRequest, shops: Shops): Promise<boolean> {
  if (isShopPc(request.socket.remoteAddress ?? '')) return true;
  const token = request.cookies?.[TOKEN_COOKIE];
  return token ? (await deviceOf(shops.own, token)) !== null : false;
}

const CHANGES = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

type Guarded = { readonly shops: Shops; readonly config: Config };

/** Runs before everything: the Host must be ours, a change must come from our own page, and the visitor must be allowed. */
export const guard =
  ({ shops, config }: Guarded) =>
  async (request: FastifyRequest, _reply: FastifyReply): Promise<void> => {
    if (!isOwnName(request.headers.host ?? '', config.names)) {
      throw new Refused(
        421,
        `“${(request.headers.host ?? '').slice(0, 60)}” is no name of this server.`,
        'Use the address that the shop PC printed at its start, or list the name in BACKGEAR_NAMES.',
      );
    }
    if (CHANGES.has(request.method)) {
      const { host, origin, referer } = request.headers;
      const problem = originProblem({ ...(host ? { host } : {}), ...(origin ? { origin } : {}), ...(referer ? { referer } : {}) });
      if (problem) throw new Refused(403, problem, 'Open the page on this server and make the change there.');
    }
    if (request.routeOptions.config.who === 'trusted' && !(await isTrusted(request, shops))) {
      throw new Refused(
        403,
        'This device may look, but not change or see this.',
        'Pair it once: on the shop PC open Devices and scan the code that it shows.',
      );
    }
  };
