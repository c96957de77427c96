import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shopForTests, type TestShop } from '../app-for-tests.ts';
import { request, sendRaw, statusOf } from './raw.ts';

let shop: TestShop;
let port = 0;
beforeAll(async () => {
  shop = await shopForTests();
  await shop.app.listen({ port: 0, host: '127.0.0.1' });
  const bound = shop.app.server.address();
  port = typeof bound === 'object' && bound ? bound.port : 0;
});
afterAll(() => shop.close());

const host = () => ({ host: `localhost:${port}` });
const form = () => ({ ...host(), origin: `http://localhost:${port}`, 'content-type': 'application/x-www-form-urlencoded' });
/** What no answer may hold: where the program lies, a trace, the names of our packages. */
const TELLTALE = /node_modules|\/server\/|\.ts:\d|at \w+ \(|fastify|FST_|SQLITE|\.eta\b/i;

describe('bytes that no browser sends', () => {
  test('no Host at all, as HTTP/1.1 and as HTTP/1.0', async () => {
    expect(statusOf(await sendRaw(port, request('GET /')))).toBe(400);
    expect(statusOf(await sendRaw(port, 'GET / HTTP/1.0\r\n\r\n'))).toBe(421);
    expect(statusOf(await sendRaw(port, 'POST /shop HTTP/1.0\r\norigin: http://localhost\r\ncontent-length: 0\r\n\r\n'))).toBe(421);
  });

  test('a whole address in the request line does not stand over the Host', async () => {
    expect(statusOf(await sendRaw(port, request('GET http://localhost/sums', { host: 'evil.test' })))).toBe(421);
    expect(statusOf(await sendRaw(port, request('GET http://evil.test/../../package.json', host())))).toBeGreaterThanOrEqual(400);
  });

  test('two Hosts', async () => {
    const answer = await sendRaw(port, `GET / HTTP/1.1\r\nhost: evil.test\r\nhost: localhost:${port}\r\nconnection: close\r\n\r\n`);
    expect([400, 421]).toContain(statusOf(answer));
  });

  // Each of these once more over a real socket: a client library would tidy the path first.
  test.each([
    '/assets/../package.json',
    '/assets/../../package.json',
    '/assets/..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/assets/%2e%2e%2f%2e%2e%2fpackage.json',
    '/assets/..%5c..%5cpackage.json',
    '/assets/..\\..\\package.json',
    '/assets/%252e%252e%252f%252e%252e%252fpackage.json',
    '/assets/....//....//package.json',
    '/assets//etc/passwd',
    '/assets/%2fetc%2fpasswd',
    '/assets/style.css%00.html',
    '/assets/%00',
    '/assets/.%2e/layout.eta',
    '/assets/../layout.eta',
    '/assets/style.css/../../layout.eta',
    '/assets/C:/windows/win.ini',
    '/assets/file:///etc/passwd',
    '/assets/',
    '/assets',
    '/assets/.',
    '/../package.json',
    '/data/shop.sqlite',
    '/shop.sqlite',
    '/.git/HEAD',
  ])('%s leads nowhere', async (path) => {
    for (const method of ['GET', 'HEAD']) {
      const answer = await sendRaw(port, request(`${method} ${path}`, host()));
      expect(statusOf(answer)).toBeGreaterThanOrEqual(400);
      expect(statusOf(answer)).toBeLessThan(500);
      expect(answer).not.toMatch(/"name": "backgear"|root:|<%|SQLite format/);
      expect(answer).not.toMatch(TELLTALE);
    }
  });

  test('the assets themselves are there', async () => {
    const answer = await sendRaw(port, request('GET /assets/style.css', host()));
    expect(statusOf(answer)).toBe(200);
    expect(answer).toMatch(/content-type: text\/css/i);
    expect(answer).toMatch(/x-content-type-options: nosniff/i);
  });

  test.each([
    '/%',
    '/%E0%A4%A',
    '/%ff%fe',
    '/sums/%',
    '/sums/%c0%ae.json',
    '/devices/code/%00',
    '/pair/%E2%28%A1',
    '/search?q=%',
    '/search?q=%E0%A4%A',
    '/?%=%',
  ])('%s is answered with a page', async (path) => {
    const answer = await sendRaw(port, request(`GET ${path}`, host()));
    expect(statusOf(answer)).toBeGreaterThanOrEqual(200);
    expect(statusOf(answer)).toBeLessThan(500);
    expect(answer).toMatch(/content-security-policy: default-src 'none'/i);
    expect(answer).not.toMatch(TELLTALE);
  });

  test('an address that cannot be read does not slip past the check of the Host', async () => {
    expect(statusOf(await sendRaw(port, request('GET /%', { host: 'evil.test' })))).toBe(421);
    expect(statusOf(await sendRaw(port, request(`GET /sums/${'x'.repeat(5000)}`, { host: 'evil.test' })))).toBe(421);
  });

  test('very long addresses', async () => {
    expect(statusOf(await sendRaw(port, request(`GET /sums/${'x'.repeat(5000)}`, host())))).toBe(404);
    expect(statusOf(await sendRaw(port, request(`GET /search?q=${'x'.repeat(12_000)}`, host())))).toBe(200);
    const endless = await sendRaw(port, request(`GET /${'x'.repeat(100_000)}`, host()));
    expect(statusOf(endless)).toBe(431);
    expect(endless).not.toMatch(TELLTALE);
  });

  test.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'PROPFIND', 'LOCK', 'QUERY'])(
    '%s changes nothing and is answered with words',
    async (method) => {
      for (const path of ['/', '/shop', '/devices/code', '/assets/style.css']) {
        const status = statusOf(await sendRaw(port, request(`${method} ${path}`, form())));
        expect(status, path).toBeGreaterThanOrEqual(400);
        expect(status, path).toBeLessThan(500);
      }
    },
  );

  test('CONNECT, an unknown method and plain rubbish', async () => {
    for (const bytes of [
      request('CONNECT evil.test:80', host()),
      request('BREW /pot', host()),
      'hello\r\n\r\n',
      '\u0000\u0001\u0002\r\n\r\n',
    ]) {
      const answer = await sendRaw(port, bytes);
      expect([0, 400, 404, 405]).toContain(statusOf(answer));
      expect(answer).not.toMatch(/node_modules|at \w+ \(/);
    }
    expect(statusOf(await sendRaw(port, request('GET /sums', host())))).toBe(200);
  });

  test('TRACE gives nothing back of what was sent', async () => {
    expect(await sendRaw(port, request('TRACE /', { ...host(), cookie: 'backgear-device=secret' }))).not.toContain('secret');
  });

  test('two lengths, a length that lies, and a body cut short', async () => {
    const twice = await sendRaw(
      port,
      request('POST /shop', { ...form(), 'content-length': '9', 'transfer-encoding': 'chunked' }, 'which=own'),
    );
    expect([400, 0]).toContain(statusOf(twice));
    const short = await sendRaw(port, request('POST /shop', { ...form(), 'content-length': '900' }, 'which=own'));
    expect([400, 0]).toContain(statusOf(short));
    expect(statusOf(await sendRaw(port, request('GET /sums', host())))).toBe(200);
  });

  test('a form larger than any is answered, over a real connection', async () => {
    const body = `note=${'x'.repeat(5 * 1024 * 1024)}`;
    const answer = await fetch(`http://localhost:${port}/shop`, {
      method: 'POST',
      headers: { origin: `http://localhost:${port}`, 'content-type': 'application/x-www-form-urlencoded' },
      body,
    });
    expect(answer.status).toBe(413);
    expect(await answer.text()).toContain('larger than this page takes');
  });
});
