import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { setTimeout as pause } from 'node:timers/promises';
import { packageFolder } from '../../server/package-folder.ts';

/** ms: until the first page is answered whole; processorMs: what the program worked until then, whatever else the machine did. idleMb: what the process holds once every room is read in and nobody asks for anything. */
export type Start = { readonly ms: number; readonly processorMs: number; readonly wordMs: number; readonly idleMb: number };

const residentMb = (pid: number): number =>
  Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? Number.NaN) / 1024;

/** What all threads of a process have worked, milliseconds. */
const processorMsOf = (pid: number): number =>
  readdirSync(`/proc/${pid}/task`)
    .map((thread) => Number(readFileSync(`/proc/${pid}/task/${thread}/schedstat`, 'utf8').split(' ')[0]) / 1e6)
    .reduce((sum, one) => sum + one, 0);

/** The port that the program says it is open at. */
function portOf(program: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    let said = '';
    program.once('error', reject);
    program.once('exit', () => reject(new Error('It ended before it was open.')));
    program.stderr?.on('data', (text) => reject(new Error(String(text))));
    program.stdout?.on('data', (text) => {
      said += String(text);
      const port = /On this PC:\s+http:\/\/[^:\s]+:(\d+)/.exec(said)?.[1];
      if (port) resolve(Number(port));
    });
  });
}

/** By then every room is read in, on a slow machine too. */
const IDLE_AFTER_MS = 8000;

/** Starts the program on a data folder and asks for the first page. Linux only. */
export async function coldStart(dataFolder: string): Promise<Start> {
  const began = performance.now();
  const program = spawn(process.execPath, [path.join(packageFolder(), 'dist/server/main.js')], {
    env: { ...process.env, BACKGEAR_DATA: dataFolder, BACKGEAR_PORT: '0', BACKGEAR_HOST: '127.0.0.1' },
  });
  const ended = new Promise((resolve) => program.once('exit', resolve));
  try {
    const port = await portOf(program);
    const wordMs = performance.now() - began;
    const page = await fetch(`http://127.0.0.1:${port}/`);
    await page.text();
    const ms = performance.now() - began;
    const processorMs = processorMsOf(program.pid ?? 0);
    if (page.status !== 200) throw new Error(`The first page was answered with ${page.status}.`);
    await pause(IDLE_AFTER_MS);
    return { ms, processorMs, wordMs, idleMb: residentMb(program.pid ?? 0) };
  } finally {
    program.kill('SIGTERM');
    await ended;
  }
}

/** Node alone: what starting costs before any of ours runs. */
export function bareStart(): Promise<Pick<Start, 'ms' | 'processorMs'>> {
  return new Promise((resolve) => {
    const began = performance.now();
    let worked = '';
    const node = spawn(process.execPath, ['-p', 'const { user, system } = process.cpuUsage(); (user + system) / 1000']);
    node.stdout.on('data', (text) => {
      worked += String(text);
    });
    node.once('close', () => resolve({ ms: performance.now() - began, processorMs: Number(worked) }));
  });
}
