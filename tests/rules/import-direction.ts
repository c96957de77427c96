/** Which part may import which. Inside lib a room may import the rooms named and itself. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  lib: ['lib'],
  db: ['db', 'lib'],
  server: ['server', 'db', 'lib', 'seed'],
  seed: ['seed', 'db', 'lib'],
  views: [],
};

const TRADES = ['gears', 'cutters', 'splines', 'dividing', 'trains', 'leads', 'fits', 'speeds', 'turning'];
const LOW = ['tooling', 'figure', 'values'];
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  values: [],
  figure: ['values'],
  gears: ['figure', 'values'],
  tooling: ['gears', 'figure', 'values'],
  identify: ['gears', 'figure', 'values'],
  cutters: ['gears', ...LOW],
  dividing: ['gears', ...LOW],
  splines: ['gears', 'dividing', ...LOW],
  trains: ['gears', ...LOW],
  bevel: ['cutters', 'gears', ...LOW],
  worm: ['gears', ...LOW],
  strength: ['gears', ...LOW],
  accuracy: ['gears', ...LOW],
  leads: ['trains', 'cutters', 'gears', ...LOW],
  fits: ['gears', ...LOW],
  speeds: ['gears', ...LOW],
  turning: ['gears', 'speeds', ...LOW],
  blanks: [...TRADES, ...LOW],
  routing: ['blanks', ...TRADES, ...LOW],
  planning: ['routing', 'blanks', ...TRADES, ...LOW],
  drawing: ['gears', 'cutters', 'trains', 'bevel', 'worm', 'splines', ...LOW],
};

const IMPORT = /^(?:import|export) (?:type )?(?:[\w*{][^;=(]*? from )?'([^']+)';|\bimport\(\s*'([^']+)'/gm;

/** Where an import written in `file` leads, as a path from the top; packages are given back as they are. */
function target(file: string, wanted: string): string {
  if (!wanted.startsWith('.')) return wanted;
  const parts = file.split('/').slice(0, -1);
  for (const step of wanted.split('/')) {
    if (step === '..') parts.pop();
    else if (step !== '.') parts.push(step);
  }
  return parts.join('/');
}

function allowed(file: string, to: string): boolean {
  const [part = '', room = ''] = file.split('/');
  const [toPart = '', toRoom = ''] = to.split('/');
  if (!(toPart in PARTS)) return part !== 'lib' && !(file.startsWith('db/migrations/') && to !== 'kysely');
  if (file.startsWith('db/migrations/')) return to.startsWith('db/migrations/');
  if (!(PARTS[part] ?? []).includes(toPart)) return false;
  return part !== 'lib' || room === toRoom || (ROOMS[room] ?? []).includes(toRoom);
}

/** Every import that runs the wrong way, as "file → target". files: path from the top to text. */
export function wrongWay(files: ReadonlyMap<string, string>): string[] {
  const wrong: string[] = [];
  for (const [file, text] of files) {
    for (const [, still, moving] of text.matchAll(IMPORT)) {
      const to = target(file, still ?? moving ?? '');
      if (!allowed(file, to)) wrong.push(`${file} → ${to}`);
    }
  }
  return wrong;
}
