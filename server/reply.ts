import type { FastifyReply } from 'fastify';
import type { Told } from './errors.ts';
import { furniture, NOTICE_COOKIE, noticeText } from './furniture.ts';
import { isOwnPath } from './guard/own-path.ts';
import { newTemplates } from './templates.ts';
import type { CookieToSet, Go, Result, Visit } from './visit.ts';

const NOTICE_SECONDS = 60;
const HTML = 'text/html; charset=utf-8';

function setCookie(reply: FastifyReply, cookie: CookieToSet): void {
  reply.setCookie(cookie.name, cookie.value, { path: '/', httpOnly: true, sameSite: 'lax', maxAge: cookie.maxAgeSeconds });
}

/** A file's name in a header: plain letters for old readers, all letters for the rest. */
const asAttachment = (name: string): string =>
  `attachment; filename="${name.replace(/[^\w .()+-]/g, '_')}"; filename*=UTF-8''${encodeURIComponent(name).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)}`;

function goTo(reply: FastifyReply, result: Go): FastifyReply {
  if (!isOwnPath(result.go)) throw new TypeError(`A change was about to lead out of the shop, to ${result.go}`);
  if (result.saved)
    setCookie(reply, { name: NOTICE_COOKIE, value: noticeText(result.saved, result.act ?? null), maxAgeSeconds: NOTICE_SECONDS });
  for (const cookie of result.cookies ?? []) setCookie(reply, cookie);
  return reply.redirect(result.go, 303);
}

/** A page that comes back starts at its first box that is amiss, without a script too. What was typed holds no such text: its quotes are written otherwise. */
const startAtFirstAmiss = (html: string): string => html.replace('aria-invalid="true"', 'aria-invalid="true" autofocus');

/** Turns what handlers give into answers. views: the folder of the templates. */
export function newReplies(views: string) {
  const eta = newTemplates(views);

  const page = (reply: FastifyReply, visit: Visit, name: string, data: object, status: number): FastifyReply => {
    if (visit.cookies[NOTICE_COOKIE]) reply.clearCookie(NOTICE_COOKIE, { path: '/' });
    const html = eta.render(`/${name}`, { ...furniture(visit), ...data });
    return reply
      .code(status)
      .type(HTML)
      .send(status === 422 ? startAtFirstAmiss(html) : html);
  };

  const send = (reply: FastifyReply, visit: Visit, result: Result): FastifyReply => {
    if ('show' in result) return page(reply, visit, result.show, result.data, result.status ?? 200);
    if ('go' in result) return goTo(reply, result);
    if ('json' in result)
      return reply
        .code(result.status ?? 200)
        .type('application/json; charset=utf-8')
        .send(result.json);
    if ('text' in result) return reply.type(result.type).header('content-disposition', asAttachment(result.fileName)).send(result.text);
    return reply.type(HTML).send(eta.render(`/${result.sheet}`, result.data));
  };

  /** An error as a page; as JSON where JSON was asked for. */
  const told = (reply: FastifyReply, visit: Visit, what: Told): FastifyReply => {
    const { status, title, says, tryThis, reference, links } = what;
    if (visit.address.split('?')[0]?.endsWith('.json'))
      return reply.code(status).send({ problem: says, try: tryThis, ...(reference ? { reference } : {}) });
    return page(reply, visit, 'error', { title, place: '', back: null, titleBlock: [], says, tryThis, reference, links }, status);
  };

  return { send, told };
}
