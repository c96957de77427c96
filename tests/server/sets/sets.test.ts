import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureOn, problemAt, rowOf, rowsOf, sectionOf, textOf, typedIn } from '../machines/read-page.ts';
import { cutterNumberFour, machine, SET, storyOne } from '../machines/story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;
/** The id of the part of so many teeth, and of the spare of so many. */
const partOf = (html: string, teeth: number): string => new RegExp(`href="/parts/(\\d+)">${teeth} teeth<`).exec(html)?.[1] ?? '';
const spareOf = (html: string, teeth: number): string =>
  new RegExp(`<tr id="item-(\\d+)"><td[^>]*><a href="/drawer/\\d+">${teeth} teeth<`).exec(html)?.[1] ?? '';

describe('story 1 on the page of its set (derived, and story)', () => {
  it('13 gears, 22 and 28 missing, five spares', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    expect(textOf(html)).toContain('13 gears in the drawer. Of 10 that belong 8 are there. Missing: 22, 28. Spare: 19, 25, 31, 34, 46.');
    const states = rowsOf(sectionOf(html, 'wheels'))
      .slice(1)
      .map(([wheel, state]) => `${wheel} ${state}`);
    expect(states.filter((one) => one.endsWith('missing'))).toEqual(['22 teeth missing', '28 teeth missing']);
    expect(states.filter((one) => one.endsWith('spare'))).toEqual(['19', '25', '31', '34', '46'].map((teeth) => `${teeth} teeth spare`));
    expect(states).toHaveLength(15);
  });

  it('31 becomes 22 and 34 becomes 28, with the sizes of both', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const blanks = sectionOf(html, 'blanks');
    expect(textOf(blanks)).toContain('31 becomes 22; 34 becomes 28.');
    const [of22, of28] = [sectionOf(html, `blank-${partOf(html, 22)}`), sectionOf(html, `blank-${partOf(html, 28)}`)];
    const read = (part: string) =>
      [
        'New outside',
        'Old outside',
        'Old root, worked out',
        'Turn off a side',
        'Of it through the old teeth',
        'Whole depth',
        'New root',
      ].map((label) => figureOn(part, label));
    expect(read(of22)).toEqual(['3.0000 in', '4.1250 in', '3.5858 in', '0.5625 in', '0.2696 in', '0.2696 in', '2.4608 in']);
    expect(read(of28)).toEqual(['3.7500 in', '4.5000 in', '3.9608 in', '0.3750 in', '0.2696 in', '0.2696 in', '3.2108 in']);
    // derived: (2.4608 − 1.250) ÷ 2 = 0.6054 and (3.2108 − 1.250) ÷ 2 = 0.9804; the story prints 0.605 and 0.980
    expect(figureOn(of22, 'Wall from new root to bottom of the splines')).toBe('0.6054 in');
    expect(figureOn(of28, 'Wall from new root to bottom of the splines')).toBe('0.9804 in');
  });

  it('says why each other spare will not do', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const rows = (teeth: number) =>
      rowsOf(sectionOf(html, `blank-${partOf(html, teeth)}`))
        .filter(([name = '']) => /^\d+T/.test(name))
        .map(([name = '', state, why]) => [name.slice(0, 3), state, why]);
    const for22 = rows(22);
    expect(for22).toContainEqual(['25T', 'too small', '25 teeth is too small: the old gaps would stay 0.082 in deep.']);
    expect(for22.filter(([, state]) => state === 'cleans up').map(([name]) => name)).toEqual(['31T', '34T', '46T']);
    const titles = [22, 28].map((teeth) => textOf(sectionOf(html, `blank-${partOf(html, teeth)}`)));
    expect(titles[0]).toContain('Every spare held against the 22, which takes 27 teeth or more of its pitch');
    expect(titles[1]).toContain('Every spare held against the 28, which takes 33 teeth or more of its pitch');
    const for28 = rows(28);
    expect(for28.filter(([, state]) => state === 'cleans up').map(([name]) => name)).toEqual(['34T', '46T']);
    expect(for28.find(([name]) => name === '31T')?.[1]).toBe('too small');
  });

  it('counts what the gaps cost, each count by its name', async () => {
    const { set } = await storyOne(shop);
    const cost = sectionOf(await bodyOf(set), 'cost');
    const [each, really] = ['one wheel of each number', 'the wheels that really lie there'];
    expect(figureOn(cost, `Ratios of the complete set, ${each}`)).toBe('1,350 ratios');
    expect(figureOn(cost, `Ratios today, ${each}`)).toBe('476 ratios');
    expect(figureOn(cost, `Ratios lost today, ${each}`)).toBe('874 ratios');
    expect(figureOn(cost, `Ratios today, ${really}`)).toBe('707 ratios');
    expect(figureOn(cost, `Ratios with all made, ${really}`)).toBe('1,573 ratios');
    expect(rowOf(cost, '22').slice(1, 3)).toEqual(['31', '828']);
    expect(rowOf(cost, '28').slice(1, 3)).toEqual(['34', '828']);
    expect(cost).toMatch(/476 kept<[\s\S]*874 lost/);
  });

  it('the 28 first, because its cutter is owned', async () => {
    const { set } = await storyOne(shop);
    await cutterNumberFour(shop);
    expect(textOf(sectionOf(await bodyOf(set), 'cost'))).toContain('A tie at 828; the 28 first: its cutter is owned.');
  });

  it('a recessed 46 fails for both, and the page names the recess', async () => {
    const { set } = await storyOne(shop, { ...SET, drawer: '19x2, 25x2, 31x2, 34x2, 37, 41, 46, 52' });
    const pattern = { name: SET.name, sets: SET.sets, notes: '', pitch: SET.pitch, system: SET.system, sizes: 'in' };
    const recessed = {
      ...pattern,
      face: '0.875',
      bore: 'splined',
      boreDiameter: '1.250',
      boreMinor: '1.0625',
      splines: '6',
      keyWidth: '0.3125',
    };
    // Only the 46 that is added after the pattern has a recess is recessed: the others were wheels of their own before.
    const rev = typedIn(await bodyOf(`${set}/edit`), 'rev');
    await shop.shops.own.updateTable('wheel_set').set({ pattern: null }).execute();
    await send(shop, set, { ...recessed, body: 'hollow', recesses: 'both 1.9 to 4.6', openings: '', rev });
    await send(shop, `${set}/wheels`, { belongs: '', drawer: '46', material: 'steel', hardness: 'file bites', trust: 'original' });
    const html = await bodyOf(set);
    for (const teeth of [22, 28]) {
      const rows = rowsOf(sectionOf(html, `blank-${partOf(html, teeth)}`)).filter(([name = '']) => name.startsWith('46T'));
      const refused = rows.filter(([, state]) => state === 'will not do');
      expect(refused).toHaveLength(1);
      expect(refused[0]?.[2]).toContain('the recess between 1.9000 in and 4.6000 in on both sides');
      // The sound one of the two is on the machine; it may be cut, since its like can take its place.
      expect(rows.filter(([, state]) => state === 'cleans up')).toHaveLength(1);
    }
  });

  it('insisting on the 34 for the 22 forces the sound 46 into the 28, and names the rule', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const forced = await bodyOf(`${set}?make=${partOf(html, 22)}&from=${spareOf(html, 34)}`);
    const says = textOf(sectionOf(forced, 'blanks'));
    expect(says).toContain('Taking 34 for the 22 forces the 46 into the 28');
    expect(says).toContain('It breaks the rule: least metal removed.');
    const before = /<section id="blanks">[\s\S]*?<p class="says">([^<]*)</.exec(html)?.[1] ?? 'no sentence';
    expect(says).not.toContain(textOf(before));
    expect(html.indexOf('id="blanks"')).toBeLessThan(html.indexOf('id="cost"'));
    const refused = await bodyOf(`${set}?make=${partOf(html, 22)}&from=${spareOf(html, 25)}`);
    expect(textOf(sectionOf(refused, 'blanks'))).toContain('the old gaps would stay 0.0821 in deep');
    expect(textOf(sectionOf(refused, 'blanks'))).not.toContain('all the same');
  });

  it('one button opens both routings; sent twice, once', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const [choices, mark] = [typedIn(sectionOf(html, 'blanks'), 'choices'), typedIn(sectionOf(html, 'blanks'), 'mark')];
    expect(choices).toBe(`${partOf(html, 22)}:${spareOf(html, 31)},${partOf(html, 28)}:${spareOf(html, 34)}`);
    expect(at(await send(shop, `${set}/open`, { choices, mark }))).toBe(set);
    expect((await send(shop, `${set}/open`, { choices, mark })).statusCode).toBe(303);
    expect(await shop.shops.own.selectFrom('routing').selectAll().execute()).toHaveLength(2);
    const after = await bodyOf(set);
    expect(rowOf(after, '22 teeth')[1]).toBe('being made');
    const promised = rowsOf(sectionOf(after, 'wheels')).filter(([, state]) => state === 'promised');
    expect(promised.map(([wheel, , , , what]) => `${wheel} ${what}`)).toEqual([
      '31 teeth promised for the 22',
      '34 teeth promised for the 28',
    ]);
    expect(after).not.toContain('name="choices"');
    // What they cost is still counted: nothing has been cut yet.
    expect(figureOn(after, 'Ratios today, one wheel of each number')).toBe('476 ratios');
    expect(figureOn(after, 'Ratios with all made, the wheels that really lie there')).toBe('1,573 ratios');
  });

  it('a blank that is taken meanwhile is refused in words, and nothing is opened', async () => {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const [of22, of28, the31, the34] = [partOf(html, 22), partOf(html, 28), spareOf(html, 31), spareOf(html, 34)];
    await send(shop, `/parts/${of22}/promise`, { way: 're-cut a spare', item: the34 });
    const late = await send(shop, `${set}/open`, { choices: `${of28}:${the34}` });
    expect(late.statusCode).toBe(422);
    expect(textOf(late.body)).toContain('This one is taken');
    const both = await send(shop, `${set}/open`, { choices: `${of22}:${the31},${of28}:${the31}` });
    expect(both.statusCode).toBe(422);
    expect(await shop.shops.own.selectFrom('routing').selectAll().execute()).toHaveLength(1);
  });

  it.each(['', 'x', '1', '1:2:3', '999:998', `1:${'9'.repeat(20)}`, '<script>'])(
    'choices of “%s” are refused in words',
    async (choices) => {
      const { set } = await storyOne(shop);
      const answer = await send(shop, `${set}/open`, { choices });
      expect(answer.statusCode).toBe(422);
      expect(answer.body).toContain('class="problem whole"');
    },
  );
});

