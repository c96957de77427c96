import { expect, test } from 'vitest';
import { projects } from '../../db/projects.ts';
import { forgetSent, once } from '../../db/sent.ts';
import { aProject, aShop, firstPage, NOW } from './bench.ts';

test('a form sent twice at once acts once and is answered alike', async () => {
  const { db } = await aShop();
  const send = () => once(db, 'mark-1', NOW, async (trx) => `/projects/${(await aProject(trx)).id}`);
  const answers = await Promise.all([send(), send(), send()]);
  expect(new Set(answers).size).toBe(1);
  expect((await projects(db, firstPage)).rows).toHaveLength(1);
  await once(db, 'mark-2', NOW, async (trx) => `/projects/${(await aProject(trx)).id}`);
  expect((await projects(db, firstPage)).rows).toHaveLength(2);
});

test('a second window on the same file knows it too', async () => {
  const one = await aShop();
  const two = await aShop(one.path);
  const first = await once(one.db, 'mark', NOW, async (trx) => `/projects/${(await aProject(trx)).id}`);
  const second = await once(two.db, 'mark', NOW, async () => {
    throw new Error('acted twice');
  });
  expect(second).toBe(first);
});

test('a form that failed may be sent again', async () => {
  const { db } = await aShop();
  const failing = once(db, 'mark', NOW, async (trx) => {
    await aProject(trx);
    throw new Error('no paper');
  });
  await expect(failing).rejects.toThrow('no paper');
  expect((await projects(db, firstPage)).rows).toHaveLength(0);
  expect(await once(db, 'mark', NOW, async () => '/done')).toBe('/done');
});

test('old marks go', async () => {
  const { db } = await aShop();
  await once(db, 'mark', NOW, async () => '/first');
  await forgetSent(db, '2026-05-02');
  expect(await once(db, 'mark', NOW, async () => '/second')).toBe('/second');
});
