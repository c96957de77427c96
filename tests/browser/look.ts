import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { packageFolder } from '../../server/package-folder.ts';
import { chromiumPath, launch } from './chromium.ts';
import { listeningShop } from './open-shop.ts';
import { kindOf, walk } from './walk.ts';

/** Pictures of every page of the demo shop at phone and desk width, and every sheet as PDF, into the folder `look`. */
const OUT = path.join(packageFolder(), 'look');
const WIDTHS = [
  [360, 740],
  [1280, 900],
] as const;
const OF_ONE_KIND = 2;

const nameOf = (address: string): string => address.replace(/[^a-z0-9]+/gi, '-').replace(/^-|-$/g, '') || 'today';

async function lookAt(executablePath: string): Promise<void> {
  rmSync(OUT, { recursive: true, force: true });
  mkdirSync(OUT, { recursive: true });
  const shop = await listeningShop('demo');
  const browser = await launch(executablePath);
  const pages = await walk(['/'], OF_ONE_KIND, async (address) => {
    const answer = await fetch(shop.base + address);
    return { address, status: answer.status, type: answer.headers.get('content-type') ?? '', body: await answer.text() };
  });
  const html = pages.filter((page) => page.type.startsWith('text/html'));
  for (const [width, height] of WIDTHS) {
    const page = await browser.newPage({ viewport: { width, height } });
    for (const { address, body } of html) {
      await page.goto(shop.base + address);
      await page.screenshot({ path: path.join(OUT, `${nameOf(address)}-${width}.png`), fullPage: true });
      if (width === 1280 && body.includes('class="paper"')) {
        for (const format of ['A4', 'Letter'] as const)
          await page.pdf({ path: path.join(OUT, `${nameOf(address)}-${format}.pdf`), format });
      }
    }
    await page.close();
  }
  for (const { address } of html) process.stdout.write(`${kindOf(address)}  ${address}\n`);
  await browser.close();
  await shop.close();
}

const found = chromiumPath();
if (found) await lookAt(found);
else {
  console.error('No Chromium found. Set CHROMIUM_PATH.');
  process.exit(1);
}
