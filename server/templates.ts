import { Eta } from 'eta';

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Refuses what no page may ever show: nothing, NaN, or an object. */
function printable(value: unknown): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  throw new TypeError(`A template was about to print ${value === null ? 'null' : typeof value === 'number' ? value : typeof value}.`);
}

/** Text made safe to stand in HTML, in an element or a quoted attribute. */
const escapeText = (value: unknown): string => printable(value).replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);

/** The one Eta. Everything printed, raw or escaped, goes through `printable` first. */
export const newTemplates = (views: string): Eta =>
  new Eta({ views, cache: true, debug: true, autoFilter: true, filterFunction: printable, escapeFunction: escapeText });
