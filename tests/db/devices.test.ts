import { expect, test } from 'vitest';
import { codeIsGood, deviceOf, devices, newPairingCode, pair, revokeDevice } from '../../db/devices.ts';
import { setSetting, settings } from '../../db/settings.ts';
import { aShop, NOW } from './bench.ts';

const NINE_MINUTES = '2026-05-01T10:09:59.000Z';
const TEN_MINUTES = '2026-05-01T10:10:00.000Z';

test('a code pairs once', async () => {
  const { db } = await aShop();
  const code = await newPairingCode(db, NOW);
  expect(await codeIsGood(db, code, NINE_MINUTES)).toBe(true);
  const { token, deviceId } = await pair(db, code, 'phone', NINE_MINUTES);
  expect(await deviceOf(db, token)).toMatchObject({ id: deviceId, name: 'phone' });
  await expect(pair(db, code, 'another', NINE_MINUTES)).rejects.toMatchObject({ name: 'CodeRefused' });
  expect(await devices(db)).toHaveLength(1);
});

test('a code is good for ten minutes, and a made-up one never', async () => {
  const { db } = await aShop();
  const code = await newPairingCode(db, NOW);
  await expect(pair(db, code, 'phone', TEN_MINUTES)).rejects.toMatchObject({ name: 'CodeRefused' });
  await expect(pair(db, 'AAAAAAAAAA', 'phone', NOW)).rejects.toMatchObject({ name: 'CodeRefused' });
});

test('two at once with one code: one is paired', async () => {
  const { db } = await aShop();
  const code = await newPairingCode(db, NOW);
  const tries = await Promise.allSettled([pair(db, code, 'a', NOW), pair(db, code, 'b', NOW)]);
  expect(tries.map((one) => one.status).sort()).toEqual(['fulfilled', 'rejected']);
});

test('neither code nor token lies in the file, and a device revoked is unknown', async () => {
  const { db } = await aShop();
  const code = await newPairingCode(db, NOW);
  const { token, deviceId } = await pair(db, code, 'phone', NOW);
  const rows = JSON.stringify([
    await db.selectFrom('device').selectAll().execute(),
    await db.selectFrom('pairing_code').selectAll().execute(),
  ]);
  expect(rows).not.toContain(token);
  expect(rows).not.toContain(code);
  await revokeDevice(db, deviceId, NOW);
  expect(await deviceOf(db, token)).toBeNull();
  expect(await deviceOf(db, '')).toBeNull();
});

test('a default of the owner’s stands until he sets another', async () => {
  const { db } = await aShop();
  expect(await settings(db)).toEqual({});
  await setSetting(db, 'clean-up', '0.010 in');
  await setSetting(db, 'clean-up', '0.015 in');
  expect(await settings(db)).toEqual({ 'clean-up': '0.015 in' });
});
