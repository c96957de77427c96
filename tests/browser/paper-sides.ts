import type { Page } from 'playwright-core';

/** One side of paper: what it is high and wide, and how far the ink on it reaches, in millimetres. */
export type Side = { readonly tall: number; readonly wide: number; readonly over: readonly string[] };

const MEASURE = `[...document.querySelectorAll('section.paper')].map((side) => {
  const box = side.getBoundingClientRect();
  const inked = [...side.querySelectorAll('*')].filter((one) => one.getClientRects().length > 0 && one.checkVisibility() && !['title', 'desc'].includes(one.tagName));
  const over = inked.filter((one) => { const b = one.getBoundingClientRect(); return b.right > box.right + 1 || b.bottom > box.bottom + 1 || b.left < box.left - 1 || b.top < box.top - 1; });
  return { tall: box.height / 96 * 25.4, wide: box.width / 96 * 25.4, over: over.map((one) => one.outerHTML.slice(0, 90)) };
})`;

/** The sides of the sheet that stands in a page, laid out as for the printer. */
export const sidesOn = async (page: Page): Promise<readonly Side[]> => (await page.evaluate(MEASURE)) as Side[];

/** How many pages come out of the printer on this paper. */
export const pagesPrinted = async (page: Page, format: 'A4' | 'Letter'): Promise<number> =>
  (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
