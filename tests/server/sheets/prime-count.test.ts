import { expect, test } from 'vitest';
import { send } from '../app-for-tests.ts';
import { linesOn, plain } from './read-sheet.ts';
import { GEARS, toBeCut } from './to-be-cut.ts';

// Story 4, and 57 by two pins. Typed from the story, derived there.

test('71: the index sheet sets the gears, draws them, proves the move and names each false count', async () => {
  const { operation, body } = await toBeCut(71, { gears: GEARS });
  const html = await body(`/operations/${await operation('nick')}/index-sheet`);
  const facts = linesOn(html, 'fact');
  expect(facts.get('crank')?.text).toBe('10 spaces on 18');
  expect(facts.get('sector')?.text).toContain('10 spaces = 11 holes');
  expect(facts.get('gears')?.text).toBe('40 on the spindle, 72 on the plate’s shaft');
  expect(facts.get('idlers')?.text).toContain('not tried on this head');
  expect(facts.get('plate-turns')?.text).toContain('5/9 a turn of the spindle, with the crank');
  expect(plain(html)).toContain(
    '71 moves of 10 spaces on 18 make 39 4/9 turns against the plate, and 5/9 of the plate: 40; the head takes 40.',
  );
  expect(plain(html)).toContain('71 is right, 73 a wrong idler, 72 a locked plate');
  const drawing = /<figure class="gears">([\s\S]*?)<\/figure>/.exec(html)?.[1] ?? '';
  expect(drawing).toMatch(/>40</);
  expect(drawing).toMatch(/>72</);
  expect(plain(drawing)).toContain('The plate turns with the crank');
});

test('71: counted on the phone page, tooth by tooth, and still there when it is opened again', async () => {
  const { shop, operation, body } = await toBeCut(71, { gears: GEARS, oneIdler: 'with' });
  const nick = await operation('nick');
  for (const tooth of ['1', '2', '2']) await send(shop, `/operations/${nick}/teeth/cut`, { tooth });
  const html = await body(`/operations/${nick}/teeth`);
  expect(plain(html)).toContain('2 of 72 done');
  // derived: two moves of 10 on a circle of 18: 20 − 18
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('hole 2');
});

test('57 by two pins: both moves and both holes', async () => {
  const { shop, operation, body } = await toBeCut(57, { backPin: true });
  const nick = await operation('nick');
  const sheet = await body(`/operations/${nick}/index-sheet`);
  const facts = linesOn(sheet, 'fact');
  expect(facts.get('crank')?.text).toBe('5 spaces on 15, then plate and crank 7 spaces on 19 the same way');
  expect(facts.get('back-sector')?.text).toContain('7 spaces = 8 holes');
  expect(plain(sheet)).toContain('make 40 turns; the head takes 40');
  expect(sheet).not.toContain('class="gears"');
  // derived: two moves: 10 on 15 and 14 on 19; three moves: 15 − 15 = 0 and 21 − 19
  expect(sheet).toContain('<b>10 · 14</b>');
  expect(sheet).toContain('<b>0 · 2</b>');
  for (const tooth of ['1', '2']) await send(shop, `/operations/${nick}/teeth/cut`, { tooth });
  const html = await body(`/operations/${nick}/teeth`);
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('hole 10, back pin 14');
  expect(plain(html)).toContain('Then lift the back pin: plate and crank together 7 spaces on 19 the same way.');
});

test('71 on the route sheet: gears, idlers and the plate’s turning stand at the plate', async () => {
  const { part, body } = await toBeCut(71, { gears: GEARS });
  const sheet = await body(`/parts/${part.id}/sheet`);
  const text = plain(sheet);
  expect(sheet).toContain('class="gears"');
  expect(text).toContain('40 on the spindle, 72 on the plate’s shaft');
  expect(text).toContain('Plate stop out');
  expect(text).toContain('If the plate turns the wrong way 73 w = 2 × 40 × 18 ÷ 10 − 71');
  expect(text).toContain('If the plate is left locked 72');
});

test('71 on the part page: the gears are drawn under the routing', async () => {
  const { part, body } = await toBeCut(71, { gears: GEARS, oneIdler: 'against' });
  const html = await body(`/parts/${part.id}`);
  expect(plain(html)).toContain('40 on the spindle, 72 on the plate’s shaft; two idlers. The plate turns with the crank.');
  expect(/<title>Gears from the spindle to the plate<\/title><desc>([^<]*)/.exec(html)?.[1]).toMatch(
    /spindle: 40.*idler 1.*idler 2.*plate: 72/,
  );
});

test('71 on the page of the operation that sets the plate: the same picture, and only there', async () => {
  const { part, body } = await toBeCut(71, { gears: GEARS, oneIdler: 'with' });
  const operations = [
    ...new Set([...(await body(`/parts/${part.id}`)).matchAll(/href="(\/operations\/\d+)"/g)].map(([, href]) => href ?? '')),
  ];
  const drawn = await Promise.all(
    operations.map(async (href) => (await body(href)).includes('<title>Gears from the spindle to the plate</title>')),
  );
  const titles = await Promise.all(operations.map(async (href) => /<h1[^>]*>([^<]*)/.exec(await body(href))?.[1] ?? ''));
  expect(titles.filter((_, at) => drawn[at])).not.toEqual([]);
  expect(drawn.filter((one) => !one).length).toBeGreaterThan(10);
});
