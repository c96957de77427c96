import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = path.resolve(import.meta.dirname, '..');
const unit = (name: string, include: string[], exclude: string[] = []) => ({
  root,
  test: {
    name,
    include,
    exclude: ['**/node_modules/**', 'dist/**', ...exclude],
    testTimeout: 30_000,
    setupFiles: ['./tests/property-seed.ts'],
  },
});

export default defineConfig({
  root,
  test: {
    reporters: ['default', './tests/closing-line.ts'],
    projects: [
      unit('rules', ['tests/rules/**/*.test.ts']),
      unit('lib', ['tests/lib/**/*.test.ts']),
      unit('reference', ['tests/reference/**/*.test.ts']),
      unit('db', ['tests/db/**/*.test.ts']),
      unit('templates', ['tests/server/templates/**/*.test.ts']),
      unit('server', ['tests/server/**/*.test.ts'], ['tests/server/templates/**']),
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['./tests/browser/find-chromium.ts'],
          testTimeout: 180_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
    coverage: { include: ['lib/**', 'db/**', 'server/**'] },
  },
});
