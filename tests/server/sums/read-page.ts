const ENTITIES: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&#8239;': ' ' };

/** Text of a piece of markup: tags out, entities turned back, blanks made one. */
const plain = (markup: string): string =>
  markup
    .replace(/<[^>]*>/g, '')
    .replace(/&(?:amp|lt|gt|quot|#39|#8239);/g, (sign) => ENTITIES[sign] ?? sign)
    .replace(/\s+/g, ' ')
    .trim();

export type FigureOnPage = { readonly key: string; readonly text: string; readonly unit: string; readonly formula: string };

const piece = (markup: string, form: RegExp): string => plain(form.exec(markup)?.[1] ?? '');

/** The figures of a page by their label, as a reader finds them. Throws when two have one label. */
export function figuresByLabel(html: string): ReadonlyMap<string, FigureOnPage> {
  const found = new Map<string, FigureOnPage>();
  for (const [, key = '', markup = ''] of html.matchAll(/<li class="figure[^"]*" id="[^"]*" data-figure="([^"]*)">([\s\S]*?)<\/li>/g)) {
    const label = piece(markup, /<span class="label">([\s\S]*?)<\/span>/);
    if (found.has(label)) throw new Error(`two figures are called ${label}`);
    found.set(label, {
      key,
      text: piece(markup, /<b class="number[^"]*">([\s\S]*?)<\/b>/),
      unit: piece(markup, /<\/b>&#8239;<span class="unit">([\s\S]*?)<\/span>/),
      formula: piece(markup, /<p class="formula">([\s\S]*?)<\/p>/),
    });
  }
  return found;
}

/** The tables of a page: title, heads and cells as text. */
export const tablesOn = (html: string) =>
  [...html.matchAll(/<table class="ruled">([\s\S]*?)<\/table>/g)].map(([, markup = '']) => ({
    title: piece(markup, /<caption>([\s\S]*?)<\/caption>/),
    heads: [...markup.matchAll(/<th scope="col"[^>]*>([\s\S]*?)<\/th>/g)].map(([, head = '']) => plain(head)),
    rows: [...markup.matchAll(/<tr(?: id="[^"]*")?><td([\s\S]*?)<\/tr>/g)].map(([, row = '']) =>
      [...`<td${row}`.matchAll(/<td[^>]*>([\s\S]*?)<\/td>/g)].map(([, cell = '']) => plain(cell)),
    ),
  }));

/** What stands in the boxes: by name, the text of line, area, list or chosen row. */
export function boxesOn(html: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [tag, name = '', value = ''] of html.matchAll(
    /<input type="(?:text|radio|checkbox)"[^>]*?name="([^"]*)" value="([^"]*)"[^>]*>/g,
  ))
    if (tag.includes('type="text"') || / checked/.test(tag)) found.set(name, plain(value));
  for (const [, name = '', options = ''] of html.matchAll(/<select id="[^"]*" name="([^"]*)"[^>]*>([\s\S]*?)<\/select>/g))
    found.set(name, plain(/<option value="([^"]*)" selected>/.exec(options)?.[1] ?? ''));
  return found;
}

/** Problems beside their fields, by the id of the box. */
export const problemsOn = (html: string): readonly string[] =>
  [...html.matchAll(/<p class="problem"><span aria-hidden="true">✕<\/span>([\s\S]*?)<\/p>/g)].map(([, says = '']) => plain(says));
