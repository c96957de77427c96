const HERE = 'http://this-shop.invalid';

/** True for an address on this server, as a browser would take it: “//elsewhere”, “/\elsewhere” and “https:…” are not. */
export function isOwnPath(href: string): boolean {
  if (!href.startsWith('/')) return false;
  try {
    return new URL(href, HERE).origin === HERE;
  } catch {
    return false;
  }
}
