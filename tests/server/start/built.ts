import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '../../..');
const turn = path.join(root, 'dist', '.building');
const STALE_MS = 120_000;

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Waits for its turn: two builds into one folder at once would run half-written programs. */
async function takeTurn(): Promise<void> {
  mkdirSync(path.dirname(turn), { recursive: true });
  for (;;) {
    try {
      mkdirSync(turn);
      return;
    } catch {
      const since = statSync(turn, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
      if (Date.now() - since > STALE_MS) rmSync(turn, { recursive: true, force: true });
      await pause(200);
    }
  }
}

/** Builds the program as `npm start` does; fast when nothing has changed. */
export async function build(): Promise<void> {
  await takeTurn();
  try {
    const args = [path.join(root, 'node_modules/typescript/bin/tsc'), '-p', path.join(root, '.config/tsconfig.build.json')];
    const { status, stdout } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
    if (status !== 0) throw new Error(`The program could not be built:\n${stdout}`);
  } finally {
    rmSync(turn, { recursive: true, force: true });
  }
}
