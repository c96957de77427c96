import path from 'node:path';
import { renderUnicodeCompact } from 'uqr';
import type { Config } from './config.ts';
import { inLink, reachable } from './shop-address.ts';

const LOOPBACK = ['0.0.0.0', '::', '127.0.0.1', '::1', 'localhost'];

/** What the program prints once it is open: where its data lies, and the addresses, the phone's as a QR code. */
export function greeting(config: Config, port: number): string {
  const lan = reachable(config.host);
  const here = LOOPBACK.includes(config.host) ? 'localhost' : config.host;
  const phone = config.printedAddress || (lan[0] ? inLink(lan[0], port) : '');
  return [
    '',
    `Backgear is open. Data: ${path.join(config.dataFolder, 'shop.sqlite')}`,
    `On this PC:  ${inLink(here, port)}`,
    ...lan.map((address) => `On the LAN:  ${inLink(address, port)}`),
    ...(phone ? ['', renderUnicodeCompact(phone), phone] : []),
    '',
  ].join('\n');
}
