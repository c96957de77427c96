import { to } from './addresses.ts';
import { isOwnPath } from './guard/own-path.ts';
import type { Furniture, LinkView, NoticeView } from './page.ts';
import type { Visit } from './visit.ts';

const VERSION = '0.1.0';
/** The note that the next page shows once. */
export const NOTICE_COOKIE = 'backgear-notice';

/** What is written into the notice cookie: words, and a way back if there is one. */
export const noticeText = (says: string, act: LinkView | null): string => encodeURIComponent(JSON.stringify({ says, act }));

const LONGEST_NOTICE = 1000;
const LONGEST_ADDRESS = 1000;

const wordsIn = (sent: unknown): string => (typeof sent === 'string' && sent.length <= LONGEST_NOTICE ? sent : '');

/** A link in a notice leads to a page of this shop or is left out: the cookie may have been written by anything on this machine. */
function wayBack(sent: unknown): LinkView | null {
  const { says, href } = (sent ?? {}) as { says?: unknown; href?: unknown };
  const good = typeof href === 'string' && href.length <= LONGEST_ADDRESS && isOwnPath(href);
  return good && wordsIn(says) ? { says: wordsIn(says), href } : null;
}

/** The notice in a cookie; null when there is none or it is none of ours. */
function readNotice(cookie: string | undefined): NoticeView | null {
  if (!cookie) return null;
  try {
    const sent = JSON.parse(decodeURIComponent(cookie)) as { says?: unknown; act?: unknown } | null;
    const says = wordsIn(sent?.says);
    return says ? { kind: 'saved', says, act: wayBack(sent?.act) } : null;
  } catch {
    return null;
  }
}

/** What all pages have in common. */
export const furniture = (visit: Visit): Furniture => ({
  places: [
    { says: 'Today', href: to.today },
    { says: 'Machines', href: to.machines },
    { says: 'Drawer', href: to.drawer },
    { says: 'Tools', href: to.tools },
    { says: 'Sums', href: to.sums },
  ],
  searchHref: to.search,
  searchText: typeof visit.query['q'] === 'string' ? visit.query['q'] : '',
  styles: [to.asset('style.css'), to.asset('drawing.css')],
  script: to.asset('page.js'),
  icon: to.asset('icon.svg'),
  shopName: 'Backgear',
  version: VERSION,
  demo: visit.demo,
  demoOut: visit.demo ? { says: 'Leave the demo shop', href: to.openShop } : null,
  canChange: visit.trusted,
  lookOnly: visit.trusted ? null : { says: 'Pair this device to make changes', href: to.devices },
  notice: readNotice(visit.cookies[NOTICE_COOKIE]),
});
