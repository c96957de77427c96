import { afterEach, beforeEach, expect, type MockInstance, test, vi } from 'vitest';
import { RecordChanged, RecordNotFound } from '../../../db/changes.ts';
import { PartStays } from '../../../db/part-removal.ts';
import { ItemTaken, RoutingOpen } from '../../../db/parts.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { PAGES } from '../../../server/pages.ts';
import { get, type Handler, post, type Route } from '../../../server/visit.ts';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';

const SECRET = 'no such column: hidden_price in /home/owner/shop.sqlite';
const THROWN: Readonly<Record<string, () => unknown>> = {
  mistake: () => new Error(SECRET),
  type: () => new TypeError(SECRET),
  sqlite: () => Object.assign(new Error(SECRET), { code: 'SQLITE_CORRUPT' }),
  posing: () => Object.assign(new Error(SECRET), { statusCode: 200 }),
  posing5: () => Object.assign(new Error(SECRET), { statusCode: 503 }),
  text: () => SECRET,
  nothing: () => undefined,
  object: () => ({ message: SECRET, statusCode: 500 }),
  domain: () =>
    new DomainError({ given: '22 teeth at 8 DP.', limit: 'The spare is too small.', tryThis: 'Take 24 teeth.', about: ['teeth'] }),
  gone: () => new RecordNotFound('wheel_set', 7),
  taken: () => new ItemTaken(4),
  open: () => new RoutingOpen(4),
  stays: () => new PartStays(4),
  changed: () => new RecordChanged('part', 3, { name: 'theirs' }, { name: 'yours' }),
};
const thrower: Handler = ({ params }) => {
  throw THROWN[(params['kind'] ?? '').replace('.json', '')]?.();
};
const elsewhere: Handler = ({ query }) => ({ go: String(query['to']) });
const OURS: readonly Route[] = [
  get('/throws/:kind', thrower),
  post('/throws/:kind', thrower),
  get('/elsewhere', elsewhere),
  get('/file', () => ({ text: 'a', type: 'text/csv', fileName: 'Räder "19×2"\r\nx: y.csv' })),
  get('/unprintable', () => ({ show: 'error', data: { title: undefined } }) as never),
];

