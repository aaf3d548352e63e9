// What `npm start` and `npm test` share. Plain JavaScript on Node alone: it runs before anything is installed.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { schemaFor } from '../prisma/schema-for.mjs';
import { whenChanged } from './when-changed.mjs';

export const root = path.join(import.meta.dirname, '..');
const bin = (name) => path.join(root, 'node_modules', '.bin', name);
const stampFolder = path.join(root, 'node_modules', '.flitchbook');

/** Runs a command and answers when it ends; throws with its last words when it fails. */
export function run(command, args, { quiet = true, env = {} } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    });
    let said = '';
    const keep = (chunk) => {
      said = (said + chunk).slice(-8000);
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 ? resolve(said) : reject(new Error(`${command} ${args.join(' ')} ended with ${code}\n${said}`)),
    );
  });
}

/** Says a step while it runs, and how long it took. */
export async function step(words, work) {
  const begun = Date.now();
  const alive = setInterval(
    () => process.stdout.isTTY || console.log(`  … ${words}, ${Math.round((Date.now() - begun) / 1000)} s`),
    15_000,
  );
  process.stdout.write(process.stdout.isTTY ? `  … ${words}` : `  … ${words}\n`);
  try {
    const note = await work();
    const took = `${((Date.now() - begun) / 1000).toFixed(1)} s`;
    process.stdout.write(`${process.stdout.isTTY ? '\r' : ''}  ✓ ${words}${note ? ` (${note})` : ''}, ${took}\n`);
  } catch (error) {
    process.stdout.write(`${process.stdout.isTTY ? '\r' : ''}  ✗ ${words}\n`);
    throw error;
  } finally {
    clearInterval(alive);
  }
}

async function whenNew(name, inputs, output, work) {
  return (await whenChanged({ root, stamps: stampFolder }, name, inputs, output, work)) ? '' : 'unchanged';
}

export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Flitchbook needs Node.js 20.19 or later; this is ${process.versions.node}. Nothing was changed.`);
  process.exit(1);
}

export const install = () =>
  step('installing packages', () =>
    whenNew('install', ['package.json', 'package-lock.json'], 'node_modules/next/package.json', async () => {
      await run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund']);
      const addon = path.join(root, 'node_modules/better-sqlite3/build/Release/better_sqlite3.node');
      if (!fs.existsSync(addon)) await run('npm', ['rebuild', 'better-sqlite3']);
    }),
  );

/** The client of each store, from the one schema. */
async function makeClients() {
  const schema = fs.readFileSync(path.join(root, 'prisma/schema.prisma'), 'utf8');
  // The generator is WebAssembly; naming any existing file keeps the CLI from downloading an engine it does not need.
  const env = { PRISMA_SCHEMA_ENGINE_BINARY: process.execPath };
  await run(bin('prisma'), ['generate', '--schema', 'prisma/schema.prisma'], { env });
  const other = path.join(stampFolder, 'schema.postgresql.prisma');
  const output = JSON.stringify(path.join(root, 'prisma/generated-postgresql'));
  fs.mkdirSync(stampFolder, { recursive: true });
  fs.writeFileSync(other, schemaFor(schema, 'postgresql').replace('"./generated"', output));
  await run(bin('prisma'), ['generate', '--schema', other], { env });
}

export const generate = () =>
  step('making the database client and the decoder files', async () => {
    const note = await whenNew(
      'generate',
      ['prisma/schema.prisma', 'prisma/schema-for.mjs', 'package-lock.json'],
      'prisma/generated-postgresql/client.ts',
      makeClients,
    );
    await whenNew('vendor', ['scripts/copy-vendor.ts', 'package-lock.json'], 'public/vendor', () =>
      run(bin('tsx'), ['scripts/copy-vendor.ts']),
    );
    return note;
  });

export const build = () =>
  step('building the app', () =>
    whenNew(
      'build',
      [
        'app',
        'shared',
        'prisma',
        'public',
        'next.config.ts',
        'proxy.ts',
        'tsconfig.json',
        'package.json',
        'package-lock.json',
      ],
      '.next/BUILD_ID',
      () => run(bin('next'), ['build']),
    ),
  );

export const migrate = () =>
  step('opening the book', async () => (await run(bin('tsx'), ['scripts/migrate.ts'])).trim());
