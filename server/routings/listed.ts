import type { Listed, ListOvertaken, Overtaken } from '../../db/accept-changes.ts';
import type { Changed } from '../../db/replan.ts';
import type { HiddenView, LinkView, PageHead } from '../page.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { formPage } from './form-page.ts';

const MOST_LISTED = 500;

const hiddenOf = (listed: readonly Listed[]): HiddenView => ({
  name: 'listed',
  value: JSON.stringify(listed.map(({ key, name, now }) => [key, name, now])),
});

/** What a page lists goes with its form, so that nothing else can be accepted by it. */
export const listedField = (changes: readonly Changed[]): HiddenView => hiddenOf(changes);

const isListed = (one: unknown): one is [string, string, string] =>
  Array.isArray(one) && one.length === 3 && one.every((text) => typeof text === 'string');

/** What the page listed; nothing where the form does not say, or says it otherwise than our pages do. */
export function sentListed({ body }: Visit): readonly Listed[] {
  try {
    const sent: unknown = JSON.parse(typeof body['listed'] === 'string' ? body['listed'] : '[]');
    const good = Array.isArray(sent) ? sent.filter(isListed).slice(0, MOST_LISTED) : [];
    return good.map(([key, name, now]) => ({ key, name, now }));
  } catch {
    return [];
  }
}

/** The same list, carried on by a page that asks something in between. */
export const listedAgain = (visit: Visit): HiddenView => hiddenOf(sentListed(visit));

const GONE = 'as it is printed';
const saidOf = (said: string): string => said || 'nothing';
const bothOf = ({ listed: { name, now: was }, now }: Overtaken): string =>
  `${name}: your page said ${saidOf(was)}, by now it is ${now === null ? GONE : saidOf(now)}.`;

const MOST_SAID = 12;
function bothWords({ changes }: ListOvertaken): string {
  const more = changes.length > MOST_SAID ? [`And ${changes.length - MOST_SAID} more.`] : [];
  return [...changes.slice(0, MOST_SAID).map(bothOf), ...more].join(' ');
}

/** The same list with what is worked out by now in place of what was overtaken; what is worked out otherwise no more is left out. */
function listedNow(listed: readonly Listed[], { changes }: ListOvertaken): readonly Listed[] {
  const gone = changes.filter(({ now }) => now === null).map((one) => one.listed.key);
  const fresh = changes.flatMap((one) => (one.now === null ? [] : [{ ...one.listed, now: one.now }]));
  const kept = listed.filter(({ key }) => !gone.includes(key) && !fresh.some((one) => one.key === key));
  return [...kept, ...fresh];
}

/** says: what was not done, and what to do. hidden: what else the form sent. */
type Asked = {
  readonly head: PageHead;
  readonly says: string;
  readonly action: string;
  readonly act: string;
  readonly hidden: readonly HiddenView[];
  readonly back: LinkView;
};

/** 409: what was listed and what is worked out by now, both, and the way to take the latter. */
export function overtakenPage(listed: readonly Listed[], error: ListOvertaken, { says, ...asked }: Asked): Result {
  const hidden = [...asked.hidden, hiddenOf(listedNow(listed, error))];
  const page = formPage({ ...asked, hidden, says: `${bothWords(error)} ${says}`, fields: {}, tried: { typed: {}, problems: {} } });
  return show('routings/form', page, 409);
}
