/** A path that no page has: what stands in place of an address that cannot be read. */
const NOWHERE = '/-';
const LONGEST_PART = 200;

const canBeRead = (path: string): boolean => {
  try {
    return path.split('/').every((part) => decodeURIComponent(part).length <= LONGEST_PART);
  } catch {
    return false;
  }
};

/**
 * The address itself, or a path that no page has when it cannot be decoded or has an endless part. So a bad address meets the same
 * guard, headers and page as any other that leads nowhere; the router would answer it past all of them.
 */
export function legibleUrl(url: string): string {
  const [path = ''] = url.split('?', 1);
  if (canBeRead(path)) return url;
  return path.endsWith('.json') ? `${NOWHERE}.json` : NOWHERE;
}
