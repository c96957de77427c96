import { expect, test } from 'vitest';
import { leaveOff, leftOff } from '../../db/bookmarks.ts';
import type { Executor } from '../../db/executor.ts';
import { acceptFigures, typeFigure } from '../../db/figures.ts';
import { addItem } from '../../db/items.ts';
import { settleNeeds } from '../../db/needs.ts';
import {
  addOperation,
  holdFor,
  markDone,
  markUndone,
  moveOperation,
  noteMeasured,
  type OperationLine,
  operation,
  operationsOf,
  restoreOperation,
  strikeOut,
} from '../../db/operations.ts';
import { addPart } from '../../db/parts.ts';
import { readingsOf } from '../../db/readings.ts';
import { openRouting } from '../../db/routings.ts';
import { tick, ticksOf, untick } from '../../db/ticks.ts';
import { openWork, readyWork, sharedSetUps } from '../../db/today.ts';
import { addTool, saveTool } from '../../db/tools.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { aShop, firstPage, halvorsenWheel, NOW, onePart, place, plan, wheel } from './bench.ts';

async function begun(db: Executor, withBlank = true) {
  const { part, project, assembly } = await onePart(db);
  const spare = await addItem(db, wheel(halvorsenWheel(31), null));
  const blanks = withBlank ? [{ itemId: spare.id, role: 'whole' as const, takes: null }] : [];
  const routingId = await openRouting(db, { partId: part.id, way: 're-cut a spare', openedOn: NOW, blanks, operations: plan() });
  const step = async (key: string): Promise<OperationLine> => {
    const found = (await operationsOf(db, routingId)).find((one) => one.key === key || one.title === key);
    if (!found) throw new Error(key);
    return found;
  };
  const states = async () => (await operationsOf(db, routingId)).map((one) => `${one.title}: ${one.state}`);
  return { routingId, project, assembly, step, states };
}

const done = { on: NOW, minutes: 12, measured: [] } as const;
const finish = async (db: Executor, line: OperationLine) => markDone(db, line.id, line.rev, done);
const isCutter = (tool: { kind: string }, need: { kind: string }): boolean => tool.kind === 'cutter' && need.kind === 'cutter';
const cutter = {
  owner: '',
  here: 1,
  lent_to: '',
  due_on: null,
  wear: 'sharp',
  kept_in: '',
  notes: '',
  name: 'No. 5',
  details: {
    kind: 'cutter',
    pitch: { kind: 'DP', size: ratio(8) },
    angle: degrees(14.5),
    number: 'No. 5',
    teethFrom: 21,
    teethTo: 25,
    hole: null,
    diameter: null,
    width: null,
    stampedDepth: null,
    steel: 'unknown',
    exactFor: null,
  },
} as const;

test('ready and waiting, and for what', async () => {
  const { db } = await aShop();
  const { step, states } = await begun(db);
  expect(await states()).toEqual(['Turn the blank: ready', 'Break the edges: waiting', 'Cut the teeth: waiting']);
  expect((await step('cut')).waits).toMatchObject([
    { for: 'tool', need: { kind: 'cutter', teeth: 22 } },
    { for: 'operation', title: 'Break the edges' },
  ]);
  await finish(db, await step('turn'));
  expect(await states()).toEqual(['Turn the blank: done', 'Break the edges: ready', 'Cut the teeth: waiting']);
  await markUndone(db, (await step('turn')).id, 2);
  expect((await step('edges')).state).toBe('waiting');
});

test('without a blank everything waits for one', async () => {
  const { db } = await aShop();
  const { step } = await begun(db, false);
  expect((await step('turn')).waits).toEqual([{ for: 'blank' }]);
});

test('a cutter bought makes ready what waited for it; lent, it waits again', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  await finish(db, await step('turn'));
  await finish(db, await step('edges'));
  expect((await step('cut')).state).toBe('waiting');
  const bought = await addTool(db, cutter);
  expect(await settleNeeds(db, isCutter)).toEqual([(await step('cut')).id]);
  expect(await step('cut')).toMatchObject({ state: 'ready', needs: [{ tool_id: bought.id, tool_name: 'No. 5' }] });
  expect(await settleNeeds(db, isCutter)).toEqual([]);
  await saveTool(db, bought.id, bought.rev, { here: 0, lent_to: 'the club' });
  await settleNeeds(db, isCutter);
  expect((await step('cut')).state).toBe('waiting');
});

