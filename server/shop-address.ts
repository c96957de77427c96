import type { Config } from './config.ts';
import { hostName, isShopPc, lanAddresses } from './guard/addresses.ts';

/** Where a phone finds this shop: the owner's own setting, else the name it was asked by, else the first LAN address. */
export function shopAddress(config: Config, hostHeader: string): string {
  if (config.printedAddress) return config.printedAddress;
  const asked = hostName(hostHeader);
  const loopback = asked === '' || asked === 'localhost' || asked.startsWith('127.') || asked === '::1';
  if (!loopback) return `http://${hostHeader}`;
  const lan = lanAddresses()[0];
  return lan && isShopPc(lan)
    ? `http://${lan.includes(':') ? `[${lan}]` : lan}:${config.port}`
    : `http://${hostHeader || `localhost:${config.port}`}`;
}
