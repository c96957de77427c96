import { CodeRefused, codeIsGood, devices, newPairingCode, pair, revokeDevice } from '../../db/devices.ts';
import { to } from '../addresses.ts';

import { readForm } from '../forms/form.ts';
import { TOKEN_COOKIE } from '../guard/guard.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { pairForm } from './forms.ts';
import { codeView, listView, pairView, refusedView } from './view-model.ts';

const YEAR_SECONDS = 365 * 24 * 3600;

/** The paired devices; on a device that is not paired, how to pair it. */
export const list = async (visit: Visit): Promise<Result> =>
  show('devices/list', listView(visit.trusted ? await devices(visit.shops.own) : [], visit.trusted));

/** Makes a code, good once for ten minutes, and shows it. */
export const makeCode = async (visit: Visit): Promise<Result> => ({ go: to.pairingCode(await newPairingCode(visit.shops.own, visit.now)) });

/** The code to scan, while it is good. */
export async function code(visit: Visit): Promise<Result> {
  const given = visit.params['code'] ?? '';
  if (!(await codeIsGood(visit.shops.own, given, visit.now))) return show('devices/refused', refusedView(), 404);
  return show('devices/code', codeView(given, visit.shopAddress));
}

/** What the phone sees when it has opened the code: one button. */
export async function askPair(visit: Visit): Promise<Result> {
  const given = visit.params['code'] ?? '';
  if (!(await codeIsGood(visit.shops.own, given, visit.now))) return show('devices/refused', refusedView(), 404);
  return show('devices/pair', pairView(given, {}, {}));
}

export async function doPair(visit: Visit): Promise<Result> {
  const given = visit.params['code'] ?? '';
  if (!(await codeIsGood(visit.shops.own, given, visit.now))) return show('devices/refused', refusedView(), 404);
  const read = readForm(visit.body, pairForm);
  if (!read.ok) return show('devices/pair', pairView(given, read.typed, read.problems), 422);
  try {
    const { token } = await pair(visit.shops.own, given, read.value.name || 'A device without a name', visit.now);
    return {
      go: to.today,
      saved: 'This device is paired: it may now make changes.',
      cookies: [{ name: TOKEN_COOKIE, value: token, maxAgeSeconds: YEAR_SECONDS }],
    };
  } catch (error) {
    if (error instanceof CodeRefused) return show('devices/refused', refusedView(), 404);
    throw error;
  }
}

export async function revoke(visit: Visit): Promise<Result> {
  await revokeDevice(visit.shops.own, recordId('device', visit.params['id']), visit.now);
  return { go: to.devices, saved: 'That device may now look only.' };
}