describe('the two lines of a set', () => {
  const tried = async (over: Readonly<Record<string, string>>) => send(shop, `${await machine(shop)}/sets`, { ...SET, ...over });

  it.each([
    ['letters', { belongs: '19, twenty' }, 'belongs', '“twenty” could not be read'],
    ['a billion teeth', { drawer: '1000000000' }, 'drawer', '“1000000000” could not be read'],
    ['no tooth', { drawer: '0' }, 'drawer', 'a wheel has from 6 to 500 teeth'],
    ['too many wheels', { drawer: '20-80x20' }, 'drawer', 'at most 300'],
    ['a bore through the roots', { belongs: '10, 22' }, 'belongs', 'The bore would cut through the roots of 10 teeth.'],
    ['a bare pitch', { pitch: '8' }, 'pitch', 'does not say which pitch'],
    ['a spline without its count', { splines: '' }, 'splines', 'Type how many splines'],
    ['no assembly', { newAssembly: '' }, 'newAssembly', 'Type which part of the machine it belongs to'],
    ['no name', { name: '  ' }, 'name', 'This box is empty'],
    ['another word for what it sets', { sets: 'clocks' }, 'sets', 'is none of'],
  ])('refuse %s beside the field, and give back what was typed', async (_, over, field, says) => {
    const answer = await tried(over);
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, field)).toContain(says);
    expect(typedIn(answer.body, 'boreMinor')).toBe('1.0625');
    expect(await shop.shops.own.selectFrom('part').selectAll().execute()).toHaveLength(0);
    expect(await shop.shops.own.selectFrom('assembly').selectAll().execute()).toHaveLength(0);
  });

  it('every wheel that belongs is a part from the start, and each has a mark', async () => {
    await storyOne(shop);
    const marks = (await shop.shops.own.selectFrom('part').select('mark').orderBy('id').execute()).map(({ mark }) => mark);
    expect(marks.slice(0, 3)).toEqual(['H12-19T', 'H12-22T', 'H12-25T']);
    expect(marks).toHaveLength(10);
  });

  it('sizes in millimetres keep their unit beside the box', async () => {
    const where = await machine(shop);
    const form = await bodyOf(`${where}/sets/new?sizes=mm`);
    expect(form).toContain('<span class="unit">mm</span>');
    const set = at(
      await send(shop, `${where}/sets`, {
        ...SET,
        sizes: 'mm',
        pitch: 'module 2.5',
        system: 'module-1.25',
        face: '20',
        boreDiameter: '30',
        boreMinor: '26',
        keyWidth: '6',
        belongs: '30, 40',
        drawer: '30, 48',
      }),
    );
    const html = await bodyOf(set);
    expect(textOf(html)).toContain('module 2.5');
    // derived: 40 teeth of module 2.5: (40 + 2) × 2.5 = 105 mm
    expect(figureOn(html, 'New outside')).toBe('105.000 mm');
  });

  it('more than sixty wheels are not counted, and the page says so', async () => {
    const { set } = await storyOne(shop, {
      ...SET,
      bore: '',
      boreDiameter: '',
      boreMinor: '',
      splines: '',
      keyWidth: '',
      belongs: '20-90',
      drawer: '20-88',
    });
    const page = await visit(shop, set);
    expect(page.statusCode).toBe(200);
    expect(textOf(sectionOf(page.body, 'cost'))).toContain('At most 60 can be counted at once');
  });

  it('a set with nothing missing has no cost and no blanks', async () => {
    const { set } = await storyOne(shop, { ...SET, belongs: '19, 25', drawer: '19, 25, 31' });
    const html = await bodyOf(set);
    expect(html).not.toContain('id="cost"');
    expect(html).not.toContain('id="blanks"');
    expect(textOf(html)).toContain('all there');
  });

  it('wheels never measured are doubtful, and no blank is promised from them', async () => {
    const { set } = await storyOne(shop, { ...SET, body: 'unknown', hardness: 'not tried' });
    const html = await bodyOf(set);
    expect(textOf(sectionOf(html, 'blanks'))).toContain('No spare becomes any of them yet: measure those that are large enough.');
    expect(textOf(html)).toMatch(
      /28 teeth: measure a spare first Large enough, but not yet measured: 34T, no\. \d+; 46T, no\. \d+\. Stock/,
    );
    expect(html).not.toContain('name="choices"');
    const [, state, , , mind] = rowsOf(sectionOf(html, 'wheels')).find(([, word]) => word?.startsWith('spare')) ?? [];
    expect([state, mind]).toEqual(['spare, not all measured', 'over; to be measured: where the metal is, file test']);
  });

  it('wheels that stand as the pattern had them follow it; one changed by itself stays', async () => {
    const { set } = await storyOne(shop, { ...SET, face: '' });
    const first = (await bodyOf(set)).match(/href="\/parts\/(\d+)">19 teeth/)?.[1];
    const edit = await bodyOf(`/parts/${first}/edit`);
    const own = {
      name: 'Change gear 19',
      assembly: '1',
      newAssembly: '',
      set: '1',
      material: '',
      notes: '',
      as: 'wheel',
      sizes: 'in',
      teeth: '19',
    };
    const typed = {
      pitch: '8 DP',
      system: 'full-14.5',
      bore: 'splined',
      boreDiameter: '1.25',
      boreMinor: '1.0625',
      splines: '6',
      keyWidth: '0.3125',
      body: 'solid',
    };
    await send(shop, `/parts/${first}`, { ...own, ...typed, face: '0.750', rev: typedIn(edit, 'rev') });
    const rev = typedIn(await bodyOf(`${set}/edit`), 'rev');
    await send(shop, set, { name: SET.name, sets: SET.sets, notes: '', sizes: 'in', ...typed, face: '0.875', rev });
    const faces = await shop.shops.own.selectFrom('gear').select(['teeth', 'face_nm']).execute();
    expect(faces.filter(({ face_nm }) => face_nm === 22_225_000)).toHaveLength(22);
    expect(faces.filter(({ face_nm }) => face_nm === 19_050_000).map(({ teeth }) => teeth)).toEqual([19]);
  });

  it.each(['/sets/9', '/sets/x', '/sets/9/edit', '/sets/9/wheels', '/machines/9/sets/new'])('%s is not found', async (url) => {
    expect((await visit(shop, url)).statusCode).toBe(404);
  });

  it('two devices change the set: both versions side by side', async () => {
    const { set } = await storyOne(shop);
    const rev = typedIn(await bodyOf(`${set}/edit`), 'rev');
    const form = { ...SET, rev };
    await send(shop, set, { ...form, notes: 'door plate photographed' });
    const clash = await send(shop, set, { ...form, name: 'Index wheels' });
    expect(clash.statusCode).toBe(409);
    expect(textOf(clash.body)).toContain('door plate photographed');
    expect(textOf(clash.body)).toContain('Index wheels');
  });
});

