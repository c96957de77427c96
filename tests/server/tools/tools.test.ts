import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { figureOn, problemAt, rowOf, textOf, typedIn } from '../machines/read-page.ts';
import { storyOne } from '../machines/story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

type Form = Readonly<Record<string, string>>;
const at = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;
/** What the next page says of the change: the notice, read from its cookie. */
const said = (answer: { readonly cookies: readonly { name: string; value: string }[] }): string =>
  decodeURIComponent(answer.cookies.find(({ name }) => name === 'backgear-notice')?.value ?? '');

const NO_5: Form = {
  sizes: 'in',
  wear: 'sharp',
  steel: 'high-speed',
  pitch: '8 DP',
  angle: '14 1/2',
  teeth: '21 to 25',
  number: '5',
  stampedDepth: '0.2696',
  hole: '1',
  diameter: '2 7/8',
};
const EVERY_KIND: Readonly<Record<string, Form>> = {
  cutter: NO_5,
  plate: { sizes: 'in', wear: 'sharp', side1: '15 16 17 18 19 20', side2: '21,23,27' },
  head: {
    ...{ sizes: 'in', wear: 'sharp', turns: '40', backPin: 'yes', reached: '20 33', gears: '24, 24, 40', oneIdler: 'with' },
    ...{ dialLines: '540', dialVernier: '6', lash: '1/12 turn' },
  },
  mandrel: { sizes: 'in', wear: 'sharp', bore: 'plain', boreDiameter: '3/4', holding: 'taper' },
  arbor: { sizes: 'in', wear: 'sharp', diameter: '7/8' },
  chuck: { sizes: 'in', wear: 'sharp', jaws: '3', diameter: '6 1/4', runOut: '0.002', topSpeed: '1200' },
  other: { sizes: 'in', wear: 'sharp', name: '1/4 BSF tap' },
};

describe('tools on record', () => {
  it.each(Object.entries(EVERY_KIND))('a %s goes in, is shown, and its form gives back what was typed', async (kind, form) => {
    const added = await send(shop, `/tools/new/${kind}`, form);
    expect(added.statusCode).toBe(303);
    const edit = await bodyOf(`${at(added)}/edit`);
    for (const name of [
      'side1',
      'turns',
      'reached',
      'gears',
      'dialLines',
      'dialVernier',
      'lash',
      'boreDiameter',
      'holding',
      'jaws',
      'runOut',
      'topSpeed',
      'stampedDepth',
      'hole',
      'diameter',
    ])
      if (form[name] && name !== 'diameter') expect(typedIn(edit, name)).toBe(form[name]);
    if (form['diameter']) expect(edit).toContain(`value="${form['diameter']}"`);
    expect((await visit(shop, at(added))).statusCode).toBe(200);
    expect(await bodyOf('/tools')).toContain(`href="${at(added)}"`);
  });

  it('shows a cutter by its sizes as typed, the other unit beside, and names it after what it is', async () => {
    const html = await bodyOf(at(await send(shop, '/tools/new/cutter', NO_5)));
    expect(html).toContain('<h1>Cutter No. 5, 8 DP</h1>');
    expect(figureOn(html, 'Depth as stamped')).toBe('0.2696 in');
    expect(figureOn(html, 'Diameter')).toBe('2 7/8 in');
    expect(textOf(html)).toContain('73.025 mm'); // derived: 2.875 × 25.4
    expect(figureOn(html, 'Pressure angle')).toBe('14.5 °');
    expect(textOf(html)).toContain('Cuts 21 to 25 teeth');
    expect(textOf(html)).not.toContain('Offered for nothing');
  });

  it('offers a cutter for nothing while pitch, angle or range is wanting, and says what is wanting', async () => {
    const bare = { ...NO_5, pitch: '', teeth: '' };
    const html = await bodyOf(at(await send(shop, '/tools/new/cutter', bare)));
    expect(textOf(html)).toContain('Offered for nothing until its pitch and tooth range are typed in');
    // published: the maker's treatise gives No. 5 as 21 to 25 teeth
    expect(textOf(html)).toContain('No. 5 cuts 21 to 25 teeth');
    expect(rowOf(await bodyOf('/tools'), 'Cutter No. 5').at(-1)).toContain('offered for nothing yet');
  });

  it('keeps a metric length metric, and shows it so in an inch form', async () => {
    const form = { ...EVERY_KIND['arbor'], diameter: '22 mm' };
    const where = at(await send(shop, '/tools/new/arbor', form));
    expect(figureOn(await bodyOf(where), 'Diameter')).toBe('22 mm');
    expect(await bodyOf(`${where}/edit`)).toContain('value="22 mm"');
  });

  it('a second sending of the same form acts once', async () => {
    const form = { ...NO_5, mark: 'once-only' };
    const [first, second] = [await send(shop, '/tools/new/cutter', form), await send(shop, '/tools/new/cutter', form)];
    expect(at(second)).toBe(at(first));
    expect((await bodyOf('/tools')).match(/Cutter No\. 5, 8 DP</g)).toHaveLength(1);
  });

  it('lists one kind page by page, each tool once', async () => {
    for (let n = 1; n <= 45; n++) await send(shop, '/tools/new/other', { ...EVERY_KIND['other'], name: `gauge ${n}` });
    const first = await bodyOf('/tools?kind=other');
    const next = /href="(\/tools\?kind=other&amp;before=\d+)"/.exec(first)?.[1]?.replace('&amp;', '&') ?? '';
    const second = await bodyOf(next);
    const names = [...`${first}${second}`.matchAll(/>(gauge \d+)</g)].map(([, name]) => name);
    expect(names).toHaveLength(45);
    expect(new Set(names).size).toBe(45);
    expect(names[0]).toBe('gauge 45');
  });
});

