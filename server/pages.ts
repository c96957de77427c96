import * as sums from './sums/routes.ts';
import { get, type Route } from './visit.ts';

/** The table of contents: every page and every change, by address. Handlers live in the folder of their area. */
export const PAGES: readonly Route[] = [get('/sums', sums.contents), get('/sums/:path', sums.oneSum)];
