import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { Eta } from 'eta';

const ROOT = join(import.meta.dirname, '../../..');
const VIEWS = join(ROOT, 'views');
const eta = new Eta({ debug: true, autoFilter: true });

export type Template = { readonly name: string; readonly source: string };

/** Every .eta under views, by the name that include() and reply.page() use. */
export function templates(): Template[] {
  const files = readdirSync(VIEWS, { recursive: true, withFileTypes: true }).filter((file) => file.isFile() && file.name.endsWith('.eta'));
  return files.map((file) => {
    const path = join(file.parentPath, file.name);
    return { name: relative(VIEWS, path).split(sep).join('/').slice(0, -'.eta'.length), source: readFileSync(path, 'utf8') };
  });
}

/** Text may be printed escaped; only Markup may be placed as it is; an include gets exactly the data of its partial. */
const FRAME = `
type Standing<It> = { [L in keyof Layouts]: It extends Omit<Layouts[L], 'body'> ? L : never }[keyof Layouts];
declare function include<K extends Exclude<ViewName, keyof Layouts>>(name: \`/\${K}\`, data: Views[K]): Markup;
const escaped = (text: string | number): string => String(text);
const filtered = <T extends string | number>(text: T): T => text;
const placed = (text: Markup | ''): string => text;
export const eta = () => ({ res: '', line: 0, e: escaped, f: filtered, raw: placed });
export { include };
export type { Standing };
`;

const imports = (from: string): string => `import type { Layouts, Views } from ${JSON.stringify(from)};\ntype ViewName = keyof Views;\n`;

/** A template as a TypeScript function of its own data. */
function asFunction({ name, source }: Template): string {
  const body = eta.compileBody(eta.parse(source)).replaceAll('__eta.res+=__eta.f(', '__eta.res+=__eta.raw(');
  const data = `Views[${JSON.stringify(name)}]`;
  const layout = `const layout = (_path: \`/\${Standing<${data}>}\`): void => undefined;`;
  return `export function view(it: ${data}): string {\n${layout}\nconst __eta = eta();\nvoid it; void include; void layout;\n${body}\nreturn __eta.res;\n}\n`;
}

const CONFIG = {
  compilerOptions: {
    target: 'ES2023',
    lib: ['ES2023'],
    module: 'NodeNext',
    noEmit: true,
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    verbatimModuleSyntax: true,
    allowImportingTsExtensions: true,
    skipLibCheck: true,
    types: ['node'],
    typeRoots: [join(ROOT, 'node_modules/@types')],
  },
  include: ['*.ts'],
};

/** The template's own line: the last mark that Eta wrote above the line at fault. */
function templateLine(generated: string, line: number): number {
  const above = generated.split('\n').slice(0, line).reverse();
  return Number(above.map((text) => /^__eta\.line=(\d+)$/.exec(text)?.[1]).find((found) => found !== undefined) ?? 1);
}

function writeProject(folder: string, all: readonly Template[]): string[] {
  const views = join(ROOT, 'server/views.ts');
  const page = `import type { Markup } from ${JSON.stringify(join(ROOT, 'server/page.ts'))};\n`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(CONFIG));
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  writeFileSync(join(folder, 'frame.ts'), imports(views) + page + FRAME);
  const names = all.map(({ name }) => `${JSON.stringify(name)}: true`).join(', ');
  writeFileSync(join(folder, 'names.ts'), `${imports(views)}export const all: Record<ViewName, true> = { ${names} };\n`);
  return all.map((template, i) => {
    const generated = `${imports(views)}import { eta, include } from './frame.ts';\nimport type { Standing } from './frame.ts';\n${asFunction(template)}`;
    writeFileSync(join(folder, `view${i}.ts`), generated);
    return generated;
  });
}

/** What the compiler says, as "template:line: message"; empty when all templates keep to their types. */
export function typeProblems(all: readonly Template[]): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'backgear-views-'));
  try {
    const generated = writeProject(folder, all);
    const run = spawnSync(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', folder, '--pretty', 'false'], {
      encoding: 'utf8',
      cwd: folder,
    });
    if (run.error) throw run.error;
    const said = (run.stdout + run.stderr).split('\n').filter((line) => line.trim() !== '');
    if (run.status !== 0 && said.length === 0) throw new Error(`The compiler ended with ${run.status} and said nothing.`);
    return said.map((line) => named(line, all, generated));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function named(line: string, all: readonly Template[], generated: readonly string[]): string {
  const found = /view(\d+)\.ts\((\d+),\d+\): (.*)$/.exec(line);
  if (!found)
    return line
      .replace(/^.*names\.ts\(\d+,\d+\): /, 'server/views.ts: ')
      .replaceAll(`${relative(tmpdir(), ROOT)}${sep}`, '')
      .replace(/^(\.\.[\\/])+/, '');
  const [, which = '0', at = '1', message = ''] = found;
  return `${all[Number(which)]?.name}:${templateLine(generated[Number(which)] ?? '', Number(at))}: ${message}`;
}