describe('the dial and the lash of a rotary table', () => {
  const TABLE: Form = { sizes: 'in', wear: 'sharp', turns: '90', dialOnly: 'yes' };
  const add = (typed: Form) => send(shop, '/tools/new/head', { ...TABLE, ...typed });

  // derived: a turn is 4°: 240 lines of 1′, 48 of 5′, 80 of 0.05°; a line of 1′ is 6 × 10″; 3′ are 3 lines, 1/80 turn
  it.each([
    [{ dialLines: '240', dialVernier: '6', lash: '3 lines' }, '240 lines of 1′, vernier of 6 to 10″', '1/80 turn = 3 lines = 3′'],
    [{ dialLines: '1′', dialVernier: '10″', lash: '3′' }, '240 lines of 1′, vernier of 6 to 10″', '1/80 turn = 3 lines = 3′'],
    [{ dialLines: "5'", dialVernier: '', lash: '0.05 turns' }, '48 lines of 5′, no vernier', '1/20 turn = 2.4 lines = 12′'],
    [{ dialLines: '0.05°', dialVernier: '', lash: '' }, '80 lines of 3′, no vernier', 'not measured'],
  ])('%j', async (typed, dial, lash) => {
    const added = await add(typed);
    expect(added.statusCode).toBe(303);
    const page = textOf(await bodyOf(at(added)));
    expect(page).toContain(dial);
    expect(page).toContain(lash);
    expect(page).toContain('takes none');
    const edit = await bodyOf(`${at(added)}/edit`);
    expect(['240', '48', '80']).toContain(typedIn(edit, 'dialLines'));
  });

  it.each([
    [{ dialLines: '7′' }, 'dialLines', 'no whole number of lines in a turn of 4°'],
    [{ dialLines: '240', dialVernier: '7″' }, 'dialVernier', 'no whole part of a line'],
    [{ dialLines: '', dialOnly: '', dialVernier: '6' }, 'dialLines', 'A vernier stands beside a dial'],
    [{ dialLines: '' }, 'dialLines', 'Without index plates it is divided by its dial'],
    [{ dialLines: '240', lash: '3' }, 'lash', 'is no lash'],
    [{ dialLines: '240', lash: '1 1/2 turn' }, 'lash', 'Less than a turn'],
    [{ dialLines: '240', lash: '240 lines' }, 'lash', 'Less than a turn'],
    [{ dialLines: '', dialOnly: '', lash: '3 lines' }, 'lash', 'in lines only where there is a dial'],
  ])('%j is refused beside its box', async (typed, box, says) => {
    const answer = await add(typed);
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, box)).toContain(says);
  });
});