test('struck out, it holds nothing up, and what came before it still comes first', async () => {
  const { db } = await aShop();
  const { step, states } = await begun(db);
  await addTool(db, cutter);
  await settleNeeds(db, isCutter);
  const edges = await strikeOut(db, (await step('edges')).id, 1, NOW);
  expect(await states()).toEqual(['Turn the blank: ready', 'Break the edges: struck out', 'Cut the teeth: waiting']);
  await finish(db, await step('turn'));
  expect((await step('cut')).state).toBe('ready');
  await restoreOperation(db, edges.id, edges.rev);
  expect((await step('cut')).state).toBe('waiting');
});

test('an operation of one’s own stands and is done in its place, and can be moved', async () => {
  const { db } = await aShop();
  const { routingId, step } = await begun(db);
  const setUp = { key: 'bench', place: 'bench', machineId: null, says: 'Bench' } as const;
  const own = await addOperation(db, routingId, { title: 'Photograph', setUp, steps: [], needs: [], minutes: 5, notes: '', at: 2 });
  const order = async () => (await operationsOf(db, routingId)).map((one) => [one.place_no, one.title]);
  expect(await order()).toEqual([
    [1, 'Turn the blank'],
    [2, 'Photograph'],
    [3, 'Break the edges'],
    [4, 'Cut the teeth'],
  ]);
  expect((await step('edges')).waits).toContainEqual(expect.objectContaining({ title: 'Photograph' }));
  await moveOperation(db, own.id, own.rev, 1);
  expect((await order()).map(([, title]) => title)).toEqual(['Photograph', 'Turn the blank', 'Break the edges', 'Cut the teeth']);
  expect((await step('edges')).after).toEqual([(await step('turn')).id]);
  expect((await step('Photograph')).state).toBe('ready');
  expect((await step('turn')).state).toBe('waiting');
});

test('measured stands over typed, typed over computed; accepting new figures keeps both', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  const turn = await step('turn');
  expect(turn.figures[0]).toMatchObject({ shown: { length: 76_200_000 }, shownFrom: 'worked out', low: { length: inches(2.9975) } });
  const typed = await typeFigure(db, turn.id, turn.rev, 'outside', { length: inches(2.999) });
  const [figure] = turn.figures;
  const now = { ...figure?.figure, value: { length: inches(3.1) } } as never;
  const accepted = await acceptFigures(db, turn.id, typed.rev, { outside: now });
  expect((await step('turn')).figures[0]).toMatchObject({
    computed: { length: inches(3.1) },
    shown: { length: inches(2.999) },
    shownFrom: 'typed',
  });
  const reading = { what: 'outside', value: { length: inches(2.998) }, read_on: NOW, instrument: 'micrometer' } as const;
  await markDone(db, turn.id, accepted.rev, { on: NOW, minutes: 30, measured: [{ figure: 'outside', reading }] });
  const line = await step('turn');
  expect(line.figures[0]).toMatchObject({ shown: { length: inches(2.998) }, shownFrom: 'measured', typed: { length: inches(2.999) } });
  expect(line).toMatchObject({ state: 'done', minutes_taken: 30 });
  expect(await readingsOf(db, { operationId: turn.id })).toMatchObject([{ what: 'outside', shown: { length: inches(2.998) } }]);
  await acceptFigures(db, turn.id, line.rev, { outside: figure?.figure as never });
  expect((await step('turn')).figures[0]?.computed).toEqual({ length: inches(3.1) });
});

test('a figure that is of another kind by now keeps no reading of the old kind; of the same kind it does', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  const turn = await step('turn');
  const reading = { what: 'outside', value: { length: inches(2.998) }, read_on: NOW, instrument: '' } as const;
  const noted = await noteMeasured(db, turn.id, turn.rev, [{ figure: 'outside', reading }]);
  const [figure] = turn.figures;
  const longer = { ...figure?.figure, value: { length: inches(3.1) } } as never;
  const same = await acceptFigures(db, turn.id, noted.rev, { outside: longer });
  expect((await step('turn')).figures[0]).toMatchObject({ shown: { length: inches(2.998) }, shownFrom: 'measured' });
  const turned = { ...figure?.figure, value: { angle: degrees(3) }, limits: undefined } as never;
  await acceptFigures(db, turn.id, same.rev, { outside: JSON.parse(JSON.stringify(turned)) as never });
  expect((await step('turn')).figures[0]).toMatchObject({ shown: { angle: degrees(3) }, shownFrom: 'worked out', measured: null });
  expect(await readingsOf(db, { operationId: turn.id })).toMatchObject([{ what: 'outside', shown: { length: inches(2.998) } }]);
});

