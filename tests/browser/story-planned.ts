import { expect, it } from 'vitest';
import { LATHE, MILL, NO_5, NO_5_LOAN, RECESSED, SET, SPLINE_MANDREL, TOOLS } from './first-machine.ts';
import { follow, press, readFigure, rowsIn, textIn, typeIn, whereTo } from './on-page.ts';
import type { Story } from './story-so-far.ts';
import { blankOf, feedOf, indexOf, spanOf, spareOf, threeWays } from './three-ways.ts';

/** From the first page to two routings that wait for nothing any more. Expected numbers: derived by hand, as the tests of lib name them. */
export function planning({ page, base, hands, at }: Story): void {
  it('begins with two choices, and a machine of one’s own', async () => {
    await hands().go('/');
    expect(await page().locator('main h2').allTextContents()).toEqual(['Your own shop', 'The demo shop']);
    at.set = await hands().firstSet();
    expect(await page().textContent('.back')).toContain('Halvorsen H-12');
    expect(at.set).toBe('/sets/1');
  });

  it('knows the wheels that are recessed', async () => {
    const rows = await rowsIn(page(), '#wheels');
    const thing = (teeth: string, place: string) => rows.find((row) => row[0] === teeth && row[4] === place)?.[3] ?? '';
    for (const name of [thing('52 teeth', 'belongs'), thing('46 teeth', 'over')]) {
      await hands().go(at.set);
      const lies = page().locator('#wheels tr', { hasText: name }).last();
      await hands().go((await lies.locator('a[href^="/drawer/"]').first().getAttribute('href')) ?? '');
      await follow(page(), 'Change what is on record');
      await typeIn(page(), RECESSED);
      await press(page(), 'Save');
      expect(await textIn(page())).toContain('recess 1.900 in to 4.600 in, both sides');
    }
  });

  it('holds the tools: No. 4, no No. 5, no spline mandrel', async () => {
    for (const [kind, typed] of TOOLS) await hands().addTool(kind, typed);
    for (const typed of [LATHE, MILL]) await hands().addShopMachine(typed);
  });

  it('says what is missing, what it costs, and which comes first', async () => {
    await hands().go(at.set);
    expect(await textIn(page())).toContain(
      '13 gears in the drawer. Of 10 that belong 8 are there. Missing: 22, 28. Spare: 19, 25, 31, 34, 46.',
    );
    const [each, lie] = ['one wheel of each number', 'the wheels that really lie there'];
    const cost = (label: string) => readFigure(page(), label, '#cost');
    expect(await cost(`Ratios of the complete set, ${each}`)).toBe('1,350');
    expect(await cost(`Ratios today, ${each}`)).toBe('476');
    expect(await cost(`Ratios lost today, ${each}`)).toBe('874');
    expect(await cost(`Ratios today, ${lie}`)).toBe('707');
    expect(await cost(`Ratios with all made, ${lie}`)).toBe('1,573');
    expect((await rowsIn(page(), '#cost')).filter(([teeth]) => teeth === '22' || teeth === '28').map((row) => row.slice(0, 3))).toEqual([
      ['22', '31', '828'],
      ['28', '34', '828'],
    ]);
    expect(await textIn(page(), '#cost')).toContain('A tie at 828; the 28 first: its cutter is owned.');
    const query = new URLSearchParams({ belongs: SET.belongs, drawer: SET.drawer, recuts: '22 from 31, 28 from 34' });
    const sum = (await (await fetch(`${base()}/sums/missing-wheels.json?${query}`)).json()) as {
      figures: Record<string, { name: string; printed: string }>;
    };
    for (const { name, printed } of Object.values(sum.figures)) expect(await cost(name), name).toBe(printed);
  });

  it('says what becomes what and why not the others; forcing another pair names the rule that it breaks', async () => {
    const blanks = await textIn(page(), '#blanks');
    expect(blanks).toContain('31 becomes 22; 34 becomes 28.');
    expect(blanks).toContain('25 teeth is too small: the old gaps would stay 0.082 in deep.');
    const refused = (await rowsIn(page(), '#blanks')).filter(([name, state]) => name?.startsWith('46T') && state === 'will not do');
    expect(refused).toHaveLength(2);
    for (const row of refused) expect(row[2]).toContain('the recess between 1.9000 in and 4.6000 in on both sides');
    await page().click('text=Insist on another pair');
    const form = page().locator('form', { hasText: 'Hold it against the choice' });
    await form.locator('select').first().selectOption({ label: '22 teeth' });
    const the34 = (await form.locator('option').allTextContents()).find((text) => text.startsWith('34T')) ?? '';
    await form.locator('select').last().selectOption({ label: the34 });
    await press(page(), 'Hold it against the choice');
    expect(await textIn(page(), '#blanks')).toContain('Taking 34 for the 22 forces the 46 into the 28');
    expect(await textIn(page(), '#blanks')).toContain('It breaks the rule: least metal removed.');
  });

  it('opens both routings with one button; each waits for the spline mandrel first', async () => {
    await hands().go(at.set);
    await press(page(), 'Open the routings: 22 from the 31, 28 from the 34');
    at.part22 = await whereTo(page(), /^22 teeth$/);
    at.part28 = await whereTo(page(), /^28 teeth$/);
    await hands().go(at.part22);
    expect(await textIn(page(), '#routing')).toContain(
      'Waits first of all for mandrel for a 6-spline bore of 1.2500 in; then for cutter No. 5, 8 DP, 14½°, for 22 teeth.',
    );
    await hands().go(at.part28);
    expect(await textIn(page(), '#routing')).toContain('Waits for mandrel for a 6-spline bore of 1.2500 in.');
    const needs = await rowsIn(page(), '#routing');
    expect(needs.find(([need]) => need?.startsWith('cutter No. 4'))?.slice(1, 3)).toEqual(['here', 'Cutter No. 4, 8 DP']);
  });

  it.each([
    ['22', 31, '4.1250', '3.5858', '3.0000', '0.5625', '2.4608', '0.6054', '1 turn + 27 spaces on 33', '28'],
    ['28', 34, '4.5000', '3.9608', '3.7500', '0.3750', '3.2108', '0.9804', '1 turn + 9 spaces on 21', '10'],
  ] as const)(
    '%s teeth: every number by its label, from page, .json and lib',
    async (teeth, from, old, oldRoot, outside, off, root, wall, crank, holes) => {
      const count = Number(teeth);
      await hands().go(teeth === '22' ? at.part22 : at.part28);
      await threeWays(page(), base(), spareOf(count, from), [
        ['New outside', outside],
        ['Old outside', old],
        ['Old root, worked out', oldRoot],
        ['Whole depth', '0.2696'],
        ['New root', root],
        ['Turn off a side', off],
        ['Of it through the old teeth', '0.2696'],
        ['Wall from new root to bottom of the splines', wall],
      ]);
      await threeWays(page(), base(), blankOf(count), [
        ['Outside diameter', outside],
        ['Root diameter', root],
      ]);
      await threeWays(page(), base(), indexOf(count), [
        ['Crank for one division', crank],
        ['Holes the sector shows', holes],
        ['Proof: turns that all moves make', '40'],
      ]);
      const spans: readonly (readonly [string, string])[] =
        teeth === '22'
          ? [
              ['Span over 2 teeth', '0.5850'],
              ['Span over 3 teeth', '0.9652'],
            ]
          : [['Span over 3 teeth', '0.9693']];
      await threeWays(page(), base(), spanOf(count), spans);
      const says = await textIn(page());
      if (teeth === '22') expect(says).toContain('Borrow a No. 5');
      else expect(says).toContain('Use Cutter No. 4, 8 DP. Right cutter.');
    },
  );

  it('says what is still to feed when the span reads 0.005 in large', async () => {
    const LARGE = ['Still to feed when the span reads 0.005 in large', 'Still to feed'] as const;
    await hands().go(await hands().operation(at.part22, 'Finish a few spaces'));
    await threeWays(page(), base(), feedOf(22, 2, 0.585), [[LARGE, '0.0089']]);
    await hands().go(await hands().operation(at.part28, 'Finish a few spaces'));
    await threeWays(page(), base(), feedOf(28, 3, 0.9693), [[LARGE, '0.0076']]);
  });

  it('flags a No. 5 on loan that the arbor does not take: its work still waits', async () => {
    await hands().addTool('cutter', NO_5_LOAN);
    const loan = new URL(page().url()).pathname;
    const flag = 'Hole 7/8 in: needs a 7/8 in arbor; owned: 1 in.';
    expect(await textIn(page())).toContain(flag);
    await hands().go(at.part22);
    expect(await textIn(page())).toContain(flag);
    expect(await textIn(page(), '#routing')).toContain('then for cutter arbor of 7/8 in');
    await hands().go(await hands().operation(at.part22, 'Cutter on the arbor'));
    expect(await textIn(page())).toContain(flag);
    await hands().go(loan);
    await press(page(), 'Take it off the list');
  });

  it('holds the 28 for the 22 and releases it, with what either choice brings', async () => {
    const cutter28 = await hands().operation(at.part28, 'Cutter on the arbor');
    await hands().go(cutter28);
    await follow(page(), 'Hold it for another operation');
    expect(await textIn(page())).toContain('now: ratios 476 to 828, one more setting-up');
    await page().check('label:has-text("H12-22T: Cutter on the arbor")');
    await press(page(), 'Save');
    expect(await textIn(page(), '.title-block')).toContain('held for “Cutter on the arbor” of H12-22T');
    await hands().go('/');
    expect(await textIn(page())).toContain('held');
    await hands().go(cutter28);
    await follow(page(), 'Held: change that or release it');
    await page().check('label:has-text("Do not hold it")');
    await press(page(), 'Save');
    expect(await textIn(page(), '.title-block')).not.toContain('held');
  });

  it('mandrel and No. 5 come in: what waited becomes ready, and the set-up is shared', async () => {
    await hands().addTool('mandrel', SPLINE_MANDREL);
    await hands().go(at.part22);
    expect(await textIn(page(), '#routing')).toContain('Waits for cutter No. 5, 8 DP, 14½°, for 22 teeth.');
    await hands().addTool('cutter', NO_5);
    for (const part of [at.part22, at.part28]) {
      await hands().go(part);
      expect(await textIn(page(), '#routing')).not.toMatch(/Waits (first of all )?for (mandrel|cutter)/);
    }
    await hands().go('/set-ups');
    const rows = await rowsIn(page(), 'main');
    const row = (name: string) => rows.find(([first]) => first === name)?.slice(1);
    // the 28 comes first: its cutter was owned
    expect(row('Crank for one division')).toEqual(['1 turn + 9 spaces on 21', '1 turn + 27 spaces on 33']);
    expect(row('Span')).toEqual(['over 3 teeth: 0.9693 in', 'over 2 teeth: 0.5850 in']);
    expect(row('Holes the sector shows')).toEqual(['10 holes', '28 holes']);
  });
}
