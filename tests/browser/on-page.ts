import type { Page } from 'playwright-core';

const tidy = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ').trim();

/** Opens every fold of the work, one tap each, as a reader does who looks for something. */
export async function openFolds(page: Page): Promise<void> {
  const closed = page.locator('main details:not([open]) > summary:visible');
  for (let left = await closed.count(); left > 0; left = await closed.count()) await closed.first().click();
}

/** Types into the boxes of a form and chooses its rows, by the names of the boxes. */
export async function typeIn(page: Page, typed: Readonly<Record<string, string>>, form = 'main form'): Promise<void> {
  for (const [name, value] of Object.entries(typed)) {
    const box = page.locator(`${form} [name="${name}"]`);
    const kind = await box.first().evaluate((one) => `${one.tagName} ${one.getAttribute('type') ?? ''}`);
    if (kind.startsWith('SELECT')) await box.selectOption(value);
    else if (kind === 'INPUT radio') await page.locator(`${form} [name="${name}"][value="${value}"]`).check();
    else if (kind === 'INPUT checkbox') await box.check();
    else await box.fill(value);
  }
}

/** Presses the button with these words and waits for the page that comes of it. */
export async function press(page: Page, words: string): Promise<void> {
  await Promise.all([page.waitForNavigation(), page.locator('main button', { hasText: words }).first().click()]);
}

/** Follows the link with these words. */
export async function follow(page: Page, words: string): Promise<void> {
  await Promise.all([page.waitForNavigation(), page.locator('a', { hasText: words }).first().click()]);
}

/** All text of a piece of the page, folded or not, drawings left out. */
export async function textIn(page: Page, where = 'main'): Promise<string> {
  return tidy(
    await page
      .locator(where)
      .first()
      .evaluate((one) => {
        const copy = one.cloneNode(true) as unknown as {
          textContent: string | null;
          querySelectorAll: (q: string) => Iterable<{ remove: () => void }>;
        };
        for (const drawing of copy.querySelectorAll('svg, script')) drawing.remove();
        return copy.textContent;
      }),
  );
}

type Shown = { readonly label: string; readonly text: string; readonly unit: string; readonly was: string };

/** Every figure in a piece of the page, as it stands there. */
export async function figuresOn(page: Page, where = 'main'): Promise<readonly Shown[]> {
  const read = `[...document.querySelectorAll(${JSON.stringify(`${where} li.figure`)})].map((one) => {
    const of = (part) => (one.querySelector(part)?.textContent ?? '').replace(/\\s+/g, ' ').trim();
    return { label: of('.name .label'), text: of('b.number'), unit: of('.size .unit'), was: of('s.was') };
  })`;
  return (await page.evaluate(read)) as Shown[];
}

/** What stands under a label: the one number that every figure of that name on the page shows. Throws when they differ or none is there. */
export async function readFigure(page: Page, label: string, where = 'main'): Promise<string> {
  const all = await figuresOn(page, where);
  const found = new Set(all.filter((one) => one.label === label).map((one) => one.text));
  const [text] = found;
  if (text === undefined || found.size > 1)
    throw new Error(
      `“${label}” reads ${[...found].join(' and ') || 'nothing'} on ${page.url()}; there are ${all.map((one) => one.label).join('; ')}`,
    );
  return text;
}

/** The cells of every row of the tables in a piece of the page. */
export async function rowsIn(page: Page, where: string): Promise<readonly string[][]> {
  const read = `[...document.querySelectorAll(${JSON.stringify(`${where} tr`)})].map((row) => [...row.querySelectorAll('td, th')].map((cell) => cell.textContent.replace(/\\s+/g, ' ').trim()))`;
  return (await page.evaluate(read)) as string[][];
}

/** Where the link with exactly these words leads. */
export async function whereTo(page: Page, words: string | RegExp, where = 'main'): Promise<string> {
  const link = page.locator(`${where} a`, { hasText: words }).first();
  return (await link.getAttribute('href')) ?? '';
}