test('a figure takes no other kind of value, and an old rev is refused', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  const turn = await step('turn');
  const reading = { what: 'outside', value: { angle: degrees(3) }, read_on: NOW, instrument: '' } as const;
  const wrong = markDone(db, turn.id, turn.rev, { on: NOW, minutes: null, measured: [{ figure: 'outside', reading }] });
  await expect(wrong).rejects.toThrow(RangeError);
  expect(await readingsOf(db, { operationId: turn.id })).toEqual([]);
  await typeFigure(db, turn.id, turn.rev, 'outside', null);
  await expect(typeFigure(db, turn.id, turn.rev, 'outside', null)).rejects.toMatchObject({ name: 'RecordChanged' });
});

test('held for another until that one is done; never round in a ring', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  const [turn, cut] = [await step('turn'), await step('cut')];
  await expect(holdFor(db, turn.id, turn.rev, cut.id)).rejects.toMatchObject({ name: 'DomainError' });
  const other = await begun2(db);
  const held = await holdFor(db, turn.id, turn.rev, other.id);
  expect(await step('turn')).toMatchObject({ state: 'held', waits: [{ for: 'held', title: 'Turn the blank', partMark: 'H12-STUD' }] });
  await expect(holdFor(db, other.id, other.rev, turn.id)).rejects.toMatchObject({ name: 'DomainError' });
  await finish(db, other);
  expect((await step('turn')).state).toBe('ready');
  await holdFor(db, turn.id, held.rev, null);
});

/** The first operation of a second part on the same machine. */
async function begun2(db: Executor): Promise<OperationLine> {
  const first = await db.selectFrom('part').selectAll().executeTakeFirstOrThrow();
  const stud = await addPart(db, place(first.project_id, first.assembly_id, null, null, 'stud'));
  const spare = await addItem(db, wheel(halvorsenWheel(34), null));
  const blanks = [{ itemId: spare.id, role: 'whole' as const, takes: null }];
  const id = await openRouting(db, { partId: stud.id, way: 're-cut a spare', openedOn: NOW, blanks, operations: plan() });
  const [line] = await operationsOf(db, id);
  return line as OperationLine;
}

test('today: what is ready, what waits, what shares a set-up, where work was left', async () => {
  const { db } = await aShop();
  const { routingId, step } = await begun(db);
  const other = await begun2(db);
  expect((await readyWork(db, 50)).map((line) => [line.part_mark, line.title])).toEqual([
    ['H12-STUD', 'Turn the blank'],
    ['H12-GUARD', 'Turn the blank'],
  ]);
  const { rows } = await openWork(db, firstPage);
  expect(rows[1]).toMatchObject({
    routing_id: routingId,
    done: 0,
    operations: 3,
    ready: 1,
    next: { title: 'Turn the blank' },
    waits: [{ for: 'tool', at: 'Cut the teeth' }],
  });
  expect(rows[1]?.waits).toHaveLength(1);
  const shared = await sharedSetUps(db, 10);
  expect(shared.map((one) => [one.setUp.key, one.work.length])).toEqual([
    ['lathe/mandrel', 4],
    ['mill/head 40', 2],
  ]);
  const mark = { routing_id: routingId, operation_id: (await step('turn')).id, at: NOW };
  await leaveOff(db, { ...mark, note: 'tool ground, not set' });
  await leaveOff(db, { ...mark, note: 'second cut taken' });
  expect(await leftOff(db, 5)).toMatchObject([{ note: 'second cut taken', operation_title: 'Turn the blank', part_mark: 'H12-GUARD' }]);
  expect((await operation(db, other.id)).setUp.place).toBe('lathe');
});

test('teeth ticked off stay ticked, once each', async () => {
  const { db } = await aShop();
  const { step } = await begun(db);
  const { id } = await step('cut');
  for (const tooth of [3, 1, 2, 2]) await tick(db, id, tooth, NOW);
  await untick(db, id, 3);
  expect(await ticksOf(db, id)).toEqual([1, 2]);
});
