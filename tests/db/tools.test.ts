import { expect, test } from 'vitest';
import { addMachine, machine, machines, retireMachine, saveMachine } from '../../db/machines.ts';
import type { ToolDetails } from '../../db/tool-details.ts';
import { addTool, allTools, saveTool, tool, toolsOfKind } from '../../db/tools.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { aShop, firstPage, NOW } from './bench.ts';

const base = { owner: '', here: 1, lent_to: '', due_on: null, wear: 'sharp', kept_in: '', notes: '' } as const;
const no4: ToolDetails = {
  kind: 'cutter',
  pitch: { kind: 'DP', size: ratio(8) },
  angle: degrees(14.5),
  number: 'No. 4',
  teethFrom: 26,
  teethTo: 34,
  hole: inches(1),
  diameter: inches(3.25),
  width: null,
  stampedDepth: inches(0.27),
  steel: 'high-speed',
  exactFor: null,
};
const EACH: readonly ToolDetails[] = [
  no4,
  { ...no4, pitch: null, angle: null, teethFrom: null, teethTo: null, number: '' },
  {
    kind: 'plate',
    sides: [
      [21, 23, 27, 29, 31, 33],
      [37, 39],
    ],
  },
  { kind: 'head', turns: 40, backPin: true, oneIdler: 'against' },
  { kind: 'head', turns: 60, backPin: true, reached: [20, 33], gears: [24, 24, 40], oneIdler: 'with' },
  {
    kind: 'head',
    turns: 90,
    backPin: false,
    oneIdler: 'with',
    dial: { perTurn: 240, vernier: 6, near: true },
    dialOnly: true,
    lash: [1, 80],
  },
  { kind: 'mandrel', bore: { form: 'plain', diameter: inches(1) }, holding: 'taper', runOut: inches(0.0005) },
  { kind: 'arbor', diameter: inches(1) },
  { kind: 'chuck', jaws: 3, diameter: inches(6), runOut: null, topSpeedRpm: 1400 },
  { kind: 'other' },
];

test.each(EACH)('$kind comes back as it went in', async (details) => {
  const { db } = await aShop();
  const { id } = await addTool(db, { ...base, name: 'one', details });
  const back = (await tool(db, id)).tool;
  expect(back).toEqual({ id, name: 'one', here: true, ...details, ...(details.kind === 'cutter' ? { sharp: true } : {}) });
});

test('a tool lent, worn out or gone is not here, and what is gone is offered no more', async () => {
  const { db } = await aShop();
  const { id } = await addTool(db, { ...base, name: '8 DP No. 4', details: no4 });
  const lent = await saveTool(db, id, 1, { here: 0, lent_to: 'the club', due_on: NOW });
  expect((await tool(db, id)).tool.here).toBe(false);
  const worn = await saveTool(db, id, lent.rev, { here: 1, lent_to: '', due_on: null, wear: 'worn out' });
  expect((await tool(db, id)).tool).toMatchObject({ here: false, sharp: false });
  expect(await allTools(db)).toHaveLength(1);
  await saveTool(db, id, worn.rev, { gone_on: NOW });
  expect(await allTools(db)).toHaveLength(0);
  expect((await toolsOfKind(db, 'cutter', firstPage)).rows).toHaveLength(0);
});

test('details are written anew; a plate becomes no chuck', async () => {
  const { db } = await aShop();
  const { id } = await addTool(db, { ...base, name: 'plate', details: { kind: 'plate', sides: [[21, 33]] } });
  await saveTool(db, id, 1, {}, { details: { kind: 'plate', sides: [[21], [37]] } });
  expect((await tool(db, id)).tool).toMatchObject({ sides: [[21], [37]] });
  const chuck: ToolDetails = { kind: 'chuck', jaws: 3, diameter: inches(6), runOut: null, topSpeedRpm: null };
  await expect(saveTool(db, id, 2, {}, { details: chuck })).rejects.toThrow(RangeError);
  expect((await tool(db, id)).row.rev).toBe(2);
});

test('a mandrel written anew leaves no bore behind', async () => {
  const { db } = await aShop();
  const mandrel = (size: number): ToolDetails => ({
    kind: 'mandrel',
    bore: { form: 'plain', diameter: inches(size) },
    holding: '',
    runOut: null,
  });
  const forms = { diameter: { unit: 'in', over: 8 } } as const;
  const { id } = await addTool(db, { ...base, name: 'mandrel', details: mandrel(1) });
  await saveTool(db, id, 1, {}, { details: mandrel(1.25), forms });
  expect(await db.selectFrom('bore').selectAll().execute()).toHaveLength(1);
  expect((await tool(db, id)).forms).toEqual(forms);
});

test('a machine comes back with its speeds, feeds and dials', async () => {
  const { db } = await aShop();
  const lathe = {
    name: 'Ashdown & Lyle 13 in',
    kind: 'lathe',
    speedsRpm: [45.5, 70, 110],
    feeds: [inches(0.002), inches(0.005)],
    feedsPer: 'turn',
    crossDial: { reads: 'diameter', unit: 'in', division: inches(0.001), perTurn: 200 },
    depthDial: null,
    screwedNose: true,
  } as const;
  const more = { nose: '2 1/4 in, 8 threads', notes: '' };
  const { id, rev } = await addMachine(db, { ...lathe, ...more });
  expect((await machine(db, id)).machine).toEqual({ id, ...lathe });
  const saved = await saveMachine(db, id, rev, { ...lathe, speedsRpm: [60], feeds: [], ...more });
  expect((await machine(db, id)).machine).toMatchObject({ speedsRpm: [60], feeds: [] });
  await retireMachine(db, id, saved.rev, NOW);
  expect(await machines(db)).toEqual([]);
});
