import net from 'node:net';

/** How long a busy machine may take to begin an answer, and how long it may pause within one. */
const BEGIN_MS = 3000;
const PAUSE_MS = 300;

/** Sends bytes as they are, which no client library would, and gives all that comes back until the server ends or falls silent. */
export function sendRaw(port: number, bytes: string | Buffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = net.connect(port, '127.0.0.1', () => socket.write(bytes));
    let got = '';
    socket.setTimeout(BEGIN_MS, () => socket.destroy());
    socket.on('data', (chunk) => {
      got += chunk.toString('latin1');
      socket.setTimeout(PAUSE_MS);
    });
    socket.on('error', (error: Error & { code?: string }) =>
      error.code === 'ECONNRESET' || error.code === 'EPIPE' ? undefined : reject(error),
    );
    socket.on('close', () => resolve(got));
  });
}

export const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);

/** A request line and headers. */
export const request = (line: string, headers: Readonly<Record<string, string>> = {}, body = ''): string =>
  `${line} HTTP/1.1\r\n${Object.entries(headers)
    .map(([name, value]) => `${name}: ${value}\r\n`)
    .join('')}connection: close\r\n\r\n${body}`;
