import { to } from './addresses.ts';
import type { Furniture, LinkView, NoticeView } from './page.ts';
import type { Visit } from './visit.ts';

export const VERSION = '0.1.0';
/** The note that the next page shows once. */
export const NOTICE_COOKIE = 'backgear-notice';

/** What is written into the notice cookie: words, and a way back if there is one. */
export const noticeText = (says: string, act: LinkView | null): string => encodeURIComponent(JSON.stringify({ says, act }));

function readNotice(cookie: string | undefined): NoticeView | null {
  if (!cookie) return null;
  try {
    const { says, act } = JSON.parse(decodeURIComponent(cookie)) as { says?: unknown; act?: { says?: unknown; href?: unknown } | null };
    if (typeof says !== 'string') return null;
    const back =
      act && typeof act.says === 'string' && typeof act.href === 'string' && act.href.startsWith('/')
        ? { says: act.says, href: act.href }
        : null;
    return { kind: 'saved', says, act: back };
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
  demoOut: visit.demo ? { says: 'Leave the invented shop', href: to.openShop } : null,
  canChange: visit.trusted,
  lookOnly: visit.trusted ? null : { says: 'Pair this device to make changes', href: to.devices },
  notice: readNotice(visit.cookies[NOTICE_COOKIE]),
});
