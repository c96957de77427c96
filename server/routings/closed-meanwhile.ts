import { to } from '../addresses.ts';
import { dayOf } from '../forms/date-field.ts';
import { type Fields, readForm } from '../forms/form.ts';
import type { PageHead } from '../page.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { formPage } from './form-page.ts';
import { refuseClosed, type WrittenWork } from './work.ts';

const saysOf = ({ part: { mark }, routing: { closed_on } }: WrittenWork): string =>
  `The routing of ${mark} was closed on ${dayOf(closed_on ?? '')}, and what it says stays as it is. Nothing of yours was saved; it stands below as you typed it. Take a copy of what you want to keep: the part has room for notes.`;

/**
 * A routing that was closed meanwhile takes nothing more; what was typed is given back as it was typed, with status 409, so that it is not
 * lost with the page. Null while the routing is open. Throws DomainError when it is closed and nothing was typed.
 */
export function closedMeanwhile(work: WrittenWork, { body }: Visit, fields: Fields, head: PageHead): Result | null {
  if (work.routing.closed_on === null) return null;
  const { typed } = readForm(body, fields);
  if (Object.values(typed).every((text) => text.trim() === '')) refuseClosed(work);
  const back = { says: 'Go to the part', href: to.part(work.part.id) };
  const view = formPage({ head, action: back.href, act: '', fields, tried: { typed, problems: { '': saysOf(work) } }, back });
  return show('routings/form', view, 409);
}
