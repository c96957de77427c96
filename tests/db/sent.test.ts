import { expect, test } from 'vitest';
import { answeredWith, rememberSent } from '../../db/sent.ts';
import { aShop } from './bench.ts';

test('a second window on the same file knows what was sent', async () => {
  const one = await aShop();
  const two = await aShop(one.path);
  await rememberSent(one.db, 'mark', '/machines/7', '2026-05-01T10:30:00.000Z');
  expect(await answeredWith(two.db, 'mark')).toBe('/machines/7');
  expect(await answeredWith(two.db, 'another')).toBeNull();
});

test('marks go after ninety days, and not before', async () => {
  const { db } = await aShop();
  await rememberSent(db, 'old', '/first', '2026-01-01T00:00:00.000Z');
  await rememberSent(db, 'later', '/second', '2026-04-01T00:00:00.000Z');
  expect(await answeredWith(db, 'old')).toBe('/first');
  await rememberSent(db, 'last', '/third', '2026-04-01T00:00:00.001Z');
  expect(await answeredWith(db, 'old')).toBeNull();
  expect(await answeredWith(db, 'later')).toBe('/second');
});
