import { expect, it } from 'vitest';
import { figuresOn, follow, press, readFigure, rowsIn, textIn, typeIn } from './on-page.ts';
import { pagesPrinted, sidesOn } from './paper-sides.ts';
import type { Story } from './story-so-far.ts';

/** What fits both Letter and A4, in millimetres. */
const PAPER = { wide: 190, tall: 255 };

/** Operations that stand; one struck out, as making a mandrel once one is there, is on no sheet. */
const STANDING = '#routing table tr:not(:has-text("struck out")) a[href^="/operations/"]';

/** From two routings to sheets on paper and the made record. */
export function making({ page, base, hands, at, errors }: Story): void {
  it('prints both route sheets and one set-up sheet, on Letter and A4, nothing cut', async () => {
    const titles: Record<string, string[]> = {};
    for (const part of [at.part22, at.part28]) {
      await hands().go(part);
      titles[`${part}/sheet`] = (await page().locator(STANDING).allTextContents()).map((text) =>
        text.replace(/^\s*\d+\.\s*|\s*offered\s*$/g, '').trim(),
      );
    }
    const rough = [await hands().operation(at.part22, 'Rough all round'), await hands().operation(at.part28, 'Rough all round')];
    const sheets = [...Object.keys(titles), `/set-ups/sheet?operations=${rough.map((one) => one.split('/').at(-1)).join(',')}`];
    await page().emulateMedia({ media: 'print' });
    for (const sheet of sheets) {
      await hands().go(sheet);
      const sides = await sidesOn(page());
      for (const side of sides) {
        expect(side.over, sheet).toEqual([]);
        expect([side.wide <= PAPER.wide + 0.5, side.tall <= PAPER.tall + 0.5], `${sheet}: ${side.wide} × ${side.tall} mm`).toEqual([
          true,
          true,
        ]);
      }
      for (const format of ['Letter', 'A4'] as const) expect(await pagesPrinted(page(), format), `${sheet} ${format}`).toBe(sides.length);
      const printed = await page().locator('tr.head b').allTextContents();
      for (const title of titles[sheet] ?? []) expect(printed, sheet).toContain(title);
      if (titles[sheet]) expect(titles[sheet].length, sheet).toBeGreaterThan(20);
    }
    const text = await textIn(page(), 'body');
    for (const words of [
      '27 spaces = 28 holes',
      '9 spaces = 10 holes',
      'over 2 teeth: 0.5850',
      'over 3 teeth: 0.9693',
      'Cutter changed: set it central again',
    ])
      expect(text).toContain(words);
    await page().emulateMedia({ media: 'screen' });
  });

  it('the blank as measured feeds the depth forward', async () => {
    await hands().go(at.part22);
    const all = await page()
      .locator(STANDING)
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    const [blank, touch] = [
      await hands().operation(at.part22, 'Write down the size'),
      await hands().operation(at.part22, 'Touch the blank'),
    ];
    for (const address of all.slice(0, all.indexOf(blank))) await hands().markDone(address);
    await hands().markDone(blank, { 'm-outside': '2.9980', 'm-runOut': '0.0005', minutes: '12' });
    expect(await readFigure(page(), 'Outside diameter')).toBe('2.9980');
    expect(await textIn(page())).toContain('Within its limits.');
    await hands().go(touch);
    // derived: 0.2696 less half of what the blank is small, 0.0010, and the paper of 0.0010 on top
    const depth = (await figuresOn(page())).find(({ label }) => label === 'Depth to dial from touching');
    expect([depth?.was, depth?.text]).toEqual(['0.2706 in', '0.2696']);
    const query = { teeth: '22', pitch: '8 DP', system: 'full-14.5', measuredOutside: '2.998', made: 'form cutter' };
    for (const [paper, is] of [
      ['0', '0.2686'],
      ['0.001', '0.2696'],
    ] as const) {
      const sum = await fetch(`${base()}/sums/depth-to-dial.json?${new URLSearchParams({ ...query, paper })}`);
      const { figures } = (await sum.json()) as { figures: Record<string, { printed: string }> };
      expect(figures['depthToDial']?.printed, `paper ${paper}`).toBe(is);
    }
    await press(page(), 'Accept all');
    expect((await figuresOn(page())).find(({ label }) => label === 'Depth to dial from touching')?.was).toBe('');
    for (const address of all.slice(all.indexOf(blank) + 1, all.indexOf(touch) + 1)) await hands().markDone(address);
  });

  it('teeth are counted with a finger, through a reload', async () => {
    const rough = await hands().operation(at.part22, 'Rough all round');
    await page().setViewportSize({ width: 360, height: 740 });
    await hands().go(rough);
    await follow(page(), 'Count the teeth');
    for (const tooth of [1, 2, 3]) await press(page(), `Tooth ${tooth} is cut`);
    await page().reload();
    expect(await page().textContent('h2')).toBe('Tooth 4');
    // derived: three moves of 27 spaces from hole 0 on a circle of 33: 81 = 2 × 33 + 15
    expect(await page().textContent('.one-number')).toContain('hole 15');
    expect(await textIn(page())).not.toContain('comes first');
    await page().setViewportSize({ width: 1280, height: 900 });
    await hands().go(rough);
    await press(page(), 'Mark done');
    // Two passes of 22 spaces: the steel is coarser than 10 pitch.
    expect(await textIn(page(), 'h1')).toBe('Done with 3 of 44 ticked?');
    await press(page(), 'All are cut: mark it done');
    expect(await textIn(page(), '.notice')).toContain('Done');
  });

  it('a span read large says what to feed; then the record is written, and the set has its 22', async () => {
    const span = await hands().operation(at.part22, 'Finish a few spaces');
    await hands().go(span);
    // 0.59005: 0.0050 over the wanted 0.585049
    await typeIn(page(), { 'm-span': '0.59005' }, '#measured');
    await press(page(), 'Note it, not done yet');
    expect(await readFigure(page(), 'Still to feed')).toBe('0.0089');
    expect(await textIn(page(), '.notice')).toContain('Metal left');
    await hands().markDone(span, { 'm-span': '0.5848' });
    await hands().markDone(await hands().operation(at.part22, 'Finish all round'));
    await hands().markDone(await hands().operation(at.part22, 'Measure the finished teeth'), { 'm-span': '0.5846', 'm-outside': '2.9980' });
    await hands().go(at.part22);
    await follow(page(), 'Finish: made, or spoilt');
    await typeIn(page(), { outcome: 'good', minutes: '520', notes: 'Slow, but good.' });
    await press(page(), 'Write the record');
    const facts = await textIn(page(), 'main dl');
    expect(facts).toMatch(/From\s*31T/);
    expect(facts).toContain('8 h 40 min');
    expect((await rowsIn(page(), '#measured')).find(([name]) => name === 'Outside diameter')?.slice(1, 4)).toEqual([
      '2.9980 in',
      '2.9975 to 3.0000 in',
      'Within its limits.',
    ]);
    await hands().go(at.set);
    expect(await textIn(page())).toContain('Of 10 that belong 9 are there. Missing: 28.');
    expect((await rowsIn(page(), '#wheels')).find(([name]) => name === '22 teeth')?.[1]).toBe('here');
    expect(await readFigure(page(), 'Ratios today, one wheel of each number', '#cost')).toBe('828');
    expect(errors).toEqual([]);
  });
}
