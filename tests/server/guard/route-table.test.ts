import { hostname, networkInterfaces } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PAGES } from '../../../server/pages.ts';
import { everyRow } from '../../db/every-row.ts';
import { ask, LAN_PEER, pairedCookie, send, shopForTests, type TestShop } from '../app-for-tests.ts';

// Who may do what: typed here from the rules, not asked of the guard. "in": let through to the page, whatever that says.
type Verdict = 'in' | 403 | 421;
type Rule = { readonly look: Verdict; readonly lookTrusted: Verdict; readonly pairing: Verdict; readonly change: Verdict };
const ALL: Rule = { look: 'in', lookTrusted: 'in', pairing: 'in', change: 'in' };
const LOOKS: Rule = { look: 'in', lookTrusted: 403, pairing: 'in', change: 403 };
const NO_CHANGE: Rule = { look: 'in', lookTrusted: 'in', pairing: 403, change: 403 };
const LOOKS_NO_CHANGE: Rule = { look: 'in', lookTrusted: 403, pairing: 403, change: 403 };
const NOTHING: Rule = { look: 421, lookTrusted: 421, pairing: 421, change: 421 };

type Visitor = readonly [says: string, peer: string, headers: Readonly<Record<string, string>>, rule: Rule];
const OWN = { host: 'localhost', origin: 'http://localhost' };
const PC = '127.0.0.1';
const me = hostname().toLowerCase();
const ownAddresses = Object.values(networkInterfaces()).flatMap((list) => (list ?? []).map((one) => one.address));
const mapped = ownAddresses.filter((one) => one.includes('.')).map((one) => `::ffff:${one}`);
const pcAddresses = [...new Set(['127.0.0.1', '127.0.0.53', '::1', ...ownAddresses, ...mapped])];
const asHost = (address: string): string => (address.includes(':') ? `[${address.replace(/%.*/, '')}]` : address);
const asked = (host: string): Readonly<Record<string, string>> => ({ host, origin: `http://${host}` });

let shop: TestShop;
const tokens = { paired: '', revoked: '' };

beforeAll(async () => {
  shop = await shopForTests({ config: { names: ['Bench.test'] } });
  tokens.revoked = await pairedCookie(shop, 'lost phone');
  await send(shop, '/devices/1/revoke', {});
  tokens.paired = await pairedCookie(shop, 'phone');
});
afterAll(() => shop.close());

const VISITORS: readonly Visitor[] = [
  ...pcAddresses.map((peer): Visitor => [`the shop PC as ${peer}`, peer, OWN, ALL]),
  ...ownAddresses.map((address): Visitor => [`the shop PC, asking ${address}`, PC, asked(`${asHost(address)}:4870`), ALL]),
  ['a paired device', LAN_PEER, { ...OWN, cookie: 'PAIRED' }, ALL],
  ['a paired device over IPv6', '2001:db8::23', { ...OWN, cookie: 'PAIRED' }, ALL],
  ['a revoked device', LAN_PEER, { ...OWN, cookie: 'REVOKED' }, LOOKS],
  ['an unpaired peer', LAN_PEER, OWN, LOOKS],
  ['an unpaired peer over IPv6', '2001:db8::23', OWN, LOOKS],
  ['an unpaired peer as IPv4 in IPv6', `::ffff:${LAN_PEER}`, OWN, LOOKS],
  ['a peer with a made-up token', LAN_PEER, { ...OWN, cookie: `backgear-device=${'A'.repeat(43)}` }, LOOKS],
  ['a peer with an empty token', LAN_PEER, { ...OWN, cookie: 'backgear-device=' }, LOOKS],
  ['a peer that says it is forwarded for the PC', LAN_PEER, { ...OWN, 'x-forwarded-for': '127.0.0.1', forwarded: 'for=127.0.0.1' }, LOOKS],
  ['an unpaired peer from a foreign page', LAN_PEER, { host: 'localhost', origin: 'http://evil.test' }, LOOKS_NO_CHANGE],
  ['the PC from a foreign page', PC, { host: 'localhost', origin: 'http://evil.test' }, NO_CHANGE],
  [
    'the PC from a foreign page, with a referer of ours',
    PC,
    { host: 'localhost', origin: 'http://evil.test', referer: 'http://localhost/' },
    NO_CHANGE,
  ],
  ['the PC from another port of itself', PC, { host: 'localhost', origin: 'http://localhost:8080' }, NO_CHANGE],
  ['the PC from a page whose name begins like ours', PC, { host: 'localhost', origin: 'http://localhost.evil.test' }, NO_CHANGE],
  ['a paired device from a foreign page', LAN_PEER, { host: 'localhost', origin: 'http://evil.test', cookie: 'PAIRED' }, NO_CHANGE],
  ['the PC with Origin null', PC, { host: 'localhost', origin: 'null' }, NO_CHANGE],
  ['the PC with Origin null and a referer of ours', PC, { host: 'localhost', origin: 'null', referer: 'http://localhost/' }, NO_CHANGE],
  ['the PC with Origin file:', PC, { host: 'localhost', origin: 'file://' }, NO_CHANGE],
  ['the PC with neither Origin nor Referer', PC, { host: 'localhost' }, NO_CHANGE],
  ['the PC with a referer of ours only', PC, { host: 'localhost', referer: 'http://localhost/machines?x=1' }, ALL],
  ['the PC with a foreign referer only', PC, { host: 'localhost', referer: 'http://evil.test/localhost' }, NO_CHANGE],
  ['the PC with a referer that is no address', PC, { host: 'localhost', referer: 'about:blank' }, NO_CHANGE],
  ['a foreign Host', PC, asked('evil.test'), NOTHING],
  ['a foreign Host with our port', PC, asked('evil.test:4870'), NOTHING],
  ['a foreign Host, from a paired device', LAN_PEER, { ...asked('evil.test'), cookie: 'PAIRED' }, NOTHING],
  ['a port without a name', PC, { host: ':4870', origin: 'http://localhost' }, NOTHING],
  ['a name that begins with our address', PC, asked('127.0.0.1.evil.test'), NOTHING],
  ['a name that begins with localhost', PC, asked('localhost.evil.test:4870'), NOTHING],
  ['a name that ends in localhost', PC, asked('evil.localhost'), NOTHING],
  ['a name before an at', PC, { host: 'localhost@evil.test', origin: 'http://evil.test' }, NOTHING],
  ['two ports', PC, { host: 'localhost:80:80', origin: 'http://localhost' }, NOTHING],
  ['every address', PC, asked('0.0.0.0:4870'), NOTHING],
  ['an address of some other machine', PC, asked(`${LAN_PEER}:4870`), NOTHING],
  ['our name under a foreign one', PC, asked(`${me}.local.evil.test`), NOTHING],
  ['localhost with a port', PC, asked('localhost:4870'), ALL],
  ['LOCALHOST in capitals', PC, { host: 'LOCALHOST:4870', origin: 'http://localhost:4870' }, ALL],
  ['a loopback address', PC, asked('127.0.0.1:4870'), ALL],
  ['a loopback address of IPv6', PC, asked('[::1]:4870'), ALL],
  ['our own name', PC, asked(`${me}:4870`), ALL],
  ['our own name under .local', PC, asked(`${me}.local:4870`), ALL],
  ['a listed name', PC, asked('bench.test:4870'), ALL],
  ['a listed name, unpaired', LAN_PEER, asked('bench.test:4870'), LOOKS],
];

