/** What a reader sees on a page, taken off its markup by label. */
const plain = (markup: string): string =>
  markup
    .replace(/<[^>]+>/g, ' ')
    .replace(/&#(?:8239|160);/g, ' ')
    .replace(/&amp;/g, '&')
    .replace(/&#39;/g, '’')
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/\s+/g, ' ')
    .trim();

export const textOf = (html: string): string => plain(html.replace(/<(script|style|svg)[\s\S]*?<\/\1>/g, ' '));

/** The number and unit that stand on the dimension line under a label; '' when no such figure is there. */
export function figureOn(html: string, label: string): string {
  const figures = html.split('<li class="figure').slice(1);
  const found = figures.find((one) => /<span class="label">([\s\S]*?)<\/span>/.exec(one)?.[1] === label);
  const size = /<span class="size">([\s\S]*?)<\/span>\s*<span class="arrows"/.exec(found ?? '')?.[1] ?? '';
  return plain(size);
}

/** One section of a page, by its id. */
export function sectionOf(html: string, id: string): string {
  const from = html.indexOf(`id="${id}"`);
  if (from < 0) return '';
  const next = html.indexOf('<section', from);
  return html.slice(from, next < 0 ? undefined : next);
}

/** The rows of all tables in a piece of a page, each with its cells as read. */
export const rowsOf = (html: string): string[][] =>
  [...html.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row = '']) =>
    [...row.matchAll(/<t[dh][^>]*>([\s\S]*?)<\/t[dh]>/g)].map(([, cell = '']) => plain(cell)),
  );

/** The row whose first cell reads so. */
export const rowOf = (html: string, first: string): string[] => rowsOf(html).find(([cell]) => cell === first) ?? [];

/** What the problem beside a field says; '' when it has none. */
export function problemAt(html: string, name: string): string {
  const at = html.search(new RegExp(`name="${name}"`));
  const field = html.lastIndexOf('has-problem', at);
  const next = html.indexOf('class="problem"', Math.max(0, field));
  return field < 0 ? '' : plain(/>([\s\S]*?)<\/p>/.exec(html.slice(next))?.[1] ?? '');
}

/** The value that a field of a form holds. */
export function typedIn(html: string, name: string): string {
  const input = new RegExp(`<input[^>]*name="${name}"[^>]*>`).exec(html)?.[0] ?? '';
  return plain(/value="([^"]*)"/.exec(input)?.[1] ?? '');
}