describe('bad input', () => {
  const NONSENSE = ['abc', '-3', '0', '1e9', '99999999999999999999', '🦊', '<script>alert(1)</script>', '1/0', 'x'.repeat(5000)];

  it.each(Object.keys(EVERY_KIND))('nonsense in any box of a %s: the page as typed, never a 500, nothing kept', async (kind) => {
    const form = EVERY_KIND[kind] ?? {};
    const boxes = Object.keys(form).filter((name) => !['sizes', 'holding', 'number', 'backPin', 'name'].includes(name));
    for (const box of boxes)
      for (const text of NONSENSE) {
        const answer = await send(shop, `/tools/new/${kind}`, { ...form, [box]: text });
        expect([303, 422], `${kind} ${box} ${text.slice(0, 20)}`).toContain(answer.statusCode);
        expect(answer.body).not.toMatch(/<script>alert|undefined|NaN|\[object/);
        if (text === 'abc') expect(answer.statusCode, `${kind} ${box}`).toBe(422);
      }
    const empty = await send(shop, `/tools/new/${kind}`, {});
    expect(empty.statusCode).toBe(422);
  });

  it.each([
    ['teeth', '25 to 21', 'runs backwards'],
    ['teeth', '21', ''],
    ['teeth', '135 to a rack', ''],
    ['teeth', 'some', 'no range of teeth'],
    ['hole', '4', 'as large as the cutter'],
    ['exactFor', '40', 'It cuts 21 to 25 teeth'],
    ['pitch', '8', 'does not say which pitch'],
  ])('%s typed as %s: %s', async (name, text, problem) => {
    const answer = await send(shop, '/tools/new/cutter', { ...NO_5, [name]: text });
    expect(answer.statusCode).toBe(problem === '' ? 303 : 422);
    if (problem !== '') {
      expect(problemAt(answer.body, name)).toContain(problem);
      expect(typedIn(answer.body, name)).toBe(text);
      expect(typedIn(answer.body, 'stampedDepth')).toBe('0.2696');
    }
  });

  it.each([
    ['15 16 16', 'typed twice'],
    ['15 sixteen', 'no circle'],
    ['', 'begin with side 1'],
  ])('circles typed as “%s”: %s', async (side1, problem) => {
    const answer = await send(shop, '/tools/new/plate', { sizes: 'in', wear: 'sharp', side1, side2: '21' });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, 'side1')).toContain(problem);
  });

  it('a splined mandrel wants all of its bore', async () => {
    const answer = await send(shop, '/tools/new/mandrel', { ...EVERY_KIND['mandrel'], bore: 'splined' });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, 'splines')).toContain('how many splines');
  });

  it.each(['/tools/999', '/tools/abc', '/tools/-1', '/tools/999/edit', '/tools/new/hammer', '/tools?kind=hammer'])(
    '%s is not found',
    async (url) => {
      const answer = await visit(shop, url);
      expect(answer.statusCode).toBe(404);
      expect(answer.body).not.toMatch(/undefined|NaN/);
    },
  );
});

