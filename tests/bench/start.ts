import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { packageFolder } from '../../server/package-folder.ts';

export type Start = { readonly ms: number; readonly idleMb: number };

const residentMb = (pid: number): number =>
  Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? Number.NaN) / 1024;

/** Starts the program on a data folder and waits for its first word; then how much memory it holds a second later. Linux only. */
export function coldStart(dataFolder: string): Promise<Start> {
  return new Promise((resolve, reject) => {
    const began = performance.now();
    const program = spawn(process.execPath, ['--enable-source-maps', path.join(packageFolder(), 'dist/server/main.js')], {
      env: { ...process.env, BACKGEAR_DATA: dataFolder, BACKGEAR_PORT: '0', BACKGEAR_HOST: '127.0.0.1' },
    });
    program.once('error', reject);
    program.stderr.on('data', (text) => reject(new Error(String(text))));
    program.stdout.once('data', () => {
      const ms = performance.now() - began;
      setTimeout(() => {
        const idleMb = residentMb(program.pid ?? 0);
        program.once('exit', () => resolve({ ms, idleMb }));
        program.kill('SIGTERM');
      }, 1000);
    });
  });
}

/** `node -e 0`: what starting costs before any of ours runs. */
export function bareStart(): Promise<number> {
  return new Promise((resolve) => {
    const began = performance.now();
    spawn(process.execPath, ['-e', '0']).once('exit', () => resolve(performance.now() - began));
  });
}
