import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask, LAN_PEER, pairedCookie, send, shopForTests, type TestShop } from '../app-for-tests.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

// Typed from the Content Security Policy Level 3 directives that a page without foreign parts needs; nothing inline, nothing framed.
const CSP = [
  "default-src 'none'",
  "style-src 'self'",
  "script-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
];

const ANSWERS: readonly (readonly [says: string, url: string, more: Parameters<typeof ask>[2], status: number])[] = [
  ['a page', '/sums', {}, 200],
  ['a page for HEAD', '/sums', { method: 'HEAD' }, 200],
  ['JSON', '/sums/gear-blank.json', {}, 200],
  ['a style', '/assets/style.css', {}, 200],
  ['a page that is not there', '/nowhere', {}, 404],
  ['an asset that is not there', '/assets/nowhere.css', {}, 404],
  ['an address that cannot be read', '/%', {}, 404],
  ['a refused host', '/', { headers: { host: 'evil.test' } }, 421],
  ['a refused change', '/shop', { method: 'POST', peer: LAN_PEER }, 403],
  [
    'a form that is no form',
    '/shop',
    { method: 'POST', form: {}, headers: { host: 'localhost', origin: 'http://localhost', 'content-type': 'text/xml' } },
    415,
  ],
  ['a change that was made', '/devices/code', { method: 'POST', form: {} }, 303],
];

test.each(ANSWERS)('%s carries the strict headers', async (_says, url, more, status) => {
  const { statusCode, headers } = await ask(shop, url, more);
  expect(statusCode).toBe(status);
  expect(String(headers['content-security-policy']).split(';')).toEqual(CSP);
  expect(headers['x-content-type-options']).toBe('nosniff');
  expect(headers['referrer-policy']).toBe('same-origin');
  expect(headers['cross-origin-resource-policy']).toBe('same-origin');
  expect(headers['x-frame-options']).toMatch(/^(DENY|SAMEORIGIN)$/);
  // Over plain http these would only break things: a promise of https, isolation that no browser grants, other pages' right to read.
  for (const name of ['strict-transport-security', 'cross-origin-embedder-policy', 'access-control-allow-origin', 'x-powered-by', 'server'])
    expect(headers[name]).toBeUndefined();
});

test('an address that asks for JSON is answered with JSON whatever happens', async () => {
  const asks: readonly (readonly [string, Parameters<typeof ask>[2], number])[] = [
    ['/sums/no-such-sum.json', {}, 404],
    ['/nowhere.json', {}, 404],
    ['/%.json', {}, 404],
    ['/sums/gear-blank.json?teeth=letters', {}, 422],
    ['/sums/gear-blank.json', { headers: { host: 'evil.test' } }, 421],
    ['/sums/gear-blank.json?x=1', { method: 'POST', headers: { host: 'localhost' } }, 403],
  ];
  for (const [url, more, status] of asks) {
    const answer = await ask(shop, url, more);
    expect(answer.statusCode, url).toBe(status);
    expect(answer.headers['content-type'], url).toMatch(/^application\/json/);
    expect(() => JSON.parse(answer.body), url).not.toThrow();
  }
});

const COOKIE_URL = '/sums';
const noticeOf = (content: unknown): string => `backgear-notice=${encodeURIComponent(encodeURIComponent(JSON.stringify(content)))}`;
const withCookie = (cookie: string) => ask(shop, COOKIE_URL, { headers: { host: 'localhost', cookie } });

test('a notice is shown once, with its way back', async () => {
  const answer = await withCookie(noticeOf({ says: 'Saved & sound.', act: { says: 'Undo', href: '/made/4?undo=1#a' } }));
  expect(answer.body).toContain('Saved &amp; sound.');
  expect(answer.body).toContain('<a href="/made/4?undo=1#a">Undo</a>');
  const cleared = answer.cookies.find((one) => one.name === 'backgear-notice');
  expect(cleared?.value).toBe('');
  expect(cleared?.expires?.getTime()).toBe(0);
});

