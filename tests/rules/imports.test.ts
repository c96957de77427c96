import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { wrongWay } from './import-direction.ts';

const top = path.resolve(import.meta.dirname, '../..');

function sources(): Map<string, string> {
  const found = new Map<string, string>();
  for (const part of ['lib', 'db', 'server', 'seed', 'views']) {
    for (const name of readdirSync(path.join(top, part), { recursive: true, encoding: 'utf8' })) {
      if (/\.(ts|js|eta)$/.test(name)) found.set(`${part}/${name.replaceAll('\\', '/')}`, readFileSync(path.join(top, part, name), 'utf8'));
    }
  }
  return found;
}

it('imports run one way', () => {
  const files = sources();
  expect(files.size).toBeGreaterThan(20);
  expect(wrongWay(files)).toEqual([]);
});

it('bites when a violation is planted', () => {
  const planted = new Map([
    ['lib/values/length.ts', "import { x } from '../gears/gear.ts';"],
    ['lib/gears/gear.ts', "import { y } from '../../db/open.ts';"],
    ['db/open.ts', "import { z } from '../server/app.ts';"],
    ['db/migrations/0001.ts', "import { z } from '../../lib/values/length.ts';"],
    ['lib/blanks/a.ts', "import fs from 'node:fs';"],
    ['lib/blanks/b.ts', "import { fine } from '../gears/tooth.ts';"],
  ]);
  expect(wrongWay(planted)).toEqual([
    'lib/values/length.ts → lib/gears/gear.ts',
    'lib/gears/gear.ts → db/open.ts',
    'db/open.ts → server/app.ts',
    'db/migrations/0001.ts → lib/values/length.ts',
    'lib/blanks/a.ts → node:fs',
  ]);
});

it('no computed number is printed by toFixed or toPrecision', () => {
  const users = [...sources()].filter(([, text]) => /\.to(Fixed|Precision)\(/.test(text)).map(([file]) => file);
  expect(users).toEqual([]);
});
