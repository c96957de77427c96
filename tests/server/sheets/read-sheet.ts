/** Reads a sheet as a person does: by labels. */
const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', '’')
    .replace(/[\s\u202f\u2009]+|&#(?:8239|160);/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

export type ReadFigure = {
  readonly label: string;
  readonly size: string;
  readonly working: string;
  readonly measured: string;
  readonly html: string;
};

/** Each figure row by its key: label, size to work to, limits and working, what stands in the box. */
export function figuresOn(html: string): ReadonlyMap<string, ReadFigure> {
  const rows = [...html.matchAll(/<tr class="figure" data-figure="([^"]+)">([\s\S]*?)<\/tr>/g)];
  return new Map(
    rows.map(([, key = '', row = '']) => {
      const cells = [...row.matchAll(/<t[dh][^>]*>([\s\S]*?)<\/t[dh]>/g)].map(([, cell = '']) => plain(cell));
      const [, label = '', size = '', working = '', measured = ''] = cells;
      return [key, { label, size, working, measured, html: row }];
    }),
  );
}

/** Label and text of what carries this attribute: "summary", "fact", "common". */
export function linesOn(html: string, attribute: string): ReadonlyMap<string, { readonly label: string; readonly text: string }> {
  const found = [...html.matchAll(new RegExp(`<div data-${attribute}="([^"]+)"><dt>([\\s\\S]*?)</dt><dd[^>]*>([\\s\\S]*?)</dd>`, 'g'))];
  return new Map(found.map(([, key = '', label = '', text = '']) => [key, { label: plain(label), text: plain(text) }]));
}

/** The table of what differs: for each line its name and a cell for each part. */
export function differsOn(html: string): ReadonlyMap<string, readonly string[]> {
  const rows = [...html.matchAll(/<tr data-differs="([^"]+)">([\s\S]*?)<\/tr>/g)];
  return new Map(
    rows.map(([, key = '', row = '']) => [key, [...row.matchAll(/<td>([\s\S]*?)<\/td>/g)].map(([, cell = '']) => plain(cell))]),
  );
}

export type ReadTooth = { readonly tooth: string; readonly turns: number; readonly hole: number; readonly boxes: readonly string[] };

/** The lines of index tables in the order in which they are read: down each column, then the next. */
export function teethOn(html: string): ReadTooth[] {
  const rows = [
    ...html.matchAll(
      /<tr(?: class="group")?><th scope="row">([\s\S]*?)<\/th><td>(\d+)<\/td><td class="hole"><b>(\d+)<\/b><\/td>([\s\S]*?)<\/tr>/g,
    ),
  ];
  return rows.map(([, tooth = '', turns, hole, rest = '']) => ({
    tooth: plain(tooth),
    turns: Number(turns),
    hole: Number(hole),
    boxes: [...rest.matchAll(/data-pass="(\w+)"/g)].map(([, pass = '']) => pass),
  }));
}

export const operationTitles = (html: string): string[] =>
  [...html.matchAll(/<tr class="head"><th scope="row">\d+<\/th><td colspan="3"><b>([^<]*)<\/b>/g)].map(([, title = '']) => title);

export const qrsOn = (html: string): string[] =>
  [...html.matchAll(/<svg [^>]*viewBox="0 0 \d+ \d+"><rect fill="white"[\s\S]*?<\/svg>/g)].map(([svg]) => svg);

export { plain };
