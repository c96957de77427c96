import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { root } from './built.ts';

export type Ended = { readonly code: number | null; readonly signal: string | null; readonly out: string; readonly err: string };
export type Running = { readonly child: ChildProcess; readonly port: number; readonly greeting: string; readonly ended: Promise<Ended> };
type Wanted = {
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
  readonly args?: readonly string[];
  readonly uid?: number;
};
export type Program = 'main' | 'backup' | 'restore' | 'pair';

export const newFolder = (): string => mkdtempSync(path.join(tmpdir(), 'backgear-start-'));

/** A port that was free a moment ago. */
export const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const bound = probe.address();
      probe.close(() => resolve(typeof bound === 'object' && bound ? bound.port : 0));
    });
  });

const children = new Set<ChildProcess>();
/** Ends what a test left running. */
export const endAll = (): void => {
  for (const child of children) child.kill('SIGKILL');
};

function begin(program: Program, { env = {}, cwd = root, args = [], uid }: Wanted): { child: ChildProcess; ended: Promise<Ended> } {
  const own = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^(BACKGEAR_|NODE_OPTIONS|VITEST|INIT_CWD)/.test(name)));
  const child = spawn(process.execPath, [path.join(root, 'dist/server', `${program}.js`), ...args], {
    cwd,
    env: { ...own, ...env },
    ...(uid === undefined ? {} : { uid, gid: uid }),
  });
  children.add(child);
  let [out, err] = ['', ''];
  child.stdout?.on('data', (chunk) => {
    out += String(chunk);
  });
  child.stderr?.on('data', (chunk) => {
    err += String(chunk);
  });
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code, signal) => {
      children.delete(child);
      resolve({ code, signal, out, err });
    });
  });
  return { child, ended };
}

/** Runs a program to its end. */
export const run = (program: Program, wanted: Wanted = {}): Promise<Ended> => begin(program, wanted).ended;

/** Starts the server on a free port and waits until it says that it is open. */
export async function start(folder: string, wanted: Wanted = {}): Promise<Running> {
  const port = Number(wanted.env?.['BACKGEAR_PORT'] ?? (await freePort()));
  const env = { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(port), ...wanted.env };
  const { child, ended } = begin('main', { ...wanted, env });
  const greeting = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout?.on('data', (chunk) => {
      said += String(chunk);
      if (/Backgear is open[\s\S]*On this PC[\s\S]*\n$/.test(said)) resolve(said);
    });
    child.once('close', () => {
      ended.then(({ err, code }) => reject(new Error(`It ended with ${code}: ${err}`)), reject);
    });
  });
  return { child, port, greeting, ended };
}

/** A form sent to a running server from its own page. */
export const post = (port: number, url: string, form: Readonly<Record<string, string>>): Promise<Response> =>
  fetch(`http://127.0.0.1:${port}${url}`, {
    method: 'POST',
    redirect: 'manual',
    headers: { origin: `http://127.0.0.1:${port}` },
    body: new URLSearchParams(form),
  });

/** Asks it to end, and waits. */
export async function stop({ child, ended }: Running): Promise<Ended & { readonly ms: number }> {
  const from = performance.now();
  child.kill('SIGTERM');
  const end = await ended;
  return { ...end, ms: performance.now() - from };
}
