import { existsSync } from 'node:fs';
import path from 'node:path';

/** The folder of package.json, whether this runs from the sources or from dist. */
export function packageFolder(): string {
  let folder = import.meta.dirname;
  while (!existsSync(path.join(folder, 'package.json'))) {
    const up = path.dirname(folder);
    if (up === folder) throw new Error('package.json was not found above the program.');
    folder = up;
  }
  return folder;
}
