import { createServer } from 'node:net';

/**
 * Fails as listening would when the port is taken or the address is none of ours. Asked before the shop's file is opened, so that a
 * second start neither brings up to date nor copies the file of a shop that is already running.
 */
export function portIsFree(port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen({ port, host }, () => probe.close(() => resolve()));
  });
}
