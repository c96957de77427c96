import { renderSVG } from 'uqr';
import type { Row } from '../../db/executor.ts';
import { remembered } from '../../db/remembered.ts';
import { to } from '../addresses.ts';
import { fieldGroup } from '../forms/field-view.ts';
import type { Problems, Typed } from '../forms/form.ts';
import type { ButtonView, FormView, LinkView, Markup, Page, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import { pairForm } from './forms.ts';

export interface DeviceViews {
  'devices/list': Page & {
    says: string;
    make: ButtonView | null;
    table: TableView;
    revoke: readonly { name: string; button: ButtonView }[];
  };
  'devices/code': Page & { qr: Markup; address: string; says: string };
  'devices/pair': Page & { says: string; form: FormView };
  'devices/refused': Page & { says: string };
}

const head = (title: string, back: LinkView | null = null) => ({ title, place: '' as const, back, titleBlock: [] });
const LOOKING =
  'Anyone on this network may look at drawings, sheets and sums. Changes, money and names are for the shop PC and for devices paired with it. To pair this one, open Devices on the shop PC and scan the code that it shows.';
const PAIRED = 'These devices may make changes, as the shop PC may. Take the right back from one that is lost or lent.';

const day = (iso: string): string => iso.slice(0, 10);
const cell = (text: string) => ({ text, unit: '', href: '', state: null });

function devicesTable(rows: readonly Row<'device'>[]): TableView {
  return {
    title: '',
    heads: [
      { says: 'Device', as: 'name' },
      { says: 'Paired on', as: 'words' },
      { says: 'May', as: 'words' },
    ],
    rows: rows.map((row) => ({
      id: `device-${row.id}`,
      cells: [
        cell(row.name),
        cell(day(row.paired_on)),
        cell(row.revoked_on ? `look only, since ${day(row.revoked_on)}` : 'look and change'),
      ],
    })),
    empty: 'No device is paired yet.',
  };
}

const revokeButton = (row: Row<'device'>) => ({
  name: row.name,
  button: {
    action: to.deviceRevoke(row.id),
    hidden: [],
    says: `Take the right back from ${row.name}`,
    kind: 'stop' as const,
    confirm: `Let ${row.name} look only?`,
  },
});

export const listView = (rows: readonly Row<'device'>[], trusted: boolean): PageData<'devices/list'> => ({
  ...head('Devices'),
  says: trusted ? PAIRED : LOOKING,
  make: trusted ? { action: to.pairingCodes, hidden: [], says: 'Show a code for a new device', kind: 'main', confirm: '' } : null,
  table: devicesTable(rows),
  revoke: rows.filter((row) => row.revoked_on === null).map(revokeButton),
});

const codes = remembered<Markup>();

/** An address as a QR code. */
export const qrOf = (address: string): Markup => codes(address, () => renderSVG(address, { border: 2 }) as Markup);

export function codeView(code: string, shopAddress: string): PageData<'devices/code'> {
  const address = `${shopAddress}${to.pair(code)}`;
  const says = 'Scan this with the device that is to be paired and press its button. The code is good once, for ten minutes.';
  return { ...head('Pair a device', { says: 'Devices', href: to.devices }), qr: qrOf(address), address, says };
}

export const pairView = (code: string, typed: Typed, problems: Problems): PageData<'devices/pair'> => ({
  ...head('Pair this device'),
  says: 'Once paired, this device may make changes and see money and names. No password is asked for afterwards; whoever holds the device may do the same.',
  form: {
    id: 'pair',
    action: to.pair(code),
    method: 'post',
    hidden: [],
    problem: '',
    groups: [fieldGroup('', pairForm, typed, problems)],
    act: 'Pair this device',
    kind: 'main',
    confirm: '',
    back: null,
  },
});

export const refusedView = (): PageData<'devices/refused'> => ({
  ...head('This code is no longer good'),
  says: 'Each code is good once, for ten minutes. Ask the shop PC for a new one: Devices, Show a code.',
});
