import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = path.resolve(import.meta.dirname, '../..');

/** The tests that judge the formulas of gears and splines: their own rooms and the published cases. */
export default defineConfig({
  root,
  test: {
    include: ['tests/lib/gears/**/*.test.ts', 'tests/lib/splines/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    testTimeout: 30_000,
    setupFiles: ['./tests/property-seed.ts'],
  },
});
