import { expect, test } from 'vitest';
import { send } from '../app-for-tests.ts';
import { linesOn, plain } from './read-sheet.ts';
import { toBeCut } from './to-be-cut.ts';

// derived by hand: 90 turns of 240 lines and a vernier of 6 are 129,600 readings of 10″ each.
const TABLE = { turns: 90, dialOnly: true, dial: { perTurn: 240, vernier: 6, near: true }, lash: [1, 80] } as const;

test('71 by a dial: turns, line and vernier of every tooth, how far each is off, and the worst', async () => {
  const { operation, body } = await toBeCut(71, TABLE);
  const html = await body(`/operations/${await operation('nick')}/index-sheet`);
  const facts = linesOn(html, 'fact');
  // derived: 129600 ÷ 71 = 1825.35: 1440 + 64 × 6 + 1
  expect(facts.get('crank')?.text).toBe('1 turn, line 64, vernier 1');
  expect(facts.get('least')?.text).toBe('10.000″');
  // derived: 35/71 of 10″
  expect(facts.get('worst')?.text).toMatch(/^\d+, off by 4\.930″$/);
  // derived: 1/80 turn of 240 lines is 3, and one more
  expect(plain(html)).toContain('Gone past: back 4 lines or more, then up to the line again.');
  expect(html).toContain('Line · vernier');
  expect(html).toContain('Off ″');
  expect(html).toContain('<b>64 · 1</b>');
  // derived: 0.352 of a reading short
  expect(html).toMatch(/<b>64 · 1<\/b><\/td><td>−3\.5</);
  expect(plain(html)).toContain('make 90 turns; the table takes 90');
  expect(html).not.toContain('Circle of');
});

test('71 by a dial at the machine: where to stop, by how much it is off, how far to go back', async () => {
  const { shop, operation, body } = await toBeCut(71, TABLE);
  const nick = await operation('nick');
  await send(shop, `/operations/${nick}/teeth/cut`, { tooth: '1' });
  const html = await body(`/operations/${nick}/teeth`);
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('1 turn, line 64, vernier 1');
  // derived: 1825 readings of 10″ are 5°4′10″
  expect(plain(html)).toContain('From line 0, vernier 0: the 0 of the dial passes once. The table stands at 5°4′10″; 3.5″ short.');
  expect(plain(html)).toContain('Gone past: back 4 lines or more, then up again.');
});

test('24 fall on the lines: exact, and no column for what is off', async () => {
  const { operation, body } = await toBeCut(24, TABLE);
  const html = await body(`/operations/${await operation('nick')}/index-sheet`);
  // derived: 5400 readings: 3 turns and 1080, 180 lines
  expect(linesOn(html, 'fact').get('crank')?.text).toBe('3 turns, line 180, vernier 0');
  expect(linesOn(html, 'fact').get('worst')?.text).toContain('none: every tooth falls on a line');
  expect(html).not.toContain('Off ″');
});

test('what falls between the lines is not set down unless the owner of the table wants it', async () => {
  const { part, body } = await toBeCut(71, { ...TABLE, dial: { ...TABLE.dial, near: false } });
  const html = plain(await body(`/parts/${part.id}`));
  expect(html).toContain('71 is prime');
  expect(html).toContain('the worst tooth would be off by 4.9″');
  expect(html).not.toContain('line 64');
});

test('the route sheet says the table, its error at the pitch line, and the lash', async () => {
  const { part, body } = await toBeCut(71, TABLE);
  const text = plain(await body(`/parts/${part.id}/sheet`));
  expect(text).toContain('Table, handwheel and dial');
  // derived: 4.930″ on a radius of 71/32 in: 0.0000530
  expect(text).toContain('The same at the pitch line 0.00005');
  expect(text).toContain('Lash: gone past, go back by 4');
});

test('a head whose lash is known says how many holes to go back', async () => {
  const { operation, body } = await toBeCut(22, { lash: [1, 12] });
  const nick = await operation('nick');
  // derived: 1/12 of 33 is 2 3/4
  expect(plain(await body(`/operations/${nick}/index-sheet`))).toContain('Gone past: back 3 holes or more, then up to the hole again.');
  expect(plain(await body(`/operations/${nick}/teeth`))).toContain('Gone past: back 3 holes or more, then up again.');
});