describe('lent, borrowed, blunt', () => {
  it('lends out and takes back; the names are for the shop and its paired devices', async () => {
    const where = at(await send(shop, '/tools/new/cutter', { ...NO_5, owner: 'E. Maltby' }));
    const lent = await send(shop, `${where}/lend`, { rev: '1', lentTo: 'R. Dunning', dueOn: '2026-04-01' });
    expect(said(lent)).toContain('is lent out');
    const own = textOf(await bodyOf(where));
    expect(own).toContain('lent out');
    expect(own).toContain('R. Dunning');
    expect(own).toContain('Due back 2026-04-01');
    for (const url of ['/tools', where, '/tools?kind=cutter']) {
      const looked = (await ask(shop, url, { peer: LAN_PEER })).body;
      expect(looked).toContain('lent out');
      expect(looked).not.toMatch(/Dunning|Maltby/);
      expect(looked).not.toContain('method="post"');
    }
    await send(shop, `${where}/back`, { rev: '2' });
    expect(textOf(await bodyOf(where))).not.toContain('Dunning');
    expect((await ask(shop, `${where}/edit`, { peer: LAN_PEER })).statusCode).toBe(403);
  });

  it('asks to whom it is lent, and for a day that there is', async () => {
    const where = at(await send(shop, '/tools/new/cutter', NO_5));
    const answer = await send(shop, `${where}/lend`, { rev: '1', lentTo: '', dueOn: '2026-02-30' });
    expect(answer.statusCode).toBe(422);
    expect(problemAt(answer.body, 'dueOn')).toContain('2026-02-30');
    expect(answer.body).toContain('<details open>');
  });

  it('a blunt cutter says so, and one taken off the list may be put back', async () => {
    const where = at(await send(shop, '/tools/new/cutter', NO_5));
    await send(shop, `${where}/wear`, { rev: '1', wear: 'dull' });
    expect(rowOf(await bodyOf('/tools'), 'Cutter No. 5, 8 DP')[1]).toBe('blunt');
    await send(shop, `${where}/retire`, { rev: '2' });
    expect(await bodyOf('/tools')).not.toContain(`href="${where}"`);
    await send(shop, `${where}/put-back`, { rev: '3' });
    expect(rowOf(await bodyOf('/tools'), 'Cutter No. 5, 8 DP')[1]).toBe('blunt');
  });
});

describe('two devices at once', () => {
  it('the second gets both versions; what is chosen stands, and nothing is lost', async () => {
    const where = at(await send(shop, '/tools/new/cutter', NO_5));
    await send(shop, `${where}/edit`, { ...NO_5, name: 'No. 5', keptIn: 'left box', rev: '1' });
    const late = await send(shop, `${where}/edit`, { ...NO_5, name: 'No. 5', keptIn: 'right box', width: '0.31', rev: '1' });
    expect(late.statusCode).toBe(409);
    const text = textOf(late.body);
    expect(text).toContain('left box');
    expect(text).toContain('right box');
    expect(textOf(await bodyOf(where))).toContain('left box');
    expect(typedIn(late.body, 'rev')).toBe('2');
    const kept = await send(shop, `${where}/edit`, { ...NO_5, name: 'No. 5', keptIn: 'left box', width: '0.31', rev: '2' });
    expect(kept.statusCode).toBe(303);
    expect(figureOn(await bodyOf(where), 'Width')).toBe('0.31 in');
  });

  it('a button pressed on a page that is out of date does nothing', async () => {
    const where = at(await send(shop, '/tools/new/cutter', NO_5));
    await send(shop, `${where}/wear`, { rev: '1', wear: 'dull' });
    expect((await send(shop, `${where}/wear`, { rev: '1', wear: 'worn out' })).statusCode).toBe(409);
    expect((await send(shop, `${where}/lend`, { rev: '1', lentTo: 'R. Dunning', dueOn: '' })).statusCode).toBe(409);
    expect(rowOf(await bodyOf('/tools'), 'Cutter No. 5, 8 DP')[1]).toBe('blunt');
  });
});

