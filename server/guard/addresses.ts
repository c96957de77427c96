import { hostname, type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** An address in one form: no IPv4-in-IPv6 prefix, no zone, lower case. */
const plainAddress = (address: string): string =>
  address
    .toLowerCase()
    .replace(/^::ffff:(?=\d+\.)/, '')
    .replace(/%.*$/, '');

const outOf = (all: ReturnType<typeof networkInterfaces>): NetworkInterfaceInfo[] => Object.values(all).flatMap((list) => list ?? []);

const FRESH_MS = 1000;
let last = { at: Number.NEGATIVE_INFINITY, all: [] as readonly NetworkInterfaceInfo[], own: new Set<string>() };

/**
 * Every address of this machine. Read anew each second, since Wi-Fi comes and goes: asking the system takes some 75 µs, as long
 * as a small page, and a request from a phone asks four times.
 */
function addressesNow(): typeof last {
  const at = performance.now();
  if (at - last.at > FRESH_MS) {
    const all = outOf(networkInterfaces());
    last = { at, all, own: new Set(['127.0.0.1', '::1', ...all.map((one) => plainAddress(one.address))]) };
  }
  return last;
}

/** Loopback among them. */
const ownAddresses = (): ReadonlySet<string> => addressesNow().own;

/** Addresses under which a phone on the LAN can reach this machine (IPv4 first). */
export function lanAddresses(): string[] {
  const outer = addressesNow().all.filter((one) => !one.internal && !one.address.toLowerCase().startsWith('fe80'));
  return outer.sort((a, b) => a.family.localeCompare(b.family)).map((one) => one.address);
}

/** True when the peer is this machine itself: the shop PC. */
export const isShopPc = (peer: string): boolean => {
  const plain = plainAddress(peer);
  return plain.startsWith('127.') || ownAddresses().has(plain);
};

/** The name part of a Host header, without port and brackets, lower case. */
export function hostName(header: string): string {
  const bracketed = /^\[([^\]]+)\](?::\d+)?$/.exec(header);
  if (bracketed) return plainAddress(bracketed[1] ?? '');
  return plainAddress(header.replace(/:\d+$/, ''));
}

/** True when the Host header names this machine: one of its addresses, its own name, or one that the owner listed. */
export function isOwnName(header: string, listed: readonly string[]): boolean {
  const name = hostName(header);
  const own = hostname().toLowerCase();
  if (['localhost', own, `${own}.local`, ...listed.map((one) => one.toLowerCase())].includes(name)) return true;
  return name.startsWith('127.') ? /^127(\.\d{1,3}){3}$/.test(name) : ownAddresses().has(name);
}
