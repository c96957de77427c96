/** The kind of page that an address leads to: numbers become ":id", the query goes. */
export const kindOf = (address: string): string => (address.split(/[?#]/)[0] ?? '').replace(/\/\d+(?=\/|$)/g, '/:id');

const HREF = /<a\b[^>]*?\shref="([^"]*)"/g;

/** Every link of a page, as it is written. */
export const linksIn = (html: string): string[] => [...html.matchAll(HREF)].map(([, href = '']) => href.replaceAll('&amp;', '&'));

export type Seen = { readonly address: string; readonly status: number; readonly type: string; readonly body: string };

/**
 * Follows every link from the first page, at most `most` addresses of one kind, and gives what each answered.
 * fetchPage: how an address is asked for.
 */
export async function walk(first: readonly string[], most: number, fetchPage: (address: string) => Promise<Seen>): Promise<Seen[]> {
  const seen: Seen[] = [];
  const known = new Set<string>(first);
  const ofKind = new Map<string, number>();
  const waiting = [...first];
  for (let address = waiting.shift(); address !== undefined; address = waiting.shift()) {
    const kind = kindOf(address);
    if ((ofKind.get(kind) ?? 0) >= most) continue;
    ofKind.set(kind, (ofKind.get(kind) ?? 0) + 1);
    const page = await fetchPage(address);
    seen.push(page);
    if (!page.type.startsWith('text/html')) continue;
    for (const link of linksIn(page.body)) {
      const plain = link.split('#')[0] ?? '';
      if (!plain.startsWith('/') || known.has(plain)) continue;
      known.add(plain);
      waiting.push(plain);
    }
  }
  return seen;
}
