import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const here = import.meta.dirname;
const project = path.resolve(here, '..', '..');
const [room = '', ...more] = process.argv.slice(2);
const work = path.join(tmpdir(), `backgear-mutation-${room}`);
if (!['gears', 'splines'].includes(room)) {
  process.stderr.write('Name a room: gears or splines.\n');
  process.exit(2);
}

rmSync(work, { recursive: true, force: true });
mkdirSync(work);
for (const folder of ['lib', 'tests', 'server', 'db', 'package.json', 'tsconfig.json'])
  cpSync(path.join(project, folder), path.join(work, folder), { recursive: true });
symlinkSync(path.join(here, 'node_modules'), path.join(work, 'node_modules'));

writeFileSync(
  path.join(work, 'vitest.config.js'),
  `export default { test: {
    include: ['tests/lib/${room}/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    exclude: ['**/proof-*.test.ts', '**/profile-rolled-rack.test.ts'],
    setupFiles: ['./tests/property-seed.ts'],
  } };\n`,
);
writeFileSync(
  path.join(work, 'stryker.config.json'),
  JSON.stringify({
    testRunner: 'vitest',
    vitest: { configFile: 'vitest.config.js', related: true },
    mutate: [`lib/${room}/**/*.ts`, `!lib/${room}/**/*.data.ts`],
    // Strings are words and names of sources; changing them proves nothing about a size.
    mutator: { excludedMutations: ['StringLiteral', 'ObjectLiteral', 'ArrayDeclaration'] },
    tsconfigFile: 'there-is-none.json',
    checkers: [],
    concurrency: 2,
    coverageAnalysis: 'perTest',
    reporters: ['clear-text', 'html'],
    clearTextReporter: { allowColor: false, logTests: false },
  }),
);
const { status } = spawnSync('npx', ['stryker', 'run', ...more], { cwd: work, stdio: 'inherit', env: { ...process.env, CI: 'true' } });
process.exit(status ?? 1);
