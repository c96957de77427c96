import { to } from '../addresses.ts';
import { confirmView } from '../forms/confirm-view.ts';
import type { ButtonView, LinkView, Page } from '../page.ts';
import type { PageData } from '../views.ts';

export interface ShopViews {
  'shop/choose': Page & {
    says: string;
    demoSays: string;
    openDemo: ButtonView;
    ownSays: string;
    openOwn: ButtonView | null;
    start: LinkView | null;
    anew: LinkView | null;
  };
}

const openButton = (which: 'demo' | 'own', says: string, kind: ButtonView['kind']): ButtonView => ({
  action: to.openShop,
  hidden: [{ name: 'which', value: which }],
  says,
  kind,
  confirm: '',
});

type Standing = { readonly demo: boolean; readonly machines: boolean };

const START: LinkView = { says: 'Start with your own machine', href: to.machineNew };
const OWN: LinkView = { says: 'Your own shop', href: to.today };

function ownWords({ demo, machines }: Standing): string {
  if (demo) return 'Your own shop is as you left it.';
  return machines
    ? 'It is the one that is open, with your machines as you left them.'
    : 'Begin with the machine on your floor: its maker, its name, and what is missing.';
}

/** machines: whether any is on record in the shop that is open. */
export const chooseView = ({ demo, machines }: Standing): PageData<'shop/choose'> => ({
  title: 'Which shop?',
  place: '',
  back: null,
  titleBlock: [],
  says: 'Backgear keeps what is missing from a machine, what each missing part can be cut from, the figures to cut it by, and what was made.',
  demoSays: 'The demo shop holds invented machines at several stages. It is a file of its own: nothing done there touches your shop.',
  openDemo: openButton('demo', demo ? 'Stay in the demo shop' : 'Open the demo shop', 'other'),
  ownSays: ownWords({ demo, machines }),
  openOwn: demo ? openButton('own', 'Go back to your own shop', 'main') : null,
  start: demo ? null : machines ? OWN : START,
  anew: demo ? { says: 'Begin the demo shop anew', href: to.demoAnew } : null,
});

export const anewView = (): PageData<'confirm'> =>
  confirmView({
    id: 'anew',
    title: 'Begin the demo shop anew?',
    place: '',
    back: null,
    says: 'Whatever was tried in the demo shop goes, and its invented machines stand there as at first. Your own shop is a file of its own and is not touched.',
    action: to.demoAnew,
    act: 'Begin the demo shop anew',
    keep: { says: 'Leave it as it is', href: to.openShop },
  });