describe('what waited becomes ready', () => {
  /** The 22 of the first story, opened from the 31: it waits for its tools. */
  async function open22(): Promise<void> {
    const { set } = await storyOne(shop);
    const html = await bodyOf(set);
    const part = /href="\/parts\/(\d+)">22 teeth</.exec(html)?.[1] ?? '';
    const spare = /<tr id="item-(\d+)"><td[^>]*><a href="\/drawer\/\d+">31 teeth</.exec(html)?.[1] ?? '';
    expect((await send(shop, `${set}/open`, { choices: `${part}:${spare}` })).statusCode).toBe(303);
  }
  const waiting = async (): Promise<number> => {
    const rows = await shop.shops.own.selectFrom('need').select('kind').where('tool_id', 'is', null).where('kind', '=', 'cutter').execute();
    return rows.length;
  };

  it('a cutter bought meets what waited for it; lent out, it is missed again; back, it serves', async () => {
    await open22();
    const lacking = await waiting();
    expect(lacking).toBeGreaterThan(0);
    await send(shop, '/tools/new/cutter', { ...NO_5, teeth: '26 to 34', number: '4' });
    expect(await waiting()).toBe(lacking);
    const where = at(await send(shop, '/tools/new/cutter', NO_5));
    expect(await waiting()).toBe(0);
    expect(textOf(await bodyOf(where))).toContain('Work that counts on it');
    await send(shop, `${where}/lend`, { rev: '1', lentTo: 'the club', dueOn: '' });
    expect(await waiting()).toBe(lacking);
    await send(shop, `${where}/back`, { rev: '2' });
    expect(await waiting()).toBe(0);
    await send(shop, `${where}/wear`, { rev: '3', wear: 'dull' });
    expect(await waiting()).toBe(lacking);
  });

  it('the notice counts the operations that became ready, and those that now wait', async () => {
    await open22();
    const db = shop.shops.own;
    // everything done but what wants the cutter
    const wants = await db.selectFrom('need').select('operation_id').where('kind', '=', 'cutter').execute();
    const first = wants[0]?.operation_id ?? 0;
    await db.deleteFrom('need').where('kind', '!=', 'cutter').execute();
    await db.updateTable('operation').set({ done_on: '2026-03-01' }).where('id', '!=', first).execute();
    // a cutter whose hole no arbor takes makes nothing ready; with the arbor it does
    await send(shop, '/tools/new/arbor', { ...EVERY_KIND['arbor'], diameter: '7/8' });
    const loan = await send(shop, '/tools/new/cutter', NO_5);
    expect(said(loan)).not.toContain('ready now');
    expect(textOf(await bodyOf(at(loan)))).toContain('owned: 7/8 in.');
    await db.updateTable('tool').set({ gone_on: '2026-03-01' }).where('kind', '=', 'cutter').execute();
    await send(shop, '/tools/new/arbor', { ...EVERY_KIND['arbor'], diameter: '1' });
    const bought = await send(shop, '/tools/new/cutter', NO_5);
    expect(said(bought)).toContain('One operation is ready now.');
    const lent = await send(shop, `${at(bought)}/lend`, { rev: '1', lentTo: 'the club', dueOn: '' });
    expect(said(lent)).toContain('One operation waits now.');
    const other = await send(shop, '/tools/new/other', EVERY_KIND['other'] ?? {});
    expect(said(other)).not.toMatch(/operation/);
  });
});

it('a tool that is waited for by name comes with the name typed, cut to what a name may hold', async () => {
  const name = 'keyway tool, 0.2500 in wide (broach or slotting tool)';
  expect(typedIn(await bodyOf(`/tools/new/other?name=${encodeURIComponent(name)}`), 'name')).toBe(name);
  expect(typedIn(await bodyOf(`/tools/new/other?name=${'x'.repeat(400)}`), 'name')).toHaveLength(120);
  expect(typedIn(await bodyOf('/tools/new/other'), 'name')).toBe('');
});
