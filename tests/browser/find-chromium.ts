import type {} from 'vitest';
import type { TestProject } from 'vitest/node';
import { chromiumPath } from './chromium.ts';

declare module 'vitest' {
  interface ProvidedContext {
    chromium: string;
  }
}

/** Browser tests are skipped aloud on a person's machine without Chromium; where CI=true that is a failure. */
export default function setup(project: TestProject): void {
  const found = chromiumPath();
  if (!found && process.env['CI'] === 'true') throw new Error('No Chromium found: the browser tests cannot run. Set CHROMIUM_PATH.');
  if (!found) console.error('\n*** NO CHROMIUM FOUND: every browser test is skipped. Install chromium or set CHROMIUM_PATH. ***\n');
  project.provide('chromium', found);
}