it('where this drawer holds nothing that serves, a spare of another is offered and said to lie elsewhere', async () => {
  const { machine: where } = await storyOne(shop);
  const bore = { bore: SET.bore, boreDiameter: SET.boreDiameter, boreMinor: SET.boreMinor, splines: SET.splines, keyWidth: SET.keyWidth };
  const other = { ...SET, ...bore, name: 'Feed wheels', assembly: '1', newAssembly: '', belongs: '30, 40', drawer: '30' };
  const html = await bodyOf(at(await send(shop, `${where}/sets`, other)));
  // 40 teeth want 45 or more of the same pitch (story: N + 4.314): only the 46 of the index wheels serves.
  expect(textOf(sectionOf(html, 'blanks'))).toContain('46 becomes 40.');
  expect(textOf(sectionOf(html, `blank-${partOf(html, 40)}`))).toContain('lies outside the drawer of this set');
  expect(rowOf(sectionOf(html, 'cost'), '40')[1]).toBe('46, another drawer');
});

it('a set of one wheel, there or missing, has its page: it gives 1 to 1 and nothing else', async () => {
  for (const drawer of ['', '40']) {
    const { set } = await storyOne(shop, { ...SET, belongs: '40', drawer });
    const answer = await visit(shop, set);
    expect(answer.statusCode).toBe(200);
    expect(textOf(answer.body)).toContain('Of 1 that belong');
    expect(answer.body).not.toMatch(/NaN|Infinity/);
  }
});

it('names hard metal and worn teeth beside a spare, and says nothing of a soft and good one', async () => {
  const { set } = await storyOne(shop);
  const [one, other] = [spareOf(await bodyOf(set), 34), spareOf(await bodyOf(set), 31)];
  const change = (id: string, to: { hardness?: 'case hard'; condition?: string }) =>
    shop.shops.own.updateTable('item').set(to).where('id', '=', Number(id)).execute();
  await change(one, { hardness: 'case hard', condition: 'teeth worn, bore good' });
  await change(other, { condition: 'teeth good, bore good' });
  const cells = async (id: string): Promise<string> => new RegExp(`<tr id="item-${id}">[\\s\\S]*?</tr>`).exec(await bodyOf(set))?.[0] ?? '';
  expect(await cells(one)).toContain('case-hardened; teeth worn');
  expect(await cells(one)).not.toContain('bore');
  expect(await cells(other)).not.toMatch(/hard|worn|teeth good/);
});

it('two like wheels missing: no id stands twice on the page', async () => {
  const { set } = await storyOne(shop, { ...SET, belongs: '19, 22x2, 25' });
  const ids = [...(await bodyOf(set)).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(ids.length).toBeGreaterThan(20);
  expect(new Set(ids).size).toBe(ids.length);
});
