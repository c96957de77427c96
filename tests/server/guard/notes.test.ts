import { sql } from 'kysely';
import { expect, it } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { leaveOff } from '../../../db/bookmarks.ts';
import { saveItem } from '../../../db/items.ts';
import { machines, saveMachine } from '../../../db/machines.ts';
import { savePart } from '../../../db/parts.ts';
import { saveProject } from '../../../db/projects.ts';
import { addTool } from '../../../db/tools.ts';
import { ask, LAN_PEER, NOW, pairedCookie } from '../app-for-tests.ts';
import { type Bench, firstStory } from '../routings/bench.ts';

/** What a person notes to himself and tells no visitor. */
const NOTED = 'fortypounds';

/** Through the functions that keep the search index, so that it holds the notes too. */
async function noteEverything({ db, part22, spare31, first, line }: Bench): Promise<string> {
  const rows = await sql<{ table: string; id: number; rev: number }>`
    select 'project' as "table", id, rev from project union all select 'part', id, rev from part where id = ${part22}
    union all select 'item', id, rev from item where id = ${spare31}`.execute(db);
  for (const { table, id, rev } of rows.rows) {
    if (table === 'project') await saveProject(db, id, rev, { notes: NOTED });
    if (table === 'part') await savePart(db, id, rev, { notes: NOTED, way: 're-cut a spare', why: NOTED });
    if (table === 'item') await saveItem(db, id, rev, { notes: NOTED });
  }
  for (const { row, machine } of await machines(db)) await saveMachine(db, row.id, row.rev, { ...machine, nose: row.nose, notes: NOTED });
  const details = { kind: 'head', turns: 60, backPin: false, oneIdler: null } as const;
  const lent = { owner: NOTED, here: 0, lent_to: NOTED, due_on: null, wear: 'sharp', kept_in: '', notes: NOTED } as const;
  await addTool(db, { ...lent, name: 'another head', details });
  await addAssembly(db, { project_id: 1, within_id: null, name: 'tailstock', serial: '', notes: NOTED });
  const blank = await line(first, 'blank');
  for (const table of ['wheel_set', 'operation']) await sql`update ${sql.table(table)} set notes = ${NOTED}`.execute(db);
  await leaveOff(db, { routing_id: first, operation_id: blank.id, note: NOTED, at: NOW });
  return `/operations/${blank.id}`;
}

const PAGES = ({ part22, spare31, first }: Bench): string[] => [
  '/machines/1',
  '/sets/1',
  `/parts/${part22}`,
  `/drawer/${spare31}`,
  `/routings/${first}`,
  '/tools/machines/1',
  '/tools/7',
  '/',
  `/parts/${part22}/sheet`,
];

it('what is noted is shown, and found by its words, on the shop PC and paired devices alone', async () => {
  const bench = await firstStory();
  const operation = await noteEverything(bench);
  const cookie = await pairedCookie(bench.shop);
  for (const url of [...PAGES(bench), operation, `/search?q=${NOTED}`]) {
    const own = await bench.get(url);
    const visitor = await ask(bench.shop, url, { peer: LAN_PEER });
    const paired = await ask(bench.shop, url, { peer: LAN_PEER, headers: { host: 'localhost', cookie } });
    expect([url, own.statusCode, visitor.statusCode, paired.statusCode]).toEqual([url, 200, 200, 200]);
    const title = (text: string): string => text.replaceAll(`“${NOTED}”`, '').replaceAll(`value="${NOTED}"`, '');
    expect(title(visitor.body), url).not.toContain(NOTED);
    if (!url.startsWith('/search')) {
      expect(own.body, url).toContain(NOTED);
      expect(paired.body, url).toContain(NOTED);
    }
  }
  const found = async (peer: string, q: string) => (await ask(bench.shop, `/search?q=${q}`, { peer })).body.match(/id="found-\d+"/g) ?? [];
  // A machine under restoration, a part, a thing of the drawer, a tool and the shop's two machines.
  expect(await found('127.0.0.1', NOTED)).toHaveLength(6);
  expect(await found('127.0.0.1', 'forty')).toHaveLength(6);
  for (const word of [NOTED, 'forty', `notes:${NOTED}`, `x"%20OR%20notes:"${NOTED}`]) expect(await found(LAN_PEER, word), word).toEqual([]);
  expect(await found(LAN_PEER, '31T')).not.toEqual([]);
});
