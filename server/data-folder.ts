import { mkdirSync, statSync } from 'node:fs';
import path from 'node:path';

const isFolder = (folder: string): boolean => statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false;

/**
 * Makes a folder and those above it, each tried once. mkdir's own way of making all of them tries for ever where a folder takes none and
 * gives no good reason, as /proc does. Throws the system's own error.
 */
export function makeFolder(folder: string): void {
  if (isFolder(folder)) return;
  const above = path.dirname(folder);
  if (above !== folder) makeFolder(above);
  try {
    mkdirSync(folder);
  } catch (error) {
    if (!isFolder(folder)) throw error;
  }
}