let shop: TestShop;
let logged: MockInstance<typeof console.error>;
beforeEach(async () => {
  (PAGES as Route[]).push(...OURS);
  try {
    shop = await shopForTests();
  } finally {
    (PAGES as Route[]).splice(-OURS.length);
  }
  logged = vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(async () => {
  logged.mockRestore();
  await shop.close();
});

const log = (): string =>
  logged.mock.calls.map((call) => call.map((part) => (part instanceof Error ? part.message : String(part))).join(' ')).join('\n');

test.each(['mistake', 'type', 'sqlite', 'posing', 'posing5', 'text', 'nothing', 'object'])(
  'our own mistake (%s) shows a number and nothing else; the log has both',
  async (kind) => {
    for (const method of ['GET', 'POST'] as const) {
      logged.mockClear();
      const answer = await ask(shop, `/throws/${kind}`, { method });
      expect(answer.statusCode).toBe(500);
      expect(answer.headers['content-type']).toMatch(/^text\/html/);
      expect(answer.body).not.toMatch(/hidden_price|home\/owner|SQLITE|at \w+ \(/);
      const reference = /under <b class="number">([0-9a-f]{8})</.exec(answer.body)?.[1] ?? 'no reference on the page';
      expect(log()).toContain(reference);
      expect(log()).toContain(`${method} /throws/${kind}`);
      if (kind !== 'nothing' && kind !== 'object') expect(log()).toContain(SECRET);
    }
  },
);

test('as JSON the same: a number, no detail', async () => {
  const answer = await visit(shop, '/throws/mistake.json');
  expect(answer.statusCode).toBe(500);
  const said = answer.json<{ problem: string; reference: string }>();
  expect(Object.keys(said).sort()).toEqual(['problem', 'reference', 'try']);
  expect(log()).toContain(said.reference);
  expect(answer.body).not.toContain('hidden_price');
});

test.each([
  ['domain', 422, 'The spare is too small.', 'Take 24 teeth.'],
  ['gone', 404, 'There is no wheel set 7.', 'Search for it'],
  ['changed', 409, 'was changed on another device', 'make your change once more'],
] as const)('what is nobody’s mistake (%s) is said plainly and not logged', async (kind, status, says, tries) => {
  for (const method of ['GET', 'POST'] as const) {
    const answer = await ask(shop, `/throws/${kind}`, { method });
    expect(answer.statusCode).toBe(status);
    expect(answer.body).toContain(says);
    expect(answer.body).toContain(tries);
    expect(answer.body).not.toContain('in the log under');
  }
  expect(log()).toBe('');
});

test('a page that cannot be written is a mistake of ours, not half a page', async () => {
  const answer = await visit(shop, '/unprintable');
  expect(answer.statusCode).toBe(500);
  expect(answer.body).toContain('Our mistake');
  expect(answer.body.match(/<html/g)).toHaveLength(1);
});

test('when even the error page fails, no detail gets out', async () => {
  const own = shop.shops.own;
  const broken = vi.spyOn(own, 'selectFrom').mockImplementation(() => {
    throw new Error(SECRET);
  });
  const headers = { host: 'localhost', cookie: `backgear-device=${'A'.repeat(43)}` };
  for (const url of ['/', '/sums', '/nowhere', '/sums/none.json']) {
    const answer = await ask(shop, url, { peer: LAN_PEER, headers });
    expect(answer.statusCode, url).toBe(500);
    expect(answer.body, url).not.toMatch(/hidden_price|home\/owner/);
    const reference = /[0-9a-f]{8}/.exec(answer.body)?.[0] ?? 'no reference';
    expect(log(), url).toContain(reference);
  }
  broken.mockRestore();
  expect((await ask(shop, '/sums', { peer: LAN_PEER, headers })).statusCode).toBe(200);
});

test.each(['//evil.test/', 'https://evil.test/', '/\\evil.test', 'javascript:alert(1)', ''])('no answer leads to %j', async (to) => {
  const answer = await visit(shop, `/elsewhere?to=${encodeURIComponent(to)}`);
  expect(answer.statusCode).toBe(500);
  expect(answer.headers.location).toBeUndefined();
});

test('a file may have any name', async () => {
  const { headers, statusCode } = await visit(shop, '/file');
  expect(statusCode).toBe(200);
  expect(headers['content-disposition']).toMatch(/^attachment; filename="[\w .()+-]*"; filename\*=UTF-8''[\w.%-]+$/);
  expect(decodeURIComponent(String(headers['content-disposition']).split("''")[1] ?? '')).toBe('Räder "19×2"\r\nx: y.csv');
});

test('what does not exist is said by name, as letters', async () => {
  const answer = await visit(shop, '/sums/%3Cscript%3Ealert(1)%3C%2Fscript%3E');
  expect(answer.statusCode).toBe(404);
  expect(answer.body).not.toContain('<script>alert');
  const refused = await ask(shop, '/', { headers: { host: '<script>alert(1)</script>' } });
  expect(refused.statusCode).toBe(421);
  expect(refused.body).not.toContain('<script>alert');
});

test('a change that throws is no change, and the shop goes on', async () => {
  expect((await send(shop, '/throws/mistake', { mark: 'm1' })).statusCode).toBe(500);
  expect(await shop.shops.own.selectFrom('sent').selectAll().execute()).toEqual([]);
  expect((await visit(shop, '/sums')).statusCode).toBe(200);
});

test.each([
  ['taken', 'Choose another, or release it first'],
  ['open', 'or give the routing up first'],
  ['stays', 'it stays on record'],
])('what one thing or one part can be only once (%s) is refused in words on every path, and is no mistake of ours', async (kind, says) => {
  for (const method of ['GET', 'POST'] as const) {
    const answer = await ask(shop, `/throws/${kind}`, { method });
    expect(answer.statusCode).toBe(409);
    expect(answer.body).toContain(says);
  }
  expect(log()).toBe('');
});
