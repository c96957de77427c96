import { randomBytes } from 'node:crypto';
import { RecordChanged, RecordNotFound } from '../db/changes.ts';
import { PartStays } from '../db/part-removal.ts';
import { ItemTaken, RoutingOpen } from '../db/parts.ts';
import { DomainError } from '../lib/figure/domain-error.ts';
import { to } from './addresses.ts';
import type { LinkView } from './page.ts';

/** What the visitor is told when something went wrong. `reference` ties a page to the log; only our own mistakes have one. */
export type Told = {
  readonly status: number;
  readonly title: string;
  readonly says: string;
  readonly tryThis: string;
  readonly reference: string;
  readonly links: readonly LinkView[];
};

const HOME: LinkView = { says: 'Today', href: to.today };

const plain = (status: number, title: string, says: string, tryThis: string): Told => ({
  status,
  title,
  says,
  tryThis,
  reference: '',
  links: [HOME],
});

/** Refused before any page was reached: wrong host, foreign origin, not paired. */
export class Refused extends Error {
  readonly status: number;
  readonly tryThis: string;
  constructor(status: number, says: string, tryThis: string) {
    super(says);
    this.status = status;
    this.tryThis = tryThis;
  }
}

const fromFastify: Readonly<Record<string, (error: Error) => Told>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: () =>
    plain(413, 'Too much at once', 'What was sent is larger than this page takes.', 'Send less; a note may have 20,000 letters.'),
  FST_ERR_CTP_INVALID_MEDIA_TYPE: () => plain(415, 'Not a form', 'This address takes forms only.', 'Use the page that leads here.'),
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: () => plain(400, 'Cut short', 'What was sent arrived incomplete.', 'Send it again.'),
  FST_ERR_BAD_URL: () => plain(400, 'No such address', 'This address cannot be read.', 'Go back and use the links.'),
};

/** One thing has one place, and one part one routing. */
function onlyOne(error: Error): Told | null {
  if (error instanceof ItemTaken) return plain(409, 'Taken', error.message, 'Go back and choose again from what stands there now.');
  if (error instanceof RoutingOpen) return plain(409, 'Being made', error.message, 'Both are on the page of the part, under its routing.');
  if (error instanceof PartStays) return plain(409, 'It stays', error.message, 'Choose its way on the page of the part.');
  return null;
}

/** Turns any error into what the visitor is told. Our own mistakes get a reference number; their detail is for the log alone. */
export function tell(error: Error & { readonly code?: string; readonly statusCode?: number }): Told {
  if (error instanceof Refused) return plain(error.status, 'Not from here', error.message, error.tryThis);
  if (error instanceof DomainError) return plain(422, 'That cannot be', `${error.given} ${error.limit}`, error.tryThis);
  if (error instanceof RecordNotFound)
    return plain(404, 'Not found', error.message, 'It may have been taken out meanwhile. Search for it, or go back to Today.');
  if (error instanceof RecordChanged)
    return plain(409, 'Changed meanwhile', error.message, 'Open it again, look at what stands there now, and make your change once more.');
  const taken = onlyOne(error);
  if (taken) return taken;
  const known = error.code ? fromFastify[error.code] : undefined;
  if (known) return known(error);
  if (error.statusCode && error.statusCode >= 400 && error.statusCode < 500) {
    return plain(error.statusCode, 'Not understood', 'What was sent cannot be read.', 'Go back and try again.');
  }
  return {
    status: 500,
    title: 'Our mistake',
    says: 'Something in Backgear broke. What you had saved before is safe.',
    tryThis: 'Go back and try once more. The log holds the detail under the number below.',
    reference: randomBytes(4).toString('hex'),
    links: [HOME],
  };
}
