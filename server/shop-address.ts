import type { Config } from './config.ts';
import { hostName, lanAddresses } from './guard/addresses.ts';

const EVERY_ADDRESS = ['0.0.0.0', '::'];

/** An address of this machine as it stands in a link. */
export const inLink = (address: string, port: number): string => `http://${address.includes(':') ? `[${address}]` : address}:${port}`;

/** The addresses under which phones reach a server that listens on `host`. */
export function reachable(host: string): string[] {
  const lan = lanAddresses();
  return EVERY_ADDRESS.includes(host) ? lan : lan.filter((address) => address === host);
}

/** Where a phone finds this shop: the owner's own setting, else the name it was asked by, else the first LAN address. */
export function shopAddress(config: Config, hostHeader: string): string {
  if (config.printedAddress) return config.printedAddress;
  const asked = hostName(hostHeader);
  const loopback = asked === '' || asked === 'localhost' || asked.startsWith('127.') || asked === '::1';
  if (!loopback) return `http://${hostHeader}`;
  const lan = reachable(config.host)[0];
  const port = Number(/:(\d+)$/.exec(hostHeader)?.[1] ?? config.port);
  return lan ? inLink(lan, port) : `http://${hostHeader || `localhost:${config.port}`}`;
}