test.each([
  'https://evil.test/',
  '//evil.test/',
  '/\\evil.test/',
  '\\\\evil.test',
  '/\t/evil.test/',
  '/\n/evil.test',
  'javascript:alert(1)',
  ' /shop',
  'evil',
  '',
  `/${'x'.repeat(2000)}`,
  ['/a'],
  7,
  null,
])('a notice never leads to %j', async (href) => {
  const { statusCode, body } = await withCookie(noticeOf({ says: 'Look', act: { says: 'Press me', href } }));
  expect(statusCode).toBe(200);
  expect(body).toContain('Look');
  expect(body).not.toContain('Press me');
  expect(body).not.toContain('evil');
});

test('a notice brings no markup, and one too long or of another shape is none', async () => {
  const hostile = await withCookie(noticeOf({ says: '<script>alert(1)</script>"\'', act: { says: '<img src=x>', href: '/"><script>' } }));
  expect(hostile.body).not.toMatch(/<script>|<img src=x/);
  expect(hostile.body).toContain('&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;');
  const shapes = [
    { says: 'x'.repeat(3000) },
    { says: 7 },
    { says: ['a'] },
    {},
    [],
    null,
    'text',
    7,
    true,
    { __proto__: { says: 'from below' } },
  ];
  for (const content of shapes) {
    const { statusCode, body } = await withCookie(noticeOf(content));
    expect(statusCode, JSON.stringify(content)).toBe(200);
    expect(body, JSON.stringify(content)).not.toContain('class="notice');
  }
});

test.each([
  'backgear-notice=%',
  'backgear-notice=%E0%A4%A',
  'backgear-notice={"says":',
  'backgear-notice="quoted"',
  '=;=;;;',
  'backgear-device',
  'backgear-device=%00',
  'backgear-device=%',
  `backgear-device=${'x'.repeat(7000)}`,
  'backgear-device=a; backgear-device=b',
  '__proto__=x; constructor=y; toString=z',
  '\u00e9=\u00e9',
])('the cookie %j does no harm', async (cookie) => {
  for (const peer of ['127.0.0.1', LAN_PEER]) {
    const answer = await ask(shop, '/devices', { peer, headers: { host: 'localhost', cookie } });
    expect(answer.statusCode).toBe(200);
    expect(answer.body.includes('Show a code for a new device')).toBe(peer === '127.0.0.1');
  }
});

test('forms of every strange shape change nothing and break nothing', async () => {
  const shapes = [
    '%',
    '%E0%A4%A=%',
    '=',
    '&&&',
    'which',
    'which=',
    'which=demo&which=own',
    'which[]=demo',
    'which[a]=demo',
    '__proto__=demo',
    '__proto__[which]=demo',
    'constructor=demo&constructor.prototype.which=demo',
    'toString=x&hasOwnProperty=y',
    'which=%00demo',
    'which=DEMO',
    `${'a=1&'.repeat(3000)}`,
    `which=${'x'.repeat(1_000_000)}`,
  ];
  for (const form of shapes) {
    const answer = await ask(shop, '/shop', { method: 'POST', form });
    expect(answer.statusCode, form.slice(0, 60)).toBe(422);
  }
  expect(shop.shops.now().demo).toBe(false);
  expect(({} as Record<string, unknown>)['which']).toBeUndefined();
});

test('only forms are taken', async () => {
  const own = { host: 'localhost', origin: 'http://localhost' };
  const types = [
    'application/json',
    'text/plain',
    'multipart/form-data; boundary=x',
    'text/xml',
    'nonsense',
    'application/x-www-form-urlencodedx',
  ];
  for (const type of types) {
    const answer = await ask(shop, '/shop', { method: 'POST', form: '{"which":"demo"}', headers: { ...own, 'content-type': type } });
    expect(answer.statusCode, type).toBe(415);
  }
  expect(shop.shops.now().demo).toBe(false);
});

test('a note of a million letters reaches its form; five million are too many, and from a stranger seventeen thousand', async () => {
  expect((await send(shop, '/shop', { which: 'x'.repeat(1_000_000) })).statusCode).toBe(422);
  const over = await send(shop, '/shop', { which: 'x'.repeat(5_000_000) });
  expect(over.statusCode).toBe(413);
  expect(over.body).toContain('larger than this page takes');
  const cookie = await pairedCookie(shop);
  expect(cookie.length).toBeGreaterThan(40);
  const stranger = await ask(shop, '/pair/AAAAAAAAAA', { method: 'POST', peer: LAN_PEER, form: { name: 'x'.repeat(17_000) } });
  expect(stranger.statusCode).toBe(413);
});