const ruleOf = (rule: Rule, method: string, who: string): Verdict => {
  if (method === 'POST') return who === 'trusted' ? rule.change : rule.pairing;
  return who === 'trusted' ? rule.lookTrusted : rule.look;
};

const withToken = (headers: Readonly<Record<string, string>>): Record<string, string> => {
  const sent: Record<string, string> = { ...headers };
  if (sent['cookie'] === 'PAIRED') sent['cookie'] = tokens.paired;
  if (sent['cookie'] === 'REVOKED') sent['cookie'] = tokens.revoked;
  return sent;
};

/** Every line of the table of contents, GETs also as HEAD, its parameters filled with something that is not there. */
const asks = PAGES.flatMap((route) => {
  const url = route.path.replace(/:\w+/g, '987654');
  return (route.method === 'GET' ? (['GET', 'HEAD'] as const) : (['POST'] as const)).map((method) => ({ method, url, who: route.who }));
});

describe('every page and every change, by who asks and how', () => {
  test('the table holds what is to be guarded', () => {
    expect(asks.filter((one) => one.method === 'POST' && one.who === 'trusted').length).toBeGreaterThan(3);
    expect(asks.filter((one) => one.method === 'GET' && one.who === 'trusted').length).toBeGreaterThan(1);
    expect(PAGES.filter((route) => route.method === 'POST' && route.who === 'anyone').map((route) => route.path)).toEqual(['/pair/:code']);
    expect(new Set(VISITORS.map(([says]) => says)).size).toBe(VISITORS.length);
  });

  test.each(VISITORS)('%s', async (_says, peer, headers, rule) => {
    const file = path.join(shop.folder, 'shop.sqlite');
    const before = JSON.stringify(everyRow(file));
    const wrong: string[] = [];
    let anyIn = false;
    for (const { method, url, who } of asks) {
      const wanted = ruleOf(rule, method, who);
      if (method === 'POST' && wanted === 'in') anyIn = true;
      const { statusCode } = await ask(shop, url, {
        method,
        peer,
        headers: withToken(headers),
        ...(method === 'POST' ? { form: {} } : {}),
      });
      const got = statusCode === 403 || statusCode === 421 ? statusCode : statusCode < 500 ? 'in' : statusCode;
      if (got !== wanted) wrong.push(`${method} ${url}: ${statusCode}, wanted ${wanted}`);
    }
    expect(wrong).toEqual([]);
    if (!anyIn) expect(JSON.stringify(everyRow(file))).toBe(before);
  });
});
