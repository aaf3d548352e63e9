/**
 * `npm run check` part: the rooms import one way only. Pages may use `_server` and `shared`; `_server` may use `prisma`
 * and `shared`; client parts take only types from `_server`; `shared` takes nothing but itself, in the order below.
 */
import fs from 'node:fs';
import path from 'node:path';

/** Another folder can be given, to try the rules on. */
const root = path.resolve(process.argv[2] ?? path.join(import.meta.dirname, '..'));
/** Each word of `shared` and the words it may use, beside itself. */
const SHARED: Record<string, string[]> = {
  result: [],
  units: ['result'],
  calendar: ['result'],
  hazards: ['result'],
  photos: [],
  'scan-codes': ['result', 'units', 'calendar'],
  'shelf-life': ['result', 'units', 'calendar'],
  wood: ['result', 'units', 'calendar'],
  outline: ['result', 'units'],
  fit: ['result', 'units', 'calendar', 'outline'],
  labels: ['result', 'units', 'calendar', 'scan-codes'],
  pour: ['result', 'units', 'calendar', 'outline'],
  allocation: ['result', 'units', 'calendar'],
  stocktake: [],
  trace: [],
  faults: [],
  promise: ['result', 'units', 'calendar', 'shelf-life', 'wood'],
  finish: ['result', 'units', 'calendar', 'fit'],
  timeline: ['result', 'units', 'calendar', 'pour', 'finish'],
  ledger: ['result', 'units', 'calendar', 'shelf-life', 'scan-codes', 'wood'],
};
const SHARED_PACKAGES = ['currency-codes', 'clipper2-ts'];

const wrong: string[] = [];
for (const file of filesBelow('shared')) {
  const word = file.split(path.sep)[1] ?? '';
  const source = fs.readFileSync(path.join(root, file), 'utf8');
  if (!(word in SHARED)) wrong.push(`${file}: shared has no room called ${word}`);
  for (const { from } of importsOf(file, source)) {
    const inside = /^@\/shared\/([^/]+)\//.exec(from)?.[1];
    if (inside ? inside !== word && !SHARED[word]?.includes(inside) : !SHARED_PACKAGES.includes(from)) {
      wrong.push(`${file}: may not import ${from}`);
    }
  }
  const code = source.replaceAll(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '');
  if (/new Date\(\s*\)|Date\.now\(|Math\.random\(|process\.|performance\./.test(code)) {
    wrong.push(`${file}: shared reads no clock, no chance and no environment`);
  }
}
for (const file of [...filesBelow('app'), ...filesBelow('prisma')]) {
  const source = fs.readFileSync(path.join(root, file), 'utf8');
  const isServer = file.startsWith(path.join('app', '_server'));
  const isUi = file.startsWith(path.join('app', '_ui'));
  const isClient = /^\s*['"]use client['"]/.test(source);
  for (const { from, typeOnly } of importsOf(file, source)) {
    const toServer = from.startsWith('@/app/_server/');
    if (file.startsWith('prisma') && from.startsWith('@/app/')) wrong.push(`${file}: prisma may not import ${from}`);
    if (!file.startsWith('prisma') && !isServer && from.startsWith('@/prisma/'))
      wrong.push(`${file}: only app/_server may import ${from}`);
    if (isServer && from.startsWith('@/app/') && !toServer) wrong.push(`${file}: _server may not import ${from}`);
    if ((isClient || isUi) && toServer && !typeOnly)
      wrong.push(`${file}: a client part may import only types from ${from}`);
    if (/@\/tests\//.test(from)) wrong.push(`${file}: may not import ${from}`);
  }
}

if (wrong.length) {
  console.error(wrong.join('\n'));
  process.exit(1);
}

function filesBelow(folder: string): string[] {
  return fs
    .readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.includes('generated'))
    .map((name) => path.join(folder, name));
}

/** What a file imports, said from the root of the project (`@/…`) however it was written. */
function importsOf(file: string, source: string): { from: string; typeOnly: boolean }[] {
  const found: { from: string; typeOnly: boolean }[] = [];
  for (const match of source.matchAll(/^(?:import|export)\s+(type\s+)?([^;]*?)\s+from\s+['"]([^'"]+)['"]/gm)) {
    const names = /^\{(.*)\}$/s
      .exec(match[2] ?? '')?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean);
    found.push({
      from: fromRoot(file, match[3] ?? ''),
      typeOnly: Boolean(match[1]) || (names?.every((name) => name.startsWith('type ')) ?? false),
    });
  }
  for (const match of source.matchAll(/(?:^import\s+|import\()\s*['"]([^'"]+)['"]/gm)) {
    found.push({ from: fromRoot(file, match[1] ?? ''), typeOnly: false });
  }
  return found;
}

function fromRoot(file: string, from: string): string {
  return from.startsWith('.') ? `@/${path.posix.join(path.dirname(file).split(path.sep).join('/'), from)}` : from;
}
