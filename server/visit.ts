import type { Kysely } from 'kysely';
import type { Schema } from '../db/schema.ts';
import type { LinkView } from './page.ts';
import type { Shops } from './shops.ts';
import type { PageData, PageName, Views } from './views.ts';

/** The database, or the transaction of the change that is being made. Handlers never reach for another. */
export type Db = Kysely<Schema>;

/** One request as handlers see it: plain values, no server. */
export type Visit = {
  readonly db: Db;
  readonly shops: Shops;
  readonly params: Readonly<Record<string, string>>;
  readonly query: Readonly<Record<string, unknown>>;
  readonly body: Readonly<Record<string, unknown>>;
  /** UTC, ISO 8601. */
  readonly now: string;
  /** The shop PC or a paired device: may change things and see money and names. */
  readonly trusted: boolean;
  readonly demo: boolean;
  /** Where a phone finds this shop, without a slash at the end: for QR codes. */
  readonly shopAddress: string;
  /** Path and query of this request. */
  readonly address: string;
  readonly cookies: Readonly<Record<string, string | undefined>>;
};

export type Show<K extends PageName = PageName> = K extends PageName
  ? { readonly show: K; readonly data: PageData<K>; readonly status?: number }
  : never;

/** Views that are whole sheets of their own, without the furniture of a page. */
export type SheetName = { [K in keyof Views]: K extends `${string}sheet` ? K : never }[keyof Views];
type Sheet = { readonly sheet: string; readonly data: object };

export type CookieToSet = { readonly name: string; readonly value: string; readonly maxAgeSeconds: number };

/** Where to go after a change, and what to say there. */
export type Go = { readonly go: string; readonly saved?: string; readonly act?: LinkView; readonly cookies?: readonly CookieToSet[] };

export type Result =
  | Show
  | Sheet
  | Go
  | { readonly json: unknown; readonly status?: number }
  /** A file to keep: its text, media type and name. */
  | { readonly text: string; readonly type: string; readonly fileName: string };

export type Handler = (visit: Visit) => Result | Promise<Result>;

/**
 * One line of the table of contents. who: 'anyone' on the LAN, or 'trusted' (shop PC and paired devices).
 * Changes (POST) run in one transaction and, when their form carries a mark, act once however often they are sent.
 */
export type Route = {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  readonly who: 'anyone' | 'trusted';
  readonly handle: Handler;
  /** Not run in a transaction, because it does not write to the open shop's file. */
  readonly bare?: boolean;
};

export const get = (path: string, handle: Handler): Route => ({ method: 'GET', path, who: 'anyone', handle });
export const getTrusted = (path: string, handle: Handler): Route => ({ method: 'GET', path, who: 'trusted', handle });
export const post = (path: string, handle: Handler): Route => ({ method: 'POST', path, who: 'trusted', handle });
/** A change that is not one of the open shop's file: which shop is open, which devices are paired. */
export const postBare = (path: string, handle: Handler): Route => ({ method: 'POST', path, who: 'trusted', handle, bare: true });
/** The few changes that a device may make before it is paired: pairing itself. */
export const postByAnyone = (path: string, handle: Handler): Route => ({ method: 'POST', path, who: 'anyone', handle, bare: true });

/** A page in its layout. */
export const show = <K extends PageName>(name: K, data: PageData<K>, status = 200): Result =>
  ({ show: name, data, status }) as unknown as Show;

/** A printed sheet, in the layout of paper. */
export const paper = <K extends SheetName>(name: K, data: Views[K]): Result => ({ sheet: name, data });
