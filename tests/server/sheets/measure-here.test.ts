import { afterEach, beforeEach, expect, test } from 'vitest';
import { noteMeasured, type OperationLine } from '../../../db/operations.ts';
import { inches } from '../../../lib/values/length.ts';
import { NOW, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { textOf } from '../machines/read-page.ts';
import { type FirstStory, firstStory } from './first-story.ts';
import { figuresOn, plain } from './read-sheet.ts';

let shop: TestShop;
let story: FirstStory;
beforeEach(async () => {
  shop = await shopForTests();
  story = await firstStory(shop.shops.own);
});
afterEach(() => shop.close());

const body = async (url: string): Promise<string> => (await visit(shop, url)).body;
const sheet = async () => figuresOn(await body(`/parts/${story.parts[22]}/sheet`));
const note = ({ id, rev }: OperationLine, figure: string, size: number) =>
  noteMeasured(shop.shops.own, id, rev, [
    { figure, reading: { what: figure, value: { length: inches(size) }, read_on: NOW, instrument: '' } },
  ]);

test('an old root that nobody measured is no size to work to: the sheet says to measure it, and keeps the worked-out one apart', async () => {
  const row = (await sheet()).get('sound-oldRoot');
  expect(row).toMatchObject({ label: 'Old root, worked out', size: 'measure', measured: 'write here' });
  // derived: (31 − 2 × 1.157) ÷ 8
  expect(row?.working).toMatch(/^worked out: 3\.5858 in; Dr = /);
  await note(await story.operation(22, 'sound'), 'oldRoot', 3.584);
  const read = (await sheet()).get('sound-oldRoot');
  expect(read).toMatchObject({ label: 'Old root, measured', size: 'as measured', measured: '3.5840 in' });
  expect(read?.size).not.toMatch(/\d/);
});

test('the drawing on the sheet says so as well, until the root is read', async () => {
  const drawn = async () => plain(await body(`/parts/${story.parts[22]}/sheet`));
  expect(await drawn()).toContain('old root 3.5858 in (not measured)');
  expect(await body(`/parts/${story.parts[22]}/sheet`)).toMatch(/>not measured<\/text>/);
  await note(await story.operation(22, 'sound'), 'oldRoot', 3.584);
  expect(await drawn()).toContain('old root 3.5840 in');
  expect(await drawn()).not.toContain('(not measured)');
});

test('a size to work to stands there as ever, with its limits and its box', async () => {
  const row = (await sheet()).get('blank-outside');
  expect(row).toMatchObject({ label: 'Outside diameter', size: '3.0000 in', measured: 'write here' });
  expect(row?.working).toContain('2.9975 to 3.0000 in');
});

test('at the machine nobody takes the worked-out root for one to work to', async () => {
  const { id } = await story.operation(22, 'sound');
  const before = textOf(await body(`/operations/${id}/at-machine`));
  expect(before).toContain('Old root measure it');
  expect(before).toContain('Worked out 3.5858 in: not measured.');
  await note(await story.operation(22, 'sound'), 'oldRoot', 3.584);
  expect(textOf(await body(`/operations/${id}/at-machine`))).toContain('Old root, measured 3.5840 in');
});

/** What is only a limit, on the page and on paper. */
const LIMITS = /[rR]unOut$|^shift$|-shift$/;

test('no limit stands before what is set: on the page of an operation, at the machine, and on the sheet', async () => {
  const keysOn = (html: string): string[] => [...html.matchAll(/data-figure="([^"]+)"/g)].map(([, key = '']) => key);
  for (const key of ['central', 'blank', 'touch', 'rough', 'measure', 'last-cuts', 'solid']) {
    const { id } = await story.operation(22, key);
    const page = await body(`/operations/${id}`);
    const keys = keysOn(page);
    expect(keys[0], key).not.toMatch(LIMITS);
    const label = new RegExp(`data-figure="${keys[0]}"[\\s\\S]*?<span class="label">([^<]*)`).exec(page)?.[1] ?? '';
    expect(await body(`/operations/${id}/at-machine`), key).toContain(`<h2>${label}</h2>`);
  }
  const { id } = await story.operation(28, 'cutter-on-arbor');
  expect(keysOn(await body(`/operations/${id}`)).slice(0, 3)).toEqual(['speed', 'feed', 'rimRunOut']);
  const { id: plate } = await story.operation(22, 'plate');
  expect(keysOn(await body(`/operations/${plate}`)).slice(0, 3)).toEqual(['crank', 'sector', 'sectorHoles']);
  const paper = [...(await sheet()).keys()].filter((key) => key.startsWith('solid-') || key.startsWith('central-'));
  expect(paper).toEqual(['solid-dial', 'solid-roughTo', 'central-travel', 'central-shift']);
});
